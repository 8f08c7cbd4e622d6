import type { Dimensions } from "../../../core/dimension.ts";
import type { Faces } from "../derive/faces.ts";
import { facesOf } from "../layout.ts";
import type { Parameters } from "../parameters.ts";

export const faceDimensions: Dimensions<Parameters, Faces> = {
  faces: {
    symbol: "n_f",
    unit: "",
    meaning: "faces of the bar that carry a plate",
    formula: (given) => `${facesOf(given)}`,
    source: "design-rule",
  },
  faceDistance: {
    symbol: "z_i",
    unit: "mm",
    meaning: "distance of the inner faces of two plates",
    formula: "2 * z_w - U + T_e",
    source: "geometry",
  },
  tipHeight: {
    symbol: "z_t",
    unit: "mm",
    meaning: "tip of an axle over its plate",
    formula: "L - t_w - t_p",
    source: "geometry",
  },
  staggerNeed: {
    symbol: "s_n",
    unit: "mm",
    meaning: "least shift of the second plate",
    formula:
      "\"OD + 2 when wheels share a groove; OD/2 + a nut's corner + 1 when a tip reaches the other wheels; else a nut + 1, or 0",
    source: "geometry",
  },
  stagger: {
    symbol: "s_g",
    unit: "mm",
    meaning: "shift of the second plate along the travel",
    formula: (given) => {
      if (facesOf(given) === 1) return "0";
      return given.stagger === undefined ? "up(s_n, 0.5)" : `${given.stagger}`;
    },
    source: "geometry",
  },
  apart: {
    symbol: "s_a",
    unit: "mm",
    meaning: "nearest axles of the two plates on one side, along the travel",
    formula: (given) =>
      facesOf(given) === 1 ? "h" : '"the least distance between a row of one plate and one of the other',
    source: "geometry",
  },
  rowPitch: {
    symbol: "h_r",
    unit: "mm",
    meaning: "distance of neighbouring wheels on one side of a plate",
    formula: ({ wheels, ...given }) => `h / ${gapsOf({ wheels, ...given })}`,
    source: "geometry",
  },
};

function gapsOf(given: Parameters): number {
  const count = Number(given.wheels) / facesOf(given);
  return count === 8 ? 3 : count === 6 ? 2 : 1;
}
