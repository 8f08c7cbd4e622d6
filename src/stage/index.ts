import type { Path } from "../core/diagnostic.ts";
import { withReason } from "./acceptance.ts";
import { shareLoads } from "./cargo/index.ts";
import { structure } from "./cargo/structure.ts";
import { NOTHING, type Topic } from "./fact.ts";
import { withCures } from "./feet/cures.ts";
import { chooseFeet } from "./feet/index.ts";
import { motorPulleys } from "./feet/motor-pulleys.ts";
import { type Doubts, doubtsOf } from "./frame/doubts.ts";
import { frameDefects } from "./frame/frame-defects.ts";
import { wrongReferences } from "./frame/references.ts";
import { soundBars } from "./frame/sound-bars.ts";
import { isPlace, isTouched, isTouchedAt, touchedNames, type Unread } from "./frame/unread.ts";
import { inPlanUnits } from "./in-plan-units.ts";
import { solveLoops } from "./loops/index.ts";
import type { PrinterOf, Stage } from "./machine.ts";
import { partsOf } from "./parts/index.ts";
import type { Plan } from "./schema/index.ts";

export { type Fact, marginOf, type Section } from "./fact.ts";
export type { Unread } from "./frame/unread.ts";
export { inPlanUnits } from "./in-plan-units.ts";
export type { FootChoice, PlacedPart, PrinterOf, Stage } from "./machine.ts";
export { type Plan, schema as planSchema } from "./schema/index.ts";

/**
 * Works out a whole machine from its plan: planes, loops, loads, feet and all parts. Where a foot cannot be built, the
 * ways out are tried by working out the changed plans. What is wrong in itself, or was not read from the file, is left
 * out with all that follows from it, and everything else is worked out. Never throws.
 */
export function deriveStage(plan: Plan, printer: PrinterOf, unread: Unread = []): Stage {
  const once = (changed: Plan) => deriveOnce(changed, printer, unread);
  const first = once(plan);
  // Without these it cannot be told what a way out leads to.
  const stage = isTouched(unread, "motor", "travel") ? first : withCures(first, once, printer);
  return { ...stage, diagnostics: inPlanUnits(stage.diagnostics, plan) };
}

/** Returns the same without the ways out of feet that cannot be built; trying those takes the most time. */
export function deriveOnce(plan: Plan, printer: PrinterOf, unread: Unread = []): Stage {
  const strangers = wrongReferences(plan, unread);
  const doubts = doubtsOf(plan, strangers, unread);
  // A screw that stands where no foot can reach it was measured or typed wrong.
  const misplaced = strangers.map(({ path }) => path).filter(isPlace);
  const lost: Unread = [...unread, ...misplaced, ...[...doubts.bars].map((name) => ["bars", name])];
  const sound = { ...plan, bars: soundBars(plan, unread) };
  const drive = isTouchedAt(lost, ...PLANES)
    ? { ...NOTHING, pulleys: [] }
    : motorPulleys(readAsTyped(plan, lost), lost);
  const belts = beltsOf(sound, drive.pulleys, doubts, lost);
  const cargo = shareLoads(sound, lost);
  const known = { plan, pulleys: drive.pulleys, loops: belts.loops, loads: cargo.loads, parts: [], feet: [] };
  const feet = feetOf(sound, known, doubts, lost, printer);
  const found = { ...known, plan: sound, feet: feet.feet };
  const made = partsOf(found, printer, doubts, lost);
  const whole = structure({ ...found, parts: made.parts }, made.designed, lost);
  const topics = [drive, belts, feet, cargo, whole, made].map((topic) => withoutMotor(topic, lost));
  return {
    ...found,
    plan,
    parts: made.parts,
    sections: topics.flatMap(({ sections }) => sections),
    diagnostics: [...strangers, ...frameDefects(plan, unread), ...topics.flatMap(({ diagnostics }) => diagnostics)].map(
      (each) => withReason(each, plan),
    ),
    partly: strangers.length > 0 || lost.length > 0,
  };
}

/** What the planes of the belts follow from. */
const PLANES: readonly Path[] = [
  ["motor", "plateTop"],
  ["motor", "pulleys"],
];

/** What the motor that is bought is held against. */
const OF_MOTOR: readonly string[] = ["motor-pulley-bore-off-shaft", "motor-shaft-too-short", "motor-shaft-overloaded"];

/** Planes and loops are the same with any motor: of one that could not be read, what it is good for is not told. */
function withoutMotor<Some extends Topic>(topic: Some, lost: Unread): Some {
  if (!isTouched(lost, "motor")) return topic;
  return { ...topic, diagnostics: topic.diagnostics.filter(({ name }) => !OF_MOTOR.includes(name)) };
}

/** Returns the loops that are certain: a belt round a pulley that is not known has no length. */
function beltsOf(plan: Plan, pulleys: Stage["pulleys"], doubts: Doubts, lost: Unread) {
  const blind = isTouched(lost, "foot") || isTouchedAt(lost, ...PLANES, ["motor", "at"]);
  const certain = Object.entries(plan.loops).filter(([name]) => !blind && !doubts.loops.has(name));
  return solveLoops({ ...readAsTyped(plan, lost), loops: Object.fromEntries(certain) }, pulleys);
}

/** Returns the plan without loops and screws of which something could not be read. */
function readAsTyped(plan: Plan, lost: Unread): Plan {
  return { ...plan, loops: withoutNames(plan.loops, "loops", lost), screws: withoutNames(plan.screws, "screws", lost) };
}

function withoutNames<Thing>(things: Readonly<Record<string, Thing>>, block: "loops" | "screws", lost: Unread) {
  const touched = touchedNames(lost, block);
  return Object.fromEntries(Object.entries(things).filter(([name]) => !touched.includes(name)));
}

type Known = Pick<Stage, "pulleys" | "loops" | "loads">;

/** Returns the feet of the screws that are certain. */
function feetOf(plan: Plan, { pulleys, loops, loads }: Known, doubts: Doubts, lost: Unread, printer: PrinterOf) {
  const height = [
    ["travel", "lowest"],
    ["travel", "nut"],
  ];
  if (isTouched(lost, "foot", "stock", "printers") || isTouchedAt(lost, ...height)) return { ...NOTHING, feet: [] };
  return chooseFeet(plan, pulleys, loops, loads, printer, doubts);
}
