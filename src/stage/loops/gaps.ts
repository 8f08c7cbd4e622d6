import { type Calculation, isRefusal } from "../../core/calculation.ts";
import {
  beltFlangeGap,
  beltGap,
  beltPostGap,
  distance,
  distanceToSegment,
  type LoopSpan,
  pulleyGap,
  segmentDistance,
  spanGap,
} from "../../mechanics/index.ts";
import type { BeltGap, BeltNode } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { outlineBetween, outlineDistance, outlineDistanceFrom } from "./bars.ts";
import { heightsOf, nearestSpan, type Strip, spanName } from "./strips.ts";

/** Air that must be there, and that had better be there, mm. common practice */
const BESIDE = { error: 1, warning: 2 };
const FLANGE = { error: 0.5, warning: 1 };
/** Belts whose paths come as near as this in plan must clear each other in height, mm. */
const MEET = 3;
/** How far the nut and the washer on an idler stand above it, mm. */
const NUT = 10;

/** Returns every gap of a belt that could be too narrow, to what it passes and within itself. */
export function gapsOf(plan: Plan, strip: Strip, strips: readonly Strip[]): readonly BeltGap[] {
  const others = strips.filter((other) => other !== strip);
  return [
    ...toUprights(plan, strip),
    ...toIdlerBolts(plan, strip, others),
    ...toBars(plan, strip),
    ...others.flatMap((other) => [...toBelt(strip, other), ...toFlanges(strip, other)]),
    ...withinItself(strip),
    ...bodies(plan, strip, others),
  ];
}

type Kind = Pick<BeltGap, "defect" | "between" | "error" | "warning">;

/** A gap as a calculation gives it; none where the calculation refuses. */
function gap<Input extends string>(
  kind: Kind,
  of: Calculation<Input, "gap">,
  inputs: Readonly<Record<Input, number>>,
): BeltGap[] {
  const outcome = of.compute(inputs);
  if (isRefusal(outcome)) return [];
  return [{ ...kind, gap: outcome.gap, from: { calculation: of.name, result: "gap", inputs } }];
}

const side = (strip: Strip, at: number) => `${strip.name}, ${spanName(strip, at)}`;

/** Screws that this belt does not turn; they stand through every plane. */
function toUprights(plan: Plan, strip: Strip): BeltGap[] {
  const foreign = Object.entries(plan.screws).filter(([name]) => strip.nodes.every((node) => node.name !== name));
  return foreign.flatMap(
    ([
      name,
      {
        at: [x, y],
        screw,
      },
    ]) => {
      const near = nearestSpan(strip, { x, y });
      const kind = {
        defect: "belt-too-near-upright",
        between: [side(strip, near.at), `screw ${name}`],
        ...BESIDE,
      } as const;
      return gap(kind, beltPostGap, {
        distance: near.distance,
        radius: screw.values.diameter / 2,
        beyond: near.beyond,
      });
    },
  );
}

/** Bolts of the idlers of other loops: each stands from below up to its nut. */
function toIdlerBolts(plan: Plan, strip: Strip, others: readonly Strip[]): BeltGap[] {
  const heights = heightsOf(strip);
  return others.flatMap((other) =>
    other.nodes.flatMap((node) => {
      const bore = plan.idlers[node.name]?.idler.values.bore;
      const top = topOf(other, node);
      if (node.kind !== "idler" || bore === undefined || heights === undefined || top === undefined) return [];
      if (heights[0] >= top + NUT) return [];
      const near = nearestSpan(strip, node);
      const between = [side(strip, near.at), `bolt of ${node.name}`] as const;
      const kind = { defect: "belt-too-near-upright", between, ...BESIDE } as const;
      return gap(kind, beltPostGap, { distance: near.distance, radius: bore / 2, beyond: near.beyond });
    }),
  );
}

function topOf({ pulley }: Strip, { groove, rim }: BeltNode): number | undefined {
  return pulley === undefined ? undefined : pulley.plane + groove / 2 + rim;
}

