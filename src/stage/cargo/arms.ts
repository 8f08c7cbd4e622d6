import { METALS } from "../../catalogue/metals.ts";
import type { Diagnostic } from "../../core/diagnostic.ts";
import { row } from "../../core/table.ts";
import { cantileverDeflection } from "../../mechanics/cantilever-deflection.ts";
import { cantileverSlope } from "../../mechanics/cantilever-slope.ts";
import { simpleBeamLoadSag } from "../../mechanics/simple-beam-load-sag.ts";
import { above } from "../../parts/check.ts";
import type { Fact, Topic } from "../fact.ts";
import { beside, isLevel, nearestMovingBar } from "../parts/bar-frame.ts";
import type { Plan, PlanBar } from "../schema/index.ts";
import { atMost, told, worked } from "../worked.ts";
import { type Standing, standingOn, supportsAlong } from "./bar-supports.ts";
import { mountsOf, printOn } from "./mount-shares.ts";
import type { SharedStage } from "./structure.ts";
import type { Support } from "./supports.ts";
import { wheelGive } from "./wheel-give.ts";

const MODULUS = row(METALS, "aluminium 6063-T5").values.modulus;
/** How far a mount may sink with the print, mm; half of the thinnest layer warns too. */
const SINKS = { error: 0.2, warning: 0.1 };

/** Beams that sag by more than this share of their length are refused, so it is the least that such a one sags. */
const FAR = 0.1;

interface Sunk {
  readonly facts: readonly Fact[];
  /** How far the worst mount on the bar sinks, mm. */
  readonly sag: number;
  /** What no number tells: mounts that the bar carries without a sag. */
  readonly lines: readonly string[];
}

/** Returns how far the bars that carry the plate sink from empty to full, with what wheels and joints add. */
export function arms(stage: SharedStage): Topic {
  const { plan } = stage;
  const give = wheelGive(stage);
  const found = Object.entries(plan.bars).flatMap(([name, bar]) => {
    const own = mountsOf(plan).filter((mount) => carries(bar) && barOf(plan, mount.name) === name);
    if (own.length === 0) return [];
    const sunk = sinks(plan, name, bar, own);
    const total = sunk.sag + give.drop;
    const limit = atMost(Math.min(SINKS.warning, ...plan.layers.map((layer) => layer / 2)));
    const [key, label] = [`bar.${name}.change`, `bar ${name}: all that together`];
    const facts: Fact[] = [...sunk.facts, { key, label, value: total, unit: "mm", limit }];
    return [{ facts, lines: sunk.lines, diagnostics: tooMuch(plan, name, total, sunk.sag, give.drop) }];
  });
  const facts = [...give.facts, ...found.flatMap((each) => each.facts)];
  const lines = found.flatMap((each) => each.lines);
  return {
    sections: [{ title: "Sag from empty to full", facts, ...(lines.length === 0 ? {} : { lines }) }],
    diagnostics: found.flatMap(({ diagnostics }) => diagnostics),
  };
}

/** A bar without a length, which is told of elsewhere, has no places along it. */
const carries = (bar: PlanBar) => isLevel(bar) && beside(bar, { x: bar.to[0], y: bar.to[1] }).length > 0;

function barOf(plan: Plan, mount: string): string | undefined {
  const own = plan.plate.mounts[mount];
  return own === undefined ? undefined : (own.bar ?? nearestMovingBar(plan, { x: own.at[0], y: own.at[1] }));
}

interface Rod {
  readonly modulus: number;
  readonly inertia: number;
}

/**
 * Of loads anywhere on a bar none makes any place sink more than all of them would make sink the place that gives most,
 * standing there (its rates of give are symmetric, Maxwell, and no load lifts the place it stands on). So each mount is
 * given all that the print presses on the bar at one time. A bar that runs on over a support is stiffer than this.
 */
function sinks(plan: Plan, name: string, bar: PlanBar, mounts: readonly Support[]): Sunk {
  const { inertiaStrong, inertiaWeak } = bar.bar.values;
  const rod = { modulus: MODULUS, inertia: 1e4 * (bar.turned ? inertiaWeak : inertiaStrong) };
  const held = supportsAlong(plan, name, bar);
  const placed = mounts.map((mount) => ({ mount: mount.name, on: standingOn(held, beside(bar, mount).along) }));
  const free = placed.filter(({ on }) => on.kind !== "over").map(({ mount }) => mount);
  const force = printOn(plan, free);
  const each = placed.map(({ mount, on }): Sunk => {
    if (on.kind === "between") return between(mount, on, force, rod);
    if (on.kind === "beyond") return overhang(mount, on, force, rod);
    return { facts: [], sag: 0, lines: [`mount ${mount} stands straight over what holds ${name}: no sag of its bar`] };
  });
  return {
    facts: each.flatMap(({ facts }) => facts),
    sag: Math.max(...each.map(({ sag }) => sag)),
    lines: each.flatMap(({ lines }) => lines),
  };
}

type On<Kind extends Standing["kind"]> = Extract<Standing, { readonly kind: Kind }>;

function between(mount: string, { at, length }: On<"between">, force: number, rod: Rod): Sunk {
  const words = `mount ${mount}: sag of its bar, ${at.toFixed(0)} mm into ${length.toFixed(0)} between what holds it`;
  const { facts, values } = worked(
    simpleBeamLoadSag,
    { force, at, length, ...rod },
    { sag: [`mount.${mount}.sag`, words] },
  );
  return { facts, sag: values?.sag ?? length * FAR, lines: [] };
}

/**
 * An overhang a beside a span L sinks by F a^2 (a + L)/(3 E I), as a built-in one of the length a would under
 * F (1 + L/a); without a second support the first is taken to be built in.
 */
function overhang(mount: string, { length, span }: On<"beyond">, force: number, rod: Rod): Sunk {
  const words = `mount ${mount}: sag of its bar, ${length.toFixed(0)} mm beyond what holds it`;
  const tip = worked(
    cantileverDeflection,
    { force: force * (1 + span / length), at: length, length, ...rod },
    { sag: [`mount.${mount}.tip`, words] },
  );
  const tilt = `mount ${mount}: tilt of its bar there, by its own bend`;
  const slope = worked(cantileverSlope, { force, at: length, ...rod }, { slope: [`mount.${mount}.tilt`, tilt] });
  return { facts: [...tip.facts, ...slope.facts], sag: tip.values?.sag ?? length * FAR, lines: [] };
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
