import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { COLLARS } from "../../../src/catalogue/collars.ts";
import { isRefusal } from "../../../src/core/calculation.ts";
import { row } from "../../../src/core/table.ts";
import { CALCULATIONS } from "../../../src/mechanics/index.ts";
import type { Parameters } from "../../../src/parts/screw-foot/parameters.ts";
import { deriveStage, type Plan, planSchema } from "../../../src/stage/index.ts";
import type { FootChoice } from "../../../src/stage/machine.ts";
import { deepMerge } from "../../support/deep-merge.ts";
import { WIDE, widePlan } from "../../support/plans.ts";
import { printerWith } from "../../support/printer.ts";
import { runs } from "../../support/thorough.ts";
import { mirroredPlan, turnedPlan } from "../../support/turned-plan.ts";
import { feetOf, handLoop } from "./hand-made.ts";

const MOUNTS = ["on-side", "on-top", "under"] as const;

/** A plan whose heights, mounts and pulleys are drawn at random. */
const plans = fc
  .record({
    plateTop: fc.integer({ min: -60, max: 90 }),
    pulley: fc.constantFrom("16 teeth 2 mm", "36 teeth 2 mm", "40 teeth 2 mm", "60 teeth 2 mm"),
    thrust: fc.constantFrom("pulley", "collar", "hung", "tip"),
    bearing: fc.constantFrom("608", "688", "6000", "6900"),
    mounts: fc.array(fc.constantFrom(...MOUNTS), { minLength: 3, maxLength: 3 }),
    hub: fc.constantFrom("up", "down", "auto"),
    hubs: fc.array(fc.constantFrom("up", "down"), { minLength: 2, maxLength: 2 }),
    style: fc.constantFrom("open", "walled", "bridged"),
    lowest: fc.integer({ min: 10, max: 140 }),
  })
  .map(({ plateTop, pulley, thrust, bearing, mounts, hub, hubs, style, lowest }) => {
    const foot = (mount: string | undefined) => ({ foot: { mount } });
    return {
      foot: { pulley, thrust, bearing, hub, style },
      motor: {
        plateTop,
        pulleys: [
          { loop: "low", hub: hubs[0] },
          { loop: "high", hub: hubs[1] },
        ],
      },
      travel: { lowest },
      screws: { A: foot(mounts[0]), B: foot(mounts[1]), C: foot(mounts[2]) },
    };
  });

const heights = ({ hub, seat, seatOverDatum, shim, plane, residual, candidates }: FootChoice) => ({
  ...{ hub, seat, seatOverDatum, shim, plane, residual },
  lost: candidates.map(({ lost, hub: way, rings }) => [way, rings, lost]),
});

/** What is found, without the places that a turned plan has elsewhere. */
const names = (outcome: ReturnType<typeof feetOf>) =>
  outcome.diagnostics.map(({ name, level, path }) => [name, level, path.join(".")]);

describe("the same machine", () => {
  test("turned and moved has the same feet, as parts and in height", () => {
    fc.assert(
      fc.property(plans, fc.integer({ min: 0, max: 359 }), (change, angle) => {
        const plan = widePlan(change);
        const [still, turned] = [feetOf(plan), feetOf(turnedPlan(plan, angle, [37.5, -12.25]))];
        expect(names(turned)).toEqual(names(still));
        expect(turned.feet.map(heights)).toEqual(still.feet.map(heights));
        expect(turned.feet.map(({ part }) => part.parameters)).toEqual(still.feet.map(({ part }) => part.parameters));
      }),
      { numRuns: runs(40) },
    );
  });

  test("in a mirror has the same heights, and its belts leave on the other side", () => {
    fc.assert(
      fc.property(plans, (change) => {
        const plan = widePlan(change);
        const [still, mirrored] = [feetOf(plan), feetOf(mirroredPlan(plan))];
        expect(mirrored.feet.map(heights)).toEqual(still.feet.map(heights));
        expect(names(mirrored)).toEqual(names(still));
      }),
      { numRuns: runs(40) },
    );
    const node = (name: string, x: number, y: number) => ({ name, x, y, radius: 10, inside: true, teeth: 40 });
    const [right, left] = [
      [node("A", 150, 62), node("B", 610, 62), node("motor", 380, 400)],
      [] as ReturnType<typeof node>[],
    ];
    left.push(...right.map(({ name, x, y }) => node(name, -x, y)).reverse());
    const spans = (plan: Plan, nodes: typeof right) =>
      feetOf(plan, { loops: [handLoop("low", nodes)] }).of("A").part.parameters.beltSpans as {
        azimuth: number;
        side: string;
      }[];
    const [ahead, behind] = spans(widePlan(), right);
    // In the mirror the belt runs the other way: what left now comes.
    expect(spans(mirroredPlan(widePlan()), left)).toEqual([
      { azimuth: expect.closeTo((540 - (behind?.azimuth ?? 0)) % 360, 6), side: "right" },
      { azimuth: expect.closeTo((540 - (ahead?.azimuth ?? 0)) % 360, 6), side: "left" },
    ]);
  });

  test("with its bars typed from the other end has the same feet", () => {
    const plan = widePlan();
    const bars = Object.fromEntries(
      Object.entries(plan.bars).map(([name, bar]) => [name, { ...bar, from: bar.to, to: bar.from }]),
    );
    expect(feetOf({ ...plan, bars }).feet).toEqual(feetOf(plan).feet);
  });

  test("listed in another order has the same feet", () => {
    const reversed = <Thing>(all: Readonly<Record<string, Thing>>) => Object.fromEntries(Object.entries(all).reverse());
    const plan = widePlan();
    const other = { ...plan, bars: reversed(plan.bars), screws: reversed(plan.screws), loops: reversed(plan.loops) };
    const byName = (feet: readonly FootChoice[]) => [...feet].sort((a, b) => a.screw.localeCompare(b.screw));
    expect(byName(feetOf(other).feet)).toEqual(byName(feetOf(plan).feet));
  });

  test("with its screws renamed has the same feet under other names", () => {
    const renamed = JSON.parse(JSON.stringify(WIDE).replaceAll('"A"', '"west"').replaceAll('"B"', '"east"'));
    const feet = feetOf(planSchema.parse(renamed)).feet;
    expect(feet.map(({ screw, part }) => [screw, part.name])).toEqual([
      ["west", "foot-west"],
      ["east", "foot-east"],
      ["C", "foot-c"],
    ]);
    expect(feet.map(heights)).toEqual(feetOf(widePlan()).feet.map(heights));
  });
});

