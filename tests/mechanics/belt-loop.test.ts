import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isRefusal, type Refusal } from "../../src/core/calculation.ts";
import * as m from "../../src/mechanics/index.ts";
import { expectPrinted, one, sound } from "./printed.ts";

const radius = (teeth: number) => one(m.pitchRadius, "radius", { teeth, pitch: 2 });
const node = (name: string, x: number, y: number, teeth: number): m.LoopNode & { teeth: number } => ({
  name,
  x,
  y,
  radius: radius(teeth),
  inside: true,
  teeth,
});
const motor = node("motor", 0, 0, 20);
const right = node("right", 250, 120, 40);
const left = node("left", -150, 140, 40);
const idler: m.LoopNode = {
  name: "idler",
  x: 60,
  y: 30,
  radius: one(m.smoothIdlerRadius, "back", { diameter: 18, thickness: 1.38, tooth: 0.75, line: 0.254 }),
  inside: false,
};

const loopOf = (...nodes: m.LoopNode[]) => sound(m.beltLoop(nodes));

function expectLoop(loop: m.BeltLoop, length: string, spans: string[], wraps: string[]): void {
  expectPrinted(loop.length, length);
  for (const [index, printed] of spans.entries()) expectPrinted(loop.spans[index]?.length ?? Number.NaN, printed);
  for (const [index, printed] of wraps.entries()) expectPrinted(loop.wraps[index] ?? Number.NaN, printed);
}

describe("loops of our own arithmetic", () => {
  test("two pulleys of 40 teeth, 300 apart", () => {
    const loop = loopOf(node("a", 0, 0, 40), node("b", 300, 0, 40));
    expect(loop.length).toBeCloseTo(680, 10);
    expect(loop.wraps[0]).toBeCloseTo(180, 10);
  });

  test("equal pulleys of 20 teeth: twice the distance and a pulley; a triangle: its sides and a pulley", () => {
    expect(loopOf(node("a", 0, 0, 20), node("b", 0, 80, 20)).length).toBeCloseTo(200, 10);
    const top = 250 * Math.sin(Math.PI / 3);
    const triangle = loopOf(node("a", 0, 0, 20), node("b", 250, 0, 20), node("c", 125, top, 20));
    expect(triangle.length).toBeCloseTo(790, 10);
  });

  test("20 and 40 teeth, 200 apart", () => {
    const loop = loopOf(node("a", 0, 0, 20), node("b", 200, 0, 40));
    expectLoop(loop, "460.2027", ["199.8987", "199.8987"], ["176.3518"]);
    expectPrinted(one(m.teethInMesh, "mesh", { teeth: 20, wrap: loop.wraps[0] ?? 0 }), "9.797");
  });

  test("20 and 60 teeth, 100 apart: the length of the belt makers' formula and the teeth in mesh", () => {
    const loop = loopOf(node("a", 0, 0, 20), node("b", 100, 0, 60));
    expectPrinted(loop.length, "281.623");
    expectPrinted(one(m.teethInMesh, "mesh", { teeth: 20, wrap: loop.wraps[0] ?? 0 }), "9.19");
  });

  test("a motor in line between two screws", () => {
    const loop = loopOf(motor, right, left);
    expectLoop(loop, "955.5333", ["277.2354", "400.4997", "205.0841"], ["65.5726", "152.8120", "141.6153"]);
    expectPrinted(one(m.teethInMesh, "mesh", { teeth: 20, wrap: loop.wraps[0] ?? 0 }), "3.643");
  });

  test("the same with an idler outside", () => {
    const loop = loopOf(motor, idler, right, left);
    const spans = ["65.2088", "209.0723", "400.4997", "205.0841"];
    expectLoop(loop, "958.8586", spans, ["81.3843", "20.8274", "157.8277", "141.6153"]);
    expectPrinted(one(m.teethInMesh, "mesh", { teeth: 20, wrap: loop.wraps[0] ?? 0 }), "4.521");
  });
});

describe("what is no loop", () => {
  test.each<[string, m.LoopNode[], RegExp]>([
    ["one node", [motor], /2 to 12 nodes/],
    ["one inside", [motor, { ...right, inside: false }], /two nodes must stand inside/],
    ["clockwise", [motor, left, right], /counter-clockwise/],
    ["an idler the belt passes by", [motor, { ...idler, y: -60 }, right, left], /does not touch idler/],
    ["two at one place", [motor, right, { ...left, x: 0, y: 0 }], /motor and left stand at one place/],
    ["a pulley inside another", [node("a", 0, 0, 60), node("b", 5, 0, 20)], /too near/],
    ["no radius", [motor, { ...right, radius: 0 }], /radius of right/],
    ["no number", [motor, { ...right, x: Number.NaN }], /not a number/],
    [
      "spans that cross, though the belt goes round once",
      [
        node("n0", 330, 10, 30),
        node("n1", 20, 210, 30),
        node("n2", 270, 0, 30),
        { ...node("n3", 150, 30, 30), inside: false },
        { ...node("n4", 270, 240, 30), inside: false },
      ],
      /the span after n0 crosses another span/,
    ],
    ["13 nodes", Array.from({ length: 13 }, (_, i) => node(`n${i}`, i * 50, i * i, 20)), /2 to 12 nodes/],
  ])("%s", (_, nodes, reason) => {
    const outcome = m.beltLoop(nodes);
    expect(outcome).toHaveProperty("refused");
    expect((outcome as Refusal).refused).toMatch(reason);
  });
});

