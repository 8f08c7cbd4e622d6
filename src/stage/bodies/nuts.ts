import { revolved, type Solid } from "../../geometry/solid.ts";
import { leadNut, type StandingNut } from "../lead-nut.ts";
import { at, type Drawn } from "./body.ts";
import type { Machine } from "./machine-data.ts";

/** Returns the nuts on the screws, their middle where the plan has it, the flange above. */
export function nuts({ stage, feet }: Machine): Drawn[] {
  return feet.flatMap(({ choice, at: place }): Drawn[] => {
    const screw = stage.plan.screws[choice.screw];
    if (screw === undefined) return [];
    const solid = at(nutSolid(leadNut(screw, stage.plan.travel.nut)), place);
    const path = ["screws", choice.screw];
    return [{ name: `nut of screw ${choice.screw}`, solid, moves: true, belongsTo: [`screw ${choice.screw}`], path }];
  });
}

function nutSolid({ body, flange, flangeThickness, low, high }: StandingNut): Solid {
  const under = high - flangeThickness;
  const brim: [number, number][] =
    flange > 0
      ? [
          [body / 2, under],
          [flange / 2, under],
          [flange / 2, high],
        ]
      : [[body / 2, high]];
  return revolved([[0, low], [body / 2, low], ...brim, [0, high]], "inside");
}
