import { isPlan, readTarget } from "../../src/cli/load.ts";
import { loadStage } from "../../src/cli/load-stage.ts";

/** Returns a plan read from disk and worked out as the program does, with what `--set` would lay over it. */
export function loadedPlan(file: string, set: readonly string[] = []) {
  const target = readTarget(file);
  if (!isPlan(target)) throw new Error(`${file} is no plan`);
  const { machine, messages } = loadStage(target, { set, printer: undefined, version: "test" });
  if (machine === undefined) throw new Error(messages.map(({ diagnostic }) => diagnostic.says).join("; "));
  const errors = messages.filter(({ diagnostic }) => diagnostic.level === "error");
  return { machine, messages, errors };
}

type Machine = ReturnType<typeof loadedPlan>["machine"];

/**
 * Returns a number of a machine by its name: `screw.A.share` of the report, `screw.A.share limit` what it is held
 * against, `foot-a.bed` of a part. Throws where there is none.
 */
export function numberOf({ stage, parts }: Machine, name: string): number {
  const facts = stage.sections.flatMap((section) => section.facts);
  const fact = facts.find(({ key }) => key === name || `${key} limit` === name);
  const [part, dimension] = name.split(".");
  const own = parts.find(({ request }) => request.name === part)?.designed.design?.dimensions;
  const value =
    fact === undefined
      ? own?.find(({ key }) => key === dimension)?.value
      : name.endsWith(" limit")
        ? fact.limit?.value
        : fact.value;
  if (value === undefined) throw new Error(`the machine has no ${name}`);
  return value;
}
