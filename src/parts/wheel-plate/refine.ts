import type { z } from "zod";
import type { Item } from "../../core/item.ts";
import { facesOf, type Layout, sidesOf } from "./layout.ts";

/** Threads for which heads, washers, holes and stock lengths are all known. */
const BOLTS = ["M3", "M4", "M5", "M6", "M8"];
const LARGEST = 1e5;

interface Asked extends Layout {
  readonly wheel: Item;
  readonly arm: Item;
  readonly armsAt?: readonly number[] | undefined;
  readonly obstacles: readonly { readonly x: Span; readonly y: Span; readonly z: Span }[];
}

type Span = readonly [number, number];

/** Refuses sizes no bought item can have, layouts that do not exist, and bolts for which there is no data. */
export function refineParameters(given: Asked, ctx: z.RefinementCtx): void {
  for (const [name, value] of Object.entries(given)) if (isItem(value)) refineItem(name, value, ctx);
  refineBolt(["wheel"], given.wheel?.values?.boltThread, ctx);
  refineBolt(["arm"], given.arm?.values?.mountBolt, ctx);
  refineLayout(given, ctx);
  refineArms(given, ctx);
  (given.obstacles ?? []).forEach((obstacle, index) => {
    for (const axis of ["x", "y", "z"] as const) {
      const [from, to] = obstacle[axis];
      if (from > to) complain(ctx, ["obstacles", index, axis], "it ends before it begins", `[${to}, ${from}]`);
    }
  });
}

function isItem(value: unknown): value is Item {
  return typeof value === "object" && value !== null && "values" in value && "measured" in value;
}

function refineItem(name: string, { values }: Item, ctx: z.RefinementCtx): void {
  for (const [field, value] of Object.entries(values)) {
    if (typeof value !== "number" || (value > 0 && value < LARGEST)) continue;
    // The distance from axle to bar may be unknown.
    if (field === "axisToBarFace" && value === 0) continue;
    complain(ctx, [name, field], `${field} is ${value}`, "a size above 0");
  }
}

function refineBolt(path: string[], thread: unknown, ctx: z.RefinementCtx): void {
  if (!BOLTS.includes(String(thread))) complain(ctx, path, `there is no data for ${thread} bolts`, BOLTS.join(", "));
}

function refineLayout(given: Asked, ctx: z.RefinementCtx): void {
  const { wheels, faces, sandwich } = given;
  if (faces === 2 && wheels !== "6" && wheels !== "8") {
    complain(ctx, ["faces"], `${wheels} wheels cannot be shared by two plates`, "faces: 1, or wheels: 6 or 8");
    return;
  }
  if (sandwich && facesOf(given) === 2) {
    complain(ctx, ["sandwich"], "a sandwich holds the wheels of one face only", "faces: 1, or sandwich: false");
    return;
  }
  const rows = sidesOf(given);
  for (const side of ["left", "right"] as const) {
    const asked = given[side];
    if (asked === undefined || asked.length === rows[side].length) continue;
    const says = `the plate has ${rows[side].length} wheels on its ${side}, not ${asked.length}`;
    complain(ctx, [side], says, `${rows[side].length} words, or leave it out`);
  }
}

function refineArms({ armsAt = [], arm }: Asked, ctx: z.RefinementCtx): void {
  const height = Number(arm?.values?.height);
  const sorted = [...armsAt].sort((one, other) => one - other);
  sorted.forEach((at, index) => {
    const before = sorted[index - 1];
    if (before === undefined || at - before >= height - 1e-9) return;
    complain(ctx, ["armsAt"], `arms at ${before} and ${at} overlap`, `arms at least ${height} mm apart`);
  });
}

function complain(ctx: z.RefinementCtx, path: (string | number)[], message: string, set: string): void {
  ctx.addIssue({ code: "custom", path, message, params: { set } });
}
