import * as z from "zod";
import { THREADS } from "../../catalogue/threads.ts";
import { itemOf } from "../../core/item.ts";
import { choice, hardware, length, plainNumber, torque } from "../../core/parameter.ts";
import { row } from "../../core/table.ts";
import { MATERIALS } from "../../printing/materials.ts";
import { leastBody } from "./derive.ts";

const fields = z.strictObject({
  kind: choice("kind", "what the spacer is", {
    plain: "a plain ring",
    flanged: "a ring with a flange at the plate, so that it presses on more plastic",
    bush: "an eccentric bush with a hexagon, for light loads only",
  }).default("plain"),
  bolt: choice("bolt", "the axle bolt", { M3: "M3", M4: "M4", M5: "M5", M6: "M6", M8: "M8" }).default("M5"),
  against: choice("against", "what the free end presses on", {
    shim: "a metal shim between spacer and bearing",
    bearing: "the bearing's inner ring itself",
  }).default("shim"),
  innerLand: length({ symbol: "d1", meaning: "outside diameter of the bearing's inner ring", min: 4, max: 20 }).default(
    8.4,
  ),
  outside: length({ symbol: "OD", meaning: "outside diameter", min: 4, max: 20 }).optional(),
  length: length({ symbol: "L_s", meaning: "length, the standoff of the wheel", min: 1, max: 40 }).default(6),
  setLengths: z
    .array(length({ symbol: "L_set", meaning: "standoff of another spacer of the set", min: 1, max: 40 }))
    .max(12)
    .default([])
    .register(z.globalRegistry, {
      symbol: "L_set",
      unit: "mm",
      description: "standoffs of the other spacers or bushes on the same plate",
    }),
  torque: torque({ symbol: "T", meaning: "torque of the axle bolt", min: 0.1, max: 2 }).default(0.6),
  material: hardware(MATERIALS, "printing material").default(itemOf(row(MATERIALS, "PETG"))),
  plate: length({ symbol: "t", meaning: "thickness of the plate a bush sits in", min: 6, max: 15 }).default(8),
  body: length({ symbol: "D_b", meaning: "body diameter of a bush", min: 5.5, max: 16 }).optional(),
  offset: length({ symbol: "eps", meaning: "eccentricity of a bush", min: 0.3, max: 1.5 }).default(0.79),
  hexFlats: length({ symbol: "AF", meaning: "hexagon of a bush across flats", min: 8, max: 24 }).optional(),
  hexHeight: length({
    symbol: "u_e",
    meaning: "height of a bush's hexagon, the standoff of the wheel",
    min: 3,
    max: 12,
  }).default(6),
  count: plainNumber({ symbol: "n", meaning: "how many to print", min: 1, max: 24 }).default(2),
});

type Fields = z.output<typeof fields>;

/** A hexagon must stand on the plate round its body by this, a flange must leave a ring above it, mm. */
const HEXAGON_WIDER = 3;
const FLANGED_LEAST = 2;

/** Refuses a bush that falls through its hole and a flange without a ring. */
function refineShape(given: Fields, ctx: z.RefinementCtx): void {
  const { kind, hexFlats, length: tall } = given;
  const body = given.body ?? leastBody(row(THREADS, given.bolt).values.diameter, given.offset);
  if (kind === "bush" && hexFlats !== undefined && hexFlats < body + HEXAGON_WIDER - 1e-9) {
    const message = `a hexagon of ${hexFlats} mm does not stand on the plate round a body of ${body} mm`;
    const set = `${(body + HEXAGON_WIDER).toFixed(1)} mm or more, or leave it out`;
    ctx.addIssue({ code: "custom", path: ["hexFlats"], message, params: { set } });
  }
  if (kind === "flanged" && tall < FLANGED_LEAST) {
    const message = `a flange leaves no ring in ${tall} mm`;
    const set = `${FLANGED_LEAST} mm or more, or kind: plain`;
    ctx.addIssue({ code: "custom", path: ["length"], message, params: { set } });
  }
}

export const schema = fields.superRefine(refineShape);

export type Parameters = z.output<typeof schema>;