/** Bars that stand in the belt's plane: from its spans, motor pulley and idlers; a foot checks its own. */
function toBars(plan: Plan, strip: Strip): BeltGap[] {
  const heights = heightsOf(strip);
  if (heights === undefined) return [];
  const [low, high] = heights;
  return Object.entries(plan.bars).flatMap(([name, bar]) => {
    const outline = outlineBetween(bar, low - BESIDE.error, high + BESIDE.error);
    if (outline === undefined) return [];
    const spans = strip.spans.map((span) => outlineDistance(outline, span));
    const at = spans.indexOf(Math.min(...spans));
    const beyond = Math.max(strip.inner, strip.outer);
    const kind = { defect: "belt-too-near-bar", between: [side(strip, at), `bar ${name}`], ...BESIDE } as const;
    const nodes = strip.nodes.filter(({ kind: what }) => what !== "screw");
    return [
      ...gap(kind, beltPostGap, { distance: spans[at] as number, radius: 0, beyond }),
      ...nodes.flatMap((node) => {
        const between = [`${strip.name}, ${node.name}`, `bar ${name}`] as const;
        const away = outlineDistanceFrom(outline, node);
        return gap({ ...kind, between }, beltPostGap, { distance: away, radius: 0, beyond: node.flange });
      }),
    ];
  });
}

/** The height between two belts whose paths come near each other in plan; told once, of the lower one. */
function toBelt(strip: Strip, other: Strip): BeltGap[] {
  const [own, its] = [strip.pulley, other.pulley];
  if (own === undefined || its === undefined || own.plane > its.plane) return [];
  if (own.plane === its.plane && strip.name > other.name) return [];
  const meet = strip.spans.some((a) => other.spans.some((b) => segmentDistance(a, b) < MEET + strip.thickness));
  if (!meet) return [];
  const kind = { defect: "belts-too-close", between: [strip.name, other.name], ...BESIDE } as const;
  const inputs = { planeA: own.plane, planeB: its.plane, widthA: strip.width, widthB: other.width };
  return gap(kind, beltGap, inputs);
}

/** Pulleys and idlers of another loop: the belt passes beside them, or over or under them. */
function toFlanges(strip: Strip, other: Strip): BeltGap[] {
  const [own, its] = [strip.pulley, other.pulley];
  if (own === undefined || its === undefined) return [];
  return other.nodes.flatMap((node) => {
    const near = nearestSpan(strip, node);
    const between = [side(strip, near.at), `${node.name} of ${other.name}`] as const;
    const kind = { defect: "belt-too-near-foreign-flange", between, ...FLANGE } as const;
    const inputs = {
      plane: own.plane,
      width: strip.width,
      foreignPlane: its.plane,
      groove: node.groove,
      flange: node.rim,
    };
    const beside = { distance: near.distance, radius: node.flange, beyond: near.beyond };
    return [
      ...wider(gap(kind, beltPostGap, beside), gap(kind, beltFlangeGap, inputs)),
      ...(node.kind === "motor" ? toHub(strip, kind, node, its) : []),
    ];
  });
}

/** The hub of the other loop's motor pulley, over or under its flanges. */
function toHub(
  strip: Strip,
  kind: Kind,
  node: BeltNode,
  { pulley, hub, plane }: NonNullable<Strip["pulley"]>,
): BeltGap[] {
  const { hubLength, hubDiameter } = pulley.values;
  const middle = plane + (hub === "up" ? 1 : -1) * (node.groove / 2 + node.rim + hubLength / 2);
  const near = nearestSpan(strip, node);
  const named = { ...kind, between: [kind.between[0], `hub on the ${node.name}`] } as const;
  const own = (strip.pulley as NonNullable<Strip["pulley"]>).plane;
  const over = { planeA: own, planeB: middle, widthA: strip.width, widthB: hubLength };
  const beside = { distance: near.distance, radius: hubDiameter / 2, beyond: near.beyond };
  return wider(gap(named, beltPostGap, beside), gap(named, beltGap, over));
}

