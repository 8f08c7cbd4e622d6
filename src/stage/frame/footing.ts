import type { Path } from "../../core/diagnostic.ts";
import { cosDeg, sinDeg } from "../../core/rounding.ts";
import type { Vec2, Vec3 } from "../../geometry/mesh.ts";
import type { Plan } from "../schema/index.ts";
import { besideBar, type PlacedBar, placedBars, topOf } from "./placed-bar.ts";
import { azimuthOf } from "./vector.ts";

/** Where a foot may be bolted to; the words of the screw-foot's `mount`. */
export type Mount = "on-side" | "on-top" | "in-corner" | "on-post" | "under";
export const MOUNTS: readonly Mount[] = ["on-side", "on-top", "in-corner", "on-post", "under"];

/** How a screw stands beside the bar that carries its foot: the foot's own frame, and what follows from the place. */
export interface Footing {
  readonly bar: PlacedBar;
  /** In a corner, the bar along the foot's y. */
  readonly second?: PlacedBar;
  /** Of the foot's own frame: on the screw's axis, at the bar's top; at the datum beside an upright bar. */
  readonly origin: Vec3;
  /** By which the foot's own frame is turned, deg. */
  readonly angle: number;
  /** From the bar's face to the screw's axis; from its middle line where the foot stands on top. mm */
  readonly offset: number;
  readonly offsetB?: number;
  readonly cornerAngle?: number;
  /** The bar's section as the foot sees it: across and, as installed, up; for an upright bar its depth. mm */
  readonly section: { readonly width: number; readonly height: number };
}

/** Why a foot cannot be bolted to a bar where its screw stands, and the nearest place where it could. */
export interface Misfit {
  readonly misses: string;
  /** How far off it is, mm; Infinity when no move of the screw helps. */
  readonly by: number;
  readonly at?: Vec2;
}

/** Least and largest distance from a bar's face to the axis, and the largest from the middle line of one below. mm */
const REACH = { least: 8, most: 80, onTop: 60 };
/** How far a screw may stand off the middle of the post that its foot embraces, mm. */
const OFF_MIDDLE = 0.05;
/** The two bars of a corner are level with one another within this, mm. */
const LEVEL = 0.05;
const CORNER = { least: 85, most: 95 };

export const isMisfit = (outcome: Footing | Misfit): outcome is Misfit => "misses" in outcome;

/** Returns how a foot of a mount stands on a bar under a screw at `at`. */
export function footingOn(bar: PlacedBar, mount: Mount, at: Vec2, all: readonly PlacedBar[], middle: Vec2) {
  if (mount === "on-post") return onPost(bar, at);
  if (bar.kind !== "level") return { misses: `${bar.name} is not level`, by: Infinity };
  const beside = onLevel(bar, mount, at, middle);
  return mount !== "in-corner" || isMisfit(beside) ? beside : inCorner(beside, at, all);
}

function onLevel(bar: PlacedBar, mount: Mount, at: Vec2, middle: Vec2): Footing | Misfit {
  const { along, off } = besideBar(bar, at);
  const flat = bar.length * Math.hypot(bar.along[0], bar.along[1]);
  // Over the middle line the foot turns its front to the middle of the machine.
  const side = Math.abs(off) > 1e-6 ? Math.sign(off) : besideBar(bar, middle).off < 0 ? -1 : 1;
  const offset = rounded(mount === "on-top" ? Math.abs(off) : Math.abs(off) - bar.wide / 2);
  const away: Vec2 = [side * bar.across[0], side * bar.across[1]];
  const beyond = Math.max(0, -along, along - flat);
  const [least, most] = mount === "on-top" ? [0, REACH.onTop] : [REACH.least, REACH.most];
  const short = Math.max(0, least - offset, offset - most);
  if (beyond > 1e-6 || short > 1e-6) {
    const back = along < 0 ? beyond : -beyond;
    const out = offset < least ? short : -short;
    const flatWay = flat > 0 ? [bar.along[0], bar.along[1]] : [0, 0];
    const better = ([0, 1] as const).map((axis) => at[axis] + (flatWay[axis] ?? 0) * back + away[axis] * out);
    const place: Vec2 = [hundredth(better[0] ?? 0), hundredth(better[1] ?? 0)];
    return { misses: missing(bar, mount, offset, beyond, [least, most]), by: Math.hypot(beyond, short), at: place };
  }
  return {
    bar,
    origin: [at[0], at[1], rounded(topOf(bar, along))],
    angle: frameAngle(azimuthOf(away)),
    offset,
    section: { width: bar.wide, height: bar.high },
  };
}

