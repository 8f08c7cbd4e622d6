import { describe, expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";
import { traceLoop } from "../../src/mechanics/loop-trace.ts";
import { expectTold, mm } from "./told.ts";

const node = (name: string, x: number, y: number, radius: number, inside = true): m.LoopNode => {
  return { name, x, y, radius, inside };
};
const deg = (radians: number) => (radians * 180) / Math.PI;
const defectOf = (...nodes: m.LoopNode[]) => m.beltLoop(nodes);

describe("a node that the belt misses (own arithmetic)", () => {
  test("an idler 20 mm below it, whose wrap is told", () => {
    // Its centre lies 40 mm off; touched, it would need 20. A whole turn is left of what is lacking on both sides.
    const apart = Math.hypot(150, 40);
    const wrap = 360 - 2 * deg(Math.atan2(40, 150) - Math.asin(20 / apart));
    const miss = defectOf(node("a", 0, 0, 10), node("b", 150, -40, 10, false), node("c", 300, 0, 10));
    expectTold(miss, {
      name: "belt-misses-node",
      says: `the belt does not touch b, but passes 20 mm beside it (it would have to lie on it over ${wrap.toFixed(2)} deg)`,
      found: { value: expect.closeTo(20, 9), unit: "mm" },
      limit: mm(0),
      set: "b at least 20 mm further into the belt, or leave it out",
    });
  });

  test("an idler within the belt, beside a span that runs outwards from 30 to 40 mm off the line of centres", () => {
    const along = Math.atan2(80, 380) - Math.asin(10 / Math.hypot(380, 80));
    const below = 180 * Math.sin(along) + 40 * Math.cos(along);
    const gap = below - 30 - 10;
    const miss = defectOf(node("a", 180, 80, 40), node("b", -20, -40, 10, false), node("c", -200, 0, 30));
    expect(miss).toMatchObject({
      refused: `the belt does not touch b, but passes ${gap.toFixed(3)} mm beside it`,
      defect: { name: "belt-misses-node", found: { value: expect.closeTo(gap, 9), unit: "mm" } },
    });
  });

  test("several missed at once: one is named, with its gap to the belt of all that are met", () => {
    // The belt round a and c lies at -10 and 10 mm; the idlers of 10 mm stand clear of it by 20, 40 and 40.
    const [a, c] = [node("a", 0, 0, 10), node("c", 300, 0, 10)];
    const [low, high, lower] = [
      node("b", 150, -40, 10, false),
      node("d", 150, 60, 10, false),
      node("e", 200, -60, 10, false),
    ];
    expect(defectOf(a, low, c, high)).toMatchObject({
      refused: expect.stringMatching(
        /^the belt does not touch b, but passes 20 mm beside it \(it would have to lie on it/,
      ),
      defect: { set: "b at least 20 mm further into the belt, or leave it out" },
    });
    expect(defectOf(a, { ...low, x: 100 }, lower, c, high)).toMatchObject({
      refused: expect.stringMatching(
        /^the belt does not touch d, but passes 40 mm beside it \(it would have to lie on it/,
      ),
      defect: { set: "d at least 40 mm further into the belt, or leave it out" },
    });
  });

  test("a node across the belt is not told to go further in", () => {
    // The idler reaches through both spans: its lower edge at 10 mm, the lower span above 16 mm there.
    const nodes = [node("a", -100, 60, 50, false), node("b", -200, 20, 20), node("c", 100, 60, 10)];
    expectTold(defectOf(...nodes), {
      name: "node-order-wrong",
      says: "no taut belt meets a, b, c in this order, counter-clockwise: it would cross itself",
      set: "another place or side for a, or leave it out",
    });
    for (const start of [1, 2]) {
      const order = [...nodes.slice(start), ...nodes.slice(0, start)];
      const listed = order.map(({ name }) => name).join(", ");
      expect(defectOf(...order)).toHaveProperty(
        "refused",
        `no taut belt meets ${listed} in this order, counter-clockwise: it would cross itself`,
      );
    }
  });
});

describe("what is told when an order is wrong as well", () => {
  const gapTo = (missed: m.LoopNode, ...met: m.LoopNode[]) => {
    const { spans } = m.beltLoop(met) as m.BeltLoop;
    return Math.min(...spans.map((span) => m.distanceToSegment(missed, span))) - missed.radius;
  };
  const finger = "the nodes as a finger meets them that runs along the belt, counter-clockwise";

  test("one node moved in the list, where neither backwards nor round the middle helps", () => {
    const [a, b, c] = [node("a", -50, 0, 20), node("b", 0, 100, 30), node("c", -150, 0, 10, false)];
    const [d, e] = [node("d", -250, 150, 20), node("e", -50, -200, 10)];
    expect(defectOf(a, b, c, d, e)).toHaveProperty("defect.set", "the order a, c, b, d, e");
    expect(defectOf(a, c, b, d, e)).not.toHaveProperty("refused");
  });

  test("the gap is to the belt that is left when nothing loose is left", () => {
    const [a, b, c] = [node("a", -300, -50, 10), node("b", -50, 150, 20), node("c", 200, 150, 30)];
    const [d, e, f] = [node("d", 0, 0, 10), node("e", 100, -200, 30), node("f", -50, -50, 20)];
    const gap = gapTo(b, a, c);
    const says = new RegExp(`^the belt does not touch b, but passes ${gap.toFixed(3)} mm beside it`);
    expect(defectOf(a, b, c, d, e, f)).toHaveProperty("refused", expect.stringMatching(says));
  });

  test("an idler beside the belt of the others, which are met", () => {
    const [a, b, c] = [node("a", -250, 150, 30), node("b", -50, -100, 10), node("c", -250, -50, 20, false)];
    const says = `the belt does not touch c, but passes ${gapTo(c, a, b).toFixed(3)} mm beside it`;
    expect(defectOf(a, b, c)).toHaveProperty("refused", says);
  });

  test("no single node is blamed for a loop that stays tangled without it, or that has it on the wrong side", () => {
    const tangled = [
      node("a", 250, -150, 20, false),
      node("b", -100, 200, 20),
      node("c", 250, 0, 10),
      node("d", -150, -100, 10),
      node("e", 50, 100, 20),
    ];
    expect(defectOf(...tangled)).toMatchObject({ defect: { name: "node-order-wrong", set: finger } });
    const [a, b, c] = [node("a", 300, 0, 20), node("b", 200, -50, 30, false), node("c", -150, -200, 20)];
    expect(defectOf(a, b, c)).toMatchObject({ defect: { name: "node-order-wrong", set: finger } });
  });

  test("the spans beside the last node may cross as well as those beside any other", () => {
    // The belt would have to lie on d over 313 deg, and its spans cross before they reach it.
    const nodes = [
      node("a", 100, 200, 30, false),
      node("b", -150, -100, 50),
      node("c", -50, 0, 60, false),
      node("d", -50, 200, 20),
    ];
    for (let start = 0; start < 4; start++) {
      const turned = [...nodes.slice(start), ...nodes.slice(0, start)];
      expect(traceLoop(turned)).toMatchObject({ flaw: "loose", at: 3 - start, found: expect.closeTo(5.4637, 4) });
    }
  });
});
