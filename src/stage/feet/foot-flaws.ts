import type { Diagnostic } from "../../core/diagnostic.ts";
import { screwFoot } from "../../parts/screw-foot/index.ts";
import type { FootChoice } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { stageDefect } from "../stage-defects.ts";
import { complaintsAt } from "./by-hand.ts";
import { type Choosing, nutOver } from "./foot-choice.ts";
import { ranked } from "./tried.ts";

/** Returns what is wrong with the stack of one foot: no way fits, its pulley is too narrow, the nut is too near. */
export function footFlaws(plan: Plan, choosing: Choosing, feet: readonly FootChoice[]): Diagnostic[] {
  const foot = feet.find(({ screw }) => screw === choosing.input.screw);
  return foot === undefined ? hopeless(choosing) : nutTooNear(plan, choosing, foot);
}

function hopeless({ input, tried }: Choosing): Diagnostic[] {
  const [best] = ranked(tried);
  const [error] = best?.errors ?? [];
  if (best === undefined || error === undefined) return [];
  const low = error.name === "seat-below-lowest-floor";
  const amounts = {
    ...(error.found === undefined ? {} : { found: error.found }),
    ...(error.limit === undefined ? {} : { limit: error.limit }),
  };
  return [
    stageDefect(low ? "belt-plane-below-lowest-seat" : "foot-stack-does-not-fit", {
      level: "error",
      path: ["screws", input.screw],
      says: `of ${tried.length} ways to stack the foot of ${input.screw} none fits; in the nearest, ${error.says}`,
      set: error.set,
      ...amounts,
    }),
  ];
}

function nutTooNear(plan: Plan, { input, tried }: Choosing, foot: FootChoice): Diagnostic[] {
  const best = ranked(tried, foot.hub)[0];
  if (best === undefined) return [];
  const data = { ...best.typed, ...nutOver(plan, input, best) };
  const parsed = screwFoot.schema.safeParse(data);
  if (parsed.success) return [];
  const sources = { ...input.sources, bearingToNut: ["travel", "nut"] };
  return complaintsAt(plan, parsed.error, data, { ...input, sources });
}
