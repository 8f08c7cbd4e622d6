import { expect } from "vitest";
import { type Io, painter } from "../../src/cli/io.ts";

/** Runs a command with paper for a screen and returns its lines; the command must end with 0 and say nothing aside. */
export function collect(command: (io: Io) => number, color: "never" | "always" = "never"): string[] {
  const said: string[] = [];
  const aside: string[] = [];
  const code = command({
    out: (line) => said.push(...line.split("\n")),
    err: (line) => aside.push(line),
    paint: painter(color, {}, false),
  });
  expect(code).toBe(0);
  expect(aside).toEqual([]);
  return said;
}

/** Expects lines that a builder can read: within the screen, no numbers that are none, no blanks at the end. */
export function expectReadable(said: readonly string[], about: string): void {
  expect(said.length, about).toBeGreaterThan(0);
  expect(said.join("\n"), about).not.toMatch(/\bNaN\b|\bundefined\b|\bnull\b|\[object|Infinity|=>|\$\{/);
  expect(
    said.filter((line) => line.length > 100),
    about,
  ).toEqual([]);
  expect(
    said.filter((line) => line !== line.trimEnd()),
    about,
  ).toEqual([]);
}

/** Returns the one JSON document that a command printed. */
export function document<What>(command: (io: Io) => number): What {
  return JSON.parse(collect(command).join("\n")) as What;
}

/** Returns the words of the trouble that a command ends with. */
export function troubleOf(command: (io: Io) => number): string {
  try {
    collect(command);
  } catch (thrown) {
    if (thrown instanceof Error && "trouble" in thrown) return thrown.message;
    throw thrown;
  }
  throw new Error("no trouble came");
}
