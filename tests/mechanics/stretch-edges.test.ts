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
