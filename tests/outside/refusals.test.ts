import { describe, expect, test } from "vitest";
import { isRefusal } from "../../src/core/calculation.ts";
import type { Diagnostic } from "../../src/core/diagnostic.ts";
import * as m from "../../src/mechanics/index.ts";
import { dice } from "./random.ts";

/** Returns the defect of a refused outcome; throws when it is not refused or has none. */
function defectOf(outcome: object): Diagnostic {
  if (!isRefusal(outcome) || outcome.defect === undefined) throw new Error(`not refused: ${JSON.stringify(outcome)}`);
  return outcome.defect;
}

const inside = (name: string, x: number, y: number, radius = 12): m.LoopNode => ({ name, x, y, radius, inside: true });
const outside = (name: string, x: number, y: number, radius = 9): m.LoopNode => ({ name, x, y, radius, inside: false });
const turned = (nodes: readonly m.LoopNode[], angle: number) =>
  nodes.map((node) => ({
    ...node,
    x: node.x * Math.cos(angle) - node.y * Math.sin(angle),
    y: node.x * Math.sin(angle) + node.y * Math.cos(angle),
  }));

/** A hundred times with dice, each plan turned by a random angle: the verdict must not hang on the axes. */
function often(seed: number, check: (roll: ReturnType<typeof dice>, angle: number) => void): void {
  const roll = dice(seed);
  for (let run = 0; run < 100; run++) check(roll, roll.between(0, 2 * Math.PI));
}

describe("loops that no belt makes, by construction (plane geometry)", () => {
  test("circles that overlap, by how much", () => {
    often(1, (roll, angle) => {
      const apart = roll.between(1, 23.9);
      const { name, found, limit, says } = defectOf(
        m.beltLoop(turned([inside("a", 0, 0), inside("b", apart, 0)], angle)),
      );
      expect(name).toBe("nodes-overlap");
      expect(found?.value).toBeCloseTo(apart, 9);
      expect(limit).toEqual({ value: 24, unit: "mm" });
      expect(says).toContain("24 mm");
    });
  });

  test("an idler that does not touch, by how far the belt passes it; its wrap would be nearly a turn", () => {
    often(2, (roll, angle) => {
      const gap = roll.between(0.01, 30);
      const size = roll.between(4, 15);
      const nodes = [inside("a", 0, 0), outside("idler", 150, -12 - gap - size, size), inside("b", 300, 0)];
      const { name, found, says } = defectOf(m.beltLoop(turned(nodes, angle)));
      expect(name).toBe("belt-misses-node");
      expect(found?.value).toBeCloseTo(gap, 6);
      const wrap = Number(/over ([\d.]+) deg/.exec(says)?.[1]);
      expect(wrap).toBeGreaterThan(270);
      expect(wrap).toBeLessThan(360);
    });
  });

  test("an inside pulley that lies within the belt", () => {
    often(3, (roll, angle) => {
      const gap = roll.between(0.5, 90);
      const nodes = [
        inside("a", 0, 0),
        inside("lazy", 200, gap),
        inside("b", 400, 0),
        inside("c", 400, 300),
        inside("d", 0, 300),
      ];
      const { name, found, says } = defectOf(m.beltLoop(turned(nodes, angle)));
      expect(name).toBe("belt-misses-node");
      expect(says).toContain("lazy");
      // The belt runs 12 mm below the line of a and b; the pulley's own 12 mm cancel, and it is missed by the gap.
      expect(found?.value).toBeCloseTo(gap, 6);
    });
  });

  test("one that just touches is met, and three pulleys in one line are a loop at any angle", () => {
    often(4, (roll, angle) => {
      const row = [inside("a", 0, 0), inside("b", roll.between(30, 270), 0), inside("c", 300, 0)];
      const loop = m.beltLoop(turned(row, angle));
      if (isRefusal(loop)) throw new Error(loop.refused);
      expect(loop.length).toBeCloseTo(600 + 24 * Math.PI, 9);
    });
  });

  test("spans that cross, at the place where they do", () => {
    // Two idlers push the long spans past each other: the crossing lies on the axis of symmetry.
    often(5, (roll, angle) => {
      const nodes = [
        inside("low left", -200, -60),
        outside("from below", 0, roll.between(5, 25)),
        inside("low right", 200, -60),
        inside("high right", 200, 60),
        outside("from above", 0, roll.between(-25, -5) - 15),
        inside("high left", -200, 60),
      ];
      const { name, says, set } = defectOf(m.beltLoop(turned(nodes, angle)));
      expect(name).toBe("spans-cross");
      expect(says).toMatch(/crosses another span, that after .*, at x -?[\d.e-]+, y -?[\d.e-]+ mm$/);
      expect(set.length).toBeGreaterThan(10);
    });
  });

  test("a span that runs through a pulley", () => {
    often(6, (roll, angle) => {
      const size = roll.between(45, 90);
      const nodes = [inside("a", -200, 0), inside("big", 0, 0, size), inside("b", 200, 0)];
      const { name, found, limit } = defectOf(m.beltLoop(turned(nodes, angle)));
      expect(name).toBe("span-through-node");
      expect(limit?.value).toBeCloseTo(size, 12);
      expect(found?.value).toBeCloseTo(12, 9);
    });
  });

  test("a wrong order, with the right one to set; clockwise counts as wrong", () => {
    often(7, (roll, angle) => {
      const count = roll.whole(4, 8);
      const ring = Array.from({ length: count }, (_, index) => {
        const at = (2 * Math.PI * index) / count;
        return inside(`n${index}`, 300 * Math.cos(at), 250 * Math.sin(at));
      });
      const swap = roll.whole(1, count - 2);
      const wrong = [...ring];
      [wrong[swap], wrong[swap + 1]] = [ring[swap + 1] as m.LoopNode, ring[swap] as m.LoopNode];
      for (const nodes of [wrong, [...ring].reverse()]) {
        const { name, found, limit, set } = defectOf(m.beltLoop(turned(nodes, angle)));
        expect(name).toBe("node-order-wrong");
        expect(Math.round(found?.value ?? 0) % 360).toBe(0);
        expect(found?.value).not.toBeCloseTo(360, 3);
        expect(limit?.value).toBeCloseTo(360, 9);
        const names = set.replace("the order ", "").split(", ");
        const mended = names.map((each) => ring.find((node) => node.name === each) as m.LoopNode);
        expect(isRefusal(m.beltLoop(mended)), set).toBe(false);
      }
    });
  });
});

