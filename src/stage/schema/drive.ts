import * as z from "zod";
import { BELTS } from "../../catalogue/belts.ts";
import { IDLERS } from "../../catalogue/idlers.ts";
import { MOTORS } from "../../catalogue/motors.ts";
import { PULLEYS } from "../../catalogue/pulleys.ts";
import { itemOf } from "../../core/item.ts";
import { angle, choice, flag, force, hardware, meaning, plainNumber, torque } from "../../core/parameter.ts";
import { row } from "../../core/table.ts";
import { mm, named, reference, spot } from "./words.ts";

const motorPulley = z.strictObject({
  loop: reference("the loop that runs round it"),
  pulley: hardware(PULLEYS, "a pulley on the motor").default(itemOf(row(PULLEYS, "20 teeth 2 mm"))),
  hub: choice("hub", "which way its hub points", { up: "up", down: "down" }).default("up"),
  gap: mm("gap", "air below it: to the motor's plate, or to the pulley below", 0, 60).default(1),
  commonFlange: flag("common", "its lower flange is the upper one of the pulley below: a double pulley").default(false),
});

const motor = z.strictObject({
  motor: hardware(MOTORS, "the motor").default(itemOf(row(MOTORS, "NEMA 17"))),
  at: spot,
  plateTop: mm("z_m", "top of the plate the motor hangs from", -300, 500).default(0),
  plate: mm("t_m", "from the motor's face up to the top of that plate", 0, 30).default(6),
  pulleys: meaning(z.array(motorPulley).min(1).max(3), "the pulleys on the motor, from the lowest up"),
  torque: torque({
    symbol: "T_m",
    meaning: "torque the motor still has at the lifting speed",
    min: 0.01,
    max: 20,
  }).optional(),
  stepAngle: plainNumber({
    symbol: "theta",
    meaning: "degrees of a full step",
    min: 0.36,
    max: 15,
    whole: false,
  }).default(1.8),
  microsteps: plainNumber({ symbol: "m", meaning: "microsteps of a full step", min: 1, max: 256 }).default(16),
  speed: plainNumber({ symbol: "v", meaning: "lifting speed, mm/s", min: 0.1, max: 100, whole: false }).default(5),
});

const loop = z.strictObject({
  belt: hardware(BELTS, "the belt").default(itemOf(row(BELTS, "2 mm round"))),
  width: mm("w_b", "width of the belt", 3, 30).default(6),
  nodes: z.array(reference("motor, a screw or an idler")).min(2).max(12).register(z.globalRegistry, {
    symbol: "",
    unit: "",
    description: "what the belt runs round: motor, screws and idlers by their names",
  }),
  inOrder: flag("inOrder", "whether they are listed as the belt meets them; else the shortest way is found").default(
    false,
  ),
  slide: meaning(
    z.strictObject({
      node: reference("what slides: the motor or an idler").default("motor"),
      direction: angle({ symbol: "phi", meaning: "direction of the slide, from +x", min: -360, max: 360 }),
      from: mm("s_0", "its one end, from where the node is placed", -200, 200).default(-8),
      to: mm("s_1", "its other end", -200, 200).default(8),
    }),
    "the slot that tightens the loop",
  ).optional(),
  stock: z
    .array(mm("L_stock", "a loop you can get", 50, 6000))
    .min(1)
    .max(300)
    .optional()
    .register(z.globalRegistry, { symbol: "", unit: "mm", description: "loops you can get, when not the usual ones" }),
  lengthTolerance: mm("t_L", "tolerance of the loop's length to either side, when not the usual one", 0, 20).optional(),
  tension: force({ symbol: "T", meaning: "tension of each span, installed", min: 1, max: 500 }).default(15),
  frameError: mm("e_f", "how far the frame may be off", 0, 10).default(1),
});

const idler = z.strictObject({
  at: spot,
  idler: hardware(IDLERS, "the idler").default(itemOf(row(IDLERS, "smooth, bore 5"))),
  side: choice("side", "where it stands", { inside: "inside the loop", outside: "outside, on the belt's back" }),
  bottom: mm(
    "z_i",
    "lower end of its inner ring over the datum, when not where its belt wants it",
    -300,
    500,
  ).optional(),
  axle: mm("l_i", "length of its axle above that end, nut and all", 1, 200).optional(),
});

export const drive = {
  motor: meaning(motor, "the motor and its pulleys"),
  loops: named(loop, "closed belts", 3),
  idlers: named(idler, "idlers", 12).default({}),
};
