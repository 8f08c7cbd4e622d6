import * as z from "zod";
import { choice } from "../../core/parameter.ts";
import { cargo } from "./cargo.ts";
import { drive } from "./drive.ts";
import { frame } from "./frame.ts";
import { mm } from "./words.ts";

const excuse = z.strictObject({
  part: z.string("expected the name of a part"),
  check: z.string("expected the name of a check"),
  because: z.string("expected a reason in words").min(8),
});

/** What the plan of a machine holds: measured and chosen. Everything else follows from it and is never stored. */
export const schema = z.strictObject({
  units: choice("units", "what lengths without a unit are in", { mm: "millimetres", in: "inches" }).default("mm"),
  printers: z.record(z.string(), z.string("expected the path of a printer file")).default({}),
  ...frame,
  ...drive,
  ...cargo,
  stock: z
    .strictObject({
      bolts: z
        .array(mm("L_stock", "a bolt length you have", 4, 120))
        .min(1)
        .max(40)
        .optional(),
      spares: z.boolean("expected true or false").default(true),
    })
    .prefault({}),
  accept: z.array(excuse).max(40).default([]),
});

export type Plan = z.output<typeof schema>;
export type PlanBar = Plan["bars"][string];
export type PlanScrew = Plan["screws"][string];
export type PlanLoop = Plan["loops"][string];
