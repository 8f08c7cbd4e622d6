import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { runs } from "../support/thorough.ts";
import { folderWith, fresh, PROGRAM, run } from "./program.ts";

const GOOD = "format: 1\npart: wheel-spacer\nname: bench\nparameters:\n  length: 1/4 in\n";
const OTHER = GOOD.replace("1/4 in", "9");

function filesBelow(folder: string): Record<string, string> {
  const names = readdirSync(folder, { recursive: true, encoding: "utf8" }).sort();
  const files = names.filter((name) => statSync(join(folder, name)).isFile());
  return Object.fromEntries(files.map((name) => [name, readFileSync(join(folder, name), "latin1")]));
}

const mounted: string[] = [];
afterEach(() => {
  for (const path of mounted.splice(0)) spawnSync("umount", [path]);
});

/** Returns a small disk of its own, or undefined where this user may not mount one. */
function disk(kilobytes: number): string | undefined {
  const path = fresh();
  const options = ["-t", "tmpfs", "-o", `size=${kilobytes}k`, "tmpfs", path];
  if (spawnSync("mount", options).status !== 0) return undefined;
  mounted.push(path);
  return path;
}

const mountable = disk(64) !== undefined;
for (const path of mounted.splice(0)) spawnSync("umount", [path]);

/** The ways to write: a single part, which goes among other files, and a machine, which has a folder of its own. */
const WAYS = [
  ["a part", "p.yaml"],
  ["a machine", "s.yaml"],
] as const;

function plans(): string {
  const printer = readFileSync("presets/printers/workshop-petg.yaml", "utf8");
  const stage = readFileSync("presets/stages/copy-stand.yaml", "utf8").replace(/printer: .*\n/, "printer: w.yaml\n");
  return folderWith({
    "p.yaml": GOOD,
    "q.yaml": OTHER,
    "w.yaml": printer,
    "s.yaml": stage,
    "t.yaml": stage.replace(/plateTop: 2\.5\b/, "plateTop: 6.5"),
  });
}

const next = (file: string) => (file === "p.yaml" ? "q.yaml" : "t.yaml");
const lastLine = (text: string) => text.trimEnd().split("\n").at(-1);

describe.skipIf(!mountable)("a disk that is full, or read-only", () => {
  test.each(WAYS)("%s is not begun, and what was there stays", (_, file) => {
    const folder = plans();
    const place = disk(file === "p.yaml" ? 256 : 4096) ?? "";
    const output = join(place, "out");
    expect(run(["make", file, "-q", "-o", output], folder).code).toBe(0);
    const attempt = () => {
      const before = filesBelow(place);
      const { code, err } = run(["make", next(file), "-q", "-o", output], folder);
      expect(code).toBe(3);
      expect(filesBelow(place)).toEqual(before);
      return lastLine(err);
    };
    spawnSync("sh", ["-c", `cat /dev/zero > '${place}/filler' 2>/dev/null`]);
    expect(attempt()).toMatch(/^tramwright: cannot write into .*: the disk is full$/);
    expect(spawnSync("mount", ["-o", "remount,ro", place]).status).toBe(0);
    expect(attempt()).toMatch(/^tramwright: cannot write into .*: the disk is read-only$/);
  });
});

const AS_NOBODY = ["--reuid=65534", "--regid=65534", "--clear-groups", "node"];
const nobodyRuns = spawnSync("setpriv", [...AS_NOBODY, PROGRAM, "--version"]).status === 0;

test.skipIf(!nobodyRuns)("a folder that refuses this user: one line, code 3, nothing changed", () => {
  const folder = plans();
  chmodSync(folder, 0o755);
  const { status, stderr } = spawnSync("setpriv", [...AS_NOBODY, PROGRAM, "make", "p.yaml", "-q"], {
    cwd: folder,
    encoding: "utf8",
  });
  expect(status).toBe(3);
  expect(lastLine(stderr)).toBe("tramwright: cannot write into out: permission is refused");
  expect(existsSync(join(folder, "out"))).toBe(false);
});

