import type { Refusal } from "../../core/calculation.ts";
import { CALCULATION_DEFECTS } from "../../core/calculation-defects.ts";
import { DEFECTS, type Defect, type DefectName } from "../../core/defects.ts";
import { REFUSAL_EXAMPLES } from "../../mechanics/refusal-examples.ts";
import { STAGE_DEFECTS, type StageDefect } from "../../stage/stage-defects.ts";
import { answer } from "./check-page.ts";
import { defectExamples, type ShownExample } from "./defect-examples.ts";
import { hanging } from "./hanging.ts";
import type { Page } from "./page.ts";
import { stageExamples } from "./stage-example.ts";

/** Returns the page of a defect that no family checks: of files, finished meshes, calculations; none of others. */
export function defectPages(name: string): Page[] {
  if (Object.hasOwn(CALCULATION_DEFECTS, name)) return [refusalPage(name as keyof typeof CALCULATION_DEFECTS)];
  const found = defectOf(name);
  if (found === undefined) return [];
  const [defect, whose] = found;
  const [part, file] = whose === STAGE ? ["part: stage, ", "plan"] : ["", "preset"];
  const { excusable, more } = defect;
  const examples = whose === STAGE ? stageExamples(name as StageDefect) : defectExamples(name as DefectName);
  return [
    {
      name,
      title: `${name}: a defect that ${whose} may have`,
      lines: [
        ...told(defect),
        ...(excusable
          ? hanging(
              "excuse  ",
              `accept: [{ ${part}check: ${name}, because: <reason> }] in a ${file} makes an error a warning`,
            )
          : [`excuse  none: accept: in a ${file} does not lift it`]),
        ...(more === undefined ? [] : hanging("more    ", more)),
        ...examples.flatMap(exampleLines),
      ],
      data: { kind: "defect", name, ...defect, examples: examples.map(exampleData) },
    },
  ];
}

const STAGE = "a stage";

function defectOf(name: string): readonly [Defect, string] | undefined {
  if (Object.hasOwn(DEFECTS, name)) return [DEFECTS[name as keyof typeof DEFECTS], "any part"];
  if (Object.hasOwn(STAGE_DEFECTS, name)) return [STAGE_DEFECTS[name as StageDefect], STAGE];
  return undefined;
}

function told({ what, why, set }: Pick<Defect, "what" | "why" | "set">): string[] {
  return [...hanging("what    ", what), ...hanging("why     ", why), ...hanging("set     ", set)];
}

function refusalPage(name: keyof typeof CALCULATION_DEFECTS): Page {
  const { what, why, set } = CALCULATION_DEFECTS[name];
  const { of, given, ask } = REFUSAL_EXAMPLES[name];
  const outcome = ask() as Partial<Refusal>;
  return {
    name,
    title: `${name}: a reason for which a calculation refuses its inputs`,
    lines: [
      ...told({ what, why, set }),
      "",
      ...hanging("for example ", `${of} of ${given}`),
      ...(outcome.defect === undefined ? [] : answer(outcome.defect)),
    ],
    data: { kind: "refusal", name, what, why, set, example: { of, given, message: outcome.defect ?? null } },
  };
}

function exampleLines({ level, from, lines, told: message, built, brings = [] }: ShownExample): string[] {
  return [
    "",
    ...hanging("", `${level}, ${from}`),
    ...lines.flatMap((line) => (line.length < 90 ? [`    ${line}`] : hanging("    ", line))),
    ...(message === undefined ? [] : answer(message)),
    ...(built === undefined ? [] : hanging("  says    ", built)),
    ...(brings.length === 0 ? [] : hanging("  and     ", brings.join(", "))),
  ];
}

function exampleData({ level, from, lines, told: message, built, brings = [] }: ShownExample): object {
  return { level, from, lines, message: message ?? built ?? null, brings };
}
