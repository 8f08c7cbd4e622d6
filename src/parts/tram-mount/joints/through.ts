import { prism } from "../../../geometry/solid.ts";
import { swept } from "../../features/sweep.ts";
import type { Contact, KeepOut } from "../../piece.ts";
import type { Subject } from "../subject.ts";
import { firstLayerRelief, type Joint, openingArea, openingProfile } from "./joint.ts";

/** Play of the wheel's rim against everything, on the radius, mm. */
const WHEEL_PLAY = 1;

/** Returns the joint of a bolt that goes through the bracket: a washer slides on the underside, wheel or head below. */
export function through(subject: Subject): Joint {
  const { derived } = subject;
  return {
    cuts: [prism(openingProfile(subject), -derived.thickness - 1, 1), firstLayerRelief(subject)],
    keepOuts: below(subject),
    contacts: [sliderPad(subject)],
    membranes: [],
  };
}

function below(subject: Subject): KeepOut[] {
  const { given, derived, parts, sweep } = subject;
  const bed = -derived.thickness;
  const { outside, thickness } = parts.sliderWasher;
  const under = bed - thickness;
  const washer = { name: "slider washer", body: prism(swept(outside / 2, sweep), under, bed) };
  const turner =
    given.joint === "thumb-wheel"
      ? {
          name: "thumb wheel",
          body: prism(swept(parts.wheel / 2 + WHEEL_PLAY, sweep), under - derived.wheelHeight, under),
        }
      : {
          name: "head of the tram bolt",
          body: prism(swept(parts.hexHead.acrossFlats / Math.sqrt(3), sweep), under - parts.hexHead.headHeight, under),
        };
  return [washer, turner];
}

/** A square of the washer's size round the opening: all of it is flat at every place of the slide. */
function sliderPad(subject: Subject): Contact {
  const half = subject.parts.sliderWasher.outside / 2;
  return {
    name: "slider pad",
    area: (2 * half) ** 2 - openingArea(subject),
    point: [0, 0, -subject.derived.thickness],
    normal: [0, 0, -1],
    reach: half,
  };
}
