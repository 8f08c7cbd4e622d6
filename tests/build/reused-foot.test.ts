import { describe, expect, test } from "vitest";
import { compareParts, type Verdict } from "../../src/build/compare.ts";
import { ringWords } from "../../src/build/ring-words.ts";
import { BEARINGS } from "../../src/catalogue/bearings.ts";
import { readTarget } from "../../src/cli/load.ts";
import { loadStage } from "../../src/cli/load-stage.ts";
import { row } from "../../src/core/table.ts";
import { shimLines } from "../../src/parts/screw-foot/shim-lines.ts";

const PLAN = readTarget("presets/stages/seed-bench.yaml");

function machine(...set: string[]) {
  const { machine: loaded } = loadStage(PLAN, { set, printer: undefined, version: "1" });
  if (loaded === undefined) throw new Error("the plan does not load");
  return loaded;
}

const STILL = machine();

/** What is told of the feet when the motor's plate goes up by so much, mm. */
function feet(by: number): Verdict[] {
  return compareParts(STILL, machine(`motor.plateTop=${10 + by}`)).filter(({ name }) => name.startsWith("foot-"));
}

describe("a foot that is there, when the belts move", () => {
  test("1 mm up: one ring of 1 mm more over each bearing, which is no keeping, and it is on the list", () => {
    for (const { action, why, hardware } of feet(1)) {
      expect([action, why]).toEqual(["restack", expect.stringContaining("a ring 8 x 12 x 1.0 more over the bearing")]);
      const rings = (hardware ?? []).filter(({ item }) => item === "metal ring 8 x 12 x 1");
      expect(rings.reduce((sum, { count }) => sum + count, 0)).toBe(2);
    }
  });

  test("1 mm down would take the ring out and lay the collar on the shields, as check warns: printed again", () => {
    const bare = machine("motor.plateTop=9", "foot.washers=[]");
    const warned = bare.parts.flatMap(({ designed }) => designed.diagnostics.map(({ name }) => name));
    expect(warned).toContain("washer-spans-both-rings");
    expect(new Set(feet(-1).map(({ action }) => action))).toEqual(new Set(["reprint"]));
  });

  test("2 mm up: a ring more over the bearing and 1 mm under it, both to be bought", () => {
    for (const { action, shim, hardware } of feet(2)) {
      expect([action, shim]).toEqual(["shim", 1]);
      expect(hardware?.map(({ item }) => item)).toContain("shim ring 16 x 22 x 1 under the bearing");
    }
  });
});

test("rings that come out and go in are told by their size", () => {
  expect(ringWords(["a"], ["a"])).toBe("");
  expect(ringWords(["a"], [])).toBe("a ring a comes out from over the bearing");
  expect(ringWords(["a"], ["a", "b", "b"])).toBe("2 rings b more over the bearing");
});

test("rings under a bearing add up to their height, the thickest first", () => {
  // 1 + 1 + 0.3 + 0.1 = 2.4 of the thicknesses that shops keep (DIN 988, from memory).
  const lines = shimLines(row(BEARINGS, "608").values, 2.4);
  expect(lines.map(({ item, count }) => [Number(/x ([\d.]+) under/.exec(item)?.[1]), count])).toEqual([
    [1, 2],
    [0.3, 1],
    [0.1, 1],
  ]);
});
