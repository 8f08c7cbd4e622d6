import { describe, expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";

describe("reasons, word for word", () => {
  const bar = { washer: 1, diameter: 5, threadStart: 0.5, slotDepth: 6.1, plate: 6, stock: [12] };

  test("a slot bolt", () => {
    expect(m.slotBolt({ ...bar, plate: 0 })).toEqual({ refused: "the plate must have a thickness" });
    expect(m.slotBolt({ ...bar, layer: 0 })).toEqual({ refused: "the layer height must be above 0 mm" });
    expect(m.slotBolt({ ...bar, slotDepth: 5.4 })).toEqual({
      refused: "the slot is too shallow for 0.8 d of thread and 1 mm below the tip",
    });
    expect(m.slotBolt({ ...bar, stock: [] })).toEqual({ refused: "no bolt is 12.1 mm or shorter" });
    expect(m.slotBolt({ ...bar, plate: 8.5, layer: 3 })).toEqual({
      refused: "no counterbore of whole layers puts a stock length in the window",
    });
    expect(m.slotBolt({ ...bar, plate: 9, diameter: 8, threadStart: 0, slotDepth: 8 })).toEqual({
      refused: "a counterbore of 4.7 mm for M8 x 12 would leave 4.3 mm of plastic, and 4.8 mm must stay",
    });
  });

  test("a slot bolt at the very ends of its window, and a counterbore that must be rounded up", () => {
    expect(m.slotBolt({ ...bar, plate: 6.5 })).toEqual({ length: 12, counterbore: 0, floor: 6.5 });
    expect(m.slotBolt({ ...bar, plate: 5.9 })).toEqual({ length: 12, counterbore: 0, floor: 5.9 });
    expect(m.slotBolt({ ...bar, plate: 8, layer: 1 })).toHaveProperty("counterbore", 2);
  });

  const mount = { name: "a", x: 0, y: 0, pitch: 0.8, up: 1, down: 1 };
  const slope = { centre: { x: 0, y: 0 }, atCentre: 0, slopeX: 0.01, slopeY: 0, worst: 0 };

  test("tram moves", () => {
    expect(m.tramMoves(slope, [mount], "b")).toEqual({ refused: "there is no mount b" });
    expect(m.tramMoves(slope, [{ ...mount, pitch: 0 }], "a")).toEqual({
      refused: "the pitch of mount a must be above 0 mm",
    });
    const far = { ...mount, name: "b", x: -150 };
    expect(m.tramMoves(slope, [mount, far], "a")).toEqual([
      { name: "a", move: -0.5, clockwise: 0.625 },
      { name: "b", move: 1, clockwise: -1.25 },
    ]);
    expect(m.tramMoves(slope, [mount, { ...far, x: -250 }], "a")).toEqual({
      refused:
        "no height is in the reach of all mounts: with the others as low as they go, mount b lacks 0.5 mm upwards",
    });
    const [still, moved] = m.tramMoves(slope, [mount, { ...far, x: -100 }], "a") as readonly m.TramMove[];
    expect(still).toEqual({ name: "a", move: 0, clockwise: 0 });
    expect(moved).toEqual({ name: "b", move: 1, clockwise: -1.25 });
  });

  test("a probed plane", () => {
    const at = (x: number, y: number, height = 0) => ({ x, y, height });
    expect(m.tramPlane([at(0, 0), at(1, 0)])).toEqual({ refused: "a plane needs 3 probes or more, and there are 2" });
    const line = { refused: "the probes lie on a line, or one of them is not a number" };
    expect(m.tramPlane([at(0, 0), at(100, 0), at(200, 4)])).toEqual(line);
    expect(m.tramPlane([at(0, 0), at(100, 0), at(0, Number.NaN)])).toEqual(line);
    expect(m.tramPlane([at(0, 0), at(100, 0), at(0, 100, Number.NaN)])).toEqual({
      refused: "a probe is not a number that can be held",
    });
    const tilted = m.tramPlane([at(-30, 0, 1), at(30, 0, 4), at(0, 90, 2.5), at(0, -90, 2.5)]) as m.TramPlane;
    expect(tilted.slopeX).toBeCloseTo(0.05, 12);
    expect(tilted.slopeY).toBeCloseTo(0, 12);
    expect(tilted.atCentre).toBeCloseTo(2.5, 12);
  });

  test("probes are on a line when they spread less than a twentieth across it", () => {
    const cross = (across: number) =>
      [
        [-100, 0],
        [100, 0],
        [0, across],
        [0, -across],
      ].map(([x = 0, y = 0]) => ({ x, y, height: 0 }));
    expect(m.tramPlane(cross(5.01))).toHaveProperty("worst", 0);
    expect(m.tramPlane(cross(4.99))).toHaveProperty("refused");
  });

  test("masses", () => {
    expect(m.centreOfMass([{ mass: -1, x: 0, y: 0 }])).toEqual({ refused: "a mass is below 0 kg or not a number" });
    expect(m.centreOfMass([])).toEqual({ refused: "there is no mass" });
    expect(m.centreOfMass([{ mass: 0, x: 5, y: 5 }])).toEqual({ refused: "there is no mass" });
    const lost = { refused: "a mass or place is not a number" };
    expect(m.centreOfMass([{ mass: 1, x: Number.NaN, y: 0 }])).toEqual(lost);
    expect(m.centreOfMass([{ mass: 1, x: 0, y: Number.POSITIVE_INFINITY }])).toEqual(lost);
    expect(m.centreOfMass([{ mass: 1e308, x: 0, y: 0 }])).toEqual(lost);
    const two = [
      { mass: 0, x: 900, y: 900 },
      { mass: 2, x: 10, y: -20 },
    ];
    expect(m.centreOfMass(two)).toEqual({ x: 10, y: -20, weight: 2 * 9.80665 });
  });

  test("four screws", () => {
    const at = { x: 0, y: 0 };
    expect(m.fourScrewBounds([at, at, at], 10, at)).toEqual({
      refused: "four screws are asked for, and these are 3",
    });
    expect(m.fourScrewBounds([at, { x: 1, y: 0 }, { x: 2, y: 0 }, { x: 3, y: 0 }], 10, at)).toEqual({
      refused: "no three of the screws carry the weight: they stand nearly in line",
    });
  });

  test("four screws: over one of them it may carry all or, by twist, next to nothing else", () => {
    const corners = [
      { x: 0, y: 0 },
      { x: 400, y: 0 },
      { x: 400, y: 300 },
      { x: 0, y: 300 },
    ];
    const over = m.fourScrewBounds(corners, 40, { x: 100, y: 75 }) as m.FourScrewBounds;
    expect(over.bounds.map(({ least, most }) => [least, most].map((load) => Math.round(load * 1e6) / 1e6 + 0))).toEqual(
      [
        [20, 30],
        [0, 10],
        [0, 10],
        [0, 10],
      ],
    );
  });

  test("stock loops", () => {
    const node = (name: string, x: number) => ({ name, x, y: 0, radius: 40 / Math.PI, inside: true });
    const pair = [node("a", 0), node("b", 300)];
    const slide = { node: "b", direction: 0, from: -6, to: 6 };
    expect(m.stockLoops(pair, slide, 0, [680])).toEqual({ refused: "the belt pitch must be above 0 mm" });
    expect(m.stockLoops(pair, slide, 2, [400, 800])).toEqual({ refused: "no stock loop lies within 4 % of 680 mm" });
    const edge = m.stockLoops(pair, slide, 2, [706, 708, 654, 652]) as readonly m.StockLoop[];
    expect(edge.map(({ length }) => length)).toEqual([654, 706]);
    const [even] = m.stockLoops(pair, slide, 2, [680]) as readonly m.StockLoop[];
    expect(even).toMatchObject({ length: 680, teeth: 340 });
  });
});

describe("cases that only one of several numbers decides", () => {
  test("one mass below 0 among others is refused", () => {
    const masses = [
      { mass: 2, x: 0, y: 0 },
      { mass: -1, x: 0, y: 0 },
    ];
    expect(m.centreOfMass(masses)).toEqual({ refused: "a mass is below 0 kg or not a number" });
  });

  test("idlers of a loop that is none, one that the loop cannot do without, and one that only presses", () => {
    const toothed = { name: "a", x: 0, y: 0, radius: 40 / Math.PI, inside: true, teeth: 40 };
    const smooth = { name: "b", x: 200, y: 0, radius: 9, inside: true };
    expect(m.idlerDuties([toothed])).toMatchObject({ refused: "a loop has 2 to 12 nodes, and this one has 1" });
    expect(m.idlerDuties([toothed, smooth])).toEqual([
      { name: "b", parkable: false, says: "without it a loop has 2 to 12 nodes, and this one has 1" },
    ]);
    const spare = { name: "c", x: 100, y: -18, radius: 9, inside: false };
    expect(m.idlerDuties([toothed, spare, { ...toothed, name: "d", x: 200 }])).toEqual([
      { name: "c", parkable: true, says: "every pulley keeps its teeth in mesh without it" },
    ]);
  });

  test("stock loops are ordered by their way from the middle of a slide that is not even", () => {
    const node = (name: string, x: number) => ({ name, x, y: 0, radius: 40 / Math.PI, inside: true });
    const slide = { node: "b", direction: 0, from: 0, to: 12 };
    const found = m.stockLoops([node("a", 0), node("b", 300)], slide, 2, [682, 692, 702]) as readonly m.StockLoop[];
    expect(found.map(({ length }) => length)).toEqual([692, 682, 702]);
  });

  test("the fixed mount may stand anywhere in the list", () => {
    const plane = { centre: { x: 0, y: 0 }, atCentre: 0, slopeX: 0.01, slopeY: 0, worst: 0 };
    const mount = { name: "a", x: 100, y: 0, pitch: 0.5, up: 3, down: 3 };
    const moves = m.tramMoves(plane, [mount, { ...mount, name: "b", x: 0 }], "b") as readonly m.TramMove[];
    expect(moves.map(({ name, move, clockwise }) => [name, move, clockwise])).toEqual([
      ["a", -1, 2],
      ["b", 0, 0],
    ]);
  });

  test("a mount may move to the very end of its range", () => {
    const plane = { centre: { x: 0, y: 0 }, atCentre: 0, slopeX: 0.01, slopeY: 0, worst: 0 };
    const mount = { name: "a", x: 0, y: 0, pitch: 0.5, up: 1, down: 1 };
    for (const x of [100, -100]) {
      expect(m.tramMoves(plane, [mount, { ...mount, name: "b", x }], "a")).toHaveLength(2);
    }
  });

  test("three probes make a plane; the worst probe is the one farthest from it", () => {
    const at = (x: number, y: number, height: number) => ({ x, y, height });
    const three = m.tramPlane([at(0, 0, 1), at(100, 0, 2), at(0, 100, 1)]) as m.TramPlane;
    expect(three.slopeX).toBeCloseTo(0.01, 12);
    expect(three.worst).toBeLessThan(1e-12);
    const dished = [at(0, 0, 1), at(100, 0, 0), at(-100, 0, 0), at(0, 100, 0), at(0, -100, 0)];
    expect((m.tramPlane(dished) as m.TramPlane).worst).toBeCloseTo(0.8, 12);
  });
});
