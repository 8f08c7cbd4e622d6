import { bounded } from "./bounded.ts";

/** Tilt of a lead screw at its pulley: the nut's float, and the bend by the belt's pull between bearing and nut. */
export const screwTilt = bounded({
  name: "screw-tilt",
  title: "Tilt of a screw at its pulley",
  inputs: {
    float: { symbol: "c", unit: "mm", meaning: "radial float of the nut" },
    span: { symbol: "L_n", unit: "mm", meaning: "bearing to nut, stage at the bottom" },
    pull: { symbol: "F_r", unit: "N", meaning: "belt pull" },
    height: { symbol: "h_b", unit: "mm", meaning: "bearing to belt plane" },
    modulus: { symbol: "E", unit: "MPa", meaning: "elastic modulus of the screw" },
    root: { symbol: "d3", unit: "mm", meaning: "root diameter of the thread" },
  },
  results: {
    inertia: { symbol: "I", unit: "mm4", meaning: "second moment of the root section" },
    tilt: { symbol: "phi", unit: "deg", meaning: "tilt of the screw at the belt" },
  },
  formulas: {
    inertia: "pi * d3^4 / 64",
    tilt: "atand(c / L_n) + F_r * h_b * (L_n - h_b) * abs(L_n - 2 * h_b) / (3 * E * I * L_n) * 180 / pi",
  },
  source: "shigley: Table A-9, beam on two supports",
  valid: "one bearing that lets the screw tilt, belt between bearing and nut, tilt below 3 deg; outside it refuses",
  examples: [
    {
      given: { float: 0.5, span: 150, pull: 30, height: 16, modulus: 205000, root: 5.5 },
      gives: { inertia: 44.918, tilt: 0.296 },
      within: 2e-3,
      source: "statics: own arithmetic",
    },
  ],
  limits: {
    float: { from: 0 },
    span: { above: 0 },
    pull: { from: 0 },
    height: { from: 0 },
    modulus: { above: 0 },
    root: { above: 0 },
  },
  compute: ({ float, span, pull, height, modulus, root }) => {
    if (height > span) return { refused: "the belt plane lies beyond the nut" };
    const inertia = (Math.PI * root ** 4) / 64;
    const bend = (pull * height * (span - height) * Math.abs(span - 2 * height)) / (3 * modulus * inertia * span);
    const tilt = ((Math.atan(float / span) + bend) * 180) / Math.PI;
    return tilt < 3 ? { inertia, tilt } : { refused: "the tilt is over 3 deg, too large for this formula" };
  },
});
