import type { Vec2 } from "../../../geometry/mesh.ts";
import { type Profile, polygon } from "../../../geometry/profile.ts";
import type { Solid } from "../../../geometry/solid.ts";
import type { Feature } from "../../feature.ts";
import type { MountBolt } from "../../features/mount-bolt.ts";
import type { Contact } from "../../piece.ts";
import type { Subject } from "../subject.ts";

/** Chamfer of the bed edge, of the outer corners and of corners under load, mm. */
export const FOOT = 0.4;
export const CORNER = 1.5;

/** The bracket's body under one way of mounting: what is added, its bolts, and the faces that must touch. */
export interface Mount {
  readonly body: readonly Solid[];
  readonly bolts: Feature;
  readonly contacts: readonly Contact[];
}

/** Returns the mount bolt with its washer. */
export function mountBolt({ parts, derived }: Subject): MountBolt {
  const { bolt, thread, screw, washer } = parts.mount;
  return {
    thread: bolt,
    diameter: thread.diameter,
    hole: thread.mediumHole,
    headDiameter: screw.headDiameter,
    headHeight: screw.headHeight,
    key: screw.key,
    washerDiameter: washer.outside,
    washerThickness: washer.thickness,
    counterbore: derived.counterbore,
  };
}

/** Returns the area of a teardrop hole about as drawn: the roof adds at most a fifth of the square of the radius. */
export function teardropArea(diameter: number): number {
  return (Math.PI + 0.2) * (diameter / 2) ** 2;
}

/** Returns how high the plate against the bar stands over the cup's floor; below zero when the bracket is thick. */
export function backHeight({ derived }: Subject): number {
  return derived.rowHeight + derived.edge;
}

/** Returns an outline from the corners of its right half, from the bar to the front. */
export function bothSides(right: readonly Vec2[]): Profile {
  return polygon([...right, ...[...right].reverse().map(([x, y]): Vec2 => [-x, y])]);
}
