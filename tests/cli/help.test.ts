import { describe, expect, test } from "vitest";
import { COMMANDS, helpFor, helpOf } from "../../src/cli/help.ts";
import { run } from "./program.ts";

const NAMES = Object.keys(COMMANDS);
const WAYS = (name: string) => [
  ["help", name],
  [name, "--help"],
  [name, "-h"],
  ["--help", name],
];

describe("help", () => {
  test.each(["make", "new", "completion"])("of %s is the same text in four ways, and says nothing else", (name) => {
    for (const words of [...WAYS(name), ["-h", name]])
      expect(run(words), words.join(" ")).toEqual({ code: 0, out: `${helpOf(name)}\n`, err: "" });
  });

  test("of the program is the same in five ways, examples first", () => {
    const [first, ...others] = [[], ["help"], ["--help"], ["-h"], ["help", "help"]].map((words) => run(words).out);
    expect(first?.indexOf("Examples")).toBeLessThan(first?.indexOf("Commands") ?? 0);
    expect(first?.indexOf("Examples")).toBeGreaterThan(0);
    for (const other of others) expect(other).toBe(first);
    expect(first?.split("\n").filter((line) => line.length > 98 && !line.startsWith("  tramwright "))).toEqual([]);
    for (const name of NAMES) expect(first).toMatch(new RegExp(`^  ${name} +\\S`, "m"));
  });

  test.each(NAMES)("of %s leads with examples of it and fits the screen", (name) => {
    for (const words of WAYS(name)) expect(helpFor(words, "1")).toBe(helpOf(name));
    const lines = helpOf(name).split("\n");
    expect(lines[2]).toBe("Examples");
    for (const example of COMMANDS[name]?.examples ?? []) expect(example).toContain(`tramwright ${name}`);
    const wide = lines.filter((line) => line.length > 98 && !line.startsWith("  tramwright "));
    expect(wide).toEqual([]);
  });

  test("is also given beside other options, and not for a word that only looks like it", () => {
    expect(run(["make", "x.yaml", "--force", "--help"]).out).toBe(`${helpOf("make")}\n`);
    expect(helpFor(["make", "help"], "1")).toBeUndefined();
    expect(helpFor(["constructor", "--help"], "1")).toBeUndefined();
  });

  test("an option has one spelling and one meaning in all commands", () => {
    const meanings = new Map<string, Set<string>>();
    for (const { options } of Object.values(COMMANDS))
      for (const [flag, what] of options) meanings.set(flag, (meanings.get(flag) ?? new Set()).add(what));
    // What is laid over depends on what is read; what is written where depends on what is made.
    const several = [...meanings].filter(([, whats]) => whats.size > 1).map(([flag]) => flag);
    expect(several.sort()).toEqual(["--force", "--set key=value", "-o, --output folder"]);
    const names = [...meanings.keys()].map((flag) => flag.split(/[ ,]/).at(0));
    expect(new Set(names.filter((name) => name !== "-o")).size).toBe(names.filter((name) => name !== "-o").length);
  });
});
