import { describe, expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";
import { one } from "../mechanics/printed.ts";
import { hasTool } from "../support/outside-tool.ts";
import { type Grid, reactions, solveGrid } from "./grid.ts";
import { type Dice, dice } from "./random.ts";

const CCX = hasTool("ccx");

// Source of every check in this file: CalculiX (Debian package `calculix-ccx`), beam elements without shear. The solver
// prints seven digits.
const AGREE = 2e-6;
const FRAMES = 12;
const DEG = 180 / Math.PI;

const close = (computed: number, there: number, share = AGREE) =>
  expect(Math.abs(computed - there), `${computed}, solver ${there}`).toBeLessThanOrEqual(share * Math.abs(there));

/** An aluminium bar of the trade: modulus in MPa, second moment in mm4. */
const bar = (roll: Dice) => ({ modulus: roll.between(60000, 75000), inertia: roll.between(5000, 140000) });

/** Nodes along x, each bar of one section between neighbours. */
function along(places: readonly number[], section: { modulus: number; inertia: number }): Pick<Grid, "nodes" | "bars"> {
  return {
    nodes: places.map((x) => [x, 0]),
    bars: places.slice(1).map((_, index) => ({ from: index, to: index + 1, ...section })),
  };
}

function every(seed: number, check: (roll: Dice) => void): void {
  const roll = dice(seed);
  for (let frame = 0; frame < FRAMES; frame++) check(roll);
}

/** Forces and end moments at the nodes that stand for an even load on equal pieces (their work is the same). */
function evenly(load: number, piece: number, count: number): Grid["loads"] {
  return Array.from({ length: count + 1 }, (_, node) => node).flatMap((node) => {
    const end = node === 0 ? 1 : node === count ? -1 : 0;
    const moment = { node, way: "aboutY" as const, amount: (end * load * piece ** 2) / 12 };
    return [
      { node, way: "up" as const, amount: -load * piece * (end === 0 ? 1 : 0.5) },
      ...(end === 0 ? [] : [moment]),
    ];
  });
}

const built = { node: 0, ways: ["up", "aboutX", "aboutY"] } as const;
const resting = (node: number) => ({ node, ways: ["up", "aboutX"] }) as const;

describe.skipIf(!CCX)("arms", () => {
  test("sag of the tip and slope, load anywhere on the arm", () => {
    every(40, (roll) => {
      const [section, length, force] = [bar(roll), roll.between(100, 600), roll.between(1, 60)];
      const at = length * roll.between(0.1, 0.95);
      const loads = [{ node: 1, way: "up", amount: -force }] as const;
      const tip = solveGrid({ ...along([0, at, length], section), springs: [], held: [built], loads })[2];
      close(one(m.cantileverDeflection, "sag", { ...section, force, at, length }), -(tip?.up ?? 0));
      close(one(m.cantileverSlope, "slope", { ...section, force, at }), (tip?.aboutY ?? 0) * DEG);
    });
  });

  test("sag and slope under an even load", () => {
    every(41, (roll) => {
      const [section, length, load] = [bar(roll), roll.between(100, 600), roll.between(0.001, 0.2)];
      const places = Array.from({ length: 5 }, (_, index) => (length * index) / 4);
      const grid = { ...along(places, section), springs: [], held: [built], loads: evenly(load, length / 4, 4) };
      const tip = solveGrid(grid)[4];
      const given = { ...section, load, length };
      close(one(m.cantileverUniformLoad, "sag", given), -(tip?.up ?? 0));
      close(one(m.cantileverUniformLoad, "slope", given), (tip?.aboutY ?? 0) * DEG);
    });
  });

  test("two arms tied at their tips share the load, and sag as one of both together", () => {
    every(49, (roll) => {
      const [modulus, length, force] = [roll.between(60000, 75000), roll.between(100, 400), roll.between(5, 60)];
      const [first, second] = [roll.between(5000, 140000), roll.between(5000, 140000)];
      // Tied arms sag alike: each under its share, and one of the summed second moment under the whole.
      const shares = m.tiedBars.compute({ force, first, second }) as Record<string, number>;
      const tipOf = (inertia: number, load: number) => {
        const loads = [{ node: 1, way: "up", amount: -load }] as const;
        return (
          solveGrid({ ...along([0, length], { modulus, inertia }), springs: [], held: [built], loads })[1]?.up ?? 0
        );
      };
      const together = tipOf(shares.inertia ?? 0, force);
      close(tipOf(first, shares.onFirst ?? 0), together);
      close(tipOf(second, shares.onSecond ?? 0), together);
    });
  });

  test("wheel rows that give way: carriage and arm together sag by the sum of both formulas", () => {
    // The rows stand beside a pivot that takes the weight; the moment of the arm turns the carriage on them.
    every(42, (roll) => {
      const [section, length, force] = [bar(roll), roll.between(100, 400), roll.between(5, 60)];
      const [spacing, upperRate, lowerRate] = [roll.between(60, 160), roll.between(200, 3000), roll.between(200, 3000)];
      const half = spacing / 2;
      const grid: Grid = {
        nodes: [
          [-half, 0],
          [0, 0],
          [half, 0],
          [length, 0],
        ],
        bars: [
          { from: 0, to: 1, modulus: 2e5, inertia: 1e10 },
          { from: 1, to: 2, modulus: 2e5, inertia: 1e10 },
          { from: 1, to: 3, ...section },
        ],
        springs: [
          { node: 0, rate: upperRate },
          { node: 2, rate: lowerRate },
        ],
        held: [{ node: 1, ways: ["up", "aboutX"] }],
        loads: [{ node: 3, way: "up", amount: -force }],
      };
      const motions = solveGrid(grid);
      const [upper, lower] = [motions[0]?.up ?? 0, -(motions[2]?.up ?? 0)];
      const drop = one(m.carriageTipDrop, "drop", { upper, lower, spacing, length });
      const sag = one(m.cantileverDeflection, "sag", { ...section, force, at: length, length });
      close(drop + sag, -(motions[3]?.up ?? 0), 1e-5);
    });
  });
});

describe.skipIf(!CCX)("cross bars", () => {
  test("sag at the middle, load at the middle", () => {
    every(43, (roll) => {
      const [section, length, force] = [bar(roll), roll.between(200, 900), roll.between(5, 200)];
      const loads = [{ node: 1, way: "up", amount: -force }] as const;
      const held = [resting(0), resting(2)];
      const middle = solveGrid({ ...along([0, length / 2, length], section), springs: [], held, loads })[1];
      close(one(m.simpleBeamDeflection, "sag", { ...section, force, length }), -(middle?.up ?? 0));
    });
  });

  test("sag under a load anywhere", () => {
    every(50, (roll) => {
      const [section, length, force] = [bar(roll), roll.between(200, 900), roll.between(5, 200)];
      const at = length * roll.between(0.05, 0.95);
      const loads = [{ node: 1, way: "up", amount: -force }] as const;
      const held = [resting(0), resting(2)];
      const there = solveGrid({ ...along([0, at, length], section), springs: [], held, loads })[1];
      close(one(m.simpleBeamLoadSag, "sag", { ...section, force, at, length }), -(there?.up ?? 0));
    });
  });

  test("sag at the middle, even load; a strip of plate is such a bar", () => {
    every(44, (roll) => {
      const [length, width, thickness] = [roll.between(200, 500), roll.between(20, 100), roll.between(3, 12)];
      const [modulus, pressure] = [roll.between(60000, 75000), roll.between(1e-5, 1e-3)];
      const section = { modulus, inertia: (width * thickness ** 3) / 12 };
      const load = pressure * width;
      const places = Array.from({ length: 5 }, (_, index) => (length * index) / 4);
      const held = [resting(0), resting(4)];
      const grid = { ...along(places, section), springs: [], held, loads: evenly(load, length / 4, 4) };
      const sag = -(solveGrid(grid)[2]?.up ?? 0);
      close(one(m.simpleBeamUniformLoad, "sag", { ...section, load, length }), sag);
      close(one(m.plateStripSag, "sag", { pressure, length, modulus, thickness }), sag);
    });
  });

  test("the tilt of a screw where the belt pulls at it, between bearing and nut", () => {
    every(45, (roll) => {
      const [span, root, pull] = [roll.between(80, 400), roll.between(4, 12), roll.between(5, 60)];
      const height = span * roll.between(0.05, 0.95);
      const section = { modulus: 205000, inertia: (Math.PI * root ** 4) / 64 };
      const loads = [{ node: 1, way: "up", amount: -pull }] as const;
      const held = [resting(0), resting(2)];
      const belt = solveGrid({ ...along([0, height, span], section), springs: [], held, loads })[1];
      const tilt = Math.abs(belt?.aboutY ?? 0) * DEG;
      const given = { float: 0, span, pull, height, modulus: 205000, root };
      expect(Math.abs(one(m.screwTilt, "tilt", given) - tilt)).toBeLessThan(1e-6 * tilt + 1e-7);
    });
  });
});

describe.skipIf(!CCX)("rows that share a moment", () => {
  /** A rigid bar with a spring under each place. */
  function rigid(places: readonly number[], rate: number, loads: Grid["loads"], held: Grid["held"]): number[] {
    const springs = places.map((_, node) => ({ node, rate }));
    const grid = { ...along(places, { modulus: 2e5, inertia: 1e9 }), springs, held, loads };
    return reactions(grid, solveGrid(grid));
  }
  const flat = [{ node: 0, ways: ["aboutX"] }] as const;

  test("wheel rows: the outermost takes its share", () => {
    every(46, (roll) => {
      const outermost = roll.between(40, 120);
      const inner = roll.pick([[], [roll.between(10, 35)]]);
      const places = [-outermost, ...inner.map((y) => -y), ...inner, outermost];
      const moment = roll.between(500, 20000);
      const forces = rigid(places, 500, [{ node: 0, way: "aboutY", amount: moment }], flat);
      const squares = places.reduce((sum, y) => sum + y * y, 0);
      close(one(m.rowForce, "force", { moment, outermost, squares, faces: 1 }), Math.abs(forces[0] ?? 0), 1e-4);
      expect(forces.reduce((sum, force) => sum + force, 0)).toBeCloseTo(0, 3);
    });
  });

  test("wheels with preload: largest and smallest of each kind of carriage", () => {
    every(47, (roll) => {
      const [half, moment] = [roll.between(30, 80), roll.between(500, 9000)];
      const swing = rigid([-half, half], 500, [{ node: 0, way: "aboutY", amount: moment }], flat).map(Math.abs);
      const radial = one(m.rowForce, "force", { moment, outermost: half, squares: 2 * half ** 2, faces: 1 });
      const preload = radial * roll.between(2.1, 4);
      // Four wheels: each row has two, preloaded against each other, that share the row's force.
      const four = m.wheelForces.compute({ preload, radial, axial: 0 });
      expect(four).toMatchObject({
        largest: expect.closeTo(preload + (swing[0] ?? 0) / 2, 2),
        smallest: expect.closeTo(preload - (swing[1] ?? 0) / 2, 2),
      });
      // Three wheels: the eccentric one presses between the two fixed ones.
      const pressing = 1.2 * preload;
      const loads: Grid["loads"] = [
        { node: 0, way: "aboutY", amount: moment },
        { node: 1, way: "up", amount: -pressing },
      ];
      const springs = [0, 2].map((node) => ({ node, rate: 500 }));
      const stiff = along([-half, 0, half], { modulus: 2e5, inertia: 1e9 });
      const grid: Grid = { ...stiff, springs, held: flat, loads };
      const fixed = reactions(grid, solveGrid(grid));
      const three = m.threeWheelForces.compute({ preload: pressing, radial, axial: 0 });
      expect(three).toMatchObject({
        largest: expect.closeTo(Math.max(pressing, ...fixed), 2),
        smallest: expect.closeTo(Math.min(...fixed), 2),
      });
    });
  });

  test("bolts of a bracket that tips about its heel", () => {
    every(48, (roll) => {
      const rowsAt = Array.from({ length: roll.whole(1, 3) }, (_, row) => 10 + 25 * row + roll.between(0, 15));
      const [moment, bolts] = [roll.between(500, 20000), roll.whole(1, 3)];
      const places = [0, ...rowsAt];
      const springs = rowsAt.map((_, row) => ({ node: row + 1, rate: 800 }));
      const loads = [{ node: 0, way: "aboutY" as const, amount: moment }];
      const grid = { ...along(places, { modulus: 2e5, inertia: 1e9 }), springs, held: [resting(0)], loads };
      const forces = reactions(grid, solveGrid(grid)).map(Math.abs);
      const squares = rowsAt.reduce((sum, at) => sum + at * at, 0);
      for (const [row, distance] of rowsAt.entries()) {
        const { tension, each } = m.rowTension.compute({ moment, distance, squares, bolts }) as Record<string, number>;
        close(tension ?? 0, forces[row] ?? 0, 1e-4);
        close((each ?? 0) * bolts, forces[row] ?? 0, 1e-4);
      }
    });
  });
});
