import { cosDeg, sinDeg } from "../../core/rounding.ts";
import { alongX, rod, turned } from "../../geometry/solid.ts";
import { levelHole } from "../../printing/compensation.ts";
import type { Printer } from "../../printing/printer.ts";
import type { Feature } from "../feature.ts";
import { teardrop } from "./teardrop.ts";

/** The straight way of a hexagon key to the set screw of a hub that turns on the z axis. mm, degrees. */
export interface SetScrewPath {
  readonly azimuth: number;
  readonly height: number;
  readonly hubRadius: number;
  readonly diameter: number;
  readonly reach: number;
}

/** Returns the level hole that the key needs through whatever stands in its way, and its space. */
export function setScrewPath({ azimuth, height, hubRadius, diameter, reach }: SetScrewPath, printer: Printer): Feature {
  const tool = alongX(teardrop(levelHole(diameter, printer), printer.layer, [0, height]), hubRadius, reach);
  const [c, s] = [cosDeg(azimuth), sinDeg(azimuth)];
  const from = [hubRadius * c, hubRadius * s, height] as const;
  return {
    adds: [],
    cuts: [turned(tool, "z", azimuth)],
    keepOuts: [{ name: "hex key to the set screw", body: rod(from, [c, s, 0], diameter / 2, reach - hubRadius) }],
  };
}
