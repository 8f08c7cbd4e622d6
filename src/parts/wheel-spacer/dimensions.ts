import type { Dimensions } from "../../core/dimension.ts";
import { type Derived, NO_PLASTIC, pressedArea } from "./derive.ts";
import type { Parameters } from "./parameters.ts";

const sides = (radius: string) => `max(24, 4 * ceil(180 / (90 - asind(1 - 0.01 / (${radius}))) / 4 - 0.000000001))`;
const layers = (height: string) => `first + layer * max(0, ceil((${height} - first) / layer - 0.500001))`;
const HOLE = "N_i * (ID_m / 2)^2 * tand(180 / N_i)";
const disc = (radius: string) => `N_o / 2 * (${radius})^2 * sind(360 / N_o)`;

/** The volume's formula for each kind. */
const VOLUME: Readonly<Record<Parameters["kind"], string>> = {
  plain: `L_p * (${disc("OD / 2")} - ${HOLE})`,
  flanged:
    `L_p * (${disc("OD / 2")} - ${HOLE})` + ` + 1.2 * (N_f / 2 * (OD / 2 + 2)^2 * sind(360 / N_f) - ${disc("OD / 2")})`,
  bush: `u_p * sqrt(3) / 2 * AF^2 + L_b * ${disc("D_b / 2")} - (u_p + L_b) * ${HOLE}`,
};

export const dimensions: Dimensions<Parameters, Derived> = {
  bore: { symbol: "ID", unit: "mm", meaning: "bore wanted", formula: "d + 0.3", source: "design-rule" },
  boreModelled: {
    symbol: "ID_m",
    unit: "mm",
    meaning: "bore as modelled, on the flats",
    formula: "ID + holeShrinkV * (1 - shrink / 100)",
    source: "geometry",
  },
  outside: {
    symbol: "OD",
    unit: "mm",
    meaning: "outside diameter",
    formula: ({ outside, against }) => (outside !== undefined ? `${outside}` : against === "shim" ? "2 * d" : "d1"),
    source: "design-rule",
  },
  length: {
    symbol: "L_p",
    unit: "mm",
    meaning: "length in whole layers",
    formula: layers("L_s"),
    source: "geometry",
  },
  wall: { symbol: "w", unit: "mm", meaning: "wall of the ring", formula: "(OD - ID) / 2", source: "geometry" },
  area: {
    symbol: "A",
    unit: "mm2",
    meaning: "plastic that the bolt presses; of a bush the smaller of ring above and hexagon round the plate's hole",
    formula: ({ kind }) =>
      kind === "bush" ? "min(pi / 4 * (OD^2 - ID^2), sqrt(3) / 2 * AF^2 - pi / 4 * D_h^2)" : "pi / 4 * (OD^2 - ID^2)",
    source: "geometry",
  },
  clamp: {
    symbol: "F",
    unit: "N",
    meaning: "clamp force of the axle bolt",
    formula: "1000 * T / (K * d)",
    source: "shigley: 8",
  },
  pressure: {
    symbol: "p",
    unit: "MPa",
    meaning: "pressure on the plastic; 0 where the bore leaves none to press on",
    formula: (given) => (pressedArea(given) > NO_PLASTIC ? "F / A" : "0"),
    source: "statics",
  },
  torqueAllowed: {
    symbol: "T_max",
    unit: "N·m",
    meaning: "largest torque the plastic bears for years",
    formula: "max(0, p_s * A * K * d / 1000)",
    source: "shigley: 8",
  },
  body: {
    symbol: "D_b",
    unit: "mm",
    meaning: "body diameter of a bush",
    formula: ({ body }) => (body === undefined ? "up(d + 0.3 + 2 * eps + 2.4, 0.2)" : `${body}`),
    source: "design-rule",
  },
  bodyLength: {
    symbol: "L_b",
    unit: "mm",
    meaning: "body length of a bush",
    formula: "t - 0.5",
    source: "design-rule",
  },
  plateHole: {
    symbol: "D_h",
    unit: "mm",
    meaning: "hole of the plate that a bush turns in",
    formula: "D_b + 0.1",
    source: "design-rule",
  },
  hexFlats: {
    symbol: "AF",
    unit: "mm",
    meaning: "hexagon of a bush across flats",
    formula: ({ hexFlats }) => (hexFlats === undefined ? "up(D_b + 3, 1)" : `${hexFlats}`),
    source: "design-rule",
  },
  standoff: {
    symbol: "u_p",
    unit: "mm",
    meaning: "hexagon of a bush in whole layers, the standoff of its wheel",
    formula: layers("u_e"),
    source: "geometry",
  },
  bushWall: {
    symbol: "w_b",
    unit: "mm",
    meaning: "thinnest wall of a bush",
    formula: "D_b / 2 - eps - ID / 2",
    source: "geometry",
  },
  roundSides: {
    symbol: "N_o",
    unit: "",
    meaning: "sides of the round outside, of a bush those of its body",
    formula: ({ kind }) => sides(kind === "bush" ? "D_b / 2" : "OD / 2"),
    source: "geometry",
  },
  boreSides: { symbol: "N_i", unit: "", meaning: "sides of the bore", formula: sides("ID_m / 2"), source: "geometry" },
  flangeSides: {
    symbol: "N_f",
    unit: "",
    meaning: "sides of a flange",
    formula: sides("OD / 2 + 2"),
    source: "geometry",
  },
  volume: {
    symbol: "V",
    unit: "mm3",
    meaning: "volume as modelled, the mark of a bush not taken off",
    formula: ({ kind }) => VOLUME[kind],
    source: "geometry",
  },
};