/** Two bodies are clear when they are clear in plan or in height. */
function wider([one]: BeltGap[], [other]: BeltGap[]): BeltGap[] {
  if (one === undefined || other === undefined) return [];
  return [one.gap > other.gap ? one : other];
}

/** Spans of one loop against each other away from their pulleys, and against pulleys that they pass. */
function withinItself(strip: Strip): BeltGap[] {
  const { spans, nodes } = strip;
  const count = spans.length;
  const pairs = spans.flatMap((_, at) => spans.slice(at + 1).map((__, step) => [at, at + 1 + step] as const));
  const between = pairs.flatMap(([a, b]) => {
    const kind = {
      defect: "spans-of-loop-too-close",
      between: [side(strip, a), spanName(strip, b)],
      ...BESIDE,
    } as const;
    const apart = spanDistance(spans[a] as LoopSpan, spans[b] as LoopSpan, (b + 1) % count === a, a + 1 === b);
    return gap(kind, spanGap, { distance: apart, height: strip.thickness });
  });
  const passed = nodes.flatMap((node, index) =>
    spans.flatMap((span, at) => {
      if (at === index || (at + 1) % count === index) return [];
      const names = [side(strip, at), node.name] as const;
      const kind = { defect: "spans-of-loop-too-close", between: names, ...FLANGE } as const;
      const away = distanceToSegment(node, span);
      return gap(kind, beltPostGap, { distance: away, radius: node.flange, beyond: strip.outer });
    }),
  );
  return [...between, ...passed];
}

/** Spans that meet at a pulley draw near each other there; what counts is their far ends. */
function spanDistance(a: LoopSpan, b: LoopSpan, meetBefore: boolean, meetAfter: boolean): number {
  if (!meetBefore && !meetAfter) return segmentDistance(a, b);
  const after = Math.min(distanceToSegment(a.from, b), distanceToSegment(b.to, a));
  const before = Math.min(distanceToSegment(a.to, b), distanceToSegment(b.from, a));
  return Math.min(meetAfter ? after : Number.POSITIVE_INFINITY, meetBefore ? before : Number.POSITIVE_INFINITY);
}

/** Pulleys and idlers against those that share a height with them, and against screws. */
function bodies(plan: Plan, strip: Strip, others: readonly Strip[]): BeltGap[] {
  const pair = (node: BeltNode, name: string, at: { x: number; y: number }, radius: number) => {
    const between = [`${node.name} of ${strip.name}`, name] as const;
    const kind = { defect: "pulley-bodies-collide", between, ...BESIDE } as const;
    const centres = distance(node, at);
    return centres < 1e-6 ? [] : gap(kind, pulleyGap, { centres, first: node.flange, second: radius });
  };
  const after = others.filter((other) => shareHeight(strip, other) && strip.name < other.name);
  return strip.nodes.flatMap((node, index) => [
    ...strip.nodes.slice(index + 1).flatMap((other) => pair(node, other.name, other, other.flange)),
    ...after.flatMap(({ name, nodes }) =>
      nodes.flatMap((other) => pair(node, `${other.name} of ${name}`, other, other.flange)),
    ),
    ...Object.entries(plan.screws)
      .filter(([name]) => !strip.nodes.some((own) => own.name === name))
      .flatMap(([name, { at, screw }]) =>
        pair(node, `screw ${name}`, { x: at[0], y: at[1] }, screw.values.diameter / 2),
      ),
  ]);
}

/** Whether the flanges of two loops come to one height. */
function shareHeight(strip: Strip, other: Strip): boolean {
  if (strip.pulley === undefined || other.pulley === undefined) return false;
  const half = ({ nodes }: Strip) => Math.max(...nodes.map(({ groove, rim }) => groove / 2 + rim));
  return Math.abs(strip.pulley.plane - other.pulley.plane) < half(strip) + half(other);
}
