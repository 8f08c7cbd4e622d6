import * as z from "zod";
import type { DefectName } from "../core/defects.ts";
import type { Diagnostic } from "../core/diagnostic.ts";
import { complaintsOf, unresolved } from "../parts/complaints.ts";
import { type Printer, printerSchema } from "../printing/printer.ts";
import { format, locatedIn, newerFormat, noKeys, type Read } from "./part-preset.ts";
import type { YamlFile } from "./read.ts";

const schema = z.strictObject({
  format,
  printer: z.string("expected the printer's name"),
  settings: z.record(z.string(), z.unknown(), "expected settings, one on each line below it"),
});

/** Returns the calibration in a YAML file, with every complaint about it. */
export function readPrinterPreset(file: YamlFile): Read<Printer> {
  if (file.complaints.length > 0) return { value: undefined, complaints: file.complaints };
  const wrong = noKeys(file) ?? newerFormat(file) ?? partInstead(file);
  if (wrong !== undefined) return { value: undefined, complaints: [locatedIn(file, wrong)] };
  const outer = schema.safeParse(file.data);
  if (!outer.success) {
    const complaints = complaintsOf(outer.error, { schema, data: file.data, under: [] });
    return { value: undefined, complaints: complaints.map((one) => locatedIn(file, one)) };
  }
  const parsed = printerSchema.safeParse(outer.data.settings);
  if (parsed.success) return { value: parsed.data, complaints: [] };
  const complaints = complaintsOf(parsed.error, {
    schema: printerSchema,
    data: outer.data.settings,
    under: ["settings"],
    name: "printer-setting-out-of-range" satisfies DefectName,
  });
  return { value: undefined, complaints: complaints.map((one) => locatedIn(file, one)) };
}

/** Returns a complaint when the file describes a part, not a printer. */
function partInstead({ data, name }: YamlFile): Diagnostic | undefined {
  const keys = Object.keys(data as object);
  if (!keys.includes("part") || keys.includes("settings")) return undefined;
  const set = `a file with printer: and settings:; ${name} is a preset to make`;
  return unresolved(["part"], "this file describes a part, and a printer is wanted", set);
}
