import { boltTorque } from "../../../printing/printer.ts";
import { above, below, type Finding } from "../../check.ts";
import { armsAt } from "../derive/arms.ts";
import { distanceKnown } from "../derive/axles.ts";
import type { Derived } from "../derive.ts";
import { fittings } from "../fittings.ts";
import type { Parameters } from "../parameters.ts";
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
          `${thread} bolts are drawn up with ${value} N·m; ${given.material.key} bears ${limit.toFixed(2)} N·m here`,
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
  test: ({ given }) => {
    const { serviceLimit } = given.material.values;
    const place = given.placeTemperature;
    return below({
      value: serviceLimit,
      unit: "°C",
      error: place,
      warning: place + 15,
      says: () => `${given.material.key} serves to ${serviceLimit} °C, and it is ${place} °C round the plate`,
      set: `material: one that serves to ${place + 15} °C or more`,
    });
  },
};

/** Sizes that no two such things can have together: what is wrong, and what to state. */
function contradiction(given: Parameters, derived: Derived): Pick<Finding, "says" | "set" | "path"> | undefined {
  const { wheel, eccentric, shim } = given;
  const { bolt, thread, washer, fender, eccentric: bush } = fittings(given);
  const { offset, bore, body } = eccentric.values;
  const metal = given.eccentricKind === "metal";
  const measured = (name: string) => ({ set: `${name}: as measured`, path: [name] });
  if (distanceKnown(given) === "unknown") {
    const says = `the distance from axle to bar is not known for this wheel on a ${given.barWidth} mm bar`;
    return { says, set: "overWheels: the caliper reading over two wheels pressed on the bar", path: ["overWheels"] };
  }
  if (metal && body < bore + 2 * offset) {
    return {
      says: `a bore of ${bore} mm off by ${offset} mm breaks out of a body of ${body} mm`,
      ...measured("eccentric"),
    };
  }
  if (bush.hexFlats < derived.eccentricHole) {
    return { says: `a hexagon of ${bush.hexFlats} mm falls through its hole`, ...measured("eccentric") };
  }
  if (metal && bore < thread.diameter - 0.01) {
    return { says: `an ${bolt} bolt does not go through a bore of ${bore} mm`, ...measured("eccentric") };
  }
  if (wheel.values.innerLand >= wheel.values.outerLand || wheel.values.innerLand <= thread.diameter) {
    return { says: "the lands of the wheel's bearings contradict each other or the bolt", ...measured("wheel") };
  }
  if (wheel.values.width > wheel.values.outside || wheel.values.outside <= wheel.values.outerLand) {
    return { says: "no wheel is wider than its diameter, or smaller than its bearings", ...measured("wheel") };
  }
  const rings = { washer, eccentricWasher: fender, ...(given.shimmed ? { shim: shim.values } : {}) };
  for (const [name, { hole, outside }] of Object.entries(rings)) {
    if (hole >= thread.diameter - 0.01 && outside > hole + 1) continue;
    return { says: `a ring ${hole} x ${outside} does not go on an ${bolt} bolt`, ...measured(name) };
  }
  if (derived.spacerOutside < derived.fixedHole + 1) {
    const says = `a spacer of ${derived.spacerOutside} mm has no wall round an ${bolt} bolt`;
    return { says, set: `spacerOutside: ${2 * thread.diameter} mm`, path: ["spacerOutside"] };
  }
  return undefined;
}

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
