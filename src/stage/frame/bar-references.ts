import type { Diagnostic, Path } from "../../core/diagnostic.ts";
import { nearest } from "../../core/nearest.ts";
import { presented } from "../../core/parameter.ts";
import type { Plan } from "../schema/index.ts";
import { stranger, wrong } from "./complaint.ts";
import { footingOf, footParameters, isMisfit, MOUNTS, mountOf, typedAt } from "./footing.ts";
import { besideBar, type PlacedBar, placedBars } from "./placed-bar.ts";

/** What a bar must be, to be named in a place of the plan. */
interface Role {
  readonly kind: "level" | "upright";
  readonly moves: boolean;
  readonly why: string;
}

const FOOT_LEVEL: Role = { kind: "level", moves: false, why: "a foot stands on a level bar that stands still" };
const FOOT_POST: Role = { kind: "upright", moves: false, why: "a foot on-post embraces an upright bar" };
const MOUNT: Role = { kind: "level", moves: true, why: "a mount of the plate stands on a level bar that moves" };
const POST: Role = { kind: "upright", moves: false, why: "a carriage runs on an upright bar that stands still" };
const ARM: Role = { kind: "level", moves: true, why: "an arm is a level bar that moves" };

/** Returns what is wrong with the bars themselves and with every name that should be a bar's. */
export function wrongBars(plan: Plan): Diagnostic[] {
  const bars = placedBars(plan);
  return [
    ...bars.flatMap(noLength),
    ...strangeMounts(plan),
    ...Object.keys(plan.screws).flatMap((name) => wrongScrew(plan, name, bars)),
    ...wrongMounts(plan, bars),
    ...Object.entries(plan.carriages).flatMap(([name, { post, arms }]) => [
      ...wrongBar(["carriages", name, "post"], post, POST, bars),
      ...arms.flatMap((arm, index) => wrongBar(["carriages", name, "arms", index], arm, ARM, bars)),
    ]),
  ];
}

/** A word that is no mount, once where all feet have it in common. */
function strangeMounts(plan: Plan): Diagnostic[] {
  const screws = Object.keys(plan.screws).filter((name) => mountOf(plan, name) === undefined);
  const places = screws.map(
    (name) => [typedAt(plan, name, "mount") ?? ["foot"], footParameters(plan, name).mount] as const,
  );
  const once = new Map(places.map(([path, word]) => [path.join("."), { path, word }]));
  return [...once.values()].map(({ path, word }) =>
    wrong(
      path,
      `${presented(word)} is no mount of a foot`,
      nearest(String(word), MOUNTS) ?? `one of ${MOUNTS.join(", ")}`,
    ),
  );
}

function noLength({ name, length, wide, high }: PlacedBar): Diagnostic[] {
  if (length > 0 && wide > 0 && high > 0) return [];
  const says = length > 0 ? `${name} has a section of ${wide} x ${high} mm` : `${name} begins and ends at one place`;
  return [wrong(["bars", name], says, length > 0 ? "width and height above 0" : "to: where the bar ends")];
}

/** Names the bar, what it is, and those that would do. */
function wrongBar(path: Path, name: string, role: Role, bars: readonly PlacedBar[]): Diagnostic[] {
  const fitting = bars.filter((bar) => bar.kind === role.kind && bar.moves === role.moves).map((bar) => bar.name);
  const bar = bars.find((one) => one.name === name);
  if (bar === undefined) {
    const known = fitting.length > 0 ? fitting : bars.map((one) => one.name);
    return stranger(path, "bar", name, known);
  }
  if (fitting.includes(name)) return [];
  const rest = `${bar.moves ? "moves" : "stands still"}`;
  const set = fitting.length > 0 ? `one of ${fitting.join(", ")}` : `a ${role.kind} bar, ${moving(role.moves)}`;
  return [wrong(path, `${name} is ${bar.kind} and ${rest}: ${role.why}`, set)];
}

const moving = (moves: boolean) => (moves ? "with moves: true" : "without moves: true");

function wrongMounts({ plate }: Plan, bars: readonly PlacedBar[]): Diagnostic[] {
  const mounts = Object.entries(plate.mounts);
  const named = mounts.flatMap(([name, { bar }]) =>
    bar === undefined ? [] : wrongBar(["plate", "mounts", name, "bar"], bar, MOUNT, bars),
  );
  const [without] = mounts.filter(([, { bar }]) => bar === undefined);
  if (without === undefined || bars.some(({ kind, moves }) => kind === "level" && moves)) return named;
  const says = "no level bar moves, so nothing carries the mounts of the plate";
  return [...named, wrong(["plate", "mounts", without[0]], says, "moves: true at the bars that carry the plate")];
}

function wrongScrew(plan: Plan, name: string, bars: readonly PlacedBar[]): Diagnostic[] {
  const mount = mountOf(plan, name);
  if (mount === undefined) return [];
  const { bar: asked, at } = plan.screws[name] as Plan["screws"][string];
  if (asked !== undefined) {
    const strange = wrongBar(["screws", name, "bar"], asked, mount === "on-post" ? FOOT_POST : FOOT_LEVEL, bars);
    if (strange.length > 0) return strange;
  }
  const footing = footingOf(plan, name);
  if (!isMisfit(footing)) return [];
  // A screw that stands in its bar is told of as such.
  const inside = bars.some((bar) => bar.name === asked && within(bar, at) && mount !== "on-top");
  if (inside) return [];
  const path = asked === undefined || footing.at !== undefined ? ["screws", name, "at"] : ["screws", name, "bar"];
  const set = footing.at === undefined ? "another bar, or another mount of the foot" : `at: [${footing.at.join(", ")}]`;
  const where = asked === undefined ? `no bar carries a foot ${mount} for ${name}: ` : "";
  return [wrong(path, where === "" ? `${name} has no foot ${mount}: ${footing.misses}` : where + footing.misses, set)];
}

function within(bar: PlacedBar, at: readonly [number, number]): boolean {
  const { along, off } = besideBar(bar, at);
  return bar.kind === "level" && along > 0 && along < bar.length && Math.abs(off) < bar.wide / 2;
}
