import { describe, expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";

const node = (name: string, x: number, y: number, radius: number, inside = true) => ({ name, x, y, radius, inside });
const pair = [node("a", 0, 0, 10), node("b", 300, 0, 10)];
const refused = (outcome: object) => (outcome as { refused?: string }).refused;
const loop = (...nodes: m.LoopNode[]) => m.beltLoop(nodes) as m.BeltLoop;

describe("why a loop is none, word for word", () => {
  test.each<[string, m.LoopNode[]]>([
    ["a loop has 2 to 12 nodes, and this one has 1", [node("a", 0, 0, 10)]],
    [
      "a loop has 2 to 12 nodes, and this one has 13",
      Array.from({ length: 13 }, (_, i) => node(`n${i}`, i * 30, 0, 5)),
    ],
    ["a measure of b is not a number", [node("a", 0, 0, 10), node("b", Number.NaN, 0, 10)]],
    ["a measure of b is not a number", [node("a", 0, 0, 10), node("b", 0, 9, Number.POSITIVE_INFINITY)]],
    ["the radius of b must be above 0 mm", [node("a", 0, 0, 10), node("b", 300, 0, 0)]],
    [
      "at least two nodes must stand inside the loop, and one does",
      [node("a", 0, 0, 10), node("b", 300, 0, 10, false)],
    ],
    ["a and b stand at one place", [node("a", 3, 4, 10), node("b", 3, 4, 12)]],
    [
      "a and b are 15 mm apart, too near: their pitch circles need over 25 mm",
      [node("a", 0, 0, 20), node("b", 15, 0, 5)],
    ],
    [
      "the belt does not touch b, but passes 20 mm beside it (it would have to lie on it over 344.94 deg)",
      [node("a", 0, 0, 10), node("b", 150, -40, 10, false), node("c", 300, 0, 10)],
    ],
    ["the loop is too large to hold", [node("a", 0, 0, 10), node("b", 8e307, 0, 10), node("c", 8e307, 8e307, 10)]],
  ])("%s", (reason, nodes) => {
    expect(refused(m.beltLoop(nodes))).toBe(reason);
  });

  test("an inside pulley a hair farther than too near has a loop", () => {
    expect(refused(m.beltLoop([node("a", 0, 0, 20), node("b", 25.001, 0, 5)]))).toBeUndefined();
  });

  test("twelve nodes are a loop", () => {
    const round = Array.from({ length: 12 }, (_, index) => {
      const angle = (index * Math.PI) / 6;
      return node(`n${index}`, 200 * Math.cos(angle), 200 * Math.sin(angle), 10);
    });
    const sides = 12 * 400 * Math.sin(Math.PI / 12);
    expect(loop(...round).length).toBeCloseTo(sides + 20 * Math.PI, 9);
  });
});

test("the spans of two equal pulleys lie below and above, and go there and back", () => {
  const { spans, wraps } = loop(...pair);
  const [there, back] = spans;
  expect(there?.direction).toBe(0);
  expect(Math.abs(back?.direction ?? 0)).toBeCloseTo(180, 12);
  expect(there?.from.x).toBeCloseTo(0, 12);
  expect(there?.from.y).toBeCloseTo(-10, 12);
  expect(there?.to.x).toBeCloseTo(300, 12);
  expect(back?.from.y).toBeCloseTo(10, 12);
  expect(wraps.map((wrap) => Math.round(wrap * 1e9) / 1e9)).toEqual([180, 180]);
});

test("a belt bent in by an idler runs as the coordinates say", () => {
  const bent = loop(node("a", 0, 0, 10), node("idler", 150, -5, 15, false), node("b", 300, 0, 10));
  const [down, up] = bent.spans;
  const [apart, sum] = [Math.hypot(150, 5), 25];
  expect(down?.length).toBeCloseTo(Math.sqrt(apart ** 2 - sum ** 2), 9);
  expect(up?.length).toBeCloseTo(down?.length ?? 0, 9);
  const turn = 2 * (Math.asin(sum / apart) - Math.atan2(5, 150));
  expect(bent.wraps[1]).toBeCloseTo((turn * 180) / Math.PI, 9);
  const turned = (bent.wraps[0] ?? 0) + (bent.wraps[2] ?? 0) - (bent.wraps[1] ?? 0);
  expect(turned).toBeCloseTo(360, 9);
});

describe("why a slide is none, word for word", () => {
  const slide = { node: "b", direction: 0, from: -10, to: 10 };
  const given = (more: Partial<m.Slide>, length: number) =>
    refused(m.slideForLength(pair, { ...slide, ...more }, length));

  test("no such node, no room, no number", () => {
    expect(given({ node: "c" }, 660)).toBe("the loop has no node c");
    expect(given({ to: -10 }, 660)).toBe("the slide has no room");
    expect(given({ direction: Number.NaN }, 660)).toBe("the slide has no room");
    expect(given({}, Number.POSITIVE_INFINITY)).toBe("the slide has no room");
  });

  test("a length out of reach, and a slide on which nothing touches", () => {
    expect(given({}, 700)).toBe("the slide makes loops of 642.83 to 682.83 mm, and none of 700");
    const nested = [node("a", 0, 0, 10), node("b", 300, 0, 5)];
    const near = m.slideForLength(nested, { ...slide, from: -304, to: -296 }, 660);
    expect(refused(near)).toBe("nowhere on the slide of b, -304 to -296 mm, does the belt touch every node");
  });

  test("a slide across the span hardly changes the belt", () => {
    const across = given({ direction: 90, from: -8, to: 9 }, 2 * Math.hypot(300, 4) + 20 * Math.PI);
    expect(across).toMatch(/^a millimetre of slide changes the belt by 0.02\d+ mm only; turn the slide's direction$/);
  });

  test("the ends of the slide are on it", () => {
    for (const at of [-10, 10]) {
      const found = m.slideForLength(pair, slide, 600 + 2 * at + 20 * Math.PI) as m.SlidePosition;
      expect(found.at).toBeCloseTo(at, 9);
      expect(found.sensitivity).toBeCloseTo(2, 6);
      expect(found.node.x).toBeCloseTo(300 + at, 9);
      expect(found.node.y).toBeCloseTo(0, 9);
    }
  });
});

describe("segments", () => {
  const along = { from: { x: 0, y: 0 }, to: { x: 10, y: 0 } };

  test("cross inside both only; touching at an end is not crossing", () => {
    expect(m.cross(along, { from: { x: 5, y: -1 }, to: { x: 5, y: 1 } })).toBe(true);
    expect(m.cross(along, { from: { x: 5, y: 0 }, to: { x: 5, y: 1 } })).toBe(false);
    expect(m.cross(along, { from: { x: 11, y: -1 }, to: { x: 11, y: 1 } })).toBe(false);
    expect(m.cross(along, { from: { x: 5, y: 1 }, to: { x: 5, y: 2 } })).toBe(false);
    expect(m.cross(along, { from: { x: 0, y: -1 }, to: { x: 0, y: 1 } })).toBe(false);
  });

  test("are as far apart as the nearest end of either", () => {
    expect(m.segmentDistance(along, { from: { x: 3, y: 7 }, to: { x: 20, y: 30 } })).toBe(7);
    expect(m.segmentDistance(along, { from: { x: 20, y: 30 }, to: { x: 3, y: 7 } })).toBe(7);
    expect(m.segmentDistance(along, { from: { x: 13, y: -50 }, to: { x: 13, y: 50 } })).toBe(3);
    expect(m.segmentDistance(along, { from: { x: -4, y: 50 }, to: { x: -4, y: -50 } })).toBe(4);
  });
});

test("pulls on a shaft: two at right angles, and what is no number", () => {
  const both = m.summedPull([
    { direction: 0, tension: 3 },
    { direction: 90, tension: 4 },
  ]) as { pull: number; direction: number };
  expect(both.pull).toBeCloseTo(5, 12);
  expect(both.direction).toBeCloseTo((Math.atan2(4, 3) * 180) / Math.PI, 12);
  expect(m.summedPull([{ direction: 0, tension: Number.NaN }])).toEqual({
    refused: "a tension or direction is not a number",
  });
});