const triangle = { xA: 0, yA: 0, xB: 300, yB: 0, xC: 150, yC: 260 };
const places = [
  { name: "A", x: 0, y: 0 },
  { name: "B", x: 300, y: 0 },
  { name: "C", x: 150, y: 260 },
];
const steel = { load: 100, pitchDiameter: 7, flank: 15 };
const plate = { mass: 3.6, heat: 896, power: 300 };

describe("the other defects of a layout", () => {
  test.each<[string, () => object, string, number, number]>([
    [
      "the centre of mass outside the triangle",
      () => m.screwLoads(places, 30, { x: 20, y: 120 }),
      "mass-outside-screws",
      -4.923076923,
      0,
    ],
    [
      "collinear screws",
      () => m.loadShare.compute({ weight: 30, x: 10, y: 5, ...triangle, yC: 12 }),
      "screws-in-line",
      12,
      15,
    ],
    [
      "a lead of three and a half pitches",
      () => m.threadStarts.compute({ lead: 7, pitch: 2 }),
      "lead-not-whole-pitches",
      7,
      8,
    ],
    ["a lead below a pitch", () => m.threadStarts.compute({ lead: 1, pitch: 2 }), "lead-not-whole-pitches", 1, 2],
    [
      "friction that jams",
      () => m.screwTorque.compute({ ...steel, lead: 60, friction: 0.4 }),
      "screw-jams",
      0.4,
      (Math.PI * 7 * Math.cos(Math.PI / 12)) / 60,
    ],
    [
      "a lead steeper than 45 deg",
      () => m.screwTorque.compute({ ...steel, lead: 25, friction: 0.1 }),
      "lead-angle-too-steep",
      25,
      21.99114858,
    ],
    [
      "friction beyond what is valid",
      () => m.screwTorque.compute({ ...steel, lead: 8, friction: 0.6 }),
      "input-out-of-range",
      0.6,
      0.5,
    ],
    [
      "a spring that is solid already, by its allowance",
      () => m.clashAllowance.compute({ freeLength: 20, solidLength: 21, shortest: 15 }),
      "spring-already-solid",
      20,
      21,
    ],
    [
      "a spring that is solid already, by its band",
      () => m.springBand.compute({ solidLength: 21, freeLength: 20, share: 10, rate: 5, range: 1 }),
      "spring-already-solid",
      20,
      21,
    ],
    [
      "a heater that never gets there",
      () => m.warmUp.compute({ ...plate, warming: 120, loss: 3 }),
      "heater-never-gets-there",
      100,
      120,
    ],
  ])("%s", (_, outcome, name, found, limit) => {
    const defect = defectOf(outcome());
    expect(defect.name).toBe(name);
    expect(defect.level).toBe("error");
    expect(defect.found?.value).toBeCloseTo(found, 6);
    expect(defect.limit?.value).toBeCloseTo(limit, 6);
    expect(defect.says).toMatch(/\d/);
    expect(Math.min(defect.why.length, defect.set.length)).toBeGreaterThan(10);
  });

  test("a screw is refused for jamming from the friction on at which the raising torque has its pole", () => {
    often(8, (roll) => {
      const lead = roll.between(50, 200);
      const pole = (Math.PI * 7 * Math.cos(Math.PI / 12)) / lead;
      if (pole > 0.49) return;
      const at = (friction: number) => m.screwTorque.compute({ ...steel, lead, friction });
      expect(defectOf(at(pole * 1.000001)).name).toBe("screw-jams");
      expect(defectOf(at(pole * 0.999999)).name).toBe("lead-angle-too-steep");
    });
  });

  test("what a heater never reaches it nearly reaches a little lower", () => {
    often(9, (roll) => {
      const loss = roll.between(1.5, 6);
      const end = plate.power / loss;
      expect(defectOf(m.warmUp.compute({ ...plate, loss, warming: end * (1 + 1e-9) })).name).toBe(
        "heater-never-gets-there",
      );
      expect(isRefusal(m.warmUp.compute({ ...plate, loss, warming: end * (1 - 1e-9) }))).toBe(false);
    });
  });
});
