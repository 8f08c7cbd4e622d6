import { type Citation, splitCitation } from "../../src/core/bibliography.ts";
import { type Calculation, isRefusal, type Limits, type WorkedExample } from "../../src/core/calculation.ts";
import { isWords } from "../../src/core/formula.ts";
import { CALCULATIONS } from "../../src/mechanics/index.ts";
import { anchor, figure, measure, NOTICE, table } from "./markdown.ts";
import { SOLVERS, type Solver } from "./solvers.ts";
import { TOPICS } from "./topics.ts";

type Example = WorkedExample<string, string>;

/** Returns the text of docs/calculations.md: every calculation by topic. */
export function calculationsPage(): string {
  const lines = [
    "# Calculations",
    "",
    `${NOTICE} There are ${CALCULATIONS.length} of them. Angles are in degrees; \`sind\`, \`cosd\`, \`tand\` and their`,
    "inverses take and give degrees. `up(x, s)` and `down(x, s)` round to whole steps of `s`. A number outside the range",
    "is refused with a reason, never clipped or guessed; an input without a range of its own may be any number. Sources are",
    "named by their key in [sources.md](sources.md). The tests evaluate every formula as it is printed here against the",
    "program, and reproduce every worked example.",
    "",
    ...TOPICS.map(([title, names]) => `- [${title}](#${anchor(title)}): ${names.length}`),
    `- [${SEARCHES}](#${anchor(SEARCHES)}): ${SOLVERS.length}`,
    ...TOPICS.flatMap(([title, names]) => ["", `## ${title}`, ...names.flatMap((name) => entry(find(name)))]),
    "",
    `## ${SEARCHES}`,
    ...SOLVERS.flatMap(solver),
  ];
  return `${lines.join("\n")}\n`;
}

const SEARCHES = "Searches, lists and verdicts";

/** Returns a calculation that no single formula gives. */
function solver({ name, title, takes, gives, how, valid, source, examples }: Solver): string[] {
  return [
    "",
    `### ${name}`,
    "",
    `${title}.`,
    "",
    `- Takes: ${takes}.`,
    `- Gives: ${gives}.`,
    `- How: ${how}.`,
    `- Range: ${valid}.`,
    `- Source: ${cite(source)}.`,
    ...examples.map(({ says, printed }) => `- Worked, own arithmetic: ${says} gives ${printed}.`),
  ];
}

function find(name: string): Calculation {
  const found = CALCULATIONS.find((one) => one.name === name);
  if (found === undefined) throw new RangeError(`there is no calculation ${name}`);
  return found;
}

function entry(one: Calculation): string[] {
  const inputs = Object.entries(one.inputs).map(([key, { symbol, unit, meaning }]) => {
    return ["takes", `\`${symbol}\``, unit, meaning, range(one.limits?.[key])];
  });
  const results = Object.values(one.results).map(({ symbol, unit, meaning }) => {
    return ["gives", `\`${symbol}\``, unit, meaning, ""];
  });
  return [
    "",
    `### ${one.name}`,
    "",
    `${one.title}.`,
    "",
    ...Object.entries(one.formulas).map(([key, formula]) => printed(one.results[key]?.symbol ?? key, formula)),
    "",
    ...table(["", "symbol", "unit", "meaning", "range"], [...inputs, ...results]),
    "",
    `- Range: ${one.valid}.`,
    `- Source: ${cite(one.source)}.`,
    ...(one.differs ?? []).map((words) => `- Sources differ: ${words}.`),
    ...one.examples.map((example) => worked(one, example)),
  ];
}

/** Returns a citation by its key in docs/sources.md, then the place. */
function cite(citation: Citation): string {
  const { key, place } = splitCitation(citation);
  return place === "" ? `\`${key}\`` : `\`${key}\`, ${place}`;
}

/** Returns what an input may be, in words; empty when any number will do. */
function range(limits: Limits | undefined): string {
  if (limits === undefined) return "";
  const { above, from, below, to, whole } = limits;
  return [
    ...(whole === true ? ["whole"] : []),
    ...(above === undefined ? [] : [`above ${figure(above)}`]),
    ...(from === undefined ? [] : [`from ${figure(from)}`]),
    ...(below === undefined ? [] : [`below ${figure(below)}`]),
    ...(to === undefined ? [] : [`to ${figure(to)}`]),
  ].join(", ");
}

function printed(symbol: string, formula: string): string {
  return isWords(formula) ? `- \`${symbol}\`: ${formula.replaceAll('"', "")}` : `- \`${symbol} = ${formula}\``;
}

/** Returns one example as a sentence: what is given, what comes out, what the source printed. */
function worked(one: Calculation, { given, gives, source }: Example): string {
  const outcome = one.compute(given);
  if (isRefusal(outcome)) throw new RangeError(`${one.name}: ${outcome.refused}`);
  const said = Object.entries(one.inputs).map(
    ([key, { symbol, unit }]) => `${symbol} = ${measure(given[key] ?? Number.NaN, unit)}`,
  );
  const results = Object.entries(gives).map(([key, wanted]) => {
    const { symbol = key, unit = "" } = one.results[key] ?? {};
    const [computed, source] = [measure(outcome[key] ?? Number.NaN, unit), measure(wanted ?? Number.NaN, unit)];
    return `${symbol} = ${computed}${computed === source ? "" : ` (printed ${source})`}`;
  });
  return `- Worked, after ${cite(source)}: ${said.join(", ")} gives ${results.join(", ")}.`;
}
