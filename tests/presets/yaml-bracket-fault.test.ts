import { describe, expect, test } from "vitest";
import { readYaml } from "../../src/presets/read.ts";
import { bracketFault } from "../../src/presets/yaml-bracket-fault.ts";

/** What is said of a line, and the column it is said of. */
function told(line: string): [string | undefined, number | undefined] {
  const { complaints } = readYaml("p.yaml", `format: 1\nscrews:\n${line}\n  B: { at: [3, 4] }\n`);
  expect(complaints).toHaveLength(1);
  const [one] = complaints;
  expect(one?.place?.line).toBe(3);
  return [one?.diagnostic.says, one?.place?.column];
}

describe("a bracket without its other one is told at the bracket", () => {
  test.each([
    ["  A: { at: [1, 2, bar: front }", "[ opened at column 12 is not closed", 12],
    ["  A: { at: [1, 2], bar: front", "{ opened at column 6 is not closed", 6],
    ["  A: { at: [1, 2", "[ opened at column 12 is not closed", 12],
    ["  A: { at: [1, 2 } # ]", "[ opened at column 12 is not closed", 12],
    ['  A: { at: [1, "]" }', "[ opened at column 12 is not closed", 12],
    ["  A: [1, 2}", "[ opened at column 6 is not closed", 6],
    ["  A: { at: 1, 2], bar: front }", "] closes nothing: no [ is open here", 16],
    ["  A: { at: [1, 2]], bar: front }", "] closes nothing: no [ is open here", 18],
  ])("%s", (line, says, column) => {
    expect(told(line)).toEqual([says, column]);
  });

  test("brackets in text, in comments, in pairs, or behind an open quotation mark are none", () => {
    expect(bracketFault('a: "[" # {\nb: x [ y\nc: { d: [1, 2] }\n')).toBeUndefined();
    expect(bracketFault('a: { b: "x }\n')).toBeUndefined();
  });
});
