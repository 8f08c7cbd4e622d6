import type { Assembly } from "../../geometry/assembly.ts";
import type { Body } from "../../stage/bodies/index.ts";
import type { StageDefect } from "../../stage/stage-defects.ts";
import { together } from "./allowed.ts";
import { nearPairs } from "./near-pairs.ts";

/** A gap that is held against a limit by name. mm */
export interface GapRule {
  readonly name: StageDefect;
  readonly error: number;
  /** Left out where there is nothing between right and wrong. */
  readonly warning?: number;
  readonly between: (one: Body, other: Body) => boolean;
}

const TURNS = new Set(["pulley", "idler"]);
const onLoopOf = (one: Body, other: Body) =>
  one.belongsTo.some((member) => member.startsWith("loop ") && other.belongsTo.includes(member));
const onAxisOf = (one: Body, other: Body) =>
  one.belongsTo.some((member) => !member.startsWith("loop ") && other.belongsTo.includes(member));
const onScrew = ({ kind, moves, belongsTo }: Body) =>
  kind !== "screw" && !moves && belongsTo.some((member) => member.startsWith("screw "));

/** Every gap that is held against a limit. The limits are common practice. */
export const GAP_RULES: readonly GapRule[] = [
  {
    name: "belts-too-close",
    error: 1,
    warning: 2,
    between: (one, other) => one.kind === "belt" && other.kind === "belt",
  },
  {
    name: "belt-too-near-foreign-flange",
    error: 0.5,
    warning: 1,
    between: (one, other) => one.kind === "belt" && TURNS.has(other.kind) && !onLoopOf(one, other),
  },
  {
    name: "pulley-bodies-collide",
    error: 1,
    warning: 2,
    between: (one, other) => TURNS.has(one.kind) && TURNS.has(other.kind) && !onAxisOf(one, other),
  },
  {
    name: "belt-too-near-bracket",
    error: 1,
    between: (one, other) => one.kind === "belt" && other.kind === "part" && !together(one, other),
  },
  {
    name: "stage-meets-foot",
    error: 3,
    between: (one, other) => one.moves && onScrew(other),
  },
];

/** A gap that is too small. `gap` is 0 for bodies that touch. mm */
export interface Narrow {
  /** Of the rule. */
  readonly name: StageDefect;
  readonly first: Body;
  readonly second: Body;
  readonly gap: number;
  readonly level: "error" | "warning";
  readonly limit: number;
}

/**
 * Returns the gaps that are smaller than a rule wants, measured between the bodies as they stand at the bottom of the
 * travel. `known` are pairs that stand in one another, which is told already. Round bodies are polygons inside their
 * circles, so a gap beside them measures up to 0.05 mm too large; between levels it is exact.
 */
export function narrowGaps(
  bodies: readonly Body[],
  hall: Assembly,
  known: (first: Body, second: Body) => boolean = () => false,
): Narrow[] {
  const farthest = Math.max(...GAP_RULES.map(({ error, warning }) => warning ?? error));
  const boxes = bodies.map(({ box }) => box);
  return nearPairs(boxes, farthest).flatMap(([at, other]): Narrow[] => {
    const [first, second] = [bodies[at], bodies[other]];
    if (first === undefined || second === undefined) return [];
    const rule = GAP_RULES.find(({ between }) => between(first, second) || between(second, first));
    if (rule === undefined || known(first, second)) return [];
    const limit = rule.warning ?? rule.error;
    const gap = hall.gap({ solid: first.solid, lift: 0 }, { solid: second.solid, lift: 0 }, limit);
    if (gap >= limit - 1e-6) return [];
    const wrong = gap < rule.error - 1e-6;
    return [
      { name: rule.name, first, second, gap, level: wrong ? "error" : "warning", limit: wrong ? rule.error : limit },
    ];
  });
}
