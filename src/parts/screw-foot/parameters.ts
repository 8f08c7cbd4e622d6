import * as z from "zod";
import { BARS } from "../../catalogue/bars.ts";
import { BEARINGS } from "../../catalogue/bearings.ts";
import { BELTS } from "../../catalogue/belts.ts";
import { COLLARS } from "../../catalogue/collars.ts";
import { PULLEYS } from "../../catalogue/pulleys.ts";
import { SCREWS } from "../../catalogue/screws.ts";
import { SHIM_RINGS } from "../../catalogue/shim-rings.ts";
import { WASHERS, type Washer } from "../../catalogue/washers.ts";
import { itemOf } from "../../core/item.ts";
import { angle, choice, flag, force, hardware, label, length, temperature } from "../../core/parameter.ts";
import { row, type Table } from "../../core/table.ts";
import { MATERIALS } from "../../printing/materials.ts";
import { refineParameters } from "./refine.ts";

/** Shim rings first, then plain washers: a stack may hold either. */
export const RINGS: Table<Washer> = { ...SHIM_RINGS, rows: [...SHIM_RINGS.rows, ...WASHERS.rows] };

const mm = (symbol: string, meaning: string, min: number, max: number) => length({ symbol, meaning, min, max });
const degrees = (symbol: string, meaning: string) => angle({ symbol, meaning, min: 0, max: 360 });
const newtons = (symbol: string, meaning: string, usual: number) =>
  force({ symbol, meaning, min: 0, max: 2000 }).default(usual);

const span = z.strictObject({
  azimuth: degrees("phi_span", "direction in which the span leaves"),
  side: choice("side", "side of the axis on which it passes, seen along it", { right: "right", left: "left" }),
});

const framePost = z.strictObject({
  x: mm("x_post", "centre of the post, along the bar", -1000, 1000),
  y: mm("y_post", "centre of the post, away from the bar", -1000, 1000),
  width: mm("w_post", "width of the post", 5, 120),
});

const placing = {
  mount: choice("mount", "where the foot is bolted to", {
    "on-side": "against the side of a level bar",
    "on-top": "on top of a level bar",
    "in-corner": "in the corner of two level bars",
    "on-post": "round the front of an upright bar",
    under: "under a level bar, the screw beside it",
  }).default("on-side"),
  style: choice("style", "what stands above the bearing", {
    open: "nothing",
    walled: "the back plate rises behind the pulley",
    bridged: "a bolted bridge with a second bearing above the pulley",
  }).default("open"),
  thrust: choice("thrust", "what carries the weight on the screw", {
    pulley: "the pulley's set screws",
    collar: "a clamp collar on the washer",
    shoulder: "a shoulder turned on the screw",
    tip: "the screw's tip on a hard pad",
    hung: "the head of the screw; the foot only steadies",
  }).default("pulley"),
  bar: hardware(BARS, "the bar").default(itemOf(row(BARS, "20x20 slot 6"))),
  material: hardware(MATERIALS, "printing material").default(itemOf(row(MATERIALS, "PETG"))),
  cornerAngle: angle({ symbol: "gamma", meaning: "angle between the two bars", min: 85, max: 95 }).default(90),
  cornerMeasured: flag("gamma_measured", "whether the corner angle was measured: keys on both faces").default(false),
  offset: mm("b", "on-top: axis beside the bar's centre-line", 0, 60).default(0),
  lowestZ: mm("z_low", "on-post: lowest height the foot may reach", -400, 400).default(0.5),
};

