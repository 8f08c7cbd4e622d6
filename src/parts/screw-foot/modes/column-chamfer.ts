import type { Profile } from "../../../geometry/profile.ts";
import { common, prism, revolved, type Solid } from "../../../geometry/solid.ts";
import { FILLET, OVERLAP } from "./mounting.ts";

/** Returns the chamfer where a round column of `radius` stands on a base whose top is z = `top`. mm. */
export function columnChamfer(radius: number, top: number, base: Profile): Solid {
  const cone = revolved(
    [
      [0, top - OVERLAP],
      [radius + FILLET + OVERLAP, top - OVERLAP],
      [radius, top + FILLET],
      [0, top + FILLET],
    ],
    "inside",
  );
  // Where the base ends at the column there is nothing for it to stand on.
  return common(cone, prism(base, top - OVERLAP, top + FILLET));
}
