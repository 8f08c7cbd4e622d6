import { bounded } from "./bounded.ts";

/** Height of a belt plane above the plate that carries the motor. */
export const motorPlane = bounded({
  name: "motor-plane",
  title: "Belt plane of a motor pulley",
  inputs: {
    top: { symbol: "z_top", unit: "mm", meaning: "top of the motor plate above the datum" },
    gap: { symbol: "gap", unit: "mm", meaning: "air between the plate and the pulley" },
    offset: { symbol: "e", unit: "mm", meaning: "belt plane from the pulley face next to the plate" },
  },
  results: {
    plane: { symbol: "z_belt", unit: "mm", meaning: "belt plane above the datum" },
  },
  formulas: {
    plane: "z_top + gap + e",
  },
  source: "geometry",
  valid: "shaft upright; the pulley must not touch the plate, so a gap below 0 is refused",
  examples: [
    {
      given: { top: 12, gap: 1, offset: 11.5 },
      gives: { plane: 24.5 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { gap: { from: 0 }, offset: { above: 0 } },
  compute: ({ top, gap, offset }) => ({ plane: top + gap + offset }),
});
