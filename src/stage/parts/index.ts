import type { PlacedPart, PrinterOf, Stage } from "../machine.ts";

/** Where the parts of one family come from. A part that is added later joins by one entry in `SOURCES`. */
export interface PartSource {
  readonly family: string;
  readonly from: (stage: Omit<Stage, "parts">, printer: PrinterOf) => readonly PlacedPart[];
}

export const SOURCES: readonly PartSource[] = [
  { family: "screw-foot", from: ({ feet }) => feet.map(({ part }) => part) },
];
