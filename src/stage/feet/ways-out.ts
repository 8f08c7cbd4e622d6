import { BEARINGS } from "../../catalogue/bearings.ts";
import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Vec2 } from "../../geometry/mesh.ts";
import { screwFoot } from "../../parts/screw-foot/index.ts";
import type { Parameters } from "../../parts/screw-foot/parameters.ts";
import { UNCALIBRATED } from "../../printing/printer.ts";
import { asTyped } from "../as-typed.ts";
import { footingOf, footParameters, hundredth, isMisfit } from "../frame/footing.ts";
import type { Plan } from "../schema/index.ts";

/** One way out: what it asks for in words, and the plans that would do it, the smallest change first. */
export interface Way {
  readonly asks: string;
  readonly plans: readonly { readonly set: string; readonly plan: Plan }[];
  /** What else is printed anew that no family of parts makes. */
  readonly also?: string;
  /** Why there is nothing to try. */
  readonly skipped?: string;
}

/** Returns the ways out of a foot that cannot be built, in the order of the least trouble. */
export function waysOut(plan: Plan, screw: string, hopeless: Diagnostic): Way[] {
  const typed = footParameters(plan, screw);
  const ways = [flipped, otherRings, thinnerBearing, otherMount, shifted, swapped, hubless, singles, underneath];
  return ways.map((way) => way({ plan, screw, typed, hopeless }));
}

