import * as z from "zod";
import { choice, flag, meaning } from "../../core/parameter.ts";
import { cargo } from "./cargo.ts";
import { drive } from "./drive.ts";
import { frame } from "./frame.ts";
import { mm } from "./words.ts";

const excuse = z.strictObject({
  part: meaning(z.string("expected the name of a part"), "the part it is about, or stage"),
  check: meaning(z.string("expected the name of a check"), "the name of the defect"),
  because: meaning(z.string("expected a reason in words").min(8), "why it may stay, in words"),
});

/** What the plan of a machine holds: measured and chosen. Everything else follows from it and is never stored. */
export const schema = z.strictObject({
  units: choice("units", "what lengths without a unit are in", { mm: "millimetres", in: "inches" }).default("mm"),
  printers: meaning(
    z.record(z.string(), z.string("expected the path of a printer file")),
    "printers of single families, when not the usual one: <family>: <path>",
  ).default({}),
  ...frame,
  ...drive,
  ...cargo,
  stock: meaning(
    z.strictObject({
      bolts: meaning(
        z
          .array(mm("L_stock", "a bolt length you have", 4, 120))
          .min(1)
          .max(40),
        "bolt lengths you have, when they are not the usual ones",
      ).optional(),
      spares: flag("spares", "whether the hardware list has spares").default(true),
    }),
    "what the hardware list is made with",
  ).prefault({}),
  accept: meaning(z.array(excuse).max(40), "errors that are made all the same, each with a reason").default([]),
});

export type Plan = z.output<typeof schema>;
export type PlanBar = Plan["bars"][string];
export type PlanScrew = Plan["screws"][string];
export type PlanLoop = Plan["loops"][string];
