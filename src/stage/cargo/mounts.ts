import { isRefusal } from "../../core/calculation.ts";
import type { Diagnostic } from "../../core/diagnostic.ts";
import { GRAVITY } from "../../mechanics/centre-of-mass.ts";
import { plateHold } from "../../mechanics/plate-hold.ts";
import { plateJerk } from "../../mechanics/plate-jerk.ts";
import { plateStripSag } from "../../mechanics/plate-strip-sag.ts";
import { distance } from "../../mechanics/point.ts";
import { below } from "../../parts/check.ts";
import type { Fact, Topic } from "../fact.ts";
import type { Plan } from "../schema/index.ts";
import { atLeast, told, worked } from "../worked.ts";
import { cornersOf } from "./cases.ts";
import { mountsOf, plateShares, plateWeight, sharesOnMounts } from "./mount-shares.ts";
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
  return { sections: [{ title: "Mounts of the plate", facts }], diagnostics: [...hold.diagnostics, ...tips(plan)] };
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
  if (factor === undefined || all.length === 0) return { facts: push.facts, diagnostics: [] };
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

/** The plate with the print in the middle and at each corner: no mount may have to pull. */
function tips(plan: Plan): Diagnostic[] {
  const weight = plateWeight(plan);
  const added = plan.print * GRAVITY;
  const [x, y] = plan.plate.at;
  const cases = [
    { name: "empty", at: { x, y }, load: weight },
    ...cornersOf(plan).map(({ name, at }) => {
      const share = added / (weight + added);
      return {
        name: `print ${name}`,
        at: { x: x + share * (at.x - x), y: y + share * (at.y - y) },
        load: weight + added,
      };
    }),
  ];
  return mountsOf(plan).flatMap(({ name }) => {
    const pulls = cases.map((each) => {
      const shares = sharesOnMounts(plan, each.load, each.at);
      return { name: each.name, value: isRefusal(shares) ? 0 : (shares[name]?.least ?? 0) };
    });
    const worst = pulls.reduce((low, each) => (each.value < low.value ? each : low));
    if (worst.value >= -1e-9 * weight) return [];
    return told("plate-tips-off-its-mounts", ["plate", "mounts", name, "at"], {
      level: worst.name === "empty" ? "error" : "warning",
      says: `${worst.name}: the plate would lift off mount ${name} with ${(-worst.value).toFixed(1)} N but for its spring's bolt`,
      set: "at: of the mounts nearer to the plate's corners, or a lighter print",
      found: worst.value,
      limit: 0,
      unit: "N",
    });
  });
}
