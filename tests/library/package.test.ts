import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { isThorough } from "../support/thorough.ts";

const ROOT = resolve(import.meta.dirname, "../..");
const folder = mkdtempSync(join(tmpdir(), "tramwright-installed-"));
const packed = join(folder, "packed");
const home = join(folder, "home");

/** Runs a program and returns what it said; fails when it fails. */
function ran(program: string, words: readonly string[], cwd = home): string {
  const { status, stdout, stderr } = spawnSync(program, words, { cwd, encoding: "utf8" });
  expect(status, `${program} ${words.join(" ")}\n${stdout}\n${stderr}`).toBe(0);
  return stdout;
}

const node = (...words: string[]) => ran(process.execPath, words);
const tool = (path: string, ...words: string[]) => node(join(ROOT, "node_modules", path), ...words);
const tarball = () => join(packed, readdirSync(packed)[0] ?? "");

/** What is asked of the library, whichever way it came. */
const ASKED = `
const made = await make("format: 1\\npart: wheel-spacer\\nname: packed\\n");
console.log(JSON.stringify({ version, ok: made.ok, files: made.files.map(({ name }) => name) }));
`;
const ANSWER = { ok: true, files: ["packed.stl", "packed.3mf", "packed.md"] };

/** A page or a script in types: what it asks for is there, and what is not there is an error. */
const CONSUMER = `
import { type Checked, type Complaint, check, derive, type Derived, families, make, messageFacts, schema, subjects } from "tramwright";
const derived: Derived = derive("format: 1", { file: "a.yaml", printers: { "p.yaml": "format: 1" } });
const first: Complaint | undefined = derived.complaints[0];
const line: number = first?.place?.line ?? 0;
const level: "error" | "warning" | "note" | undefined = first?.level;
const words: readonly string[] = [...families().map(({ title }) => title), ...subjects, ...messageFacts("x").map(({ why }) => why)];
export async function bytes(text: string): Promise<Uint8Array | undefined> {
  const { ok, parts }: Checked = await check(text);
  const volume: number | undefined = ok ? parts[0]?.bodies[0]?.volume : undefined;
  // @ts-expect-error a text is asked for
  derive(12);
  // @ts-expect-error only what was built has bodies
  derived.parts[0]?.bodies;
  return volume === undefined ? undefined : (await make(text)).files[0]?.bytes;
}
export { level, line, words, schema };
`;

beforeAll(() => {
  for (const each of [packed, home]) ran("mkdir", ["-p", each], folder);
  ran("npm", ["pack", "--ignore-scripts", "--silent", "--pack-destination", packed], ROOT);
  writeFileSync(join(home, "package.json"), '{ "private": true }');
  // Nothing else is fetched, since the package needs nothing.
  ran("npm", ["install", "--offline", "--ignore-scripts", "--no-audit", "--no-fund", tarball()]);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the package, installed into an empty folder from its tarball alone", () => {
  test("brings no other package with it, and neither sources nor tests", () => {
    expect(readdirSync(join(home, "node_modules")).filter((name) => !name.startsWith("."))).toEqual(["tramwright"]);
    const inside = readdirSync(join(home, "node_modules/tramwright"));
    expect(inside.sort()).toEqual(["CHANGELOG.md", "LICENSE", "README.md", "dist", "docs", "package.json", "presets"]);
  });

  test("runs: its name is a command, and the command makes a part", () => {
    const bin = join(home, "node_modules/.bin/tramwright");
    const { version } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")) as { version: string };
    expect(ran(bin, ["--version"]).trim()).toBe(version);
    ran(bin, ["make", "thumb-wheel", "-o", "out"]);
    expect(existsSync(join(home, "out/thumb-wheel.stl"))).toBe(true);
  });

  test("is imported, and required", () => {
    writeFileSync(join(home, "imported.mjs"), `import { make, version } from "tramwright";${ASKED}`);
    expect(JSON.parse(node("imported.mjs"))).toMatchObject(ANSWER);
    const required = `const { make, version } = require("tramwright");\n(async () => {${ASKED}})();`;
    writeFileSync(join(home, "required.cjs"), required);
    expect(JSON.parse(node("required.cjs"))).toMatchObject(ANSWER);
  });

  test.each([
    ["consumer.mts", "node16"],
    ["consumer.cts", "node16"],
    ["consumer.ts", "bundler"],
  ])("its types hold in %s, looked up as %s does, without any other types", (file, resolution) => {
    writeFileSync(join(home, file), CONSUMER);
    const module = resolution === "bundler" ? "preserve" : "node16";
    const strict = ["--strict", "--target", "es2022", "--lib", "es2022", "--noEmit", "--types", ""];
    tool("typescript/bin/tsc", ...strict, "--module", module, "--moduleResolution", resolution, file);
  });

  test("a bundler for pages takes it as it is: nothing of Node is imported", async () => {
    writeFileSync(join(home, "page.js"), 'import { make } from "tramwright"; globalThis.made = make("");');
    const entryPoints = [join(home, "page.js")];
    const shared = { entryPoints, bundle: true, platform: "browser", format: "esm", write: false } as const;
    const { outputFiles, warnings } = await build({ ...shared, logLevel: "silent" });
    expect(warnings).toEqual([]);
    expect(outputFiles[0]?.contents.length).toBeGreaterThan(100_000);
  });
});

// Two linters for packages, by other people: what a resolver of each kind finds, and whether types and code agree.
describe("what others ask of a package", () => {
  test("publint has nothing to say", () => {
    expect(tool("publint/src/cli.js", tarball(), "--strict")).toContain("All good!");
  });

  test.runIf(isThorough)("are-the-types-wrong finds no problem; the kernel's file is no module, and has none", () => {
    const words = [tarball(), "--exclude-entrypoints", "./manifold.wasm", "--no-emoji"];
    expect(tool("@arethetypeswrong/cli/dist/index.js", ...words)).toContain("No problems found");
  });
});