describe("an independent look at the feet", () => {
  test("every belt lies where stack and bar put it, in reach of its plane; every error has a place in the plan", () => {
    fc.assert(
      fc.property(plans, (change) => {
        const plan = widePlan(change);
        const { feet, drive, diagnostics } = feetOf(plan);
        for (const { loop, plane, shim, residual, part, seatOverDatum, hub } of feet) {
          const { bearing, pulley, thrust, washers, beltWidth } = part.parameters as unknown as Parameters;
          const { height, toothWidth, flangeThickness } = pulley.values;
          const belt = hub === "up" ? flangeThickness + toothWidth / 2 : height - flangeThickness - toothWidth / 2;
          const rings = washers?.map(({ values }) => values.thickness) ?? [1];
          const collar = thrust === "collar" ? row(COLLARS, `${bearing.values.bore} clamp`).values.width : 0;
          const stack = rings.reduce((sum, thickness) => sum + thickness, collar);
          expect(seatOverDatum + shim + bearing.values.width + stack + belt).toBeCloseTo(plane, 6);
          const wanted = drive.pulleys.find((one) => one.loop === loop)?.plane ?? Number.NaN;
          expect(plane - wanted).toBeCloseTo(residual, 6);
          expect(Math.abs(residual)).toBeLessThanOrEqual((toothWidth - beltWidth) / 2);
        }
        const missing = 3 - feet.length;
        const told = new Set(diagnostics.filter(({ level }) => level === "error").map(({ path }) => path[1]));
        expect(told.size).toBeGreaterThanOrEqual(missing);
        for (const { path } of diagnostics) expect(placeIn(deepMerge(WIDE, change), path), path.join(".")).toBe(true);
      }),
      { numRuns: runs(100) },
    );
  });

  test("every number that names a calculation is what the calculation gives", () => {
    const { sections, drive } = feetOf(widePlan(), {
      loops: [
        handLoop("high", [
          { name: "motor", x: 380, y: 400, radius: 6, inside: true, teeth: 20 },
          { name: "C", x: 380, y: 498, radius: 11, inside: true, teeth: 36 },
        ]),
      ],
    });
    const facts = [...drive.sections, ...sections].flatMap((section) => section.facts);
    expect(new Set(facts.map(({ key }) => key)).size).toBe(facts.length);
    const sourced = facts.filter(({ from }) => from !== undefined);
    expect(sourced.length).toBeGreaterThan(8);
    for (const { key, value, from } of sourced) {
      const calculation = CALCULATIONS.find(({ name }) => name === from?.calculation);
      const outcome = calculation?.compute(from?.inputs ?? {}) ?? { refused: "no such calculation" };
      expect(isRefusal(outcome) ? outcome.refused : outcome[from?.result ?? ""], key).toBeCloseTo(value, 9);
    }
  });

  test("whatever is drawn at random, the whole machine is worked out without a throw", () => {
    fc.assert(
      fc.property(
        plans,
        fc.double({ min: 0, max: 700, noNaN: true }),
        fc.double({ min: 0, max: 500, noNaN: true }),
        (change, x, y) => {
          const plan = widePlan(deepMerge(change, { screws: { A: { at: [x, y], bar: undefined } } }));
          const { diagnostics } = deriveStage(plan, () => printerWith());
          for (const { set, why, says } of diagnostics)
            expect([set, why, says].every((text) => text.length > 3)).toBe(true);
        },
      ),
      { numRuns: runs(25) },
    );
  });
});

/** Whether a path leads to something in the plan as it was typed, or to a key of a map that is there by default. */
function placeIn(data: unknown, path: readonly (string | number)[]): boolean {
  const [step, ...rest] = path;
  if (step === undefined) return true;
  if (typeof data !== "object" || data === null) return false;
  const inner = (data as Record<string | number, unknown>)[step];
  return inner === undefined ? rest.length === 0 : placeIn(inner, rest);
}
