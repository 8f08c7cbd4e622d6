import { describe, expect, it } from "vitest";
import {
  BEARING_SHOULDERS,
  BEARINGS,
  BUTTON_SCREWS,
  CAP_SCREWS,
  COUNTERSUNK_SCREWS,
  HEX_SCREWS,
  LOCK_NUTS,
  NUT_LIMITS,
  NUTS,
  SCREW_LIMITS,
  SCREWS,
  SPRINGS,
  THIN_NUTS,
  THREADS,
  WASHER_LIMITS,
  WASHERS,
} from "../../src/catalogue/index.ts";
import { results } from "../../src/core/calculation.ts";
import { row } from "../../src/core/table.ts";
import { springRate, springSolidLength, threadStressArea, trapezoidalThread } from "../../src/mechanics/index.ts";

/** Sizes that a standard gives by a formula: the table must be what the formula gives, to its last printed digit. */
const diameterOf = (thread: string) => row(THREADS, thread).values.diameter;

/** Tolerance grades IT13 and IT14 of ISO 286-1, in mm, for sizes up to 3, 6, 10 and 18. From memory. */
const GRADES = [
  [3, 0.14, 0.25],
  [6, 0.18, 0.3],
  [10, 0.22, 0.36],
  [18, 0.27, 0.43],
] as const;

function grade(size: number): { it13: number; it14: number } {
  const [, it13, it14] = GRADES.find(([upTo]) => size <= upTo) ?? [0, Number.NaN, Number.NaN];
  return { it13, it14 };
}

/** Agreement to the last digit of a table with three decimals. */
const digit = (computed: number, printed: number, half = 0.0006) =>
  expect(Math.abs(computed - printed), `${computed} for ${printed}`).toBeLessThanOrEqual(half);

describe("coarse threads", () => {
  it.each(THREADS.rows)("$key has the profile of ISO 68-1, of height P sqrt(3)/2", ({ values }) => {
    const height = (values.pitch * Math.sqrt(3)) / 2;
    digit(values.diameter - 0.75 * height, values.pitchDiameter);
    digit(values.diameter - (17 / 12) * height, values.minorDiameter);
    digit(values.diameter - 1.25 * height, values.nutMinor);
  });

  it.each(THREADS.rows)("$key has the stress area of ISO 898-1, printed with three digits", ({ values }) => {
    const { pitchDiameter, minorDiameter, stressArea, diameter, pitch } = values;
    const mean = (pitchDiameter + minorDiameter) / 2;
    const rounding = 0.5 * 10 ** (Math.floor(Math.log10(stressArea)) - 2) + 0.006;
    digit((Math.PI / 4) * mean ** 2, stressArea, rounding);
    digit(results(threadStressArea, { diameter, pitch }).area, stressArea, rounding);
  });

  it.each(THREADS.rows)("$key has a nut whose inside has tolerance 6H of ISO 965-1 (memory)", ({ values }) => {
    const { pitch, nutMinor, nutMinorLargest } = values;
    const micrometres = pitch < 1 ? 433 * pitch - 190 * pitch ** 1.22 : 230 * pitch ** 0.7;
    // The standard rounds to preferred numbers, which lie 6 % apart.
    expect(Math.abs(((nutMinorLargest - nutMinor) * 1000) / micrometres - 1)).toBeLessThan(0.04);
  });
});

