import { moved, type Solid, turned } from "../../geometry/solid.ts";
import { derive } from "../../parts/wheel-plate/derive.ts";
import type { Parameters } from "../../parts/wheel-plate/parameters.ts";
import type { PlacedPart } from "../machine.ts";
import { type Drawn, standing } from "./body.ts";
import type { Machine, Print } from "./machine-data.ts";

/** Returns the printed parts where they stand, each piece of them as a body. */
export function printedParts(machine: Machine): Drawn[] {
  return machine.prints.flatMap((print) => {
    const { part, pieces } = print;
    return pieces.map(
      ({ name, solid }): Drawn => ({
        name: name === "" ? part.name : `${part.name} ${name}`,
        solid: standing(pieceInPart(machine, print, name)(solid), part.placement),
        ...ofPart(machine, part),
        part: part.name,
      }),
    );
  });
}

/** Returns heads, washers and nuts of the bolts that hold the printed parts, as far as they stand out of them. */
export function fasteners(machine: Machine): Drawn[] {
  return machine.prints.flatMap((print) =>
    print.pieces.flatMap((piece) =>
      piece.keepOuts
        .filter(({ fastener }) => fastener === true)
        .map(({ name, body }): Drawn => {
          const of = piece.name === "" ? print.part.name : `${print.part.name} ${piece.name}`;
          const solid = standing(pieceInPart(machine, print, piece.name)(body), print.part.placement);
          return { name: `${name} of ${of}`, hardwareOf: of, solid, ...ofPart(machine, print.part) };
        }),
    ),
  );
}

/** The plates of a carriage are modelled wheel side up: the second is turned over, on the far face of the bar. */
function pieceInPart({ printer }: Machine, { part }: Print, piece: string): (solid: Solid) => Solid {
  if (part.family !== "wheel-plate" || piece === "") return (solid) => solid;
  const { sandwichGap, faceDistance, stagger } = derive(part.parameters as Parameters, printer(part.family));
  const [along, away] = piece === "far" ? [0, sandwichGap] : [stagger, faceDistance];
  return (solid) => moved(turned(solid, "y", 180), [0, along, away]);
}

function ofPart({ stage }: Machine, { name, path, moves }: PlacedPart): Pick<Drawn, "moves" | "belongsTo" | "path"> {
  const foot = stage.feet.find((choice) => choice.part.name === name);
  // A foot stands on its screw's axis even before it is chosen for it.
  const screws = path[0] === "screws" ? [`screw ${path[1]}`] : [];
  return { moves, belongsTo: [name, ...screws, ...(foot === undefined ? [] : [`screw ${foot.screw}`])], path };
}
