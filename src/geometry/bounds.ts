import type { Box, Mesh, Vec2, Vec3 } from "./mesh.ts";
import type { Profile } from "./profile.ts";
import { circumscribed, segments } from "./segments.ts";
import type { Solid } from "./solid.ts";

/** Coarsest chord tolerance at which round bodies are made, mm: openings are widest then. */
const COARSEST = 0.05;

/**
 * Returns a box that holds the solid, mm, without evaluating it: the tight one, except that what is cut off still
 * counts and that round bodies are taken as round.
 */
export function boundsOf(solid: Solid): Box {
  const reach = (direction: Vec3) => solidReach(solid, direction);
  return {
    min: [0 - reach([-1, 0, 0]), 0 - reach([0, -1, 0]), 0 - reach([0, 0, -1])],
    max: [reach([1, 0, 0]), reach([0, 1, 0]), reach([0, 0, 1])],
  };
}

/** How far the solid reaches along a direction, times the length of that direction. */
function solidReach(solid: Solid, direction: Vec3): number {
  const [dx, dy, dz] = direction;
  switch (solid.kind) {
    case "prism":
      return profileReach(solid.profile, [dx, dy]) + Math.max(dz * solid.z0, dz * solid.z1);
    case "revolved": {
      const flat = Math.hypot(dx, dy);
      const stretch = solid.fit === "around" ? circumscribed(1, segments(solid.sizing, COARSEST)) : 1;
      const points = solid.sections.flat().map(([radius, z]) => flat * stretch * radius + dz * z);
      return Math.max(...points) + Math.abs(dx) * solid.drawn;
    }
    case "laid": {
      const out = Math.max(0, dx * (solid.radius + solid.height));
      return out + profileReach(solid.profile, [dy, dz]);
    }
    case "hull":
    case "union":
      return Math.max(...solid.parts.map((part) => solidReach(part, direction)));
    case "common":
      return Math.min(...solid.parts.map((part) => solidReach(part, direction)));
    case "cut":
      return solidReach(solid.from, direction);
    case "placed": {
      const [a, b, c, x, d, e, f, y, g, h, i, z] = solid.placement;
      const back: Vec3 = [a * dx + d * dy + g * dz, b * dx + e * dy + h * dz, c * dx + f * dy + i * dz];
      return solidReach(solid.of, back) + x * dx + y * dy + z * dz;
    }
    case "meshed":
      return meshReach(solid.mesh, direction);
  }
}

function meshReach({ positions }: Mesh, [dx, dy, dz]: Vec3): number {
  let most = -Infinity;
  for (let at = 0; at < positions.length; at += 3) {
    const [x, y, z] = [positions[at] ?? 0, positions[at + 1] ?? 0, positions[at + 2] ?? 0];
    most = Math.max(most, x * dx + y * dy + z * dz);
  }
  return most;
}

function profileReach(profile: Profile, direction: Vec2): number {
  const [dx, dy] = direction;
  switch (profile.kind) {
    case "polygon":
      return Math.max(...profile.points.map(([x, y]) => x * dx + y * dy));
    case "disc": {
      const { radius, at, fit } = profile;
      const stretch = fit === "around" ? circumscribed(1, segments(radius, COARSEST)) : 1;
      return at[0] * dx + at[1] * dy + radius * stretch * Math.hypot(dx, dy);
    }
    case "hull":
    case "union":
      return Math.max(...profile.parts.map((part) => profileReach(part, direction)));
    case "common":
      return Math.min(...profile.parts.map((part) => profileReach(part, direction)));
    case "cut":
      return profileReach(profile.from, direction);
    case "offset":
      return profileReach(profile.of, direction) + profile.by * Math.hypot(dx, dy);
    case "simplified":
      return profileReach(profile.of, direction) + profile.within * Math.hypot(dx, dy);
    case "placed": {
      const [c, s] = [Math.cos((profile.angle * Math.PI) / 180), Math.sin((profile.angle * Math.PI) / 180)];
      const back: Vec2 = [c * dx + s * dy, c * dy - s * dx];
      return profileReach(profile.of, back) + profile.at[0] * dx + profile.at[1] * dy;
    }
  }
}
