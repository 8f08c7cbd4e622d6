import type { Point } from "../../mechanics/point.ts";
import type { Derived } from "../../parts/tram-mount/derive.ts";
import type { Placement } from "../machine.ts";
import type { PlanBar } from "../schema/index.ts";
import { angleOf, beside, sectionOf } from "./bar-frame.ts";

/** Where the bolt of a tram mount stands to the bar that carries it. mm, deg. */
export interface MountPlace {
  readonly at: Point;
  /** From the bar towards the bolt, of length 1. */
  readonly away: Point;
  /** Turn of the bracket's frame, whose y points away from the bar. */
  readonly angle: number;
  /** From the bar's face, or from its end, to the bolt. */
  readonly room: number;
}

/** Returns where a bolt stands to a level bar: beside it, or before its nearer end for a mount on an end. */
export function mountPlace(bar: PlanBar, at: Point, kind: string): MountPlace {
  const { along, direction, away, distance, length } = beside(bar, at);
  if (kind !== "end") return { at, away, angle: angleOf(away) - 90, room: distance - sectionOf(bar).wide / 2 };
  const far = along > length / 2;
  const out = far ? direction : { x: -direction.x, y: -direction.y };
  return { at, away: out, angle: angleOf(out) - 90, room: far ? along - length : -along };
}

/** Returns where the bracket stands: against its bar, its bolt as near to the hole of the plate as it reaches. */
export function placementOf(bar: PlanBar, place: MountPlace, kind: string, derived: Derived): Placement {
  const short = derived.reach - place.room;
  const { high } = sectionOf(bar);
  const middle = bar.from[2];
  const row = middle + (high - bar.bar.values.module) / 2;
  const z = kind === "on-top" ? middle + high / 2 + derived.thickness : row - derived.rowHeight;
  return { origin: [place.at.x + short * place.away.x, place.at.y + short * place.away.y, z], angle: place.angle };
}
