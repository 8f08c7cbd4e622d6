import type { Dimensions } from "../../../core/dimension.ts";
import { type Axles, distanceKnown } from "../derive/axles.ts";
import type { Parameters } from "../parameters.ts";

const layered = (value: string) => `first + layer * max(0, ceil((${value} - first) / layer - 0.500001))`;
const far = ({ sandwich }: Parameters, text: string) => (sandwich ? text : "");

const DISTANCE = { measured: "M - OD", tabled: "W_e + 2 * o_w", unknown: "W_e + OD" };

export const axleDimensions: Dimensions<Parameters, Axles> = {
  axisDistance: {
    symbol: "C",
    unit: "mm",
    meaning: "distance of fixed and eccentric axles, across the bar",
    formula: (given) => DISTANCE[distanceKnown(given)],
    source: "geometry",
  },
  thickness: {
    symbol: "t_p",
    unit: "mm",
    meaning: "thickness of the plate in whole layers",
    formula: layered("t"),
    source: "geometry",
  },
  standoff: {
    symbol: "u_e",
    unit: "mm",
    meaning: "standoff of eccentric wheels, plate to ring",
    formula: ({ eccentricKind }) => (eccentricKind === "printed" ? layered("u_m") : "u_m"),
    source: "common-practice",
  },
  spacerLength: {
    symbol: "L_p",
    unit: "mm",
    meaning: "standoff of fixed wheels, plate to ring",
    formula: ({ spacerKind, spacerLength }) => {
      const asked = spacerLength === undefined ? "u_e" : "L_s";
      return spacerKind === "printed" ? layered(asked) : asked;
    },
    source: "design-rule",
  },
  spacerOutside: {
    symbol: "OD_s",
    unit: "mm",
    meaning: "outside diameter of the spacers",
    formula: ({ spacerOutside, shimmed }) => `${spacerOutside ?? (shimmed ? "2 * d" : "d1")}`,
    source: "design-rule",
  },
  wheelPlane: {
    symbol: "z_w",
    unit: "mm",
    meaning: "middle of the wheels over the plate",
    formula: "u_e + t_sh + w_o / 2",
    source: "geometry",
  },
  barGap: {
    symbol: "g_b",
    unit: "mm",
    meaning: "gap from the plate to the bar's face",
    formula: "z_w - U / 2",
    source: "geometry",
  },
  fixedHole: {
    symbol: "D_x",
    unit: "mm",
    meaning: "hole of a fixed axle, wanted",
    formula: "d_fine",
    source: "iso-273",
  },
  fixedHoleModelled: {
    symbol: "D_xm",
    unit: "mm",
    meaning: "hole of a fixed axle as modelled, on the flats",
    formula: "D_x + holeShrinkV * (1 - shrink / 100)",
    source: "geometry",
  },
  eccentricBody: {
    symbol: "D_b",
    unit: "mm",
    meaning: "body of the eccentric that turns in the plate",
    formula: ({ eccentricKind }) => (eccentricKind === "metal" ? "d_be" : "up(d + 0.3 + 2 * eps + 2.4, 0.2)"),
    source: "design-rule",
  },
  eccentricHole: {
    symbol: "D_e",
    unit: "mm",
    meaning: "hole of an eccentric axle, wanted",
    formula: "D_b + 0.1",
    source: "design-rule",
  },
  eccentricHoleModelled: {
    symbol: "D_em",
    unit: "mm",
    meaning: "hole of an eccentric axle as modelled, on the flats",
    formula: "D_e + holeShrinkV * (1 - shrink / 100)",
    source: "geometry",
  },
  perDegree: {
    symbol: "q_e",
    unit: "mm",
    meaning: "shift of a wheel by one degree of its eccentric, near the middle",
    formula: "eps * pi / 180",
    source: "geometry",
  },
  touching: {
    symbol: "D_t",
    unit: "mm",
    meaning: "outside of what touches the wheel's bearings",
    formula: ({ shimmed, sandwich }) => (shimmed ? "OD_sh" : `max(OD_s, 1.1547 * AF_e, ${sandwich ? "0" : "D_w"})`),
    source: "geometry",
  },
  sandwichGap: {
    symbol: "z_b",
    unit: "mm",
    meaning: "height of the far plate of a sandwich over the near one",
    formula: "z_w + w_o / 2 + t_sh + L_p + t_f",
    source: "geometry",
  },
  farGap: {
    symbol: "g_f",
    unit: "mm",
    meaning: "gap from the bar to the far plate of a sandwich",
    formula: "z_b - (z_w - U / 2 + T_e)",
    source: "geometry",
  },
  gripFixed: {
    symbol: "G_x",
    unit: "mm",
    meaning: "grip of a fixed axle's bolt, washers included",
    formula: (given) => `2 * t_w + t_p + L_p + 2 * t_sh + w_o${far(given, " + L_p + t_f + t_p")}`,
    source: "geometry",
  },
  gripEccentric: {
    symbol: "G_e",
    unit: "mm",
    meaning: "grip of an eccentric axle's bolt, washers included",
    formula: (given) => `t_f + t_p + u_e + 2 * t_sh + w_o + ${given.sandwich ? "L_p + t_f + t_p + t_f" : "t_w"}`,
    source: "geometry",
  },
  neededFixed: {
    symbol: "L_x",
    unit: "mm",
    meaning: "bolt that a fixed axle needs, with two threads past the lock nut",
    formula: "G_x + m_n + 2 * p",
    source: "common-practice",
  },
  neededEccentric: {
    symbol: "L_e",
    unit: "mm",
    meaning: "bolt that an eccentric axle needs, with two threads past the lock nut",
    formula: "G_e + m_n + 2 * p",
    source: "common-practice",
  },
  boltLength: {
    symbol: "L",
    unit: "mm",
    meaning: "axle bolt; 0 when none that can be had fits",
    formula: '"the shortest bolt in stock that is long enough for every axle and has its thread where the nuts sit',
    source: "common-practice",
  },
  pastFixed: {
    symbol: "e_x",
    unit: "mm",
    meaning: "bolt past the nut of a fixed axle",
    formula: "L - G_x - m_n",
    source: "geometry",
  },
  pastEccentric: {
    symbol: "e_e",
    unit: "mm",
    meaning: "bolt past the nut of an eccentric axle",
    formula: "L - G_e - m_n",
    source: "geometry",
  },
};
