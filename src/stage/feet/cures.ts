import type { Diagnostic } from "../../core/diagnostic.ts";
import { lengthKeys } from "../length-keys.ts";
import type { PrinterOf, Stage } from "../machine.ts";
import { printsAlike } from "../parts/design-of.ts";
import type { Plan } from "../schema/index.ts";
import { withUnits } from "../with-units.ts";
import { pairsOf } from "./pairs.ts";
import { type Changed, isHopeless, screwOf, type Way, waysOut } from "./ways-out.ts";

/** One way out of the feet that cannot be built: what it asks for and what came of it for the whole machine. */
export interface Cure {
  readonly way: string;
  readonly set: string;
  /** Whether the changed plan has no error that the first one had not, and all feet fit. */
  readonly helps: boolean;
  /** Screws whose feet could not be built and now fit. */
  readonly fits: readonly string[];
  readonly outcome: string;
  /** Parts that are printed anew, those feet among them. */
  readonly reprints: number;
  /** What else is made anew that no family of parts makes. */
  readonly also?: string | undefined;
  /** How many warnings it brings that the first plan had not, where it helps. */
  readonly warns: number;
}

/** Works out a changed plan; `set` says the change in words. */
type Derive = (plan: Plan, set: string) => Stage;

/** Ways that a message names; the report has all of them. */
const NAMED = 3;

/** Returns the machine with the ways out of its feet that cannot be built, each tried by deriving the plan again. */
export function withCures(stage: Stage, derive: Derive, printer: PrinterOf): Stage {
  const hopeless = stage.diagnostics.filter(isHopeless);
  const [first] = hopeless;
  if (first === undefined) return stage;
  const known = remembering(derive);
  const singly = curesOf(stage, known, printer);
  const cures = singly.some(({ helps }) => helps) ? singly : [...singly, ...paired(stage, known, printer)];
  const screws = hopeless.map(screwOf);
  const title = `Ways out for the ${screws.length === 1 ? "foot" : "feet"} of ${listed(screws)}`;
  const section = { title, facts: [], lines: cures.map(asTold(stage.plan)).map(lineOf) };
  const diagnostics = stage.diagnostics.map((one) =>
    isHopeless(one) ? { ...one, set: settingOf(one, first, cures) } : one,
  );
  return { ...stage, sections: [...stage.sections, section], diagnostics };
}

/** Returns each way out of all feet that cannot be built, in the order of the least trouble, with what came of it. */
export function curesOf(stage: Stage, derive: Derive, printer: PrinterOf): Cure[] {
  const hopeless = stage.diagnostics.filter(isHopeless);
  return waysOut(stage.plan, hopeless).map((way) => {
    const { asks, plans, skipped = "not tried" } = way;
    if (plans.length === 0)
      return { way: asks, set: "", helps: false, fits: [], outcome: skipped, reprints: 0, warns: 0 };
    return { way: asks, ...firstThatHelps(way, derive, (changed, also) => outcomeOf(stage, changed, also, printer)) };
  });
}

/** Returns two ways out taken together, where any do; all of them were tried singly before. */
function paired(stage: Stage, derive: Derive, printer: PrinterOf): Cure[] {
  const stuck = (changed: Stage) => changed.diagnostics.filter(isHopeless).map(screwOf);
  const fits = ({ plan, set }: Changed, screw: string) => !stuck(derive(plan, set)).includes(screw);
  const plans = pairsOf(stage.plan, stage.diagnostics.filter(isHopeless), fits);
  const way = "two of these together";
  if (plans.length === 0) return [];
  const outcome = (changed: Stage) => outcomeOf(stage, changed, undefined, printer);
  return [{ way, ...firstThatHelps({ asks: way, plans }, derive, outcome, true) }];
}

type Outcome = Omit<Cure, "way" | "set">;

/**
 * The smallest change that helps and brings no warning with it, else of those that help the one which brings the
 * fewest, or the `first` of them; else what came of the one that leaves the fewest feet, the smallest of those.
 */
function firstThatHelps(
  { plans, further, measure }: Way,
  derive: Derive,
  outcome: (changed: Stage, also: string | undefined) => Outcome,
  first = false,
): Omit<Cure, "way"> {
  let best: Omit<Cure, "way"> | undefined;
  let last: Stage | undefined;
  const tries = (changes: readonly Changed[]) => {
    for (const { set, plan, also } of changes) {
      if (best?.helps && (best.warns === 0 || first)) return;
      last = derive(plan, set);
      const one = { set, ...outcome(last, also) };
      if (best === undefined || rank(one) > rank(best)) best = one;
    }
  };
  tries(plans);
  if (last !== undefined && further !== undefined) tries(further(last));
  const found = best ?? { set: "", helps: false, fits: [], outcome: "not tried", reprints: 0, warns: 0 };
  return measure === undefined ? found : { ...found, outcome: `${found.outcome}; ${measure}` };
}

