import type { z } from "zod";
import type { Item } from "../../core/item.ts";

/** Threads for which heads, washers, holes and stock lengths are all known. */
const BOLTS = ["M3", "M4", "M5", "M6", "M8"];
/** Sizes that may be nothing: a pulley without a hub, a screw axis at the hub's end. */
const MAY_BE_ZERO = ["hubLength", "flangeThickness", "setScrewFromEnd", "setScrewCount"];
const LARGEST = 1e6;

interface Bought {
  readonly bar: Item;
  readonly bearing: Item;
  readonly screw: Item;
  readonly pulley: Item;
  readonly belt: Item;
  readonly material: Item;
  readonly collar?: Item | undefined;
  readonly washers?: readonly Item[] | undefined;
  readonly pocketDepth?: number | undefined;
}

/** Refuses sizes of bought items that no such thing can have, and a pocket that is no pocket for its bearing. */
export function refineParameters(given: Bought, ctx: z.RefinementCtx): void {
  const { bar, bearing, screw, pulley, belt, material, collar, washers = [] } = given;
  const single = { bar, bearing, screw, pulley, belt, material, ...(collar === undefined ? {} : { collar }) };
  for (const [name, item] of Object.entries(single)) refineItem([name], item, ctx);
  washers.forEach((washer, index) => {
    refineItem(["washers", index], washer, ctx);
  });
  const bolt = String(bar?.values?.mountBolt);
  if (!BOLTS.includes(bolt)) complain(ctx, ["bar"], `there is no data for ${bolt} mount bolts`, BOLTS.join(", "));
  refineDepth(given, ctx);
}

function refineItem(path: (string | number)[], item: Item | undefined, ctx: z.RefinementCtx): void {
  for (const [name, value] of Object.entries(item?.values ?? {})) {
    if (typeof value !== "number") continue;
    const zero = MAY_BE_ZERO.includes(name);
    if (value > 0 && value < LARGEST) continue;
    if (zero && value === 0) continue;
    complain(ctx, [...path, name], `${name} is ${value}`, zero ? "0 or more" : "a size above 0");
  }
}

function refineDepth({ bearing, pocketDepth }: Bought, ctx: z.RefinementCtx): void {
  const width = bearing?.values?.width;
  if (pocketDepth === undefined || typeof width !== "number") return;
  const [least, most] = [0.6 * width, width + 0.5];
  if (pocketDepth >= least - 1e-9 && pocketDepth <= most + 1e-9) return;
  const says = `a pocket of ${pocketDepth} mm does not hold a bearing ${width} mm wide`;
  complain(ctx, ["pocketDepth"], says, `${least.toFixed(1)} to ${most.toFixed(1)} mm`);
}

function complain(ctx: z.RefinementCtx, path: (string | number)[], message: string, set: string): void {
  ctx.addIssue({ code: "custom", path, message, params: { set } });
}