function missing(bar: PlacedBar, mount: Mount, offset: number, beyond: number, [least, most]: number[]): string {
  if (beyond > 1e-6) return `it stands ${beyond.toFixed(1)} mm past the end of ${bar.name}`;
  if (mount === "on-top") return `it stands ${offset.toFixed(1)} mm off the middle of ${bar.name}, over ${most} mm`;
  if (offset < 0) return `it stands over ${bar.name}, not beside it`;
  return `it stands ${offset.toFixed(1)} mm off the face of ${bar.name}; a foot reaches ${least} to ${most} mm`;
}

function onPost(bar: PlacedBar, at: Vec2): Footing | Misfit {
  if (bar.kind !== "upright") return { misses: `${bar.name} is not upright`, by: Infinity };
  const way: Vec2 = [at[0] - bar.from[0], at[1] - bar.from[1]];
  const onto = ([x, y]: Vec3) => way[0] * x + way[1] * y;
  const [a, b] = [onto(bar.across), onto(bar.up)];
  const sideways = Math.abs(a) - bar.wide / 2 > Math.abs(b) - bar.high / 2;
  const front = sideways ? bar.across : bar.up;
  const [ahead, aside] = sideways ? [a, b] : [b, a];
  const [width, depth] = sideways ? [bar.high, bar.wide] : [bar.wide, bar.high];
  const sign = ahead < 0 ? -1 : 1;
  const offset = rounded(Math.abs(ahead) - depth / 2);
  const out: Vec2 = [sign * front[0], sign * front[1]];
  const wanted = Math.min(Math.max(offset, REACH.least), REACH.most);
  const by = Math.hypot(Math.abs(aside) > OFF_MIDDLE ? aside : 0, wanted - offset);
  if (by > 1e-6) {
    const reach = wanted + depth / 2;
    const place: Vec2 = [hundredth(bar.from[0] + out[0] * reach), hundredth(bar.from[1] + out[1] * reach)];
    const says = `${Math.abs(aside).toFixed(2)} mm off its middle and ${offset.toFixed(1)} mm off its face`;
    return { misses: `it stands ${says}; a foot needs 0 and ${REACH.least} to ${REACH.most} mm`, by, at: place };
  }
  const origin: Vec3 = [at[0], at[1], 0];
  return { bar, origin, angle: frameAngle(azimuthOf(out)), offset, section: { width, height: depth } };
}

/** Finds the second bar of a corner: the nearest level one that stands across the first, on the screw's side. */
function inCorner(first: Footing, at: Vec2, all: readonly PlacedBar[]): Footing | Misfit {
  const others = all.filter(({ name, kind, moves }) => name !== first.bar.name && kind === "level" && !moves);
  const fitting = others.flatMap((bar) => {
    const { along, off } = besideBar(bar, at);
    const offset = rounded(Math.abs(off) - bar.wide / 2);
    const [near, far] = [-bar.wide - REACH.most, bar.length + bar.wide + REACH.most];
    const level = Math.abs(topOf(bar, along) - first.origin[2]) <= LEVEL;
    if (!level || offset < REACH.least || offset > REACH.most || along < near || along > far) return [];
    const side = Math.sign(off);
    return [{ bar, offset, away: azimuthOf([side * bar.across[0], side * bar.across[1]]) }];
  });
  const made = fitting.flatMap(({ bar, offset, away }) => cornerOf(first, bar, offset, away));
  const [best] = made.sort((a, b) => a.offset + (a.offsetB ?? 0) - (b.offset + (b.offsetB ?? 0)));
  if (best === undefined) return { misses: `no second bar makes a corner with ${first.bar.name} here`, by: Infinity };
  const { width, height } = best.section;
  const other = best.bar === first.bar ? (best.second as PlacedBar) : best.bar;
  if (other.wide === first.section.width && other.high === first.section.height) return best;
  const says = `${first.bar.name} is ${width} x ${height} and ${other.name} ${other.wide} x ${other.high} mm`;
  return { misses: `the two bars of a corner must be alike: ${says}`, by: Infinity };
}

