import { z } from "zod";
import { type Printer, printerSchema } from "../printing/printer.ts";
import { complaintsOf } from "./issue.ts";
import { FORMAT, locatedIn, newerFormat, type Read } from "./part-preset.ts";
import type { YamlFile } from "./read.ts";

const schema = z.strictObject({
  format: z.literal(FORMAT),
  printer: z.string("expected the printer's name"),
  settings: z.record(z.string(), z.unknown(), "expected settings, one per line"),
});

/** Returns the calibration in a YAML file, with every complaint about it. */
export function readPrinterPreset(file: YamlFile): Read<Printer> {
  if (file.complaints.length > 0) return { value: undefined, complaints: file.complaints };
  const newer = newerFormat(file);
  if (newer !== undefined) return { value: undefined, complaints: [locatedIn(file, newer)] };
  const outer = schema.safeParse(file.data);
  if (!outer.success) {
    const complaints = complaintsOf(outer.error, [], Object.keys(schema.shape));
    return { value: undefined, complaints: complaints.map((one) => locatedIn(file, one)) };
  }
  const parsed = printerSchema.safeParse(outer.data.settings);
  if (parsed.success) return { value: parsed.data, complaints: [] };
  const complaints = complaintsOf(parsed.error, ["settings"], Object.keys(printerSchema.shape));
  const named = complaints.map((one) => ({
    ...one,
    name: one.says.endsWith("is not a key here") ? one.name : "printer-setting-out-of-range",
  }));
  return { value: undefined, complaints: named.map((one) => locatedIn(file, one)) };
}
