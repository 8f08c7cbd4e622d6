import { parseArgs } from "node:util";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ALIASES, type Arguments, FLAGS, readArguments, VALUES } from "../../src/cli/arguments.ts";
import { isTrouble } from "../../src/cli/io.ts";
import { runs } from "../support/thorough.ts";
import { run } from "./program.ts";

/** Returns what is read, or the words of the trouble. */
function read(words: readonly string[]): Arguments | string {
  try {
    return readArguments(words);
  } catch (thrown) {
    if (isTrouble(thrown)) return thrown.trouble;
    throw thrown;
  }
}

const letters: Readonly<Record<string, string>> = ALIASES;
const short = (name: string) => (letters[name] === undefined ? {} : { short: letters[name] });
const TABLE = Object.fromEntries([
  ...FLAGS.map((name) => [name, { type: "boolean" as const, multiple: true, ...short(name) }]),
  ...VALUES.map((name) => [name, { type: "string" as const, multiple: true, ...short(name) }]),
]);

/** Reads the words as Node's own parser does; undefined where that refuses them. */
function byNode(words: readonly string[]): (Omit<Arguments, "flags"> & { readonly flags: string[] }) | undefined {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      options: TABLE,
      allowPositionals: true,
      strict: true,
    });
    const [command = "", ...operands] = positionals;
    const given = Object.entries(values as Record<string, (string | boolean)[]>);
    return {
      command,
      operands,
      flags: given.filter(([name]) => FLAGS.includes(name)).map(([name]) => name),
      values: Object.fromEntries(given.filter(([name]) => VALUES.includes(name))) as Record<string, string[]>,
    };
  } catch {
    return undefined;
  }
}

const value = fc.oneof(
  fc.constantFrom(
    "out",
    "a=b",
    "1/4 in",
    "0",
    "0x10",
    "1e3",
    "007",
    "true",
    "false",
    "null",
    "./-",
    "-",
    "ä",
    "3,4",
    "a b",
  ),
  fc.string({ minLength: 1, maxLength: 6 }).filter((one) => !one.startsWith("-")),
);
const flag = fc.constantFrom(...FLAGS.map((name) => `--${name}`), "-q", "-v", "-h", "-qv", "-vq");
const valued = fc.tuple(fc.constantFrom(...VALUES), value);
const word = fc.oneof(
  value.map((one) => [one]),
  flag.map((one) => [one]),
  valued.map(([name, one]) => [`--${name}`, one]),
  valued.map(([name, one]) => [`--${name}=${one}`]),
  value.map((one) => ["-o", one]),
  // Behind a letter `=` is read as behind a name: Node takes it for the value's first sign.
  value.filter((one) => !one.startsWith("=") && one !== "utput").map((one) => [`-o${one}`]),
  fc.constant(["--"]),
  fc.constantFrom(["--json=garbage"], ["-o"], ["--set"], ["--output="], ["--output", "--json"], ["-j"]),
);

