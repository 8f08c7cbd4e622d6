import * as z from "zod";
import { METALS } from "../../catalogue/metals.ts";
import { itemOf } from "../../core/item.ts";
import { choice, flag, hardware, mass, meaning, power, temperature, voltage } from "../../core/parameter.ts";
import { row } from "../../core/table.ts";
import { block, mm, named, reference, spot } from "./words.ts";

const mount = z.strictObject({
  at: spot,
  type: choice("type", "how the bolt may move as the plate grows", {
    fixed: "a close round hole: the point the plate grows away from",
    slot: "a slot along the line to the fixed point: holds the plate straight",
    free: "a wide round hole: lets the plate grow any way",
  }),
  bar: reference("the moving bar it is bolted to; left out, the nearest level one").optional(),
  parameters: block("tram-mount", "what this mount has of its own"),
});

const heater = z.strictObject({
  size: meaning(
    z.tuple([mm("a_h", "heater, along x", 10, 2000), mm("b_h", "heater, along y", 10, 2000)], "expected [x, y]"),
    "size of the heater, along x and y",
  ),
  at: meaning(spot.clone(), "middle of the heater; left out, that of the plate").optional(),
  power: power({ symbol: "P", meaning: "power of the heater", min: 1, max: 5000 }),
  volts: voltage({ symbol: "U", meaning: "voltage of the heater", min: 5, max: 250 }),
  adhesive: temperature({ symbol: "T_ad", meaning: "what its adhesive stands", min: 60, max: 300 }).default(150),
});

const sensor = z.strictObject({
  at: spot,
  diameter: mm("d_s", "hole of the sensor", 1, 12).default(3.2),
  depth: mm("t_s", "how deep its hole goes into the plate from below", 1, 25).optional(),
  underHeater: flag(
    "under",
    "whether it sits in the heater or is stuck under it, and has no hole in the plate",
  ).default(false),
});

const plate = z.strictObject({
  at: spot,
  size: meaning(
    z.tuple([mm("a", "plate, along x", 50, 2000), mm("b", "plate, along y", 50, 2000)], "expected [x, y]"),
    "size of the plate, along x and y",
  ),
  thickness: mm("t_pl", "thickness of the plate", 3, 25).default(6.35),
  metal: hardware(METALS, "what the plate is made of").default(itemOf(row(METALS, "aluminium"))),
  sheet: mass({ symbol: "m_sh", meaning: "sheet on the plate, heater and its lagging", min: 0, max: 50 }).default(0.5),
  temperature: temperature({ symbol: "T_pl", meaning: "plate temperature", min: 0, max: 200 }).default(80),
  ambient: temperature({ symbol: "T_amb", meaning: "air temperature", min: 0, max: 45 }).default(20),
  mounts: named(mount, "points that hold the plate", 6),
  heater: meaning(heater, "the heater under the plate").optional(),
  sensor: meaning(sensor, "the sensor of the plate's temperature").optional(),
});

const load = z.strictObject({
  mass: mass({ symbol: "m", meaning: "mass", min: 0, max: 500 }),
  at: spot,
});

const carriage = z.strictObject({
  post: reference("the upright bar its wheels run on"),
  arms: meaning(z.array(reference("a moving bar")).max(3), "the moving bars that are bolted to it").default([]),
  parameters: block("wheel-plate", "what this carriage has of its own"),
});

export const cargo = {
  plate: meaning(plate, "the plate that is lifted"),
  mount: block("tram-mount", "what all tram mounts have in common: any parameter that the plan does not derive"),
  carriages: named(carriage, "carriages on wheels", 6).default({}),
  carriage: block("wheel-plate", "what all wheel plates have in common: any parameter that the plan does not derive"),
  masses: named(load, "what else goes up and down, plate and moving bars left out", 30).default({}),
  layers: z
    .array(mm("h", "a layer height", 0.02, 2))
    .min(1)
    .max(20)
    .default([0.1, 0.2])
    .register(z.globalRegistry, { symbol: "h", unit: "mm", description: "layer heights the machine is to print with" }),
  print: mass({ symbol: "m_pr", meaning: "heaviest thing that is put on the plate", min: 0, max: 200 }).default(1),
};
