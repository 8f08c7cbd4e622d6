import * as z from "zod";
import { BARS } from "../../catalogue/bars.ts";
import { INSERTS } from "../../catalogue/inserts.ts";
import { LARGE_WASHERS } from "../../catalogue/large-washers.ts";
import { NUTS } from "../../catalogue/nuts.ts";
import { SPRINGS } from "../../catalogue/springs.ts";
import { WASHERS } from "../../catalogue/washers.ts";
import { itemOf } from "../../core/item.ts";
import { angle, choice, flag, force, hardware, length, plainNumber, rate, temperature } from "../../core/parameter.ts";
import { row } from "../../core/table.ts";
import { MATERIALS } from "../../printing/materials.ts";

const mm = (symbol: string, meaning: string, min: number, max: number) => length({ symbol, meaning, min, max });

const TYPES = {
  fixed: "a close round hole: the point the plate grows away from",
  slot: "a slot along the line to the fixed point: holds the plate straight",
  free: "a wide round hole: lets the plate grow any way",
};

const place = {
  mount: choice("mount", "where the bracket is bolted", {
    "on-side": "against the side of a bar, two bolts",
    "on-top": "on the top of a bar, two bolts",
    end: "over the end of a bar, one bolt on each side",
  }).default("on-side"),
  type: choice("type", "how the bolt may move as the plate grows", TYPES).default("slot"),
  joint: choice("joint", "what the tram bolt holds in", {
    "thumb-wheel": "a nut in a thumb wheel under the bracket, turned from below",
    "captive-nut": "a nut that slides in a pocket of the bracket, bolt turned from above",
    insert: "a heat-set insert in the bracket, bolt turned from above; fixed type only",
    "tapped-plate": "a thread in the plate, bolt turned from below",
  }).default("thumb-wheel"),
  bar: hardware(BARS, "the bar that carries the bracket").default(itemOf(row(BARS, "20x20 slot 6"))),
  backPlate: mm("t_bp", "thickness of the plate against the bar", 4, 16).optional(),
  key: flag("key", "a rib enters the bar's slot (on-side only)").default(true),
  reach: mm("a_w", "distance of the bolt from the bar's face, when more than needed is wanted", 8, 80).optional(),
};

const joint = {
  bolt: choice("bolt", "the tram bolt", { M3: "M3", M4: "M4", M5: "M5", M6: "M6" }).optional(),
  nut: hardware(NUTS, "the tram bolt's nut, when it is not the usual one").optional(),
  lockNut: flag("lockNut", "a lock nut instead of a plain one").default(false),
  insert: hardware(INSERTS, "the heat-set insert, when it is not the usual one").optional(),
  heatWasher: hardware(LARGE_WASHERS, "the washer between spring and plate").optional(),
  springWasher: hardware(WASHERS, "the washer under the spring").optional(),
  sliderWasher: hardware(LARGE_WASHERS, "the washer that slides under the bracket").optional(),
  headBelow: mm("s_h", "how far the bolt head lies below the plate's top", 0, 3).default(0.3),
  boltLength: mm("L_b", "length of the tram bolt", 6, 120).optional(),
  fullThread: flag("fullThread", "the tram bolt is threaded up to its head").default(false),
  stock: z
    .array(mm("L_n", "a bolt length you can get", 6, 120))
    .max(40)
    .optional()
    .register(z.globalRegistry, {
      symbol: "L_n",
      unit: "mm",
      description: "tram bolt lengths you can get, instead of the usual ones",
    }),
  wheelDiameter: mm("D_k", "diameter of the thumb wheel", 20, 40).optional(),
  fingerRoom: mm("r_o", "free space beside the outer half of the wheel's rim", 0, 200).default(25),
  roomBelow: mm("r_u", "free height under the bracket with the stage at its lowest", 0, 500).default(60),
};

const spring = {
  spring: hardware(SPRINGS, "the spring, when it is not the usual one of the bolt").optional(),
  ground: flag("ground", "the spring's ends are ground flat").default(true),
  rate: rate({ symbol: "k", meaning: "measured spring rate", min: 0.1, max: 200 }).optional(),
  share: force({ symbol: "W_s", meaning: "weight of plate, sheet and heater on this mount", min: 1, max: 200 }).default(
    16,
  ),
  range: mm("R", "tram travel to each side of the set length", 0.3, 8).optional(),
  setLength: mm("L_set", "length of the spring as set", 4, 80).optional(),
  push: force({ symbol: "F_p", meaning: "a hand on the plate", min: 0, max: 200 }).default(50),
};

const heat = {
  plate: mm("t_pl", "thickness of the plate", 3, 25).default(6.35),
  plateTemperature: temperature({ symbol: "T_pl", meaning: "plate temperature", min: -20, max: 200 }).default(80),
  ambient: temperature({ symbol: "T_amb", meaning: "air temperature", min: 0, max: 45 }).default(20),
  growth: mm(
    "delta",
    "how far the plate grows at this mount: expansion x distance to the fixed mount x warming",
    0,
    5,
  ).default(0.6),
  growthAngle: angle({
    symbol: "phi_g",
    meaning: "direction of the growth, away from the bar is 90",
    min: -360,
    max: 360,
  }).default(90),
  slotAngle: angle({
    symbol: "phi_s",
    meaning: "direction of the slot, when it is not that of the growth",
    min: -360,
    max: 360,
  }).optional(),
  halfTravel: mm("q", "how far the bolt may slide each way", 0, 6).optional(),
  allTypes: z
    .array(choice("type", "type of one of the plate's mounts", TYPES))
    .min(3)
    .max(6)
    .optional()
    .register(z.globalRegistry, {
      symbol: "",
      unit: "",
      description: "types of all mounts of the plate, this one among them",
    }),
};

export const schema = z.strictObject({
  ...place,
  ...joint,
  ...spring,
  ...heat,
  thickness: mm("t", "thickness of the bracket", 6, 20).optional(),
  cupDepth: mm("d_c", "depth of the spring's cup", 2, 12).optional(),
  material: hardware(MATERIALS, "printing material").default(itemOf(row(MATERIALS, "ASA"))),
  mountNumber: plainNumber({ symbol: "n_m", meaning: "number of the mount, engraved", min: 1, max: 9 }).default(1),
  count: plainNumber({ symbol: "n", meaning: "how many to print", min: 1, max: 24 }).default(1),
});

export type Parameters = z.output<typeof schema>;
