import { hasErrors } from "../core/diagnostic.ts";
import { withReason } from "./acceptance.ts";
import { shareLoads } from "./cargo/index.ts";
import { structure } from "./cargo/structure.ts";
import { withCures } from "./feet/cures.ts";
import { chooseFeet } from "./feet/index.ts";
import { motorPulleys } from "./feet/motor-pulleys.ts";
import { frameDefects } from "./frame/frame-defects.ts";
import { wrongReferences } from "./frame/references.ts";
import { solveLoops } from "./loops/index.ts";
import type { PrinterOf, Stage } from "./machine.ts";
import { partsOf } from "./parts/index.ts";
import type { Plan } from "./schema/index.ts";

export { type Fact, marginOf, type Section } from "./fact.ts";
export type { FootChoice, PlacedPart, PrinterOf, Stage } from "./machine.ts";
export { type Plan, schema as planSchema } from "./schema/index.ts";

/**
 * Works out a whole machine from its plan: planes, loops, loads, feet and all parts. Where a foot cannot be built, the
 * ways out are tried by working out the changed plans. Never throws.
 */
export function deriveStage(plan: Plan, printer: PrinterOf): Stage {
  return withCures(deriveOnce(plan, printer), (changed) => deriveOnce(changed, printer), printer);
}

function deriveOnce(plan: Plan, printer: PrinterOf): Stage {
  const strangers = wrongReferences(plan);
  const bodies = frameDefects(plan);
  const nothing = { plan, pulleys: [], loops: [], loads: undefined, feet: [], parts: [], sections: [] };
  if (hasErrors(strangers)) return { ...nothing, diagnostics: [...strangers, ...bodies] };
  const drive = motorPulleys(plan);
  const belts = solveLoops(plan, drive.pulleys);
  const cargo = shareLoads(plan);
  const feet = chooseFeet(plan, drive.pulleys, belts.loops, cargo.loads, printer);
  const found = { ...nothing, pulleys: drive.pulleys, loops: belts.loops, loads: cargo.loads, feet: feet.feet };
  const made = partsOf(found, printer);
  const topics = [drive, belts, feet, cargo, structure({ ...found, parts: made.parts }, made.designed), made];
  return {
    ...found,
    parts: made.parts,
    sections: topics.flatMap(({ sections }) => sections),
    diagnostics: [...strangers, ...bodies, ...topics.flatMap(({ diagnostics }) => diagnostics)].map((each) =>
      withReason(each, plan),
    ),
  };
}