/** More feet that fit are better, a machine without other errors better than that, with few warnings best. */
const rank = ({ helps, warns, fits }: Outcome): number => (helps ? 1e6 - warns : fits.length);

/** What is set tells one changed plan from another, so that no machine is worked out twice. */
function remembering(derive: Derive): Derive {
  const known = new Map<string, Stage>();
  return (plan, set) => {
    const stage = known.get(set) ?? derive(plan, set);
    known.set(set, stage);
    return stage;
  };
}

/** What the plan accepts of a part or of the machine is no error of it, before the change and after. */
function outcomeOf(base: Stage, changed: Stage, also: string | undefined, printer: PrinterOf): Outcome {
  const had = new Set(base.diagnostics.map(keyOf));
  const errors = changed.diagnostics.filter(({ level }) => level === "error");
  const left = errors.filter((one) => isHopeless(one) || !had.has(keyOf(one)));
  const stuck = left.filter(isHopeless).map(screwOf);
  const fits = base.diagnostics
    .filter(isHopeless)
    .map(screwOf)
    .filter((screw) => !stuck.includes(screw));
  const warnings = changed.diagnostics.filter((one) => one.level === "warning" && !had.has(keyOf(one)));
  const helps = left.length === 0;
  const warns = helps ? warnings.length : 0;
  const outcome = [
    ...(fits.length === 0 ? [] : [`${listed(fits)} ${fits.length === 1 ? "fits" : "fit"}`]),
    ...(helps ? [] : [`leaves ${remaining(left)}`]),
    ...(warns > 0 ? [`warns of ${remaining(warnings)}`] : []),
  ].join("; ");
  return { helps, fits, outcome, reprints: newParts(base, changed, printer), also, warns };
}

/** What is told, by name, each with all its places. */
function remaining(left: readonly Diagnostic[]): string {
  const names = [...new Set(left.map(({ name }) => name))];
  const each = names.map((name) => {
    const places = new Set(left.filter((one) => one.name === name).map(({ path }) => path.join(".")));
    return `${name} at ${listed([...places])}`;
  });
  return each.join("; ");
}

/** `A`, `A and B`, `A, B and C`. */
function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join() : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
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

/** What is to be set as a plan in inches takes it: lengths with their unit. */
function asTold({ units }: Plan): (cure: Cure) => Cure {
  if (units === "mm") return (cure) => cure;
  const lengths = lengthKeys();
  return (cure) => ({ ...cure, set: withUnits(cure.set, lengths) });
}

function lineOf(cure: Cure): string {
  const { way, set, fits, outcome } = cure;
  if (set === "") return `${way}: ${outcome}`;
  return `${way}, ${set}: ${outcome}; ${fits.length > 0 ? "prints" : "would print"} ${anew(cure)}`;
}

const anew = ({ reprints, also }: Cure) =>
  `${reprints} ${reprints === 1 ? "part" : "parts"} anew${also === undefined ? "" : `, and takes ${also}`}`;

/** What is set mends all feet; it is told at the first of them, and where only some are mended, at those. */
function settingOf(one: Diagnostic, first: Diagnostic, cures: readonly Cure[]): string {
  const warned = ({ warns }: Cure) =>
    warns === 0 ? "" : `, with ${warns} ${warns === 1 ? "warning" : "warnings"} more`;
  const said = (each: Cure) => `${each.set} (prints ${anew(each)}${warned(each)})`;
  const isFirst = ({ set }: Cure, at: number) => cures.findIndex((one) => one.helps && one.set === set) === at;
  const helping = cures.filter((each, at) => each.helps && isFirst(each, at)).slice(0, NAMED);
  if (helping.length > 0) {
    if (one !== first) return `what is set for ${screwOf(first)}, which mends this foot too`;
    return helping.map(said).join(", or ");
  }
  const some = cures.filter(({ fits }) => fits.includes(screwOf(one))).slice(0, NAMED);
  if (some.length === 0) return `no single change that was tried helps; of this foot alone: ${one.set}`;
  return `no single change that was tried is enough; this foot fits with ${some.map(said).join(", or ")}`;
}
