import { describe, expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";
import { sound } from "./printed.ts";
import { expectTold, mm, plain } from "./told.ts";

const node = (name: string, x: number, y: number): m.LoopNode => ({ name, x, y, radius: 10, inside: true });
const pair = [node("a", 0, 0), node("b", 300, 0)];
/** Length of a belt round two pulleys of 10 mm whose centres are so far apart. */
const lengthAt = (apart: number) => 2 * apart + 20 * Math.PI;

describe("slides (own arithmetic)", () => {
  test("of two places the one nearer to the middle of the slide, wherever that is", () => {
    // Sliding up from 50 mm below, b is 40 mm beside the axis at 10 and at 90; the middle of 0 to 96 is 48.
    const below = [node("a", 0, 0), node("b", 300, -50)];
    const slide = { node: "b", direction: 90, from: 0, to: 96 };
    const { at, node: place } = sound(m.slideForLength(below, slide, lengthAt(Math.hypot(300, 40))));
    expect(at).toBeCloseTo(10, 6);
    expect(place.y).toBeCloseTo(-40, 6);
    const longer = sound(m.slideForLength(below, { ...slide, to: 104.5 }, lengthAt(Math.hypot(300, 40))));
    expect(longer.at).toBeCloseTo(90, 6);
  });

  test("no room on a slide of no length, of one beyond numbers, or without direction", () => {
    const none = { refused: "the slide has no room" };
    for (const [from, to, direction] of [
      [5, 5, 0],
      [5, 4, 0],
      [-1e308, 1e308, 0],
      [0, Number.POSITIVE_INFINITY, 0],
      [0, 5, Number.NaN],
    ] as const) {
      expect(m.slideForLength(pair, { node: "b", direction, from, to }, 700)).toEqual(none);
    }
    expect(m.slideForLength(pair, { node: "b", direction: 0, from: 0, to: 5 }, Number.NaN)).toEqual(none);
  });

  test("a slide that hardly tightens: both spans turn by 4 in 300, twice that in length", () => {
    const across = m.slideForLength(pair, { node: "b", direction: 90, from: -2, to: 9 }, lengthAt(Math.hypot(300, 4)));
    const slope = (2 * 4) / Math.hypot(300, 4);
    expectTold(across, {
      name: "slide-hardly-tightens",
      says: `a millimetre of slide changes the belt by ${slope.toPrecision(5)} mm only; turn the slide's direction`,
      found: plain(expect.closeTo(slope, 6)),
      limit: plain(0.2),
      set: "a direction of the slide nearer to the middle between the two spans",
    });
  });

  test("a length that no place gives: too long hangs slack, too short does not go on", () => {
    const slide = { node: "b", direction: 0, from: -10, to: 10 };
    const told = (length: number, limit: number, why: string) =>
      expectTold(m.slideForLength(pair, slide, length), {
        name: "length-off-slide",
        says: `the slide makes loops of 642.83 to 682.83 mm, and none of ${length}`,
        found: mm(length),
        limit: { value: expect.closeTo(limit, 9), unit: "mm" },
        why,
        set: "another stock length, a longer slide, or another place for a screw or idler",
      });
    told(683, lengthAt(310), "the belt would hang slack");
    told(642, lengthAt(290), "the belt would not go on");
  });

  test("a slide on which no place is sound", () => {
    expectTold(m.slideForLength(pair, { node: "b", direction: 0, from: -304, to: -296 }, 660), {
      name: "belt-never-touches",
      says: "nowhere on the slide of b, -304 to -296 mm, does the belt touch every node",
      set: "a loop that is sound first, then a slide round it",
    });
  });

  test("a search stays between the ends of its stretch", () => {
    const at = (place: number) => ({ at: place, length: 2 * place, slope: 2 });
    const look = (place: number) => (place < 100 || place > 101 ? undefined : at(place));
    expect(m.placeInStretch(look, { low: at(100), high: at(101) }, 201)?.at).toBe(100.5);
    const wrong = (place: number) => ({ ...at(place), slope: -2 });
    expect(
      m.placeInStretch((place) => (look(place) ? wrong(place) : undefined), { low: at(100), high: at(101) }, 201.3)?.at,
    ).toBeCloseTo(100.65, 9);
  });

  test("a search takes few looks where the slope is true, and halves where it is not", () => {
    const looks = (length: number, slopeOf: (place: number) => number) => {
      let count = 0;
      const at = (place: number) => ({ at: place, length: place * place, slope: slopeOf(place) });
      const look = (place: number) => {
        count++;
        return place < 0 || place > 10 ? undefined : at(place);
      };
      const found = m.placeInStretch(look, { low: at(0), high: at(10) }, length);
      expect(found?.at).toBeCloseTo(Math.sqrt(length), 9);
      return count;
    };
    // The error of each look is the square of the one before over 2 x: 2, 0.4, 0.01, 1e-5, 1e-11 of it.
    expect(looks(50, (place) => 2 * place)).toBeLessThanOrEqual(7);
    expect(looks(90, (place) => 2 * place)).toBeLessThanOrEqual(6);
    for (const wrong of [-1, 0, 1e-9, 1e9]) {
      const count = looks(50, () => wrong);
      expect(count).toBeGreaterThan(20);
      // A wrong step is only tried after one that halved the error: at most as many as there are halvings.
      expect(count).toBeLessThanOrEqual(2 * 53);
    }
    // A slope a tenth too steep closes in by a tenth each time, which is quicker than halving.
    expect(looks(50, (place) => 2.2 * place)).toBeLessThanOrEqual(20);
  });
});

describe("places and segments (own arithmetic)", () => {
  const along = { from: { x: 0, y: 0 }, to: { x: 10, y: 0 } };

  test("distances hold for the smallest and the largest numbers", () => {
    for (const scale of [1e-320, 1e-200, 1e-99, 1, 1e99, 1e200, 1e300]) {
      const far = m.distance({ x: scale, y: 2 * scale }, { x: 4 * scale, y: 6 * scale });
      expect(Math.abs(far / scale - 5)).toBeLessThan(1e-3);
    }
  });

  test("ends that touch do not cross, whichever they are", () => {
    const up = { from: { x: 5, y: -1 }, to: { x: 5, y: 0 } };
    const down = { from: { x: 5, y: 1 }, to: { x: 5, y: 0 } };
    for (const other of [up, down]) {
      const back = { from: other.to, to: other.from };
      for (const one of [other, back]) expect([m.cross(along, one), m.cross(one, along)]).toEqual([false, false]);
    }
    expect(m.crossingPlace(along, { from: { x: 3, y: -2 }, to: { x: 7, y: 6 } })).toEqual({ x: 4, y: 0 });
    expect(m.segmentDistance(along, { from: { x: 3, y: -2 }, to: { x: 7, y: 6 } })).toBe(0);
  });
});
