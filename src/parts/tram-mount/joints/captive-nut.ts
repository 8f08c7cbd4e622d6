import { cosDeg, sinDeg } from "../../../core/rounding.ts";
import { prism } from "../../../geometry/solid.ts";
import { membraneRoom, type NutPocket, nutPocket } from "../../features/nut-pocket.ts";
import { type Subject, slotDirection } from "../subject.ts";
import { firstLayerRelief, type Joint, openingProfile } from "./joint.ts";

/** Returns the joint of a bolt into a nut that slides in the bracket; one layer closes the opening in its roof. */
export function captiveNut(subject: Subject): Joint {
  const { derived, printer } = subject;
  const { thickness, roof, openingWidth, openingLength } = derived;
  const pocket = pocketOf(subject);
  const { cut, keepOut } = nutPocket(pocket, printer);
  const membrane = -roof + printer.layer;
  const angle = pocket.towards;
  return {
    cuts: [
      prism(openingProfile(subject), membrane, 1),
      prism(openingProfile(subject), -thickness - 1, pocket.floor + 0.1),
      firstLayerRelief(subject),
      cut,
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
