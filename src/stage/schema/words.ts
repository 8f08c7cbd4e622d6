import * as z from "zod";
import { LIMITS, length, meaning, type ParameterMeta, presented } from "../../core/parameter.ts";

/** Lengths in mm; places in the frame of the machine: x and y in plan, z up from the datum. */
export const mm = (symbol: string, meaning: string, min: number, max: number) => length({ symbol, meaning, min, max });

/** The farthest anything of a machine may stand from its origin, mm. */
const FAR = 5000;

/** A place in plan. */
export const spot = z
  .tuple([mm("x", "place in plan, x", -FAR, FAR), mm("y", "place in plan, y", -FAR, FAR)], "expected [x, y]")
  .register(z.globalRegistry, { symbol: "[x, y]", unit: "mm", description: "place in plan" });

/** A place in space. */
export const place = z
  .tuple(
    [mm("x", "place, x", -FAR, FAR), mm("y", "place, y", -FAR, FAR), mm("z", "height over the datum", -FAR, FAR)],
    "expected [x, y, z]",
  )
  .register(z.globalRegistry, { symbol: "[x, y, z]", unit: "mm", description: "end of the bar's middle line" });

const NAME = /^[A-Za-z0-9](?:[A-Za-z0-9-]{0,14}[A-Za-z0-9])?$/;

/** The name of a thing of the machine: short, since it is engraved and names files. */
export const thing = z
  .string("expected a name")
  .superRefine((text, ctx) => {
    if (NAME.test(text)) return;
    const message = `${presented(text)} is no name: letters, digits and hyphens, at most 16`;
    ctx.addIssue({ code: "custom", message, params: { set: "a short name such as A or front-left" } });
  })
  .register(LIMITS, { pattern: NAME.source });

/** The name of a thing of the machine that stands elsewhere in the plan. */
export const reference = (description: string) =>
  meaning(thing.clone().register(LIMITS, { pattern: NAME.source }), description);

/** Things by their names, at most `most` of them. */
export function named<Thing extends z.ZodType>(each: Thing, meaning: string, most: number) {
  return z
    .record(thing, each, `expected ${meaning}, each under its name`)
    .superRefine((all, ctx) => {
      const names = Object.keys(all);
      if (names.length > most) {
        const message = `there are ${names.length}; a machine has at most ${most}`;
        ctx.addIssue({ code: "custom", message, params: { set: `at most ${most}` } });
      }
      const before = new Map<string, string>();
      for (const name of names) {
        const other = before.get(name.toLowerCase());
        before.set(name.toLowerCase(), other ?? name);
        if (other === undefined) continue;
        const message = `${other} and ${name} differ in capitals only and would name the same files`;
        ctx.addIssue({ code: "custom", path: [name], message, params: { set: "another name" } });
      }
    })
    .register(LIMITS, { most })
    .register(z.globalRegistry, { symbol: "", unit: "", description: meaning });
}

/**
 * Parameters of a part family: any that the plan does not derive. Read by the family's own schema; the reader of plans
 * looks for misspelled ones, since the metadata says whose they are.
 */
export function block(family: string, meaning: string) {
  return z
    .record(z.string(), z.unknown(), "expected parameters, one on each line below it")
    .default({})
    .register(z.globalRegistry, { symbol: "", unit: "", description: meaning, family } satisfies ParameterMeta);
}
