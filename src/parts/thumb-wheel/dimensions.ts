import { LARGE_WASHERS } from "../../catalogue/large-washers.ts";
import { THREADS } from "../../catalogue/threads.ts";
import { results } from "../../core/calculation.ts";
import type { Dimensions } from "../../core/dimension.ts";
import { cosDeg, sinDeg } from "../../core/rounding.ts";
import { row } from "../../core/table.ts";
import { threadTravel } from "../../mechanics/thread-travel.ts";
import { uprightHole } from "../../printing/compensation.ts";
import { wanted } from "../../printing/fits.ts";
import { layerNearest } from "../../printing/layers.ts";
import type { Printer } from "../../printing/printer.ts";
import { betweenFlats } from "../features/nut-pocket.ts";
import type { Parameters } from "./parameters.ts";
import { floorUnder, NUT_ROOM, usualDiameter, usualHeight, usualNut, type WheelNut } from "./wheel-size.ts";

/** Lobes round the rim: with ten, a lobe of an M5 wheel is worth 0.08 mm of plate height. */
export const LOBES = 10;
/** Scallops as shares of the wheel's radius: their radius, and where their centres lie. */
export const SCALLOP = { radius: 1 / 4, centre: 1.125 };

export interface Derived {
  readonly radius: number;
  readonly height: number;
  readonly pocketDepth: number;
  readonly floor: number;
  readonly flats: number;
  readonly flatsModelled: number;
  readonly corner: number;
  readonly bore: number;
  readonly boreModelled: number;
  readonly scallopRadius: number;
  readonly scallopCentre: number;
  readonly scallopDepth: number;
  readonly land: number;
  readonly face: number;
  readonly wall: number;
  readonly barGap: number;
  readonly perLobe: number;
}

export function nutOf(given: Parameters): WheelNut {
  return given.nut?.values ?? usualNut(given.bolt, given.lockNut);
}

export function washerOf(given: Parameters) {
  return given.washer?.values ?? row(LARGE_WASHERS, given.bolt).values;
}

export function derive(given: Parameters, printer: Printer): Derived {
  const nut = nutOf(given);
  const { mediumHole, pitch } = row(THREADS, given.bolt).values;
  const radius = (given.diameter ?? usualDiameter(given.bolt)) / 2;
  const height = given.height === undefined ? usualHeight(nut.height, printer) : layerNearest(given.height, printer);
  const flats = wanted(nut.acrossFlats, "hexGrip");
  const corner = flats / 2 / cosDeg(30);
  const inner = (SCALLOP.centre - SCALLOP.radius) * radius;
  const lens = (1 + SCALLOP.centre ** 2 - SCALLOP.radius ** 2) / (2 * SCALLOP.centre);
  const half = 180 / LOBES - (Math.acos(lens) * 180) / Math.PI;
  return {
    radius,
    height,
    pocketDepth: nut.height + NUT_ROOM,
    floor: floorUnder(height, nut.height),
    flats,
    flatsModelled: betweenFlats(flats, printer),
    corner,
    bore: mediumHole,
    boreModelled: uprightHole(mediumHole, printer),
    scallopRadius: SCALLOP.radius * radius,
    scallopCentre: SCALLOP.centre * radius,
    scallopDepth: radius - inner,
    land: 2 * radius * sinDeg(half),
    face: 2 * inner,
    wall: inner - corner,
    barGap: given.barDistance - radius - given.excursion,
    perLobe: results(threadTravel, { pitch, marks: LOBES, move: 0 }).perMark,
  };
}

export const dimensions: Dimensions<Parameters, Derived> = {
  radius: {
    symbol: "R_k",
    unit: "mm",
    meaning: "radius over the lobes",
    formula: ({ bolt, diameter }) => `${diameter ?? usualDiameter(bolt)} / 2`,
    source: "design-rule",
  },
  height: {
    symbol: "h_k",
    unit: "mm",
    meaning: "height in whole layers",
    formula: ({ height }) =>
      height === undefined
        ? "first + up(m + 0.4 + 3 - first, layer)"
        : `first + layer * max(0, ceil((${height} - first) / layer - 0.500001))`,
    source: "design-rule",
  },
  pocketDepth: {
    symbol: "h_n",
    unit: "mm",
    meaning: "depth of the nut's pocket",
    formula: "m + 0.4",
    source: "design-rule",
  },
  floor: {
    symbol: "f_w",
    unit: "mm",
    meaning: "plastic between nut and slider face",
    formula: "h_k - h_n",
    source: "geometry",
  },
  flats: {
    symbol: "s_p",
    unit: "mm",
    meaning: "pocket across flats, wanted",
    formula: "s + 0.05",
    source: "design-rule",
  },
  flatsModelled: {
    symbol: "s_m",
    unit: "mm",
    meaning: "pocket across flats as modelled",
    formula: "s_p + 2 * outerGrowth * (1 - shrink / 100)",
    source: "geometry",
  },
  corner: {
    symbol: "r_c",
    unit: "mm",
    meaning: "pocket corner from the axis",
    formula: "s_p / 2 / cosd(30)",
    source: "geometry",
  },
  bore: { symbol: "d_m", unit: "mm", meaning: "bore wanted", formula: "d_medium", source: "iso-273" },
  boreModelled: {
    symbol: "d_mm",
    unit: "mm",
    meaning: "bore as modelled, on the flats",
    formula: "d_m + holeShrinkV * (1 - shrink / 100)",
    source: "geometry",
  },
  scallopRadius: { symbol: "r_s", unit: "mm", meaning: "scallop radius", formula: "R_k / 4", source: "design-rule" },
  scallopCentre: {
    symbol: "c_s",
    unit: "mm",
    meaning: "scallop centre from the axis",
    formula: "1.125 * R_k",
    source: "design-rule",
  },
  scallopDepth: { symbol: "h_s", unit: "mm", meaning: "scallop depth", formula: "R_k - c_s + r_s", source: "geometry" },
  land: {
    symbol: "w_l",
    unit: "mm",
    meaning: "width of a lobe at the rim",
    formula: "2 * R_k * sind(18 - 90 + asind((R_k^2 + c_s^2 - r_s^2) / (2 * R_k * c_s)))",
    source: "geometry",
  },
  face: {
    symbol: "D_f",
    unit: "mm",
    meaning: "whole round of the slider face, between opposite scallops",
    formula: "2 * (c_s - r_s)",
    source: "geometry",
  },
  wall: {
    symbol: "w_h",
    unit: "mm",
    meaning: "wall from pocket corner to a scallop in line with it",
    formula: "c_s - r_s - r_c",
    source: "geometry",
  },
  barGap: {
    symbol: "g_b",
    unit: "mm",
    meaning: "gap to the bar at full excursion",
    formula: "a - R_k - q",
    source: "geometry",
  },
  perLobe: {
    symbol: "h_l",
    unit: "mm",
    meaning: "plate height that one lobe is worth",
    formula: "P / 10",
    source: "iso-261",
  },
};
