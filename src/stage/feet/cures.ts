import type { Diagnostic } from "../../core/diagnostic.ts";
import type { PrinterOf, Stage } from "../machine.ts";
import { printsAlike } from "../parts/design-of.ts";
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

/** Works out a changed plan; `set` says the change in words. */
type Derive = (plan: Plan, set: string) => Stage;

const HOPELESS: readonly string[] = ["belt-plane-below-lowest-seat", "foot-stack-does-not-fit"];
/** Ways that a message names; the report has all of them. */
const NAMED = 3;

/** Returns the machine with the ways out of every foot that cannot be built, each tried by deriving the plan again. */
export function withCures(stage: Stage, derive: Derive, printer: PrinterOf): Stage {
  const hopeless = stage.diagnostics.filter(isHopeless);
  if (hopeless.length === 0) return stage;
  const once = remembering(derive);
  const cures = new Map(hopeless.map((one) => [one, curesOf(stage, one, once, printer)]));
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
export function curesOf(stage: Stage, hopeless: Diagnostic, derive: Derive, printer: PrinterOf): Cure[] {
  const screw = String(hopeless.path[1]);
  return waysOut(stage.plan, screw, hopeless).map((way) => {
    const { asks, plans, also, skipped } = way;
    if (plans.length === 0) return { way: asks, set: "", helps: false, outcome: skipped ?? "not tried", reprints: 0 };
    const tried = firstThatHelps(plans, ({ set, plan }) => {
      const changed = derive(plan, set);
      return outcomeOf(stage, screw, changed, { also, anew: newParts(stage, changed, printer) });
    });
    return { way: asks, ...tried };
  });
}

type Outcome = Pick<Cure, "helps" | "outcome" | "reprints">;

/** The smallest change that helps, else what came of the largest. */
function firstThatHelps(plans: Way["plans"], outcome: (change: Way["plans"][number]) => Outcome): Omit<Cure, "way"> {
  let last: Omit<Cure, "way"> = { set: "", helps: false, outcome: "not tried", reprints: 0 };
  for (const change of plans) {
    last = { set: change.set, ...outcome(change) };
    if (last.helps) return last;
  }
  return last;
}

/** What is set tells one changed plan from another, so that no machine is worked out twice. */
function remembering(derive: Derive): Derive {
  const known = new Map<string, Stage>();
  return (plan, set) => {
    const stage = known.get(set) ?? derive(plan, set);
    known.set(set, stage);
    return stage;
  };
}

interface Effort {
  readonly also: Way["also"];
  /** Parts of families that are printed anew. */
  readonly anew: number;
}

function outcomeOf(base: Stage, screw: string, changed: Stage, { also, anew }: Effort): Outcome {
  const had = new Set(base.diagnostics.map(keyOf));
  const errors = changed.diagnostics.filter(({ level }) => level === "error");
  const same = errors.filter((one) => isHopeless(one) && one.path[1] === screw);
  const fresh = errors.filter((one) => !same.includes(one) && !had.has(keyOf(one)));
  const left = [...same, ...fresh];
  const reprints = anew + (also === undefined ? 0 : 1);
  const helps = left.length === 0;
  const names = [...new Set(left.map(({ name, path }) => `${name} at ${path.join(".")}`))];
  const outcome = helps ? (also ?? "the foot fits") : `leaves ${names.slice(0, 3).join(" and ")}`;
  return { helps, outcome, reprints };
}

const keyOf = ({ name, path }: Diagnostic) => JSON.stringify([name, path]);

/** How many parts of the changed machine are not printed like those of the first. */
function newParts(base: Stage, changed: Stage, printer: PrinterOf): number {
  const known = new Map(base.parts.map((part) => [part.name, part]));
  return changed.parts.filter((part) => {
    const before = known.get(part.name);
    return before === undefined || !printsAlike(before, part, printer);
  }).length;
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
