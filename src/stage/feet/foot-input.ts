import type { Path } from "../../core/diagnostic.ts";
import { asTyped } from "../as-typed.ts";
import { type Footing, inFootFrame, rounded } from "../frame/footing.ts";
import { type PlacedBar, placedBars } from "../frame/placed-bar.ts";
import type { LoadCases, LoopChoice, MotorPulley } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { type BeltAtFoot, beltAt } from "./belt-at-foot.ts";

type Values = Readonly<Record<string, unknown>>;

/** What the plan says of one foot. */
export interface FootInput {
  readonly screw: string;
  readonly loop: string;
  readonly footing: Footing;
  /** Belt plane of the loop over the datum, mm. */
  readonly plane: number;
  readonly belt: BeltAtFoot | undefined;
  /** As a preset would state them, by name. */
  readonly derived: Values;
  /** Where in the plan each of them comes from. */
  readonly sources: Readonly<Record<string, Path>>;
}

/** How far round a foot posts of the frame are looked for, mm, and how many it takes note of. */
const POSTS = { within: 200, most: 4 };
/** Letters of a label that fit on a foot. */
const LABEL = 8;

interface Given {
  readonly plan: Plan;
  readonly screw: string;
  readonly footing: Footing;
  readonly typed: Values;
  readonly pulley: MotorPulley;
  readonly loops: readonly LoopChoice[];
  readonly loads: LoadCases | undefined;
}

/** Returns what follows from the plan for the foot of one screw; loops and loads that are not known are left out. */
export function footInput(given: Given): FootInput {
  const { screw, footing, pulley, loops } = given;
  const choice = loops.find(({ loop }) => loop === pulley.loop);
  const belt = choice === undefined ? undefined : beltAt(choice, screw, given.plan, footing.angle);
  const parts = { ...turning(given), ...standing(given), ...pulling(given, belt), ...carrying(given) };
  const entries = Object.entries(parts).filter(([, [value]]) => value !== undefined);
  return {
    screw,
    loop: pulley.loop,
    footing,
    plane: pulley.plane,
    belt,
    derived: Object.fromEntries(entries.map(([name, [value]]) => [name, value])),
    sources: Object.fromEntries(entries.map(([name, [, path]]) => [name, path])),
  };
}

/** A value, undefined where it is not known or not used, and the place in the plan it comes from. */
type Sourced = Readonly<Record<string, readonly [unknown, Path]>>;

function turning({ plan, screw, typed, pulley, footing }: Given): Sourced {
  const loop = plan.loops[pulley.loop];
  return {
    screw: [asTyped((plan.screws[screw] as Plan["screws"][string]).screw), ["screws", screw, "screw"]],
    belt: [loop === undefined ? undefined : asTyped(loop.belt), ["loops", pulley.loop, "belt"]],
    beltWidth: [loop?.width, ["loops", pulley.loop, "width"]],
    beltPlane: [rounded(pulley.plane - footing.origin[2]), ["motor", "plateTop"]],
    label: [typed.label === undefined ? screw.slice(0, LABEL) : undefined, ["screws", screw]],
    boltLengths: [plan.stock.bolts, ["stock", "bolts"]],
  };
}

function standing({ plan, screw, footing, typed }: Given): Sourced {
  const { bar, section, offset, offsetB, cornerAngle, origin } = footing;
  const at = ["screws", screw, "at"];
  const asSeen = section.width === bar.bar.values.width && section.height === bar.bar.values.height;
  const item = asTyped(bar.bar);
  const turned = { ...(typeof item === "string" ? { row: item } : item), ...section };
  const onTop = typed.mount === "on-top";
  const posts = postsNear(footing, placedBars(plan));
  return {
    bar: [asSeen ? item : turned, ["bars", bar.name, "bar"]],
    axisOffset: [onTop ? undefined : offset, at],
    offset: [onTop ? offset : undefined, at],
    axisOffsetB: [offsetB, at],
    cornerAngle: [cornerAngle, at],
    framePosts: [posts.length === 0 ? undefined : posts, ["bars"]],
    stageLowest: [rounded(plan.travel.lowest - origin[2]), ["travel", "lowest"]],
  };
}

/** Without a sound loop the belt is taken to go half round the pulley, which pulls most. */
function pulling({ plan, pulley }: Given, belt: BeltAtFoot | undefined): Sourced {
  const tension = plan.loops[pulley.loop]?.tension;
  const pull = belt?.pull ?? (tension === undefined ? undefined : 2 * tension);
  return {
    beltSpans: [belt?.spans, ["loops", pulley.loop, "nodes"]],
    beltPull: [pull === undefined ? undefined : tenth(pull), ["loops", pulley.loop, "tension"]],
  };
}

/** Loads count only where the foot carries, and a crash where set screws or a collar hold the screw. */
function carrying({ loads, screw, typed }: Given): Sourced {
  const worst = typed.thrust === "hung" ? undefined : loads?.worst[screw];
  const onScrews = typed.thrust === undefined || typed.thrust === "pulley" || typed.thrust === "collar";
  return {
    axialLoad: [worst === undefined ? undefined : tenth(Math.max(0, worst)), ["masses"]],
    crashForce: [onScrews && loads !== undefined ? tenth(loads.crash) : undefined, ["motor", "torque"]],
  };
}

/** Loads as a person would state them, so that the last digits of a sum do not make another part. N */
export const tenth = (force: number) => Math.round(force * 10) / 10;

/** Returns the upright bars near a foot, the nearest first; its own post is none of them. */
function postsNear(footing: Footing, bars: readonly PlacedBar[]) {
  const uprights = bars.filter(({ name, kind, moves }) => kind === "upright" && !moves && name !== footing.bar.name);
  return uprights
    .map((bar) => {
      const [x, y] = inFootFrame(footing, [bar.from[0], bar.from[1]]);
      return { x, y, width: rounded(acrossFrame(bar, footing.angle)) };
    })
    .filter(({ x, y }) => Math.hypot(x, y) <= POSTS.within)
    .sort((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y))
    .slice(0, POSTS.most);
}

/** The side of the square along the foot's own axes that holds the post's section. */
function acrossFrame({ across, wide, high }: PlacedBar, angle: number): number {
  const turn = Math.atan2(across[1], across[0]) - (angle * Math.PI) / 180;
  const [c, s] = [Math.abs(Math.cos(turn)), Math.abs(Math.sin(turn))];
  return Math.max(wide * c + high * s, wide * s + high * c);
}
