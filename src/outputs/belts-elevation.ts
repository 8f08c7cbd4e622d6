import type { BeltGap, BeltNode, LoopChoice, MotorPulley } from "../stage/machine.ts";
import { COLOURS, type Drawn, type View } from "./belts-plan.ts";
import { type Box, line, mm, rectangle, textAt, widthOfText } from "./svg/marks.ts";

/** Free height drawn over and under the belts and the motor's plate, mm. */
const OVER = 25;
const UNDER = 15;

interface Window {
  readonly low: number;
  readonly high: number;
  readonly left: number;
  readonly right: number;
}

/** Returns the belts seen from the front, as far up and down as they and their pulleys reach: x as in plan, z up. */
export function elevationView(
  drawn: Drawn,
  left: number,
  right: number,
  size: number,
): View & { readonly height: number } {
  const { plan, pulleys, loops } = drawn;
  const heights = [...pulleys.flatMap(({ bottom, top }) => [bottom, top]), plan.motor.plateTop];
  const window = { low: Math.min(...heights) - UNDER, high: Math.max(...heights) + OVER, left, right };
  const seen = loops.flatMap((loop) => {
    const pulley = pulleys.find((one) => one.loop === loop.loop);
    return pulley === undefined
      ? []
      : [{ loop, pulley, colour: COLOURS[loops.indexOf(loop) % COLOURS.length] as string }];
  });
  const edge = right + size;
  const marks = [
    ...barMarks(drawn, window),
    ...screwMarks(drawn, window),
    motorMark(drawn, window),
    ...seen.flatMap(({ loop, pulley, colour }) => beltMarks(drawn, loop, pulley, colour)),
    ...planeMarks(seen, edge, size),
    ...gapMarks(drawn, seen, right, size),
  ];
  const widest = edge + widthOfText("plane of a-very-long-name at -1000.00", size);
  const [top, bottom] = [-window.high, -window.low];
  const corners = [
    { x: left, y: top },
    { x: widest, y: bottom },
  ];
  return { marks, lines: [], labels: [], corners, height: window.high - window.low };
}

function boxOf(left: number, right: number, low: number, high: number): Box {
  return { left, right, top: -high, bottom: -low };
}

/** Bars cut off where the view ends. */
function barMarks({ plan }: Drawn, { low, high }: Window): string[] {
  return Object.values(plan.bars).flatMap(({ bar, from, to, moves, turned }) => {
    const { width, height } = bar.values;
    const [across, upright] = turned ? [height, width] : [width, height];
    const level = Math.abs(from[2] - to[2]) < 1e-6;
    const along = Math.abs(from[0] - to[0]) > Math.abs(from[1] - to[1]);
    const aside = level && along ? 0 : across / 2;
    const above = level ? upright / 2 : 0;
    const bottom = Math.max(low, Math.min(from[2], to[2]) - above);
    const top = Math.min(high, Math.max(from[2], to[2]) + above);
    if (top <= bottom) return [];
    const box = boxOf(Math.min(from[0], to[0]) - aside, Math.max(from[0], to[0]) + aside, bottom, top);
    return [rectangle(box, { class: moves ? "bar moves" : "bar" })];
  });
}

function screwMarks({ plan, pulleys }: Drawn, { high }: Window): string[] {
  const low = Math.min(plan.motor.plateTop, ...pulleys.map(({ bottom }) => bottom));
  return Object.values(plan.screws).map(({ at, screw }) => {
    const half = screw.values.diameter / 2;
    return rectangle(boxOf(at[0] - half, at[0] + half, low, high), { class: "screw" });
  });
}

