import { describe, expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";
import { expectTold, mm, plain } from "./told.ts";

const node = (name: string, x: number, y: number, radius: number, inside = true): m.LoopNode => {
  return { name, x, y, radius, inside };
};
const defectOf = (...nodes: m.LoopNode[]) => m.beltLoop(nodes);

describe("nodes that no loop is asked of (own arithmetic)", () => {
  const [a, b] = [node("a", 0, 0, 10), node("b", 300, 0, 10)];

  test("too few, too many", () => {
    const count = { name: "loop-node-count", set: "2 to 12 nodes, at least two of them inside" };
    const row = Array.from({ length: 13 }, (_, index) => node(`n${index}`, index * 30, 0, 5));
    expectTold(defectOf(a), {
      ...count,
      says: "a loop has 2 to 12 nodes, and this one has 1",
      found: plain(1),
      limit: plain(2),
    });
    expectTold(defectOf(...row), {
      ...count,
      says: "a loop has 2 to 12 nodes, and this one has 13",
      found: plain(13),
      limit: plain(12),
    });
  });

  test("without a measure, a radius, or two inside", () => {
    expectTold(defectOf(a, { ...b, y: Number.NaN }), {
      name: "loop-measure-missing",
      says: "a measure of b is not a number",
      set: "x, y and radius of b as numbers, mm",
    });
    expectTold(defectOf(a, { ...b, radius: -2 }), {
      name: "node-without-radius",
      says: "the radius of b must be above 0 mm",
      found: mm(-2),
      limit: mm(0),
      set: "the pitch radius of b, or that of a smooth idler",
    });
    const few = {
      name: "too-few-inside-nodes",
      limit: plain(2),
      set: "inside for the pulleys whose toothed side the belt lies on",
    };
    const says = "at least two nodes must stand inside the loop, and";
    expectTold(defectOf(a, { ...b, inside: false }), { ...few, says: `${says} one does`, found: plain(1) });
    const none = [a, b].map((each) => ({ ...each, inside: false }));
    expectTold(defectOf(...none), { ...few, says: `${says} none does`, found: plain(0) });
  });

  test("the first node as well as any other", () => {
    expect(defectOf({ ...a, x: Number.NaN }, b)).toHaveProperty("refused", "a measure of a is not a number");
    expect(defectOf({ ...a, radius: 0 }, b)).toHaveProperty("refused", "the radius of a must be above 0 mm");
  });

  test("touching is too near; sums that overflow are too large, not vague", () => {
    const near = "a and b are 20 mm apart, too near: their pitch circles need over 20 mm";
    expect(defectOf(a, node("b", 20, 0, 10))).toHaveProperty("refused", near);
    expect(defectOf(a, node("b", 0, 20.000001, 10))).not.toHaveProperty("refused");
    const large = [
      [a, node("b", 1e308, 1e308, 10)],
      [node("a", 0, 0, 1e308), node("b", 10, 0, 1e308)],
      [node("a", 0, 0, 6e307), node("b", 1e308, 0, 6e307)],
    ];
    for (const nodes of large) expect(defectOf(...nodes)).toHaveProperty("defect.name", "loop-too-large");
  });

  test("too near, at one place, too far to hold", () => {
    expectTold(defectOf(a, node("b", 9, 12, 15)), {
      name: "nodes-overlap",
      says: "a and b are 15 mm apart, too near: their pitch circles need over 25 mm",
      found: mm(15),
      limit: mm(25),
      set: "a and b at least 10 mm further apart, or smaller",
    });
    expectTold(defectOf(a, node("b", 0, 0, 15)), {
      name: "nodes-overlap",
      says: "a and b stand at one place",
      found: mm(0),
      limit: mm(25),
      set: "a and b at least 25 mm further apart, or smaller",
    });
    expectTold(defectOf(a, node("b", 8e307, 0, 10), node("c", 8e307, 8e307, 10)), {
      name: "loop-too-large",
      says: "the loop is too large to hold",
      limit: mm(Number.MAX_VALUE),
      set: "places of ordinary size, in mm",
    });
  });
});

describe("loops that tangle (own arithmetic)", () => {
  test("a span runs through a pulley: the belt lies 12 mm off the line of centres, the pulley reaches 50", () => {
    expectTold(defectOf(node("a", -200, 0, 12), node("big", 0, 0, 50), node("b", 200, 0, 12)), {
      name: "span-through-node",
      says: "the span from b to a runs through big: 12 mm from its middle, under 50 mm",
      found: { value: expect.closeTo(12, 9), unit: "mm" },
      limit: mm(50),
      set: "big at least 38 mm further from that span",
    });
    const upright = [node("b", 0, 200, 12), node("a", 0, -200, 12), node("big", 0, 0, 50)];
    expect(defectOf(...upright)).toHaveProperty(
      "refused",
      "the span from b to a runs through big: 12 mm from its middle, under 50 mm",
    );
  });

  test("two idlers that reach past each other make the spans cross, on the line between them", () => {
    // The span leaves a circle of 12 mm and lands on the other side of one of 9 mm: both tangents of that kind meet the
    // line of centres where it is divided as 12 to 9, at an angle whose sine is 21 over the distance of the centres.
    const apart = Math.hypot(200, 75);
    const angle = Math.atan2(75, 200) + Math.asin(21 / apart);
    const x = -200 + (200 * 12) / 21 + (60 - (75 * 12) / 21) / Math.tan(angle);
    const nodes = [
      node("low left", -200, -60, 12),
      node("from below", 0, 15, 9, false),
      node("low right", 200, -60, 12),
      node("high right", 200, 60, 12),
      node("from above", 0, -15, 9, false),
      node("high left", -200, 60, 12),
    ];
    const found = defectOf(...nodes);
    expect(found).toHaveProperty("defect.name", "spans-cross");
    const words = /^the span after low left crosses another span, that after from above, at x (\S+), y (\S+) mm$/;
    const [, atX, atY] = words.exec((found as { refused: string }).refused) ?? [];
    expect(Number(atX)).toBeCloseTo(x, 2);
    expect(Number(atY)).toBeCloseTo(0, 9);
    const order = "low left, from above, low right, high right, from below, high left";
    expect(found).toHaveProperty("defect.set", `the order ${order}`);
  });

  test("where no order helps, another place is told", () => {
    const nodes = [
      node("a", -200, 20, 10),
      node("b", 180, 80, 30),
      node("c", -80, 80, 50),
      node("d", 0, -20, 40, false),
    ];
    expect(defectOf(...nodes)).toMatchObject({
      refused: expect.stringMatching(/^the span after a crosses another span, that after c, at x -4/),
      defect: { name: "spans-cross", set: "another place or side for one of the nodes" },
    });
  });

  test("clockwise: two turns instead of one, and the order reversed", () => {
    expectTold(defectOf(node("a", 0, 0, 10), node("b", 0, 300, 10), node("c", 300, 0, 10)), {
      name: "node-order-wrong",
      says: "no taut belt meets a, b, c in this order, counter-clockwise: it would turn by 720 deg instead of 360",
      found: { value: 720, unit: "deg" },
      limit: { value: 360, unit: "deg" },
      set: "the order c, b, a",
    });
  });

  test("a star of five, far from the origin, is told the order round its middle", () => {
    const at = (name: string, degrees: number) => {
      const angle = (degrees * Math.PI) / 180;
      return node(name, 1000 + 300 * Math.cos(angle), -700 + 200 * Math.sin(angle), 10);
    };
    const [a, b, c, d, e] = [at("a", -170), at("b", -98), at("c", -26), at("d", 46), at("e", 118)];
    expectTold(defectOf(a, c, e, b, d), {
      name: "node-order-wrong",
      says: "no taut belt meets a, c, e, b, d in this order, counter-clockwise: it would turn by 720 deg instead of 360",
      found: { value: 720, unit: "deg" },
      limit: { value: 360, unit: "deg" },
      set: "the order a, b, c, d, e",
    });
  });

  test("a belt that would not turn at all", () => {
    const nodes = [
      node("a", 0, 0, 10),
      node("b", 40, 0, 10),
      node("o", 20, 200, 150, false),
      node("p", 20, -200, 150, false),
    ];
    expectTold(defectOf(...nodes), {
      name: "node-order-wrong",
      says: "no taut belt meets a, b, o, p in this order, counter-clockwise: it would turn by 0 deg instead of 360",
      found: { value: 0, unit: "deg" },
      limit: { value: 360, unit: "deg" },
      set: "the nodes as a finger meets them that runs along the belt, counter-clockwise",
    });
  });
});
