import { isRefusal } from "../../core/calculation.ts";
import type { Diagnostic } from "../../core/diagnostic.ts";
import { brief } from "../../mechanics/bounded.ts";
import { lookAlong } from "../../mechanics/slide-stretches.ts";
import type { Plan } from "../schema/index.ts";
import { stageDefect } from "../stage-defects.ts";
import type { SolvedLoop } from "./solve.ts";
import { stockOf, type Tried, toleranceOf, tryStock } from "./stock.ts";
import { nameOf, type Outcome, stockCures } from "./stock-cures.ts";

/** The longest loop with a usual tolerance, mm, and a longer one's as a share of its length: as of that one. */
const LONGEST = 2000;
const OF_LENGTH = 0.8 / LONGEST;
/** Share of the slide at either end in which a loop had better not sit. */
const END = 0.2;
/** Change of another loop's length, mm per mm of slide, above which the slide disturbs it. */
const DISTURBED = 0.3;

/** Returns what is wrong with the length of a loop, its stock and its slide; `outcome` tries a changed plan. */
export function stockDefects(plan: Plan, solved: SolvedLoop, outcome: Outcome | undefined): Diagnostic[] {
  const { ordered, chosen, nodes } = solved;
  const { name, plan: loop } = ordered;
  const path = ["loops", name];
  const screw = nodes.find(({ name: node, kind }) => kind === "screw" && node === loop.slide?.node);
  const found: Diagnostic[] = [];
  if (screw !== undefined) {
    const says = `loop ${name} is to be tightened by moving screw ${screw.name}`;
    const set = `slide: { node: motor, direction: ... }, or node: one of its idlers`;
    found.push(stageDefect("slide-moves-a-screw", { level: "error", path: [...path, "slide", "node"], says, set }));
  }
  if (stockOf(loop, ordered.nominal.length).guessed) {
    const says = `no list of loops with ${loop.belt.values.pitch} mm pitch is known, so any number of teeth is taken`;
    const set = `stock: [...], the lengths that you can buy, near ${ordered.nominal.length.toFixed(0)} mm`;
    found.push(stageDefect("stock-loops-not-listed", { level: "note", path, says, set }));
  }
  found.push(...(chosen === undefined ? unbought(plan, solved, outcome) : nearEnd(solved, chosen)));
  return [...found, ...disturbed(solved)];
}

/** A loop that may fit once its tolerance is stated is told to want that; one that would not even then, both. */
function unbought(plan: Plan, solved: SolvedLoop, outcome: Outcome | undefined): Diagnostic[] {
  const { ordered, before, slide, belt } = solved;
  const { name, plan: loop } = ordered;
  const usual = toleranceOf(loop, belt.length);
  if (typeof usual === "number") return unfitting(plan, solved, outcome);
  const lengthTolerance = Math.ceil(belt.length * OF_LENGTH * 10) / 10;
  const stated = { ...loop, lengthTolerance };
  const tried = tryStock(stated, before, slide);
  const vague = stageDefect("loop-tolerance-not-known", {
    level: "error",
    path: ["loops", name],
    says: `the belt round ${name} is ${belt.length.toFixed(0)} mm long, and the usual tolerances end at ${LONGEST} mm`,
    found: { value: belt.length, unit: "mm" },
    limit: { value: LONGEST, unit: "mm" },
    set: `lengthTolerance: ${lengthTolerance} in loops.${name}, or what the seller of the belt states`,
  });
  if (tried.some(({ lost }) => lost === undefined)) return [vague];
  return [vague, ...unfitting(plan, { ...solved, ordered: { ...ordered, plan: stated }, tried }, outcome)];
}

function unfitting(plan: Plan, solved: SolvedLoop, outcome: Outcome | undefined): Diagnostic[] {
  const { ordered, led, tried, slide, belt } = solved;
  const { name, plan: loop } = ordered;
  const around = belt.length;
  const [nearest] = [...tried].sort((a, b) => Math.abs(a.loop.length - around) - Math.abs(b.loop.length - around));
  const reason = nearest === undefined ? "none lies within 4 % of it" : `${nameOf(nearest)}: ${nearest.lost}`;
  const cures = outcome === undefined ? [] : stockCures(plan, solved, outcome);
  const set = cures.length === 0 ? "other places for the nodes" : cures.join("; or ");
  const says = `no stock loop fits the ${around.toFixed(2)} mm round ${name}; ${reason}`;
  const path = ["loops", name, ...(slide === undefined ? [] : ["slide"])];
  const amounts = nearest === undefined ? {} : { limit: { value: nearest.loop.length, unit: "mm" } as const };
  const found = { value: around, unit: "mm" } as const;
  if (led !== undefined && loop.slide?.node === "motor") {
    const shared = `${led.loop} puts the motor where ${says}`;
    const own = `an idler with a slide of its own in ${name}; or ${set}`;
    const at = ["loops", name, "slide"];
    return [
      stageDefect("slide-disturbs-other-loop", { level: "error", path: at, says: shared, found, ...amounts, set: own }),
    ];
  }
  return [stageDefect("no-stock-loop-within-slide", { level: "error", path, says, found, ...amounts, set })];
}

function nearEnd({ ordered, slide }: SolvedLoop, { loop }: Tried): Diagnostic[] {
  const { position } = loop;
  if (slide === undefined || isRefusal(position)) return [];
  const { from, to } = slide;
  const share = (position.at - from) / (to - from);
  if (share >= END && share <= 1 - END) return [];
  const half = Math.ceil((to - from) * 5) / 10;
  const middle = Math.round(position.at * 10) / 10;
  const says = `the loop of ${brief(loop.length)} mm sits at ${position.at.toFixed(2)} mm, in an end of the slide`;
  const path = ["loops", ordered.name, "slide"];
  const found = { value: position.at, unit: "mm" } as const;
  const limit = { value: share < END ? from + END * (to - from) : to - END * (to - from), unit: "mm" } as const;
  const set = `from: ${tenths(middle - half)} and to: ${tenths(middle + half)}`;
  const why = "there is little left to tighten or slacken it when belt or frame turn out different";
  return [stageDefect("no-stock-loop-within-slide", { level: "warning", path, says, found, limit, why, set })];
}

const tenths = (value: number) => Math.round(value * 10) / 10;

/** Whether another loop's slide changes this loop, which has nothing to take it up. */
function disturbed({ ordered, before, slide, led, chosen }: SolvedLoop): Diagnostic[] {
  if (led === undefined || slide !== undefined || chosen === undefined) return [];
  const per = Math.abs(lookAlong(before, led.slide)(0)?.slope ?? 0);
  if (per <= DISTURBED) return [];
  const says = `a millimetre by which ${led.loop} slides the motor changes loop ${ordered.name} by ${per.toFixed(2)} mm`;
  const set = `an idler with a slide of its own in ${ordered.name}`;
  const path = ["loops", ordered.name];
  const [found, limit] = [{ value: per, unit: "" } as const, { value: DISTURBED, unit: "" } as const];
  return [stageDefect("slide-disturbs-other-loop", { level: "warning", path, says, found, limit, set })];
}
