import type { Fact } from "../../../src/stage/fact.ts";
import { deriveStage, type Stage } from "../../../src/stage/index.ts";
import { widePlan } from "../../support/plans.ts";
import { printerWith } from "../../support/printer.ts";

const PRINTER = printerWith();

/** The wide machine with changes, worked out on the usual printer. */
export function wide(changes: Readonly<Record<string, unknown>> = {}): Stage {
  return deriveStage(widePlan(changes), () => PRINTER);
}

/** A fact of a machine by its key; throws where there is none. */
export function fact({ sections }: Pick<Stage, "sections">, key: string): Fact {
  const found = sections.flatMap(({ facts }) => facts).find((each) => each.key === key);
  if (found === undefined) throw new Error(`no fact ${key}`);
  return found;
}

/** The value of a fact. */
export const amount = (stage: Pick<Stage, "sections">, key: string): number => fact(stage, key).value;

/** Changes that leave nothing that moves but plate, sheet and masses, and whose sheet weighs nothing. */
export const BARE = {
  bars: {
    "arm-front": { moves: false },
    "arm-back": { moves: false },
    "side-left": { moves: false },
    "side-right": { moves: false },
  },
  carriages: { left: undefined, right: undefined },
  masses: { nuts: undefined },
  plate: { sheet: 0 },
};
