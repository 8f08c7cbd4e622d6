import { SOURCES, type SourceKey } from "../../core/bibliography.ts";
import type { Calculation } from "../../core/calculation.ts";
import { nearest } from "../../core/nearest.ts";
import { CALCULATIONS } from "../../mechanics/index.ts";
import type { AnyFamily, Design, Explained } from "../../parts/family.ts";
import { FAMILIES } from "../../parts/index.ts";
import type { Printer } from "../../printing/printer.ts";
import { calculationLines, checkLines, sourceLines } from "../explain/page.ts";
import { quantityLines } from "../explain/quantity.ts";
import { EXIT, type Io, trouble } from "../io.ts";

interface ExplainArgs {
  readonly what: string;
  /** Family and parsed parameters of a preset, when one was named. */
  readonly family?: string;
  readonly parameters?: Readonly<Record<string, unknown>>;
  readonly json: boolean;
}

/** Something that can be explained, as words and as data. */
interface Page {
  readonly lines: readonly string[];
  readonly data: object;
}

/** Explains a number of a part, a calculation, a check or a source. Returns the exit code. */
export function explain(args: ExplainArgs, io: Io, printer: Printer): number {
  const pages = [...quantities(args, printer), ...calculations(args.what), ...checks(args.what), ...sources(args.what)];
  if (pages.length === 0) throw trouble(unknown(args, printer));
  if (args.json)
    io.out(
      JSON.stringify(
        pages.map(({ data }) => data),
        undefined,
        2,
      ),
    );
  else
    pages.forEach(({ lines }, index) => {
      for (const line of index === 0 ? lines : ["", ...lines]) io.out(line);
    });
  return EXIT.done;
}

/** Every family that is meant: the one of the preset, the one before the point, or all. */
function designs(
  { what, family, parameters = {} }: ExplainArgs,
  printer: Printer,
): { family: AnyFamily; design: Design; name: string }[] {
  const prefix = FAMILIES.find((one) => what.startsWith(`${one.name}.`))?.name;
  const name = prefix === undefined ? what : what.slice(prefix.length + 1);
  return FAMILIES.filter((one) => (prefix ?? family ?? one.name) === one.name).map((one) => {
    const given = one.name === family ? parameters : one.schema.parse({});
    return { family: one, design: one.design(given, printer), name };
  });
}

function quantities(args: ExplainArgs, printer: Printer): Page[] {
  return designs(args, printer).flatMap(({ design, name }) => {
    const fits = ({ key, symbol }: Explained) => key === name || symbol === name;
    return design.dimensions.filter(fits).map((quantity) => ({
      lines: quantityLines(design, quantity),
      data: { kind: "number", family: design.family, ...quantity },
    }));
  });
}

function calculations(what: string): Page[] {
  return (CALCULATIONS as readonly unknown[] as readonly Calculation[])
    .filter(({ name }) => name === what)
    .map((one) => ({ lines: calculationLines(one), data: { kind: "calculation", ...one } }));
}

function checks(what: string): Page[] {
  return FAMILIES.flatMap((family) =>
    family.checks
      .filter(({ name }) => name === what)
      .map((check) => ({
        lines: checkLines(family, check),
        data: { kind: "check", family: family.name, name: check.name, why: check.why, trips: check.trips },
      })),
  );
}

function sources(what: string): Page[] {
  if (!(what in SOURCES)) return [];
  const key = what as SourceKey;
  return [{ lines: sourceLines(key), data: { key, ...SOURCES[key] } }];
}

function unknown(args: ExplainArgs, printer: Printer): string {
  const numbers = designs(args, printer).flatMap(({ design }) =>
    design.dimensions.flatMap(({ key }) => [key, `${design.family}.${key}`]),
  );
  const names = [
    ...CALCULATIONS.map(({ name }) => name),
    ...FAMILIES.flatMap((family) => family.checks.map(({ name }) => name)),
  ];
  const close = nearest(args.what, [...numbers, ...names, ...Object.keys(SOURCES)]);
  return `nothing is called ${args.what}; ${close === undefined ? "tramwright parts <family> lists numbers and checks" : `the nearest is ${close}`}`;
}
