import { bounded } from "./bounded.ts";

/** Equivalent static load of a deep-groove ball bearing and its safety against dented races. */
export const bearingStaticLoad = bounded({
  name: "bearing-static-load",
  title: "Static load of a ball bearing",
  inputs: {
    radial: { symbol: "F_r", unit: "N", meaning: "radial load" },
    axial: { symbol: "F_a", unit: "N", meaning: "axial load" },
    rating: { symbol: "C_0", unit: "N", meaning: "static load rating" },
  },
  results: {
    equivalent: { symbol: "P_0", unit: "N", meaning: "equivalent static load" },
    safety: { symbol: "s_0", unit: "", meaning: "static safety; at least 2 wanted" },
  },
  formulas: { equivalent: "max(0.6 * F_r + 0.5 * F_a, F_r)", safety: "C_0 / P_0" },
  source: "iso-76",
  valid: "still or slow turning; a bearing without load is refused, since it has no safety to speak of",
  examples: [
    {
      given: { radial: 30, axial: 50, rating: 1370 },
      gives: { equivalent: 43, safety: 31.9 },
      within: 2e-3,
      source: "iso-76: own arithmetic",
    },
    {
      given: { radial: 100, axial: 200, rating: 1370 },
      gives: { equivalent: 160 },
      within: 1e-9,
      source: "bearing-makers: rule of a product page, own numbers",
    },
  ],
  limits: { radial: { from: 0 }, axial: { from: 0 }, rating: { above: 0 } },
  compute: ({ radial, axial, rating }) => {
    const equivalent = Math.max(0.6 * radial + 0.5 * axial, radial);
    if (equivalent === 0) return { refused: "the bearing carries no load" };
    return { equivalent, safety: rating / equivalent };
  },
});
