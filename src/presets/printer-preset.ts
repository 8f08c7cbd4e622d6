import * as z from "zod";
import type { DefectName } from "../core/defects.ts";
import type { Path } from "../core/diagnostic.ts";
import { meaning } from "../core/parameter.ts";
import { complaintsOf } from "../parts/complaints.ts";
import { type Printer, printerSchema } from "../printing/printer.ts";
import { format, locatedIn, maybeOther, type Read, wrongFile } from "./preset-file.ts";
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
  const { lost = [], complaints: told } = file;
  if (told.length > 0 && (lost.length === 0 || maybeOther(file, "printer")))
    return { value: undefined, complaints: told };
  const wrong = wrongFile(file, "printer");
  if (wrong !== undefined) return { value: undefined, complaints: [...told, locatedIn(file, wrong)] };
  const outer = printerFileSchema.safeParse(file.data);
  if (!outer.success) {
    const complaints = complaintsOf(outer.error, { schema: printerFileSchema, data: file.data, under: [], lost });
    return { value: undefined, complaints: [...told, ...complaints.map((one) => locatedIn(file, one))] };
  }
  const { value, complaints } = readSettings(file, outer.data.settings, ["settings"]);
  return { value: told.length > 0 ? undefined : value, complaints: [...told, ...complaints] };
}

/** Returns a printer's settings that stand in a file under the path `under`. */
export function readSettings(file: YamlFile, settings: unknown, under: Path): Read<Printer> {
  const parsed = printerSchema.safeParse(settings);
  if (parsed.success) return { value: parsed.data, complaints: [] };
  const complaints = complaintsOf(parsed.error, {
    schema: printerSchema,
    data: settings,
    under,
    lost: file.lost ?? [],
    name: "printer-setting-out-of-range" satisfies DefectName,
  });
  return { value: undefined, complaints: complaints.map((one) => locatedIn(file, one)) };
}
