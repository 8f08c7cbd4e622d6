import { z } from "zod";
import { BARS } from "../../catalogue/bars.ts";
import { BEARINGS } from "../../catalogue/bearings.ts";
import { ECCENTRICS } from "../../catalogue/eccentrics.ts";
import { LARGE_WASHERS } from "../../catalogue/large-washers.ts";
import { LOCK_NUTS } from "../../catalogue/lock-nuts.ts";
import { SHIM_RINGS } from "../../catalogue/shim-rings.ts";
import { WASHERS } from "../../catalogue/washers.ts";
import { WHEELS } from "../../catalogue/wheels.ts";
import {
  angle,
  choice,
  force,
  hardware,
  itemOf,
  label,
  length,
  plainNumber,
  temperature,
  torque,
} from "../../core/parameter.ts";
import { row } from "../../core/table.ts";
import { MATERIALS } from "../../printing/materials.ts";
import { refineParameters } from "./refine.ts";

const mm = (symbol: string, meaning: string, min: number, max: number) => length({ symbol, meaning, min, max });
const newtonMetres = (symbol: string, meaning: string) => torque({ symbol, meaning, min: 0.02, max: 10 });

const kinds = (symbol: string, meaning: string) =>
  z
    .array(choice("wheel kind", meaning, { fixed: "on a plain axle", eccentric: "on an eccentric" }))
    .max(4)
    .optional()
    .meta({ symbol, unit: "", description: meaning });

const stock = (symbol: string, meaning: string) =>
  z
    .array(mm("L_have", "a bolt length you have", 4, 120))
    .min(1)
    .max(30)
    .optional()
    .meta({ symbol, unit: "mm", description: meaning });

/** A box of other hardware on the bar, in the frame of the plate with the carriage at its zero. */
const obstacle = z.strictObject({
  name: label("name", "what is there"),
  x0: mm("x0", "least x", -400, 400),
  x1: mm("x1", "largest x", -400, 400),
  y0: mm("y0", "least y, along the travel", -3000, 3000),
  y1: mm("y1", "largest y, along the travel", -3000, 3000),
  z0: mm("z0", "least z, away from the plate's wheel side", -400, 400),
  z1: mm("z1", "largest z", -400, 400),
});

const running = {
  wheelCount: choice("wheel count", "wheels in all", { 3: "three", 4: "four", 6: "six", 8: "eight" }).default("4"),
  faces: choice("number of faces", "faces of the bar that carry a plate", {
    1: "one plate",
    2: "two plates on opposite faces, half the wheels on each",
  }).optional(),
  style: choice("style", "what holds the axles", {
    "one-plate": "one plate, the axles stand out of it",
    sandwich: "a second plate holds the axles at their other end",
  }).default("one-plate"),
  bar: hardware(BARS, "the bar that the wheels run on").default(itemOf(row(BARS, "V 20x20"))),
  across: choice("side", "which side of the bar's section lies across the wheels", {
    width: "its width",
    height: "its height",
  }).default("width"),
  wheel: hardware(WHEELS, "the wheels").default(itemOf(row(WHEELS, "V 23.9"))),
  bearing: hardware(BEARINGS, "the two bearings in a wheel").optional(),
  overWheels: mm("M", "caliper reading over two wheels pressed on the bar", 15, 200).optional(),
  rowSpacing: mm("h", "distance of the outermost wheel rows", 40, 400).default(120),
  fixedSide: choice("side", "side of the bar with the fixed wheels, seen on the wheel side", {
    left: "left, at negative x",
    right: "right, at positive x: the other hand",
  }).default("left"),
  leftWheels: kinds("left", "wheels at negative x from low y to high, when not all of one kind"),
  rightWheels: kinds("right", "wheels at positive x from low y to high, when not all of one kind"),
};

