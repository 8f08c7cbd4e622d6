import type { HardwareLine } from "../parts/family.ts";
import type { FootChoice, Stage } from "../stage/index.ts";
import { changeWords } from "./change-words.ts";
import { canonical } from "./hash.ts";
import { printedBody } from "./part-shape.ts";
import { reusedFoot } from "./reused-foot.ts";
import type { StagePart } from "./stage-parts.ts";

/** What to do with a part that is there when the plan changes. */
export type Action = "keep" | "restack" | "flip" | "shim" | "reprint" | "print" | "drop";

export interface Verdict {
  readonly name: string;
  readonly action: Action;
  /** Height of the rings to lie under the bearing, mm. */
  readonly shim?: number;
  /** What is to be bought for the old print as it is to stand; undefined where that is what the new part asks for. */
  readonly hardware?: readonly HardwareLine[];
  readonly why: string;
  readonly before: StagePart | undefined;
  readonly after: StagePart | undefined;
}

/** A machine with its parts. */
export interface Compared {
  readonly stage: Stage;
  readonly parts: readonly StagePart[];
}

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

type Judgement = Pick<Verdict, "action" | "shim" | "why" | "hardware">;

function judged(was: StagePart, part: StagePart, before: Stage, after: Stage): Judgement {
  if (was.hash === part.hash) return { action: "keep", why: "the same hash" };
  const changed = changedParameters(was, part);
  const drawn = changed.filter((key) => !LOADS.includes(key));
  const told = () =>
    changed.length === 0
      ? "the printer's settings differ"
      : changeWords(was.request, part.request, drawn.length > 0 ? drawn : changed, after.plan.units);
  const body = printedBody(part);
  if (body !== undefined && body === printedBody(was)) return { action: "keep", why: `the same shape; ${told()}` };
  const foot = (stage: Stage) => stage.feet.find((one) => one.part.name === part.request.name);
  const [oldFoot, newFoot] = [foot(before), foot(after)];
  const alike = changed.every((key) => PLANE.includes(key) || LOADS.includes(key));
  const feet = oldFoot === undefined || newFoot === undefined || !alike ? undefined : [oldFoot, newFoot];
  const saved = feet === undefined ? undefined : reusedFoot([was, part], feet as [FootChoice, FootChoice]);
  return saved ?? { action: "reprint", why: told() };
}

function changedParameters({ request: was }: StagePart, { request: is }: StagePart): string[] {
  const keys = [...new Set([...Object.keys(was.parameters), ...Object.keys(is.parameters)])];
  return keys.filter((key) => canonical(was.parameters[key]) !== canonical(is.parameters[key]));
}
