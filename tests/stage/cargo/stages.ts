import { shareLoads } from "../../../src/stage/cargo/index.ts";
import { structure } from "../../../src/stage/cargo/structure.ts";
import type { Fact } from "../../../src/stage/fact.ts";
import type { Plan, Stage } from "../../../src/stage/index.ts";
import { partsOf } from "../../../src/stage/parts/index.ts";
import { widePlan } from "../../support/plans.ts";
import { printerWith } from "../../support/printer.ts";

const PRINTER = printerWith();

/** Loads, structure and parts of a plan by themselves: without feet and loops, and whatever the frame says to it. */
export function workedOut(plan: Plan): Stage {
  const cargo = shareLoads(plan);
  const stage = { plan, pulleys: [], loops: [], loads: cargo.loads, feet: [] };
  const made = partsOf(stage, () => PRINTER);
  const topics = [cargo, structure({ ...stage, parts: made.parts }, made.designed), made];
  return {
    ...stage,
    parts: made.parts,
    sections: topics.flatMap(({ sections }) => sections),
    diagnostics: topics.flatMap(({ diagnostics }) => diagnostics),
  };
}

/** The wide machine with changes, worked out on the usual printer. */
export function wide(changes: Readonly<Record<string, unknown>> = {}): Stage {
  return workedOut(widePlan(changes));
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
