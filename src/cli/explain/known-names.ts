import { SOURCES } from "../../core/bibliography.ts";
import { CALCULATION_DEFECTS } from "../../core/calculation-defects.ts";
import { DEFECTS } from "../../core/defects.ts";
import { CALCULATIONS } from "../../mechanics/index.ts";
import type { AnyFamily } from "../../parts/family.ts";
import { FAMILIES } from "../../parts/index.ts";
import { SEARCHES } from "../../stage/searches.ts";
import { STAGE_DEFECTS } from "../../stage/stage-defects.ts";
import { ALL_TABLES } from "../stock/tables.ts";
import { PRINTER, printerFields } from "./parameter-page.ts";

/** Returns every name that `explain` knows, for hints; behind the prefix of a family only its own, without prefix. */
export function knownNames(prefix?: string): string[] {
  const own = (family: AnyFamily) => [
    ...Object.keys(family.open.dimensions),
    ...Object.keys(family.schema.shape),
    ...family.checks.map(({ name }) => name),
  ];
  const chosen = FAMILIES.find(({ name }) => name === prefix);
  if (chosen !== undefined) return unique(own(chosen));
  const settings = printerFields().map(({ key }) => key);
  if (prefix === PRINTER) return settings;
  return unique([
    ...FAMILIES.flatMap(own),
    ...Object.keys(DEFECTS),
    ...Object.keys(CALCULATION_DEFECTS),
    ...Object.keys(STAGE_DEFECTS),
    PRINTER,
    ...CALCULATIONS.map(({ name }) => name),
    ...Object.keys(SEARCHES),
    ...Object.keys(SOURCES),
    ...settings,
    ...FAMILIES.map(({ name }) => name),
    ...ALL_TABLES.map(({ name }) => name),
    ...FAMILIES.flatMap((family) => own(family).map((name) => `${family.name}.${name}`)),
  ]);
}

const unique = (names: readonly string[]) => [...new Set(names)];
