import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Vec3 } from "../../geometry/mesh.ts";
import type { Plan } from "../schema/index.ts";
import { stageDefect } from "../stage-defects.ts";
import { overlapOf } from "./box-overlap.ts";
import { footingOf, hundredth, isMisfit, mountOf } from "./footing.ts";
import { looseBars } from "./loose-bars.ts";
import { meetsLine, type PlacedBar, placedBars } from "./placed-bar.ts";
import { soundBars } from "./sound-bars.ts";
import { isTouched, touchedNames, type Unread } from "./unread.ts";
import { dot, minus, stepped } from "./vector.ts";

/** What two bars may share before they count as one in the other, mm3. */
const SHARED = 0.01;
/** Of the screw's length, what may end below its foot's bar or be used up by the foot. mm */
const UNSURE = 80;
/** Beyond any height of a machine, mm. */
const FAR = 1e5;

/**
 * Returns what is wrong with bars and screws as bodies: bars in one another, bars that touch no other, screws that run
 * through a bar. Where a screw stands on a bar that is not known, from what height on it is there is not known either.
 */
export function frameDefects(plan: Plan, unread: Unread = []): Diagnostic[] {
  const sound = { ...plan, bars: soundBars(plan, unread) };
  const touched = touchedNames(unread, "screws");
  const known = ([name, { bar }]: [string, Plan["screws"][string]]) =>
    !touched.includes(name) && (bar === undefined || sound.bars[bar] !== undefined);
  const screws = isTouched(unread, "foot") ? {} : Object.fromEntries(Object.entries(plan.screws).filter(known));
  const bars = placedBars(sound);
  // A bar that was not read may be the one that another is joined to.
  const loose = isTouched(unread, "bars", "carriages") ? [] : looseBars(sound);
  return [...overlaps(bars), ...screwsInBars({ ...sound, screws }, bars), ...loose];
}

function overlaps(bars: readonly PlacedBar[]): Diagnostic[] {
  return bars.flatMap((bar, index) =>
    bars.slice(index + 1).flatMap((other): Diagnostic[] => {
      const shared = overlapOf(bar, other);
      if (shared === undefined || shared.volume <= SHARED) return [];
      const cure = cureOf(bar, other, shared.corners);
      return [
        stageDefect("frame-bars-overlap", {
          level: "error",
          path: ["bars", cure.bar],
          says: `${bar.name} and ${other.name} share ${shared.volume.toFixed(shared.volume < 10 ? 2 : shared.volume < 100 ? 1 : 0)} mm3 round ${middle(shared.corners)}`,
          found: { value: shared.volume, unit: "mm3" },
          limit: { value: SHARED, unit: "mm3" },
          set: cure.set,
        }),
      ];
    }),
  );
}

function middle(corners: readonly Vec3[]): string {
  const mean = (axis: 0 | 1 | 2) => corners.reduce((sum, corner) => sum + corner[axis], 0) / corners.length;
  return written([mean(0), mean(1), mean(2)]);
}

const written = (place: Vec3) => `[${place.map((value) => hundredth(value)).join(", ")}]`;

interface Cure {
  readonly bar: string;
  readonly cut: number;
  readonly set: string;
}

/** The shortest cut off an end of either bar that frees the other. */
function cureOf(bar: PlacedBar, other: PlacedBar, shared: readonly Vec3[]): Cure {
  const ways = [...cuts(bar, shared), ...cuts(other, shared)].sort((a, b) => a.cut - b.cut);
  const [best] = ways.filter(({ cut }) => cut > 0);
  return best ?? { bar: bar.name, cut: 0, set: `from: and to: of ${bar.name} or ${other.name}, so that they touch` };
}

function cuts({ name, from, along, length }: PlacedBar, shared: readonly Vec3[]): Cure[] {
  const places = shared.map((corner) => dot(minus(corner, from), along));
  // Away from the other bar, so that what is typed with two places is free.
  const begin = Math.ceil(Math.max(...places) * 100 - 1e-6) / 100;
  const end = Math.floor(Math.min(...places) * 100 + 1e-6) / 100;
  const left = length - begin;
  return [
    ...(left > 0 ? [{ bar: name, cut: begin, set: `${name}: from: ${written(stepped(from, along, begin))}` }] : []),
    ...(end > 0 ? [{ bar: name, cut: length - end, set: `${name}: to: ${written(stepped(from, along, end))}` }] : []),
  ];
}

function screwsInBars(plan: Plan, bars: readonly PlacedBar[]): Diagnostic[] {
  return Object.entries(plan.screws).flatMap(([name, { at, length, bar: asked }]) => {
    const mount = mountOf(plan, name);
    if (mount === undefined) return [];
    const footing = footingOf(plan, name);
    const own = isMisfit(footing) ? undefined : footing;
    const onTop = mount === "on-top";
    const bottom = own === undefined ? Math.min(...bars.map(lowest)) : own.origin[2] - (onTop ? 0 : own.bar.high);
    const top = bottom + Math.max(length - UNSURE, length / 2);
    // In the bar that shall carry its foot a screw is at any height, unless it stands on top.
    const within = (bar: PlacedBar) =>
      bar.name === asked && !onTop && bar.kind === "level" && meetsLine(bar, at, -FAR, FAR);
    const met = bars.filter((bar) => meetsLine(bar, at, bottom, top) || within(bar));
    return met.map((bar) =>
      stageDefect("screw-axis-inside-bar", {
        level: "error",
        path: ["screws", name, "at"],
        says: `the axis of ${name} at [${at.join(", ")}] runs through ${bar.name}`,
        set: `at: of ${name}, ${besides(bar, at)}`,
      }),
    );
  });
}

const lowest = ({ from, along, length, high }: PlacedBar) => Math.min(from[2], from[2] + along[2] * length) - high / 2;

/** The nearest place beside the bar with room for a usual foot. */
function besides(bar: PlacedBar, at: readonly [number, number]): string {
  const way: Vec3 = [at[0] - bar.from[0], at[1] - bar.from[1], 0];
  const off = dot(way, bar.across);
  const side = off < 0 ? -1 : 1;
  const move = side * (bar.wide / 2 + USUAL) - off;
  return `[${hundredth(at[0] + bar.across[0] * move)}, ${hundredth(at[1] + bar.across[1] * move)}]`;
}

/** From a bar's face to the axis of a foot with a usual bearing and pulley, mm. */
const USUAL = 20;
