import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isRefusal } from "../../src/core/calculation.ts";
import * as m from "../../src/mechanics/index.ts";
import { one, sound } from "./printed.ts";

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
describe("a slide that tightens a belt", () => {
  const slide = { node: "motor", direction: 270, from: -10, to: 10 };

  test("the loop at the solution has the length asked for", () => {
    fc.assert(
      fc.property(fc.double({ min: 951, max: 960, noNaN: true }), (length) => {
        const { loop, at, sensitivity, node: place } = sound(m.slideForLength([motor, right, left], slide, length));
        expect(loop.length).toBeCloseTo(length, 9);
        expect(place.y).toBeCloseTo(-at, 12);
        expect(sensitivity).toBeGreaterThan(0.5);
      }),
      { seed: 3 },
    );
  });

  test("the sensitivity is the slope of the length", () => {
    const { at, sensitivity } = sound(m.slideForLength([motor, right, left], slide, 956));
    const moved = sound(m.beltLoop([{ ...motor, y: motor.y - at - 0.01 }, right, left])).length;
    expect((moved - 956) / 0.01).toBeCloseTo(sensitivity, 3);
  });

  test("two pulleys: sliding one apart changes the length by about two", () => {
    const pair = [node("a", 0, 0, 40), node("b", 300, 0, 40)];
    const apart = { node: "b", direction: 0, from: -10, to: 10 };
    const { at, sensitivity } = sound(m.slideForLength(pair, apart, 690));
    expect(at).toBeCloseTo(5, 9);
    expect(sensitivity).toBeCloseTo(2, 6);
  });

  test("of two solutions it takes the one nearer to the middle of the slide", () => {
    const pair = [node("a", 0, 0, 40), node("b", 300, 0, 40)];
    const length = sound(m.beltLoop([node("a", 0, 0, 40), node("b", 300, 40, 40)])).length;
    const across = { node: "b", direction: 90 };
    expect(sound(m.slideForLength(pair, { ...across, from: -45, to: 60 }, length)).at).toBeCloseTo(40, 6);
    expect(sound(m.slideForLength(pair, { ...across, from: -60, to: 45 }, length)).at).toBeCloseTo(-40, 6);
  });

  test("refuses a slide across, a length out of reach, an unknown node, no room", () => {
    const pair = [node("a", 0, 0, 40), node("b", 300, 0, 40)];
    const across = m.slideForLength(pair, { node: "b", direction: 90, from: -8, to: 9 }, 680.01);
    expect(across).toHaveProperty("refused", expect.stringMatching(/turn the slide's direction/));
    const far = m.slideForLength([motor, right, left], slide, 1000);
    expect(far).toHaveProperty("refused", expect.stringMatching(/none of 1000/));
    expect(m.slideForLength(pair, { ...slide, node: "c" }, 690)).toHaveProperty("refused");
    expect(m.slideForLength(pair, { ...slide, node: "b", to: -20 }, 690)).toHaveProperty("refused");
  });
});

describe("stock loops", () => {
  const nodes = [node("a", 0, 0, 40), node("b", 300, 0, 40)];
  const slide = { node: "b", direction: 0, from: -6, to: 6 };

  test("lists those in reach, nearest to the middle of the slide first, with teeth and reasons", () => {
    const found = sound(m.stockLoops(nodes, slide, 2, [752, 700, 690, 683, 680, 672, 400]));
    expect(found.map(({ length }) => length)).toEqual([680, 672, 690, 683, 700]);
    expect(found[1]?.teeth).toBe(336);
    expect(found.map(({ position }) => isRefusal(position))).toEqual([false, false, false, true, true]);
    expect(found[3]?.position).toHaveProperty("refused", "683 mm is not a whole number of 2 mm teeth");
    expect(found[2]?.position).toHaveProperty("at", expect.closeTo(5, 9));
  });

  test("refuses when the shop has none near", () => {
    expect(m.stockLoops(nodes, slide, 2, [400, 800])).toHaveProperty("refused");
    expect(m.stockLoops(nodes, slide, 0, [680])).toHaveProperty("refused");
    expect(m.stockLoops([motor], slide, 2, [680])).toHaveProperty("refused");
  });
});
