import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shareLoads } from "../../../src/stage/cargo/index.ts";
import { deepMerge } from "../../support/deep-merge.ts";
import { widePlan } from "../../support/plans.ts";
import { amount, BARE, fact, wide } from "./stages.ts";

const G = 9.80665;

/** Three screws with their centroid at 300, 300. */
const TRIANGLE = { A: { at: [100, 150] }, B: { at: [500, 150] }, C: { at: [300, 600] } };

function loadsOf(changes: Readonly<Record<string, unknown>>) {
  const { loads } = shareLoads(widePlan(changes));
  if (loads === undefined) throw new Error("nothing carries the stage");
  return loads;
}

describe("masses and centre", () => {
  it("weighs the plate by size and metal: 457.2 x 457.2 x 6.35 of 2.7 g/cm3 is 3.584 kg (own arithmetic)", () => {
    const stage = wide({ plate: { size: [457.2, 457.2], thickness: 6.35 } });
    expect(amount(stage, "mass.plate")).toBeCloseTo(3.584, 3);
  });

  it("adds up the wide machine by hand", () => {
    // Plate 420 x 330 x 6 x 2.7e-6 = 2.24532; sheet 0.5; arms 2 x 0.689 m x 0.9; sides 2 x 0.338 m x 0.9; wheels 8 x 0.1.
    const kilograms = 2.24532 + 0.5 + 1.2402 + 0.6084 + 0.8 + 0.4;
    const stage = wide();
    expect(amount(stage, "stage.weight")).toBeCloseTo(kilograms * G, 6);
    // All but the nuts (0.4 kg at y = 200) lie even about y = 280.
    expect(amount(stage, "stage.centre.y")).toBeCloseTo((280 * (kilograms - 0.4) + 200 * 0.4) / kilograms, 6);
    expect(amount(stage, "stage.centre.x")).toBeCloseTo(380, 9);
  });
});

describe("three screws", () => {
  it("carry a third each under a weight at their centroid, and one all of it under a weight over it", () => {
    const middle = loadsOf(deepMerge(BARE, { screws: TRIANGLE, plate: { at: [300, 300] } }));
    for (const share of Object.values(middle.cases[0]?.shares ?? {})) expect(share).toBeCloseTo(middle.weight / 3, 9);
    const corner = loadsOf(deepMerge(BARE, { screws: TRIANGLE, plate: { at: [500, 150] } }));
    expect(corner.cases[0]?.shares).toEqual({
      A: expect.closeTo(0, 9),
      B: expect.closeTo(corner.weight, 9),
      C: expect.closeTo(0, 9),
    });
  });

  it("share the worked case of 30 N at 75, 60 on 0,0 300,0 150,260 in the ratio 19.04 : 4.04 : 6.92", () => {
    const screws = { A: { at: [0, 0] }, B: { at: [300, 0] }, C: { at: [150, 260] } };
    const { weight, cases } = loadsOf(deepMerge(BARE, { screws, plate: { at: [75, 60] } }));
    const { A = 0, B = 0, C = 0 } = cases[0]?.shares ?? {};
    expect((30 * A) / weight).toBeCloseTo(19.04, 2);
    expect((30 * B) / weight).toBeCloseTo(4.04, 2);
    expect((30 * C) / weight).toBeCloseTo(6.92, 2);
  });

  it("carry the print of 2 kg at each corner, and a hand of 50 N, by their levers", () => {
    const { cases } = loadsOf({});
    const by = Object.fromEntries(cases.map(({ name, shares }) => [name, shares]));
    // The back screw takes (y - 62)/436 of what is added; the corner lies at y = 445.
    expect((by["print at the back left"]?.C ?? 0) - (by.empty?.C ?? 0)).toBeCloseTo((2 * G * 383) / 436, 6);
    expect((by["hand on the back left"]?.C ?? 0) - (by.empty?.C ?? 0)).toBeCloseTo((50 * 383) / 436, 6);
    expect(cases.map(({ name }) => name)).toHaveLength(10);
  });

  it("name the calculation, with the numbers that went into it", () => {
    const own = fact(wide(), "screw.C.share");
    expect(own.from?.calculation).toBe("load-share");
    expect(own.from?.inputs).toMatchObject({ xA: 150, yA: 62, xB: 610, yB: 62, xC: 380, yC: 498 });
  });
});

