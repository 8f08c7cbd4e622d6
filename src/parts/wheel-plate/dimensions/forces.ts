import type { Dimensions } from "../../../core/dimension.ts";
import type { Forces } from "../derive/forces.ts";
import { wheelsOnPlate } from "../layout.ts";
import type { Parameters } from "../parameters.ts";

type Pick3 = (given: Parameters) => string;
const three =
  (yes: string, no: string): Pick3 =>
  (given) =>
    wheelsOnPlate(given) === 3 ? yes : no;

const SQUARES: Readonly<Record<number, string>> = { 8: "2 * (h / 2)^2 + 2 * (h / 6)^2" };

export const forceDimensions: Dimensions<Parameters, Forces> = {
  offset: {
    symbol: "a_z",
    unit: "mm",
    meaning: "load from the wheels' middle, along the axles",
    formula: ({ offset }) => (offset === undefined ? "z_w + t_p + B_a / 2" : `${offset}`),
    source: "geometry",
  },
  momentRadial: {
    symbol: "M_r",
    unit: "N·mm",
    meaning: "moment that loads the wheels across their axles",
    formula: "W * a_x",
    source: "statics",
  },
  momentAxial: {
    symbol: "M_x",
    unit: "N·mm",
    meaning: "moment that loads the wheels along their axles",
    formula: "W * a_z",
    source: "statics",
  },
  squares: {
    symbol: "S_yy",
    unit: "mm2",
    meaning: "sum of the squared row heights of a plate",
    formula: (given) => SQUARES[wheelsOnPlate(given)] ?? "2 * (h / 2)^2",
    source: "geometry",
  },
  rowRadial: {
    symbol: "F_r",
    unit: "N",
    meaning: "force on an outermost row, across the axles",
    formula: "M_r * h / 2 / (n_f * S_yy)",
    source: "statics",
  },
  rowAxial: {
    symbol: "F_x",
    unit: "N",
    meaning: "force on an outermost row, along the axles",
    formula: "M_x * h / 2 / (n_f * S_yy)",
    source: "statics",
  },
  preloadLeast: {
    symbol: "P_min",
    unit: "N",
    meaning: "least preload that keeps every wheel on the bar",
    formula: three("2 * (F_r + F_x)", "(F_r + F_x) / 2"),
    source: "statics",
  },
  preload: {
    symbol: "P",
    unit: "N",
    meaning: "preload of a wheel",
    formula: ({ preload }) => (preload === undefined ? "max(1.25 * P_min, 10)" : `${preload}`),
    source: "common-practice",
  },
  largest: {
    symbol: "F_eq",
    unit: "N",
    meaning: "largest equivalent force on a wheel",
    formula: three("max(P, P / 2 + F_r + F_x)", "P + (F_r + F_x) / 2"),
    source: "statics",
  },
  smallest: {
    symbol: "F_lo",
    unit: "N",
    meaning: "smallest force on a wheel",
    formula: three("P / 2 - F_r - F_x", "P - (F_r + F_x) / 2"),
    source: "statics",
  },
  flank: {
    symbol: "F_fl",
    unit: "N",
    meaning: "largest force on one flank of a V",
    formula: "F_eq * sind(45)",
    source: "statics",
  },
  bearingLoad: {
    symbol: "P_0",
    unit: "N",
    meaning: "equivalent static load of a wheel's bearing",
    formula: three(
      "max(0.6 * max(P, P / 2 + F_r) / 2 + 0.5 * F_x, max(P, P / 2 + F_r) / 2)",
      "max(0.6 * (P + F_r / 2) / 2 + 0.5 * F_x / 2, (P + F_r / 2) / 2)",
    ),
    source: "iso-76",
  },
  overhangRatio: {
    symbol: "k_h",
    unit: "",
    meaning: "overhang over row distance",
    formula: "a_x / h",
    source: "common-practice",
  },
  axleArm: {
    symbol: "a_b",
    unit: "mm",
    meaning: "arm of the wheel's force on its bolt",
    formula: ({ sandwich }) => (sandwich ? "z_w * (z_b - z_w) / z_b" : "z_w"),
    source: "statics",
  },
  axleCore: {
    symbol: "d3",
    unit: "mm",
    meaning: "core of the axle bolt",
    formula: "d - 1.2269 * p",
    source: "iso-724",
  },
  axleStress: {
    symbol: "sigma",
    unit: "MPa",
    meaning: "bending stress of an axle bolt",
    formula: "32 * F_eq * a_b / (pi * d3^3)",
    source: "shigley: 3-10, bending of a round",
  },
  bendLength: {
    symbol: "l_b",
    unit: "mm",
    meaning: "free length of plate from an arm to the outermost row",
    formula: "max(0, g_o - H_a / 2)",
    source: "geometry",
  },
  inertia: {
    symbol: "I_p",
    unit: "mm4",
    meaning: "second moment of the plate's section",
    formula: "B_x * (t_p - r_w)^3 / 12",
    source: "geometry",
  },
  bend: {
    symbol: "delta",
    unit: "mm",
    meaning: "bending of the plate at the outermost row",
    formula: "F_x * l_b^3 / (3 * E * I_p)",
    source: "shigley: Table A-9",
  },
};
