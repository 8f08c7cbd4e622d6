import { isRefusal } from "../../core/calculation.ts";
import type { Diagnostic, Path } from "../../core/diagnostic.ts";
import { GRAVITY } from "../../mechanics/centre-of-mass.ts";
import { plateHold } from "../../mechanics/plate-hold.ts";
import { plateJerk } from "../../mechanics/plate-jerk.ts";
import { plateStripSag } from "../../mechanics/plate-strip-sag.ts";
import { distance } from "../../mechanics/point.ts";
import { above, below } from "../../parts/check.ts";
import type { Fact, Topic } from "../fact.ts";
import type { Plan } from "../schema/index.ts";
import { atLeast, told, worked } from "../worked.ts";
import { fullShares, mountsOf, plateShares, plateWeight, sharesOnMounts } from "./mount-shares.ts";
import type { SharedStage } from "./structure.ts";
import { numberOf, type TramMount, tramMountsOf } from "./tram-mounts.ts";

/** Friction under a sliding washer, drag of a nozzle, N, and jerk as a share of gravity. common practice */
const FRICTION = 0.2;
const DRAG = 5;
const JERK = 0.5;

/** Numbers of the springs that the family of mounts works out, with the limits its checks hold them against. */
const SPRING: readonly (readonly [string, string, number | undefined])[] = [
  ["rate", "spring rate", undefined],
  ["setLength", "length of the spring as set", undefined],
  ["forceSet", "force of the spring as set", undefined],
  ["preload", "force at the highest setting over the plate's share", 1.5],
  ["clash", "clash allowance at the lowest setting", 0.15],
];

/** Returns springs, hold and sag of the plate on its mounts. */
export function mounts(stage: SharedStage): Topic {
  const { plan } = stage;
  const all = tramMountsOf(stage);
  const hold = holdOf(plan, all);
  const facts = [...shareFacts(plan), ...all.flatMap(springFacts), ...hold.facts, ...sagFacts(plan)];
  return {
    sections: [{ title: "Mounts of the plate", facts }],
    diagnostics: [...hold.diagnostics, ...badlyHeld(plan, all)],
  };
}

function shareFacts(plan: Plan): Fact[] {
  return Object.entries(plateShares(plan)).map(([name, value]) => {
    const key = `mount.${name}.share`;
    return {
      key,
      label: `mount ${name}: weight of plate, sheet and heater on it`,
      value,
      unit: "N",
      limit: atLeast(0),
    };
  });
}

function springFacts({ mount, design }: TramMount): Fact[] {
  return SPRING.flatMap(([key, label, least]) => {
    const own = design.dimensions.find((each) => each.key === key);
    if (own === undefined) return [];
    const fact = { key: `mount.${mount}.${key}`, label: `mount ${mount}: ${label}`, value: own.value, unit: own.unit };
    return [least === undefined ? fact : { ...fact, limit: atLeast(least) }];
  });
}

function holdOf(
  plan: Plan,
  all: readonly TramMount[],
): { readonly facts: readonly Fact[]; readonly diagnostics: Diagnostic[] } {
  const total = (name: string) => all.reduce((sum, { design }) => sum + numberOf(design, name), 0);
  const mass = plateWeight(plan) / GRAVITY;
  const push = worked(
    plateJerk,
    { drag: DRAG, mass, jerk: JERK },
    { force: ["plate.push", "sideways force of nozzle or jerk"] },
  );
  const inputs = {
    friction: FRICTION,
    force: total("forceSet"),
    push: push.values?.force ?? 0,
    rate: total("rate"),
    mass,
  };
  const hold = worked(plateHold, inputs, {
    factor: ["plate.hold", "friction under the springs over that force", atLeast(1)],
    frequency: ["plate.frequency", "natural frequency of the plate on its springs"],
  });
  const factor = hold.values?.factor;
  // A bracket that is left out would hold as well.
  if (factor === undefined || all.length === 0 || all.length < mountsOf(plan).length)
    return { facts: push.facts, diagnostics: [] };
  const finding = below({
    value: factor,
    unit: "",
    warning: 1,
    says: () => `the springs hold the plate with ${factor.toFixed(2)} times the sideways force of jerk and nozzle`,
    set: `springs that press ${Math.ceil(inputs.force / factor)} N together, now ${inputs.force.toFixed(0)} N`,
  });
  return {
    facts: [...push.facts, ...hold.facts],
    diagnostics: told("plate-shifts-on-springs", ["plate", "mounts"], finding),
  };
}

function sagFacts(plan: Plan): readonly Fact[] {
  const { size, metal, thickness } = plan.plate;
  const places = mountsOf(plan);
  const length = Math.max(0, ...places.flatMap((one) => places.map((other) => distance(one, other))));
  const pressure = plateWeight(plan) / (size[0] * size[1]);
  return worked(
    plateStripSag,
    { pressure, length, modulus: metal.values.modulus, thickness },
    {
      sag: ["plate.sag", "bound on the plate's own sag between mounts, not its real sag"],
    },
  ).facts;
}

/** The plate alone must press on every mount; the print may not press one of them off its bolt's head. */
function badlyHeld(plan: Plan, all: readonly TramMount[]): Diagnostic[] {
  const [x, y] = plan.plate.at;
  const empty = sharesOnMounts(plan, plateWeight(plan), { x, y });
  return mountsOf(plan).flatMap(({ name }) => {
    const path = ["plate", "mounts", name, "at"];
    const share = isRefusal(empty) ? 0 : (empty[name]?.least ?? 0);
    const says = () =>
      `the plate would lift off mount ${name} with ${(-share).toFixed(1)} N: its middle lies beyond the others`;
    const set = "at: of the mounts round the middle of the plate";
    const tips = below({ value: share, unit: "N", error: 0, says, set });
    const mount = all.find((each) => each.mount === name);
    return [...told("plate-tips-off-its-mounts", path, tips), ...(mount === undefined ? [] : sinks(plan, mount, path))];
  });
}

function sinks(plan: Plan, { mount, design }: TramMount, path: Path): Diagnostic[] {
  const spring = numberOf(design, "forceLong");
  const most = fullShares(plan)[mount] ?? 0;
  const finding = above({
    value: most,
    unit: "N",
    warning: spring,
    says: (limit) =>
      `plate and print press on mount ${mount} with up to ${most.toFixed(1)} N, over the ${limit.toFixed(1)} N of its spring at the highest setting`,
    set: `a stiffer spring, mounts nearer to the plate's corners, or a lighter print`,
  });
  return told("plate-sinks-on-springs", path, finding);
}
