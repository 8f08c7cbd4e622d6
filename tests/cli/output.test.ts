import { spawn } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { isThorough } from "../support/thorough.ts";
import { folderWith, run } from "./program.ts";

const GOOD = "format: 1\npart: wheel-spacer\nname: bench\nparameters:\n  length: 1/4 in\n";

const PLATE =
  "format: 1\npart: wheel-plate\nname: cart\nparameters: { load: 5, eccentricKind: printed, spacerKind: printed }\n";

describe("file names", () => {
  test("two companions of one family have names of their own", () => {
    const folder = folderWith({ "cart.yaml": PLATE });
    const { code, out } = run(["make", "cart.yaml"], folder);
    expect(code).toBe(0);
    expect(readdirSync(join(folder, "out")).sort()).toEqual(
      ["cart", "cart-bush", "cart-spacer"].flatMap((name) => [`${name}.3mf`, `${name}.md`, `${name}.stl`]).sort(),
    );
    for (const name of ["cart", "cart-bush", "cart-spacer"]) expect(out).toContain(` x out/${name}.stl: `);
  });

  test.each(["make", "check"])(
    "%s refuses two presets of one name, each at its place, and makes the rest",
    (command) => {
      const other = GOOD.replace("1/4 in", "8").replace("format: 1\n", "# a comment\nformat: 1\n");
      const third = GOOD.replace("bench", "third");
      const folder = folderWith({ "a.yaml": GOOD, "b.yaml": other, "c.yaml": third });
      const { code, out, err } = run([command, "a.yaml", "b.yaml", "c.yaml"], folder);
      const said = command === "make" ? err : out;
      expect(code).toBe(1);
      expect(said).toContain("a.yaml:3:7: error: b.yaml writes bench.stl as well");
      expect(said).toContain("b.yaml:4:7: error: a.yaml writes bench.stl as well");
      expect(said).toContain("  defect  file-name-taken-twice");
      if (command === "make")
        expect(readdirSync(join(folder, "out")).sort()).toEqual(["third.3mf", "third.md", "third.stl"]);
      else expect(existsSync(join(folder, "out"))).toBe(false);
    },
  );

  test("a part may not have the name of another's companion", () => {
    const folder = folderWith({ "cart.yaml": PLATE, "b.yaml": GOOD.replace("bench", "cart-bush") });
    const { code, err } = run(["make", "cart.yaml", "b.yaml"], folder);
    expect(code).toBe(1);
    expect(err).toContain("cart.yaml:3:7: error: b.yaml writes cart-bush.stl as well");
    expect(existsSync(join(folder, "out"))).toBe(false);
  });

  test("a preset that is named twice is made once", () => {
    const folder = folderWith({ "a.yaml": GOOD });
    const { code, err } = run(["make", "a.yaml", "./a.yaml"], folder);
    expect(code).toBe(0);
    expect(err).toContain("1 part");
  });
});

test("explain does not go on with a printer's file that is wrong", () => {
  const folder = folderWith({ "p.yaml": "format: 1\nprinter: p\nsettings:\n  layer: thin\n" });
  const { code, out, err } = run(["explain", "screw-foot.seat", "--printer", "p.yaml"], folder);
  expect(code).toBe(1);
  expect(out).toBe("");
  expect(err).toContain("p.yaml:4:10: error: layer: thin is not a number");
  expect(err).toContain("  set     a length from 0.05 to 0.96 mm");
});

describe("what cannot be written", () => {
  test.each([
    ["/proc/x", "no folder can be made there"],
    ["/proc/x/y", "no folder can be made there"],
    ["blocked", "a file stands where a folder should be"],
    ["blocked/inside", "a file stands where a folder should be"],
    ["x".repeat(300), "the name is too long"],
  ])("%s ends at once, with one line and code 3", (output, reason) => {
    const folder = folderWith({ "a.yaml": GOOD, blocked: "a file" });
    const { code, err } = run(["make", "a.yaml", "-q", "-o", output], folder);
    expect(code).toBe(3);
    expect(err.trimEnd().split("\n").at(-1)).toBe(`tramwright: cannot write into ${output}: ${reason}`);
    expect(readdirSync(folder).sort()).toEqual(["a.yaml", "blocked"]);
  });

  test.each([[[]], [["--force"]]])("a folder of the file's name is named, and nothing is written %j", (more) => {
    const folder = folderWith({ "a.yaml": GOOD });
    mkdirSync(join(folder, "out", "bench.stl"), { recursive: true });
    const { code, err } = run(["make", "a.yaml", ...more], folder);
    expect(code).toBe(3);
    expect(err).toBe("tramwright: cannot write out/bench.stl: it is a folder\n");
    expect(readdirSync(join(folder, "out"))).toEqual(["bench.stl"]);
  });

  test("a printer file that is not there is told at its line, and the other presets are made", () => {
    const other = `${GOOD.replace("bench", "other")}printer: nope.yaml\n`;
    const folder = folderWith({ "a.yaml": GOOD, "b.yaml": other });
    const { code, err } = run(["make", "a.yaml", "b.yaml"], folder);
    expect(code).toBe(1);
    expect(err).toContain("b.yaml:6:10: error: the printer file nope.yaml cannot be read: there is no such file or");
    expect(err).toContain("  set     printer: the path of your printer's file from the folder of this preset");
    expect(readdirSync(join(folder, "out")).sort()).toEqual(["bench.3mf", "bench.md", "bench.stl"]);
  });
});

test("a part of two bodies is one part, and its files are counted", () => {
  const bridged = "format: 1\npart: screw-foot\nname: foot\nparameters: { style: bridged }\n";
  const folder = folderWith({ "a.yaml": bridged });
  const { err } = run(["make", "a.yaml"], folder);
  expect(err).toContain("1 part, 4 files written to out: 0 errors");
  expect(readdirSync(join(folder, "out"))).toHaveLength(4);
});

test("no line of a run is wider than the screen", () => {
  const folder = folderWith({ "cart.yaml": PLATE });
  const { out, err } = run(["make", "cart.yaml", "--set", "load=45", "--set", "overhang=320"], folder);
  expect(`${out}${err}`.split("\n").filter((line) => line.length > 98)).toEqual([]);
});

test.runIf(isThorough)("the program can be used while it is built anew", async () => {
  const folder = folderWith({ "a.yaml": GOOD });
  const build = spawn("node", ["scripts/build.mjs"], { stdio: "ignore" });
  const ended = new Promise<number | null>((resume) => build.once("exit", resume));
  const codes: (number | null)[] = [];
  for (let running = true; running; ) {
    codes.push(run(["check", "a.yaml", "-q"], folder).code);
    running = await Promise.race([ended.then(() => false), new Promise<boolean>((go) => setTimeout(go, 1, true))]);
  }
  expect(await ended).toBe(0);
  expect(new Set(codes)).toEqual(new Set([0]));
  expect(readdirSync(".").filter((name) => name.startsWith(".dist-"))).toEqual([]);
  // A fault's trace names the program, not the folder where it was compiled.
  expect(readFileSync("dist/part.compiled").includes(".dist-")).toBe(false);
});
