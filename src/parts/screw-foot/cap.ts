import { INSERTS } from "../../catalogue/inserts.ts";
import { THREADS } from "../../catalogue/threads.ts";
import { row } from "../../core/table.ts";
import { disc, joined, opening, type Profile } from "../../geometry/profile.ts";
import { carve, cylinder, moved, prism, revolved, type Solid } from "../../geometry/solid.ts";
import { uprightHole } from "../../printing/compensation.ts";
import type { Printer } from "../../printing/printer.ts";
import type { KeepOut, Piece } from "../piece.ts";
import { CAP } from "./derive/cap.ts";
import { type Foot, onCircle } from "./modes/mounting.ts";

/** The cap's screws, and the countersink that takes their heads below the face, mm. */
export const CAP_SCREW = { thread: "M3", length: 8, sink: 6.2 };

/** Returns the insert for one of the cap's screws. */
export function capInsert(): { hole: number; length: number } {
  const { hole, length } = row(INSERTS, CAP_SCREW.thread).values;
  return { hole, length };
}

/** Returns the space of the cap over the foot: the foot itself must end below it. */
export function capKeepOut({ derived }: Foot): KeepOut {
  const { bearingTop, capTop } = derived;
  return { name: "bearing cap", body: prism(outlineOf(derived), bearingTop, capTop) };
}

/** Returns the ring that holds the bearing down. Its underside lies on the outer ring, a little proud of the rim. */
export function capPiece({ derived, printer }: Foot): Piece {
  const { housing, capBore, capTop, bearingTop, capCircle, bought } = derived;
  const places = CAP.azimuths.map((azimuth) => onCircle(capCircle / 2, azimuth));
  const bore = prism(opening(uprightHole(capBore, printer)), bearingTop - 1, capTop + 1);
  const sink = countersink(bearingTop, capTop, printer);
  const screws = places.map(([x, y]) => moved(sink, [x, y, 0]));
  const inner = (bought.bearing.innerLand + 1) / 2;
  return {
    name: "cap",
    title: "bearing cap",
    solid: carve(prism(outlineOf(derived), bearingTop, capTop), [bore, ...screws]),
    count: 1,
    keepOuts: [{ name: "inner ring and what turns with it", body: cylinder(inner, bearingTop, capTop + 20) }],
    contacts: [],
    measures: [
      { what: "thickness", expected: CAP.thick, tolerance: 0.1 },
      { what: "bore", expected: capBore, tolerance: 0.2 },
      { what: "outside diameter between the lobes", expected: 2 * housing, tolerance: 0.3 },
    ],
    wall: { error: 2 * printer.line, warning: 2 * printer.line },
  };
}

function outlineOf({ housing, capCircle }: Foot["derived"]): Profile {
  const lobes = CAP.azimuths.map((azimuth) => disc(CAP.lobe, onCircle(capCircle / 2, azimuth)));
  return joined(disc(housing), ...lobes);
}

function countersink(bottom: number, top: number, printer: Printer): Solid {
  const hole = uprightHole(row(THREADS, CAP_SCREW.thread).values.mediumHole, printer) / 2;
  const head = uprightHole(CAP_SCREW.sink, printer) / 2;
  return revolved(
    [
      [0, bottom - 1],
      [hole, bottom - 1],
      [hole, top - (head - hole)],
      [head, top],
      [head, top + 1],
      [0, top + 1],
    ],
    "around",
    head,
  );
}
