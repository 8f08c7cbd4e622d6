import type { Vec2 } from "../../../geometry/mesh.ts";
import { rectangle } from "../../../geometry/profile.ts";
import { prism, type Solid } from "../../../geometry/solid.ts";
import { levelHole } from "../../../printing/compensation.ts";
import { wanted } from "../../../printing/fits.ts";
import { together } from "../../feature.ts";
import { levelBolt } from "../../features/mount-bolt.ts";
import { KEY_HEIGHT, keyStretches, slotKey } from "../../features/slot-key.ts";
import type { Contact } from "../../piece.ts";
import type { Subject } from "../subject.ts";
import { gussets } from "./gussets.ts";
import { backHeight, bothSides, CORNER, FOOT, type Mount, mountBolt, teardropArea } from "./mount.ts";

/** Returns the bracket against the side of a bar: two wings with a bolt each, a rib in the bar's slot. */
export function onSide(subject: Subject): Mount {
  const { derived, printer } = subject;
  const { reach, backPlate, boltX, edge, rowHeight, thickness } = derived;
  const top = backHeight(subject);
  const wing = boltX + edge;
  const upper = prism(rectangle(-wing, -reach, wing, backPlate - reach), 1 - thickness, top);
  const bolts = [boltX, -boltX].map((x) => levelBolt(mountBolt(subject), [x, rowHeight], -reach, backPlate, printer));
  return {
    body: [
      prism(outline(subject, wing), -thickness, Math.min(0, top), FOOT),
      ...(top < 0 ? [plateAbove(subject, top)] : [upper, ...gussets(subject)]),
      ...key(subject),
    ],
    bolts: together(...bolts),
    contacts: [matingFace(subject, wing)],
  };
}

/** The bracket is thicker than the wings are high. */
function plateAbove({ derived }: Subject, top: number): Solid {
  const { halfWidth, halfFront, reach } = derived;
  const right: Vec2[] = [
    [halfWidth, -reach],
    [halfWidth, halfFront - CORNER],
    [halfWidth - CORNER, halfFront],
  ];
  return prism(bothSides(right), top - 1, 0);
}

/** One outline for bridge plate and wings, so that the bed edge has no notch where they meet. */
function outline({ derived }: Subject, wing: number) {
  const { halfWidth, halfFront, reach, backPlate } = derived;
  const front = backPlate - reach;
  const right: Vec2[] = [
    [wing, -reach],
    [wing, front],
    [halfWidth + CORNER, front],
    [halfWidth, front + CORNER],
    [halfWidth, halfFront - CORNER],
    [halfWidth - CORNER, halfFront],
  ];
  return bothSides(right);
}

function stretchesOf({ given, derived }: Subject): [number, number][] {
  const { boltX } = derived;
  return given.key ? keyStretches(8 - boltX, boltX - 8, [boltX, -boltX]) : [];
}

function key(subject: Subject): Solid[] {
  const { given, derived } = subject;
  return slotKey(given.bar.values, -derived.reach, derived.rowHeight, stretchesOf(subject));
}

function matingFace(subject: Subject, wing: number): Contact {
  const { given, derived, parts, printer } = subject;
  const { reach, edge, rowHeight } = derived;
  const { slotMouth } = given.bar.values;
  const rib = stretchesOf(subject).reduce((sum, [from, to]) => sum + to - from, 0) * wanted(slotMouth, "slotKey");
  const holes = 2 * teardropArea(levelHole(parts.mount.thread.mediumHole, printer));
  return {
    name: "mating face",
    area: 2 * wing * (2 * edge - FOOT) - holes - rib,
    point: [0, -reach, rowHeight],
    normal: [0, -1, 0],
    reach: wing + KEY_HEIGHT,
  };
}
