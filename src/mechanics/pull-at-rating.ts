import { bounded } from "./bounded.ts";

/** Tension of a belt, as heavy on the motor's front bearing as one at the distance for which a radial load is rated. */
export const pullAtRating = bounded({
  name: "pull-at-rating",
  title: "A belt's tension brought to the distance of a rating",
  inputs: {
    tension: { symbol: "T", unit: "N", meaning: "tension of a span" },
    lever: { symbol: "l", unit: "mm", meaning: "motor's face to the belt's middle" },
    rated: { symbol: "a", unit: "mm", meaning: "motor's face to the place for which the load is rated" },
  },
  results: { tension: { symbol: "T_a", unit: "N", meaning: "tension there with the same moment about the face" } },
  formulas: { tension: "T * max(l, a / 2) / a" },
  source: "common-practice",
  valid:
    "moments about the face, behind which the front bearing lies; motor makers who give several distances come within a " +
    "few percent of that (from memory); nearer than half the rated distance no more than twice the rating is counted on",
  examples: [
    {
      given: { tension: 15, lever: 46, rated: 20 },
      gives: { tension: 34.5 },
      within: 1e-9,
      source: "statics: own arithmetic",
    },
    {
      given: { tension: 30, lever: 6, rated: 20 },
      gives: { tension: 15 },
      within: 1e-9,
      source: "common-practice: twice the rating at most, as makers' tables end there",
    },
  ],
  limits: { tension: { from: 0 }, rated: { above: 0 } },
  compute: ({ tension, lever, rated }) => ({ tension: (tension * Math.max(lever, rated / 2)) / rated }),
});
