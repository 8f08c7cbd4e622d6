import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { build } from "esbuild";
import { describe, expect, test } from "vitest";

const SOURCE = resolve(import.meta.dirname, "../src");

/** What each folder may import, besides itself. The order is the direction of the data. */
const LAYERS: Readonly<Record<string, readonly string[]>> = {
  core: [],
  catalogue: ["core"],
  mechanics: ["core"],
  printing: ["core"],
  geometry: ["core"],
  parts: ["core", "catalogue", "mechanics", "printing", "geometry"],
  verify: ["core", "printing", "geometry"],
  stage: ["core", "catalogue", "mechanics", "printing", "geometry", "parts"],
  outputs: ["core", "printing", "geometry", "parts", "stage"],
  presets: ["core", "parts", "stage", "printing", "catalogue"],
  build: ["core", "catalogue", "mechanics", "printing", "geometry", "parts", "stage", "verify", "outputs", "presets"],
  library: [
    "core",
    "catalogue",
    "mechanics",
    "printing",
    "geometry",
    "parts",
    "stage",
    "verify",
    "outputs",
    "presets",
    "build",
  ],
  cli: [
    "core",
    "catalogue",
    "mechanics",
    "printing",
    "geometry",
    "parts",
    "stage",
    "verify",
    "outputs",
    "presets",
    "build",
    "library",
  ],
};

/** The only places that may know a third-party package. */
const PACKAGES: Readonly<Record<string, (file: string) => boolean>> = {
  zod: (file) =>
    ["core/complain.ts", "core/hardware.ts", "core/parameter.ts", "core/plain-schemas.ts"].includes(file) ||
    file === "printing/printer.ts" ||
    /^(parts|presets|stage)\//.test(file),
  "@jscad/modeling": (file) => file === "geometry/jscad.ts",
  "manifold-3d": (file) => file === "geometry/kernel.ts",
  fflate: (file) => /^outputs\/(package|picture)\//.test(file),
  "@noble/hashes": (file) => file === "build/hash.ts",
  yaml: (file) => /^presets\/(read|rewrite|yaml-[a-z-]+)\.ts$/.test(file),
  "@clack/prompts": (file) => file === "cli/new/ask.ts",
  yargs: (file) => file.startsWith("cli/"),
};

/** Tables and pages of words may be longer than code. */
const LONG = /^(catalogue\/|core\/bibliography\.ts|[a-z]+\/index\.ts)/;
const LONGEST = 250;

const IMPORT = /^(?:import|export)\s[^;"=]*?\sfrom\s+"([^"]+)"|^import\s+"([^"]+)"|\bimport\("([^"]+)"\)/gm;

interface SourceFile {
  readonly file: string;
  readonly text: string;
  readonly imports: readonly string[];
}

const files: readonly SourceFile[] = readdirSync(SOURCE, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts"))
  .map((file) => {
    const text = readFileSync(join(SOURCE, file), "utf8");
    const imports = [...text.matchAll(IMPORT)].map((match) => match[1] ?? match[2] ?? match[3] ?? "");
    return { file: file.replaceAll("\\", "/"), text, imports };
  });

const layerOf = (file: string) => file.split("/")[0] ?? "";

function packageOf(specifier: string): string {
  const parts = specifier.split("/");
  return specifier.startsWith("@") ? parts.slice(0, 2).join("/") : (parts[0] ?? "");
}

describe("the layers", () => {
  test.each(files)("$file imports only what lies left of it", ({ file, imports }) => {
    const own = layerOf(file);
    const allowed = LAYERS[own];
    expect(allowed, `folder ${own} is in the table`).toBeDefined();
    const strangers = imports
      .filter((specifier) => specifier.startsWith("."))
      .map((specifier) => relative(SOURCE, resolve(SOURCE, dirname(file), specifier)))
      .filter((target) => layerOf(target) !== own && !allowed?.includes(layerOf(target)));
    expect(strangers).toEqual([]);
  });

  test.each(files)("$file uses packages only where they belong", ({ file, imports }) => {
    const outside = imports.filter((specifier) => !specifier.startsWith("."));
    const strangers = outside.filter((specifier) => {
      if (specifier.startsWith("node:")) return layerOf(file) !== "cli";
      return !(PACKAGES[packageOf(specifier)]?.(file) ?? false);
    });
    expect(strangers).toEqual([]);
  });
});

describe("the style", () => {
  test.each(files)("$file is short, has no classes and reads no clock or chance", ({ file, text }) => {
    const lines = text.split("\n");
    if (!LONG.test(file)) expect(lines.length).toBeLessThanOrEqual(LONGEST);
    expect(lines.filter((line) => line.length > 120 && !line.includes("`") && !line.includes('"'))).toEqual([]);
    const code = text.replace(/\/\*[\s\S]*?\*\/|\/\/.*|"[^"\n]*"|`[^`]*`/g, "");
    expect(code).not.toMatch(/\bclass\s+[A-Z]/);
    if (layerOf(file) !== "cli") expect(code).not.toMatch(/Math\.random|Date\.now|new Date|process\.|performance\./);
  });

  test("the median file stays small", () => {
    const counts = files.filter(({ file }) => !LONG.test(file)).map(({ text }) => text.split("\n").length);
    counts.sort((a, b) => a - b);
    expect(counts[Math.floor(counts.length / 2)]).toBeLessThanOrEqual(80);
  });

  test("no numbered id of the design notes is left in the sources", () => {
    const ids = /\b(SF|TM|WP|SP|TW|GE|PR|HW|FX|MT|CP)\d{1,2}\b/;
    const found = files.filter(({ text }) => ids.test(text)).map(({ file, text }) => `${file}: ${ids.exec(text)?.[0]}`);
    expect(found).toEqual([]);
  });
});

test("everything but the command line bundles for a browser", async () => {
  const entries = files.filter(({ file }) => layerOf(file) !== "cli" && !file.endsWith(".d.ts"));
  const bundle = await build({
    stdin: {
      contents: entries.map(({ file }, index) => `export * as m${index} from "./${file}";`).join("\n"),
      resolveDir: SOURCE,
      loader: "ts",
    },
    bundle: true,
    platform: "browser",
    format: "esm",
    write: false,
    // The kernel's loader guards its one Node import behind a run-time test.
    external: ["module", "node:module"],
    logLevel: "silent",
  });
  expect(bundle.errors).toEqual([]);
  expect(bundle.outputFiles[0]?.contents.length).toBeGreaterThan(100_000);
});
