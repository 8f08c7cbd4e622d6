import type { Path } from "../../core/diagnostic.ts";
import type { Box, Vec3 } from "../../geometry/mesh.ts";
import { moved, type Solid, turned } from "../../geometry/solid.ts";
import type { Placement } from "../machine.ts";

export type BodyKind =
  | "bar"
  | "screw"
  | "bearing"
  | "ring"
  | "collar"
  | "pulley"
  | "motor"
  | "motor-screw"
  | "belt"
  | "idler"
  | "plate"
  | "heater"
  | "wheel"
  | "axle"
  | "eccentric"
  | "nut"
  | "idler-axle"
  | "tram-bolt"
  | "spring"
  | "washer"
  | "thumb-wheel"
  | "fastener"
  | "part";

/** A room of a body in which others may stand, though the body is drawn without it. */
export type RoomName = "slots" | "groove" | "shaft" | "press" | "skin";

/** A thing of the assembled machine, drawn as it stands at the bottom of the travel. mm, in the machine's frame. */
export interface Body {
  /** Unique in the machine, in words: `pulley of screw A`. */
  readonly name: string;
  readonly kind: BodyKind;
  readonly solid: Solid;
  /** A box that holds it. */
  readonly box: Box;
  /** Whether it rises with the stage. */
  readonly moves: boolean;
  /** What it is a member of: `screw A`, `loop low`. Bodies that share one were put together on purpose. */
  readonly belongsTo: readonly string[];
  /** Where in the plan it comes from. */
  readonly path: Path;
  /** The part of the machine that it is a piece of, where it is printed. */
  readonly part?: string;
  /** The printed body whose hardware it is: how the two fit is seen on the finished mesh of that body. */
  readonly hardwareOf?: string;
  /** Slots are left out of bars and grooves out of pulleys: where what belongs there may stand. */
  readonly rooms: Readonly<Partial<Record<RoomName, Solid>>>;
}

/** A body before the box round it is worked out. */
export type Drawn = Omit<Body, "box" | "rooms" | "moves" | "kind"> & Partial<Pick<Body, "rooms" | "moves">>;

/** Returns a solid of a part's own frame where the part stands. */
export function standing(solid: Solid, { origin, angle, upright }: Placement): Solid {
  const stood = upright === true ? turned(solid, "x", 90) : solid;
  return moved(angle === 0 ? stood : turned(stood, "z", angle), origin);
}

/** Returns a solid that is drawn about the z axis at a place in plan. */
export function at(solid: Solid, [x, y]: readonly [number, number], z = 0): Solid {
  const place: Vec3 = [x, y, z];
  return moved(solid, place);
}
