import type * as z from "zod";
import { SHIM_RINGS } from "../../catalogue/shim-rings.ts";
import type { Washer } from "../../catalogue/washers.ts";
import { isRefusal } from "../../core/calculation.ts";
import type { Diagnostic } from "../../core/diagnostic.ts";
import { type Item, itemOf } from "../../core/item.ts";
import { runChecks } from "../../parts/check.ts";
import { boughtFor } from "../../parts/screw-foot/bought.ts";
import type { FootCheck } from "../../parts/screw-foot/checks/seat.ts";
import type { Derived } from "../../parts/screw-foot/derive/index.ts";
import { seatsOf } from "../../parts/screw-foot/derive/stack.ts";
import { screwFoot } from "../../parts/screw-foot/index.ts";
import type { Parameters } from "../../parts/screw-foot/parameters.ts";
import type { Printer } from "../../printing/printer.ts";
import type { Candidate } from "../machine.ts";

type Values = Readonly<Record<string, unknown>>;

/** One way to stack bearing, rings and pulley, worked out as a part. */
export interface Tried {
  readonly hub: "up" | "down";
  readonly rings: readonly string[];
  readonly washers: readonly number[];
  /** Whether its rings are those that were asked for, or one where none were. */
  readonly usual: boolean;
  readonly given: Parameters;
  readonly derived: Derived;
  /** What keeps the stack from being built; empty when it fits. */
  readonly errors: readonly Diagnostic[];
}

/** Checks of the foot that say whether the stack on its seat can be built; the others are of its body and loads. */
const OF_THE_STACK: readonly string[] = [
  "seat-below-lowest-floor",
  "washer-spans-both-rings",
  "pulley-rubs-rim",
  "seat-too-tall",
  "belt-plane-off-after-shims",
  "set-screw-hidden-by-rim",
  "set-screw-out-of-reach",
  "screw-tip-grinds-bar",
  "cap-hits-rotating-face",
  "cap-covers-inner-ring",
];

const CHECKS = screwFoot.checks.filter(({ name }) => OF_THE_STACK.includes(name)) as unknown as FootCheck[];

interface Wanted {
  readonly typed: Values;
  readonly printer: Printer;
  /** Names of checks whose errors were accepted for this foot. */
  readonly accepted: readonly string[];
}

/** Every way to stack a foot: those worked out as parts, and those that were only measured out. */
export interface Ways {
  readonly tried: readonly Tried[];
  readonly untried: readonly Candidate[];
}

/**
 * Returns every way to stack a foot: hub up and down, with the rings asked for, or with one, none and two. Rings other
 * than the usual one are worked out only where that one does not fit.
 */
export function tryAll(wanted: Wanted): Ways | { readonly error: z.ZodError; readonly data: Values } {
  const { typed } = wanted;
  const parsed = screwFoot.schema.safeParse(typed);
  if (!parsed.success) return { error: parsed.error, data: typed };
  const given = parsed.data as unknown as Parameters;
  const hubs = given.hub === "auto" ? (["down", "up"] as const) : [given.hub];
  const usual = hubs.map((hub) => tryOne({ ...given, hub }, true, wanted));
  const stacks = otherStacks(given);
  const [fits] = usual.filter(({ errors }) => errors.length === 0);
  if (fits !== undefined) return { tried: usual, untried: untriedOf(fits, stacks, hubs) };
  const others = stacks.flatMap((washers) => hubs.map((hub) => tryOne({ ...given, hub, washers }, false, wanted)));
  return { tried: [...usual, ...others], untried: [] };
}

/** Why a way was not worked out, though its seat would do. */
const NOT_NEEDED = "not tried, since the usual ring fits";

/** The seats of other stacks by the arithmetic of the stack alone. */
function untriedOf({ given, derived }: Tried, stacks: readonly Ring[][], hubs: readonly string[]): Candidate[] {
  const bought = boughtFor(given);
  return stacks.flatMap((rings) => {
    const outcome = seatsOf(given, bought, [rings.map(({ values }) => values.thickness)], derived.lowestSeat);
    const seats = isRefusal(outcome) ? [] : outcome.filter(({ hub }) => hubs.includes(hub));
    return seats.map((one) => ({ ...one, rings: rings.map(({ key }) => key), lost: one.lost ?? NOT_NEEDED }));
  });
}

type Ring = Item<Washer>;

/** No ring and two, where none were asked for. */
function otherStacks(given: Parameters): Ring[][] {
  const ring = given.washers === undefined ? usualRing(given) : undefined;
  return ring === undefined ? [] : [[], [ring, ring]];
}

/** The ring that a foot has where none was asked for, as an item. */
function usualRing(given: Parameters): Ring | undefined {
  const [values] = boughtFor({ ...given, washers: undefined }).washers;
  if (values === undefined) return undefined;
  const same = ({ values: own }: { readonly values: Washer }) =>
    own.hole === values.hole && own.outside === values.outside && own.thickness === values.thickness;
  const listed = SHIM_RINGS.rows.find(same);
  if (listed !== undefined) return itemOf(listed);
  const key = `${values.hole} x ${values.outside} x ${values.thickness}`;
  return { key, values, row: undefined, measured: [], stated: Object.keys(values) };
}

function tryOne(given: Parameters, usual: boolean, { printer, accepted }: Wanted): Tried {
  const derived = screwFoot.open.derive(given, printer) as Derived;
  const checks = CHECKS.filter(({ name, neverAccepted = false }) => neverAccepted || !accepted.includes(name));
  const ring = usualRing(given);
  const rings = given.washers ?? (ring === undefined ? [] : [ring]);
  return {
    hub: derived.hubPoints,
    rings: rings.map(({ key }) => key),
    washers: rings.map(({ values }) => values.thickness),
    usual,
    given,
    derived,
    errors: runChecks(checks, { given, derived, printer }).filter(({ level }) => level === "error"),
  };
}

/** Returns the ways in the order of choice: those that fit, the rings as usual, the lowest seat, the fewest rings. */
export function ranked(tried: readonly Tried[], prefer: "up" | "down" = "down"): Tried[] {
  return [...tried].sort((a, b) => {
    const [one, two] = [rankOf(a, prefer), rankOf(b, prefer)];
    const at = one.findIndex((value, index) => Math.abs(value - (two[index] ?? 0)) > 1e-6);
    return at < 0 ? 0 : (one[at] ?? 0) - (two[at] ?? 0);
  });
}

/** What misses comes by how far it misses; what fits comes by rings, seat, number of rings and hub. */
function rankOf({ errors, usual, derived, washers, hub }: Tried, prefer: string): number[] {
  const miss = errors.reduce((sum, { found, limit }) => sum + Math.abs((found?.value ?? 0) - (limit?.value ?? 1)), 0);
  const out = errors.length === 0 ? 0 : 1;
  return [out, miss, usual ? 0 : 1, derived.seat, washers.length, hub === prefer ? 0 : 1];
}

/** Returns why a way was not chosen. */
export function lossOf(one: Tried, chosen: Tried | undefined): string {
  const [error] = one.errors;
  if (error !== undefined) return error.says;
  if (chosen === undefined || one === chosen) return "it fits";
  const higher = one.derived.seat - chosen.derived.seat;
  if (higher > 1e-6) return `it fits, with a seat ${higher.toFixed(2)} mm higher`;
  return one.washers.length > chosen.washers.length
    ? "it fits, with more rings"
    : "it fits, with the hub the other way";
}

/** Returns the seat of a way over the bar's top: as printed, or as wanted where it cannot be. mm */
export const seatOf = ({ errors, derived }: Tried): number => (errors.length > 0 ? derived.seatWanted : derived.seat);
