import { isRefusal } from "../../core/calculation.ts";
import { brief } from "../../mechanics/bounded.ts";
import type { Slide } from "../../mechanics/index.ts";
import type { Plan, PlanLoop } from "../schema/index.ts";
import { fittingMoves, moveInWords } from "./moves.ts";
import { MOTOR } from "./nodes.ts";
import type { SolvedLoop } from "./solve.ts";
import { roomFor, type Tried, tryStock } from "./stock.ts";

/** Returns how many defects a changed plan has that the plan has not; more where the loop still has none to buy. */
export type Outcome = (changed: Plan, loop: string) => number;

/** How far beyond its ends a slide is looked at for a cure, mm. */
const BEYOND = 60;
/** Ways out that a message names. */
const NAMED = 3;

interface Cure {
  /** As it is typed into the plan, and what it is for. */
  readonly set: string;
  readonly plan: Plan;
}

/**
 * Returns the ways out for a loop that nobody sells, each tried; those that bring no new defect come first. None where
 * nobody will read them.
 */
export function stockCures(plan: Plan, solved: SolvedLoop, outcome: Outcome | undefined): string[] {
  if (outcome === undefined) return [];
  const cures = [...slideCure(plan, solved), ...moveCure(plan, solved), ...otherLoop(plan, solved)];
  const tried = cures.map((cure) => ({ ...cure, brings: outcome(cure.plan, solved.ordered.name) }));
  return tried
    .sort((a, b) => a.brings - b.brings)
    .slice(0, NAMED)
    .map(({ set }) => set);
}

/** Returns a loop by its length and teeth. */
export const nameOf = ({ loop }: Pick<Tried, "loop">) => `${brief(loop.length)} mm (${brief(loop.teeth)} teeth)`;

const withLoop = (plan: Plan, name: string, loop: PlanLoop): Plan => ({
  ...plan,
  loops: { ...plan.loops, [name]: loop },
});

/** The shortest slide, no shorter than it is, in whose middle one of the loops would sit. */
function slideCure(plan: Plan, { ordered, before, slide }: SolvedLoop): Cure[] {
  const own = ordered.plan.slide;
  if (slide === undefined || own === undefined) return [];
  const wide: Slide = { ...slide, from: slide.from - BEYOND, to: slide.to + BEYOND };
  const loops = tryStock(ordered.plan, before, wide).flatMap((tried) => {
    const needed = slideFor(tried, ordered.plan, wide);
    if (needed === undefined) return [];
    const half = Math.max(needed.half, (slide.to - slide.from) / 2);
    return [{ from: Math.floor((needed.at - half) * 10) / 10, to: Math.ceil((needed.at + half) * 10) / 10, tried }];
  });
  const moved = ({ from, to }: { from: number; to: number }) =>
    Math.max(Math.abs(from - slide.from), Math.abs(to - slide.to));
  const [least] = loops.sort((a, b) => moved(a) - moved(b));
  if (least === undefined) return [];
  const { from, to, tried } = least;
  const node = own.node === MOTOR ? "" : `node: ${own.node}, `;
  const set = `slide: { ${node}direction: ${own.direction}, from: ${from}, to: ${to} }, for the loop of ${nameOf(tried)}`;
  return [{ set, plan: withLoop(plan, ordered.name, { ...ordered.plan, slide: { ...own, from, to } }) }];
}

/** Where a loop would sit on a wide slide, and the room it needs to the farther side. mm */
function slideFor({ loop }: Tried, plan: PlanLoop, wide: Slide): { at: number; half: number } | undefined {
  const { position } = loop;
  if (isRefusal(position)) return undefined;
  const room = roomFor(plan, loop.length, wide, position);
  return isRefusal(room) ? undefined : { at: position.at, half: Math.max(room.inward, room.outward) };
}

function moveCure(plan: Plan, solved: SolvedLoop): Cure[] {
  const [move] = fittingMoves(plan, solved);
  const screw = plan.screws[move?.screw ?? ""];
  if (move === undefined || screw === undefined) return [];
  const [x = 0, y = 0] = move.at.map((value) => Math.round(value * 100) / 100);
  const set = `${moveInWords(move)} along ${move.bar}, at: [${x}, ${y}], for the loop of ${brief(move.length)} mm`;
  return [{ set, plan: { ...plan, screws: { ...plan.screws, [move.screw]: { ...screw, at: [x, y] } } } }];
}

/** A loop of a whole number of teeth that would fit, if it can be got. */
function otherLoop(plan: Plan, { ordered, before, slide, belt }: SolvedLoop): Cure[] {
  const { pitch } = ordered.plan.belt.values;
  const teeth = Math.round(belt.length / pitch);
  const stock = Array.from({ length: 9 }, (_, index) => (teeth - 4 + index) * pitch);
  const [fits] = tryStock({ ...ordered.plan, stock }, before, slide).filter(({ lost }) => lost === undefined);
  if (fits === undefined) return [];
  const length = fits.loop.length;
  const set = `stock: [${brief(length)}], ${brief(fits.loop.teeth)} teeth, if you can get that`;
  return [{ set, plan: withLoop(plan, ordered.name, { ...ordered.plan, stock: [length] }) }];
}