describe("screws and nuts", () => {
  it.each(CAP_SCREWS.rows)("cap screw $key: k = d, b = 2 d + 12, heads by IT13, heights by IT13 and IT14", (screw) => {
    const { values, key } = screw;
    const diameter = diameterOf(key);
    expect(values.headHeight).toBe(diameter);
    expect(values.threadLength).toBe(2 * diameter + 12);
    digit(values.headDiameter - grade(values.headDiameter).it13, values.headLeast);
    digit(values.headDiameter + grade(values.headDiameter).it13, values.knurledDiameter);
    const { it13, it14 } = grade(values.headHeight);
    digit(values.headHeight - (diameter <= 5 ? it13 : it14), values.headHeightLeast);
  });

  it.each(CAP_SCREWS.rows)("cap screw $key: a socket whose corners are 1.14 of its least flats", ({ values }) => {
    const least = values.socketCorners / 1.14;
    expect(least - values.key).toBeGreaterThan(0.015);
    expect(least - values.key).toBeLessThan(0.03);
  });

  it.each(BUTTON_SCREWS.rows)("button screw $key: k = 0.55 d, t = 0.52 s, dk = 1.9 d up to M5 and 1.75 d", (screw) => {
    const diameter = diameterOf(screw.key);
    digit(0.55 * diameter, screw.values.headHeight);
    digit(0.52 * screw.values.key, screw.values.socketDepth);
    digit((diameter <= 5 ? 1.9 : 1.75) * diameter, screw.values.headDiameter);
  });

  it.each(COUNTERSUNK_SCREWS.rows)("countersunk screw $key: dk = 2.24 d, and a cone of 90 deg down to d", (screw) => {
    const diameter = diameterOf(screw.key);
    digit(2.24 * diameter, screw.values.headDiameter);
    digit((screw.values.headDiameter - diameter) / 2, screw.values.headHeight);
  });

  const hexagons = [...HEX_SCREWS.rows, ...THIN_NUTS.rows, ...LOCK_NUTS.rows];

  it.each(hexagons)("hexagon $key: e = 1.13 of the least width across flats, which is s - IT13", ({ values }) => {
    const { acrossFlats, acrossCorners } = values;
    digit(1.13 * (acrossFlats - grade(acrossFlats).it13), acrossCorners, 0.006);
  });
});

/** IT14 of a washer's outside, for sizes up to 6, 10, 18, 30 and 50; from memory. */
const OUTSIDE = [
  [6, 0.3],
  [10, 0.36],
  [18, 0.43],
  [30, 0.52],
  [50, 0.62],
] as const;

describe("limits of nuts and washers", () => {
  it.each(NUT_LIMITS.rows)("nut $key: least flats s - IT13, least corners 1.13 of them, heights h14", (nut) => {
    const { acrossFlats, height } = row(NUTS, nut.key).values;
    const { flatsLeast, cornersLeast, bearingFace, heightLeast, thinLeast } = nut.values;
    digit(acrossFlats - grade(acrossFlats).it13, flatsLeast);
    digit(1.13 * flatsLeast, cornersLeast, 0.006);
    expect(bearingFace).toBeLessThan(flatsLeast);
    digit(height - grade(height).it14, heightLeast);
    const thin = row(THIN_NUTS, nut.key).values.height;
    digit(thin - grade(thin).it14, thinLeast);
  });

  it.each(WASHER_LIMITS.rows)("washer $key: hole H13, outside h14", ({ key, values }) => {
    const { hole, outside } = row(WASHERS, key).values;
    digit(hole + grade(hole).it13, values.holeMost);
    const [, it14] = OUTSIDE.find(([upTo]) => outside <= upTo) ?? [0, Number.NaN];
    digit(outside - it14, values.outsideLeast);
  });

  it.each(WASHER_LIMITS.rows)("washer $key is at most 0.05 to 0.3 thicker than nominal", ({ key, values }) => {
    const over = values.thicknessMost - row(WASHERS, key).values.thickness;
    const thickness = row(WASHERS, key).values.thickness;
    expect(over).toBeCloseTo(thickness < 0.8 ? 0.05 : thickness < 1.6 ? 0.1 : 0.2, 9);
  });
});

