import type { Dimensions } from "../../../core/dimension.ts";
import type { Plate } from "../derive/plate.ts";
import { reliefRule } from "../derive/plate.ts";
import type { Parameters } from "../parameters.ts";

const limit = (area: string, diameter: string) => `p_s * ${area} * K * ${diameter} / 1000`;

export const plateDimensions: Dimensions<Parameters, Plate> = {
  width: { symbol: "B_x", unit: "mm", meaning: "width of the plate", formula: "C + 2 * m_e", source: "design-rule" },
  length: { symbol: "B_y", unit: "mm", meaning: "length of the plate", formula: "h + 2 * m_e", source: "design-rule" },
  corner: { symbol: "R_c", unit: "mm", meaning: "corner radius", formula: "min(10, m_e)", source: "design-rule" },
  holeToEdge: {
    symbol: "w_e",
    unit: "mm",
    meaning: "plastic between an axle hole and the plate's edge",
    formula: "m_e - max(D_x, D_e) / 2",
    source: "geometry",
  },
  relief: {
    symbol: "r_w",
    unit: "mm",
    meaning: "depth of the pocket under a tyre; 0 for none",
    formula: ({ wheelRelief }) => (wheelRelief === undefined ? reliefRule : `${wheelRelief}`),
    source: "design-rule",
  },
  reliefLand: {
    symbol: "D_l",
    unit: "mm",
    meaning: "land round an axle that a relief leaves standing",
    formula: "max(d1, OD_s, 1.1547 * AF_e, D_e + 3) + 1",
    source: "design-rule",
  },
  volume: {
    symbol: "V",
    unit: "mm3",
    meaning: "volume at wanted sizes, pockets of a relief and the bed chamfer not taken off",
    formula:
      "(B_x * B_y - (4 - pi) * R_c^2) * t_p - (n_X * D_x^2 + n_E * D_e^2) * pi / 4 * t_p" +
      " - n_S * ((pi / 4 * b_s^2 + c * b_s) * (t_p - h_c) + (pi / 4 * b_c^2 + c * b_c) * h_c)",
    source: "geometry",
  },
  torqueFixed: {
    symbol: "T_x",
    unit: "N·m",
    meaning: "largest torque of a fixed axle on this plastic",
    formula: limit("pi / 4 * max(min(D_w, OD_s)^2 - D_x^2, 0.0000001)", "d"),
    source: "shigley: 8-8",
  },
  torqueEccentric: {
    symbol: "T_e_f",
    unit: "N·m",
    meaning: "largest torque of an eccentric axle by its large washer",
    formula: limit("pi / 4 * max(D_f^2 - D_e^2, 0.0000001)", "d"),
    source: "shigley: 8-8",
  },
  torqueHexagon: {
    symbol: "T_h",
    unit: "N·m",
    meaning: "torque of an eccentric axle above which the hexagon sinks into the plate in time",
    formula: limit("max(sqrt(3) / 2 * AF_e^2 - pi / 4 * D_e^2, 0.0000001)", "d"),
    source: "shigley: 8-8",
  },
  torqueArm: {
    symbol: "T_a",
    unit: "N·m",
    meaning: "largest torque of an arm bolt on this plastic",
    formula: limit("pi / 4 * max(D_wa^2 - b_s^2, 0.0000001)", "d_a"),
    source: "shigley: 8-8",
  },
};
