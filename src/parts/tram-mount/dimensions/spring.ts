import type { Dimensions } from "../../../core/dimension.ts";
import { fittings } from "../fittings.ts";
import type { Parameters } from "../parameters.ts";
import type { SettingNumbers, SpringNumbers } from "../spring.ts";

/** Whether the spring is inside what its formulas hold for; outside them rate and stress are given as 0. */
export function springHolds(given: Parameters): boolean {
  const { wire, outside, totalCoils } = fittings(given).spring;
  const index = (outside - wire) / wire;
  return index >= 3 && index <= 16 && totalCoils - 2 >= 2;
}

function indexHolds(given: Parameters): boolean {
  const { wire, outside } = fittings(given).spring;
  const index = (outside - wire) / wire;
  return index >= 3 && index <= 16;
}

function wireHolds(given: Parameters): boolean {
  const { wire, strengthM } = fittings(given).spring;
  return wire >= 0.3 && wire <= 3 && strengthM >= 0 && strengthM <= 1;
}

export const springDimensions: Dimensions<Parameters, SpringNumbers & SettingNumbers> = {
  meanDiameter: { symbol: "D_m", unit: "mm", meaning: "mean coil diameter", formula: "D_e - d_w", source: "geometry" },
  index: { symbol: "C", unit: "", meaning: "spring index", formula: "D_m / d_w", source: "shigley: 10-1" },
  slenderness: {
    symbol: "lambda",
    unit: "",
    meaning: "free length over mean diameter",
    formula: "L0 / max(0.01, D_m)",
    source: "shigley: 10-5",
  },
  rate: {
    symbol: "k",
    unit: "N/mm",
    meaning: "spring rate",
    formula: (given) => {
      if (given.rate !== undefined) return `${given.rate}`;
      return springHolds(given) ? "G * d_w^4 / (8 * D_m^3 * (N_t - 2))" : "0";
    },
    source: "shigley: 10-3",
  },
  solidLength: {
    symbol: "L_solid",
    unit: "mm",
    meaning: "length at which the coils touch",
    formula: ({ ground }) => (ground ? "N_t * d_w" : "(N_t + 1) * d_w"),
    source: "shigley: Table 10-1, from memory",
  },
  strength: {
    symbol: "S_ut",
    unit: "MPa",
    meaning: "tensile strength of the wire",
    formula: (given) => (wireHolds(given) ? "A_w / d_w^m_w" : "0"),
    source: "shigley: Table 10-4, from memory",
  },
  range: {
    symbol: "R",
    unit: "mm",
    meaning: "tram travel to each side",
    formula: ({ range, joint }) => `${range ?? (joint === "tapped-plate" ? 0.5 : 3)}`,
    source: "design-rule",
  },
  springLow: {
    symbol: "L_low",
    unit: "mm",
    meaning: "shortest set length: clash allowance 0.15 at the low end",
    formula: "(L_solid + 0.15 * L0) / 1.15 + R",
    source: "shigley: 10-3, clash allowance",
  },
  springHigh: {
    symbol: "L_high",
    unit: "mm",
    meaning: "longest set length: 1.5 times the weight at the high end",
    formula: "L0 - 1.5 * W_s / max(k, 0.001) - R",
    source: "design-rule",
  },
  longest: { symbol: "L_max", unit: "mm", meaning: "spring at the high end", formula: "L_set + R", source: "geometry" },
  shortest: {
    symbol: "L_min",
    unit: "mm",
    meaning: "spring at the low end",
    formula: "max(0.1, L_set - R)",
    source: "geometry",
  },
  forceSet: {
    symbol: "F_set",
    unit: "N",
    meaning: "spring force as set",
    formula: "k * max(0, L0 - L_set)",
    source: "shigley: 10-3",
  },
  forceLong: {
    symbol: "F_long",
    unit: "N",
    meaning: "spring force at the high end",
    formula: "k * max(0, L0 - L_max)",
    source: "shigley: 10-3",
  },
  forceShort: {
    symbol: "F_short",
    unit: "N",
    meaning: "spring force at the low end",
    formula: "k * max(0, L0 - L_min)",
    source: "shigley: 10-3",
  },
  preload: {
    symbol: "n_p",
    unit: "",
    meaning: "spring force at the high end over the weight it carries",
    formula: "F_long / W_s",
    source: "statics",
  },
  clash: {
    symbol: "xi",
    unit: "",
    meaning: "clash allowance at the low end",
    formula: "(L_min - L_solid) / max(0.001, L0 - L_min)",
    source: "shigley: 10-3, clash allowance",
  },
  curvature: {
    symbol: "K_B",
    unit: "",
    meaning: "curvature factor",
    formula: (given) => (indexHolds(given) ? "(4 * C + 2) / (4 * C - 3)" : "0"),
    source: "shigley: 10-2",
  },
  stress: {
    symbol: "tau",
    unit: "MPa",
    meaning: "shear stress at the low end",
    formula: "K_B * 8 * F_short * D_m / (pi * d_w^3)",
    source: "shigley: 10-1",
  },
};
