import { bounded } from "./bounded.ts";

type Step = readonly [share: number, factor: number];

/** Axial factor Y by axial load over static rating (key `shigley`: Table 11-1, from memory). */
const AXIAL_FACTORS: readonly Step[] = [
  [0.014, 2.3],
  [0.021, 2.15],
  [0.028, 1.99],
  [0.042, 1.85],
  [0.056, 1.71],
  [0.07, 1.63],
  [0.084, 1.55],
  [0.11, 1.45],
  [0.17, 1.31],
  [0.28, 1.15],
  [0.42, 1.04],
  [0.56, 1],
];

/** Basic rating life of a deep-groove ball bearing: the turns that nine in ten of them reach. */
export const bearingLife = bounded({
  name: "bearing-life",
  title: "Rating life of a ball bearing",
  inputs: {
    dynamic: { symbol: "C", unit: "N", meaning: "dynamic load rating" },
    static: { symbol: "C_0", unit: "N", meaning: "static load rating" },
    radial: { symbol: "F_r", unit: "N", meaning: "radial load" },
    axial: { symbol: "F_a", unit: "N", meaning: "axial load" },
  },
  results: {
    factor: { symbol: "Y", unit: "", meaning: "axial factor" },
    equivalent: { symbol: "P", unit: "N", meaning: "equivalent dynamic load" },
    life: { symbol: "L_10", unit: "Mrev", meaning: "rating life" },
  },
  formulas: {
    factor: '"table of the axial factor at F_a / C_0, linear between its rows, 2.30 below 0.014"',
    equivalent: "max(F_r, 0.56 * F_r + Y * F_a)",
    life: "(C / P)^3",
  },
  source: "iso-281",
  valid: "axial load up to 0.56 of the static rating; above it, and without any load, it refuses",
  examples: [
    {
      given: { dynamic: 3450, static: 1370, radial: 30, axial: 50 },
      gives: { factor: 1.905, equivalent: 112.05, life: 29190 },
      within: 5e-4,
      source: "iso-281: own arithmetic",
    },
    {
      given: { dynamic: 16000, static: 8000, radial: 2000, axial: 0 },
      gives: { life: 512 },
      within: 1e-9,
      source: "iso-281: examination question with answer",
    },
  ],
  limits: { dynamic: { above: 0 }, static: { above: 0 }, radial: { from: 0 }, axial: { from: 0 } },
  compute: ({ dynamic, static: rating, radial, axial }) => {
    if (axial > 0.56 * rating) return { refused: "F_a is above 0.56 of the static rating C_0" };
    const factor = axialFactor(Math.min(axial / rating, 0.56));
    const equivalent = Math.max(radial, 0.56 * radial + factor * axial);
    if (equivalent === 0) return { refused: "the bearing carries no load" };
    return { factor, equivalent, life: (dynamic / equivalent) ** 3 };
  },
});

/** Returns Y at a share of the static rating from 0 to 0.56, the last row of the table. */
function axialFactor(share: number): number {
  const above = AXIAL_FACTORS.findIndex(([at]) => at >= share);
  const [right, rightFactor] = AXIAL_FACTORS[above] as Step;
  const [left, leftFactor] = AXIAL_FACTORS[above - 1] ?? [0, rightFactor];
  return leftFactor + ((share - left) / (right - left)) * (rightFactor - leftFactor);
}
