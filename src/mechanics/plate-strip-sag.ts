import { bounded } from "./bounded.ts";

/** Bound on a plate's sag, not its real sag: that of a strip between the two mounts that are farthest apart. */
export const plateStripSag = bounded({
  name: "plate-strip-sag",
  title: "Bound on the sag of a plate",
  inputs: {
    pressure: { symbol: "q", unit: "MPa", meaning: "weight per area" },
    length: { symbol: "L", unit: "mm", meaning: "distance of the two mounts farthest apart" },
    modulus: { symbol: "E", unit: "MPa", meaning: "elastic modulus" },
    thickness: { symbol: "t", unit: "mm", meaning: "plate thickness" },
  },
  results: { sag: { symbol: "delta", unit: "mm", meaning: "bound on the sag at the middle" } },
  formulas: { sag: "5 * q * L^4 / (32 * E * t^3)" },
  source: "shigley: Table A-9, strip of unit width",
  valid: "a bound, on the safe side; sag below a tenth of the length",
  examples: [
    {
      given: { pressure: 0.000168, length: 400, modulus: 69000, thickness: 6.35 },
      gives: { sag: 0.0380356 },
      within: 1e-4,
      source: "shigley: own arithmetic",
    },
  ],
  limits: { pressure: { from: 0 }, length: { above: 0 }, modulus: { above: 0 }, thickness: { above: 0 } },
  compute: ({ pressure, length, modulus, thickness }) => {
    const sag = (5 * pressure * length ** 4) / (32 * modulus * thickness ** 3);
    if (!(sag < length / 10)) return { refused: "the sag is over a tenth of the length, too large for this formula" };
    return { sag };
  },
});
