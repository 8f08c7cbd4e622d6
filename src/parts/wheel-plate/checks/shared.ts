import { boltTorque } from "../../../printing/printer.ts";
import { above } from "../../check.ts";
import { tooHotIn } from "../../heat.ts";
import { armsAt } from "../derive/arms.ts";
import { fittings } from "../fittings.ts";
import { contradiction } from "./contradiction.ts";
import type { PlateCheck } from "./wheels.ts";

const torque: PlateCheck = {
  name: "torque-crushes-plastic",
  path: ["material"],
  why: "plastic under more than its sustained pressure flows away, and the bolt comes loose within weeks",
  trips: { warning: { printer: { torqueM5: 0.64 } }, error: { printer: { torqueM5: 0.8 } } },
  test: ({ given, derived, printer }) => {
    const { bolt, armBolt } = fittings(given);
    const axle = Math.min(derived.torqueFixed, derived.torqueEccentric);
    const limits: [string, number][] = [[bolt, axle]];
    if (armsAt(given).length > 0) limits.push([armBolt, derived.torqueArm]);
    const findings = limits.map(([thread, limit]) => {
      const value = boltTorque(printer, thread);
      return above({
        value,
        unit: "N·m",
        error: limit,
        warning: 0.95 * limit,
        says: () =>
          `${thread} bolts are drawn up with ${Number(value.toFixed(2))} N·m; ${given.material.key} bears ${limit.toFixed(2)} N·m here`,
        set: `printer: torque${thread} ${(Math.floor(95 * limit) / 100).toFixed(2)} N·m or less`,
      });
    });
    return findings.find((finding) => finding?.level === "error") ?? findings.find((finding) => finding !== undefined);
  },
};

const noArmBolt: PlateCheck = {
  name: "no-stock-bolt-length",
  path: ["arm"],
  why: "a bolt too short strips the slot nut, one too long jacks itself up on the slot's bottom",
  trips: { error: { arm: { row: "20x20 slot 6", slotDepth: 5 } } },
  test: ({ given, derived }) => {
    if (armsAt(given).length === 0 || derived.armBoltLength > 0) return undefined;
    const { armBolt } = fittings(given);
    const says = `no ${armBolt} bolt in stock fits through ${derived.thickness.toFixed(1)} mm into the slots of ${given.arm.key}`;
    return { level: "error", says, set: "plate: another thickness, or another arm" };
  },
};

const tooHot: PlateCheck = {
  name: "material-too-hot-in-place",
  path: ["material"],
  why: "warm plastic creeps: the preload is gone, and the wheels leave the bar",
  trips: { warning: { placeTemperature: 40 }, error: { placeTemperature: 60 } },
  test: ({ given: { material, placeTemperature } }) =>
    tooHotIn({
      material,
      temperature: placeTemperature,
      words: `it is ${placeTemperature.toFixed(0)} °C round the plate`,
      cooler: "a cooler place",
    }),
};

const disagrees: PlateCheck = {
  name: "hardware-data-disagrees",
  path: ["wheel"],
  why: "a plate drawn to sizes that cannot be fits nothing that can be bought",
  trips: { error: { eccentric: { row: "6 mm", body: 6 } } },
  test: ({ given, derived }) => {
    const found = contradiction(given, derived);
    return found === undefined ? undefined : { level: "error", ...found };
  },
};

export const sharedChecks: readonly PlateCheck[] = [torque, noArmBolt, tooHot, disagrees];
