import type { Vec2 } from "../../../geometry/mesh.ts";
import { prism } from "../../../geometry/solid.ts";
import { uprightHole } from "../../../printing/compensation.ts";
import { together } from "../../feature.ts";
import { uprightBolt } from "../../features/mount-bolt.ts";
import type { Contact } from "../../piece.ts";
import { ON_TOP_BOLT } from "../frame.ts";
import type { Subject } from "../subject.ts";
import { bothSides, CORNER, FOOT, type Mount, mountBolt } from "./mount.ts";

/** Returns the bracket that lies on the top of a bar: the bridge plate runs on over it, two upright bolts. */
export function onTop(subject: Subject): Mount {
  const { given, derived, printer } = subject;
  const { reach, thickness } = derived;
  const middle = -reach - given.bar.values.width / 2;
  const bolts = [ON_TOP_BOLT, -ON_TOP_BOLT].map((x) =>
    uprightBolt(mountBolt(subject), [x, middle], -thickness, 0, printer),
  );
  return {
    body: [prism(outline(subject), -thickness, 0, FOOT)],
    bolts: together(...bolts),
    contacts: [barFace(subject, middle)],
  };
}

function outline({ given, derived }: Subject) {
  const { halfWidth, halfFront, reach } = derived;
  const back = -reach - given.bar.values.width;
  const right: Vec2[] = [
    [halfWidth - CORNER, back],
    [halfWidth, back + CORNER],
    [halfWidth, halfFront - CORNER],
    [halfWidth - CORNER, halfFront],
  ];
  return bothSides(right);
}

/** Between the two bolts: a square as wide as the bar, or as the gap between the holes. */
function barFace({ given, derived, parts, printer }: Subject, middle: number): Contact {
  const hole = uprightHole(parts.mount.thread.mediumHole, printer) / 2;
  const half = Math.min(given.bar.values.width / 2 - FOOT, ON_TOP_BOLT - hole);
  return {
    name: "face on the bar's top",
    area: (2 * half) ** 2,
    point: [0, middle, -derived.thickness],
    normal: [0, 0, -1],
    reach: half,
  };
}
