import type { Diagnostic } from "../../core/diagnostic.ts";
import { screwFoot } from "../../parts/screw-foot/index.ts";
import { wrong } from "../frame/complaint.ts";
import type { FootChoice } from "../machine.ts";
import { planWords } from "../parts/plan-words.ts";
import type { Plan } from "../schema/index.ts";
import { stageDefect } from "../stage-defects.ts";
import { type Choosing, nutOver } from "./foot-choice.ts";
import { ranked } from "./tried.ts";

/** What a foot's bearing and the nut may be apart, mm. */
const NUT = { least: 20, most: 2000 };

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
      set: planWords(screwFoot.name, error.set),
      ...amounts,
    }),
  ];
}

function nutTooNear(plan: Plan, { input, tried }: Choosing, foot: FootChoice): Diagnostic[] {
  const best = ranked(tried, foot.hub)[0];
  const nut = best === undefined ? undefined : nutOver(plan, input, best);
  if (nut === undefined || (nut >= NUT.least && nut <= NUT.most)) return [];
  const short = nut < NUT.least ? NUT.least - nut : NUT.most - nut;
  return [
    wrong(
      ["travel", "nut"],
      `the nut comes to ${nut.toFixed(1)} mm over the bearing of ${input.screw}, outside ${NUT.least} to ${NUT.most} mm`,
      `nut: ${Math.ceil((plan.travel.nut + short) * 10) / 10}`,
      "the nut holds the screw's upper part upright: too near it squeezes, too far the pulley bends the screw",
    ),
  ];
}
