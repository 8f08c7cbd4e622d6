import { hullSolid, moved, prism, revolved, type Solid } from "../../geometry/solid.ts";
import { uprightHole } from "../../printing/compensation.ts";
import type { Printer } from "../../printing/printer.ts";
import type { Feature } from "../feature.ts";
import { type Sweep, sweepEnds, sweepRadius, swept } from "./sweep.ts";

/** Lead-in at the rim, mm at 45 degrees. */
const LEAD = 1;

/** A rim that keeps a spring and its washer in place while both may slide. All mm; the floor is z = 0. */
export interface SpringCup {
  /** Wanted width inside, between the walls. */
  readonly inside: number;
  readonly wall: number;
  readonly depth: number;
  readonly sweep: Sweep;
  readonly springOutside: number;
  /** Longest the spring gets, and the washer it stands on. */
  readonly springLength: number;
  readonly washerOutside: number;
  readonly washerThickness: number;
}

/** Returns the cup's ring, what is cut out of it, and the room of spring and washer over their slide. */
export function springCup(cup: SpringCup, printer: Printer): Feature {
  const { inside, wall, depth, sweep, springOutside, springLength, washerOutside, washerThickness } = cup;
  const room = uprightHole(inside, printer) / 2;
  // The ring starts inside the plate, so that the two are one body and not two that touch.
  const ring = prism(swept(inside / 2 + wall, sweep), -1, depth);
  return {
    adds: [ring],
    cuts: [prism(swept(room, sweep, "opening"), 0, depth + 1), leadIn(room, depth, sweep)],
    keepOuts: [
      { name: "washer under the spring", body: prism(swept(washerOutside / 2, sweep), 0, washerThickness) },
      {
        name: "spring",
        body: prism(swept(springOutside / 2 + 0.4, sweep), washerThickness, washerThickness + springLength),
      },
    ],
  };
}

/** A cone at each end of the slide, and the hull between them. */
function leadIn(room: number, depth: number, sweep: Sweep): Solid {
  const radius = sweepRadius(room, sweep);
  const cone = revolved(
    [
      [0, depth - LEAD],
      [radius, depth - LEAD],
      [radius + LEAD + 0.1, depth + 0.1],
      [0, depth + 0.1],
    ],
    "around",
  );
  const cones = sweepEnds(sweep).map(([x, y]) => moved(cone, [x, y, 0]));
  const only = cones[0];
  return cones.length === 1 && only !== undefined ? only : hullSolid(...cones);
}
