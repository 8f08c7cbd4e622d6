import type { Printer } from "../../printing/printer.ts";

/**
 * Returns how much wider all round an opening is drawn in the first layer, which spreads into it, mm. For faces on the
 * bed that carry a washer and so have no chamfer. Never more than one line, so that the next layer still has hold.
 * Source: design rule.
 */
export function bedOpening({ firstLayerSpread, line }: Printer): number {
  return Math.min(firstLayerSpread, line);
}
