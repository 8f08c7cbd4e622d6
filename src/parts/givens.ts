import type { Given } from "../core/dimension.ts";
import type { Item } from "../core/item.ts";
import { metaOf } from "../core/parameter.ts";
import type { Values } from "../core/table.ts";
import type { Printer } from "../printing/printer.ts";
import { printerSchema } from "../printing/printer.ts";
import type { ParameterSchema } from "./family.ts";

/** Returns every number among the parameters, under its symbol, so that formulas may name it. */
export function parameterGivens(schema: ParameterSchema, given: Readonly<Record<string, unknown>>): Given[] {
  return Object.entries(schema.shape).flatMap(([name, field]) => {
    const value = given[name];
    const { symbol, unit, description } = metaOf(field as never);
    return typeof value === "number" && symbol !== ""
      ? [{ symbol, value, unit, meaning: description, source: "your preset" }]
      : [];
  });
}

/** Returns the printer's settings under their symbols. */
export function printerGivens(printer: Printer): Given[] {
  return parameterGivens(printerSchema as never, printer).map((given) => ({
    ...given,
    source: "the printer's calibration",
  }));
}

/** Returns the values of a bought item under the symbols of its table, `prefix` before each where they would clash. */
export function itemGivens<V extends Values>(
  item: Item<V>,
  fields: Readonly<Record<string, { symbol: string; unit: Given["unit"]; meaning: string }>>,
  rename: Readonly<Record<string, string>> = {},
): Given[] {
  return Object.entries(fields).flatMap(([name, field]) => {
    const value = item.values[name];
    const source = item.stated.includes(name) ? "your preset" : (item.row?.source ?? "your preset");
    return typeof value === "number"
      ? [
          {
            symbol: rename[name] ?? field.symbol,
            value,
            unit: field.unit,
            meaning: `${item.key}: ${field.meaning}`,
            source,
          },
        ]
      : [];
  });
}
