import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CARGO_DEFECTS } from "../../../src/stage/cargo/cargo-defects.ts";
import { deriveStage, type Plan, planSchema } from "../../../src/stage/index.ts";
import { deepMerge } from "../../support/deep-merge.ts";
import { WIDE } from "../../support/plans.ts";
import { printerWith } from "../../support/printer.ts";
import { runs } from "../../support/thorough.ts";
import { workedOut } from "./stages.ts";

const PRINTER = printerWith();
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const some = (length: number) => fc.oneof(within(-length, length), fc.constantFrom(0, -length, length));
const spot = fc.tuple(some(5000), some(5000));
const place = fc.tuple(some(5000), some(5000), some(5000));
const bar = fc.record({
  bar: fc.constantFrom("20x20 slot 6", "20x40 slot 6", "V 20x20", "30x30 slot 8", "1 in"),
  from: place,
  to: fc.oneof(place, fc.constant([15, 280, 500])),
  turned: fc.boolean(),
  moves: fc.boolean(),
});
const maybe = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: {} as Value });

/** Anything that the schema takes, sensible or not. */
const hostile = fc.record({
  bars: fc.dictionary(fc.constantFrom("arm-front", "side-left", "post-left", "front"), bar, { maxKeys: 3 }),
  screws: fc.dictionary(
    fc.constantFrom("A", "B", "C", "D"),
    fc.record({
      at: spot,
      screw: fc.constantFrom("Tr8x1.5", "Tr8x8(P2)", "Tr20x4"),
      length: within(50, 3000),
      top: fc.constantFrom("free", "steadied", "held"),
      hand: fc.constantFrom("left", "right"),
      nut: fc.constantFrom("plastic", "dry brass"),
    }),
    { maxKeys: 4 },
  ),
  travel: fc.record({ lowest: some(400), lift: within(1, 3000), nut: some(400) }),
  motor: fc.record({
    speed: within(0.1, 100),
    microsteps: fc.constantFrom(1, 16, 256, 100),
    stepAngle: fc.constantFrom(1.8, 0.9, 7.5, 3.7),
  }),
  plate: fc.record({
    at: spot,
    size: fc.tuple(within(50, 2000), within(50, 2000)),
    temperature: within(0, 200),
    ambient: within(0, 45),
    metal: fc.constantFrom(
      "glass",
      "aluminium",
      { row: "aluminium", density: 0 },
      { row: "steel", modulus: -1, expansion: -9 },
    ),
    heater: maybe(
      fc.record({ size: fc.tuple(within(10, 2000), within(10, 2000)), power: within(1, 5000), volts: within(5, 250) }),
    ),
    mounts: fc.dictionary(
      fc.constantFrom("one", "two", "four", "five"),
      fc.record({ at: spot, type: fc.constantFrom("fixed", "slot", "free") }),
      { maxKeys: 3 },
    ),
  }),
  foot: maybe(
    fc.record({
      thrust: fc.constantFrom("hung", "pulley", "nonsense"),
      pulley: fc.constantFrom("16 teeth 2 mm", "no pulley", 7),
    }),
  ),
  mount: maybe(fc.record({ mount: fc.constantFrom("end", "on-top", 5), share: fc.constantFrom(0, "1000 N", 50) })),
  carriage: maybe(fc.record({ wheels: fc.constantFrom("3", "8", 6, "many"), rowSpacing: within(1, 500) })),
  layers: fc.array(within(0.02, 2), { minLength: 1, maxLength: 4 }),
  print: within(0, 200),
});

/** Whether a path leads to something in the plan, or to a key that could stand there. */
function leadsIn(plan: Plan, path: readonly (string | number)[]): boolean {
  const inside = path
    .slice(0, -1)
    .reduce<unknown>((value, step) => (value as Record<string, unknown> | undefined)?.[step], plan);
  return path.length > 0 && typeof inside === "object" && inside !== null;
}

describe("whatever the schema takes", () => {
  it("is worked out without an exception, in finite numbers, each fault at a place of the plan", () => {
    let broken = 0;
    fc.assert(
      fc.property(hostile, (changes) => {
        const parsed = planSchema.safeParse(deepMerge(WIDE, changes));
        if (!parsed.success) throw new Error(`the schema refuses what it should take: ${parsed.error.message}`);
        const stage = workedOut(parsed.data);
        deriveStage(parsed.data, () => PRINTER);
        for (const { facts } of stage.sections) {
          for (const { key, value } of facts) expect(Number.isFinite(value), `${key} is ${value}`).toBe(true);
        }
        const keys = stage.sections.flatMap(({ facts }) => facts.map(({ key }) => key));
        expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([]);
        for (const each of stage.diagnostics) {
          if (each.name in CARGO_DEFECTS) broken++;
          if (each.level !== "note") expect(leadsIn(parsed.data, each.path), `${each.name} at ${each.path}`).toBe(true);
          expect(each.set, each.name).not.toMatch(/NaN|Infinity|undefined/);
          expect(each.says, each.name).not.toMatch(/NaN|Infinity|undefined/);
        }
      }),
      { numRuns: runs(200) },
    );
    expect(broken).toBeGreaterThan(200);
  }, 300_000);
});
