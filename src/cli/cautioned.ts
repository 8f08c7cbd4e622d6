import { CAUTIONS, type CautionName } from "../parts/cautions.ts";
import { hanging } from "./explain/hanging.ts";
import type { Io } from "./io.ts";
import { plural } from "./summary.ts";

/** How much is told, and whether telling is all that is done. */
export interface Heard {
  readonly quiet: boolean;
  readonly dry: boolean;
}

/** Returns how messages are told: for `check` they are the result, for `make` the parts are. */
export const spoken = ({ dry, quiet }: Heard, io: Io) => ({
  say: dry ? io.out : io.err,
  quiet,
});

/** The cautions of all parts, each once: short, but never hidden; `-q` counts them and says where they stand. */
export function cautionLines(cautions: readonly CautionName[], { quiet, dry }: Heard): string[] {
  const names = [...new Set(cautions)];
  if (!quiet) return names.flatMap((name) => hanging("caution: ", CAUTIONS[name]));
  const where = dry ? "tramwright check without -q tells" : "the sheet of each part (.md) tells";
  return names.length === 0 ? [] : [`${plural(names.length, "caution")} for your safety, which ${where}`];
}
