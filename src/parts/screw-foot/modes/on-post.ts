import { disc, hullOf, joined, rectangle } from "../../../geometry/profile.ts";
import { prism, type Solid, turned } from "../../../geometry/solid.ts";
import { relocated, together } from "../../feature.ts";
import { cornerRelief } from "../../features/corner-relief.ts";
import { levelBolt } from "../../features/mount-bolt.ts";
import type { Contact } from "../../piece.ts";
import { CHEEK_PLAY, wallHalf } from "../surroundings.ts";
import { beside, FOOT, type Foot, type Mounting, mountBolt, standing } from "./mounting.ts";

/** Groove where front plate and cheek meet: a bar's edge is no sharp corner's friend, mm. */
const RELIEF = 1;

/** Returns the foot that embraces an upright bar: bolted through two cheeks into its side slots. */
export function onPost(foot: Foot): Mounting {
  const { given, derived, printer } = foot;
  const { axis, plate, bed, rim, margin, boltsApart, bought, housing, postTop } = derived;
  const half = wallHalf(given, bought, derived);
  const { inside, outside, back, top } = cheeks(foot);
  const front = hullOf(disc(housing), rectangle(-outside, -axis, outside, -axis + plate));
  const core = joined(front, ...beside(foot));
  const sides = joined(rectangle(-outside, back, -inside, -axis), rectangle(inside, back, outside, -axis));
  // A little into the front plate, so that the outlines join.
  const rooted = joined(rectangle(-outside, back, -inside, -axis + 1), rectangle(inside, back, outside, -axis + 1));
  const bolt = mountBolt(foot);
  const heights = [bed + margin, bed + margin + boltsApart];
  const y = axis + bought.bar.module / 2;
  const right = heights.map((z) => levelBolt(bolt, [y, z], inside, plate, printer));
  const left = heights.map((z) => levelBolt(bolt, [-y, z], inside, plate, printer));
  return {
    adds: [
      prism(joined(core, rooted), bed, Math.min(top, rim), FOOT),
      ...(top > rim ? standing(sides, rim, top) : standing(core, top, rim)),
      ...(given.style === "walled" ? standing(rectangle(-half, -axis, half, -axis + plate), rim, postTop) : []),
    ],
    cuts: [-1, 1].map((side) => cornerRelief([side * inside, -axis], RELIEF, bed, Math.max(rim, top))),
    bolts: together(
      ...right.map((one) => relocated(one, (solid: Solid) => turned(solid, "z", -90))),
      ...left.map((one) => relocated(one, (solid: Solid) => turned(solid, "z", 90))),
    ),
    keepOuts: [barBody(foot)],
    contacts: [matingFace(foot)],
  };
}

/** The cheeks in plan and their top. mm. */
function cheeks({ derived: { axis, plate, bought, margin, boltsApart, bed } }: Foot) {
  const inside = bought.bar.width / 2 + CHEEK_PLAY;
  return {
    inside,
    outside: inside + plate,
    back: -axis - bought.bar.module / 2 - margin,
    top: bed + 2 * margin + boltsApart,
  };
}

function barBody({ derived: { axis, bought } }: Foot) {
  const { width, height } = bought.bar;
  return { name: "upright bar", body: prism(rectangle(-width / 2, -axis - height, width / 2, -axis), -500, 500) };
}

function matingFace({ given, derived }: Foot): Contact {
  const { axis, rim, bed, bought, postTop } = derived;
  const wide = bought.bar.width + 2 * CHEEK_PLAY - 2 * RELIEF - 0.5;
  const high = (given.style === "walled" ? postTop : rim) - bed - FOOT;
  return { name: "face on the bar", area: wide * high, point: [0, -axis, 0], normal: [0, -1, 0], reach: 300 };
}
