import type * as z from "zod";
import type { Diagnostic } from "../core/diagnostic.ts";
import type { Dimension } from "../core/dimension.ts";
import { recently } from "../core/recently.ts";
import type { Printer } from "../printing/printer.ts";
import { runChecks } from "./check.ts";
import type { AnyFamily, Case, Design, Explained, Family, ParameterSchema } from "./family.ts";
import { unmeasured } from "./unmeasured.ts";

/** Designs of one family that are kept: more than the machine has parts of it. */
const KEPT = 32;

/** Closes a family over its types: the compiler has held its pieces together, and lists need not know them. */
export function defineFamily<Schema extends ParameterSchema, Derived extends object>(
  family: Family<Schema, Derived>,
): AnyFamily {
  const { name, title, purpose, orientation, sketch, schema, checks } = family;
  const recent = recently<Design>(KEPT);
  return {
    name,
    title,
    purpose,
    orientation,
    sketch,
    schema,
    checks: checks as AnyFamily["checks"],
    open: family as unknown as AnyFamily["open"],
    design: (given, printer, mark = "") =>
      recent(JSON.stringify([given, printer, mark]), () => designOf(family, given as z.output<Schema>, printer, mark)),
  };
}

function designOf<Schema extends ParameterSchema, Derived extends object>(
  family: Family<Schema, Derived>,
  given: z.output<Schema>,
  printer: Printer,
  mark: string,
): Design {
  const each: Case<z.output<Schema>, Derived> = { given, derived: family.derive(given, printer), printer, mark };
  let drawn: ReturnType<typeof family.pieces> | undefined;
  const diagnostics: Diagnostic[] = [...runChecks(family.checks, each), ...unmeasured(given)];
  return {
    family: family.name,
    title: family.title,
    parameters: given,
    material: family.material(given),
    orientation: family.orientation,
    solid: family.solid ?? false,
    dimensions: explainedOf(family, each),
    givens: family.givens(each),
    diagnostics,
    hardware: family.hardware(each),
    companions: family.companions?.(each) ?? [],
    cautions: family.cautions(each),
    limits: family.limits(each),
    pieces: () => {
      drawn ??= family.pieces(each);
      return drawn;
    },
  };
}

function explainedOf<Schema extends ParameterSchema, Derived extends object>(
  family: Family<Schema, Derived>,
  { given, derived }: Case<z.output<Schema>, Derived>,
): Explained[] {
  const named = Object.entries(family.dimensions) as [string, Dimension<z.output<Schema>>][];
  return named.map(([key, { symbol, unit, meaning, formula, source }]) => ({
    key,
    symbol,
    unit,
    meaning,
    source,
    value: (derived as Record<string, number>)[key] ?? Number.NaN,
    formula: typeof formula === "string" ? formula : formula(given),
  }));
}
