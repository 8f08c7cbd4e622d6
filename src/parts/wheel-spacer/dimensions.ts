import { THREADS } from "../../catalogue/threads.ts";
import { results } from "../../core/calculation.ts";
import type { Dimensions } from "../../core/dimension.ts";
import { up } from "../../core/rounding.ts";
import { row } from "../../core/table.ts";
import { clampForce } from "../../mechanics/clamp-force.ts";
import { uprightHole } from "../../printing/compensation.ts";
import { layerNearest } from "../../printing/layers.ts";
import type { Printer } from "../../printing/printer.ts";
import type { Parameters } from "./parameters.ts";

/** What the bore is wider than the bolt, mm. */
const PLAY = 0.3;
/** Thinnest wall of a printed bush or ring, mm. */
export const THINNEST = 1.2;

export interface Derived {
  readonly bore: number;
  readonly boreModelled: number;
  readonly outside: number;
  readonly length: number;
  readonly wall: number;
  readonly area: number;
  readonly clamp: number;
  readonly pressure: number;
  readonly torqueAllowed: number;
  readonly body: number;
  readonly bodyLength: number;
  readonly hexFlats: number;
  readonly bushWall: number;
}

export function derive(given: Parameters, printer: Printer): Derived {
  const diameter = row(THREADS, given.bolt).values.diameter;
  const bore = diameter + PLAY;
  const outside = given.outside ?? (given.against === "shim" ? 2 * diameter : given.innerLand);
  const area = (Math.PI / 4) * (outside ** 2 - bore ** 2);
  const { force: clamp } = results(clampForce, { torque: given.torque, diameter, factor: 0.2 });
  const body = given.body ?? up(diameter + PLAY + 2 * given.offset + 2 * THINNEST, 0.2);
  return {
    bore,
    boreModelled: uprightHole(bore, printer),
    outside,
    length: layerNearest(given.length, printer),
    wall: (outside - bore) / 2,
    area,
    clamp,
    pressure: area > 0 ? clamp / area : Number.MAX_VALUE,
    torqueAllowed: Math.max(0, (given.material.values.washerPressure * area * 0.2 * diameter) / 1000),
    body,
    bodyLength: given.plate - 0.5,
    hexFlats: given.hexFlats ?? up(body + 3, 1),
    bushWall: body / 2 - given.offset - bore / 2,
  };
}

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
    formula: "first + layer * max(0, ceil((L_s - first) / layer - 0.500001))",
    source: "geometry",
  },
  wall: { symbol: "w", unit: "mm", meaning: "wall of the ring", formula: "(OD - ID) / 2", source: "geometry" },
  area: { symbol: "A", unit: "mm2", meaning: "ring area", formula: "pi / 4 * (OD^2 - ID^2)", source: "geometry" },
  clamp: {
    symbol: "F",
    unit: "N",
    meaning: "clamp force of the axle bolt",
    formula: "1000 * T / (K * d)",
    source: "shigley: 8",
  },
  pressure: { symbol: "p", unit: "MPa", meaning: "pressure on the ring", formula: "F / A", source: "statics" },
  torqueAllowed: {
    symbol: "T_max",
    unit: "N·m",
    meaning: "largest torque the plastic bears for years",
    formula: "p_s * A * K * d / 1000",
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
  hexFlats: {
    symbol: "AF",
    unit: "mm",
    meaning: "hexagon of a bush across flats",
    formula: ({ hexFlats }) => (hexFlats === undefined ? "up(D_b + 3, 1)" : `${hexFlats}`),
    source: "design-rule",
  },
  bushWall: {
    symbol: "w_b",
    unit: "mm",
    meaning: "thinnest wall of a bush",
    formula: "D_b / 2 - eps - ID / 2",
    source: "geometry",
  },
};
