import { LEAD_NUTS, type LeadNut } from "../catalogue/lead-nuts.ts";
import type { PlanScrew } from "./schema/index.ts";

/** A nut as it stands on its screw, its middle where the plan has the nuts. mm; `flange` 0 where none is listed. */
export interface StandingNut extends Pick<LeadNut, "body" | "length" | "flange" | "flangeThickness"> {
  readonly low: number;
  readonly high: number;
  /** As it is sold; undefined where no table has one for this screw. */
  readonly key: string | undefined;
}

/** A nut of which nothing is listed: body and length by the screw's diameter. Source: common practice. */
const USUAL = { body: 1.3, length: 1.9 };

/** Returns the nut on a screw: the one sold for it, else one for another screw of its diameter, else a plain one. */
export function leadNut({ screw }: PlanScrew, middle: number): StandingNut {
  const { diameter } = screw.values;
  const row = usualRow(screw.key, diameter);
  const plain = { body: USUAL.body * diameter, length: USUAL.length * diameter, flange: 0, flangeThickness: 0 };
  const { body, length, flange, flangeThickness } = row?.values ?? plain;
  const [low, high] = [middle - length / 2, middle + length / 2];
  return { body, length, flange, flangeThickness, low, high, key: row?.key };
}

function usualRow(key: string, diameter: number) {
  const screws = ({ forScrews }: LeadNut) => forScrews.split(", ");
  return (
    LEAD_NUTS.rows.find(({ values }) => screws(values).includes(key)) ??
    LEAD_NUTS.rows.find(({ values }) => screws(values).some((screw) => screw.startsWith(`Tr${diameter}x`)))
  );
}
