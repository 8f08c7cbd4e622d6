import { washerName } from "../../catalogue/washer-name.ts";
import { boltTorque } from "../../printing/printer.ts";
import type { Case, Companion, HardwareLine } from "../family.ts";
import { armsAt, grooves } from "./derive/arms.ts";
import type { Derived } from "./derive.ts";
import { fittings } from "./fittings.ts";
import { wheelsOf } from "./layout.ts";
import type { Parameters } from "./parameters.ts";

type Carriage = Case<Parameters, Derived>;

/** Returns how many axles of each kind all plates of all carriages have. */
function axleCount({ given, derived }: Carriage) {
  const wheels = wheelsOf(given);
  const plates = derived.faces * given.count;
  const fixed = wheels.filter(({ kind }) => kind === "fixed").length;
  return { fixed: fixed * plates, eccentric: (wheels.length - fixed) * plates, all: wheels.length * plates, plates };
}

/** Returns what must be bought, in the order in which it goes on the axles. */
export function hardware(each: Carriage): HardwareLine[] {
  const { given, derived } = each;
  const { bolt, washer, fender } = fittings(given);
  const { fixed, eccentric, all } = axleCount(each);
  const far = given.sandwich;
  const plain = far ? 2 * fixed : 2 * fixed + eccentric;
  const large = far ? fixed + 3 * eccentric : eccentric;
  const line = (item: string, count: number, note?: string): HardwareLine[] =>
    count === 0 ? [] : [{ item, count, ...(note === undefined ? {} : { note }) }];
  const spacers = fixed + (far ? all : 0);
  const between = far ? ", and between spacer and far plate" : "";
  return [
    ...line(`${bolt} x ${derived.boltLength} cap screw`, all, "axles; heads on the outer face"),
    ...line(washerName(bolt, washer), plain, far ? "fixed axles, both ends" : "fixed axles, and under every lock nut"),
    ...line(washerName(bolt, fender), large, `under the heads of eccentric axles${between}`),
    ...(given.spacerKind === "printed" ? [] : line(spacerName(each), spacers, "metal, all of one length")),
    ...(given.eccentricKind === "printed" ? [] : line(`eccentric ${given.eccentric.key}`, eccentric, HEXAGON)),
    ...(given.shimmed ? line(`shim ring ${given.shim.key}`, 2 * all, "one on each side of a wheel") : []),
    ...line(`wheel ${given.wheel.key}`, all),
    ...bearingLines(each),
    ...line(`${bolt} lock nut`, all),
    ...armLines(each),
  ];
}

/** What sits in the wheels, where they are not sold with it. */
function bearingLines(each: Carriage): HardwareLine[] {
  const { bearing, wheel } = each.given;
  const { all } = axleCount(each);
  const between = wheel.values.overBearings - 2 * bearing.values.width;
  const line = { item: `bearing ${bearing.key}`, count: 2 * all, note: "two in each wheel, often sold with it" };
  if (between < 0.05) return [line];
  const thick = between.toFixed(2).replace(/\.?0+$/, "");
  return [line, { item: `ring ${bearing.values.bore} bore, ${thick} thick`, count: all, note: "between the bearings" }];
}

const HEXAGON = "the hexagon lies on the wheel side";

function spacerName({ given, derived }: Carriage): string {
  const { bolt } = fittings(given);
  return `spacer ${derived.spacerOutside} x ${derived.spacerLength.toFixed(2).replace(/\.?0+$/, "")} for ${bolt}`;
}

function armLines(each: Carriage): HardwareLine[] {
  const { given, derived } = each;
  const { armBolt, armWasher } = fittings(given);
  const count = 2 * armsAt(given).length * grooves(given).length * axleCount(each).plates;
  if (count === 0) return [];
  return [
    { item: `${armBolt} x ${derived.armBoltLength} cap screw`, count, note: `arms; to ${given.arm.key}` },
    { item: washerName(armBolt, armWasher), count, note: "arms" },
    { item: `slot nut ${armBolt} for ${given.arm.key}`, count },
  ];
}

/** Returns the printed spacers and bushes, where they are not bought. */
export function companions(each: Carriage): Companion[] {
  const { given, derived, printer } = each;
  const { bolt, eccentric } = fittings(given);
  const axles = axleCount(each);
  const shared = {
    bolt,
    torque: Math.min(2, Math.max(0.1, boltTorque(printer, bolt))),
    ...(given.material.row === undefined ? {} : { material: given.material.key }),
  };
  const spacers = axles.fixed + (given.sandwich ? axles.all : 0);
  const plain = {
    ...shared,
    kind: "plain",
    against: given.shimmed ? "shim" : "bearing",
    innerLand: Math.min(20, Math.max(4, given.wheel.values.innerLand)),
    outside: derived.spacerOutside,
    length: derived.spacerLength,
    count: Math.min(24, spacers),
  };
  const bush = {
    ...shared,
    kind: "bush",
    plate: derived.thickness,
    body: eccentric.body,
    hexFlats: eccentric.hexFlats,
    offset: given.eccentric.values.offset,
    hexHeight: derived.standoff,
    count: Math.min(24, axles.eccentric),
  };
  return [
    ...(given.spacerKind === "printed" && spacers > 0
      ? [{ family: "wheel-spacer", role: "spacer", count: spacers, parameters: plain }]
      : []),
    ...(given.eccentricKind === "printed" && axles.eccentric > 0
      ? [{ family: "wheel-spacer", role: "bush", count: axles.eccentric, parameters: bush }]
      : []),
  ];
}

/** Returns the figures for the sheet. */
export function limits({ given, derived }: Carriage): string[] {
  const { bolt, armBolt, eccentric } = fittings(given);
  const far = given.sandwich ? `; ${derived.sandwichGap.toFixed(1)} mm between the plates` : "";
  return [
    `preload: ${derived.preload.toFixed(1)} N on a wheel, at least ${derived.preloadLeast.toFixed(1)} N; by hand, a wheel held back by a finger should just turn`,
    `one degree of an eccentric near its middle shifts the wheel ${derived.perDegree.toFixed(3)} mm`,
    `largest force on a wheel: ${derived.largest.toFixed(1)} N of ${given.wheel.values.forceLimit} N, smallest ${derived.smallest.toFixed(1)} N`,
    `fixed ${bolt} axles on this plastic: at most ${derived.torqueFixed.toFixed(2)} N·m`,
    `eccentric ${bolt} axles: above ${derived.torqueHexagon.toFixed(2)} N·m the ${eccentric.hexFlats} mm hexagon sinks in with time; snug is enough, the lock nut holds`,
    ...(derived.armBoltLength > 0 ? [`${armBolt} arm bolts: at most ${derived.torqueArm.toFixed(2)} N·m`] : []),
    `eccentrics go in from the wheel side, hexagon on the face, where a flat spanner reaches it${far}`,
    ...(derived.faces === 2 ? [`the second plate is the other hand and stands ${derived.stagger} mm higher`] : []),
  ];
}
