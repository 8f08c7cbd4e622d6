import { METALS } from "../../catalogue/metals.ts";
import type { Diagnostic } from "../../core/diagnostic.ts";
import { row } from "../../core/table.ts";
import { cantileverDeflection } from "../../mechanics/cantilever-deflection.ts";
import { cantileverSlope } from "../../mechanics/cantilever-slope.ts";
import { simpleBeamDeflection } from "../../mechanics/simple-beam-deflection.ts";
import { above } from "../../parts/check.ts";
import type { Fact, Topic } from "../fact.ts";
import { beside, isLevel, nearestMovingBar } from "../parts/bar-frame.ts";
import type { Plan, PlanBar } from "../schema/index.ts";
import { atMost, told, worked } from "../worked.ts";
import { supportsAlong } from "./bar-supports.ts";
import { mountsOf, printCases, printShares } from "./mount-shares.ts";
import type { SharedStage } from "./structure.ts";
import { wheelGive } from "./wheel-give.ts";

const MODULUS = row(METALS, "aluminium 6063-T5").values.modulus;
/** How far a mount may sink with the print, mm; half of the thinnest layer warns too. */
const SINKS = { error: 0.2, warning: 0.1 };

interface Sunk {
  readonly facts: readonly Fact[];
  /** How far the worst mount on the bar sinks, mm. */
  readonly sag: number;
}

/** Returns how far the bars that carry the plate sink from empty to full, with what wheels and joints add. */
export function arms(stage: SharedStage): Topic {
  const { plan } = stage;
  const give = wheelGive(stage);
  const loads = printShares(plan);
  const found = Object.entries(plan.bars).map(([name, bar]) => {
    const own = mountsOf(plan).filter((mount) => barOf(plan, mount.name) === name && isLevel(bar));
    if (own.length === 0) return undefined;
    const sunk = sinks(
      plan,
      name,
      bar,
      own.map((mount) => ({ mount: mount.name, along: beside(bar, mount).along, force: loads[mount.name] ?? 0 })),
    );
    const total = sunk.sag + give.drop;
    const limit = atMost(Math.min(SINKS.warning, ...plan.layers.map((layer) => layer / 2)));
    const fact: Fact = {
      key: `bar.${name}.change`,
      label: `bar ${name}: all that together`,
      value: total,
      unit: "mm",
      limit,
    };
    return { facts: [...sunk.facts, fact], diagnostics: tooMuch(plan, name, total, sunk.sag, give.drop) };
  });
  const known = found.filter((each) => each !== undefined);
  return {
    sections: [{ title: "Sag from empty to full", facts: [...give.facts, ...known.flatMap(({ facts }) => facts)] }],
    diagnostics: known.flatMap(({ diagnostics }) => diagnostics),
  };
}

function barOf(plan: Plan, mount: string): string | undefined {
  const own = plan.plate.mounts[mount];
  return own === undefined ? undefined : (own.bar ?? nearestMovingBar(plan, { x: own.at[0], y: own.at[1] }));
}

interface Rod {
  readonly modulus: number;
  readonly inertia: number;
}

/** What the print puts on a mount, at worst for it, N, and where along the bar, mm. */
interface Pressed {
  readonly mount: string;
  readonly along: number;
  readonly force: number;
}

function sinks(plan: Plan, name: string, bar: PlanBar, mounts: readonly Pressed[]): Sunk {
  const { inertiaStrong, inertiaWeak } = bar.bar.values;
  const rod = { modulus: MODULUS, inertia: 1e4 * (bar.turned ? inertiaWeak : inertiaStrong) };
  const held = supportsAlong(plan, name, bar);
  const [first, last] = [Math.min(...held), Math.max(...held)];
  const span = last - first;
  const inside = mounts.filter(({ along }) => along > first && along < last);
  // The print stands in one place: what one mount carries at its worst another does not carry with it.
  const force = Math.max(
    0,
    ...printCases(plan).map((shares) => inside.reduce((sum, { mount }) => sum + (shares[mount] ?? 0), 0)),
  );
  const words = `bar ${name}: sag of ${span.toFixed(0)} mm between what holds it`;
  const middle =
    span > 0
      ? worked(simpleBeamDeflection, { force, length: span, ...rod }, { sag: [`bar.${name}.sag`, words] })
      : undefined;
  const beyond = mounts.filter(({ along }) => along < first || along > last);
  const tips = beyond.map((each) =>
    overhang(each, each.along < first ? first - each.along : each.along - last, span, rod),
  );
  const sags = [middle?.values?.sag ?? 0, ...tips.map(({ sag }) => sag)];
  return { facts: [...(middle?.facts ?? []), ...tips.flatMap(({ facts }) => facts)], sag: Math.max(...sags) };
}

/**
 * An overhang a beside a span L sinks by F a^2 (a + L)/(3 E I), as a built-in one of the length a would under
 * F (1 + L/a); without a second support the first is taken to be built in.
 */
function overhang({ mount, force }: Pressed, length: number, span: number, rod: Rod): Sunk {
  const tip = worked(
    cantileverDeflection,
    { force: force * (1 + span / length), at: length, length, ...rod },
    {
      sag: [`mount.${mount}.tip`, `mount ${mount}: sag of its bar, ${length.toFixed(0)} mm beyond what holds it`],
    },
  );
  const slope = worked(
    cantileverSlope,
    { force, at: length, ...rod },
    {
      slope: [`mount.${mount}.tilt`, `mount ${mount}: tilt of its bar there, by its own bend`],
    },
  );
  return { facts: [...tip.facts, ...slope.facts], sag: tip.values?.sag ?? 0 };
}

function tooMuch(plan: Plan, name: string, total: number, bar: number, wheels: number): Diagnostic[] {
  const half = Math.min(...plan.layers) / 2;
  const finding = above({
    value: total,
    unit: "mm",
    error: SINKS.error,
    warning: Math.min(SINKS.warning, half),
    says: (limit) =>
      `a mount on ${name} sinks ${total.toFixed(3)} mm with the print (bar ${bar.toFixed(3)}, wheels and joint ${wheels.toFixed(3)}), over ${limit} mm`,
    set: `bar: one ${Math.ceil((10 * total) / Math.min(SINKS.warning, half)) / 10} times as stiff, on its narrow side, or held nearer to its mounts`,
  });
  return told("stage-tip-sags-with-print", ["bars", name, "bar"], finding);
}
