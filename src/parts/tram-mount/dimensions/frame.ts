import type { Dimensions } from "../../../core/dimension.ts";
import type { HeightNumbers } from "../derive.ts";
import type { FrameNumbers } from "../frame.ts";
import type { Parameters } from "../parameters.ts";

const slides = ({ joint }: Parameters) => joint === "thumb-wheel" || joint === "tapped-plate";

function reachFormula(given: Parameters): string {
  const cup = given.mount === "on-top" ? "R_c + q + 2" : "t_bp + R_c + q + 2";
  const wheel = given.joint === "thumb-wheel" ? ", D_k / 2 + q + 2" : "";
  const slider = slides(given) ? ", OD_w / 2 + q + 1" : "";
  return `up(max(${cup}${wheel}${slider}, ${given.reach ?? 0}), 0.5)`;
}

const HALF_WIDTH = {
  "on-side": "h_f",
  "on-top": "max(h_f, 12 + D_w / 2 + 3)",
  end: "max(h_f, W / 2 + 0.1 + t_bp)",
} as const;
const BOLT_X = { "on-side": "h_w + 2 + D_w / 2", "on-top": "12", end: "W / 2 + 0.1 + t_bp" } as const;

export const frameDimensions: Dimensions<Parameters, FrameNumbers & HeightNumbers> = {
  cupWall: {
    symbol: "w_c",
    unit: "mm",
    meaning: "wall of the cup",
    formula: "max(2.5, 4 * line + holeShrinkV * (1 - shrink / 100) / 2)",
    source: "design-rule",
  },
  cupInside: {
    symbol: "c_i",
    unit: "mm",
    meaning: "width inside the cup",
    formula: "max(D_e, OD_s) + 0.8",
    source: "common-practice",
  },
  cupRadius: { symbol: "R_c", unit: "mm", meaning: "cup outside", formula: "c_i / 2 + w_c", source: "geometry" },
  backPlate: {
    symbol: "t_bp",
    unit: "mm",
    meaning: "plate against the bar",
    formula: ({ backPlate, bar }) => `${backPlate ?? (bar.values.module === 30 ? 8 : 6)}`,
    source: "design-rule",
  },
  halfFront: {
    symbol: "h_f",
    unit: "mm",
    meaning: "bolt to the front edge",
    formula: (given) => `up(max(15, R_c + q + 2${slides(given) ? ", OD_w / 2 + q + 3" : ""}), 0.5)`,
    source: "design-rule",
  },
  halfWidth: {
    symbol: "h_w",
    unit: "mm",
    meaning: "half the width of the bridge plate",
    formula: ({ mount }) => HALF_WIDTH[mount],
    source: "design-rule",
  },
  reach: { symbol: "a", unit: "mm", meaning: "bolt to the bar's face", formula: reachFormula, source: "design-rule" },
  edge: {
    symbol: "e_b",
    unit: "mm",
    meaning: "mount bolt to the plastic's edges",
    formula: "max(8, up(d_bh / 2 + 0.75 * d_b, 0.5))",
    source: "design-rule",
  },
  boltX: {
    symbol: "x_b",
    unit: "mm",
    meaning: "mount bolt beside the tram bolt; on a bar's end the face under its washer",
    formula: ({ mount }) => BOLT_X[mount],
    source: "design-rule",
  },
  rowHeight: {
    symbol: "z_row",
    unit: "mm",
    meaning: "height of the bar's slot over the cup's floor",
    formula: "e_b - t",
    source: "geometry",
  },
  lever: {
    symbol: "l_r",
    unit: "mm",
    meaning: "tram bolt to the bracket's root",
    formula: ({ mount }) => (mount === "on-top" ? "a" : "a - t_bp"),
    source: "geometry",
  },
  rootStress: {
    symbol: "sigma",
    unit: "MPa",
    meaning: "bending stress at the root",
    formula: "6 * (W_s + F_p) * l_r / (2 * h_w * t^2)",
    source: "shigley: 3-10, bending of a rectangle",
  },
  mountLength: {
    symbol: "L_m",
    unit: "mm",
    meaning: "length of a mount bolt; 0 when none in stock will do",
    formula: '"the stock length that holds in the slot nut and clears the slot\'s floor"',
    source: "common-practice",
  },
  counterbore: {
    symbol: "c_b",
    unit: "mm",
    meaning: "depth of the counterbore under a mount bolt's washer",
    formula: '"0, or what puts a stock length into the middle of its window"',
    source: "common-practice",
  },
  torqueUsed: {
    symbol: "T_u",
    unit: "N·m",
    meaning: "torque used on the mount bolts",
    formula: ({ bar }) => (/^M[34568]$/.test(bar.values.mountBolt) ? `T_${bar.values.mountBolt}` : "T_M3"),
    source: "design-rule",
  },
  torqueAllowed: {
    symbol: "T_max",
    unit: "N·m",
    meaning: "largest torque the plastic bears for years",
    formula: "p_s * pi / 4 * (D_w^2 - d_bh^2) * K * d_b / 1000",
    source: "shigley: 8-8, torque factors",
  },
  cupDepth: {
    symbol: "d_c",
    unit: "mm",
    meaning: "depth of the cup in whole layers",
    formula: ({ cupDepth }) => `up(${cupDepth ?? "max(3, 0.25 * L_set)"}, layer)`,
    source: "design-rule",
  },
  plateHeight: {
    symbol: "z_p",
    unit: "mm",
    meaning: "plate's underside over the cup's floor: the air gap",
    formula: "t_sw + L_set + t_hw",
    source: "geometry",
  },
  rimGap: {
    symbol: "g_r",
    unit: "mm",
    meaning: "plate to the cup's rim at the low end",
    formula: "z_p - R - d_c",
    source: "geometry",
  },
  backGap: {
    symbol: "g_p",
    unit: "mm",
    meaning: "hot plate to the top of the plate against the bar, at the low end",
    formula: ({ mount }) => (mount === "on-top" ? "z_p - R" : "z_p - R - max(0, z_row + e_b)"),
    source: "geometry",
  },
  bracketTemperature: {
    symbol: "T_b",
    unit: "°C",
    meaning: "estimated temperature of the bracket",
    formula: "T_amb + min(0.6, max(0.15, 0.45 - 0.2 / 15 * (min(60, z_p) - 10))) * max(T_pl - T_amb, 0) + 5",
    source: "common-practice",
  },
  perLobe: {
    symbol: "h_l",
    unit: "mm",
    meaning: "plate height of a tenth of a turn, one lobe of the wheel",
    formula: "p / 10",
    source: "iso-261",
  },
  fingerRoom: {
    symbol: "r_f",
    unit: "mm",
    meaning: "free space round the thumb wheel",
    formula: "min(r_o, r_u - t_so - h_k)",
    source: "geometry",
  },
};
