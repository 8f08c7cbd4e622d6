import { cosDeg, sinDeg } from "../../../core/rounding.ts";
import { placed, rectangle } from "../../../geometry/profile.ts";
import { prism, type Solid } from "../../../geometry/solid.ts";
import { membraneRoom, type NutPocket, nutPocket } from "../../features/nut-pocket.ts";
import { CORNER } from "../mounts/mount.ts";
import { type Subject, slotDirection } from "../subject.ts";
import { firstLayerRelief, type Joint, openingProfile } from "./joint.ts";

/** Returns the joint of a bolt into a nut that slides in the bracket; one layer closes the opening in its roof. */
export function captiveNut(subject: Subject): Joint {
  const { derived, printer } = subject;
  const { thickness, roof, openingWidth, openingLength } = derived;
  const pocket = pocketOf(subject);
  const { cut, keepOut, half } = nutPocket(pocket, printer);
  const membrane = -roof + printer.layer;
  const angle = pocket.towards;
  return {
    cuts: [
      prism(openingProfile(subject), membrane, 1),
      prism(openingProfile(subject), -thickness - 1, pocket.floor + 0.1),
      firstLayerRelief(subject),
      cut,
      ...openCorner(subject, pocket, half),
    ],
    keepOuts: [keepOut],
    contacts: [],
    membranes: [membraneRoom(openingWidth + 1, openingLength + 1, angle, -roof, membrane)],
  };
}

/** The pocket opens along the slide, away from the bar; along the bar it opens towards +x. */
export function pocketOf({ given, derived, parts }: Subject): NutPocket {
  const slide = slotDirection(given);
  const away = sinDeg(slide);
  const forward = Math.abs(away) < 1e-9 ? cosDeg(slide) > 0 : away > 0;
  return {
    acrossFlats: parts.nut.acrossFlats,
    nutHeight: parts.nut.height,
    excursion: derived.halfTravel,
    roof: -derived.roof,
    floor: derived.floorLeft - derived.thickness,
    towards: forward ? slide : slide + 180,
    mouth: Math.hypot(derived.halfWidth, derived.halfFront) + 5,
  };
}

/**
 * Returns the cut that takes the roof off a mouth which goes round a corner of the plate: lines laid there would hang
 * on one side only. Nothing where the mouth lies in one face.
 */
function openCorner(subject: Subject, pocket: NutPocket, half: number): Solid[] {
  const walls = [half, -half].map((offset) => wallEnd(subject, pocket.towards, offset));
  const [one, other] = walls;
  if (one === undefined || other === undefined || one.face === other.face) return [];
  const from = Math.min(one.distance, other.distance);
  const notch = rectangle(from, -half, pocket.mouth, half);
  return [prism(placed(notch, [0, 0], pocket.towards), pocket.floor + 0.1, 1)];
}

/** How far from the origin a side wall of the pocket ends, and in which face: front, sides, or the cut-off corners. */
function wallEnd({ derived }: Subject, towards: number, offset: number) {
  const { halfWidth, halfFront } = derived;
  const [along, away] = [cosDeg(towards), sinDeg(towards)];
  const corner = (halfWidth + halfFront - CORNER) / Math.SQRT2;
  const faces = [
    { normal: [0, 1], at: halfFront },
    { normal: [1, 0], at: halfWidth },
    { normal: [-1, 0], at: halfWidth },
    { normal: [Math.SQRT1_2, Math.SQRT1_2], at: corner },
    { normal: [-Math.SQRT1_2, Math.SQRT1_2], at: corner },
  ] as const;
  const ends = faces.map(({ normal, at }, face) => {
    const speed = along * normal[0] + away * normal[1];
    const start = offset * (along * normal[1] - away * normal[0]);
    return { face, distance: speed < 1e-6 ? Number.POSITIVE_INFINITY : (at - start) / speed };
  });
  return ends.reduce((nearest, end) => (end.distance < nearest.distance ? end : nearest));
}
