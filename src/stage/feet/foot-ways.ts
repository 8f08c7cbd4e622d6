import { BEARINGS } from "../../catalogue/bearings.ts";
import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Vec2 } from "../../geometry/mesh.ts";
import { screwFoot } from "../../parts/screw-foot/index.ts";
import type { Parameters } from "../../parts/screw-foot/parameters.ts";
import { UNCALIBRATED } from "../../printing/printer.ts";
import { asTyped } from "../as-typed.ts";
import { footingOf, footParameters, hundredth, isMisfit } from "../frame/footing.ts";
import type { Plan } from "../schema/index.ts";

/** A change of the plan, in the words of a file. */
export interface Change {
  readonly set: string;
  readonly apply: (plan: Plan) => Plan;
}

/** One way out for a foot that cannot be built: the changes that would do it, the smallest first. */
export interface FootWay {
  readonly changes: readonly Change[];
  /** Why there is nothing to try. */
  readonly skipped?: string;
}

/** A foot that cannot be built. */
export interface Asked {
  readonly plan: Plan;
  readonly screw: string;
  readonly typed: Readonly<Record<string, unknown>>;
  readonly hopeless: Diagnostic;
}

/** The plan with parameters of one foot changed. */
function withFoot(plan: Plan, screw: string, change: Readonly<Record<string, unknown>>): Plan {
  const own = plan.screws[screw] as Plan["screws"][string];
  return { ...plan, screws: { ...plan.screws, [screw]: { ...own, foot: { ...own.foot, ...change } } } };
}

function footChange(screw: string, name: string, value: unknown): Change {
  return {
    set: `screws.${screw}.foot.${name}: ${written(value)}`,
    apply: (plan) => withFoot(plan, screw, { [name]: value }),
  };
}

/** A value as it stands in a file. */
function written(value: unknown): string {
  if (typeof value === "string") return /^[a-z][a-z-]*$/.test(value) ? value : JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(written).join(", ")}]`;
  if (typeof value !== "object" || value === null) return String(value);
  const entries = Object.entries(value).map(([key, each]) => `${key}: ${written(each)}`);
  return `{ ${entries.join(", ")} }`;
}

/** A parameter as the schema of the foot reads it, its default where it was not typed. */
function read<Name extends keyof Parameters>(typed: Asked["typed"], name: Name): Parameters[Name] | undefined {
  const parsed = screwFoot.schema.shape[name]?.safeParse(typed[name]);
  return parsed?.success ? (parsed.data as Parameters[Name]) : undefined;
}

function flipped(asked: Asked): FootWay {
  const hub = read(asked.typed, "hub");
  if (hub !== "up" && hub !== "down") return { changes: [], skipped: "up and down were both tried" };
  return { changes: [footChange(asked.screw, "hub", hub === "up" ? "down" : "up")] };
}

function otherRings(asked: Asked): FootWay {
  const washers = read(asked.typed, "washers");
  if (washers === undefined) return { changes: [], skipped: "one, none and two rings were tried" };
  const typed = washers.map(asTyped);
  const [fewer, more] = [typed.slice(0, -1), [...typed, ...typed.slice(-1)]];
  return {
    changes: (isLow(asked) ? [fewer] : [fewer, more]).map((rings) => footChange(asked.screw, "washers", rings)),
  };
}

const isLow = ({ hopeless }: Asked) => hopeless.name === "belt-plane-below-lowest-seat";

function thinnerBearing(asked: Asked): FootWay {
  const own = read(asked.typed, "bearing")?.values;
  const rows = BEARINGS.rows.filter(({ values }) => values.bore === own?.bore && values.width < own.width);
  if (rows.length === 0) return { changes: [], skipped: "none is listed" };
  const thickest = [...rows].sort((a, b) => b.values.width - a.values.width);
  return { changes: thickest.map(({ key }) => footChange(asked.screw, "bearing", key)) };
}

/** Beside a bar the seat may go below its top, under it lower still. */
function lowerMount(asked: Asked): FootWay {
  const mount = read(asked.typed, "mount");
  if (mount === "on-top") return besideTheBar(asked.plan, asked.screw, "on-side");
  return mountedUnder(asked.plan, asked.screw);
}

/** Returns the change that hangs a foot under its bar: it stays where it is in plan, unless it stands on top. */
export function mountedUnder(plan: Plan, screw: string): FootWay {
  const mount = read(footParameters(plan, screw), "mount");
  if (mount === "on-top") return besideTheBar(plan, screw, "under");
  if (mount === "on-side" || mount === "in-corner") return { changes: [footChange(screw, "mount", "under")] };
  return { changes: [], skipped: mount === "under" ? "it hangs there" : `a foot ${mount} has no lower mount` };
}

function besideTheBar(plan: Plan, screw: string, mount: "on-side" | "under"): FootWay {
  const footing = footingOf(plan, screw);
  const parsed = screwFoot.schema.safeParse({ ...footParameters(plan, screw), mount, offset: 0 });
  if (isMisfit(footing) || !parsed.success) return { changes: [], skipped: "its other parameters do not allow it" };
  const { axis } = screwFoot.open.derive(parsed.data, UNCALIBRATED) as { readonly axis: number };
  const { at } = plan.screws[screw] as Plan["screws"][string];
  const out = footing.section.width / 2 + axis - footing.offset;
  const turn = ((footing.angle + 90) * Math.PI) / 180;
  const place: Vec2 = [hundredth(at[0] + out * Math.cos(turn)), hundredth(at[1] + out * Math.sin(turn))];
  const { set, apply } = footChange(screw, "mount", mount);
  const moved = (before: Plan): Plan => {
    const mounted = apply(before);
    const own = mounted.screws[screw] as Plan["screws"][string];
    return { ...mounted, screws: { ...mounted.screws, [screw]: { ...own, at: [place[0], place[1]] } } };
  };
  return { changes: [{ set: `${set} and screws.${screw}.at: [${place.join(", ")}]`, apply: moved }] };
}

function hubless({ screw, typed }: Asked): FootWay {
  const pulley = read(typed, "pulley");
  if (pulley === undefined || pulley.values.hubLength === 0) return { changes: [], skipped: "it has no hub" };
  const { flangeThickness, toothWidth } = pulley.values;
  const item = asTyped(pulley);
  const bare = { hubLength: 0, height: 2 * flangeThickness + toothWidth, setScrewFromEnd: 0 };
  const own = { ...(typeof item === "string" ? { row: item } : item), ...bare };
  const { set } = footChange(screw, "pulley", own);
  const apply = (plan: Plan) => withFoot(plan, screw, { pulley: own, thrust: "collar" });
  return { changes: [{ set: `${set} and thrust: collar`, apply }] };
}

/** The ways out of feet by themselves, each foot by its own change. */
export const FOOT_WAYS = {
  flipped: { asks: "turn the hub over", of: flipped },
  rings: { asks: "change the rings", of: otherRings },
  bearing: { asks: "a thinner bearing of the same bore", of: thinnerBearing },
  mount: {
    asks: "a lower mount: beside the bar instead of on top of it, under it instead of beside it",
    of: lowerMount,
  },
  hubless: { asks: "a pulley without a hub, held by a clamp collar", of: hubless },
} as const satisfies Readonly<Record<string, { readonly asks: string; readonly of: (asked: Asked) => FootWay }>>;
