import { SOURCES, type SourceKey } from "../../core/bibliography.ts";
import { nearest } from "../../core/nearest.ts";
import { CALCULATIONS } from "../../mechanics/index.ts";
import type { AnyFamily, Design } from "../../parts/family.ts";
import { FAMILIES } from "../../parts/index.ts";
import type { Printer } from "../../printing/printer.ts";
import type { Stage } from "../../stage/index.ts";
import { calculationPage } from "../explain/calculation-page.ts";
import { checkPage } from "../explain/check-page.ts";
import { defectPages } from "../explain/defect-page.ts";
import { factNames, factPages, searchPages } from "../explain/fact-page.ts";
import { hanging } from "../explain/hanging.ts";
import { knownNames } from "../explain/known-names.ts";
import { machinePartPages } from "../explain/machine-part-page.ts";
import { nearestWords } from "../explain/nearest-words.ts";
import { numberPage } from "../explain/number-page.ts";
import type { Page } from "../explain/page.ts";
import { familyFields, PRINTER, parameterPage, printerFields, settingPage } from "../explain/parameter-page.ts";
import { pointerPages } from "../explain/pointer-pages.ts";
import { printerPage } from "../explain/printer-page.ts";
import { sourcePage } from "../explain/source-page.ts";
import { EXIT, type Io, trouble } from "../io.ts";

interface ExplainArgs {
  /** What to explain, alone or behind a family: `seat`, `screw-foot.seat`. */
  readonly what: string;
  /** Family and parsed parameters of a preset, when one was named. */
  readonly family?: string;
  readonly parameters?: Readonly<Record<string, unknown>>;
  /** The machine of a plan, when one was named. */
  readonly stage?: Stage;
  /** Pages of the machine's numbers that have the same name as one of the part's. */
  readonly before?: readonly Page[];
  readonly json: boolean;
}

/** What was asked for, the family split off. */
interface Asked {
  readonly prefix: string | undefined;
  readonly name: string;
}

/** A family with its numbers worked out, for a preset or for the defaults. */
interface Worked {
  readonly family: AnyFamily;
  readonly design: Design;
  readonly preset: boolean;
}

/** Explains a number, parameter, calculation, check, defect, source or the printer's file. Returns the exit code. */
export function explain(args: ExplainArgs, io: Io, printer: Printer): number {
  const asked = split(args.what.trim());
  if (asked.name === "")
    throw trouble("explain needs the name of a number, a parameter, a calculation, a check or a source");
  const pages = pagesOf(asked, args, printer);
  if (pages.length === 0) {
    throw trouble(`${args.what} is not known; ${hint(asked, args.stage)}`);
  }
  if (args.json) {
    io.out(
      JSON.stringify(
        pages.map(({ data }) => data),
        undefined,
        2,
      ),
    );
    return EXIT.done;
  }
  const said = pages.flatMap(({ title, lines }, index) => [
    ...(index === 0 ? [] : [""]),
    ...hanging("", title).map((line) => io.paint("bold", line)),
    ...lines,
  ]);
  for (const line of [...said, ...((args.before ?? []).length === 0 ? choice(pages, asked.name) : [])]) io.out(line);
  return EXIT.done;
}

/** Only a known family, or the printer, is a prefix: other names may hold points. */
function split(what: string): Asked {
  const prefix = [...FAMILIES.map(({ name }) => name), PRINTER].find((name) => what.startsWith(`${name}.`));
  return { prefix, name: prefix === undefined ? what : what.slice(prefix.length + 1) };
}

/** Returns the nearest name: of another family, when the name itself is right; else within the family asked for. */
function hint({ prefix, name }: Asked, stage: Stage | undefined): string {
  if (stage !== undefined) {
    const facts = factNames(stage);
    const close = nearest(name, facts) ?? facts.find((one) => one.includes(name));
    return close === undefined ? "tramwright report <plan> lists the machine's numbers" : `the nearest is ${close}`;
  }
  if (prefix === undefined)
    return nearestWords(name, knownNames(), "tramwright parts <family> lists its parameters, numbers and checks");
  const elsewhere = knownNames().filter((known) => known === name || known.endsWith(`.${name}`));
  const [first] = elsewhere.length > 1 ? elsewhere.filter((known) => known !== name) : elsewhere;
  if (first !== undefined) return `the nearest is ${first}`;
  return nearestWords(name, knownNames(prefix)).replace("the nearest is ", `the nearest is ${prefix}.`);
}

function pagesOf({ prefix, name }: Asked, args: ExplainArgs, printer: Printer): Page[] {
  const what = args.what.trim();
  const facts = args.stage === undefined ? [] : [...factPages(args.stage, what), ...machinePartPages(args.stage, what)];
  if (facts.length > 0) return facts;
  const worked = workedFamilies(prefix, args, printer);
  const own = worked.flatMap((one) => familyPages(one, name));
  if (prefix !== undefined && prefix !== PRINTER) return [...(args.before ?? []), ...own];
  const settings = printerFields()
    .filter(({ key, symbol }) => key === name || symbol === name)
    .map((field) => settingPage(FAMILIES, field, printer));
  if (prefix === PRINTER) return settings;
  const calculations = CALCULATIONS.filter((one) => one.name === name).map(calculationPage);
  const sources = Object.hasOwn(SOURCES, name) ? [sourcePage(name as SourceKey)] : [];
  const printers = name === PRINTER ? [printerPage()] : [];
  return [
    ...own,
    ...defectPages(name),
    ...calculations,
    ...searchPages(name),
    ...sources,
    ...printers,
    ...settings,
    ...pointerPages(name),
  ];
}

/** Every family that is meant, worked out: the one before the point, else that of the preset, else all. */
function workedFamilies(prefix: string | undefined, args: ExplainArgs, printer: Printer): Worked[] {
  const chosen = prefix ?? args.family ?? "";
  const meant = FAMILIES.filter(({ name }) => chosen === "" || name === chosen);
  return meant.map((family) => {
    const preset = family.name === args.family && args.parameters !== undefined;
    const given = preset ? (args.parameters ?? {}) : family.schema.parse({});
    return { family, design: family.design(given, printer), preset };
  });
}

/** The numbers, parameters and checks of one family that bear the name. */
function familyPages({ family, design, preset }: Worked, name: string): Page[] {
  const named = ({ key, symbol }: { readonly key: string; readonly symbol: string }) => key === name || symbol === name;
  return [
    ...design.dimensions.filter(named).map((quantity) => numberPage(family, design, quantity, preset)),
    ...familyFields(family, design)
      .filter(named)
      .map((field) => parameterPage(family, design, field, preset)),
    ...family.checks.filter((check) => check.name === name).map((check) => checkPage(family, check)),
  ];
}

/** Tells how to ask for one page alone, when several have the name. */
function choice(pages: readonly Page[], asked: string): string[] {
  const names = [...new Set(pages.map(({ name }) => name))];
  const alone = names.filter((name) => name !== asked);
  return names.length < 2 ? [] : ["", ...hanging("", `Several have this name. Alone: ${alone.join(", ")}`)];
}
