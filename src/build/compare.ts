import type { FootChoice, Stage } from "../stage/index.ts";
import { changeWords } from "./change-words.ts";
import { canonical } from "./hash.ts";
import { shapeHash } from "./shape-hash.ts";
import type { StagePart } from "./stage-parts.ts";

/** What to do with a part that is there when the plan changes. */
export type Action = "keep" | "flip" | "shim" | "reprint" | "print" | "drop";

export interface Verdict {
  readonly name: string;
  readonly action: Action;
  /** Height of the ring to lay under the bearing, mm. */
  readonly shim?: number;
  readonly why: string;
  readonly before: StagePart | undefined;
  readonly after: StagePart | undefined;
}

/** A machine with its parts. */
export interface Compared {
  readonly stage: Stage;
  readonly parts: readonly StagePart[];
}

/** The highest shim that is worth it, mm; the share of its width that must still hold a bearing. Design rules. */
const HIGHEST_SHIM = 3;
const HELD = 0.6;

/** What may differ between two feet while a print of one can still do the other's work. */
const PLANE: readonly string[] = ["beltPlane", "hub", "washers", "label"];
/** What is only checked, never drawn. */
const LOADS: readonly string[] = [
  ...[
    "axialLoad",
    "lightestLoad",
    "steadyLoad",
    "otherSink",
    "beltPull",
    "crashForce",
    "bearingToNut",
    "stageLowest",
    "nutFloat",
  ],
  ...["placeTemperature", "beltSpans"],
];

/** Returns what to do with each part, in the order of the new machine, those it has no more last. */
export function compareParts(before: Compared, after: Compared): Verdict[] {
  const old = new Map(before.parts.map((part) => [part.request.name, part]));
  const verdicts = after.parts.map((part) => {
    const name = part.request.name;
    const was = old.get(name);
    if (was === undefined) return { name, action: "print" as const, why: "it is new", before: was, after: part };
    return { name, ...judged(was, part, before.stage, after.stage), before: was, after: part };
  });
  const names = new Set(verdicts.map(({ name }) => name));
  const dropped = before.parts.filter(({ request }) => !names.has(request.name));
  const why = "the machine has no such part any more";
  return [
    ...verdicts,
    ...dropped.map((part) => ({
      name: part.request.name,
      action: "drop" as const,
      why,
      before: part,
      after: undefined,
    })),
  ];
}

type Judgement = Pick<Verdict, "action" | "shim" | "why">;

function judged(was: StagePart, part: StagePart, before: Stage, after: Stage): Judgement {
  if (was.hash === part.hash) return { action: "keep", why: "the same hash" };
  const changed = changedParameters(was, part);
  const drawn = changed.filter((key) => !LOADS.includes(key));
  const told = () =>
    changed.length === 0
      ? "the printer's settings differ"
      : changeWords(was.request, part.request, drawn.length > 0 ? drawn : changed, after.plan.units);
  const shape = shapeHash(part);
  if (shape !== undefined && shape === shapeHash(was)) return { action: "keep", why: `the same shape; ${told()}` };
  const foot = (stage: Stage) => stage.feet.find((one) => one.part.name === part.request.name);
  const [oldFoot, newFoot] = [foot(before), foot(after)];
  const alike = changed.every((key) => PLANE.includes(key) || LOADS.includes(key));
  const saved = oldFoot === undefined || newFoot === undefined || !alike ? undefined : reused(was, oldFoot, newFoot);
  return saved ?? { action: "reprint", why: told() };
}

/** Returns how the old print can carry the pulley at its new height: hub turned over, or a ring under the bearing. */
function reused(was: StagePart, old: FootChoice, { candidates }: FootChoice): Judgement | undefined {
  const near = was.request.printer.layer / 2;
  const ways = candidates.map(({ hub, seat, rings }) => {
    const same = canonical(rings) === canonical(old.candidates[0]?.rings ?? []);
    return {
      hub,
      rise: seat - old.seat,
      flips: hub !== old.hub,
      stack: same ? "" : `, rings ${rings.join(" + ") || "none"}`,
    };
  });
  const level = ways
    .filter(({ rise }) => Math.abs(rise) <= near + 1e-9)
    .sort((a, b) => Number(a.flips) - Number(b.flips))[0];
  if (level !== undefined) {
    const off = `the belt is ${Math.abs(level.rise).toFixed(2)} mm off its plane${level.stack}`;
    return level.flips
      ? { action: "flip", why: `hub ${level.hub} instead of ${old.hub}: ${off}` }
      : { action: "keep", why: off };
  }
  const most = Math.min(HIGHEST_SHIM, pocketOf(was) - HELD * widthOf(was));
  const raised = ways
    .filter(({ rise, flips }) => !flips && rise > 0 && rise <= most + 1e-9)
    .sort((a, b) => a.rise - b.rise)[0];
  if (raised === undefined) return undefined;
  return {
    action: "shim",
    shim: raised.rise,
    why: `a ring under the bearing, hub ${raised.hub} as before${raised.stack}`,
  };
}

const pocketOf = ({ designed }: StagePart) =>
  designed.design.dimensions.find(({ key }) => key === "pocketDepth")?.value ?? 0;

function widthOf({ request }: StagePart): number {
  const { bearing } = request.parameters as { bearing?: { values: { width: number } } };
  return bearing?.values.width ?? Number.POSITIVE_INFINITY;
}

function changedParameters({ request: was }: StagePart, { request: is }: StagePart): string[] {
  const keys = [...new Set([...Object.keys(was.parameters), ...Object.keys(is.parameters)])];
  return keys.filter((key) => canonical(was.parameters[key]) !== canonical(is.parameters[key]));
}
