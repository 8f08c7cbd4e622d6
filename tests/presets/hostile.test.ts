import { describe, expect, test } from "vitest";
import { painter } from "../../src/cli/io.ts";
import { messageLines } from "../../src/cli/message.ts";
import { readPartPreset } from "../../src/presets/part-preset.ts";
import { readYaml } from "../../src/presets/read.ts";

const HEAD = "format: 1\npart: wheel-spacer\nparameters:\n";
const many = (count: number, line: (index: number) => string) => Array.from({ length: count }, (_, i) => line(i));
const LETTERS = "abcdefghijkl".split("");
const chain = (each: number) =>
  [
    `a: &a [${Array(each).fill(1)}]`,
    ...LETTERS.slice(1).map((key, i) => `${key}: &${key} [${Array(each).fill(`*${LETTERS[i]}`)}]`),
  ].join("\n");

/** Signs that no line on a terminal may have: C0, C1 and DEL (ECMA-48), and what turns text round (UAX 9). */
const STEERING = /[^\P{Cc}\n]|[\p{Cs}\u202a-\u202e\u2066-\u2069\u2028\u2029]/u;

// What YAML may hold is of its specification, 1.2.2: 5.1 signs, 7.1 references, 3.2.1.3 equal keys.
const SIGNS: readonly (readonly [string, string, string, RegExp])[] = [
  ["a NUL", `${HEAD}  bolt: M5\u0000\n`, "4:11", /cannot be seen stands here: \\u0000/],
  ["a NUL, spelled", `${HEAD}  bolt: "M5\\0"\n`, "4:9", /cannot be seen: \\u0000/],
  ["an escape", `${HEAD}  bolt: \u001b[31mM5\n`, "4:9", /stands here: \\u001b/],
  ["an escape, spelled", `${HEAD}  bolt: "\\e[31mM5"\n`, "4:9", /cannot be seen: \\u001b/],
  ["an escape in a key", `${HEAD}  "\\e[31m": M5\n`, "4:3", /cannot be seen: \\u001b/],
  ["an escape in a bought item", `${HEAD}  material: { row: "\\e[1m" }\n`, "4:20", /cannot be seen: \\u001b/],
  ["a control sign of eight bits", `${HEAD}  bolt: "\\x9b31m"\n`, "4:9", /cannot be seen: \\u009b/],
  ["text turned round", `${HEAD}  bolt: \u202eM5\n`, "4:9", /stands here: \\u202e/],
  ["a comment turned round", `${HEAD}  bolt: M5 # \u2066x\n`, "4:14", /stands here: \\u2066/],
  ["half a letter", `${HEAD}  bolt: \ud800\n`, "4:9", /stands here: \\ud800/],
  ["half a letter, spelled", `${HEAD}  bolt: "\\uD800"\n`, "4:9", /cannot be seen: \\ud800/],
  ["bytes that are no UTF-8", `${HEAD}  bolt: M\ufffd5\n`, "4:10", /not text in UTF-8/],
  ["a byte-order mark inside", `${HEAD}  \ufeffbolt: M5\n`, "4:3", /stands here: \\ufeff/],
  ["carriage returns alone", HEAD.replaceAll("\n", "\r"), "1:10", /carriage return stands alone/],
  ["a NUL after CR LF", `format: 1\r\npart: x\u0000\r\n`, "2:8", /\\u0000/],
];

const SIZES: readonly (readonly [string, string, string, RegExp])[] = [
  ["too many letters", `# ${"x".repeat(300_000)}`, "1:1", /293 kB long, a preset at most 256 kB/],
  ["a long word", `${HEAD}  bolt: ${"x".repeat(200_000)}\n`, "4:9", /text of 200000 letters/],
  ["a long key", `${HEAD}  ${"x".repeat(200_000)}: 1\n`, "4:3", /text of 200000 letters/],
  ["a long key behind ?", `${HEAD}  ? ${"x".repeat(200_000)}\n  : 1\n`, "4:5", /text of 200000 letters/],
  ["a huge number", `${HEAD}  length: ${"9".repeat(5000)}\n`, "4:11", /text of 5000 letters/],
  ["brackets", `${HEAD}  a: ${"[".repeat(100_000)}\n`, "4:26", /more than 20 deep/],
  ["braces that close", `${HEAD}  a: ${"{a: ".repeat(300)}1${"}".repeat(300)}\n`, "4:86", /more than 20 deep/],
  ["lists in one line", `a:\n  ${"- ".repeat(60_000)}1\n`, "2:43", /more than 20 deep/],
  ["keys in one line", `a:\n  ${"? ".repeat(60_000)}1\n`, "2:43", /more than 20 deep/],
  ["blocks", many(500, (i) => `${" ".repeat(i)}a:`).join("\n"), "21:21", /more than 20 deep/],
  ["one key again and again", HEAD + many(30_000, () => "  k: 1\n").join(""), "1501:6", /more than 12000 words/],
  ["quotation marks", '"'.repeat(200_000), "1:23999", /more than 12000 words/],
  ["commas", `[${",".repeat(200_000)}]`, "1:12000", /more than 12000 words/],
  ["anchors in a row", "&a ".repeat(60_000), "1:18000", /more than 12000 words/],
  ["types in a row", "! ".repeat(60_000), "1:12000", /more than 12000 words/],
  ["directives", `${"%X\n".repeat(20_000)}---\n`, "6001:1", /more than 12000 words/],
];

