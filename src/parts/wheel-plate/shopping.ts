import type { Case, Companion, HardwareLine } from "../family.ts";
import { armsAt, grooves } from "./derive/arms.ts";
import type { Derived } from "./derive.ts";
import { fittings } from "./fittings.ts";
import { wheelsOf } from "./layout.ts";
import type { Parameters } from "./parameters.ts";

type Carriage = Case<Parameters, Derived>;

/** How many axles of each kind all carriages have. */
function axles({ given, derived }: Carriage): { fixed: number; eccentric: number; all: number } {
  const wheels = wheelsOf(given);
  const times = derived.faces * given.count;
  const fixed = wheels.filter(({ kind }) => kind === "fixed").length * times;
  return { fixed, eccentric: wheels.length * times - fixed, all: wheels.length * times };
}

/** Returns what must be bought, in the order in which an axle is put together. */
export function hardware(carriage: Carriage): HardwareLine[] {
  const { given, derived } = carriage;
  const { bolt, washer, fender, armBolt, armWasher } = fittings(given);
  const { fixed, eccentric, all } = axles(carriage);
  const armBolts = 2 * armsAt(given).length * grooves(given).length * derived.faces * given.count;
  const far = given.sandwich ? all : 0;
  const spacers = (given.spacerKind === "metal" ? fixed : 0) + far;
  return [
    { item: `${bolt} x ${derived.boltLength} cap screw`, count: all, note: "axles" },
    {
      item: `${bolt} washer ${washer.outside} x ${washer.thickness}`,
      count: fixed + all,
      note: "under fixed heads and all nuts",
    },
    {
      item: `${bolt} large washer ${fender.outside} x ${fender.thickness}`,
      count: eccentric,
      note: "under the heads of eccentric axles",
    },
    { item: `metal spacer ${derived.spacerLength} long`, count: spacers },
    {
      item: `eccentric ${given.eccentric.key}, hexagon on the wheel side`,
      count: given.eccentricKind === "metal" ? eccentric : 0,
    },
    { item: `shim ring ${given.shim.key}`, count: given.shimmed ? 2 * all : 0, note: "one on each side of a wheel" },
    { item: `wheel ${given.wheel.key} with two ${given.bearing.key} bearings and the ring between them`, count: all },
    { item: `${bolt} lock nut`, count: all },
    { item: `${armBolt} x ${derived.armBoltLength} cap screw`, count: armBolts, note: `to the ${given.arm.key} arms` },
    { item: `${armBolt} washer ${armWasher.outside} x ${armWasher.thickness}`, count: armBolts },
    { item: `slot nut ${armBolt} for ${given.arm.key}`, count: armBolts },
  ].filter(({ count }) => count > 0);
}

/** Returns the printed spacers and bushes that the plate is meant for. */
export function companions(carriage: Carriage): Companion[] {
  const { given, derived } = carriage;
  const { bolt } = fittings(given);
  const { fixed, eccentric } = axles(carriage);
  const material = { row: given.material.key };
  const spacer = {
    bolt,
    length: derived.spacerLength,
    outside: derived.spacerOutside,
    against: given.shimmed ? "shim" : "bearing",
    innerLand: given.bearing.values.innerLand,
    torque: Math.max(0.1, Math.floor(derived.torqueFixed * 10) / 10),
    count: Math.min(24, Math.max(1, fixed)),
    material,
  };
  const bush = {
    kind: "bush",
    bolt,
    body: derived.eccentricBody,
    offset: given.eccentric.values.offset,
    hexHeight: given.eccentric.values.height,
    plate: derived.thickness,
    count: Math.min(24, Math.max(1, eccentric)),
    material,
  };
  return [
    ...(given.spacerKind === "printed" && fixed > 0
      ? [{ family: "wheel-spacer", parameters: spacer, count: fixed }]
      : []),
    ...(given.eccentricKind === "printed" && eccentric > 0
      ? [{ family: "wheel-spacer", parameters: bush, count: eccentric }]
      : []),
  ];
}

/** Returns the figures for the sheet. */
export function limits({ given, derived }: Carriage): string[] {
  return [
    `preload each wheel with ${derived.preload.toFixed(0)} N: held still, a wheel just turns under a finger`,
    `most loaded wheel ${derived.largest.toFixed(0)} N of ${given.wheel.values.forceLimit} N`,
    `fixed axles at most ${derived.torqueFixed.toFixed(2)} N·m, eccentric axles ${derived.torqueEccentric.toFixed(2)} N·m, arm bolts ${derived.torqueArm.toFixed(2)} N·m; retighten after a day`,
    "the eccentrics' hexagon is on the wheel side; start at the widest, then turn until no wheel is free",
  ];
}