describe("other numbers of screws", () => {
  it("two share by the lever rule", () => {
    const screws = { A: { at: [100, 280] }, B: { at: [500, 280] }, C: undefined };
    const { weight, cases } = loadsOf(deepMerge(BARE, { screws, plate: { at: [200, 330] } }));
    expect(cases[0]?.shares).toEqual({ A: expect.closeTo(0.75 * weight, 9), B: expect.closeTo(0.25 * weight, 9) });
  });

  it("one carries all", () => {
    const { weight, worst } = loadsOf(deepMerge(BARE, { screws: { B: undefined, C: undefined } }));
    expect(worst).toEqual({ A: expect.closeTo(weight + 50, 9) });
  });

  it("four have bounds: on a square with the weight in its middle each carries nothing to a half", () => {
    const screws = {
      A: { at: [0, 0] },
      B: { at: [400, 0] },
      C: { at: [400, 400] },
      D: { at: [0, 400], length: 420 },
    };
    const { weight, cases } = loadsOf(deepMerge(BARE, { screws, plate: { at: [200, 200] } }));
    for (const share of Object.values(cases[0]?.shares ?? {})) expect(share).toBeCloseTo(weight / 2, 6);
    const { loads } = shareLoads(widePlan(deepMerge(BARE, { screws, plate: { at: [200, 200] } })));
    expect(Math.min(...(loads?.cases ?? []).flatMap(({ least }) => Object.values(least)))).toBe(0);
  });

  it("four round the weight are told of once, and no bound is noise below nothing", () => {
    const [left, right, front, back] = [100, 437, 52, 359];
    const screws = {
      A: { at: [left, front] },
      B: { at: [right, front] },
      C: { at: [right, back] },
      D: { at: [left, back], length: 420 },
    };
    const { loads, diagnostics } = shareLoads(widePlan(deepMerge(BARE, { screws, plate: { at: [268.5, 205.5] } })));
    for (const { least } of loads?.cases ?? [])
      for (const load of Object.values(least)) expect(load).toBeGreaterThanOrEqual(0);
    expect(diagnostics.map(({ name, level }) => [name, level])).toEqual([["four-screws-share-by-twist", "warning"]]);
  });

  it("three in one line carry nothing that could be told", () => {
    const { loads, diagnostics } = shareLoads(widePlan({ screws: { C: { at: [400, 62] } } }));
    expect(loads).toBeUndefined();
    expect(diagnostics.map(({ name, level, path }) => [name, level, path.join(".")])).toEqual([
      ["screws-nearly-in-line", "error", "screws.C.at"],
    ]);
  });
});

describe("the stalled motor", () => {
  it("pushes with 2 pi e i T / l: 0.4 N m, 40 to 20 teeth, lead 8, dry brass (shigley 8-4, own arithmetic)", () => {
    const screw = { screw: "Tr8x8(P2)", nut: "dry brass" };
    const stage = wide({
      motor: { torque: "0.4 N m" },
      foot: { pulley: "40 teeth 2 mm" },
      screws: { A: screw, B: screw, C: screw },
    });
    // At a friction of 0.15 its efficiency is 0.6612: the worked case gives 207.7 N without the ratio.
    expect(amount(stage, "screw.A.crash")).toBeCloseTo(2 * 207.7, 0);
    expect(stage.loads?.crash).toBe(Math.max(...["A", "B", "C"].map((name) => amount(stage, `screw.${name}.crash`))));
  });

  it("is taken at the largest torque sold where none is stated", () => {
    const own = fact(wide({ motor: { torque: undefined } }), "screw.A.crash");
    expect(own.from?.inputs.torque).toBe(widePlan().motor.motor.values.torqueLarge);
  });
});

const spot = fc.tuple(fc.integer({ min: -600, max: 600 }), fc.integer({ min: -600, max: 600 }));

describe("in every case", () => {
  it("two or three shares add up to the weight", () => {
    fc.assert(
      fc.property(spot, spot, spot, spot, fc.integer({ min: 0, max: 9000 }), (a, b, c, plate, grams) => {
        const screws = { A: { at: a }, B: { at: b }, C: { at: c } };
        const { loads } = shareLoads(widePlan({ screws, plate: { at: plate }, print: grams / 1000 }));
        for (const { shares, name } of loads?.cases ?? []) {
          const sum = Object.values(shares).reduce((total, share) => total + share, 0);
          const extra = name === "empty" ? 0 : name.startsWith("hand") ? 50 : (grams / 1000) * G;
          expect(sum).toBeCloseTo((loads?.weight ?? 0) + extra, 6);
        }
      }),
    );
  });
});
