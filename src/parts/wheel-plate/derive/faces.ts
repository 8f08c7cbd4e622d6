import { up } from "../../../core/rounding.ts";
import type { Fittings } from "../fittings.ts";
import { facesOf, wheelsOf } from "../layout.ts";
import type { Parameters } from "../parameters.ts";
import type { Axles } from "./axles.ts";

/** How two plates on opposite faces of the bar stand to each other. mm. */
export interface Faces {
  readonly faces: number;
  readonly faceDistance: number;
  readonly tipHeight: number;
  readonly staggerNeed: number;
  readonly stagger: number;
  readonly apart: number;
  readonly rowPitch: number;
}

/** Hexagon across corners over across flats. */
export const CORNERS = 1.1547;

export function facesFrom(given: Parameters, parts: Fittings, axles: Axles): Faces {
  const faces = facesOf(given);
  const faceDistance = 2 * axles.wheelPlane - given.module + given.barDepth;
  const tipHeight = axles.boltLength - parts.washer.thickness - axles.thickness;
  const { outside, width } = given.wheel.values;
  const corners = CORNERS * parts.nut.acrossFlats;
  const need = () => {
    if (given.barDepth < given.module + width) return outside + 2;
    if (tipHeight > faceDistance - axles.wheelPlane - width / 2) return outside / 2 + corners / 2 + 1;
    return 2 * tipHeight > faceDistance ? corners + 1 : 0;
  };
  const staggerNeed = faces === 2 ? need() : 0;
  const stagger = faces === 2 ? (given.stagger ?? up(staggerNeed, 0.5)) : 0;
  return {
    faces,
    faceDistance,
    tipHeight,
    staggerNeed,
    stagger,
    apart: faces === 2 ? apart(given, stagger) : given.rowSpacing,
    rowPitch: rowPitch(given),
  };
}

/** Returns how near a wheel of one plate comes, along the travel, to one of the other plate on the same side. mm. */
function apart(given: Parameters, stagger: number): number {
  const wheels = wheelsOf(given);
  const gaps = wheels.flatMap((one) =>
    wheels.filter(({ side }) => side === one.side).map((other) => Math.abs(other.y + stagger - one.y)),
  );
  return Math.min(...gaps);
}

/** Returns the least distance of two neighbours on one side of a plate. mm. */
function rowPitch(given: Parameters): number {
  const wheels = wheelsOf(given);
  const gaps = wheels.flatMap((one, index) =>
    wheels.filter(({ side }, other) => other > index && side === one.side).map((other) => Math.abs(other.y - one.y)),
  );
  return Math.min(...gaps);
}
