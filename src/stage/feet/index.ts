import type { Diagnostic } from "../../core/diagnostic.ts";
import { screwFoot } from "../../parts/screw-foot/index.ts";
import type { Section, Topic } from "../fact.ts";
import type { Doubts } from "../frame/doubts.ts";
import { footingOf, isMisfit } from "../frame/footing.ts";
import type { FootChoice, LoadCases, LoopChoice, MotorPulley, PrinterOf } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { type Choosing, chosenFoot, waysOf } from "./foot-choice.ts";
import { footSection, hopelessSection } from "./foot-facts.ts";
import { footFlaws } from "./foot-flaws.ts";
import { planesOfLoop } from "./loop-planes.ts";
import { withUnequalSink } from "./unequal-sink.ts";

/** Returns the foot of each screw not in doubt: hub, rings, seat on a layer, residual, shim, and losers with why. */
export function chooseFeet(
  plan: Plan,
  pulleys: readonly MotorPulley[],
  loops: readonly LoopChoice[],
  loads: LoadCases | undefined,
  printer: PrinterOf,
  doubts: Pick<Doubts, "screws"> = { screws: new Set() },
): Topic & { readonly feet: readonly FootChoice[] } {
  const known = { plan, loops, loads, printer: printer(screwFoot.name) };
  const certain = Object.keys(plan.screws).filter((screw) => !doubts.screws.has(screw));
  const choosing = certain.flatMap((screw) => {
    const pulley = pulleyOf(plan, screw, pulleys);
    const footing = footingOf(plan, screw);
    return pulley === undefined || isMisfit(footing) ? [] : [waysOf(screw, footing, { ...known, pulley })];
  });
  const feet = withUnequalSink(chosenTogether(plan, choosing), loads);
  const checked = Object.keys(plan.loops).map((loop) => planesOfLoop({ plan, loop, pulleys, loops, feet }));
  return {
    feet,
    sections: [...choosing.map((one) => sectionOf(one, feet)), ...checked.flatMap(({ sections }) => sections)],
    diagnostics: eachOnce([
      ...choosing.flatMap((one) => [...one.diagnostics, ...footFlaws(plan, one, feet)]),
      ...checked.flatMap(({ diagnostics }) => diagnostics),
    ]),
  };
}

/** The pulley on the motor that turns a screw; undefined where its loop has none. */
function pulleyOf({ loops }: Plan, screw: string, pulleys: readonly MotorPulley[]): MotorPulley | undefined {
  const own = Object.keys(loops).find((loop) => loops[loop]?.nodes.includes(screw));
  return pulleys.find(({ loop }) => loop === own);
}

/** Where seat and rings leave the hub open, it goes the way of most feet of its loop: easier to put together. */
function chosenTogether(plan: Plan, choosing: readonly Choosing[]): FootChoice[] {
  const alone = choosing.flatMap((one) => chosenFoot(plan, one, "down") ?? []);
  return choosing.flatMap((one) => {
    const mates = alone.filter(({ loop }) => loop === one.input.loop);
    const ups = mates.filter(({ hub }) => hub === "up").length;
    return chosenFoot(plan, one, 2 * ups > mates.length ? "up" : "down") ?? [];
  });
}

function sectionOf(one: Choosing, feet: readonly FootChoice[]): Section {
  const foot = feet.find(({ screw }) => screw === one.input.screw);
  return foot === undefined ? hopelessSection(one) : footSection(one, foot);
}

/** What all feet have in common is complained of once. */
function eachOnce(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  const keyOf = ({ name, path, says }: Diagnostic) => JSON.stringify([name, path, says]);
  return [...new Map(diagnostics.map((one) => [keyOf(one), one])).values()];
}
