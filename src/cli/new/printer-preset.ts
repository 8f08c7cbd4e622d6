import { complaintsOf } from "../../parts/complaints.ts";
import { HOW_TO_MEASURE } from "../../printing/calibration.ts";
import { printerSchema } from "../../printing/printer.ts";
import { printerFields } from "../explain/parameter-page.ts";
import { trouble } from "../io.ts";
import { chosenKeys } from "./chosen-keys.ts";
import { PRINTER_FIRST, printerText } from "./printer-text.ts";
import { refuseStageFlags } from "./stage-flags.ts";
import type { Wanted, Written } from "./wanted.ts";

/** Returns the file of a printer to fill in; undefined when the person stopped. */
export async function printerPreset(wanted: Wanted): Promise<Written | undefined> {
  refuseStageFlags("printer", wanted.given);
  const keys = { schema: printerSchema, fields: printerFields(), first: PRINTER_FIRST, how: HOW_TO_MEASURE };
  const chosen = await chosenKeys(keys, wanted);
  if (chosen === undefined) return undefined;
  const parsed = printerSchema.safeParse(chosen);
  const [wrong] = parsed.success ? [] : complaintsOf(parsed.error, { schema: printerSchema, data: chosen, under: [] });
  if (wrong !== undefined) throw trouble(`${wrong.says}; set ${wrong.set}`);
  return { text: printerText(chosen, wanted.place), notes: [] };
}
