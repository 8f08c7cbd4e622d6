import { cosDeg, sinDeg } from "../core/rounding.ts";
import type { Vec2 } from "./mesh.ts";

/**
 * A flat shape as data, in mm. Nothing is computed here; the kernel turns it into contours.
 *
 * A `disc` is a polygon when it is made: `around` puts the flats on the circle, so that a hole is never too small;
 * `inside` puts the corners on it, so that a pin is never too large.
 */
export type Profile =
  | { readonly kind: "polygon"; readonly points: readonly Vec2[] }
  | { readonly kind: "disc"; readonly radius: number; readonly at: Vec2; readonly fit: "inside" | "around" }
  | { readonly kind: "hull"; readonly parts: readonly Profile[] }
  | { readonly kind: "union"; readonly parts: readonly Profile[] }
  | { readonly kind: "cut"; readonly from: Profile; readonly tools: readonly Profile[] }
  | { readonly kind: "common"; readonly parts: readonly Profile[] }
  | { readonly kind: "offset"; readonly by: number; readonly of: Profile }
  | { readonly kind: "simplified"; readonly within: number; readonly of: Profile }
  | { readonly kind: "placed"; readonly angle: number; readonly at: Vec2; readonly of: Profile };

const ORIGIN: Vec2 = [0, 0];

/** A solid disc: corners on the circle. */
export function disc(radius: number, at: Vec2 = ORIGIN): Profile {
  return { kind: "disc", radius, at, fit: "inside" };
}

/** A round opening: flats on the circle. `diameter` is the modelled size, compensation included. */
export function opening(diameter: number, at: Vec2 = ORIGIN): Profile {
  return { kind: "disc", radius: diameter / 2, at, fit: "around" };
}

/** A polygon; the corners run counter-clockwise. */
export function polygon(points: readonly Vec2[]): Profile {
  return { kind: "polygon", points };
}

export function rectangle(x0: number, y0: number, x1: number, y1: number): Profile {
  return polygon([
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ]);
}

/** The smallest convex shape round the parts. */
export function hullOf(...parts: Profile[]): Profile {
  return { kind: "hull", parts };
}

export function joined(...parts: Profile[]): Profile {
  return parts.length === 1 && parts[0] !== undefined ? parts[0] : { kind: "union", parts };
}

export function without(from: Profile, ...tools: Profile[]): Profile {
  return tools.length === 0 ? from : { kind: "cut", from, tools };
}

export function overlap(...parts: Profile[]): Profile {
  return { kind: "common", parts };
}

/** The shape grown (or, with a negative number, shrunk) all round, with rounded corners. */
export function grown(of: Profile, by: number): Profile {
  return { kind: "offset", by, of };
}

/** The shape without the corners that matter less than `within` mm. */
export function simplified(of: Profile, within: number): Profile {
  return { kind: "simplified", within, of };
}

/** The shape turned about the origin by `angle` degrees and then moved. */
export function placed(of: Profile, at: Vec2, angle = 0): Profile {
  return { kind: "placed", angle, at, of };
}

/** A slot opening: two half rounds of `width` whose centres lie at `from` and `to`. */
export function slot(from: Vec2, to: Vec2, width: number): Profile {
  return from[0] === to[0] && from[1] === to[1]
    ? opening(width, from)
    : hullOf(opening(width, from), opening(width, to));
}

/** A slot of `width` and overall `length` centred on `at`, its long axis at `angle` degrees from +x. */
export function slotAlong(at: Vec2, angle: number, width: number, length: number): Profile {
  const reach = Math.max(0, length - width) / 2;
  const step: Vec2 = [reach * cosDeg(angle), reach * sinDeg(angle)];
  return slot([at[0] - step[0], at[1] - step[1]], [at[0] + step[0], at[1] + step[1]], width);
}

/** A regular hexagon across flats, with a corner at `angle` degrees. */
export function hexagon(acrossFlats: number, at: Vec2 = ORIGIN, angle = 0): Profile {
  const radius = acrossFlats / 2 / cosDeg(30);
  return polygon(
    Array.from({ length: 6 }, (_, corner): Vec2 => {
      const azimuth = angle + 60 * corner;
      return [at[0] + radius * cosDeg(azimuth), at[1] + radius * sinDeg(azimuth)];
    }),
  );
}
