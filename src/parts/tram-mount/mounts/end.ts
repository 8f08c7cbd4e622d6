import { rectangle } from "../../../geometry/profile.ts";
import { prism, turned } from "../../../geometry/solid.ts";
import { relocated, together } from "../../feature.ts";
import { levelBolt } from "../../features/mount-bolt.ts";
import type { Contact } from "../../piece.ts";
import { LUG_LENGTH, LUG_PLAY } from "../frame.ts";
import type { Subject } from "../subject.ts";
import { gussets } from "./gussets.ts";
import { backHeight, FOOT, type Mount, mountBolt } from "./mount.ts";

/** Returns the bracket over the end of a bar that runs along -y: a lug with a bolt on each side. */
export function end(subject: Subject): Mount {
  const { given, derived, printer } = subject;
  const { halfWidth, halfFront, reach, backPlate, thickness, rowHeight } = derived;
  const top = backHeight(subject);
  const inner = given.bar.values.width / 2 + LUG_PLAY;
  const outer = inner + backPlate;
  const tail = -reach - LUG_LENGTH;
  const bolt = mountBolt(subject);
  const along = reach + LUG_LENGTH / 2;
  const right = relocated(levelBolt(bolt, [along, rowHeight], inner, backPlate, printer), (solid) =>
    turned(solid, "z", -90),
  );
  const left = relocated(levelBolt(bolt, [-along, rowHeight], inner, backPlate, printer), (solid) =>
    turned(solid, "z", 90),
  );
  return {
    body: [
      prism(rectangle(-halfWidth, -reach, halfWidth, halfFront), -thickness, 0, FOOT),
      prism(rectangle(inner, tail, outer, 1 - reach), -thickness, top, FOOT),
      prism(rectangle(-outer, tail, -inner, 1 - reach), -thickness, top, FOOT),
      ...(top > 0
        ? [prism(rectangle(-halfWidth, -reach, halfWidth, backPlate - reach), -1, top), ...gussets(subject)]
        : []),
    ],
    bolts: together(right, left),
    contacts: [endFace(subject, inner, Math.max(top, 0))],
  };
}

function endFace({ derived }: Subject, inner: number, top: number): Contact {
  const { reach, thickness } = derived;
  const middle = (top - thickness) / 2;
  const height = top + thickness;
  const half = Math.min(inner, height / 2);
  return {
    name: "face against the bar's end",
    area: 2 * half * (Math.min(2 * half, height) - FOOT),
    point: [0, -reach, middle],
    normal: [0, -1, 0],
    reach: half,
  };
}
