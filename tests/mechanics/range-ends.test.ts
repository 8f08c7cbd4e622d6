import { describe, expect, test } from "vitest";
import { bisect } from "../../src/mechanics/bisect.ts";
import * as m from "../../src/mechanics/index.ts";
import { sound } from "./printed.ts";

/** Own arithmetic throughout: where a range ends, what lies on its end, and what lies just beyond. */
describe("ends of ranges", () => {
  test("a stock length is not lost to a millionth of a millimetre, and none longer is taken", () => {
    expect(m.nextStock([10, 0, 5], 1e-6)).toBe(0);
    expect(m.nextStock([10, 0, 5], 2e-6)).toBe(5);
    expect(m.longestStock([5, 8, 12], 8 - 1e-6)).toBe(8);
    expect(m.longestStock([5, 8, 12], 8 - 2e-6)).toBe(5);
    expect(m.nextStock([16, 12, 20, 12], 10)).toBe(12);
    expect(m.longestStock([16, 12, 20, 20], 18)).toBe(16);
    expect(m.nextStock([], 0)).toBeUndefined();
    expect(m.longestStock([9], 8)).toBeUndefined();
  });

  test("a slot bolt may stand on either end of its window", () => {
    const bar = { plate: 8, washer: 1, diameter: 5, threadStart: 0.5, slotDepth: 6.1, stock: [12] };
    // Grip 9: the window is 13.5 to 14.1, its middle 1.8 beyond the bolt.
    expect(m.slotBolt({ ...bar, layer: 0.5 })).toEqual({ length: 12, counterbore: 1.5, floor: 6.5 });
    expect(m.slotBolt({ ...bar, layer: 0.7 })).toEqual({ length: 12, counterbore: 2.1, floor: 5.9 });
    expect(m.slotBolt({ ...bar, layer: 1.9 })).toEqual({ length: 12, counterbore: 1.9, floor: 6.1 });
    expect(m.slotBolt({ ...bar, layer: 2.2 })).toHaveProperty("refused");
  });

  test("layers of whole steps lie in the range, which runs upwards from above 0", () => {
    expect(m.friendlyLayers(0.1, 0.1, 0.1)).toEqual([0.1]);
    expect(m.friendlyLayers(-0.1, 0.1, 0.1)).toEqual([]);
    expect(m.friendlyLayers(0.1, 0.100_000_01, 0.1)).toEqual([]);
    expect(m.friendlyLayers(0.1, 0.3, Number.NaN)).toEqual([]);
    expect(m.friendlyLayers(0.1, 0.3, Number.POSITIVE_INFINITY)).toEqual([]);
    const many = m.friendlyLayers(0.1, 0.3, 1e300);
    expect([many[0], many.length, many.at(-1)]).toEqual([0.3, 1000, 100.2]);
  });

  test("a screw that its motor does not turn lifts nothing", () => {
    const screw = { name: "a", lead: 8, screwTeeth: 20, motorTeeth: 20, hand: "right", inside: true } as const;
    const still = { refused: "lead or teeth of a are not above 0" };
    expect(m.screwsInStep([screw])).toEqual({ lift: 8 });
    expect(m.screwsInStep([{ ...screw, motorTeeth: 0 }])).toEqual(still);
    expect(m.screwsInStep([{ ...screw, lead: -8, motorTeeth: -20 }])).toEqual(still);
    expect(m.screwsInStep([{ ...screw, screwTeeth: -20, motorTeeth: -20 }])).toEqual(still);
  });

  test("a friction range ends where a number does", () => {
    const none = { refused: "the friction range is empty or not above 0" };
    expect(m.screwLocking(0.1, 0.13, 0.2)).toBe("locks");
    expect(m.screwLocking(0.1, 0.129, 0.2)).toBe("may run down");
    expect(m.screwLocking(0.1, 0.05, 0.1)).toBe("runs down");
    expect(m.screwLocking(Number.POSITIVE_INFINITY, 0.1, 0.2)).toEqual(none);
    expect(m.screwLocking(0.1, 0.2, Number.POSITIVE_INFINITY)).toEqual(none);
    expect(m.screwLocking(1.5e308, 0.1, 1.5e308)).toBe("runs down");
  });

  test("masses may stand anywhere that a number holds", () => {
    expect(m.centreOfMass([{ mass: 1, x: 1.5e308, y: 1.5e308 }])).toEqual({ x: 1.5e308, y: 1.5e308, weight: 9.80665 });
    expect(m.centreOfMass([{ mass: 1, x: 1.5e308, y: -1.5e308 }])).toHaveProperty("weight", 9.80665);
  });

  test("probes a twentieth across still make a plane, wherever their middle lies", () => {
    // A ridge of 1 in 100 along x and 2 in 100 along y over four points about (200, 50), 7 mm up at their middle.
    const at = (x: number, y: number) => ({ x: 200 + x, y: 50 + y, height: 7 + 0.01 * x + 0.02 * y });
    expect(m.tramPlane([at(100, 0), at(-100, 0), at(0, 5), at(0, -5)])).not.toHaveProperty("refused");
    const plane = sound(m.tramPlane([at(100, 10), at(-100, -30), at(-60, 50), at(60, -30)]));
    expect(plane.centre).toEqual({ x: 200, y: 50 });
    expect(plane.atCentre).toBeCloseTo(7, 12);
    expect(plane.slopeX).toBeCloseTo(0.01, 12);
    expect(plane.slopeY).toBeCloseTo(0.02, 12);
    expect(plane.worst).toBeCloseTo(0, 12);
  });

  test("three screws need a twentieth of their longest side across it, whichever side that is", () => {
    // Far from the origin, the long side 300 mm and the third screw `across` it, 10 mm from one end.
    const along = (across: number) => [
      { x: 1000, y: 2000 },
      { x: 1300, y: 2000 },
      { x: 1010, y: 2000 + across },
    ];
    const orders = [
      [0, 1, 2],
      [1, 2, 0],
      [2, 0, 1],
    ];
    for (const turn of [({ x, y }: m.Point) => ({ x, y }), ({ x, y }: m.Point) => ({ x: y, y: x })]) {
      for (const order of orders) {
        const given = (across: number) => {
          const [a, b, c] = order.map((index) => turn(along(across)[index] as m.Point)) as [m.Point, m.Point, m.Point];
          return { weight: 30, ...a, xA: a.x, yA: a.y, xB: b.x, yB: b.y, xC: c.x, yC: c.y };
        };
        expect(m.loadShare.compute(given(15.01))).toMatchObject({
          onA: 30,
          onB: expect.closeTo(0, 9),
          onC: expect.closeTo(0, 9),
        });
        const says = "the three screws stand nearly in line: 14.99 mm across on 300 mm, under 5 %";
        const mm = (value: number) => ({ value: expect.closeTo(value, 6), unit: "mm" });
        const defect = { name: "screws-in-line", found: mm(14.99), limit: mm(15) };
        expect(m.loadShare.compute(given(14.99))).toMatchObject({ refused: says, defect });
      }
    }
    const row = { weight: 30, x: 0, y: 0, xA: 0, yA: 0, xB: 300, yB: 0, xC: 100, yC: 0 };
    expect(m.loadShare.compute(row)).toHaveProperty(
      "refused",
      "the three screws stand nearly in line: 0 mm across on 300 mm, under 5 %",
    );
    const same = { weight: 30, x: 0, y: 0, xA: 7, yA: 7, xB: 7, yB: 7, xC: 7, yC: 7 };
    expect(m.loadShare.compute(same)).toEqual({
      refused: "the three screws stand nearly in line: they share a place, or none is a place",
    });
  });

  test("bisection ends on the last bit, or on the zero itself", () => {
    expect(bisect((x) => x - 0.5, 0, 1)).toBe(0.5);
    expect(bisect((x) => 0.5 - x, 0, 1)).toBe(0.5);
    expect(bisect((x) => x - 3, 3, 4)).toBe(3);
    expect(bisect((x) => x - 4, 3, 4)).toBe(4);
    expect(bisect((x) => x * x - 2, 0, 2)).toBe(Math.SQRT2 - 2 ** -52);
    expect(bisect((x) => x - 5, 0, 4)).toBeUndefined();
    expect(bisect((x) => x + 1, 0, 4)).toBeUndefined();
    expect(bisect((x) => (x < 4 ? x : Number.NaN), -1, 4)).toBeUndefined();
    expect(bisect((x) => x - 1, -1e308, 1.7e308)).toBe(1);
    expect(bisect((x) => (x < 5e-324 ? -1 : 1), -1, 1)).toBe(0);
  });

  test("a mount may just reach its range, and its range must be a number", () => {
    const flat = { centre: { x: 0, y: 0 }, atCentre: 1, slopeX: 0.01, slopeY: 0, worst: 0 };
    const mounts = (up: number, down = 1) => [
      { name: "a", x: 0, y: 0, pitch: 0.5, up: 0, down: 0 },
      { name: "b", x: -100, y: 0, pitch: 0.5, up, down },
    ];
    expect(m.tramMoves(flat, mounts(1), "a")).toEqual([
      { name: "a", move: 0, clockwise: 0 },
      { name: "b", move: 1, clockwise: -2 },
    ]);
    expect(m.tramMoves(flat, mounts(Number.NaN), "a")).toEqual({
      refused: "a height or range of mount b is not a number",
    });
  });
});
