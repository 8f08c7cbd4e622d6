import { describe, expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";
import { sound } from "../mechanics/printed.ts";
import { hasTool } from "../support/outside-tool.ts";
import { type Grid, reactions, solveGrid, twist } from "./grid.ts";
import { type Dice, dice } from "./random.ts";

const CCX = hasTool("ccx");

// Source of every check in this file: CalculiX (Debian package `calculix-ccx`): a stage as a stiff grid of bars on
// springs, each spring a screw; the loads are what the springs push with.
const STAGES = 15;

interface Stage {
  readonly grid: Grid;
  readonly screws: readonly m.PlacedScrew[];
  readonly balance: { readonly x: number; readonly y: number; readonly weight: number };
}

/** A stage of stiff bars at random distances, its screws at some crossings of them and masses at others. */
function stage(roll: Dice, count: number): Stage {
  const lines = (length: number) =>
    Array.from({ length: 5 }, (_, index) => (length * (index + roll.between(0, 0.4))) / 4).map((at) => at - length / 2);
  const [xs, ys] = [lines(roll.between(250, 600)), lines(roll.between(200, 500))];
  const nodes = ys.flatMap((y) => xs.map((x) => [x, y] as const));
  const stiff = { modulus: 2e5, inertia: 1e8 };
  const bars = nodes.flatMap((_, from) => [
    ...(from % 5 < 4 ? [{ from, to: from + 1, ...stiff }] : []),
    ...(from < 20 ? [{ from, to: from + 5, ...stiff }] : []),
  ]);
  const drawn = roll.shuffled(nodes.map((_, node) => node));
  const standing = drawn.slice(0, count);
  const masses = drawn.slice(count, count + roll.whole(1, 6)).map((node) => ({ node, mass: roll.between(0.2, 4) }));
  const at = (node: number) => ({ x: nodes[node]?.[0] ?? 0, y: nodes[node]?.[1] ?? 0 });
  return {
    grid: {
      nodes,
      bars,
      springs: standing.map((node) => ({ node, rate: roll.between(100, 900) })),
      held: [],
      loads: masses.map(({ node, mass }) => ({ node, way: "up", amount: -mass * m.GRAVITY })),
    },
    screws: standing.map((node, index) => ({ name: `screw ${index}`, ...at(node) })),
    balance: sound(m.centreOfMass(masses.map(({ node, mass }) => ({ mass, ...at(node) })))),
  };
}

const shares = ([a, b, c]: readonly m.Point[], { x, y, weight }: Stage["balance"]) =>
  m.loadShare.compute({
    ...{ weight, x, y },
    ...{ xA: a?.x ?? 0, yA: a?.y ?? 0, xB: b?.x ?? 0, yB: b?.y ?? 0, xC: c?.x ?? 0, yC: c?.y ?? 0 },
  });

describe.skipIf(!CCX)("a stage on its screws", () => {
  test("three screws: shares, and a weight outside them that pulls", () => {
    const roll = dice(50);
    let [within, outside, inLine] = [0, 0, 0];
    while (within < STAGES || outside < STAGES) {
      const { grid, screws, balance } = stage(roll, 3);
      const outcome = shares(screws, balance);
      if ("refused" in outcome) {
        inLine++;
        continue;
      }
      const forces = reactions(grid, solveGrid(grid));
      const least = Math.min(...forces);
      for (const [index, share] of [outcome.onA, outcome.onB, outcome.onC].entries()) {
        expect(Math.abs(share - (forces[index] ?? 0))).toBeLessThan(1e-4 * balance.weight);
      }
      const loads = m.screwLoads(screws, balance.weight, balance);
      if (least < -1e-3 * balance.weight) {
        expect(loads).toMatchObject({ defect: { name: "mass-outside-screws", found: { unit: "N" } } });
        outside++;
      } else if (least > 1e-3 * balance.weight) {
        expect(sound(loads).map(({ load }) => load)).toEqual(forces.map((force) => expect.closeTo(force, 2)));
        within++;
      }
    }
    expect(inLine).toBeGreaterThan(0);
  });

  test("two screws: the lever rule, and the moment that the wheels must take", () => {
    const roll = dice(51);
    for (let run = 0; run < STAGES; run++) {
      const { grid, screws, balance } = stage(roll, 2);
      const [a, b] = screws as [m.PlacedScrew, m.PlacedScrew];
      const spacing = m.distance(a, b);
      const [ux, uy] = [(b.x - a.x) / spacing, (b.y - a.y) / spacing];
      const [dx, dy] = [balance.x - a.x, balance.y - a.y];
      const [along, across] = [dx * ux + dy * uy, dy * ux - dx * uy];
      const { onA, onB, moment } = sound(m.twoScrewShare.compute({ weight: balance.weight, spacing, along, across }));
      // Seen along the line of the screws; the wheels are a bar that only twists, held against turning at its end.
      const nodes = grid.nodes.map(([x, y]) => [x * ux + y * uy, y * ux - x * uy] as const);
      const [x, y] = nodes[0] ?? [0, 0];
      const wheels = { from: 0, to: nodes.length, modulus: 2e5, inertia: 500 };
      const wheeled: Grid = {
        nodes: [...nodes, [x - 100, y]],
        bars: [...grid.bars, wheels],
        springs: grid.springs,
        held: [{ node: nodes.length, ways: ["aboutX"] }],
        loads: grid.loads,
      };
      const motions = solveGrid(wheeled);
      const [forceA = 0, forceB = 0] = reactions(wheeled, motions);
      const turning = twist(wheels, 100, motions);
      expect(Math.abs(onA - forceA)).toBeLessThan(1e-4 * balance.weight);
      expect(Math.abs(onB - forceB)).toBeLessThan(1e-4 * balance.weight);
      expect(Math.abs(moment - Math.abs(turning))).toBeLessThan(1e-4 * (moment + balance.weight));
    }
  });

  test("four screws of any stiffness: every load lies within its bounds, and one pulls when all must", () => {
    const roll = dice(52);
    let [pushed, lifted] = [0, 0];
    while (pushed < STAGES || lifted < STAGES) {
      const { grid, screws, balance } = stage(roll, 4);
      const outcome = m.fourScrewBounds(screws, balance.weight, balance);
      if ("refused" in outcome) continue;
      const forces = reactions(grid, solveGrid(grid));
      const pulls = Math.min(...forces) < -1e-4 * balance.weight;
      if (outcome.lifts) {
        expect(pulls).toBe(true);
        lifted++;
      } else if (!pulls) {
        for (const [index, { least, most }] of outcome.bounds.entries()) {
          expect(forces[index]).toBeGreaterThan(least - 1e-3 * balance.weight);
          expect(forces[index]).toBeLessThan(most + 1e-3 * balance.weight);
        }
        pushed++;
      }
    }
  });
});
