import type { Diagnostic } from "../../core/diagnostic.ts";
import { motorTorque } from "../../mechanics/motor-torque.ts";
import { NUT_FRICTION } from "../../mechanics/screw-locking.ts";
import { screwTorque } from "../../mechanics/screw-torque.ts";
import { below } from "../../parts/check.ts";
import type { Fact } from "../fact.ts";
import { told, worked } from "../worked.ts";
import { FLANK } from "./crash.ts";
import type { ScrewDrive } from "./screw-drives.ts";
import type { SharedStage } from "./structure.ts";

/** Efficiency of one belt loop. common practice */
const BELT = 0.95;
/** Least torque over need: below the first it stalls, below the second it loses steps sooner or later. */
const MARGIN = { error: 1.2, warning: 2 };

/** Returns the torque of the lift, of a stage that runs down, and the motor's margin; acceleration is left out. */
export function motorLoad(stage: SharedStage): { readonly facts: readonly Fact[]; readonly diagnostics: Diagnostic[] } {
  const { plan, drives } = stage;
  const [first] = drives;
  if (first === undefined) return { facts: [], diagnostics: [] };
  const loads = fullest(stage);
  const raise = sum(drives, (each) => torqueOf(each, loads[each.name] ?? 0, 1)?.raise ?? 0);
  const lower = sum(drives, (each) => torqueOf(each, loads[each.name] ?? 0, 0)?.lower ?? 0);
  const has = plan.motor.torque ?? plan.motor.motor.values.torqueSmall;
  const inputs = { raise, lower, ratio: first.ratio, belt: BELT };
  const load = worked(motorTorque, inputs, {
    lift: ["motor.lift", "torque to lift the fullest stage", { value: has / MARGIN.warning, kind: "at most" }],
    back: ["motor.back", "torque with which the stage turns the motor when power is off"],
  });
  const lift = load.values?.lift ?? 0;
  if (!(lift > 0)) return { facts: load.facts, diagnostics: [] };
  const margin = has / lift;
  const limit = { value: MARGIN.warning, kind: "at least" } as const;
  const fact: Fact = {
    key: "motor.margin",
    label: "torque of the motor over that need",
    value: margin,
    unit: "",
    limit,
  };
  const own = plan.motor.torque === undefined ? "the weakest motor of this size" : "the motor";
  const finding = below({
    value: margin,
    unit: "",
    ...MARGIN,
    says: (least) =>
      `${own} has ${has} N·m, ${margin.toFixed(2)} times the ${lift.toFixed(3)} N·m of the lift, under ${least} times`,
    set: `torque: ${(Math.ceil(1000 * MARGIN.warning * lift) / 1000).toFixed(3)} N·m or more, or a larger ratio`,
  });
  return { facts: [...load.facts, fact], diagnostics: told("motor-torque-short", ["motor", "torque"], finding) };
}

/** The loads of the heaviest case in which nobody leans on the plate; bounds of four screws as parts of the weight. */
function fullest({ loads }: SharedStage): Readonly<Record<string, number>> {
  const full = loads?.cases.find(({ name }) => name === "print in the middle");
  if (full === undefined) return {};
  const each = Object.entries(full.shares);
  const total = each.reduce((all, [, load]) => all + load, 0);
  // What one of four screws carries more another carries less, so their bounds together are more than the weight.
  const part = each.length > 3 && total > 0 ? full.weight / total : 1;
  return Object.fromEntries(each.map(([name, load]) => [name, part * load]));
}

function sum(drives: readonly ScrewDrive[], of: (each: ScrewDrive) => number): number {
  return drives.reduce((total, each) => total + of(each), 0);
}

/** Torque at the least friction (0) or the most (1); a load of 0 or less has none. */
function torqueOf({ screw, plan }: ScrewDrive, load: number, end: 0 | 1) {
  const { pitchDiameter, lead } = screw;
  const friction = NUT_FRICTION[plan.nut][end];
  return worked(screwTorque, { load, pitchDiameter, lead, flank: FLANK, friction }, {}).values;
}
