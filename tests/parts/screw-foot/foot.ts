import type { Diagnostic } from "../../../src/core/diagnostic.ts";
import { screwFoot } from "../../../src/parts/screw-foot/index.ts";
import { printerWith } from "../../support/printer.ts";

type Change = Readonly<Record<string, unknown>>;

/** Works out a foot from what a preset would say; printer settings apart. */
export function footWith(change: Change, printer: Parameters<typeof printerWith>[0] = {}) {
  return screwFoot.design(screwFoot.schema.parse(change), printerWith(printer));
}

/** Returns what a check says of a foot; undefined when it says nothing. */
export function finding(name: string, change: Change, printer: Parameters<typeof printerWith>[0] = {}) {
  return footWith(change, printer).diagnostics.find((one): one is Diagnostic => one.name === name);
}

/** Returns the names of the errors of a foot. */
export function errorsOf(change: Change, printer: Parameters<typeof printerWith>[0] = {}): string[] {
  return footWith(change, printer)
    .diagnostics.filter(({ level }) => level === "error")
    .map(({ name }) => name);
}

/** Returns a derived number by its symbol. */
export function numberOf(symbol: string, change: Change): number {
  return footWith(change).dimensions.find((one) => one.symbol === symbol)?.value ?? Number.NaN;
}