describe("what stands in the way", () => {
  test.each([
    ["a file of others", (path: string) => writeFileSync(path, "mine")],
    ["a link", (path: string) => symlinkSync("/etc/hostname", path)],
    ["a link to nothing", (path: string) => symlinkSync("nowhere", path)],
    ["a pipe", (path: string) => void spawnSync("mkfifo", [path])],
  ])("%s is left alone, and no other file is written", (_, put) => {
    const folder = plans();
    mkdirSync(join(folder, "out"));
    put(join(folder, "out/bench.md"));
    const { code, err } = run(["make", "p.yaml", "-q"], folder);
    expect(code).toBe(3);
    expect(lastLine(err)).toBe(
      "tramwright: out/bench.md was not written by tramwright and is left alone; --force replaces it",
    );
    expect(readdirSync(join(folder, "out"))).toEqual(["bench.md"]);
  });

  test("--force replaces a link, not what it leads to", () => {
    const folder = plans();
    mkdirSync(join(folder, "out"));
    writeFileSync(join(folder, "mine.txt"), "mine");
    symlinkSync("../mine.txt", join(folder, "out/bench.md"));
    expect(run(["make", "p.yaml", "-q", "--force"], folder).code).toBe(0);
    expect(readFileSync(join(folder, "mine.txt"), "utf8")).toBe("mine");
    expect(readFileSync(join(folder, "out/bench.md"), "utf8")).toContain("tramwright");
  });
});

describe("what is read", () => {
  test.each(["/dev/zero", "pipe"])("a preset that names %s for its printer is answered at its line", (printer) => {
    const folder = plans();
    spawnSync("mkfifo", [join(folder, "pipe")]);
    writeFileSync(join(folder, "odd.yaml"), `${GOOD}printer: ${printer}\n`);
    const { code, out } = run(["check", "odd.yaml"], folder);
    expect(code).toBe(1);
    expect(out.replace(/\s+/g, " ")).toMatch(/odd\.yaml:6:10: error: .* cannot be read: it is no ordinary file/);
  });

  test("an endless file is read no further than a preset may be long", () => {
    const { code, err } = run(["check", "/dev/zero"]);
    expect(code).toBe(3);
    expect(err).toBe("tramwright: cannot read /dev/zero: it is longer than 16 MB\n");
  });
});

test.skipIf(!existsSync("/dev/full"))("results that cannot be written down: one line, code 3", () => {
  const shell = `node '${PROGRAM}' check p.yaml > /dev/full`;
  const { status, stderr } = spawnSync("sh", ["-c", shell], { cwd: plans(), encoding: "utf8" });
  expect(status).toBe(3);
  expect(lastLine(stderr)).toBe("tramwright: cannot write the results: the disk is full");
});

/** How often each way is interrupted; a longer hunt is `killed.test.ts`. */
const ROUNDS = runs(3, 1);

/** Sends a signal as soon as the run has begun to write, or after a while, and returns what it ended with. */
function signalled(
  folder: string,
  file: string,
  signal: NodeJS.Signals,
  after: number,
): Promise<number | null | string> {
  const child: ChildProcess = spawn("node", [PROGRAM, "make", file, "-q"], { cwd: folder, stdio: "ignore" });
  return new Promise((resolve) => {
    const timer = setTimeout(() => child.kill(signal), after);
    child.on("exit", (code, by) => {
      clearTimeout(timer);
      resolve(code ?? by);
    });
  });
}

describe.each([
  ["SIGINT", 130],
  ["SIGTERM", 143],
] as const)("%s", (signal, code) => {
  test.each(WAYS)("at any moment of making %s: the files of before or after", async (_, file) => {
    const folder = plans();
    expect(run(["make", next(file), "-q"], folder).code).toBe(0);
    const old = filesBelow(join(folder, "out"));
    expect(run(["make", file, "-q"], folder).code).toBe(0);
    const states = [old, filesBelow(join(folder, "out"))].map((one) => JSON.stringify(one));
    const codes: (number | null | string)[] = [];
    for (let round = 0; round < ROUNDS; round++) {
      codes.push(await signalled(folder, round % 2 === 0 ? next(file) : file, signal, 80 + round * 170));
      expect(states).toContain(JSON.stringify(filesBelow(join(folder, "out"))));
      expect(readdirSync(folder).filter((name) => name.startsWith("."))).toEqual([]);
    }
    // Before the program listens the signal itself ends it; after its end nobody hears it.
    expect(codes.filter((one) => one !== code && one !== 0 && one !== signal)).toEqual([]);
  });
});