const turning = {
  bearing: hardware(BEARINGS, "the bearing").default(itemOf(row(BEARINGS, "608"))),
  screw: hardware(SCREWS, "the lead screw").default(itemOf(row(SCREWS, "Tr8x2"))),
  endDiameter: mm(
    "d_end",
    "lower end of the screw where it is turned down; left out, as thick as the screw",
    2,
    40,
  ).optional(),
  pulley: hardware(PULLEYS, "the pulley").default(itemOf(row(PULLEYS, "40 teeth 2 mm"))),
  belt: hardware(BELTS, "the belt").default(itemOf(row(BELTS, "2 mm round"))),
  beltWidth: mm("w_b", "belt width", 3, 30).default(6),
  washers: z
    .array(hardware(RINGS, "a ring between bearing and pulley, from the bearing up"))
    .max(8)
    .optional()
    .register(z.globalRegistry, {
      symbol: "washers",
      unit: "",
      description: "rings between bearing and pulley, from the bearing up",
    }),
  collar: hardware(COLLARS, "the clamp collar, for thrust: collar").optional(),
  hub: choice("hub", "which way the pulley's hub points", {
    up: "up",
    down: "down",
    auto: "whichever gives the lower seat that is high enough",
  }).default("auto"),
  beltPlane: mm("z_belt", "height of the middle of the belt over the bar's top", -200, 400).default(24),
  beltSpans: z
    .array(span)
    .min(1)
    .max(4)
    .default([
      { azimuth: 0, side: "right" },
      { azimuth: 60, side: "left" },
    ])
    .register(z.globalRegistry, { symbol: "spans", unit: "", description: "belt spans that leave the pulley" }),
  keyAzimuth: degrees("phi_key", "direction from which the key reaches the set screw").default(90),
  framePosts: z.array(framePost).max(4).default([]).register(z.globalRegistry, {
    symbol: "posts",
    unit: "mm",
    description: "upright bars of the frame near the foot",
  }),
};

const shaping = {
  axisOffset: mm("a", "mating face to the screw's axis", 8, 80).optional(),
  axisOffsetB: mm("a_x", "in-corner: second mating face to the screw's axis", 8, 80).optional(),
  wall: mm("t_wall", "wall round the bearing's pocket", 2, 12).default(5),
  floor: mm("t_floor", "floor under the bearing", 4, 20).default(5),
  plate: mm("t_bp", "plate against the bar", 4, 15).optional(),
  pocketFit: choice("fit", "how the bearing sits in its pocket", {
    "drop-in": "lifts out by hand",
    push: "pushed in by thumb",
    press: "pressed in for good",
  }).default("drop-in"),
  pocketDepth: mm("d_p", "depth of the pocket", 2, 40).optional(),
  shoulderBore: mm("d_sh", "bore of the shoulder under the bearing", 3, 120).optional(),
  tipLength: mm("l_tip", "length of screw below the bearing", 0, 30).default(5),
  tipRelief: mm("l_free", "free depth below the screw's tip", 1, 10).default(1),
  postAzimuths: z
    .array(degrees("phi_post", "direction in which a post of the bridge stands"))
    .length(2)
    .optional()
    .register(z.globalRegistry, {
      symbol: "phi_posts",
      unit: "deg",
      description: "directions in which the bridge's two posts stand",
    }),
  cap: flag("cap", "whether a cap holds the bearing down").default(false),
  locate: choice("locate", "what finds the bar's slot; left out, a key where the mount has one", {
    none: "nothing",
    key: "ribs that enter it",
  }).optional(),
  label: label("label", "text engraved on the front, before the seat height", 8).default("FOOT"),
};

const loading = {
  axialLoad: newtons("F_a", "load along the screw", 50),
  lightestLoad: force({
    symbol: "F_min",
    meaning: "load along the least loaded screw of the stage",
    min: 0,
    max: 2000,
  }).optional(),
  steadyLoad: force({
    symbol: "F_st",
    meaning: "load along this screw while the other one carries its least, nobody leaning; left out, axialLoad",
    min: 0,
    max: 2000,
  }).optional(),
  otherSink: mm("delta_o", "sink of the foot of the stage that sinks least at that time", 0, 20).optional(),
  beltPull: newtons("F_r", "pull of the belt across the screw", 30),
  crashForce: force({ symbol: "F_crash", meaning: "extra load along the screw in a crash", min: 0, max: 5000 }).default(
    0,
  ),
  bearingToNut: mm("L_n", "bearing to nut with the stage at the bottom", 20, 2000).optional(),
  nutFloat: mm("c_nut", "radial float of the nut", 0, 3).default(0.2),
  stageLowest: mm("z_stage", "lowest part of the stage at the bottom of its travel", -200, 1000).optional(),
  placeTemperature: temperature({ symbol: "T_place", meaning: "air at the foot", min: -40, max: 150 }).default(30),
  boltLengths: z
    .array(mm("L_stock", "a bolt length you have", 4, 100))
    .min(1)
    .max(30)
    .optional()
    .register(z.globalRegistry, {
      symbol: "L_stock",
      unit: "mm",
      description: "bolt lengths you have, when they are not the usual stock",
    }),
};

export const schema = z.strictObject({ ...placing, ...turning, ...shaping, ...loading }).superRefine(refineParameters);

export type Parameters = z.output<typeof schema>;
