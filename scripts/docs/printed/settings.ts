import * as z from "zod";
import { parameters, text, texts } from "./shapes.ts";

/** What a printer's file holds, and the test piece it is measured on. */
export const SETTINGS = z.strictObject({
  kind: z.literal("printer"),
  settings: parameters,
  testPiece: z.strictObject({ sketch: text, steps: texts, howToMeasure: z.record(text, text) }),
});
