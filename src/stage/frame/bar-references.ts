import type { Diagnostic, Path } from "../../core/diagnostic.ts";
import { nearest } from "../../core/nearest.ts";
import { presented } from "../../core/parameter.ts";
import type { Plan } from "../schema/index.ts";
import { stranger, wrong } from "./complaint.ts";
import { footingOf, footParameters, isMisfit, type Misfit, MOUNTS, mountOf, typedAt } from "./footing.ts";
import { besideBar, type PlacedBar, placedBars } from "./placed-bar.ts";
import { soundBars } from "./sound-bars.ts";
import { isTouched, mayLackNames, touchedNames, type Unread } from "./unread.ts";

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

const WHY = {
  mount: "how a foot is bolted to its bar decides its whole shape",
  body: "a bar that is no body carries nothing",
  role: "what is bolted to the wrong bar does not fit it, or does not move as it should",
  carried: "the plate rises with the bars that carry it",
  foot: "a screw without a foot is held by nothing",
};

/** The bars as names in the plan can mean them. */
interface Bars {
  readonly sound: readonly PlacedBar[];
  /** Bars that are there, but are no bodies or could not be read: told already. */
  readonly broken: readonly string[];
  /** Whether a name that is not among them may be one that could not be read. */
  readonly lacking: boolean;
}

/** Returns what is wrong with the bars themselves and with every name that should be a bar's. */
export function wrongBars(plan: Plan, unread: Unread = []): Diagnostic[] {
  const own = { ...plan, bars: soundBars(plan, unread) };
  const names = [...Object.keys(plan.bars), ...touchedNames(unread, "bars")];
  const bars: Bars = {
    sound: placedBars(own),
    broken: names.filter((name) => own.bars[name] === undefined),
    lacking: mayLackNames(plan, unread, "bars"),
  };
  return [
    ...placedBars(plan).flatMap(noLength),
    ...strangeMounts(plan),
    ...Object.keys(plan.screws).flatMap((name) => wrongScrew(own, name, bars, unread)),
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
      WHY.mount,
    ),
  );
}

function noLength({ name, length, wide, high }: PlacedBar): Diagnostic[] {
  if (length > 0 && wide > 0 && high > 0) return [];
  const says = length > 0 ? `${name} has a section of ${wide} x ${high} mm` : `${name} begins and ends at one place`;
  return [wrong(["bars", name], says, length > 0 ? "width and height above 0" : "to: where the bar ends", WHY.body)];
}

/** Names the bar, what it is, and those that would do. */
function wrongBar(path: Path, name: string, role: Role, { sound, broken, lacking }: Bars): Diagnostic[] {
  const fitting = sound.filter((bar) => bar.kind === role.kind && bar.moves === role.moves).map((bar) => bar.name);
  const bar = sound.find((one) => one.name === name);
  if (bar === undefined) {
    if (broken.includes(name) || lacking) return [];
    const known = fitting.length > 0 ? fitting : sound.map((one) => one.name);
    return stranger(path, "bar", name, known);
  }
  if (fitting.includes(name)) return [];
  const rest = `${bar.moves ? "moves" : "stands still"}`;
  const set = fitting.length > 0 ? `one of ${fitting.join(", ")}` : `a ${role.kind} bar, ${moving(role.moves)}`;
  return [wrong(path, `${name} is ${bar.kind} and ${rest}: ${role.why}`, set, WHY.role)];
}

const moving = (moves: boolean) => (moves ? "with moves: true" : "without moves: true");

function wrongMounts({ plate }: Plan, bars: Bars): Diagnostic[] {
  const mounts = Object.entries(plate.mounts);
  const named = mounts.flatMap(([name, { bar }]) =>
    bar === undefined ? [] : wrongBar(["plate", "mounts", name, "bar"], bar, MOUNT, bars),
  );
  const [without] = mounts.filter(([, { bar }]) => bar === undefined);
  if (without === undefined || bars.broken.length > 0 || bars.lacking) return named;
  if (bars.sound.some(({ kind, moves }) => kind === "level" && moves)) return named;
  const says = "no level bar moves, so nothing carries the mounts of the plate";
  return [
    ...named,
    wrong(["plate", "mounts", without[0]], says, "moves: true at the bars that carry the plate", WHY.carried),
  ];
}

function wrongScrew(plan: Plan, name: string, bars: Bars, unread: Unread): Diagnostic[] {
  const mount = mountOf(plan, name);
  if (mount === undefined) return [];
  const { bar: asked, at } = plan.screws[name] as Plan["screws"][string];
  if (asked !== undefined) {
    const strange = wrongBar(["screws", name, "bar"], asked, mount === "on-post" ? FOOT_POST : FOOT_LEVEL, bars);
    if (strange.length > 0) return strange;
  }
  // What else it stands on is not certain: any bar may be meant, and the second one of a corner is always looked for.
  const open = asked === undefined || mount === "in-corner";
  const doubtful = open ? bars.broken.length > 0 || bars.lacking : bars.sound.every((bar) => bar.name !== asked);
  if (doubtful || touchedNames(unread, "screws").includes(name) || isTouched(unread, "foot")) return [];
  const footing = footingOf(plan, name);
  if (!isMisfit(footing)) return [];
  // A screw that stands in its bar is told of as such.
  const inside = bars.sound.some((bar) => bar.name === asked && within(bar, at) && mount !== "on-top");
  if (inside) return [];
  return [misfit(name, mount, asked, footing)];
}

function misfit(name: string, mount: string, asked: string | undefined, { misses, at }: Misfit): Diagnostic {
  const path = asked === undefined || at !== undefined ? ["screws", name, "at"] : ["screws", name, "bar"];
  const set = at === undefined ? "another bar, or another mount of the foot" : `at: [${at.join(", ")}]`;
  const lacks = asked === undefined ? `no bar carries a foot ${mount} for ${name}` : `${name} has no foot ${mount}`;
  return wrong(path, `${lacks}: ${misses}`, set, WHY.foot);
}

function within(bar: PlacedBar, at: readonly [number, number]): boolean {
  const { along, off } = besideBar(bar, at);
  return bar.kind === "level" && along > 0 && along < bar.length && Math.abs(off) < bar.wide / 2;
}