const axles = {
  eccentric: hardware(ECCENTRICS, "the eccentric spacers").default(itemOf(row(ECCENTRICS, "6 mm"))),
  eccentricMade: choice("make", "what the eccentrics are made of", {
    metal: "bought",
    printed: "printed bushes, for light loads only; the plate's hole follows them",
  }).default("metal"),
  spacer: choice("spacer", "what the spacers of the fixed wheels are made of", {
    metal: "bought",
    printed: "printed with the plate",
  }).default("metal"),
  spacerLength: mm("L_s", "spacer between plate and wheel on a plain axle", 1, 40).optional(),
  spacerOutside: mm("D_s", "outside diameter of the spacers", 4, 20).optional(),
  farSpacer: mm("L_f", "sandwich: spacer between wheel and second plate", 1, 40).optional(),
  shim: hardware(SHIM_RINGS, "the shim beside a wheel").default(itemOf(row(SHIM_RINGS, "5 x 8 x 1.0"))),
  shims: choice("shims", "where a shim lies", {
    both: "on both sides of each wheel",
    "plate-side": "between spacer and wheel only",
    none: "nowhere",
  }).default("both"),
  washer: hardware(WASHERS, "the plain washers on the axles, when they are not the usual ones").optional(),
  largeWasher: hardware(LARGE_WASHERS, "the washers over the eccentrics, when they are not the usual ones").optional(),
  lockNut: hardware(LOCK_NUTS, "the lock nuts, when they are not the usual ones").optional(),
  axleLengths: stock("L_stock", "axle bolt lengths you have, when they are not the usual stock"),
  tipRoom: mm("r_t", "free room past the axle nuts", 0, 400).optional(),
  axleTorque: newtonMetres("T_a", "torque of the axle bolts at the fixed wheels").optional(),
  eccentricTorque: newtonMetres("T_ec", "torque of the axle bolts at the eccentrics").optional(),
};

const shaping = {
  plate: mm("t", "plate thickness", 6, 15).default(8),
  margin: mm("m_e", "plate beyond the outermost axles", 5, 30).default(12),
  armBar: hardware(BARS, "the stage bars bolted to the outer face, their height along the travel").default(
    itemOf(row(BARS, "20x20 slot 6")),
  ),
  arms: z
    .array(mm("y_a", "an arm's centre-line from the plate's middle, along the travel", -200, 200))
    .max(3)
    .optional()
    .meta({ symbol: "y_a", unit: "mm", description: "centre-lines of the stage bars; none for an idle carriage" }),
  armX: mm("x_a", "arm bolts to each side of the bar's centre-line", 10, 100).optional(),
  armLengths: stock("L_arm", "arm bolt lengths you have, when they are not the usual stock"),
  leeway: angle({ symbol: "phi", meaning: "angle by which an arm may be turned to either side", min: 0, max: 3 }).default(
    0.75,
  ),
  stagger: mm("s", "two faces: shift of the second plate along the travel", 0, 200).optional(),
  wheelRelief: mm("r_w", "depth of the relief round the wheels", 0.4, 2).optional(),
  label: label("label", "text engraved on the wheel side", 8).default("PLATE"),
  material: hardware(MATERIALS, "printing material").default(itemOf(row(MATERIALS, "PETG"))),
  count: plainNumber({ symbol: "n_c", meaning: "how many carriages", min: 1, max: 12 }).default(1),
};

const loading = {
  load: force({ symbol: "W", meaning: "load on this carriage", min: 0, max: 500 }).default(30),
  overhang: mm("a_x", "load from the bar's centre-line, in the plate's plane", 0, 600).default(200),
  overhangAlongAxles: mm("a_z", "load from the wheels' middle plane, along the axles", 0, 600).optional(),
  preload: force({ symbol: "P", meaning: "preload of a wheel", min: 0, max: 200 }).optional(),
  placeTemperature: temperature({ symbol: "T_place", meaning: "air at the carriage", min: -40, max: 150 }).default(30),
  travelUp: mm("y_up", "travel from zero towards positive y", 0, 3000).default(0),
  travelDown: mm("y_dn", "travel from zero towards negative y", 0, 3000).default(0),
  obstacles: z
    .array(obstacle)
    .max(20)
    .default([])
    .meta({ symbol: "obstacles", unit: "mm", description: "other hardware on the bar, as boxes" }),
};

export const schema = z
  .strictObject({ ...running, ...axles, ...shaping, ...loading })
  .superRefine(refineParameters);

export type Parameters = z.output<typeof schema>;
