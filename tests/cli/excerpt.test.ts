import { spawnSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import { excerpt } from "../../src/cli/excerpt.ts";
import { screenWidth, signWidth } from "../../src/cli/screen-width.ts";
import { hasTool } from "../support/outside-tool.ts";
import { folderWith, run } from "./program.ts";

/** Returns the columns in which marks stand and those of what is meant, worked out by hand from stops of eight. */
function columnsOf(line: string, sign: (one: string) => boolean, widths: Readonly<Record<string, number>>): number[] {
  let column = 0;
  const found: number[] = [];
  for (const one of line) {
    const width = one === "\t" ? 8 - (column % 8) : (widths[one] ?? 1);
    if (sign(one)) for (let at = 0; at < width; at++) found.push(column + at);
    column += width;
  }
  return found;
}

const place = (text: string, meant: string) => ({
  line: 1,
  column: text.indexOf(meant) + 1,
  width: meant.length,
  text,
});

describe("the caret stands under what is meant", () => {
  test.each([
    ["a key behind tabulators", "\t\tkey:\tX", "X", {}],
    ["a tabulator between words", "  a: 1\t, b:\t\tX", "X", {}],
    ["umlauts", "größe: Öl, X", "X", {}],
    ["Chinese and Japanese", "名: 日本, X", "X", { 名: 2, 日: 2, 本: 2 }],
    ["wide signs that are meant", "name: 日日", "日日", { 日: 2 }],
    ["emoji", "note: 🔩🧵 X", "X", { "🔩": 2, "🧵": 2 }],
    ["letters with accents of their own", "e\u0301te\u0301: X", "X", { "\u0301": 0 }],
    ["wide signs before a tabulator", "日:\tX", "X", { 日: 2 }],
  ] as const)("%s", (_, text, meant, widths) => {
    const [line = "", marks = ""] = excerpt(place(text, meant));
    const under = columnsOf(marks, (one) => one === "^", widths);
    const above = columnsOf(line, (one) => meant.includes(one), widths);
    expect(under.length).toBeGreaterThan(0);
    expect(under).toEqual(above);
  });

  test("a family in one picture, a flag and a coloured hand take two columns each", () => {
    for (const sign of ["👩‍👩‍👧", "🇩🇪", "👍🏽", "❤️"]) {
      const [, marks] = excerpt(place(`${sign}: X`, "X"));
      expect(marks, sign).toBe("        ^");
    }
  });

  test("of a long line the part that is meant is shown, within the screen", () => {
    const text = `x: [${"1, ".repeat(200)}WRONG${", 2".repeat(200)}]`;
    const [line = "", marks = ""] = excerpt(place(text, "WRONG"));
    expect(line.length).toBeLessThanOrEqual(98);
    expect(line.slice(marks.indexOf("^"), marks.length)).toBe("WRONG");
    const wide = `x: ${"日".repeat(300)}WRONG`;
    const [shown = "", under = ""] = excerpt(place(wide, "WRONG"));
    expect(screenWidth(shown)).toBeLessThanOrEqual(98);
    expect(screenWidth(shown.slice(0, shown.indexOf("W")))).toBe(under.indexOf("^"));
  });

  test("signs that steer a terminal or turn its direction are spelled, and the caret counts them so", () => {
    const [line = "", marks = ""] = excerpt(place("a\u202e\u009b: X", "X"));
    expect(line).toBe("    a\\u202e\\u009b: X");
    expect(marks.indexOf("^")).toBe(line.indexOf("X"));
  });

  test("in the messages of the program as well", () => {
    const folder = folderWith({ "a.yaml": "format: 1\npart: screw-foot\nname: { 日本: ö }\n" });
    const lines = run(["check", "a.yaml"], folder).out.split("\n");
    const at = lines.findIndex((line) => line.includes("日本"));
    expect(lines[at]).toMatch(/^ {4}\S/);
    expect(lines[at + 1]).toMatch(/^ +\^+$/);
  });
});

// Unicode's own table of East Asian widths, as Python's standard library has it.
test.runIf(hasTool("python3"))("every sign that Unicode calls wide takes two columns, and no other does", () => {
  const script =
    "import unicodedata as u;print(*[f'{c:x}{u.east_asian_width(chr(c))}' for c in range(0xa0,0x3ffff) " +
    "if u.category(chr(c)) not in ('Cn','Cs','Co','Mn','Me','Cf') and not 0x1160<=c<=0x11ff])";
  const { stdout } = spawnSync("python3", ["-c", script], { encoding: "utf8", maxBuffer: 1 << 26 });
  const signs = stdout.trim().split(" ");
  expect(signs.length).toBeGreaterThan(100_000);
  const different = signs.flatMap((entry) => {
    const [, code = "", kind = ""] = /^([0-9a-f]+?)(Na|[WFHAN])$/.exec(entry) ?? [];
    const wide = kind === "W" || kind === "F";
    return signWidth(String.fromCodePoint(Number.parseInt(code, 16))) === (wide ? 2 : 1) ? [] : [entry];
  });
  expect(different).toEqual([]);
});
