import * as z from "zod";
import type { DefectName } from "../core/defects.ts";
import type { Path } from "../core/diagnostic.ts";
import { meaning } from "../core/parameter.ts";
import { complaintsOf } from "../parts/complaints.ts";
import { type Printer, printerSchema } from "../printing/printer.ts";
import { format, locatedIn, type Read, wrongFile } from "./preset-file.ts";
import type { YamlFile } from "./read.ts";

/** The outer keys of a printer's file. */
export const printerFileSchema = z.strictObject({
  format,
  printer: meaning(z.string("expected the printer's name"), "name of the printer, its nozzle and material"),
  settings: meaning(
    z.record(z.string(), z.unknown(), "expected settings, one on each line below it"),
    "what was read off the slicer and measured on a test piece",
  ),
});

/** Returns the calibration in a YAML file, with every complaint about it. */
export function readPrinterPreset(file: YamlFile): Read<Printer> {
  if (file.complaints.length > 0) return { value: undefined, complaints: file.complaints };
  const wrong = wrongFile(file, "printer");
  if (wrong !== undefined) return { value: undefined, complaints: [locatedIn(file, wrong)] };
  const outer = printerFileSchema.safeParse(file.data);
  if (!outer.success) {
    const complaints = complaintsOf(outer.error, { schema: printerFileSchema, data: file.data, under: [] });
    return { value: undefined, complaints: complaints.map((one) => locatedIn(file, one)) };
  }
  return readSettings(file, outer.data.settings, ["settings"]);
}

/** Returns a printer's settings that stand in a file under the path `under`. */
export function readSettings(file: YamlFile, settings: unknown, under: Path): Read<Printer> {
  const parsed = printerSchema.safeParse(settings);
  if (parsed.success) return { value: parsed.data, complaints: [] };
  const complaints = complaintsOf(parsed.error, {
    schema: printerSchema,
    data: settings,
    under,
    name: "printer-setting-out-of-range" satisfies DefectName,
  });
  return { value: undefined, complaints: complaints.map((one) => locatedIn(file, one)) };
}
