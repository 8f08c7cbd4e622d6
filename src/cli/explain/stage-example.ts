import type { Kernel } from "../../geometry/kernel.ts";
import type { Complaint } from "../../library/answers.ts";
import { derivedStage, madeStage } from "../../library/stage-answer.ts";
import { readYaml, type YamlFile } from "../../presets/read.ts";
import { usualAt } from "../../presets/stage-preset.ts";
import { BRINGS, EXAMPLE_PLANS, STAGE_EXAMPLES, type StageExample } from "../../stage/examples/index.ts";
import type { StageDefect } from "../../stage/stage-defects.ts";
import { withSettings } from "../settings.ts";
import type { ShownExample } from "./defect-examples.ts";

type Change = Pick<StageExample, "plan" | "set">;

/** Where the plans stand that examples are changes of. */
export const EXAMPLE_FOLDER = "presets/examples";

/** What was told of a change before: a machine takes some tenths of a second. */
const known = new Map<string, readonly Complaint[]>();

/** Returns everything that arithmetic tells of a plan with the example's settings laid over it. */
export function toldOf(example: Change): readonly Complaint[] {
  const key = [example.plan, ...example.set].join("\n");
  const told = known.get(key) ?? derivedStage(changed(example), {}, "").complaints;
  known.set(key, told);
  return told;
}

/** Returns the same with what is told once the machine is built. */
export async function toldOnceBuilt(example: Change, kernel: Kernel): Promise<readonly Complaint[]> {
  return (await madeStage(changed(example), {}, "", kernel)).complaints;
}

function changed({ plan, set }: Change): YamlFile {
  const file = readYaml(`${EXAMPLE_FOLDER}/${plan}`, EXAMPLE_PLANS[plan]);
  return { ...file, data: withSettings(file.data as Record<string, unknown>, set, usualAt) };
}

/** Returns the examples of a defect of a machine, with what is told of each. */
export function stageExamples(name: StageDefect): ShownExample[] {
  const examples: readonly StageExample[] = STAGE_EXAMPLES[name];
  return examples.map((example) => {
    const { level, plan, set, built } = example;
    const own = (one: Complaint) => one.name === name && one.level === level;
    return {
      level,
      from: `for example from ${EXAMPLE_FOLDER}/${plan} ${set.length === 0 ? "as it stands" : "with"}`,
      lines: set.map((one) => `--set ${quoted(one)}`),
      told: built === undefined ? toldOf(example).find(own) : undefined,
      built,
      brings: BRINGS[`${name} ${level}`],
    };
  });
}

/** As a shell takes it. */
const quoted = (words: string) => (/[^\w=.,-]/.test(words) ? `'${words}'` : words);