describe("argument lines", () => {
  // Node's own parser, util.parseArgs, with the same table of options.
  test("are read as Node reads them, and refused where Node refuses them", () => {
    let both = 0;
    const line = fc.array(word, { maxLength: 7 }).map((words) => words.flat());
    fc.assert(
      fc.property(line, (words) => {
        const theirs = byNode(words);
        const ours = read(words);
        if (theirs === undefined) {
          // A stranger is refused when it is known which command it stands behind, and with it a missing value.
          const open = typeof ours !== "string" && Object.keys(ours.values).some((name) => !VALUES.includes(name));
          expect(open || typeof ours === "string", words.join(" ")).toBe(true);
          return;
        }
        if (typeof ours === "string") throw new Error(`${JSON.stringify(words)}: ${ours}`);
        both++;
        expect({ ...ours, flags: [...ours.flags].sort() }).toEqual({ ...theirs, flags: [...theirs.flags].sort() });
      }),
      { numRuns: runs(3000), seed: 20 },
    );
    expect(both).toBeGreaterThan(runs(1000, 200));
  });

  test.each([
    [["make", "-"], { command: "make", operands: ["-"] }],
    [["compare", "-", "b.yaml"], { operands: ["-", "b.yaml"] }],
    [["check", "007", "1e3"], { operands: ["007", "1e3"] }],
    [["make", "-o", "-"], { values: { output: ["-"] } }],
    [["make", "--", "--json=1", "-q"], { operands: ["--json=1", "-q"] }],
    [["tram", "--probe", "-12,80,-.5", "-1,2,3"], { operands: ["-1,2,3"], values: { probe: ["-12,80,-.5"] } }],
    [["stock", "nuts", "--h", "4"], { operands: ["nuts"], values: { h: ["4"] } }],
    [["stock", "nuts", "--s=8"], { values: { s: ["8"] } }],
  ])("%j keeps every word as it was typed", (words, wanted) => {
    expect(read(words)).toMatchObject(wanted);
  });

  test.each([["--json", "--json"], ["-qq"], ["--quiet", "-q"]])(
    "a flag that is given twice is given: %j",
    (...words) => {
      expect((read(["check", ...words]) as Arguments).flags.size).toBe(1);
    },
  );

  test.each([
    [["check", "--json=garbage"], "--json takes no value"],
    [["check", "--json=false"], "--json takes no value"],
    [["check", "-q=1"], "-q takes no value"],
    [["make", "-output", "x"], "--output is written with two dashes"],
    [["check", "--constructor", "x"], "there is no option --constructor"],
    [["check", "--__proto__=x"], "there is no option --__proto__"],
    [["check", "--_", "x"], "there is no option --_"],
    [["make", "-o"], "--output needs a value behind it"],
    [["make", "--set"], "--set needs a value behind it"],
    [["make", "--output", "--json"], "--output needs a value behind it"],
  ])("%j is refused, with what to write", (words, says) => {
    expect(read(words)).toBe(says);
  });

  test.each([
    [["constructor"], "there is no command constructor"],
    [["make", "wheel-spacer", "-o", ""], "--output needs a value behind it"],
    [["make", "wheel-spacer", "--set="], "--set needs a value behind it"],
    [["stock", "bearings", "--bore"], "--bore needs a value behind it"],
    [["stock", "bearings", "--bore="], "--bore needs a value behind it"],
    [["stock", "--force"], "stock has no option --force"],
    [["stock", "bearings", "-o", "x"], "stock has no option --output"],
    [["check", "wheel-spacer", "-j"], "check has no option -j"],
    [["check", "wheel-spacer", "--colour", "never"], "check has no option --colour; the nearest is --color"],
    [["check", "wheel-spacer", "--no-color"], "check has no option --no-color; the nearest is --color"],
    [["check", "wheel-spacer", "--messages", "long"], "--messages takes full, short or json, not long"],
    [["check", "wheel-spacer", "-q", "-v"], "--quiet tells less and --verbose more: leave one out"],
    [["compare", "-", "-"], "standard input can be read once, and - stands there more than once"],
    [["make", "wheel-spacer", "-o", "-"], "make writes several files, which standard output cannot take"],
    [["help", "mkae"], "there is no command mkae; the nearest is make"],
    [["help", "make", "check"], "help takes at most 1 name, not 2"],
    [["completion", "bahs"], "there is no script for bahs; the nearest is bash"],
    [["completion"], "completion needs one of bash, zsh, fish, powershell"],
  ])("%j ends with 2 and one line", (words, says) => {
    const { code, out, err } = run(words);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/^tramwright: [^\n]+\n$/);
    expect(err).toContain(says);
  });

  test("what is said of a missing value does not follow the language of the machine", () => {
    const { err } = run(["make", "-o"], undefined, { LC_ALL: "de_DE.UTF-8", LANGUAGE: "de" });
    expect(err).toBe("tramwright: --output needs a value behind it\n");
  });
});
