import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Vec3 } from "../../geometry/mesh.ts";
import type { Plan } from "../schema/index.ts";
import { stageDefect } from "../stage-defects.ts";
import { gapAtLeast, type Nearest, nearestOf } from "./bar-distance.ts";
import { overlapOf } from "./box-overlap.ts";
import { hundredth } from "./footing.ts";
import { type PlacedBar, placedBar, placedBars } from "./placed-bar.ts";
import { dot, minus, stepped } from "./vector.ts";

/** Bars are joined across this much: a joining plate may lie between two of them. common practice, mm */
const REACH = 6;
/** What two bars may share before they count as one in the other, mm3; as in frame-defects. */
const SHARED = 0.01;
/** No bar is lengthened by more than this to reach another, mm: then it was placed elsewhere on purpose. */
const LENGTHENED = 60;

/**
 * Returns the bars that are joined to nothing: of those that stand still, and of those that rise, each group that does
 * not touch the largest one. What is bolted to a carriage is held by it.
 */
export function looseBars(plan: Plan): Diagnostic[] {
  const bars = placedBars(plan);
  const held = new Set(Object.values(plan.carriages).flatMap(({ arms }) => arms));
  return [false, true].flatMap((moves) => {
    const own = bars.filter((bar) => bar.moves === moves);
    const groups = groupsOf(own).sort((a, b) => b.length - a.length);
    const fast = groups.filter((group) => group.some(({ name }) => held.has(name)));
    const kept = fast.length > 0 ? fast : groups.slice(0, 1);
    return groups.filter((group) => !kept.includes(group)).map((group) => loose(plan, group, kept.flat(), own));
  });
}

function groupsOf(bars: readonly PlacedBar[]): PlacedBar[][] {
  const groups: PlacedBar[][] = [];
  for (const bar of bars) {
    const met = groups.filter((group) => group.some((other) => isJoined(bar, other)));
    for (const group of met) groups.splice(groups.indexOf(group), 1);
    groups.push([...met.flat(), bar]);
  }
  return groups;
}

const isJoined = (one: PlacedBar, other: PlacedBar) =>
  gapAtLeast(one, other) <= REACH && nearestOf(one, other).gap <= REACH + 1e-6;

function loose(plan: Plan, group: readonly PlacedBar[], frame: readonly PlacedBar[], all: readonly PlacedBar[]) {
  const pairs = group.flatMap((bar) => frame.map((other) => ({ bar, other, near: nearestOf(bar, other) })));
  const [best] = pairs.sort((a, b) => a.near.gap - b.near.gap);
  if (best === undefined) throw new RangeError("a group that is loose has a frame that it is loose from");
  const { bar, other, near } = best;
  const rest = group.length === 1 ? "" : `, and with it ${group.length - 1} more`;
  return stageDefect("bar-joins-no-other", {
    level: "warning",
    path: ["bars", bar.name],
    says: `${bar.name} touches no other bar${rest}: ${near.gap.toFixed(1)} mm lie between it and ${other.name}`,
    found: { value: near.gap, unit: "mm" },
    limit: { value: REACH, unit: "mm" },
    set: cureOf(plan, bar, frame, near, all),
  });
}

/** What brings the bar to the frame and into nothing: it is lengthened where it points there, or else moved. */
function cureOf(plan: Plan, bar: PlacedBar, frame: readonly PlacedBar[], near: Nearest, all: readonly PlacedBar[]) {
  const typed = plan.bars[bar.name];
  if (typed === undefined) return "from: and to: of the bar, so that it touches another";
  const longer = lengthened(bar, frame);
  const way = minus(near.there, near.here);
  const moved = { from: stepped(bar.from, way, 1), to: stepped(stepped(bar.from, bar.along, bar.length), way, 1) };
  const ways = [...(longer === undefined ? [] : [longer]), moved];
  const works = ways.find((ends) => {
    const changed = placedBar(bar.name, { ...typed, ...writtenEnds(bar, ends) });
    const others = all.filter(({ name }) => name !== bar.name);
    return frame.some((one) => isJoined(changed, one)) && others.every((one) => isFree(changed, one));
  });
  if (works === undefined) return `from: and to: of ${bar.name}, so that it touches another bar`;
  const ends = Object.entries(works).map(([end, place]) => `${end}: ${written(place)}`);
  return `bars.${bar.name}: ${ends.join(" and ")}`;
}

type Ends = { readonly from?: Vec3; readonly to?: Vec3 };

const isFree = (bar: PlacedBar, other: PlacedBar) => (overlapOf(bar, other)?.volume ?? 0) <= SHARED;

/** Each end that points at a bar of the frame is brought to it. */
function lengthened(bar: PlacedBar, frame: readonly PlacedBar[]): Ends | undefined {
  const end = stepped(bar.from, bar.along, bar.length);
  const back: Vec3 = [-bar.along[0], -bar.along[1], -bar.along[2]];
  const [before, after] = [reach(bar, bar.from, back, frame), reach(bar, end, bar.along, frame)];
  if (before === undefined && after === undefined) return undefined;
  return {
    ...(before === undefined ? {} : { from: stepped(bar.from, back, before) }),
    ...(after === undefined ? {} : { to: stepped(end, bar.along, after) }),
  };
}

function reach(bar: PlacedBar, end: Vec3, outward: Vec3, frame: readonly PlacedBar[]): number | undefined {
  const face = { ...bar, from: end, length: 0 };
  const ahead = frame.flatMap((other) => {
    const { gap, here, there } = nearestOf(face, other);
    const straight = dot(minus(there, here), outward) >= gap - 1e-6;
    return gap > 1e-6 && gap <= LENGTHENED && straight ? [gap] : [];
  });
  return ahead.length === 0 ? undefined : Math.min(...ahead);
}

const rounded = (place: Vec3): [number, number, number] => [
  hundredth(place[0]),
  hundredth(place[1]),
  hundredth(place[2]),
];
const written = (place: Vec3) => `[${rounded(place).join(", ")}]`;

/** As it is typed from the message. */
function writtenEnds(bar: PlacedBar, { from, to }: Ends) {
  const end = stepped(bar.from, bar.along, bar.length);
  return { from: rounded(from ?? bar.from), to: rounded(to ?? end) };
}
