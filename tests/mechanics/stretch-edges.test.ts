import { expect, test } from "vitest";
import { bisect } from "../../src/mechanics/bisect.ts";
import { distanceToSegment, placeInStretch } from "../../src/mechanics/index.ts";
import { lookAlong, stretchesOf } from "../../src/mechanics/slide-stretches.ts";

test("a zero at the upper end of an interval is found there", () => {
  expect(bisect((at) => at - 1, 0, 1)).toBe(1);
  expect(bisect((at) => at, 0, 1)).toBe(0);
  expect(bisect((at) => at + 1, 0, 1)).toBeUndefined();
});

test("along a slide the length changes by twice the step between two equal pulleys", () => {
  const nodes = [
    { name: "a", x: 0, y: 0, radius: 10, inside: true },
    { name: "b", x: 300, y: 0, radius: 10, inside: true },
  ];
  const place = lookAlong(nodes, { node: "b", direction: 0, from: -1, to: 1 })(1);
  expect(place?.slope).toBeCloseTo(2, 12);
});

test("a piece whose length turns where the loop is not sound is kept whole, between those beside it", () => {
  const look = (at: number) => (Math.abs(at) < 0.01 ? undefined : { at, length: at * at, slope: 2 * at });
  const stretches = stretchesOf(look, { node: "b", direction: 0, from: -1.03125, to: 0.96875 });
  expect(stretches.map(({ low, high }) => [low.at, high.at])).toEqual([
    [-1.03125, -0.03125],
    [-0.03125, 0.03125],
    [0.03125, 0.96875],
  ]);
});

test("the nearest place of a segment that begins off the origin", () => {
  const segment = { from: { x: 10, y: 20 }, to: { x: 30, y: 20 } };
  expect(distanceToSegment({ x: 25, y: 24 }, segment)).toBe(4);
  expect(distanceToSegment({ x: 7, y: 24 }, segment)).toBe(5);
  expect(distanceToSegment({ x: 20, y: 13 }, { from: { x: 20, y: 10 }, to: { x: 20, y: 40 } })).toBe(0);
});

test("a search that meets a place without a loop finds nothing; one that jumps over its length ends at the jump", () => {
  const at = (place: number, length: number) => ({ at: place, length, slope: 0 });
  const stretch = { low: at(0, 1), high: at(1, 3) };
  expect(placeInStretch(() => undefined, stretch, 2)).toBeUndefined();
  const jump = (edge: number) => placeInStretch((place) => at(place, place > edge ? 3 : 1), stretch, 2)?.at;
  expect(jump(0.3)).toBeCloseTo(0.3, 12);
  expect(jump(0)).toBeLessThan(1e-12);
  expect(placeInStretch((place) => at(place, 1 + 2 * place), stretch, 2)?.at).toBe(0.5);
  expect(placeInStretch((place) => at(place, 1), stretch, 4)).toBeUndefined();
});

/** Stretches of a slide on which the length is a given function of the place, sound where it is told. */
function stretchesFrom(from: number, to: number, given: (at: number) => { length: number; slope: number } | undefined) {
  const look = (at: number) => {
    const here = given(at);
    return here === undefined ? undefined : { at, ...here };
  };
  const stretches = stretchesOf(look, { node: "a", direction: 0, from, to });
  return stretches.map(({ low, high }) => [low.at, high.at]);
}

test("a slide that is sound throughout is one stretch, to the last bit of its end", () => {
  const straight = (at: number) => ({ length: at, slope: 1 });
  for (const [from, to] of [
    [0.1, 0.7],
    [-0.3, 0.1],
    [-1.1, 2.3],
    [0.7, 1.9],
  ] as const) {
    expect(stretchesFrom(from, to, straight)).toEqual([[from, to]]);
  }
});

test("a stretch begins and ends with the last place that is sound", () => {
  const straight = { length: 0, slope: 1 };
  const within = (low: number, high: number) => (at: number) =>
    at >= low && at <= high ? { ...straight, length: at } : undefined;
  expect(stretchesFrom(0, 1, within(0.3, 2))).toEqual([[0.3, 1]]);
  expect(stretchesFrom(0, 1, within(-1, 0.3))).toEqual([[0, 0.3]]);
  expect(stretchesFrom(0, 1, within(0.31, 0.9))).toEqual([[0.31, 0.9]]);
  expect(stretchesFrom(0, 1, within(0.5, 0.5))).toEqual([]);
  expect(stretchesFrom(0, 1, within(2, 3))).toEqual([]);
});

test("a stretch ends where the length turns, or stops to grow", () => {
  const bowl = (at: number) => ({ length: (at - 0.51) ** 2, slope: 2 * (at - 0.51) });
  const hill = (at: number) => ({ length: -((at - 0.51) ** 2), slope: -2 * (at - 0.51) });
  for (const turning of [bowl, hill]) {
    const [before, after, ...more] = stretchesFrom(0, 1, turning);
    expect(more).toEqual([]);
    expect([before?.[0], after?.[1]]).toEqual([0, 1]);
    expect(before?.[1]).toBeCloseTo(0.51, 12);
    expect(after?.[0]).toBe(before?.[1]);
  }
  const flat = (at: number) => ({ length: Math.min(at, 0.5), slope: at < 0.5 ? 1 : 0 });
  expect(stretchesFrom(0, 1, flat)[0]).toEqual([0, 0.5]);
});
