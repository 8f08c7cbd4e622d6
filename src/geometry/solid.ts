import { cosDeg, sinDeg } from "../core/rounding.ts";
import type { Mesh, Vec2, Vec3 } from "./mesh.ts";
import type { Profile } from "./profile.ts";

/** Twelve numbers, row by row: the turned x, y, z axes and the shift. */
export type Placement = readonly [
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
];

/**
 * A body as data: a tree of plain objects, in mm. It can be hashed, compared and drawn; only the kernel evaluates it.
 *
 * - `prism`: a profile between two heights; `foot` insets the lowest edge by that much at 45 degrees.
 * - `revolved`: half sections of [radius, z], united and turned about the z axis. `fit` as for a disc; the number of
 *   sides follows `sizing`, the radius that matters. Cut in half, its halves are `drawn` mm each way along x, and what
 *   lies between is filled: the room of a round thing that slides.
 * - `laid`: a flat profile laid on the round wall of `radius` about the z axis, seen from +x: its x is y, its y is z.
 *   Its floor follows the wall, its sides stay parallel to the x axis; it is `height` mm high along x.
 * - `meshed`: what a tree came to when it was evaluated; it cannot be hashed.
 */
export type Solid =
  | {
      readonly kind: "prism";
      readonly profile: Profile;
      readonly z0: number;
      readonly z1: number;
      readonly foot: number;
    }
  | {
      readonly kind: "revolved";
      readonly sections: readonly (readonly Vec2[])[];
      readonly fit: "inside" | "around";
      readonly sizing: number;
      readonly drawn: number;
    }
  | {
      readonly kind: "laid";
      readonly profile: Profile;
      readonly radius: number;
      readonly height: number;
    }
  | { readonly kind: "hull"; readonly parts: readonly Solid[] }
  | { readonly kind: "union"; readonly parts: readonly Solid[] }
  | { readonly kind: "cut"; readonly from: Solid; readonly tools: readonly Solid[] }
  | { readonly kind: "common"; readonly parts: readonly Solid[] }
  | { readonly kind: "placed"; readonly placement: Placement; readonly of: Solid }
  | { readonly kind: "meshed"; readonly mesh: Mesh };

/** A straight body of one profile from z0 to z1; `foot` is the bed-edge chamfer, 0 for none. */
export function prism(profile: Profile, z0: number, z1: number, foot = 0): Solid {
  return { kind: "prism", profile, z0, z1, foot };
}

/** A round body or tool about the z axis, from the points [radius, z] of its half section. */
export function revolved(outline: readonly Vec2[], fit: "inside" | "around", sizing?: number): Solid {
  const most = Math.max(...outline.map(([radius]) => radius));
  return { kind: "revolved", sections: [outline], fit, sizing: sizing ?? most, drawn: 0 };
}

/** A flat profile, narrower than the wall, laid on the round wall of `radius` about the z axis, seen from +x. */
export function laid(profile: Profile, radius: number, height: number): Solid {
  return { kind: "laid", profile, radius, height };
}

/** A round pin or keep-out body about the z axis. */
export function cylinder(radius: number, z0: number, z1: number): Solid {
  return revolved(
    [
      [0, z0],
      [radius, z0],
      [radius, z1],
      [0, z1],
    ],
    "inside",
  );
}

export function hullSolid(...parts: Solid[]): Solid {
  return { kind: "hull", parts };
}

export function unite(...parts: Solid[]): Solid {
  return parts.length === 1 && parts[0] !== undefined ? parts[0] : { kind: "union", parts };
}

/** The body less its tools: one subtraction, however many tools. */
export function carve(from: Solid, tools: readonly Solid[]): Solid {
  return tools.length === 0 ? from : { kind: "cut", from, tools };
}

export function common(...parts: Solid[]): Solid {
  return { kind: "common", parts };
}

export function moved(of: Solid, [x, y, z]: Vec3): Solid {
  return { kind: "placed", of, placement: [1, 0, 0, x, 0, 1, 0, y, 0, 0, 1, z] };
}

/** The body turned about an axis through the origin, counter-clockwise seen from the axis' tip, in degrees. */
export function turned(of: Solid, axis: "x" | "y" | "z", angle: number): Solid {
  const c = cosDeg(angle);
  const s = sinDeg(angle);
  const placements: Record<typeof axis, Placement> = {
    x: [1, 0, 0, 0, 0, c, -s, 0, 0, s, c, 0],
    y: [c, 0, s, 0, 0, 1, 0, 0, -s, 0, c, 0],
    z: [c, -s, 0, 0, s, c, 0, 0, 0, 0, 1, 0],
  };
  return { kind: "placed", of, placement: placements[axis] };
}

/** Returns the tree with what is known of it in the place of its parts: those that stand there as the same objects. */
export function withKnown(solid: Solid, known: (part: Solid) => Solid | undefined): Solid {
  return known(solid) ?? (solid.kind === "placed" ? { ...solid, of: withKnown(solid.of, known) } : solid);
}

/** Whether a body is straight along z, with the same section from end to end. */
export function isUpright(solid: Solid): boolean {
  if (solid.kind === "prism") return solid.foot === 0;
  if (solid.kind !== "placed") return false;
  const [, , c, , , , f, , g, h, i] = solid.placement;
  return c === 0 && f === 0 && g === 0 && h === 0 && Math.abs(i) === 1 && isUpright(solid.of);
}

/** The body mirrored in the plane through the origin whose normal is `axis`: the other hand. */
export function mirrored(of: Solid, axis: "x" | "y" | "z"): Solid {
  const sign = (other: string) => (other === axis ? -1 : 1);
  return { kind: "placed", of, placement: [sign("x"), 0, 0, 0, 0, sign("y"), 0, 0, 0, 0, sign("z"), 0] };
}

/** A straight body along y from y0 to y1 whose profile is drawn in x (right) and z (up). */
export function alongY(profile: Profile, y0: number, y1: number): Solid {
  return { kind: "placed", of: prism(profile, -y1, -y0), placement: [1, 0, 0, 0, 0, 0, -1, 0, 0, 1, 0, 0] };
}

/** A straight body along x from x0 to x1 whose profile is drawn in y (right) and z (up). */
export function alongX(profile: Profile, x0: number, x1: number): Solid {
  return { kind: "placed", of: prism(profile, x0, x1), placement: [0, 0, 1, 0, 1, 0, 0, 0, 0, 1, 0, 0] };
}

/** A round body of `radius` from one point along a direction. */
export function rod(from: Vec3, direction: Vec3, radius: number, length: number): Solid {
  const [dx, dy, dz] = direction;
  const flat = Math.hypot(dx, dy);
  const tilt = (Math.atan2(flat, dz) * 180) / Math.PI;
  const azimuth = (Math.atan2(dy, dx) * 180) / Math.PI;
  return moved(turned(turned(cylinder(radius, 0, length), "y", tilt), "z", azimuth), from);
}
