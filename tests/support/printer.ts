import { type Printer, printerSchema } from "../../src/printing/printer.ts";

/** Returns the default printer with some settings changed. */
export function printerWith(settings: Readonly<Record<string, unknown>> = {}): Printer {
  return printerSchema.parse(settings);
}
