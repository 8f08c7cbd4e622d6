import { readdirSync, readFileSync, statSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { fresh, run } from "./program.ts";

// Metamorphic: what a moved motor must change it changes, and no other file by a byte.
const PLAN = resolve("presets/stages/seed-bench.yaml");
/** The loop that was bought for the motor where it was; another one might fit a moved motor better. */
const BOUGHT = "loops.high.stock=[232]";

/** Every file of the set that `make` writes, with its bytes, by its name. */
function made(...set: string[]): Map<string, string> {
  const folder = fresh();
  const { code, err } = run(["make", PLAN, ...[BOUGHT, ...set].flatMap((each) => ["--set", each])], folder);
  expect([code, err.includes("error:")]).toEqual([0, false]);
  const root = join(folder, "out", "seed-bench");
  const names = readdirSync(root, { recursive: true, encoding: "utf8" }).filter((name) =>
    statSync(join(root, name)).isFile(),
  );
  return new Map(names.sort().map((name) => [name, readFileSync(join(root, name), "latin1")]));
}

/** The files that differ, or that only one of the sets has. */
function changed(one: ReadonlyMap<string, string>, other: ReadonlyMap<string, string>): string[] {
  return [...new Set([...one.keys(), ...other.keys()])].filter((name) => one.get(name) !== other.get(name)).sort();
}

/** The numbers of the report that differ, with how much. */
function moved(one: ReadonlyMap<string, string>, other: ReadonlyMap<string, string>): Map<string, number> {
  type Report = { sections: { facts: { key: string; value: number }[] }[] };
  const facts = (set: ReadonlyMap<string, string>) =>
    new Map(
      (JSON.parse(set.get("report.json") ?? "{}") as Report).sections.flatMap((section) =>
        section.facts.map(({ key, value }) => [key, value] as const),
      ),
    );
  const [before, after] = [facts(one), facts(other)];
  expect([...after.keys()]).toEqual([...before.keys()]);
  const by = [...before].map(([key, value]) => [key, (after.get(key) ?? Number.NaN) - value] as const);
  return new Map(by.filter(([, difference]) => Math.abs(difference) > 1e-6));
}

const STILL = made();

describe("the motor of a whole machine", () => {
  test("3 mm higher: belts and feet follow by 3 mm; mounts, thumb wheels and wheel plates keep every byte", () => {
    const higher = made("motor.plateTop=13");
    const files = changed(STILL, higher);
    const parts = files.filter((name) => name.startsWith("parts/"));
    expect(new Set(parts.map((name) => /^parts\/(foot-[abc])/.exec(name)?.[1]))).toEqual(
      new Set(["foot-a", "foot-b", "foot-c"]),
    );
    for (const foot of ["a", "b", "c"]) expect(parts).toContain(`parts/foot-${foot}.stl`);
    expect(files.filter((name) => !name.startsWith("parts/"))).toEqual(["belts.svg", "manifest.json", "report.json"]);
    const kept = [...STILL.keys()].filter((name) => name.endsWith(".stl") && !files.includes(name));
    expect(kept.filter((name) => /mount|carriage/.test(name)).length).toBeGreaterThanOrEqual(8);
    const by = moved(STILL, higher);
    for (const loop of ["low", "high"]) expect(by.get(`loop.${loop}.plane`)).toBeCloseTo(3, 9);
    for (const screw of ["a", "b", "c"]) {
      expect(by.get(`foot-${screw}.plane-over-datum`)).toBeCloseTo(3, 9);
      expect(by.get(`foot-${screw}.seat`)).toBeCloseTo(3, 9);
    }
    // The idler's roll must meet the belt, so its block is 3 mm higher.
    expect(by.get("idler.press.bottom")).toBeCloseTo(3, 9);
    const strange = [...by.keys()].filter(
      (key) =>
        !/^(loop\.\w+\.plane|motor\.\w+\.(bottom|top)|foot-[abc]\.|idler\.press\.bottom|screw\.[ABC]\.(column|whirl))/.test(
          key,
        ),
    );
    expect(strange).toEqual([]);
  });

  test("placed 3 mm along its slide: it slides back, and no printed part, no bought one, no span changes", () => {
    const along = made("motor.at=[310, 333]");
    const files = changed(STILL, along);
    expect(files.filter((name) => name.startsWith("parts/"))).toEqual([]);
    expect(files).not.toContain("hardware.csv");
    const by = moved(STILL, along);
    expect(by.get("loop.high.slide")).toBeCloseTo(-3, 6);
    // C lies at the far end of the slide, so the belt tightens towards the near one.
    expect(by.get("loop.high.leftOutward")).toBeCloseTo(-3, 6);
    expect(by.get("loop.high.leftInward")).toBeCloseTo(3, 6);
    const strange = [...by.keys()].filter((key) => !/^loop\.\w+\.(nominal|slide|leftInward|leftOutward)$/.test(key));
    expect(strange).toEqual([]);
  });
});