/** Sound loops of three to five inside pulleys on a stretched circle. */
const loops = fc
  .record({
    count: fc.integer({ min: 3, max: 5 }),
    teeth: fc.array(fc.integer({ min: 12, max: 60 }), { minLength: 5, maxLength: 5 }),
    wide: fc.double({ min: 150, max: 400, noNaN: true }),
    deep: fc.double({ min: 150, max: 400, noNaN: true }),
  })
  .map(({ count, teeth, wide, deep }) =>
    Array.from({ length: count }, (_, index) => {
      const angle = (2 * Math.PI * index) / count;
      return node(`n${index}`, wide * Math.cos(angle), deep * Math.sin(angle), teeth[index] ?? 20);
    }),
  )
  .filter((nodes) => !isRefusal(m.beltLoop(nodes)));

describe("laws of a loop", () => {
  test("turning, shifting and starting elsewhere change nothing", () => {
    fc.assert(
      fc.property(
        loops,
        fc.double({ min: -360, max: 360, noNaN: true }),
        fc.integer({ min: 0, max: 4 }),
        (nodes, turn, start) => {
          const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
          const turned = nodes.map((each) => ({
            ...each,
            x: 7 + cos * each.x - sin * each.y,
            y: sin * each.x + cos * each.y - 3,
          }));
          const first = start % turned.length;
          const rolled = [...turned.slice(first), ...turned.slice(0, first)];
          expect(sound(m.beltLoop(rolled)).length).toBeCloseTo(sound(m.beltLoop(nodes)).length, 8);
        },
      ),
      { seed: 3 },
    );
  });

  test("a loop twice as large is twice as long and wraps the same", () => {
    fc.assert(
      fc.property(loops, fc.double({ min: 0.1, max: 10, noNaN: true }), (nodes, scale) => {
        const scaled = nodes.map((each) => ({
          ...each,
          x: scale * each.x,
          y: scale * each.y,
          radius: scale * each.radius,
        }));
        const [loop, larger] = [sound(m.beltLoop(nodes)), sound(m.beltLoop(scaled))];
        expect(larger.length / (scale * loop.length)).toBeCloseTo(1, 10);
        for (const [index, wrap] of loop.wraps.entries()) expect(larger.wraps[index]).toBeCloseTo(wrap, 8);
      }),
      { seed: 3 },
    );
  });

  test("equal pulleys round a convex figure: its outline and one pulley", () => {
    fc.assert(
      fc.property(loops, (nodes) => {
        const equal = nodes.map((each) => ({ ...each, radius: radius(20) }));
        const outline = equal.reduce(
          (sum, each, index) => sum + m.distance(each, equal[(index + 1) % equal.length] ?? each),
          0,
        );
        expect(sound(m.beltLoop(equal)).length).toBeCloseTo(outline + 40, 8);
      }),
      { seed: 3 },
    );
  });

  test("a span touches both pulleys at right angles to their radius", () => {
    fc.assert(
      fc.property(loops, (nodes) => {
        for (const [index, span] of sound(m.beltLoop(nodes)).spans.entries()) {
          const from = nodes[index] ?? motor;
          const along =
            (span.to.x - span.from.x) * (span.from.x - from.x) + (span.to.y - span.from.y) * (span.from.y - from.y);
          expect(along / span.length / from.radius).toBeCloseTo(0, 9);
          expect(m.distance(span.from, from)).toBeCloseTo(from.radius, 9);
          expect(m.distance(span.from, span.to)).toBeCloseTo(span.length, 9);
        }
      }),
      { seed: 3 },
    );
  });

  test("two pulleys agree with the closed form, and their centre distance gives the length back", () => {
    const teeth = fc.integer({ min: 10, max: 72 });
    fc.assert(
      fc.property(teeth, teeth, fc.double({ min: 1.02, max: 40, noNaN: true }), (a, b, apart) => {
        const [large, small] = [radius(Math.max(a, b)), radius(Math.min(a, b))];
        const centres = apart * (large + small);
        const closed = one(m.twoPulleyLoop, "length", { large, small, centres });
        const loop = loopOf({ ...motor, radius: large }, { ...motor, name: "b", x: centres, radius: small });
        expect(loop.length).toBeCloseTo(closed, 8);
        expect(one(m.twoPulleyCentres, "centres", { large, small, length: closed })).toBeCloseTo(centres, 7);
      }),
      { seed: 3 },
    );
  });
});

test("an idler that makes wrap must stay, one that only presses on a long span may go", () => {
  const parked: m.LoopNode = { ...idler, name: "spare", x: 50, y: 147, radius: 9.376 };
  const [wrapping, spare] = sound(m.idlerDuties([motor, idler, right, parked, left]));
  expect(wrapping).toMatchObject({ name: "idler", parkable: false });
  expect(wrapping?.says).toBe("without it motor has 3.6 teeth in mesh");
  expect(spare).toMatchObject({ name: "spare", parkable: true });
});

test("distances in plan", () => {
  const a = { from: { x: 0, y: 0 }, to: { x: 10, y: 0 } };
  expect(m.distanceToSegment({ x: 5, y: 3 }, a)).toBe(3);
  expect(m.distanceToSegment({ x: 13, y: 4 }, a)).toBe(5);
  expect(m.distanceToSegment({ x: 3, y: 4 }, { from: { x: 0, y: 0 }, to: { x: 0, y: 0 } })).toBe(5);
  expect(m.distanceToSegment({ x: 2, y: 11 }, { from: { x: 0, y: 0 }, to: { x: 6, y: 8 } })).toBeCloseTo(5, 12);
  expect(m.distanceToSegment({ x: -1, y: 7 }, { from: { x: 0, y: 0 }, to: { x: 6, y: 8 } })).toBeCloseTo(5, 12);
  expect(m.segmentDistance(a, { from: { x: 5, y: -1 }, to: { x: 5, y: 1 } })).toBe(0);
  expect(m.segmentDistance(a, { from: { x: 2, y: 2 }, to: { x: 4, y: 6 } })).toBe(2);
});
