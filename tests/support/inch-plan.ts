import { withSettings } from "../../src/cli/settings.ts";
import { derivedStage } from "../../src/library/stage-answer.ts";
import { inInches } from "../../src/presets/inches.ts";
import { readYaml } from "../../src/presets/read.ts";
import { stageFileSchema, usualAt } from "../../src/presets/stage-preset.ts";

/** Returns what is told of a plan in mm with settings laid over it, and of the same plan written in bare inches. */
export function toldInBoth(text: string, set: readonly string[] = []) {
  const file = readYaml("plan.yaml", text);
  const data = withSettings(file.data as Record<string, unknown>, set, usualAt);
  const told = (one: Record<string, unknown>) => derivedStage({ ...file, data: one }, {}, "test");
  const inches = written(data, inInches(stageFileSchema, data)) as Record<string, unknown>;
  return { mm: told(data), inches: told({ ...inches, units: "in" }) };
}

/** The data with every bare length, which the reader gives the unit `in`, divided by 25.4 mm (exact by definition). */
function written(data: unknown, read: unknown): unknown {
  if (typeof data !== "object" || data === null) return data === read ? data : Number(data) / 25.4;
  if (Array.isArray(data)) return data.map((each, index) => written(each, (read as unknown[])[index]));
  return Object.fromEntries(
    Object.entries(data).map(([key, each]) => [key, written(each, (read as Record<string, unknown>)[key])]),
  );
}
