import * as z from "zod";
import { BARS } from "../../catalogue/bars.ts";
import { BEARINGS } from "../../catalogue/bearings.ts";
import { ECCENTRICS } from "../../catalogue/eccentrics.ts";
import { LARGE_WASHERS } from "../../catalogue/large-washers.ts";
import { SHIM_RINGS } from "../../catalogue/shim-rings.ts";
import { WASHERS } from "../../catalogue/washers.ts";
import { WHEELS } from "../../catalogue/wheels.ts";
import { itemOf } from "../../core/item.ts";
import { angle, choice, flag, force, hardware, label, length, plainNumber, temperature } from "../../core/parameter.ts";
import { row } from "../../core/table.ts";
import { MATERIALS } from "../../printing/materials.ts";
import { refineParameters } from "./refine.ts";

const mm = (symbol: string, meaning: string, min: number, max: number) => length({ symbol, meaning, min, max });
const several = (meaning: string) => ({ symbol: "", unit: "mm" as const, description: meaning });

const KINDS = { fixed: "axle in a close hole", eccentric: "axle in a bush that shifts it towards the bar" };
const METAL_OR_PRINTED = { metal: "bought", printed: "printed, for light loads" };

const layout = {
  wheels: choice<"3" | "4" | "6" | "8">("N", "wheels of the carriage, on all its plates", {
    3: "two fixed, one eccentric opposite their middle",
    4: "two rows of two",
    6: "three rows of two, or three wheels on each of two plates",
    8: "four rows of two, or two rows of two on each of two plates",
  }).default("4"),
  faces: plainNumber({ symbol: "n_f", meaning: "faces of the bar that carry a plate", min: 1, max: 2 }).optional(),
  sandwich: flag("sandwich", "a second plate holds the far ends of the axles").default(false),
  rowSpacing: mm("h", "distance of the outermost wheel rows", 40, 400).default(120),
  left: z
    .array(choice("kind", "kind of a wheel", KINDS))
    .max(4)
    .optional()
    .register(z.globalRegistry, {
      symbol: "",
      unit: "",
      description: "wheels at -x, from the lowest row up, when not all fixed",
    }),
  right: z
    .array(choice("kind", "kind of a wheel", KINDS))
    .max(4)
    .optional()
    .register(z.globalRegistry, {
      symbol: "",
      unit: "",
      description: "wheels at +x, from the lowest row up, when not all eccentric",
    }),
  stagger: mm("s_g", "shift of the second plate along the travel, when two faces carry plates", 0, 200).optional(),
};

const rail = {
  barWidth: mm("W_e", "width of the bar across the wheels, measured", 15, 80).default(20),
  barDepth: mm("T_e", "depth of the bar along the axles", 15, 80).default(20),
  module: mm("U", "distance from groove to groove of the bar", 15, 80).default(20),
  wheel: hardware(WHEELS, "the wheels").default(itemOf(row(WHEELS, "V 23.9"))),
  bearing: hardware(BEARINGS, "the two bearings in a wheel").default(itemOf(row(BEARINGS, "625"))),
  overWheels: mm("M", "caliper reading over two wheels pressed on the bar", 30, 200).optional(),
};

const axles = {
  eccentric: hardware(ECCENTRICS, "the eccentrics").default(itemOf(row(ECCENTRICS, "6 mm"))),
  eccentricKind: choice("eccentricKind", "what the eccentrics are", METAL_OR_PRINTED).default("metal"),
  spacerKind: choice("spacerKind", "what the spacers are", METAL_OR_PRINTED).default("metal"),
  spacerLength: mm("L_s", "length of the spacers, when not that of the eccentric", 1, 40).optional(),
  spacerOutside: mm("OD_s", "outside diameter of the spacers", 6, 20).optional(),
  shimmed: flag("shimmed", "a ring lies on each side of a wheel").default(true),
  shim: hardware(SHIM_RINGS, "the ring on each side of a wheel").default(itemOf(row(SHIM_RINGS, "5 x 8 x 1.0"))),
  washer: hardware(WASHERS, "washer of fixed axles, when it is not the usual one").optional(),
  eccentricWasher: hardware(LARGE_WASHERS, "washer of eccentric axles, when it is not the usual one").optional(),
  tipRoom: mm("r_t", "free space past the nut of an axle", 0, 200).default(20),
  stock: z
    .array(mm("L_st", "a bolt length that can be had", 5, 200))
    .max(40)
    .optional()
    .register(z.globalRegistry, several("axle bolt lengths that can be had, when they are not the usual ones")),
};

const plate = {
  plate: mm("t", "thickness of the plate", 6, 15).default(8),
  margin: mm("m_e", "plate beyond the outermost axles", 4, 30).default(12),
  wheelRelief: mm("r_w", "depth of the pocket under a wheel's tyre, 0 for none", 0, 2).optional(),
  arm: hardware(BARS, "the bars bolted across the plate").default(itemOf(row(BARS, "20x20 slot 6"))),
  armsAt: z
    .array(mm("y_a", "height of an arm's middle over that of the plate", -200, 200))
    .max(3)
    .optional()
    .register(z.globalRegistry, several("where the arms cross the plate; an empty list for a plate without arms")),
  armBoltAt: mm("x_a", "arm bolt from the plate's middle", 5, 120).optional(),
  leeway: angle({ symbol: "phi", meaning: "leeway of an arm to either side", min: 0, max: 3 }).default(0.75),
};

const use = {
  load: force({ symbol: "W", meaning: "weight on the carriage", min: 0, max: 500 }).default(30),
  overhang: mm("a_x", "load from the bar's middle, in the plate's plane", 0, 600).default(200),
  offset: mm("a_z", "load from the wheels' middle, along the axles", 0, 600).optional(),
  preload: force({
    symbol: "P",
    meaning: "preload of a wheel, when not the least one with a margin",
    min: 0,
    max: 200,
  }).optional(),
  travelUp: mm("y_u", "travel up from where the obstacles are measured", 0, 2000).default(0),
  travelDown: mm("y_d", "travel down from there", 0, 2000).default(0),
  obstacles: z
    .array(
      z.strictObject({
        name: label("name", "what stands there", 30),
        x: z.tuple([mm("x_0", "from", -500, 500), mm("x_1", "to", -500, 500)]),
        y: z.tuple([mm("y_0", "from", -3000, 3000), mm("y_1", "to", -3000, 3000)]),
        z: z.tuple([mm("z_0", "from", -500, 500), mm("z_1", "to", -500, 500)]),
      }),
    )
    .max(20)
    .default([])
    .register(
      z.globalRegistry,
      several("other hardware on the bar; boxes that it takes up, from the middle of the plate's wheel side"),
    ),
  placeTemperature: temperature({ symbol: "T", meaning: "temperature round the plate", min: -20, max: 150 }).default(
    30,
  ),
};

export const schema = z
  .strictObject({
    ...layout,
    ...rail,
    ...axles,
    ...plate,
    ...use,
    material: hardware(MATERIALS, "printing material").default(itemOf(row(MATERIALS, "PETG"))),
    count: plainNumber({ symbol: "n_c", meaning: "carriages to print plates for", min: 1, max: 12 }).default(1),
  })
  .superRefine(refineParameters);

export type Parameters = z.output<typeof schema>;
