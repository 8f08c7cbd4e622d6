import { bounded } from "./bounded.ts";

/** Share of the published hold that is left when the points sit on thread crests; common practice. */
export const CREST_SHARE = 0.3;

/** Axial hold of a pulley's set screws on a lead screw, and how often it covers the thrust. */
export const setScrewHold = bounded({
  name: "set-screw-hold",
  title: "Hold of a pulley's set screws",
  inputs: {
    count: { symbol: "n", unit: "", meaning: "set screws" },
    each: { symbol: "H", unit: "N", meaning: "published hold of one set screw on a plain shaft" },
    share: { symbol: "c", unit: "", meaning: "share left on thread crests; 0.3" },
    load: { symbol: "F_a", unit: "N", meaning: "thrust" },
  },
  results: {
    hold: { symbol: "F_hold", unit: "N", meaning: "hold of all set screws" },
    factor: { symbol: "S", unit: "", meaning: "hold over thrust; at least 3 wanted" },
  },
  formulas: { hold: "n * H * c", factor: "F_hold / F_a" },
  source: "shigley: Table 7-4, with a share from common practice",
  valid: "cup points at their tightening torque; two screws add. Without thrust there is no factor, and it refuses",
  examples: [
    {
      given: { count: 2, each: 890, share: 0.3, load: 50 },
      gives: { hold: 534, factor: 10.7 },
      within: 2e-3,
      source: "shigley: own arithmetic",
    },
  ],
  limits: {
    count: { from: 1, whole: true },
    each: { above: 0 },
    share: { above: 0, to: 1 },
    load: { above: 0 },
  },
  compute: ({ count, each, share, load }) => ({ hold: count * each * share, factor: (count * each * share) / load }),
});
