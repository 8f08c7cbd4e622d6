import { trouble } from "../io.ts";

/** Options that answer questions about a stage. */
export const STAGE_FLAGS = ["units", "screws", "bar", "frame", "plate", "lift", "loops"] as const;

/** Throws when an answer about a stage is given where something else is asked for. */
export function refuseStageFlags(subject: string, given: Readonly<Record<string, string>>): void {
  const stranger = STAGE_FLAGS.find((flag) => given[flag] !== undefined);
  if (stranger !== undefined) throw trouble(`--${stranger} is for new stage; new ${subject} takes --set key=value`);
}
