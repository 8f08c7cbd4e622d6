import type { Vec2 } from "../../geometry/mesh.ts";
import { CAP } from "./derive/cap.ts";
import { RIBS, TALL_SEAT } from "./derive/extents.ts";
import type { Foot } from "./modes/mounting.ts";
import { alongSecondBar, CHEEK_PLAY } from "./surroundings.ts";

/** Part of the housing's round wall that something covers: its middle and half its width, degrees. */
interface Arc {
  readonly middle: number;
  readonly half: number;
}

/** How finely a free place is looked for, degrees. */
const STEP = 5;

/**
 * Returns the direction nearest to `away` in which the housing's wall is a bare circle for `half` degrees either way;
 * undefined when there is none.
 */
export function freeArc(foot: Foot, away: number, half: number): number | undefined {
  const arcs = covered(foot);
  const free = (azimuth: number) => arcs.every((arc) => apart(azimuth, arc.middle) >= arc.half + half);
  for (let off = 0; off <= 180; off += STEP) {
    const found = [away + off, away - off].find(free);
    if (found !== undefined) return found;
  }
  return undefined;
}

function apart(one: number, other: number): number {
  return Math.abs(((((one - other) % 360) + 540) % 360) - 180);
}

/** The outline is a hull, so a point outside the circle covers it up to its two tangents. */
function covered(foot: Foot): Arc[] {
  const { given, derived } = foot;
  const { housing, capCircle } = derived;
  const points = [...matingPoints(foot), ...derived.posts.flatMap(({ section }) => section)];
  const arcs = points.map(([x, y]): Arc => {
    const share = Math.min(1, housing / Math.hypot(x, y));
    return { middle: degrees(Math.atan2(y, x)), half: degrees(Math.acos(share)) };
  });
  if (given.mount === "on-top" && derived.seat > TALL_SEAT) {
    const half = degrees(Math.asin(Math.min(1, RIBS.thick / 2 / housing)));
    arcs.push(...RIBS.azimuths.map((middle) => ({ middle, half })));
  }
  if (!given.cap) return arcs;
  const radius = capCircle / 2;
  const cosine = (housing ** 2 + radius ** 2 - CAP.lobe ** 2) / (2 * housing * radius);
  const half = degrees(Math.acos(Math.max(-1, Math.min(1, cosine))));
  return [...arcs, ...CAP.azimuths.map((middle) => ({ middle, half }))];
}

const degrees = (angle: number) => (angle * 180) / Math.PI;

/** The corners of what the housing is hulled with, by mount. */
function matingPoints({ given, derived }: Foot): Vec2[] {
  const { housing, axis, axisB, plate, cornerX, bought } = derived;
  switch (given.mount) {
    case "on-side":
      return [
        [housing, -axis],
        [-housing, -axis],
      ];
    case "in-corner":
      return [[housing, -axis], [cornerX, -axis], alongSecondBar(given.cornerAngle)([housing, -axisB])];
    case "on-post": {
      const outside = bought.bar.width / 2 + CHEEK_PLAY + plate;
      return [-axis, -axis + plate].flatMap((y): Vec2[] => [
        [outside, y],
        [-outside, y],
      ]);
    }
    default:
      return [];
  }
}
