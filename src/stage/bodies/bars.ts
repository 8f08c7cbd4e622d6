import { grown, joined, type Profile, rectangle, without } from "../../geometry/profile.ts";
import { type Placement, prism, type Solid } from "../../geometry/solid.ts";
import { type PlacedBar, placedBars } from "../frame/placed-bar.ts";
import type { Drawn } from "./body.ts";
import type { Machine } from "./machine-data.ts";

/** How deep V wheels run below the face of a bar, mm. Source: common practice. */
const GROOVE = 3;

/** Returns the bars as solid sections. Their slots are rooms: keys, slot nuts and V wheels stand in them. */
export function bars({ stage }: Machine): Drawn[] {
  return placedBars(stage.plan).flatMap((bar) => {
    const { name, length, wide, high, moves } = bar;
    if (!(length > 0 && wide > 0 && high > 0)) return [];
    const whole = rectangle(-wide / 2, -high / 2, wide / 2, high / 2);
    const skin = without(whole, grown(whole, -GROOVE));
    const drawn = (profile: Profile): Solid => ({
      kind: "placed",
      placement: frame(bar),
      of: prism(profile, 0, length),
    });
    return [
      {
        name: `bar ${name}`,
        solid: drawn(whole),
        moves,
        belongsTo: [`bar ${name}`],
        path: ["bars", name],
        rooms: { slots: drawn(slots(bar)), skin: drawn(skin) },
      },
    ];
  });
}

/** The section lies in x and y of the prism, which runs along z. */
function frame({ from, along: u, across: v, up: w }: PlacedBar): Placement {
  return [v[0], w[0], u[0], from[0], v[1], w[1], u[1], from[1], v[2], w[2], u[2], from[2]];
}

/** The mouths of the slots in all four faces, as deep as the slot. */
function slots({ bar, wide, high }: PlacedBar): Profile {
  const { module, slotMouth, slotDepth } = bar.values;
  const middles = (side: number) => {
    const count = Math.max(1, Math.round(side / module));
    return Array.from({ length: count }, (_, index) => (index - (count - 1) / 2) * module);
  };
  const half = slotMouth / 2;
  const [x, y] = [wide / 2, high / 2];
  return joined(
    ...middles(wide).flatMap((m) => [
      rectangle(m - half, y - slotDepth, m + half, y + 1),
      rectangle(m - half, -y - 1, m + half, -y + slotDepth),
    ]),
    ...middles(high).flatMap((m) => [
      rectangle(x - slotDepth, m - half, x + 1, m + half),
      rectangle(-x - 1, m - half, -x + slotDepth, m + half),
    ]),
  );
}