describe("trapezoidal screws", () => {
  it.each(SCREWS.rows)("$key has the diameters of ISO 2904 by its formulas", ({ values }) => {
    const { diameter, pitch, starts } = values;
    const computed = results(trapezoidalThread, { diameter, pitch, starts });
    digit(computed.pitchDiameter, values.pitchDiameter, 1e-9);
    digit(computed.root, values.rootDiameter, 1e-9);
    digit(computed.lead, values.lead, 1e-9);
  });

  it.each(SCREW_LIMITS.rows)("$key has the limits 7e of ISO 2903: e of the flanks, 1.25 T_d2 at the root", (screw) => {
    const { diameter, pitch, pitchDiameter, rootDiameter } = row(SCREWS, screw.key).values;
    const { outsideMost, outsideLeast, pitchMost, pitchLeast, rootMost, rootLeast } = screw.values;
    expect([outsideMost, rootMost]).toEqual([diameter, rootDiameter]);
    const deviation = pitchDiameter - pitchMost;
    // Fundamental deviation e = 50 + 11 P in micrometres, T_d = 0.63 (180 P^(2/3) - 3.15/sqrt(P)); from memory.
    digit(50 + 11 * pitch, deviation * 1000, 2.1);
    digit(1.25 * (pitchMost - pitchLeast) + deviation, rootMost - rootLeast, 0.0011);
    const outside = 0.63 * (180 * pitch ** (2 / 3) - 3.15 / Math.sqrt(pitch));
    expect(Math.abs(((outsideMost - outsideLeast) * 1000) / outside - 1)).toBeLessThan(0.06);
  });

  it("gives four starts 1.4 times the tolerance of one", () => {
    const tolerance = (key: string) => {
      const { pitchMost, pitchLeast } = row(SCREW_LIMITS, key).values;
      return pitchMost - pitchLeast;
    };
    digit(1.4 * tolerance("Tr8x2"), tolerance("Tr8x8(P2)"), 1e-9);
    digit(tolerance("Tr10x2"), tolerance("Tr8x2"), 1e-9);
  });
});

/** Height of a shoulder by the corner radius, DIN 5418, and the fillet that fits under the corner. From memory. */
const HEIGHTS = new Map([
  [0.1, 0.4],
  [0.15, 0.6],
  [0.2, 0.7],
  [0.3, 1],
  [0.4, 1.2],
  [0.6, 2.1],
]);

describe("shoulders beside ball bearings", () => {
  it("stand in the order of the bearings, one for each", () => {
    expect(BEARING_SHOULDERS.rows.map(({ key }) => key).sort()).toEqual(BEARINGS.rows.map(({ key }) => key).sort());
  });

  it.each(BEARING_SHOULDERS.rows)("$key: d + 2 h and D - 2 h of DIN 5418, fillet no larger than r_s", (shoulder) => {
    const { bore, outside, width, cornerRadius } = row(BEARINGS, shoulder.key).values;
    const { shaftShoulder, housingShoulder, fillet, openWidth } = shoulder.values;
    // A bearing 4 x 16 has shoulders 6 and 14: two of height 1.
    const height = HEIGHTS.get(cornerRadius) ?? Number.NaN;
    digit(bore + 2 * height, shaftShoulder, 0.0051);
    digit(outside - 2 * height, housingShoulder, 0.0051);
    expect(fillet).toBe(cornerRadius);
    expect(openWidth).toBeLessThanOrEqual(width);
  });

  it.each(BEARING_SHOULDERS.rows)("$key: the spacer stays on the inner ring", ({ key, values }) => {
    const { bore, innerLand } = row(BEARINGS, key).values;
    expect(values.spacer).toBeGreaterThan(bore);
    expect(values.spacer).toBeLessThan(innerLand);
  });
});

/** Rate in N/mm and solid length in mm, computed by EN 13906-1 before this code was written. */
const PUBLISHED = [
  ["0.8 x 6 x 15", 4.946, 6.4],
  ["1.0 x 8 x 20", 4.95, 8],
  ["0.8 x 6 x 20 stainless", 3.797, 7.2],
  ["1.2 x 9 x 20", 8.903, 8.4],
  ["1.2 x 8 x 25 stainless", 8.597, 10.8],
  ["1.2 x 10 x 25", 5.166, 9.6],
  ["1.5 x 10 x 25", 13.997, 12],
] as const;

describe("springs by EN 13906-1", () => {
  it.each(PUBLISHED)("%s: %d N/mm, %d long when closed", (key, rate, solid) => {
    const { wire, outside, totalCoils, shearModulus } = row(SPRINGS, key).values;
    const meanDiameter = outside - wire;
    digit(results(springRate, { wire, meanDiameter, shearModulus, activeCoils: totalCoils - 2 }).rate, rate);
    digit(results(springSolidLength, { totalCoils, wire, ground: 1 }).solidLength, solid, 1e-9);
  });
});
