import type { Dimensions } from "../../../core/dimension.ts";
import type { Arms } from "../derive/arms.ts";
import type { Parameters } from "../parameters.ts";

export const armDimensions: Dimensions<Parameters, Arms> = {
  armBoltX: {
    symbol: "x_a",
    unit: "mm",
    meaning: "arm bolt from the plate's middle",
    formula: ({ armBoltAt }) => (armBoltAt === undefined ? "max(round(C) / 2, up(x_lo, 0.5))" : `${armBoltAt}`),
    source: "design-rule",
  },
  armBoltLeast: {
    symbol: "x_lo",
    unit: "mm",
    meaning: "least distance of an arm bolt, so that its head clears the bar",
    formula: "W_e / 2 + D_wa / 2 + 1",
    source: "geometry",
  },
  armBoltMost: {
    symbol: "x_hi",
    unit: "mm",
    meaning: "largest distance of an arm bolt, so that its washer stays on the plate",
    formula: "C / 2 + m_e - D_wa / 2 - 3",
    source: "geometry",
  },
  clearance: {
    symbol: "c",
    unit: "mm",
    meaning: "length of an arm slot over its width",
    formula: "2 * max(x_a, 0.1) * tand(phi)",
    source: "geometry",
  },
  slotWidth: { symbol: "b_s", unit: "mm", meaning: "width of an arm slot, wanted", formula: "d_ma", source: "iso-273" },
  slotLength: { symbol: "l_s", unit: "mm", meaning: "length of an arm slot", formula: "b_s + c", source: "geometry" },
  slotWidthModelled: {
    symbol: "b_sm",
    unit: "mm",
    meaning: "width of an arm slot as modelled",
    formula: "b_s + holeShrinkV * (1 - shrink / 100)",
    source: "geometry",
  },
  recessWidth: {
    symbol: "b_c",
    unit: "mm",
    meaning: "width of an arm bolt's counterbore, wanted",
    formula: "D_wa + 0.6",
    source: "design-rule",
  },
  recessLength: {
    symbol: "l_c",
    unit: "mm",
    meaning: "length of an arm bolt's counterbore",
    formula: "b_c + c",
    source: "geometry",
  },
  recessDepth: {
    symbol: "h_c",
    unit: "mm",
    meaning: "depth of an arm bolt's counterbore; 0 for none",
    formula: "\"0 when a stock bolt fits the nut's window; else what puts one into the middle of it, in whole layers",
    source: "common-practice",
  },
  armFloor: {
    symbol: "f_a",
    unit: "mm",
    meaning: "plate under an arm bolt's washer",
    formula: "t_p - h_c",
    source: "geometry",
  },
  armBoltLength: {
    symbol: "L_a",
    unit: "mm",
    meaning: "arm bolt; 0 when none fits the nut's window",
    formula: '"the stock bolt with 0.8 d in the nut and 1 mm free below it',
    source: "common-practice",
  },
  rowToArm: {
    symbol: "g_r",
    unit: "mm",
    meaning: "nearest wheel row to an arm's middle; 1000 for a plate without arms",
    formula: '"the least distance between a row and an arm',
    source: "geometry",
  },
  rowToArmNeed: {
    symbol: "g_rn",
    unit: "mm",
    meaning: "distance a row and an arm need, for washers, wheels and the pockets under tyres",
    formula:
      "max((H_a + D_f) / 2 + 1, (H_a - U_a) / 2" +
      " + max((D_wa + OD) / 2 + 1, min(1, ceil(r_w)) * (OD / 2 + 1 + l_c / 2 + 2)))",
    source: "geometry",
  },
  farRowToArm: {
    symbol: "g_o",
    unit: "mm",
    meaning: "outermost row to its nearest arm; 0 for a plate without arms",
    formula: '"the larger of the distances from an outermost row to the nearest arm',
    source: "geometry",
  },
  armTop: {
    symbol: "y_t",
    unit: "mm",
    meaning: "arm slot farthest from the plate's middle",
    formula: "\"the largest distance of an arm's groove from the plate's middle",
    source: "geometry",
  },
  armTopMost: {
    symbol: "y_tm",
    unit: "mm",
    meaning: "largest distance of an arm slot, so that its washer stays on the plate",
    formula: "h / 2 + m_e - D_wa / 2 - 3",
    source: "geometry",
  },
};
