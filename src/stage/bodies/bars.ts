import type { Vec3 } from "../../geometry/mesh.ts";
import { grown, joined, type Profile, rectangle, without } from "../../geometry/profile.ts";
import { type Placement, prism, type Solid } from "../../geometry/solid.ts";
import type { PlanBar } from "../schema/index.ts";
import type { Drawn } from "./body.ts";
import type { Machine } from "./machine-data.ts";

/** How deep V wheels run below the face of a bar, mm. Source: common practice. */
const GROOVE = 3;

/** Returns the bars as solid sections. Their slots are rooms: keys, slot nuts and V wheels stand in them. */
export function bars({ stage }: Machine): Drawn[] {
  return Object.entries(stage.plan.bars).flatMap(([name, bar]) => {
    const along = lengthOf(bar);
    if (along === 0) return [];
    const [width, height] = section(bar);
    const whole = rectangle(-width / 2, -height / 2, width / 2, height / 2);
    const skin = without(whole, grown(whole, -GROOVE));
    const placed = (profile: Profile): Solid => ({
      kind: "placed",
      placement: frame(bar),
      of: prism(profile, 0, along),
    });
    return [
      {
        name: `bar ${name}`,
        solid: placed(whole),
        moves: bar.moves,
        belongsTo: [`bar ${name}`],
        path: ["bars", name],
        rooms: { slots: placed(slots(bar)), skin: placed(skin) },
      },
    ];
  });
}

function lengthOf({ from, to }: PlanBar): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
}

/** Across and up of a level bar, along x and y of an upright one. */
function section({ bar, turned }: PlanBar): [number, number] {
  const { width, height } = bar.values;
  return turned ? [height, width] : [width, height];
}

/** The section's two directions and the bar's own, so that a level bar stands on its narrow side. */
function frame({ from, to }: PlanBar): Placement {
  const along = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
  const u: Vec3 = [(to[0] - from[0]) / along, (to[1] - from[1]) / along, (to[2] - from[2]) / along];
  const flat = Math.hypot(u[0], u[1]);
  const upright = flat < 1e-9;
  const [v, w]: [Vec3, Vec3] = upright
    ? [
        [1, 0, 0],
        [0, u[2], 0],
      ]
    : [
        [-u[1] / flat, u[0] / flat, 0],
        [(-u[0] * u[2]) / flat, (-u[1] * u[2]) / flat, flat],
      ];
  return [v[0], w[0], u[0], from[0], v[1], w[1], u[1], from[1], v[2], w[2], u[2], from[2]];
}

/** The mouths of the slots in all four faces, as deep as the slot. */
function slots(bar: PlanBar): Profile {
  const { module, slotMouth, slotDepth } = bar.bar.values;
  const [width, height] = section(bar);
  const middles = (side: number) => {
    const count = Math.max(1, Math.round(side / module));
    return Array.from({ length: count }, (_, index) => (index - (count - 1) / 2) * module);
  };
  const half = slotMouth / 2;
  const [x, y] = [width / 2, height / 2];
  return joined(
    ...middles(width).flatMap((m) => [
      rectangle(m - half, y - slotDepth, m + half, y + 1),
      rectangle(m - half, -y - 1, m + half, -y + slotDepth),
    ]),
    ...middles(height).flatMap((m) => [
      rectangle(x - slotDepth, m - half, x + 1, m + half),
      rectangle(-x - 1, m - half, -x + slotDepth, m + half),
    ]),
  );
}
