import { heatSetBore } from "../../features/heat-set-bore.ts";
import type { Subject } from "../subject.ts";
import type { Joint } from "./joint.ts";

/** Returns the joint of a bolt into a heat-set insert from below: the bolt's pull draws it against its shoulder. */
export function insert({ derived, parts, printer }: Subject): Joint {
  const { hole, length } = parts.insert;
  const beyond = { diameter: derived.openingWidth, to: 0 };
  return {
    cuts: [heatSetBore({ hole, length, mouth: -derived.thickness, into: "up", beyond }, printer)],
    keepOuts: [],
    contacts: [],
    membranes: [],
  };
}
