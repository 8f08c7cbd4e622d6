import { bounded } from "./bounded.ts";

/** Published axial holds by metric thread; the inch sizes nearest are 5, 8 and 10 (3.2, 4.2 and 4.8 mm). */
const HOLDS: Readonly<Record<number, { hold: number; torque: number }>> = {
  3: { hold: 890, torque: 1.13 },
  4: { hold: 1713, torque: 2.26 },
  5: { hold: 2402, torque: 4.07 },
};

/** Axial hold of one cup-point set screw on a plain shaft, and the torque it is tightened to. */
export const cupPointHold = bounded({
  name: "cup-point-hold",
  title: "Hold of one cup-point set screw",
  inputs: { diameter: { symbol: "d", unit: "mm", meaning: "thread of the set screw: 3, 4 or 5" } },
  results: {
    hold: { symbol: "H", unit: "N", meaning: "axial hold on a plain shaft" },
    torque: { symbol: "T", unit: "N·m", meaning: "tightening torque" },
  },
  formulas: {
    hold: '"table: M3 890, M4 1713, M5 2402 N"',
    torque: '"table: M3 1.13, M4 2.26, M5 4.07 N·m"',
  },
  source: "shigley: Table 7-4, nearest inch sizes",
  valid: "M3, M4 and M5; there is no data for other sizes, and they are refused",
  examples: [
    {
      given: { diameter: 3 },
      gives: { hold: 889.6, torque: 1.13 },
      within: 6e-4,
      source: "shigley: Table 7-4, no. 5: 200 lbf at 10 lbf in",
    },
    {
      given: { diameter: 4 },
      gives: { hold: 1712.6, torque: 2.26 },
      within: 6e-4,
      source: "shigley: Table 7-4, no. 8: 385 lbf at 20 lbf in",
    },
    {
      given: { diameter: 5 },
      gives: { hold: 2402, torque: 4.067 },
      within: 1e-3,
      source: "shigley: Table 7-4, no. 10: 540 lbf at 36 lbf in",
    },
  ],
  limits: {},
  compute: ({ diameter }) => HOLDS[diameter] ?? { refused: `no data for set screws M${diameter}` },
});
