import { describe, expect, test } from "vitest";
import { shown } from "../../src/cli/explain/shown.ts";
import { messageLines } from "../../src/cli/message.ts";
import { figure, lasting, wrap } from "../../src/cli/screen.ts";

describe("a figure", () => {
  test.each([
    [0.004, "mm", "0.004"],
    [0.0123, "mm", "0.012"],
    [-0.00456, "deg", "-0.0046"],
    [0.123, "mm", "0.12"],
    [12.344, "mm", "12.34"],
    [4, "mm", "4"],
    [0, "mm", "0"],
    [0.09473, "", "0.09473"],
    [1036.4, "MPa", "1036"],
  ] as const)("%d %s is %s: two decimals of a length, two digits where they would be noughts", (value, unit, said) => {
    expect(figure(value, unit)).toBe(said);
  });

  test.each([
    [38094.2, "J", "38090"],
    [2340872, "h", "2300000"],
    [22472.4, "Mrev", "22000"],
    [87.4, "h", undefined],
    [12642, "rpm", "12640"],
    [10080.2, "mm", undefined],
  ] as const)("%d %s in a report is %s: four digits, two of a life", (value, unit, said) => {
    expect(lasting(value, unit)).toBe(said);
  });

  test("what explain shows is never nought unless it is", () => {
    for (let size = 1e-9; size < 1e9; size *= 3.7) expect(Number(shown(size, "mm"))).toBeGreaterThan(0);
  });
});

test("words are broken with a first line of its own width", () => {
  expect(wrap("aa bb cc dd", 5)).toEqual(["aa bb", "cc dd"]);
  expect(wrap("aa bb cc dd", 5, 2)).toEqual(["aa", "bb cc", "dd"]);
});

test("the first line of a message is broken like the rest", () => {
  const says = Array(40).fill("word").join(" ");
  const diagnostic = { name: "x", level: "note", path: [], says, why: "", set: "" } as const;
  const lines = messageLines({ file: "bench.yaml", place: undefined, diagnostic }, (_, words) => words);
  expect(lines.every((line) => line.length <= 98)).toBe(true);
  expect(lines[0]).toMatch(/^bench\.yaml: note: word/);
  expect(lines[1]).toMatch(/^ {4}word/);
});
