import { z } from "zod";
import { LARGE_WASHERS } from "../../catalogue/large-washers.ts";
import { NUTS } from "../../catalogue/nuts.ts";
import { itemOf } from "../../core/item.ts";
import { choice, flag, hardware, length, plainNumber } from "../../core/parameter.ts";
import { row } from "../../core/table.ts";
import { MATERIALS } from "../../printing/materials.ts";

export const schema = z.strictObject({
  bolt: choice("bolt", "the tram bolt", { M3: "M3", M4: "M4", M5: "M5", M6: "M6" }).default("M5"),
  lockNut: flag("lockNut", "a lock nut sits in the wheel instead of a plain one").default(false),
  nut: hardware(NUTS, "the nut, when it is not the usual one").optional(),
  washer: hardware(LARGE_WASHERS, "the washer that slides on the bracket, when it is not the usual one").optional(),
  diameter: length({ symbol: "D_k", meaning: "outside diameter", min: 20, max: 40 }).optional(),
  height: length({ symbol: "h_k", meaning: "height", min: 5, max: 16 }).optional(),
  excursion: length({
    symbol: "q",
    meaning: "how far the wheel slides to each side as the plate grows",
    min: 0,
    max: 6,
  }).default(1.1),
  barDistance: length({
    symbol: "a",
    meaning: "distance of the cold bolt from the bar's face",
    min: 8,
    max: 120,
  }).default(17),
  material: hardware(MATERIALS, "printing material").default(itemOf(row(MATERIALS, "ASA"))),
  count: plainNumber({ symbol: "n", meaning: "how many to print", min: 1, max: 24 }).default(1),
});

export type Parameters = z.output<typeof schema>;
