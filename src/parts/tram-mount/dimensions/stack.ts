import type { Dimensions } from "../../../core/dimension.ts";
import { fittings } from "../fittings.ts";
import type { Parameters } from "../parameters.ts";
import type { StackNumbers } from "../stack.ts";

const OPENING = { fixed: "d_fine", slot: "d_medium", free: "d + 2 * q" } as const;
const THICKNESS = {
  "thumb-wheel": "8",
  "tapped-plate": "8",
  "captive-nut": "max(8, max(3, 0.6 * d) + m + 0.3 + max(2, 4 * line))",
  insert: "max(8, l_i + 3)",
} as const;
const FLOOR = {
  "thumb-wheel": "t",
  "tapped-plate": "t",
  "captive-nut": "t - h_r - m - 0.3",
  insert: "t - l_i",
} as const;
const ABOVE = "t_pl - s_e + t_hw + t_sw";
const STACK = {
  "thumb-wheel": `${ABOVE} + t + t_so + f_w`,
  "captive-nut": `${ABOVE} + h_r`,
  insert: `${ABOVE} + t - l_i`,
  "tapped-plate": "t_so + t + t_sw + t_hw",
} as const;

export const stackDimensions: Dimensions<Parameters, StackNumbers> = {
  halfTravel: {
    symbol: "q",
    unit: "mm",
    meaning: "slide of the bolt each way",
    formula: ({ type, halfTravel }) =>
      type === "fixed" ? "0" : halfTravel === undefined ? "delta + 0.5" : `${halfTravel}`,
    source: "common-practice",
  },
  openingWidth: {
    symbol: "w_o",
    unit: "mm",
    meaning: "width of the bolt's opening, wanted",
    formula: ({ type }) => OPENING[type],
    source: "iso-273",
  },
  openingLength: {
    symbol: "l_o",
    unit: "mm",
    meaning: "length of the bolt's opening, wanted",
    formula: ({ type }) => (type === "slot" ? "d_medium + 2 * q" : "w_o"),
    source: "design-rule",
  },
  springWasherNeed: {
    symbol: "OD_sn",
    unit: "mm",
    meaning: "what the washer under the spring must measure outside",
    formula: ({ type }) => (type === "free" ? "w_o + 2 * q + 0.5" : "w_o + 0.5"),
    source: "design-rule",
  },
  springWasherOutside: {
    symbol: "OD_s",
    unit: "mm",
    meaning: "washer under the spring, outside",
    formula: (given) =>
      given.springWasher === undefined
        ? '"the plain washer, or the large one when the plain is too small"'
        : `${fittings(given).springWasher?.outside}`,
    source: "iso-7089",
  },
  springWasherThickness: {
    symbol: "t_sw",
    unit: "mm",
    meaning: "washer under the spring, thickness",
    formula: (given) =>
      given.springWasher === undefined ? '"that of the washer taken"' : `${fittings(given).springWasher?.thickness}`,
    source: "iso-7089",
  },
  sliderNeed: {
    symbol: "OD_wn",
    unit: "mm",
    meaning: "what the washer that slides below must measure outside",
    formula: ({ type }) => (type === "free" ? "w_o + 2 * q + 2" : "w_o + 4"),
    source: "design-rule",
  },
  thickness: {
    symbol: "t",
    unit: "mm",
    meaning: "thickness of the bridge plate in whole layers",
    formula: ({ thickness, joint }) =>
      thickness === undefined
        ? `first + up(${THICKNESS[joint]} - first, layer)`
        : `first + layer * max(0, ceil((${thickness} - first) / layer - 0.500001))`,
    source: "design-rule",
  },
  roof: {
    symbol: "h_r",
    unit: "mm",
    meaning: "plastic over a captive nut, which takes the pull",
    formula: "t - first - down(t - max(3, 0.6 * d) - first, layer)",
    source: "design-rule",
  },
  floorLeft: {
    symbol: "f_l",
    unit: "mm",
    meaning: "plastic left: under a captive nut, over an insert, or all of the plate",
    formula: ({ joint }) => FLOOR[joint],
    source: "geometry",
  },
  wheelHeight: {
    symbol: "h_k",
    unit: "mm",
    meaning: "height of the thumb wheel",
    formula: "first + up(m + 3.4 - first, layer)",
    source: "design-rule",
  },
  wheelFloor: {
    symbol: "f_w",
    unit: "mm",
    meaning: "plastic between nut and slider washer in the wheel",
    formula: "h_k - m - 0.4",
    source: "geometry",
  },
  headSunk: {
    symbol: "s_e",
    unit: "mm",
    meaning: "how far the bolt head really lies below the plate's top",
    formula: ({ joint }) => (joint === "tapped-plate" ? "s_h" : "min(s_h, t_pl - k_h)"),
    source: "geometry",
  },
  stack: {
    symbol: "S",
    unit: "mm",
    meaning: "grip of the tram bolt up to its thread, without the spring",
    formula: ({ joint }) => STACK[joint],
    source: "geometry",
  },
};
