import { bounded } from "./bounded.ts";

/** Tension in a bolt, and how much of its proof load that is. */
export const boltStress = bounded({
  name: "bolt-stress",
  title: "Tension in a tightened bolt",
  inputs: {
    force: { symbol: "F", unit: "N", meaning: "clamp force" },
    area: { symbol: "A_s", unit: "mm2", meaning: "stress area" },
    proof: { symbol: "S_p", unit: "MPa", meaning: "proof strength; 580 for 8.8 up to M16" },
  },
  results: {
    stress: { symbol: "sigma", unit: "MPa", meaning: "tension" },
    share: { symbol: "c", unit: "", meaning: "share of the proof load" },
  },
  formulas: {
    stress: "F / A_s",
    share: "sigma / S_p",
  },
  source: "shigley: 8-8",
  valid: "tension alone; the twist of tightening adds to it",
  differs: [
    "an engineering page takes 600 MPa as the proof strength of 8.8; ISO 898-1 has 580 up to M16, which this program uses",
  ],
  examples: [
    {
      given: { force: 25000, area: 58, proof: 600 },
      gives: { stress: 431, share: 0.718 },
      within: 6e-4,
      source: "shigley: on an engineering reference page, M10 8.8, which takes a proof strength of 600",
    },
  ],
  limits: { force: { from: 0 }, area: { above: 0 }, proof: { above: 0 } },
  compute: ({ force, area, proof }) => ({ stress: force / area, share: force / area / proof }),
});
