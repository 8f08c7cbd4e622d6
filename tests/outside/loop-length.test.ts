import { describe, expect, test } from "vitest";
import { isRefusal } from "../../src/core/calculation.ts";
import { beltLoop, type LoopNode } from "../../src/mechanics/index.ts";
import { hullOfCircles, sampledHull } from "./hull-of-circles.ts";
import { overlapping, thrown, withIdlers } from "./layouts.ts";
import { dice } from "./random.ts";
import { tautBelt } from "./taut-belt.ts";

/** Agreement asked of two routes to one length, mm. */
const AGREE = 1e-6;
/** Names by which a loop may be refused when its circles do not overlap. */
const TANGLED = ["belt-misses-node", "node-order-wrong", "spans-cross", "span-through-node"];

interface Tally {
  sound: number;
  close: number;
  worst: number;
  readonly refused: Map<string, number>;
}

const tally = (): Tally => ({ sound: 0, close: 0, worst: 0, refused: new Map() });

/** Compares one loop with a verdict from outside and keeps count. */
function compare(count: Tally, nodes: readonly LoopNode[], sound: boolean, length: number): void {
  const outcome = beltLoop(nodes);
  const layout = JSON.stringify({ nodes, outcome: isRefusal(outcome) ? outcome : outcome.wraps });
  expect(!isRefusal(outcome), layout).toBe(sound);
  if (isRefusal(outcome)) {
    const { defect } = outcome;
    expect(defect, outcome.refused).toBeDefined();
    if (overlapping(nodes)) expect(defect?.name).toBe("nodes-overlap");
    else expect(TANGLED).toContain(defect?.name);
    expect(defect?.says).toMatch(/\d/);
    expect(defect?.set.length).toBeGreaterThan(8);
    const name = defect?.name ?? "";
    count.refused.set(name, (count.refused.get(name) ?? 0) + 1);
    return;
  }
  const off = Math.abs(outcome.length - length);
  expect(off, layout).toBeLessThanOrEqual(AGREE);
  count.worst = Math.max(count.worst, off);
  count.sound++;
}

describe("loops of inside pulleys against the hull of circles (Cauchy's perimeter formula)", () => {
  test("1000 random layouts agree to 1e-6 mm, or are refused when the hull does not meet each once in order", () => {
    const [roll, count] = [dice(20), tally()];
    for (let layout = 0; layout < 1000; layout++) {
      const nodes = thrown(roll);
      const hull = hullOfCircles(nodes);
      if (hull.margin < 1e-3) {
        count.close++;
        continue;
      }
      const turned = hull.met.map((_, at) => [...hull.met.slice(at), ...hull.met.slice(0, at)].join());
      const inOrder = turned.includes(nodes.map((_, index) => index).join());
      compare(count, nodes, inOrder && !overlapping(nodes), hull.perimeter);
    }
    expect(count.close).toBeLessThan(20);
    expect(count.sound).toBeGreaterThan(500);
    expect(count.refused.get("nodes-overlap")).toBeGreaterThan(50);
    expect(count.refused.get("node-order-wrong")).toBeGreaterThan(50);
    expect(count.refused.get("belt-misses-node")).toBeGreaterThan(50);
  });

  test("12 layouts lie between the hulls of 40 000 points inside and outside each circle, 1e-6 mm apart", () => {
    const roll = dice(22);
    let seen = 0;
    while (seen < 12) {
      const nodes = thrown(roll);
      const outcome = beltLoop(nodes);
      if (isRefusal(outcome)) continue;
      const { least, most } = sampledHull(nodes, 40_000);
      expect(most - least).toBeLessThan(AGREE);
      expect(outcome.length).toBeGreaterThan(least - 1e-9);
      expect(outcome.length).toBeLessThan(most + 1e-9);
      seen++;
    }
  });
});

describe("loops with outside idlers against a search for every tangent", () => {
  test("1000 random layouts agree to 1e-6 mm, or are refused when no belt can lie like that", () => {
    const [roll, count] = [dice(21), tally()];
    for (let layout = 0; layout < 1000; layout++) {
      const nodes = withIdlers(roll);
      const belt = overlapping(nodes) ? undefined : tautBelt(nodes);
      if (belt?.close) {
        count.close++;
        continue;
      }
      compare(count, nodes, belt?.sound ?? false, belt?.length ?? Number.NaN);
    }
    expect(count.close).toBeLessThan(20);
    expect(count.sound).toBeGreaterThan(400);
    expect(count.refused.get("belt-misses-node")).toBeGreaterThan(100);
    expect(count.refused.get("node-order-wrong")).toBeGreaterThan(50);
    expect(count.refused.get("spans-cross")).toBeGreaterThan(15);
    expect(count.refused.get("nodes-overlap")).toBeGreaterThan(15);
  });

  test("a pulley between two idlers may be wrapped by over 270 deg, where the belt can lie like that", () => {
    const roll = dice(23);
    let wide = 0;
    for (let layout = 0; layout < 300; layout++) {
      const radius = roll.between(20, 40);
      const pinch = (side: 1 | -1): LoopNode => {
        const [size, gap] = [roll.between(5, 15), roll.between(1, 8)];
        const aside = roll.between(size + 3, radius);
        const out = Math.sqrt((radius + size + gap) ** 2 - aside ** 2);
        return { name: `idler ${side}`, x: out, y: side * aside, radius: size, inside: false };
      };
      const far = { x: 200, radius: roll.between(8, 30), inside: true };
      const nodes: LoopNode[] = [
        { name: "pinched", x: 0, y: 0, radius, inside: true },
        pinch(-1),
        { name: "low", y: roll.between(-90, -60), ...far },
        { name: "high", y: roll.between(60, 90), ...far },
        pinch(1),
      ];
      const belt = tautBelt(nodes);
      const outcome = beltLoop(nodes);
      if (belt?.close !== false || overlapping(nodes)) continue;
      expect(!isRefusal(outcome), JSON.stringify({ nodes, outcome })).toBe(belt.sound);
      if (isRefusal(outcome)) continue;
      expect(Math.abs(outcome.length - belt.length)).toBeLessThan(AGREE);
      if ((outcome.wraps[0] ?? 0) > 270) wide++;
    }
    expect(wide).toBeGreaterThan(15);
  });
});
