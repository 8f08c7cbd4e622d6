import { below } from "../../check.ts";
import { HARDWARE_PLAY } from "../derive/fixing.ts";
import type { Derived } from "../derive/index.ts";
import type { Parameters } from "../parameters.ts";
import type { FootCheck } from "./seat.ts";

/** The two nearest bolts of a foot: along a slot, from slot to slot, or on either side of the axis. mm */
function nearest({ mount }: Parameters, { boltsApart, boltX, rows, bought }: Derived): number {
  const along = mount === "in-corner" || mount === "on-post" ? boltsApart : 2 * boltX;
  const inRows = (mount === "in-corner" || mount === "on-side") && rows > 1;
  return inRows ? Math.min(along, bought.bar.module) : along;
}

const collide: FootCheck = {
  name: "mount-bolts-collide",
  path: ["bar"],
  why: "washers that overlap cannot be laid flat, and the bolts cannot be put in",
  trips: { error: { bar: { row: "20x40 slot 6", module: 10 } } },
  test: ({ given, derived }) => {
    const { washerDiameter, thread } = derived.bought.bolt;
    const apart = nearest(given, derived);
    return below({
      value: apart,
      unit: "mm",
      error: washerDiameter + HARDWARE_PLAY,
      says: (limit) => `two ${thread} bolts stand ${apart.toFixed(1)} mm apart; their washers need ${limit} mm`,
      set: "bar: measure its module again, or a smaller mountBolt",
    });
  },
};

export const mountingChecks: readonly FootCheck[] = [collide];
