import { describe, expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";
import { one } from "../mechanics/printed.ts";
import { hasTool } from "../support/outside-tool.ts";
import { bendingFrequency, bucklingLoad, type Column, type Ends, tipSag } from "./column.ts";
import { dice } from "./random.ts";

const CCX = hasTool("ccx");

// Source of every check in this file: CalculiX (Debian package `calculix-ccx`), beams as bricks: buckling and vibration
// as eigenvalues, bending with its shear.
const ENDS = Object.keys(m.SHAFT_ENDS) as Ends[];
const STEEL = { modulus: 205000, density: 7.85 };

/** A square of the same second moment as a round screw; its density makes up for its larger area. */
function asSquare(root: number, length: number, ends: Ends): Column {
  const side = ((12 * Math.PI * root ** 4) / 64) ** 0.25;
  const density = (STEEL.density * Math.PI * root ** 2) / (4 * side ** 2);
  return { length, width: side, depth: side, modulus: STEEL.modulus, poisson: 0, density, ends };
}

describe.skipIf(!CCX)("lead screws", () => {
  test.each(ENDS)("buckling load of a slender one, %s", (ends) => {
    const roll = dice(60);
    for (let run = 0; run < 10; run++) {
      const [root, slender] = [roll.between(4, 16), roll.between(250, 600)];
      const length = (root / 4) * slender;
      const there = bucklingLoad(asSquare(root, length, ends));
      const given = { ends: m.SHAFT_ENDS[ends].column, modulus: STEEL.modulus, root, length, yield: 300 };
      const { critical, euler } = m.screwColumn.compute(given) as Record<string, number>;
      expect(critical).toBe(euler);
      const inertia = (Math.PI * root ** 4) / 64;
      expect(one(m.eulerLoad, "load", { ...given, inertia })).toBeCloseTo(euler ?? 0, 6);
      // The handbook rounds the factor of a column that is fixed and pinned, 2.0457, down to 2: the safe side.
      const exact = ends === "fixed-pinned" ? 2.0457 / 2 : 1;
      expect((euler ?? 0) * exact * (1 / there)).toBeCloseTo(1, 2);
      expect(euler).toBeLessThan(there * 1.005);
    }
  });

  test.each(ENDS)("whirling speed as the lowest frequency of bending, %s", (ends) => {
    const roll = dice(61);
    for (let run = 0; run < 10; run++) {
      const root = roll.between(4, 16);
      const length = root * roll.between(40, 150);
      const there = bendingFrequency(asSquare(root, length, ends));
      const given = { ends: m.SHAFT_ENDS[ends].whirl, length, root, ...STEEL };
      expect(one(m.screwWhirl, "frequency", given) / there).toBeCloseTo(1, 2);
      expect(one(m.screwWhirl, "speed", given) / (60 * there)).toBeCloseTo(1, 2);
    }
  });
});

test.skipIf(!CCX)("a bracket's arm of 2.5 to 5 depths sinks by bending and shear together", () => {
  const roll = dice(62);
  for (let run = 0; run < 12; run++) {
    const depth = roll.between(8, 30);
    const width = depth * roll.between(0.3, 1.2);
    const [lever, force, modulus] = [depth * roll.between(2.5, 5), roll.between(5, 60), roll.between(1500, 3000)];
    const beam = { length: lever, width, depth, modulus, poisson: 0.35, density: 1.27, ends: "fixed-free" } as const;
    const given = { force, lever, width, height: depth, modulus, creep: 1 };
    expect(Math.abs(one(m.bracketSink, "sink", given) / tipSag(beam, force) - 1)).toBeLessThan(0.015);
    // Shear is a part that shows: without it the formula would be off by more than that.
    const part = { force, length: lever, factor: 1.2, modulus: modulus / 2.7, area: width * depth };
    expect(one(m.beamShear, "sag", part)).toBeCloseTo(one(m.bracketSink, "shear", given), 12);
    const { shear, sink } = m.bracketSink.compute(given) as Record<string, number>;
    expect((shear ?? 0) / (sink ?? 1)).toBeGreaterThan(0.02);
  }
});

test.skipIf(!CCX)("the formulas without shear are good to 2 % from a length of eight depths on, and not at two", () => {
  const roll = dice(63);
  const without = (depths: number) => {
    const [width, depth, modulus] = [roll.between(10, 40), roll.between(10, 40), roll.between(60000, 75000)];
    const length = depths * depth;
    const inertia = (width * depth ** 3) / 12;
    const column: Column = { length, width, depth, modulus, poisson: 0.33, density: 2.7, ends: "fixed-free" };
    return one(m.cantileverDeflection, "sag", { force: 10, at: length, length, modulus, inertia }) / tipSag(column, 10);
  };
  for (let run = 0; run < 10; run++) {
    expect(Math.abs(without(roll.between(8, 20)) - 1)).toBeLessThan(0.02);
    expect(without(2)).toBeLessThan(0.9);
  }
});
