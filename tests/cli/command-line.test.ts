import { spawnSync } from "node:child_process";
import { chmodSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { folderWith, fresh, PROGRAM, run } from "./program.ts";

const GOOD = "format: 1\npart: wheel-spacer\nname: bench\nparameters:\n  length: 1/4 in\n";
const BAD = GOOD.replace("length: 1/4 in", "against: bearing");

describe("exit codes and streams", () => {
  test("make writes the part and its sheet, says so on stdout, and ends with 0", () => {
    const folder = folderWith({ "bench.yaml": GOOD });
    const { code, out, err } = run(["make", "bench.yaml", "-o", "prints"], folder);
    expect(code).toBe(0);
    expect(readdirSync(join(folder, "prints")).sort()).toEqual(["bench.3mf", "bench.md", "bench.stl"]);
    expect(out).toContain("prints/bench.stl");
    expect(err).toContain("caution: Printed parts are not rated lifting gear");
    expect(err.trimEnd().split("\n").at(-1)).toBe("1 part, 3 files written to prints: 0 errors, 1 warning");
  });

  test("a part with an error is not written, the others are, and the code is 1", () => {
    const folder = folderWith({ "good.yaml": GOOD, "bad.yaml": BAD.replace("name: bench", "name: wrong") });
    const { code, err } = run(["make", "bad.yaml", "good.yaml", "-o", "prints"], folder);
    expect(code).toBe(1);
    expect(readdirSync(join(folder, "prints")).sort()).toEqual(["bench.3mf", "bench.md", "bench.stl"]);
    expect(err).toContain("bad.yaml:4:1: error: ");
    expect(err).toContain("  defect  spacer-crushed-by-torque");
  });

  test("check writes nothing and puts its findings on stdout", () => {
    const folder = folderWith({ "bad.yaml": BAD });
    const { code, out } = run(["check", "bad.yaml"], folder);
    expect(code).toBe(1);
    expect(out).toContain("spacer-crushed-by-torque");
    expect(readdirSync(folder)).toEqual(["bad.yaml"]);
  });

  test.each([
    [["mkae", "x"], "there is no command mkae; the nearest is make"],
    [["make"], "make needs a preset, a plan or a part family"],
    [["make", "wheel-spacer", "--outptu", "x"], "make has no option --outptu; the nearest is --output"],
    [["make", "wheel-spacer", "--json=garbage"], "--json takes no value"],
    [["make", "wheel-spacer", "--set", "length"], "lacks a value"],
    [["make", "wheel-spacer", "--set", "__proto__.x=1"], "__proto__ is not a key"],
    [["make", "wheel-spacr"], "neither a file nor a part family"],
    [["make", "wheel-spacer", "-o"], "output"],
    [["check", "wheel-spacer", "--force"], "check has no option --force"],
    [["parts", "a", "b"], "takes at most 1 name"],
    [["make", "wheel-spacer", "-o", ""], "--output needs a value behind it"],
    [["stock", "--color", "maybe"], "--color takes auto, always or never, not maybe"],
    [["stock", "bars", "20x20"], "bars has no row 20x20; there are 20x20 slot 6, 20x20 slot 5, V 20x20"],
  ])("%j is wrong usage: code 2 and one line", (words, says) => {
    const { code, out, err } = run(words);
    expect(code).toBe(2);
    expect(out).toBe("");
    expect(err).toContain(says);
    expect(err.trimEnd().split("\n")).toHaveLength(1);
  });

  test("a file that is not there, a folder that cannot be written: code 3 and the reason", () => {
    expect(run(["make", "nowhere.yaml"])).toMatchObject({ code: 3 });
    expect(run(["make", "nowhere.yaml"]).err).toContain("cannot read nowhere.yaml: there is no such file");
    const folder = folderWith({ "bench.yaml": GOOD, blocked: "a file" });
    const { code, err } = run(["make", "bench.yaml", "-o", "blocked"], folder);
    expect(code).toBe(3);
    expect(err).toContain("a file stands where a folder should be");
    expect(readFileSync(join(folder, "blocked"), "utf8")).toBe("a file");
  });

  test("a printer file with an error stops the part", () => {
    const folder = folderWith({ "bench.yaml": GOOD, "p.yaml": "format: 1\nprinter: p\nsettings:\n  layer: 9\n" });
    const { code, err } = run(["make", "bench.yaml", "--printer", "p.yaml"], folder);
    expect(code).toBe(1);
    expect(err).toContain("p.yaml:4:10: error:");
    expect(existsSync(join(folder, "out"))).toBe(false);
  });
});

describe("files", () => {
  test("the same preset gives the same bytes, in another folder too", () => {
    const [first, second] = [folderWith({ "bench.yaml": GOOD }), folderWith({ "bench.yaml": GOOD })];
    run(["make", "bench.yaml"], first);
    run(["make", "bench.yaml"], second, { TZ: "Asia/Tokyo", LC_ALL: "de_DE.UTF-8" });
    for (const name of ["bench.stl", "bench.3mf", "bench.md"]) {
      expect(readFileSync(join(first, "out", name)).equals(readFileSync(join(second, "out", name)))).toBe(true);
    }
  });

  test("what it wrote it replaces; what it did not write it leaves alone", () => {
    const folder = folderWith({ "bench.yaml": GOOD });
    expect(run(["make", "bench.yaml"], folder).code).toBe(0);
    expect(run(["make", "bench.yaml"], folder).code).toBe(0);
    writeFileSync(join(folder, "out", "bench.stl"), "my own drawing");
    const { code, err } = run(["make", "bench.yaml"], folder);
    expect(code).toBe(3);
    expect(err).toContain("--force");
    expect(readFileSync(join(folder, "out", "bench.stl"), "utf8")).toBe("my own drawing");
    expect(run(["make", "bench.yaml", "--force"], folder).code).toBe(0);
    expect(
      readFileSync(join(folder, "out", "bench.stl"))
        .subarray(0, 10)
        .toString(),
    ).toBe("tramwright");
    expect(readdirSync(join(folder, "out")).filter((name) => name.startsWith("."))).toEqual([]);
  });

  test("a dry run writes nothing", () => {
    const folder = folderWith({ "bench.yaml": GOOD });
    expect(run(["make", "bench.yaml", "--dry-run"], folder).code).toBe(0);
    expect(readdirSync(folder)).toEqual(["bench.yaml"]);
  });

  test("a folder without permission keeps what it holds", () => {
    const folder = folderWith({ "bench.yaml": GOOD });
    mkdirSync(join(folder, "locked"));
    chmodSync(join(folder, "locked"), 0o555);
    const { code } = run(["make", "bench.yaml", "-o", "locked"], folder);
    // Root may write anywhere; everybody else is told.
    expect(code).toBe(process.getuid?.() === 0 ? 0 : 3);
  });
});

describe("words", () => {
  test("--json is one document with parts and messages", () => {
    const folder = folderWith({ "bench.yaml": GOOD, "bad.yaml": BAD });
    const { code, out } = run(["check", "bench.yaml", "bad.yaml", "--json"], folder);
    expect(code).toBe(1);
    const data = JSON.parse(out) as { parts: { name: string }[]; messages: { name: string; line: number }[] };
    expect(data.parts.map(({ name }) => name)).toEqual(["bench", "bench"]);
    expect(data.messages.find(({ name }) => name === "spacer-crushed-by-torque")?.line).toBe(4);
  });

  test("a preset comes from standard input as well", () => {
    const { code, out } = run(["check", "-"], fresh(), {}, GOOD);
    expect(code).toBe(0);
    expect(out).toContain("standard input:2:7: warning");
  });

  test("--set changes a parameter, with units, and reaches into a bought item", () => {
    const { code, out } = run([
      "check",
      "wheel-spacer",
      "--set",
      "length=1/2 in",
      "--set",
      "material.density=2",
      "--json",
    ]);
    expect(code).toBe(0);
    const { parts } = JSON.parse(out) as { parts: { dimensions: { key: string; value: number }[] }[] };
    expect(parts[0]?.dimensions.find(({ key }) => key === "length")?.value).toBeCloseTo(12.6, 6);
  });

  test.each([[["--help"]], [["-h"]], [["help"]], [[]]])("%j shows the help, examples first", (words) => {
    const { code, out } = run(words);
    expect(code).toBe(0);
    expect(out.indexOf("Examples")).toBeLessThan(out.indexOf("Commands"));
  });

  test.each(["make", "check", "parts", "explain", "stock"])("%s --help leads with examples", (command) => {
    const { code, out } = run([command, "--help"]);
    expect(code).toBe(0);
    expect(out.indexOf("Examples")).toBeLessThan(out.indexOf("Usage"));
    expect(run(["help", command]).out).toBe(out);
  });

  test("colour comes when it is asked for and only then", () => {
    const folder = folderWith({ "bad.yaml": BAD });
    const start = "\u001b[";
    expect(run(["check", "bad.yaml"], folder).out).not.toContain(start);
    expect(run(["check", "bad.yaml", "--color", "always"], folder).out).toContain(start);
    expect(run(["check", "bad.yaml"], folder, { NO_COLOR: "", FORCE_COLOR: "1" }).out).toContain(start);
  });

  test("control characters of a file never reach the terminal", () => {
    const folder = folderWith({ "odd.yaml": GOOD.replace("1/4 in", '"\\e[31mred"') });
    const { out } = run(["check", "odd.yaml"], folder);
    expect(out).not.toContain("\u001b");
  });

  test("a closed pipe is not a fault", () => {
    const { status, stderr } = spawnSync("sh", ["-c", `node ${PROGRAM} stock bearings | head -1`], {
      encoding: "utf8",
    });
    expect(status).toBe(0);
    expect(stderr).not.toContain("EPIPE");
  });

  test("--version is the package's", () => {
    const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };
    expect(run(["--version"]).out.trim()).toBe(version);
  });
});
