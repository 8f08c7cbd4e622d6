import { hasErrors } from "../../core/diagnostic.ts";
import { FAMILIES } from "../../parts/index.ts";
import type { PlacedPart } from "../machine.ts";
import { type Drawn, standing } from "./body.ts";
import type { Machine } from "./machine-data.ts";

/**
 * Returns the printed parts where they stand. A part with an error is not drawn: its shape means nothing. One with an
 * error that the plan accepts is made, and drawn.
 */
export function printedParts({ stage, printer }: Machine): Drawn[] {
  const isAccepted = (part: PlacedPart, name: string) =>
    stage.plan.accept.some((one) => one.part === part.name && one.check === name);
  return stage.parts.flatMap((part) => {
    const family = FAMILIES.find(({ name }) => name === part.family);
    const design = family?.design(part.parameters, printer(part.family));
    if (design === undefined || hasErrors(design.diagnostics.filter(({ name }) => !isAccepted(part, name)))) return [];
    const foot = stage.feet.find((choice) => choice.part.name === part.name);
    return design.pieces().flatMap((piece): Drawn[] => {
      // The other plates of a carriage lie on other faces of its bar, which is not drawn yet.
      if (part.family === "wheel-plate" && piece.name !== "") return [];
      return [
        {
          name: piece.name === "" ? part.name : `${part.name} ${piece.name}`,
          solid: standing(piece.solid, part.placement),
          moves: part.moves,
          belongsTo: [part.name, ...membersOf(part), ...(foot === undefined ? [] : [`screw ${foot.screw}`])],
          path: part.path,
          part: part.name,
        },
      ];
    });
  });
}

/** A foot stands on its screw's axis even before it is chosen for it. */
function membersOf({ path }: PlacedPart): string[] {
  return path[0] === "screws" ? [`screw ${path[1]}`] : [];
}
