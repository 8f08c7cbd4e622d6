import { hasErrors } from "../core/diagnostic.ts";
import { shareLoads } from "./cargo/index.ts";
import { chooseFeet } from "./feet/index.ts";
import { motorPulleys } from "./feet/motor-pulleys.ts";
import { wrongReferences } from "./frame/references.ts";
import { solveLoops } from "./loops/index.ts";
import type { PrinterOf, Stage } from "./machine.ts";
import { SOURCES } from "./parts/index.ts";
import type { Plan } from "./schema/index.ts";

export { type Fact, marginOf, type Section } from "./fact.ts";
export type { FootChoice, PlacedPart, PrinterOf, Stage } from "./machine.ts";
export { type Plan, schema as planSchema } from "./schema/index.ts";

/** Works out a whole machine from its plan: planes, loops, loads, feet and all parts. Never throws. */
export function deriveStage(plan: Plan, printer: PrinterOf): Stage {
  const strangers = wrongReferences(plan);
  const nothing = { plan, pulleys: [], loops: [], loads: undefined, feet: [], parts: [], sections: [] };
  if (hasErrors(strangers)) return { ...nothing, diagnostics: strangers };
  const drive = motorPulleys(plan);
  const belts = solveLoops(plan, drive.pulleys);
  const cargo = shareLoads(plan);
  const feet = chooseFeet(plan, drive.pulleys, belts.loops, cargo.loads, printer);
  const topics = [drive, belts, feet, cargo];
  const stage = {
    ...nothing,
    pulleys: drive.pulleys,
    loops: belts.loops,
    loads: cargo.loads,
    feet: feet.feet,
    sections: topics.flatMap(({ sections }) => sections),
    diagnostics: [...strangers, ...topics.flatMap(({ diagnostics }) => diagnostics)],
  };
  return { ...stage, parts: SOURCES.flatMap(({ from }) => from(stage, printer)) };
}
