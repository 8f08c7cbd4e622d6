import { cpSync, mkdirSync, mkdtempSync, readdirSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { run } from "../cli/program.ts";
import { dice } from "../outside/random.ts";
import { runs } from "../support/thorough.ts";
import { nextCase, seedsIn } from "./seeds.ts";
import { flawOf } from "./survives.ts";

const SEEDS = seedsIn("presets");
const CASES = runs(20_000, 1200);

describe("files changed by chance", () => {
  test("are answered: no exception, no hang, no name outside the folder, no odd sign in a message", () => {
    const flaws: string[] = [];
    for (let index = 0; index < CASES; index++) {
      const { path, text } = nextCase(SEEDS, dice(index));
      const flaw = flawOf(text, path);
      if (flaw !== undefined) flaws.push(`case ${index} of ${path} ${flaw}`);
    }
    expect(flaws).toEqual([]);
  });

  test.each(seedsIn("tests/fuzz/corpus"))("$path, which failed once, is answered", ({ path, text }) => {
    expect(flawOf(text, path)).toBeUndefined();
    expect(flawOf(text, "presets/parts/screw-foot/shelf-lift-left.yaml")).toBeUndefined();
  });

  test("the hunt notices an exception", () => {
    expect(flawOf(null as unknown as string, "a.yaml")).toMatch(/^throws TypeError/);
  });
});

/** Files of one run of the program. */
const BATCH = 14;
const RUNS = runs(18, 6);
/** What the shell may be told: done, errors, usage, files. */
const CODES = [0, 1, 2, 3];

test("the program itself, on real files: exit codes of the list, nothing written outside its folder", () => {
  const root = mkdtempSync(join(tmpdir(), "tramwright-fuzz-"));
  cpSync("presets", join(root, "presets"), { recursive: true });
  const place = join(root, "presets/parts/mutants");
  mkdirSync(place);
  const before = readdirSync(root, { recursive: true, encoding: "utf8" }).sort();
  for (let round = 0; round < RUNS; round++) {
    const files = Array.from({ length: BATCH }, (_, index) => {
      const own = dice(7_000_000 + round * BATCH + index);
      const name = join("presets/parts/mutants", `m${index}.yaml`);
      writeFileSync(join(root, name), nextCase(SEEDS, own).text);
      return name;
    });
    const command = round % 3 === 0 ? "make" : "check";
    const { code, out, err } = run([command, ...files, "-o", "out"], root);
    expect(CODES, `${command} in round ${round} ended with ${code}: ${err.slice(-500)}`).toContain(code);
    expect(`${out}${err}`).not.toMatch(/a fault of ours|[^\P{Cc}\n]/u);
  }
  const after = readdirSync(root, { recursive: true, encoding: "utf8" }).sort();
  const outside = after.filter((name) => name !== "out" && !name.startsWith("out/"));
  const mutants = Array.from({ length: BATCH }, (_, index) => `presets/parts/mutants/m${index}.yaml`);
  expect(outside).toEqual([...before, ...mutants].sort());
});
