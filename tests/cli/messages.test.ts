import { stripVTControlCharacters } from "node:util";
import { describe, expect, test } from "vitest";
import { inOrder } from "../../src/cli/message.ts";
import type { Located } from "../../src/presets/read.ts";
import { folderWith, run } from "./program.ts";

const BAD = `format: 1
part: wheel-spacer
name: bench
parameters:
  against: bearing
  lenght: 3
  wheel: nothing
`;
const PRINTER = "format: 1\nprinter: p\nsettings:\n  layer: 9\n";

/** What editors take apart to jump to a place: file, line, column, level, words. */
const JUMP = /^([^:]+):(\d+):(\d+): (error|warning|note): (.+) \[([a-z0-9-]+)\]$/;

describe("--messages", () => {
  test("short is one line each, in the order of the file, and the same complaints as in full", () => {
    const folder = folderWith({ "bad.yaml": BAD });
    const { code, out, err } = run(["check", "bad.yaml", "--messages", "short"], folder);
    const lines = out.trimEnd().split("\n");
    expect(code).toBe(1);
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(line).toMatch(JUMP);
    const numbers = lines.map((line) => Number(JUMP.exec(line)?.[2]));
    expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
    const full = run(["check", "bad.yaml"], folder);
    const heads = full.out.split("\n").filter((line) => /^bad\.yaml:\d+:\d+: /.test(line));
    expect(heads.map((line) => line.split(" ").slice(0, 2).join(" "))).toEqual(
      lines.map((line) => line.split(" ").slice(0, 2).join(" ")),
    );
    // The summary stays what it is, and the last line.
    expect(err.trimEnd().split("\n").at(-1)).toBe(full.err.trimEnd().split("\n").at(-1));
    expect(err).toMatch(/: \d+ errors?, \d+ warnings?\n$/);
  });

  test("json is one document a line, with the same places", () => {
    const folder = folderWith({ "bad.yaml": BAD });
    const short = run(["check", "bad.yaml", "--messages=short"], folder).out.trimEnd().split("\n");
    const json = run(["check", "bad.yaml", "--messages=json"], folder).out.trimEnd().split("\n");
    const places = json.map((line) => {
      const { file, line: at, column, level, says, name } = JSON.parse(line) as Record<string, string>;
      return `${file}:${at}:${column}: ${level}: ${says} [${name}]`;
    });
    expect(places).toEqual(short);
  });

  test.each([
    ["make", ["make", "bad.yaml"], "err"],
    ["check", ["check", "bad.yaml"], "out"],
    ["report", ["report", "plan.yaml"], "err"],
    ["tram", ["tram", "plan.yaml", "--probe", "0,0,0", "1,0,0", "0,1,0"], "err"],
    ["compare", ["compare", "plan.yaml", "plan.yaml"], "err"],
    ["explain", ["explain", "seat", "--preset", "bad.yaml"], "err"],
  ] as const)("means the same for %s", (_, words, stream) => {
    const folder = folderWith({ "bad.yaml": BAD, "plan.yaml": "format: 1\nstage: x\nbars: 3\n" });
    const ran = run([...words, "--messages", "short"], folder);
    expect(ran.code).toBe(1);
    expect(ran[stream].split("\n")[0]).toMatch(JUMP);
  });

  test("what says more than one line is still one line", () => {
    const folder = folderWith({ "odd.yaml": 'format: 1\npart: "a\\nb"\nname: x\n' });
    const lines = run(["check", "odd.yaml", "--messages", "short"], folder).out.trimEnd().split("\n");
    for (const line of lines) expect(line).toMatch(JUMP);
  });

  test("quiet leaves notes out, verbose tells them in full and every number", () => {
    const folder = folderWith({ "ok.yaml": "format: 1\npart: wheel-spacer\nname: ok\n" });
    const [quiet, usual, more] = [["-q"], [], ["-v"]].map((words) => run(["check", "ok.yaml", ...words], folder).out);
    expect(quiet).not.toContain(": note: ");
    expect(usual).toContain(": note: ");
    expect(usual).not.toContain("  number    ");
    expect(more).toContain("  number    ");
    const why = (text = "") => text.split("\n").filter((line) => line.startsWith("  why ")).length;
    expect(why(more)).toBeGreaterThan(why(usual));
  });

  test("colour changes no word", () => {
    const folder = folderWith({ "bad.yaml": BAD });
    const plain = run(["check", "bad.yaml", "--messages", "short"], folder).out;
    const painted = run(["check", "bad.yaml", "--messages", "short", "--color", "always"], folder).out;
    expect(painted).not.toBe(plain);
    expect(stripVTControlCharacters(painted)).toBe(plain);
  });
});

describe("repeated messages", () => {
  const at = (line: number, says: string, column = 1): Located => ({
    file: "a.yaml",
    place: { line, column, width: 1, text: "x" },
    diagnostic: { name: "x", level: "error", path: [], says, why: "", set: "" },
  });

  test("are merged where they stand at one place, and ordered by line and column", () => {
    const told = inOrder([at(3, "b"), at(1, "a", 5), at(3, "b"), at(1, "c", 2)]);
    expect(told.map(({ place, diagnostic }) => [place?.line, place?.column, diagnostic.says])).toEqual([
      [1, 2, "c"],
      [1, 5, "a"],
      [3, 1, "b"],
    ]);
  });

  test("of two places are both told: each has to be mended", () => {
    expect(inOrder([at(3, "b"), at(4, "b")])).toHaveLength(2);
  });

  test("of a printer's file that two presets share are told once", () => {
    const one = "format: 1\npart: wheel-spacer\nprinter: p.yaml\nname: ";
    const folder = folderWith({ "a.yaml": `${one}a\n`, "b.yaml": `${one}b\n`, "p.yaml": PRINTER });
    const { out } = run(["check", "a.yaml", "b.yaml", "--messages", "short", "-q"], folder);
    expect(out.split("\n").filter((line) => line.startsWith("p.yaml:4:"))).toHaveLength(1);
  });
});