const REFERENCES: readonly (readonly [string, string, string, RegExp])[] = [
  ["a bomb", chain(9), "3:8", /leads to others/],
  ["a bomb in few references", chain(2).split("\n").slice(0, 8).join("\n"), "3:8", /leads to others/],
  ["a reference to itself", `${HEAD}  a: &a [*a]\n`, "4:10", /leads to others/],
  ["many references", `a: &a 1\n${many(40, (i) => `k${i}: *a`).join("\n")}\n`, "18:6", /too often/],
  ["a reference to nothing", `${HEAD}  bolt: *nobody\n`, "4:9", /does not stand before it/],
];

const KEYS: readonly (readonly [string, string, string, RegExp])[] = [
  ["a key twice", `${HEAD}  bolt: M5\n  bolt: M6\n`, "5:3", /there twice/],
  ["a key twice, as number and text", `${HEAD}  1: 2\n  "1": 3\n`, "5:3", /there twice/],
  ["a map for a key", `${HEAD}  { a: 1 }: 1\n`, "4:3", /key is no word/],
  ["no key", `${HEAD}  : 1\n`, "4:3", /key is no word/],
  ["the prototype", `${HEAD}  __proto__: { bolt: M5 }\n`, "4:3", /__proto__ is not a key/],
  ["the prototype, spelled", `${HEAD}  "__pro\\x74o__": 1\n`, "4:3", /__proto__ is not a key/],
  ["an unknown type", `${HEAD}  bolt: !evil M5\n`, "4:9", /type \(!\) is not known/],
  ["two documents", `${HEAD}  bolt: M5\n---\na: 1\n`, "5:1", /second document/],
];

describe("a stranger's file", () => {
  test.each([...SIGNS, ...SIZES, ...REFERENCES, ...KEYS])("%s: said at its place, soon", (_, text, at, says) => {
    const start = process.cpuUsage();
    const { value, complaints } = readPartPreset(readYaml("odd.yaml", text));
    const { user, system } = process.cpuUsage(start);
    // What stands twice is told, and the rest is looked at in the same run.
    expect(value === undefined || complaints.some(({ diagnostic }) => diagnostic.level === "error")).toBe(true);
    const [first] = complaints;
    expect(`${first?.place?.line}:${first?.place?.column}`).toBe(at);
    expect(first?.diagnostic.says).toMatch(says);
    const lines = complaints.flatMap((one) => messageLines(one, painter("never", {}, false)));
    expect(lines.filter((line) => STEERING.test(line) || line.length > 500)).toEqual([]);
    // Half a minute of work, and more, is what some of these were before they were counted first.
    expect((user + system) / 1e6).toBeLessThan(2);
  });

  test("what a preset may hold is not refused: marks of its language, tabs behind values, references", () => {
    const text = `\ufeff${HEAD}  bolt: &b M5\t# größer, 螺栓, \u200fعربي\r\n  material: PETG\r\n`;
    expect(readYaml("a.yaml", text).complaints).toEqual([]);
    expect(readYaml("a.yaml", `${HEAD}  bolt: &b M5\n  kind: *b\n`).complaints).toEqual([]);
    expect(readYaml("a.yaml", `${HEAD}  a: >\n    two\n    lines\n`).complaints).toEqual([]);
  });

  test("a file's name cannot steer the terminal", () => {
    const { complaints } = readYaml("\u001b]0;x\u0007\n.yaml", "a: b: c");
    const [line] = complaints.flatMap((one) => messageLines(one, painter("never", {}, false)));
    expect(line?.startsWith("\\u001b]0;x\\u0007\\u000a.yaml:1:")).toBe(true);
  });
});
