import type * as z from "zod";
import { SHIM_RINGS } from "../../catalogue/shim-rings.ts";
import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Design } from "../../parts/family.ts";
import { boughtFor } from "../../parts/screw-foot/bought.ts";
import { screwFoot } from "../../parts/screw-foot/index.ts";
import type { Parameters } from "../../parts/screw-foot/parameters.ts";
import type { Printer } from "../../printing/printer.ts";

type Values = Readonly<Record<string, unknown>>;

/** One way to stack bearing, rings and pulley, worked out as a part. */
export interface Tried {
  readonly hub: "up" | "down";
  readonly rings: readonly string[];
  readonly washers: readonly number[];
  /** Whether its rings are those that were asked for, or one where none were. */
  readonly usual: boolean;
  /** As a preset would state it. */
  readonly typed: Values;
  readonly design: Design;
  /** What the part derives, by name. */
  readonly numbers: Readonly<Record<string, number>>;
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

/** Returns every way to stack a foot: hub up and down, with the rings asked for, or one, none and two. */
export function tryAll(typed: Values, printer: Printer): { tried: Tried[] } | { error: z.ZodError; data: Values } {
  const first = screwFoot.schema.safeParse(typed);
  if (!first.success) return { error: first.error, data: typed };
  const given = first.data as unknown as Parameters;
  const hubs = given.hub === "auto" ? (["down", "up"] as const) : [given.hub];
  const stacks = stacksOf(given);
  const tried = stacks.flatMap((rings, index) =>
    hubs.flatMap((hub) => {
      const own = { ...typed, hub, ...(rings === undefined ? {} : { washers: rings }) };
      const one = tryOne(own, hub, index === 0, printer);
      return one === undefined ? [] : [one];
    }),
  );
  return { tried };
}

/** Nothing for the rings that are there anyway: those asked for, or one. */
function stacksOf(given: Parameters): (readonly unknown[] | undefined)[] {
  if (given.washers !== undefined) return [undefined];
  const [ring] = boughtFor(given).washers;
  return ring === undefined ? [undefined] : [undefined, [], [typedRing(ring), typedRing(ring)]];
}

type Ring = ReturnType<typeof boughtFor>["washers"][number];

const rowOf = (ring: Ring) =>
  SHIM_RINGS.rows.find(
    ({ values }) => values.hole === ring.hole && values.outside === ring.outside && values.thickness === ring.thickness,
  );

const typedRing = (ring: Ring) => rowOf(ring)?.key ?? { ...ring };

function nameOf(ring: Ring): string {
  return rowOf(ring)?.key ?? `${ring.hole} x ${ring.outside} x ${ring.thickness}`;
}

function tryOne(typed: Values, hub: "up" | "down", usual: boolean, printer: Printer): Tried | undefined {
  const parsed = screwFoot.schema.safeParse(typed);
  if (!parsed.success) return undefined;
  const given = parsed.data as unknown as Parameters;
  const design = screwFoot.design(parsed.data, printer);
  const washers = boughtFor(given).washers;
  return {
    hub,
    rings:
      given.washers?.map(({ key }, index) => (key.startsWith("own ") ? nameOf(washers[index] as Ring) : key)) ??
      washers.map(nameOf),
    washers: washers.map(({ thickness }) => thickness),
    usual,
    typed,
    design,
    numbers: Object.fromEntries(design.dimensions.map(({ key, value }) => [key, value])),
    errors: design.diagnostics.filter(({ name, level }) => level === "error" && OF_THE_STACK.includes(name)),
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
function rankOf({ errors, usual, numbers, washers, hub }: Tried, prefer: string): number[] {
  const miss = errors.reduce((sum, { found, limit }) => sum + Math.abs((found?.value ?? 0) - (limit?.value ?? 1)), 0);
  const out = errors.length === 0 ? 0 : 1;
  return [out, miss, usual ? 0 : 1, numbers.seat ?? 0, washers.length, hub === prefer ? 0 : 1];
}

/** Returns why a way was not chosen. */
export function lossOf(one: Tried, chosen: Tried | undefined): string {
  const [error] = one.errors;
  if (error !== undefined) return error.says;
  if (chosen === undefined || one === chosen) return "it fits";
  if (chosen.usual && !one.usual) return "it fits, but not with the usual ring";
  const higher = (one.numbers.seat ?? 0) - (chosen.numbers.seat ?? 0);
  if (higher > 1e-6) return `it fits, with a seat ${higher.toFixed(2)} mm higher`;
  return one.washers.length > chosen.washers.length
    ? "it fits, with more rings"
    : "it fits, with the hub the other way";
}
