import { LEAD_NUTS, type LeadNut } from "../../catalogue/lead-nuts.ts";
import { revolved, type Solid } from "../../geometry/solid.ts";
import type { PlanScrew } from "../schema/index.ts";
import { at, type Drawn } from "./body.ts";
import type { Machine } from "./machine-data.ts";

/** A nut of which nothing is listed: body and length by the screw's diameter. Source: common practice. */
const USUAL = { body: 1.3, length: 1.9 };

/** Returns the nuts on the screws, their middle where the plan has it, the flange above. */
export function nuts({ stage, feet }: Machine): Drawn[] {
  return feet.flatMap(({ choice, at: place }): Drawn[] => {
    const screw = stage.plan.screws[choice.screw];
    if (screw === undefined) return [];
    const solid = at(nutSolid(screw, stage.plan.travel.nut), place);
    const path = ["screws", choice.screw];
    return [{ name: `nut of screw ${choice.screw}`, solid, moves: true, belongsTo: [`screw ${choice.screw}`], path }];
  });
}

function nutSolid({ screw }: PlanScrew, middle: number): Solid {
  const { diameter } = screw.values;
  const nut = usualNut(screw.key, diameter);
  const { body, length, flange, flangeThickness } = nut ?? {
    body: USUAL.body * diameter,
    length: USUAL.length * diameter,
    flange: 0,
    flangeThickness: 0,
  };
  const [low, high] = [middle - length / 2, middle + length / 2];
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

/** The nut sold for the screw, else one for another screw of its diameter. */
function usualNut(key: string, diameter: number): LeadNut | undefined {
  const screws = ({ forScrews }: LeadNut) => forScrews.split(", ");
  const rows = LEAD_NUTS.rows.map(({ values }) => values);
  return (
    rows.find((nut) => screws(nut).includes(key)) ??
    rows.find((nut) => screws(nut).some((screw) => screw.startsWith(`Tr${diameter}x`)))
  );
}
