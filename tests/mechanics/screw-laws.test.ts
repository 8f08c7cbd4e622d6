import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";
import { one, sound } from "./printed.ts";

const seed = 5;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("lead screws", () => {
  const screw = { load: 100, pitchDiameter: 7, flank: 15 };

  test("raising takes more torque than lowering, and more than the lift alone", () => {
    fc.assert(
      fc.property(between(0.5, 12), between(0.02, 0.45), (lead, friction) => {
        const { raise, lower, efficiency } = sound(m.screwTorque.compute({ ...screw, lead, friction }));
        expect(raise).toBeGreaterThan(lower);
        expect(raise).toBeGreaterThan((screw.load * lead) / (2 * Math.PI));
        expect(efficiency).toBeLessThan(1);
      }),
      { seed },
    );
  });

  test("the lowering torque changes sign where friction is critical", () => {
    fc.assert(
      fc.property(between(0.5, 8), (lead) => {
        const { critical } = sound(m.screwTorque.compute({ ...screw, lead, friction: 0.1 }));
        expect(one(m.screwTorque, "lower", { ...screw, lead, friction: critical })).toBeCloseTo(0, 9);
        expect(one(m.screwTorque, "lower", { ...screw, lead, friction: critical * 1.01 })).toBeGreaterThan(0);
        expect(one(m.screwTorque, "lower", { ...screw, lead, friction: critical * 0.99 })).toBeLessThan(0);
      }),
      { seed },
    );
  });

  test("a screw that locks is less than half efficient", () => {
    fc.assert(
      fc.property(between(0.5, 8), between(1, 3), (lead, over) => {
        const { critical } = sound(m.screwTorque.compute({ ...screw, lead, friction: 0.1 }));
        fc.pre(critical * over < 0.5);
        expect(one(m.screwTorque, "efficiency", { ...screw, lead, friction: critical * over })).toBeLessThanOrEqual(
          0.5,
        );
      }),
      { seed },
    );
  });

  test("more friction never makes a screw run down sooner", () => {
    const rank = { "runs down": 0, "may run down": 1, locks: 2 };
    const friction = between(0.01, 0.4);
    fc.assert(
      fc.property(friction, friction, friction, between(0, 0.1), (critical, a, b, more) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const before = m.screwLocking(critical, low, high);
        const after = m.screwLocking(critical, low + more, high + more);
        if (typeof before !== "string" || typeof after !== "string") throw new Error("refused");
        expect(rank[after]).toBeGreaterThanOrEqual(rank[before]);
      }),
      { seed },
    );
  });

  test("verdicts on an 8 mm screw: lead 2 locks in dry brass only, lead 8 never", () => {
    expect(m.screwLocking(0.08785, ...m.NUT_FRICTION["dry brass"])).toBe("locks");
    expect(m.screwLocking(0.08785, ...m.NUT_FRICTION["greased brass"])).toBe("may run down");
    expect(m.screwLocking(0.3514, ...m.NUT_FRICTION["dry brass"])).toBe("runs down");
    expect(m.screwLocking(0.1, 0.2, 0.1)).toHaveProperty("refused");
    expect(m.screwLocking(Number.NaN, 0.1, 0.2)).toHaveProperty("refused");
  });

  test("screws in step lift together, others are named", () => {
    const a = { name: "A", lead: 8, screwTeeth: 40, motorTeeth: 20, hand: "right", inside: true } as const;
    expect(m.screwsInStep([a, { ...a, name: "B", screwTeeth: 20, motorTeeth: 10 }])).toEqual({ lift: 4 });
    expect(m.screwsInStep([a, { ...a, name: "B", screwTeeth: 36 }])).toHaveProperty(
      "refused",
      expect.stringMatching(/^B lifts/),
    );
    expect(m.screwsInStep([a, { ...a, name: "B", screwTeeth: 44 }])).toHaveProperty("refused");
    expect(m.screwsInStep([a, { ...a, name: "B", lead: 8 * (1 + 1e-8) }])).toHaveProperty("refused");
    expect(m.screwsInStep([a, { ...a, name: "B", lead: 8 * (1 + 1e-11) }])).toEqual({ lift: 4 });
    expect(m.screwsInStep([a, { ...a, name: "B", hand: "left" }])).toHaveProperty(
      "refused",
      expect.stringMatching(/hand/),
    );
    expect(m.screwsInStep([a, { ...a, name: "B", inside: false }])).toHaveProperty(
      "refused",
      expect.stringMatching(/sides/),
    );
    expect(m.screwsInStep([a, { ...a, name: "B", lead: 0 }])).toHaveProperty("refused");
    expect(m.screwsInStep([])).toHaveProperty("refused");
  });

  test("a slender screw buckles by Euler, a stocky one below it by Johnson, and both meet at the transition", () => {
    fc.assert(
      fc.property(between(3, 20), between(0.25, 1.2), between(10, 3000), (root, ends, length) => {
        const column = { ends, modulus: 205000, yield: 300, root };
        const { transition, euler, critical } = sound(m.screwColumn.compute({ ...column, length }));
        expect(critical).toBeLessThanOrEqual(euler * (1 + 1e-9));
        const [below, above] = [0.999999, 1.000001].map((share) =>
          one(m.screwColumn, "critical", { ...column, length: transition * share }),
        );
        expect((below ?? 0) / (above ?? 1)).toBeCloseTo(1, 4);
        expect(critical).toBeLessThan((Math.PI / 4) * root ** 2 * 300);
      }),
      { seed },
    );
  });
});

test("friendly layers are whole full steps inside the range", () => {
  expect(m.friendlyLayers(0.02, 0.1, 0.2)).toEqual([0.1, 0.12, 0.14, 0.16, 0.18, 0.2]);
  expect(m.friendlyLayers(0.04, 0.05, 0.13)).toEqual([0.08, 0.12]);
  expect(m.friendlyLayers(0, 0.05, 0.13)).toEqual([]);
  expect(m.friendlyLayers(Number.NaN, 0.05, 0.13)).toEqual([]);
  expect(m.friendlyLayers(1e-6, 0.05, 300)).toHaveLength(1000);
});
