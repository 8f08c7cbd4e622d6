import { describe, expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";
import { one } from "./printed.ts";

/** Refusals that no limit of a single input makes, each with its reason. */
describe("what a calculation refuses for more than one number", () => {
  test("a bearing without load has no life", () => {
    const idle = m.bearingLife.compute({ dynamic: 3450, static: 1370, radial: 0, axial: 0 });
    expect(idle).toEqual({ refused: "the bearing carries no load" });
  });

  test("a bearing's axial factor ends at 0.56 of the static rating", () => {
    const bearing = { dynamic: 3450, static: 1370, radial: 0 };
    expect(one(m.bearingLife, "factor", { ...bearing, axial: 0.56 * 1370 })).toBeCloseTo(1, 12);
    const over = m.bearingLife.compute({ ...bearing, axial: 0.5601 * 1370 });
    expect(over).toEqual({ refused: "F_a is above 0.56 of the static rating C_0" });
  });

  test.each([
    [0.005, 2.3],
    [0.014, 2.3],
    [0.0175, 2.225],
    [0.021, 2.15],
    [0.028, 1.99],
    [0.042, 1.85],
    [0.056, 1.71],
    [0.07, 1.63],
    [0.084, 1.55],
    [0.11, 1.45],
    [0.17, 1.31],
    [0.28, 1.15],
    [0.35, 1.095],
    [0.42, 1.04],
    [0.56, 1],
  ])("at %d of it the factor is %d (bibliography: shigley, Table 11-1, linear between its rows)", (share, factor) => {
    const bearing = { dynamic: 3450, static: 1000, radial: 0, axial: 1000 * share };
    expect(one(m.bearingLife, "factor", bearing)).toBeCloseTo(factor, 9);
  });

  test("a free bed cannot lie above its seat", () => {
    const high = m.bedOnLayer.compute({ seat: 4, lowest: 4, first: 0.2, layer: 0.2 });
    expect(high).toEqual({ refused: "the seat lies below the first layer" });
    expect(one(m.bedOnLayer, "bed", { seat: 4.2, lowest: 4, first: 0.2, layer: 0.2 })).toBeCloseTo(4, 9);
  });

  test("a screw at 45 deg of lead is refused, one just below it still lifts with the worst friction", () => {
    const screw = { load: 10, pitchDiameter: 7, flank: 45, friction: 0.4999 };
    expect(m.screwTorque.compute({ ...screw, lead: 7 * Math.PI })).toMatchObject({
      refused: "the lead angle is 45 deg or more: a lead of 21.991 mm on 21.991 mm round the thread",
    });
    expect(one(m.screwTorque, "raise", { ...screw, lead: 6.999 * Math.PI })).toBeGreaterThan(0);
  });

  test("a slide that would part the loop a hair further on is used up to there", () => {
    const near = (apart: number): m.LoopNode[] => [
      { name: "a", x: 0, y: 0, radius: 10, inside: true },
      { name: "b", x: apart, y: 0, radius: 5, inside: true },
    ];
    const inward = { node: "b", direction: 180, from: 0, to: 1 };
    const lengthAt = (apart: number) => (m.beltLoop(near(apart)) as m.BeltLoop).length;
    const last = m.slideForLength(near(15.0005), inward, lengthAt(15 + 1e-9)) as m.SlidePosition;
    expect(last.at).toBeCloseTo(0.0005 - 1e-9, 9);
    const beyond = m.slideForLength(near(15.0005), inward, lengthAt(15 + 1e-9) - 1e-6);
    expect(beyond).toMatchObject({ defect: { name: "length-off-slide" } });
  });

  test("a pulley with a fraction of a tooth is refused before its idlers are judged", () => {
    const pulley = (name: string, x: number, teeth: number) => ({ name, x, y: 0, radius: 12, inside: true, teeth });
    const odd = m.idlerDuties([pulley("a", 0, 40), pulley("b", 200, 40.5)]);
    expect(odd).toMatchObject({ refused: "z is 40.5 and must be a whole number" });
    expect(m.idlerDuties([pulley("a", 0, 40), pulley("b", 200, 40)])).toEqual([]);
  });
});

describe("edges of the searches and the verdicts", () => {
  test("a layer of half a full step is still snapped, a thinner one is refused", () => {
    expect(one(m.layerSnap, "steps", { layer: 0.02, step: 0.04 })).toBe(1);
    expect(m.layerSnap.compute({ layer: 0.0199, step: 0.04 })).toEqual({
      refused: "the layer is thinner than half a full step",
    });
  });

  test("friendly layers: one when the ends meet on a step, none for a range that is none", () => {
    expect(m.friendlyLayers(0.02, 0.1, 0.1)).toEqual([0.1]);
    expect(m.friendlyLayers(0.02, 0.105, 0.115)).toEqual([]);
    expect(m.friendlyLayers(0.02, 0.2, 0.1)).toEqual([]);
    expect(m.friendlyLayers(0.02, 0, 0.1)).toEqual([]);
    expect(m.friendlyLayers(0.02, 0.1, Number.POSITIVE_INFINITY)).toEqual([]);
    expect(m.friendlyLayers(-0.02, 0.1, 0.2)).toEqual([]);
  });

  test("stock lengths come in any order", () => {
    expect(m.longestStock([16, 20, 10], 19)).toBe(16);
    expect(m.longestStock([10, 16, 20], 19)).toBe(16);
    expect(m.nextStock([16, 20, 12], 11)).toBe(12);
  });

  test("locking: 1.3 times the critical friction locks, the critical friction itself runs down", () => {
    expect(m.screwLocking(0.1, 0.13, 0.13)).toBe("locks");
    expect(m.screwLocking(0.1, 0.1299, 0.2)).toBe("may run down");
    expect(m.screwLocking(0.1, 0.05, 0.1)).toBe("runs down");
    expect(m.screwLocking(0.1, 0.05, 0.1001)).toBe("may run down");
    const none = { refused: "the friction range is empty or not above 0" };
    expect(m.screwLocking(0, 0.1, 0.2)).toEqual(none);
    expect(m.screwLocking(0.1, 0, 0.2)).toEqual(none);
    expect(m.screwLocking(0.1, 0.2, 0.19)).toEqual(none);
    expect(m.screwLocking(Number.POSITIVE_INFINITY, 0.1, Number.POSITIVE_INFINITY)).toEqual(none);
  });

  test("screws in step: each fault is named", () => {
    const a = { name: "A", lead: 8, screwTeeth: 40, motorTeeth: 20, hand: "right", inside: true } as const;
    expect(m.screwsInStep([])).toEqual({ refused: "there is no screw" });
    for (const fault of [{ lead: 0 }, { lead: -8, screwTeeth: -40 }, { motorTeeth: 0 }, { lead: Number.NaN }]) {
      const reason = { refused: "lead or teeth of B are not above 0" };
      expect(m.screwsInStep([a, { ...a, name: "B", ...fault }])).toEqual(reason);
    }
    expect(m.screwsInStep([{ ...a, screwTeeth: 0 }])).toEqual({ refused: "lead or teeth of A are not above 0" });
    expect(m.screwsInStep([{ ...a, lead: 1e308, motorTeeth: 1e3 }])).toEqual({
      refused: "the lift is too large to hold",
    });
    expect(m.screwsInStep([a, { ...a, name: "B", lead: 8 * (1 + 6e-10) }])).toEqual({ lift: 4 });
    expect(m.screwsInStep([a, { ...a, name: "B", lead: 9 }])).toEqual({
      refused: "B lifts 4.5 mm per motor turn, A 4 mm",
    });
  });

  test("seats on the very ends of what is allowed fit", () => {
    const stack = { plane: 24, pulley: 16, groove: 7, flange: 1, hub: 7, collar: 0, bearing: 7, stacks: [[1]] };
    const lostOf = (lowest: number, highest: number) => {
      const found = m.seatCandidates({ ...stack, lowest, highest });
      return Array.isArray(found) ? found.map(({ lost }) => lost) : found;
    };
    expect(lostOf(4.5, 11.5)).toEqual([undefined, undefined]);
    expect(lostOf(4.5000005, 11.4999995)).toEqual([undefined, undefined]);
    expect(lostOf(4.50001, 60)).toEqual([undefined, "the seat is 0.00001 mm too low"]);
    expect(m.seatCandidates({ ...stack, plane: 1e308, lowest: 0, highest: 60 })).toEqual({
      refused: "the belt plane is too far away to hold",
    });
  });
});
