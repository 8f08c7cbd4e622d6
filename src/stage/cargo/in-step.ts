import { isRefusal } from "../../core/calculation.ts";
import type { Diagnostic } from "../../core/diagnostic.ts";
import { screwsInStep } from "../../mechanics/screws-in-step.ts";
import { besidesPlaces, isTouched, touchedNames, type Unread } from "../frame/unread.ts";
import type { Plan, PlanScrew } from "../schema/index.ts";
import { told } from "../worked.ts";
import { footWord, type ScrewDrive, screwDrives } from "./screw-drives.ts";

/**
 * Returns an error for each screw that does not lift as the first one does. Where loops or the motor are wrong or could
 * not be read, it is not known what turns a screw: then its lead and its own pulley alone are held against the first's.
 */
export function inStep(plan: Plan, unread: Unread): Diagnostic[] {
  const lost = touchedNames(besidesPlaces(unread), "screws");
  const screws = Object.entries(plan.screws).filter(([name]) => !lost.includes(name));
  const drives = isTouched(unread, "motor", "foot") ? [] : screwDrives(plan);
  const driven = drives.filter(({ name }) => !lost.includes(name));
  const reference = driven[0]?.name ?? screws[0]?.[0] ?? "";
  const others = screws.filter(([name]) => name !== reference && !driven.some((one) => one.name === name));
  return [...outOfStep(driven), ...others.flatMap(([name]) => leadUnlike(plan, reference, name, unread))];
}

/** What is not known of the pulleys is taken to be the same for both; of several on the motor, any may be meant. */
function leadUnlike(plan: Plan, reference: string, name: string, unread: Unread): Diagnostic[] {
  const [first, other] = [plan.screws[reference], plan.screws[name]];
  if (first === undefined || other === undefined) return [];
  const path = (key: string) => ["screws", name, key];
  if (first.hand !== other.hand) {
    const says = `${name} and ${reference} are not of the same hand`;
    const set = `hand: ${first.hand}, as for ${reference}`;
    return told("screws-not-in-step", path("hand"), { level: "error", says, set });
  }
  const teethOf = (screw: string) =>
    isTouched(unread, "foot") ? 1 : (footWord(plan, screw, "pulley")?.values.teeth ?? 1);
  const onMotor = isTouched(unread, "motor") ? [1] : plan.motor.pulleys.map(({ pulley }) => pulley.values.teeth);
  const rise = ({ screw }: PlanScrew, teeth: number) => screw.values.lead / teeth;
  const [one, own] = [rise(first, teethOf(reference)), rise(other, teethOf(name))];
  const fits = onMotor.some((a) => onMotor.some((b) => Math.abs(one * a - own * b) <= 1e-9 * one * a));
  if (fits || onMotor.length === 0) return [];
  const words = (screw: PlanScrew, teeth: number) =>
    `${leadWords(screw.screw.values.lead)} mm a turn${teeth === 1 ? "" : ` of a pulley of ${teeth} teeth`}`;
  return told("screws-not-in-step", path("screw"), {
    level: "error",
    says: `${name} lifts ${words(other, teethOf(name))}, ${reference} ${words(first, teethOf(reference))}`,
    set: likeScrew(first, reference),
  });
}

const leadWords = (lead: number) => String(Number(lead.toFixed(4)));

/** Each screw is held against the first. */
function outOfStep(drives: readonly ScrewDrive[]): Diagnostic[] {
  const [first, ...others] = drives;
  return others.flatMap((other) => {
    const outcome = first === undefined ? { lift: 0 } : screwsInStep([turned(first), turned(other)]);
    if (!isRefusal(outcome) || first === undefined) return [];
    const { key, set } = likeFirst(first, other);
    return told("screws-not-in-step", ["screws", other.name, key], { level: "error", says: outcome.refused, set });
  });
}

const turned = ({ name, screw, pulley, motorTeeth, plan }: ScrewDrive) => {
  const teeth = { screwTeeth: pulley.values.teeth, motorTeeth };
  return { name, lead: screw.lead, ...teeth, hand: plan.hand, inside: true };
};

/** What differs from the first screw, and what it is there: the hand, the screw itself, or the teeth that turn it. */
function likeFirst(first: ScrewDrive, other: ScrewDrive): { readonly key: string; readonly set: string } {
  const one = `as for ${first.name}`;
  if (other.screw.lead !== first.screw.lead) return { key: "screw", set: likeScrew(first.plan, first.name) };
  if (other.plan.hand !== first.plan.hand) return { key: "hand", set: `hand: ${first.plan.hand}, ${one}` };
  const teeth = `${first.pulley.values.teeth} teeth on the screw and ${first.motorTeeth} on the motor`;
  return { key: "screw", set: `${teeth}, ${one}` };
}

function likeScrew({ screw: { row, values } }: PlanScrew, name: string): string {
  const lead = `a screw that lifts ${leadWords(values.lead)} mm a turn`;
  return `screw: ${row === undefined ? lead : row.key}, as for ${name}`;
}
