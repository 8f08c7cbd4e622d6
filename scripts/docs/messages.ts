import { defectExamples, type ShownExample } from "../../src/cli/explain/defect-examples.ts";
import { presetLines } from "../../src/cli/explain/preset-lines.ts";
import { stageExamples } from "../../src/cli/explain/stage-example.ts";
import { messageLines } from "../../src/cli/message.ts";
import type { Refusal } from "../../src/core/calculation.ts";
import { CALCULATION_DEFECTS, type CalculationDefect } from "../../src/core/calculation-defects.ts";
import { DEFECTS, type Defect, type DefectName } from "../../src/core/defects.ts";
import type { Diagnostic, Level } from "../../src/core/diagnostic.ts";
import type { Complaint } from "../../src/library/answers.ts";
import { derivedText } from "../../src/library/derived-text.ts";
import { REFUSAL_EXAMPLES } from "../../src/mechanics/refusal-examples.ts";
import type { Check } from "../../src/parts/check.ts";
import type { AnyFamily } from "../../src/parts/family.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { STAGE_DEFECTS, type StageDefect } from "../../src/stage/stage-defects.ts";
import { NOTICE } from "./markdown.ts";

type Change = Readonly<Record<string, unknown>>;

const LEVELS: readonly Level[] = ["error", "warning", "note"];

/** Returns the page of every message: what it means, and a bad example with what is printed of it. */
export function messagesPage(): string {
  return [
    "# Messages",
    "",
    NOTICE,
    "",
    "Every defect that the program can name, with the file that brings it about and what is printed then. An error leaves",
    "the part unmade, a warning does not, a note asks for nothing. `tramwright explain <name>` tells the same. Examples of",
    "machines are changes of the plans in `presets/examples`: `tramwright report <plan> --set ...` prints the message.",
    "",
    "## Files and finished bodies",
    ...Object.entries<Defect>(DEFECTS).flatMap(([name, defect]) =>
      entry(name, defect, excuse(defect, "preset"), defectExamples(name as DefectName)),
    ),
    "",
    "## Machines",
    ...Object.entries<Defect>(STAGE_DEFECTS).flatMap(([name, defect]) =>
      entry(name, defect, excuse(defect, "plan"), stageExamples(name as StageDefect)),
    ),
    ...FAMILIES.flatMap((family) => [
      "",
      `## Parts: ${family.name}`,
      ...family.checks.flatMap((check) => checkEntry(family, check)),
    ]),
    "",
    "## Calculations that refuse",
    ...Object.keys(CALCULATION_DEFECTS).flatMap((name) => refusalEntry(name as CalculationDefect)),
    "",
  ].join("\n");
}

type Told = Pick<Defect, "what" | "why" | "set">;

const told = ({ what, why, set }: Told) => [`- What: ${what}`, `- Why: ${why}`, `- Set: ${set}`];

function excuse({ excusable }: Defect, file: string): string {
  return `- Excuse: ${excusable ? `\`accept:\` in a ${file} makes an error a warning` : "none"}`;
}

function entry(name: string, defect: Defect, excused: string, examples: readonly ShownExample[]): string[] {
  return ["", `### ${name}`, "", ...told(defect), excused, ...examples.flatMap(exampleLines)];
}

function exampleLines({ level, from, lines, told: message, built, brings = [] }: ShownExample): string[] {
  const said = message === undefined ? [`${level}: ${built}`] : printed(message);
  return [
    "",
    `${level[0]?.toUpperCase()}${level.slice(1)}, ${from}:`,
    ...(lines.length === 0 ? [] : ["", ...fenced(lines)]),
    "",
    ...fenced(said),
    ...(brings.length === 0 ? [] : ["", `With it: ${brings.join(", ")}.`]),
  ];
}

const fenced = (lines: readonly string[]) => ["```", ...lines, "```"];

/** The message as it is printed. */
function printed(message: Complaint | Diagnostic): string[] {
  if (!("file" in message)) return [`${message.level}: ${message.says}`, `  set     ${message.set}`];
  const { file, place, ...diagnostic } = message;
  return messageLines({ file, place, diagnostic }, (_, words) => words);
}

function checkEntry(family: AnyFamily, { name, why, trips, neverAccepted = false }: Check<never, never>): string[] {
  const examples = LEVELS.flatMap((level) => (trips[level] === undefined ? [] : [{ level, change: trips[level] }]));
  return [
    "",
    `### ${family.name}.${name}`,
    "",
    `- Why: ${why}`,
    `- Excuse: ${neverAccepted ? "none" : "`accept:` in a preset makes an error a warning"}`,
    ...examples.flatMap(({ level, change }) =>
      exampleLines({
        level,
        from: "for example from this preset",
        lines: presetLines(family.name, change),
        told: tripped(family, name, change),
      }),
    ),
  ];
}

function tripped(family: AnyFamily, name: string, { printer, ...parameters }: Change): Complaint | undefined {
  const settings = printer as Change | undefined;
  const text = presetLines(family.name, parameters).join("\n");
  const [, ...other] = presetLines(family.name, settings === undefined ? {} : { printer: settings })
    .join("\n")
    .split("# and in the file that --printer names:\n");
  const options = { file: "preset.yaml", ...(other[0] === undefined ? {} : { printer: other[0] }) };
  return derivedText(text, options, "").complaints.find((one) => one.name === name);
}

function refusalEntry(name: CalculationDefect): string[] {
  const { of, given, ask } = REFUSAL_EXAMPLES[name];
  const { defect } = ask() as Partial<Refusal>;
  const said = defect === undefined ? [] : ["", ...fenced(printed(defect))];
  return ["", `### ${name}`, "", ...told(CALCULATION_DEFECTS[name]), "", `For example ${of} of ${given}:`, ...said];
}
