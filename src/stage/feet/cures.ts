import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Stage } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { type Way, waysOut } from "./ways-out.ts";

/** One way out of a foot that cannot be built: what it asks for and what came of it. */
export interface Cure {
  readonly way: string;
  readonly set: string;
  /** Whether the changed plan has no error that the first one had not, and the foot fits. */
  readonly helps: boolean;
  readonly outcome: string;
  /** Parts that are printed anew, the foot itself among them. */
  readonly reprints: number;
}

type Derive = (plan: Plan) => Stage;

const HOPELESS: readonly string[] = ["belt-plane-below-lowest-seat", "foot-stack-does-not-fit"];
/** Ways that a message names; the report has all of them. */
const NAMED = 3;

/** Returns the machine with the ways out of every foot that cannot be built, each tried by deriving the plan again. */
export function withCures(stage: Stage, derive: Derive): Stage {
  const hopeless = stage.diagnostics.filter(isHopeless);
  if (hopeless.length === 0) return stage;
  const cures = new Map(hopeless.map((one) => [one, curesOf(stage, one, derive)]));
  const sections = [...cures].map(([{ path }, tried]) => ({
    title: `Ways out for the foot of ${path[1]}`,
    facts: [],
    lines: tried.map(lineOf),
  }));
  const diagnostics = stage.diagnostics.map((one) => {
    const tried = cures.get(one);
    return tried === undefined ? one : { ...one, set: settingOf(one, tried) };
  });
  return { ...stage, sections: [...stage.sections, ...sections], diagnostics };
}

const isHopeless = ({ name }: Diagnostic) => HOPELESS.includes(name);

/** Returns each way out of one foot that cannot be built, in the order of the least trouble, with what came of it. */
export function curesOf(stage: Stage, hopeless: Diagnostic, derive: Derive): Cure[] {
  const screw = String(hopeless.path[1]);
  return waysOut(stage.plan, screw, hopeless).map((way) => {
    const { asks, plans, also, skipped } = way;
    if (plans.length === 0) return { way: asks, set: "", helps: false, outcome: skipped ?? "not tried", reprints: 0 };
    const tried = plans.map(({ set, plan }) => ({ set, ...outcomeOf(stage, screw, derive(plan), also) }));
    const best = tried.find(({ helps }) => helps) ?? tried[tried.length - 1];
    return { way: asks, helps: false, outcome: "not tried", reprints: 0, set: "", ...best };
  });
}

function outcomeOf(base: Stage, screw: string, changed: Stage, also: Way["also"]) {
  const had = new Set(base.diagnostics.map(keyOf));
  const errors = changed.diagnostics.filter(({ level }) => level === "error");
  const same = errors.filter((one) => isHopeless(one) && one.path[1] === screw);
  const fresh = errors.filter((one) => !same.includes(one) && !had.has(keyOf(one)));
  const left = [...same, ...fresh];
  const reprints = newParts(base, changed) + (also === undefined ? 0 : 1);
  const helps = left.length === 0;
  const names = [...new Set(left.map(({ name, path }) => `${name} at ${path.join(".")}`))];
  const outcome = helps ? (also ?? "the foot fits") : `leaves ${names.slice(0, 3).join(" and ")}`;
  return { helps, outcome, reprints };
}

const keyOf = ({ name, path }: Diagnostic) => JSON.stringify([name, path]);

/** How many parts of the changed machine are not among those of the first. */
function newParts(base: Stage, changed: Stage): number {
  const known = new Map(base.parts.map(({ name, parameters }) => [name, JSON.stringify(parameters)]));
  return changed.parts.filter(({ name, parameters }) => known.get(name) !== JSON.stringify(parameters)).length;
}

function lineOf({ way, set, helps, outcome, reprints }: Cure): string {
  if (set === "") return `${way}: ${outcome}`;
  return `${way}, ${set}: ${outcome}${helps ? `; prints ${counted(reprints)}` : ""}`;
}

const counted = (parts: number) => `${parts} ${parts === 1 ? "part" : "parts"} anew`;

function settingOf({ set }: Diagnostic, cures: readonly Cure[]): string {
  const helping = cures.filter(({ helps }) => helps).slice(0, NAMED);
  if (helping.length === 0) return `no single change that was tried helps; of this foot alone: ${set}`;
  return helping.map((cure) => `${cure.set} (prints ${counted(cure.reprints)})`).join(", or ");
}
