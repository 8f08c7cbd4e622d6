import { LOOPS } from "../../catalogue/loops.ts";
import { isRefusal, type Refusal } from "../../core/calculation.ts";
import { tidy } from "../../core/rounding.ts";
import { brief } from "../../mechanics/bounded.ts";
import {
  type BeltLoop,
  beltLoop,
  loopTolerance,
  requiredSlide,
  type Slide,
  type SlidePosition,
  type StockLoop,
  stockLoops,
} from "../../mechanics/index.ts";
import type { BeltNode } from "../machine.ts";
import type { PlanLoop } from "../schema/index.ts";

/** Share of its length, %, by which a loop is drawn out when it is tightened. common practice */
const STRETCH = 0.2;
/** Share of the nominal length beyond which loops are not looked at. */
const REACH = 0.04;

/** How much slide a loop needs and has, mm. `inward` slackens it. */
export interface Room {
  readonly inward: number;
  readonly outward: number;
  readonly hasInward: number;
  readonly hasOutward: number;
  /** What the calculation of what it needs was given. */
  readonly inputs: Parameters<typeof requiredSlide.compute>[0];
}

/** A stock loop and what became of it. */
export interface Tried {
  readonly loop: StockLoop;
  readonly room: Room | undefined;
  /** Why it lost; undefined when it fits. */
  readonly lost: string | undefined;
}

/** Returns the loops one can get, mm: the plan's, else the usual ones, else any whole number of teeth. */
export function stockOf(
  loop: PlanLoop,
  near: number,
): { readonly lengths: readonly number[]; readonly guessed: boolean } {
  const lengths =
    loop.stock ?? LOOPS.rows.filter(({ values }) => values.pitch === loop.belt.values.pitch).map(lengthOf);
  if (lengths.length > 0) return { lengths: [...new Set(lengths)], guessed: false };
  const { pitch } = loop.belt.values;
  const [first, last] = [Math.ceil((near * (1 - REACH)) / pitch), Math.floor((near * (1 + REACH)) / pitch)];
  const teeth = Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => first + index);
  return { lengths: teeth.map((count) => tidy(count * pitch)), guessed: true };
}

const lengthOf = ({ values }: (typeof LOOPS.rows)[number]) => values.length;

/** Tolerance of a loop's length to either side, mm: as the plan has it, else what is usual. */
export function toleranceOf(loop: PlanLoop, length: number): number | Refusal {
  if (loop.lengthTolerance !== undefined) return loop.lengthTolerance;
  const usual = loopTolerance.compute({ length });
  return isRefusal(usual) ? usual : usual.tolerance;
}

/**
 * Returns the stock loops near the length of a sound loop, the one to take first: those that fit, nearest to the middle
 * of the slide. Without a slide, those off by no more than their own tolerance.
 */
export function tryStock(loop: PlanLoop, nodes: readonly BeltNode[], slide: Slide | undefined): readonly Tried[] {
  const nominal = beltLoop(nodes);
  if (isRefusal(nominal)) return [];
  const { lengths } = stockOf(loop, nominal.length);
  const tried = slide === undefined ? unslid(loop, nodes, nominal, lengths) : slidden(loop, nodes, slide, lengths);
  return [...tried.filter(({ lost }) => lost === undefined), ...tried.filter(({ lost }) => lost !== undefined)];
}

function slidden(loop: PlanLoop, nodes: readonly BeltNode[], slide: Slide, lengths: readonly number[]): Tried[] {
  const found = stockLoops(nodes, slide, loop.belt.values.pitch, lengths);
  if (isRefusal(found)) return [];
  return found.map((candidate) => {
    const { position } = candidate;
    if (isRefusal(position)) return { loop: candidate, room: undefined, lost: position.refused };
    const room = roomFor(loop, candidate.length, slide, position);
    return isRefusal(room)
      ? { loop: candidate, room: undefined, lost: room.refused }
      : { loop: candidate, room, lost: shortOf(room) };
  });
}

/** Returns how much slide a loop needs and has where it sits. */
export function roomFor(
  loop: PlanLoop,
  length: number,
  { from, to }: Slide,
  { at, sensitivity }: SlidePosition,
): Room | Refusal {
  const tolerance = toleranceOf(loop, length);
  if (typeof tolerance !== "number") return tolerance;
  // A loop goes over a flange with about as much slack as its teeth are apart.
  const slack = loop.belt.values.pitch;
  const inputs = { slack, length, stretch: STRETCH, tolerance, frame: loop.frameError, sensitivity };
  const needed = requiredSlide.compute(inputs);
  if (isRefusal(needed)) return needed;
  const [below, above] = [at - from, to - at];
  const [hasInward, hasOutward] = sensitivity > 0 ? [below, above] : [above, below];
  return { inward: needed.inward, outward: needed.outward, hasInward, hasOutward, inputs };
}

/** What two lengths may differ by and still be one, mm. */
const SAME = 1e-9;

function shortOf({ inward, outward, hasInward, hasOutward }: Room): string | undefined {
  const short = (way: string, needs: number, has: number) =>
    has < needs - SAME ? [`${brief(has)} mm are left to ${way} it, and it needs ${brief(needs)}`] : [];
  const lacks = [...short("slacken", inward, hasInward), ...short("tighten", outward, hasOutward)];
  return lacks.length === 0 ? undefined : lacks.join("; ");
}

function unslid(loop: PlanLoop, nodes: readonly BeltNode[], belt: BeltLoop, lengths: readonly number[]): Tried[] {
  const near = lengths.filter((length) => Math.abs(length - belt.length) <= REACH * belt.length);
  const off = (length: number) => Math.abs(length - belt.length);
  return near
    .sort((a, b) => off(a) - off(b) || a - b)
    .map((length) => {
      const { pitch } = loop.belt.values;
      const teeth = tidy(length / pitch);
      const position: SlidePosition = { at: 0, node: nodes[0] as BeltNode, sensitivity: 0, loop: belt };
      return { loop: { length, teeth, position }, room: undefined, lost: unfit(loop, length, belt.length) };
    });
}

function unfit(loop: PlanLoop, length: number, around: number): string | undefined {
  const { pitch } = loop.belt.values;
  if (Math.abs(length / pitch - Math.round(length / pitch)) > 1e-6) return `it is no whole number of ${pitch} mm teeth`;
  const tolerance = toleranceOf(loop, length);
  if (typeof tolerance !== "number") return tolerance.refused;
  const off = length - around;
  if (Math.abs(off) <= tolerance + SAME) return undefined;
  const way = off > 0 ? "longer" : "shorter";
  return `it is ${brief(Math.abs(off))} mm ${way} than the way round, over ${tolerance}, and nothing slides`;
}