interface Asked {
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

function footWay({ plan, screw }: Asked, name: string, value: unknown) {
  return { set: `screws.${screw}.foot.${name}: ${written(value)}`, plan: withFoot(plan, screw, { [name]: value }) };
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

function flipped(asked: Asked): Way {
  const asks = "turn the hub over";
  const hub = read(asked.typed, "hub");
  if (hub !== "up" && hub !== "down") return { asks, plans: [], skipped: "up and down were both tried" };
  return { asks, plans: [footWay(asked, "hub", hub === "up" ? "down" : "up")] };
}

function otherRings(asked: Asked): Way {
  const asks = "change the rings";
  const washers = read(asked.typed, "washers");
  if (washers === undefined) return { asks, plans: [], skipped: "one, none and two rings were tried" };
  const typed = washers.map(asTyped);
  const [fewer, more] = [typed.slice(0, -1), [...typed, ...typed.slice(-1)]];
  return { asks, plans: (isLow(asked) ? [fewer] : [fewer, more]).map((rings) => footWay(asked, "washers", rings)) };
}

const isLow = ({ hopeless }: Asked) => hopeless.name === "belt-plane-below-lowest-seat";

function thinnerBearing(asked: Asked): Way {
  const asks = "a thinner bearing of the same bore";
  const own = read(asked.typed, "bearing")?.values;
  const rows = BEARINGS.rows.filter(({ values }) => values.bore === own?.bore && values.width < own.width);
  if (rows.length === 0) return { asks, plans: [], skipped: "none is listed" };
  const thickest = [...rows].sort((a, b) => b.values.width - a.values.width);
  return { asks, plans: thickest.map(({ key }) => footWay(asked, "bearing", key)) };
}

/** Beside a bar the seat may go below its top, under it lower still. */
function otherMount(asked: Asked): Way {
  const mount = read(asked.typed, "mount");
  if (mount === "on-top") return besideTheBar(asked);
  const asks = "mount the foot under the bar";
  if (mount === "on-side" || mount === "in-corner") return { asks, plans: [footWay(asked, "mount", "under")] };
  return { asks, plans: [], skipped: `a foot ${mount} has no lower mount` };
}

function besideTheBar(asked: Asked): Way {
  const asks = "mount the foot beside the bar, where the seat may go below its top";
  const { plan, screw, typed } = asked;
  const footing = footingOf(plan, screw);
  const parsed = screwFoot.schema.safeParse({ ...typed, mount: "on-side", offset: 0 });
  if (isMisfit(footing) || !parsed.success) return { asks, plans: [], skipped: "its other parameters do not allow it" };
  const { axis } = screwFoot.open.derive(parsed.data, UNCALIBRATED) as { readonly axis: number };
  const { at } = plan.screws[screw] as Plan["screws"][string];
  const out = footing.section.width / 2 + axis - footing.offset;
  const turn = ((footing.angle + 90) * Math.PI) / 180;
  const place: Vec2 = [hundredth(at[0] + out * Math.cos(turn)), hundredth(at[1] + out * Math.sin(turn))];
  const { set, plan: mounted } = footWay(asked, "mount", "on-side");
  const own = mounted.screws[screw] as Plan["screws"][string];
  const moved: Plan = { ...mounted, screws: { ...mounted.screws, [screw]: { ...own, at: [place[0], place[1]] } } };
  return { asks, plans: [{ set: `${set} and screws.${screw}.at: [${place.join(", ")}]`, plan: moved }] };
}

/** Steps by which the motor's plate is moved, and how many more are tried: a printed seat lies on a layer. mm */
const STEP = 0.1;
const TRIES = 3;
const HEIGHTS = { least: -300, most: 500 };

function shifted({ plan, hopeless }: Asked): Way {
  const asks = "move all belt planes by the shortfall";
  const { found, limit } = hopeless;
  if (found === undefined || limit === undefined) return { asks, plans: [], skipped: "no height is what it fails on" };
  const short = limit.value - found.value;
  const steps = Math.ceil(Math.abs(short) / STEP - 1e-6);
  const plans = Array.from({ length: TRIES }, (_, more) => Math.sign(short) * (steps + more) * STEP)
    .map((by) => hundredth(plan.motor.plateTop + by))
    .filter((top) => top >= HEIGHTS.least && top <= HEIGHTS.most)
    .map((plateTop) => ({ set: `motor.plateTop: ${plateTop}`, plan: { ...plan, motor: { ...plan.motor, plateTop } } }));
  return { asks, plans, also: "the foot fits, with another mount of the motor or shims under it" };
}

function swapped({ plan, screw }: Asked): Way {
  const asks = "swap which loop is lower";
  const { pulleys } = plan.motor;
  const own = pulleys.findIndex(({ loop }) => plan.loops[loop]?.nodes.includes(screw));
  const one = pulleys[own];
  if (one === undefined || pulleys.length < 2) return { asks, plans: [], skipped: "there is one loop only" };
  const plans = pulleys.flatMap((other, index) => {
    if (index === own) return [];
    const exchanged = pulleys.map((pulley, at) =>
      at === own ? { ...pulley, loop: other.loop } : at === index ? { ...pulley, loop: one.loop } : pulley,
    );
    const set = `loop: ${one.loop} and loop: ${other.loop} exchanged in motor.pulleys`;
    return [{ set, plan: { ...plan, motor: { ...plan.motor, pulleys: exchanged } } }];
  });
  return { asks, plans };
}

function hubless(asked: Asked): Way {
  const asks = "a pulley without a hub, held by a clamp collar";
  const pulley = read(asked.typed, "pulley");
  if (pulley === undefined || pulley.values.hubLength === 0) return { asks, plans: [], skipped: "it has no hub" };
  const { flangeThickness, toothWidth } = pulley.values;
  const typed = asTyped(pulley);
  const bare = { hubLength: 0, height: 2 * flangeThickness + toothWidth, setScrewFromEnd: 0 };
  const own = { ...(typeof typed === "string" ? { row: typed } : typed), ...bare };
  const { set, plan } = footWay(asked, "pulley", own);
  return {
    asks,
    plans: [{ set: `${set} and thrust: collar`, plan: withFoot(plan, asked.screw, { thrust: "collar" }) }],
  };
}

function singles({ plan }: Asked): Way {
  const asks = "two single pulleys on the motor instead of a double one";
  const { pulleys } = plan.motor;
  if (!pulleys.some(({ commonFlange }) => commonFlange)) return { asks, plans: [], skipped: "they are single" };
  const apart = pulleys.map((pulley) => ({ ...pulley, commonFlange: false }));
  const changed = { ...plan, motor: { ...plan.motor, pulleys: apart } };
  return { asks, plans: [{ set: "commonFlange: false in motor.pulleys", plan: changed }] };
}

function underneath(): Way {
  const asks = "move the whole drive under the bars";
  return { asks, plans: [], skipped: "another plan, with all feet and the motor's mount anew; not tried" };
}
