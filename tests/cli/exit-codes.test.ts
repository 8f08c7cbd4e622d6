import { spawn, spawnSync } from "node:child_process";
import { cpSync, existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { overview } from "../../src/cli/help.ts";
import { folderWith, fresh, PROGRAM, run } from "./program.ts";

const GOOD = "format: 1\npart: wheel-spacer\nname: bench\n";
const PLAN = resolve("presets/stages/seed-bench.yaml");

/** Starts `make` of a machine and sends it a signal while it works. */
function stopped(signal: "SIGINT" | "SIGTERM"): Promise<{ readonly code: number | null; readonly left: string[] }> {
  const folder = fresh();
  return new Promise((resume) => {
    const child = spawn("node", [PROGRAM, "make", PLAN], { cwd: folder, stdio: "ignore" });
    setTimeout(() => child.kill(signal), 400);
    child.on("exit", (code, by) => resume({ code: by === signal ? null : code, left: readdirSync(folder) }));
  });
}

describe("exit codes", () => {
  test("0: done", () => {
    expect(run(["make", "a.yaml", "-q"], folderWith({ "a.yaml": GOOD })).code).toBe(0);
  });

  test("1: the design or the file has errors", () => {
    expect(run(["check", "a.yaml"], folderWith({ "a.yaml": GOOD.replace("wheel-spacer", "nothing") })).code).toBe(1);
  });

  test("2: wrong usage", () => {
    expect(run(["make"]).code).toBe(2);
  });

  test("3: cannot read or write", () => {
    expect(run(["check", "gone.yaml"]).code).toBe(3);
    expect(run(["make", "a.yaml", "-o", "a.yaml"], folderWith({ "a.yaml": GOOD })).code).toBe(3);
  });

  test("70: a fault of ours, which says so, asks for a report and writes nothing", () => {
    // A program whose kernel was damaged on the disk.
    const folder = folderWith({ "a.yaml": GOOD });
    cpSync(dirname(PROGRAM), join(folder, "dist"), { recursive: true });
    writeFileSync(join(folder, "dist", "manifold.wasm"), "not a kernel");
    const words = [join(folder, "dist", "tramwright.cjs"), "make", "a.yaml"];
    const { status, stderr } = spawnSync("node", words, { cwd: folder, encoding: "utf8" });
    expect(status).toBe(70);
    expect(stderr).toMatch(
      /^tramwright: a fault of ours, please report it with the command you typed and the preset\n/,
    );
    expect(existsSync(join(folder, "out"))).toBe(false);
  });

  test.each([
    ["SIGINT", 130],
    ["SIGTERM", 143],
  ] as const)("%s ends with %d and leaves nothing half done", async (signal, code) => {
    const ended = await stopped(signal);
    expect(ended).toEqual({ code, left: expect.any(Array) });
    const hidden = ended.left.filter((name) => name.startsWith("."));
    expect(hidden).toEqual([]);
  });

  test("are all told in the help", () => {
    for (const code of [0, 1, 2, 3, 70, 130, 143]) expect(overview("1")).toMatch(new RegExp(`\\b${code}\\b`));
  });
});

describe("- in place of a file", () => {
  const printer = "format: 1\nprinter: p\nsettings:\n  layer: 0.28\n";

  test("is standard input for every command that reads one", () => {
    const plan = readFileSync("presets/stages/copy-stand.yaml", "utf8").replace(/^printer: .*\n/m, "");
    const folder = folderWith({ "a.yaml": GOOD, "plan.yaml": plan });
    expect(run(["make", "-", "-q"], folder, {}, GOOD).code).toBe(0);
    expect(existsSync(join(folder, "out", "bench.stl"))).toBe(true);
    expect(run(["report", "-"], folder, {}, plan).out).toBe(run(["report", "plan.yaml"], folder).out);
    expect(run(["compare", "plan.yaml", "-"], folder, {}, plan).code).toBe(0);
    const hash = (out: string) => (JSON.parse(out) as { parts: { hash: string }[] }).parts[0]?.hash;
    const usual = hash(run(["check", "a.yaml", "--json"], folder).out);
    const layered = hash(run(["check", "a.yaml", "--printer", "-", "--json"], folder, {}, printer).out);
    expect(layered).toMatch(/^[0-9a-f]{8}$/);
    expect(layered).not.toBe(usual);
    const explained = run(["explain", "wheel-spacer.length", "--preset", "-"], folder, {}, GOOD);
    expect(explained.code).toBe(0);
    expect(run(["new", "--from", "-"], folder, {}, GOOD).out).toContain("part: wheel-spacer");
  });

  test("new -o - is a preset that check - reads, and a file called - can still be named", () => {
    const folder = folderWith({ "-": GOOD });
    const written = run(["new", "wheel-spacer", "-o", "-"], folder).out;
    expect(run(["check", "-"], folder, {}, written).code).toBe(0);
    expect(run(["check", "./-"], folder).code).toBe(0);
    expect(readdirSync(folder)).toEqual(["-"]);
  });
});
