import type { Printer } from "../../printing/printer.ts";
import { type Arms, armsOf } from "./derive/arms.ts";
import { type Axles, axlesOf } from "./derive/axles.ts";
import { type Faces, facesFrom } from "./derive/faces.ts";
import { type Forces, forcesOf } from "./derive/forces.ts";
import { type Plate, plateOf, reliefOf } from "./derive/plate.ts";
import { fittings } from "./fittings.ts";
import type { Parameters } from "./parameters.ts";

export type Derived = Axles & Arms & Faces & Plate & Forces;

/**
 * Returns everything that follows from the parameters. Where a calculation refuses, a stand-in keeps the numbers
 * finite and a check reports the error: bolt length 0, wheels beside the bar, forces below the least preload.
 */
export function derive(given: Parameters, printer: Printer): Derived {
  const parts = fittings(given);
  const axles = axlesOf(given, parts, printer);
  const relief = reliefOf(given, axles);
  const arms = armsOf(given, parts, axles.axisDistance, { thickness: axles.thickness, relief }, printer);
  const plate = plateOf(given, parts, axles, arms, relief);
  return {
    ...axles,
    ...arms,
    ...plate,
    ...facesFrom(given, parts, axles),
    ...forcesOf(given, parts, axles, arms, relief),
  };
}