/** The frame's x runs away from the corner along its first bar, which is the one with the other on its left. */
function cornerOf(first: Footing, bar: PlacedBar, offset: number, away: number): Footing[] {
  const turn = positive(first.angle + 90 - away);
  const swapped = turn > 180;
  const cornerAngle = rounded(180 - (swapped ? 360 - turn : turn));
  if (cornerAngle < CORNER.least || cornerAngle > CORNER.most) return [];
  const other = { ...first, second: bar, offsetB: offset, cornerAngle };
  if (!swapped) return [other];
  return [{ ...other, bar, second: first.bar, angle: frameAngle(away), offset, offsetB: first.offset }];
}

/** The frame's y points away from the bar. */
const frameAngle = (away: number) => rounded(positive(away - 90));
const positive = (angle: number) => ((angle % 360) + 360) % 360;

/** Returns a number without the noise of turning and measuring, so that the same machine gives the same bytes. */
export function rounded(value: number): number {
  const near = Math.round(value * 1e6) / 1e6;
  return near === 0 ? 0 : near;
}

export const hundredth = (value: number) => Math.round(value * 100) / 100;

/** Returns where a place of the machine lies in the foot's own frame, in plan. mm */
export function inFootFrame({ origin, angle }: Pick<Footing, "origin" | "angle">, [x, y]: Vec2): Vec2 {
  const [c, s, dx, dy] = [cosDeg(angle), sinDeg(angle), x - origin[0], y - origin[1]];
  return [rounded(dx * c + dy * s), rounded(dy * c - dx * s)];
}

/** Returns the parameters that a screw's foot was given by hand: those of all feet, and its own laid over them. */
export function footParameters({ foot, screws }: Plan, screw: string): Readonly<Record<string, unknown>> {
  return { ...foot, ...screws[screw]?.foot };
}

/** Returns where a parameter of a foot was typed: with the screw, or with what all feet have in common. */
export function typedAt({ foot, screws }: Plan, screw: string, name: string): Path | undefined {
  if (name in (screws[screw]?.foot ?? {})) return ["screws", screw, "foot", name];
  return name in foot ? ["foot", name] : undefined;
}

/** Returns the mount of a screw's foot; undefined where the word is none. */
export function mountOf(plan: Plan, screw: string): Mount | undefined {
  const typed = footParameters(plan, screw).mount ?? "on-side";
  return MOUNTS.find((mount) => mount === typed);
}

/** Returns the middle of all screws in plan. mm */
export function middleOfScrews({ screws }: Plan): Vec2 {
  const places = Object.values(screws).map(({ at }) => at);
  const mean = (axis: 0 | 1) => places.reduce((sum, at) => sum + at[axis], 0) / Math.max(1, places.length);
  return [mean(0), mean(1)];
}

/** Returns how a screw's foot stands on its bar, the named one or else the nearest that can carry it. */
export function footingOf(plan: Plan, screw: string): Footing | Misfit {
  const { at, bar: asked } = plan.screws[screw] as Plan["screws"][string];
  const mount = mountOf(plan, screw) ?? "on-side";
  const bars = placedBars(plan);
  const middle = middleOfScrews(plan);
  const fixed = bars.filter(({ name, moves }) => (asked === undefined ? !moves : name === asked));
  const tried = fixed.map((bar) => footingOn(bar, mount, at, bars, middle));
  const near = (one: Footing | Misfit) => (isMisfit(one) ? [1, one.by] : [0, one.offset]);
  const [best] = tried.sort((a, b) => {
    const [[outA = 0, offA = 0], [outB = 0, offB = 0]] = [near(a), near(b)];
    return outA - outB || (offA === offB ? 0 : offA - offB);
  });
  const kind = mount === "on-post" ? "upright" : "level";
  return best ?? { misses: `there is no ${kind} bar that stands still`, by: Infinity };
}
