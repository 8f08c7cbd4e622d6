import { hexagon } from "../../geometry/profile.ts";
import { moved, prism, revolved, type Solid, turned } from "../../geometry/solid.ts";
import { type Derived, derive } from "../../parts/wheel-plate/derive.ts";
import { fittings } from "../../parts/wheel-plate/fittings.ts";
import { type PlateWheel, wheelsOf } from "../../parts/wheel-plate/layout.ts";
import type { Parameters } from "../../parts/wheel-plate/parameters.ts";
import type { PlacedPart } from "../machine.ts";
import { type Drawn, standing } from "./body.ts";
import type { Machine } from "./machine-data.ts";

/** Returns the wheels of the carriages, in the grooves of their posts. */
export function wheels(machine: Machine): Drawn[] {
  return onPlates(machine, "wheel", (given, { wheelPlane }) => {
    const { outside, width, axisToBarFace } = given.wheel.values;
    // Flanks of 45 degrees; where the axis' height is not known, as much as runs in the usual groove.
    const flank = Math.min(width / 2 - 0.5, axisToBarFace > 0 ? outside / 2 - axisToBarFace + 0.5 : 2);
    const [radius, half] = [outside / 2, width / 2];
    const outline: [number, number][] = [
      [0, -half],
      [radius - flank, -half],
      [radius, -half + flank],
      [radius, half - flank],
      [radius - flank, half],
      [0, half],
    ];
    return moved(revolved(outline, "inside"), [0, 0, wheelPlane]);
  });
}

/** Returns the axle bolts with their spacers, from the plate to the far side of the wheels. */
export function axles(machine: Machine): Drawn[] {
  return onPlates(machine, "axle", (given, { wheelPlane, thickness, spacerOutside, spacerLength }) => {
    const bolt = Number(given.wheel.values.boltThread.replace("M", "")) / 2;
    const end = wheelPlane + given.wheel.values.overBearings / 2 + 2 * bolt;
    const spacer = Math.max(bolt, spacerOutside / 2);
    return revolved(
      [
        [0, -thickness],
        [bolt, -thickness],
        [bolt, 0],
        [spacer, 0],
        [spacer, spacerLength],
        [bolt, spacerLength],
        [bolt, end],
        [0, end],
      ],
      "inside",
    );
  });
}

/** One body for each wheel of each plate, drawn about its axle and put where that axle stands. */
function onPlates(
  { stage, printer }: Machine,
  what: string,
  draw: (given: Parameters, derived: Derived, wheel: PlateWheel) => Solid | undefined,
): Drawn[] {
  const carriers = stage.parts.filter(({ family }) => family === "wheel-plate");
  return carriers.flatMap((part) => {
    const given = part.parameters as Parameters;
    const derived = derive(given, printer(part.family));
    const plates = derived.faces === 2 ? [near, farFace(derived)] : [near];
    const all = plates.flatMap((lay) => wheelsOf(given).map((wheel) => ({ lay, wheel })));
    return all.flatMap(({ lay, wheel }, index): Drawn[] => {
      const solid = draw(given, derived, wheel);
      if (solid === undefined) return [];
      return [
        {
          name: `${what} ${index + 1} of ${part.name}`,
          solid: standing(lay(solid, placeOf(wheel, derived)), part.placement),
          moves: part.moves,
          belongsTo: [part.name, `${part.name} axle ${index + 1}`, ...postOf(part, stage.plan)],
          path: part.path,
        },
      ];
    });
  });
}

type Place = [number, number, number];

const near = (solid: Solid, place: Place) => moved(solid, place);

/** The plate on the far face is turned over, so that left stays left of the bar. */
const farFace =
  ({ faceDistance, stagger }: Derived) =>
  (solid: Solid, [x, y, z]: Place) =>
    moved(turned(moved(solid, [-x, y, z]), "y", 180), [0, stagger, faceDistance]);

/** Returns the hexagons of the eccentrics between the plates and the wheels. */
export function eccentrics(machine: Machine): Drawn[] {
  return onPlates(machine, "eccentric", (given, { standoff }, { kind }) =>
    kind === "eccentric" ? prism(hexagon(fittings(given).eccentric.hexFlats), 0, standoff) : undefined,
  );
}

function placeOf({ side, y }: PlateWheel, { axisDistance }: Derived): Place {
  return [(side * axisDistance) / 2, y, 0];
}

/** The bar on which a carriage runs. */
function postOf({ path }: PlacedPart, plan: Machine["stage"]["plan"]): string[] {
  const carriage = path[0] === "carriages" ? plan.carriages[String(path[1])] : undefined;
  return carriage === undefined ? [] : [`bar ${carriage.post}`];
}
