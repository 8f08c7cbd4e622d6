import { cylinder, type Solid } from "../../geometry/solid.ts";
import { type Derived, derive } from "../../parts/tram-mount/derive.ts";
import { type Fittings, fittings } from "../../parts/tram-mount/fittings.ts";
import type { Parameters } from "../../parts/tram-mount/parameters.ts";
import { type Drawn, standing } from "./body.ts";
import type { Machine } from "./machine-data.ts";

/** What stands out of the nut of a tram bolt, mm. Source: common practice. */
const STANDS_OUT = 1;

/** A mount of the plate as its hardware sees it: z up from the top of the bracket. mm */
interface Stack {
  readonly given: Parameters;
  readonly parts: Fittings;
  readonly derived: Derived;
}

/** Returns the bolts of the plate's mounts, from under their wheels to the top of the plate. */
export function tramBolts(machine: Machine): Drawn[] {
  return onMounts(machine, "tram bolt", ({ given, parts, derived }) => {
    const low = -derived.thickness - Math.max(STANDS_OUT, derived.under);
    return [cylinder(parts.thread.diameter / 2, low, derived.plateHeight + given.plate)];
  });
}

/** Returns the springs under the plate, as they are set. */
export function springs(machine: Machine): Drawn[] {
  return onMounts(machine, "spring", ({ parts, derived }) => {
    const from = derived.springWasherThickness;
    return [cylinder(parts.spring.outside / 2, from, from + derived.setLength)];
  });
}

/** Returns the washers under and over the springs, and the one that slides under a bracket with a wheel. */
export function tramWashers(machine: Machine): Drawn[] {
  return onMounts(machine, "washer", ({ given, parts, derived }) => {
    const { heatWasher, sliderWasher } = parts;
    const slides = given.joint === "thumb-wheel" || given.joint === "tapped-plate";
    const under = -derived.thickness;
    return [
      cylinder(derived.springWasherOutside / 2, 0, derived.springWasherThickness),
      cylinder(heatWasher.outside / 2, derived.plateHeight - heatWasher.thickness, derived.plateHeight),
      ...(slides ? [cylinder(sliderWasher.outside / 2, under - sliderWasher.thickness, under)] : []),
    ];
  });
}

/** Returns the thumb wheels, as the circles round their lobes. */
export function thumbWheels(machine: Machine): Drawn[] {
  return onMounts(machine, "thumb wheel", ({ given, parts, derived }) => {
    if (given.joint !== "thumb-wheel") return [];
    const top = -derived.thickness - parts.sliderWasher.thickness;
    return [cylinder(parts.wheel / 2, top - derived.wheelHeight, top)];
  });
}

/** The bodies of each mount, numbered where there are several; they belong to the mount and to the plate. */
function onMounts(machine: Machine, what: string, draw: (stack: Stack) => readonly Solid[]): Drawn[] {
  return machine.prints.flatMap(({ part }) => {
    if (part.family !== "tram-mount") return [];
    const given = part.parameters as Parameters;
    const solids = draw({ given, parts: fittings(given), derived: derive(given, machine.printer(part.family)) });
    return solids.map(
      (solid, index): Drawn => ({
        name: `${what}${solids.length > 1 ? ` ${index + 1}` : ""} of ${part.name}`,
        solid: standing(solid, part.placement),
        moves: part.moves,
        belongsTo: [part.name, "plate"],
        path: part.path,
      }),
    );
  });
}