/** The top of the plate that the motor hangs from, and its shaft as high as the pulleys. */
function motorMark({ plan, pulleys, loops }: Drawn, { low }: Window): string {
  const x = loops.flatMap(({ nodes }) => nodes).find(({ kind }) => kind === "motor")?.x ?? plan.motor.at[0];
  const { body, shaftDiameter } = plan.motor.motor.values;
  const { plateTop } = plan.motor;
  const top = Math.max(plateTop, ...pulleys.map((pulley) => pulley.top));
  return [
    rectangle(boxOf(x - body / 2, x + body / 2, low, plateTop), { class: "motor" }),
    rectangle(boxOf(x - shaftDiameter / 2, x + shaftDiameter / 2, plateTop, top), { class: "screw" }),
  ].join("\n");
}

function beltMarks(drawn: Drawn, { loop, nodes }: LoopChoice, pulley: MotorPulley, stroke: string): string[] {
  const { plane } = pulley;
  const half = (drawn.plan.loops[loop]?.width ?? 0) / 2;
  const reach = nodes.flatMap(({ x, radius }) => [x - radius, x + radius]);
  const belt = boxOf(Math.min(...reach), Math.max(...reach), plane - half, plane + half);
  return [
    ...nodes.map((node) => bodyMark(node, plane, stroke)),
    ...nodes.filter(({ kind }) => kind === "motor").map(({ x }) => hubMark(x, pulley, stroke)),
    rectangle(belt, { class: "strip", fill: stroke }),
  ];
}

function bodyMark({ x, flange, groove, rim }: BeltNode, plane: number, stroke: string): string {
  const half = groove / 2 + rim;
  return rectangle(boxOf(x - flange, x + flange, plane - half, plane + half), { class: "flange", stroke });
}

function hubMark(x: number, { pulley, hub, bottom, top }: MotorPulley, stroke: string): string {
  const { hubDiameter, hubLength } = pulley.values;
  const [low, high] = hub === "up" ? [top - hubLength, top] : [bottom, bottom + hubLength];
  return rectangle(boxOf(x - hubDiameter / 2, x + hubDiameter / 2, low, high), { class: "flange", stroke });
}

interface Seen {
  readonly loop: LoopChoice;
  readonly pulley: MotorPulley;
  readonly colour: string;
}

/** The height of each belt's middle, beside the view; those that lie near each other are spread. */
function planeMarks(seen: readonly Seen[], edge: number, size: number): string[] {
  let last = Number.POSITIVE_INFINITY;
  return [...seen]
    .sort((a, b) => a.pulley.plane - b.pulley.plane)
    .flatMap(({ loop, pulley, colour }) => {
      const y = Math.min(-pulley.plane + size * 0.35, last - size * 1.3);
      last = y;
      const start = { x: edge - size * 0.8, y: -pulley.plane };
      const end = { x: edge, y: y - size * 0.35 };
      const words = `plane of ${loop.loop} at ${mm(pulley.plane)}`;
      return [
        line(start, end, { class: "leader" }),
        textAt({ x: end.x + size * 0.3, y }, words, size, { fill: colour }),
      ];
    });
}

/** The height between belts whose paths meet in plan, at the right edge of the view. */
function gapMarks({ plan }: Drawn, seen: readonly Seen[], right: number, size: number): string[] {
  const halfOf = ({ loop }: Seen) => (plan.loops[loop.loop]?.width ?? 0) / 2;
  return seen.flatMap((lower) =>
    seen.flatMap((upper) => {
      const met = ({ defect, between }: BeltGap) => defect === "belts-too-close" && between[1] === upper.loop.loop;
      const gap = lower.loop.gaps.find(met)?.gap;
      if (gap === undefined) return [];
      const [low, high] = [lower.pulley.plane + halfOf(lower), upper.pulley.plane - halfOf(upper)];
      const x = right - size;
      const words = `${mm(gap)} between`;
      const foot = { x: x - size * 0.4 - widthOfText(words, size), y: -(low + high) / 2 + size * 0.35 };
      return [line({ x, y: -low }, { x, y: -high }, { class: "gap" }), textAt(foot, words, size)];
    }),
  );
}
