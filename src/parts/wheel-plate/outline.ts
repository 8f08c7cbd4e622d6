import type { Vec2 } from "../../geometry/mesh.ts";
import { disc, hullOf, opening, type Profile, rectangle, slotAlong, without } from "../../geometry/profile.ts";
import { prism, type Solid } from "../../geometry/solid.ts";
import { uprightHole } from "../../printing/compensation.ts";
import type { Printer } from "../../printing/printer.ts";
import { bedOpening } from "../features/bed-opening.ts";
import { armsAt, grooves } from "./derive/arms.ts";
import type { Derived } from "./derive.ts";
import { type PlateWheel, wheelsOf } from "./layout.ts";
import type { Parameters } from "./parameters.ts";

/** A plate as it is modelled: `hand` -1 is the mirrored one, `arms` whether it carries the arm pattern. */
export interface Sheet {
  readonly given: Parameters;
  readonly derived: Derived;
  readonly printer: Printer;
  readonly hand: 1 | -1;
  readonly arms: boolean;
}

/** What a cutter sticks out of a face, so that no skin is left, mm. */
const OVERRUN = 1;
/** A strip of plate narrower than this beside a relief is taken off with it, mm. */
const STRIP = 3;

/** Returns the axles of the sheet: where, and of which kind. mm. */
export function axles({ given, derived, hand }: Sheet): { readonly at: Vec2; readonly wheel: PlateWheel }[] {
  return wheelsOf(given).map((wheel) => ({ at: [(hand * wheel.side * derived.axisDistance) / 2, wheel.y], wheel }));
}

/** Returns the middles of the arm slots. mm. */
export function slots({ given, derived, arms }: Sheet): Vec2[] {
  if (!arms) return [];
  const rows = armsAt(given).flatMap((at) => grooves(given).map((groove) => at + groove));
  return rows.flatMap((y): Vec2[] => [
    [-derived.armBoltX, y],
    [derived.armBoltX, y],
  ]);
}

/** Returns the plate's outline: a rectangle with round corners. */
export function outline({ derived: { width, length, corner } }: Sheet): Profile {
  const [x, y] = [width / 2 - corner, length / 2 - corner];
  const corners: Vec2[] = [
    [x, y],
    [-x, y],
    [-x, -y],
    [x, -y],
  ];
  // The polygons of the corners end a hair inside the straight sides, which shall be as long as they are drawn.
  const sides = [rectangle(-width / 2, -y, width / 2, y), rectangle(-x, -length / 2, x, length / 2)];
  return hullOf(...sides, ...corners.map((at) => disc(corner, at)));
}

export function holeModelled({ derived }: Sheet, { kind }: PlateWheel): number {
  return kind === "fixed" ? derived.fixedHoleModelled : derived.eccentricHoleModelled;
}

/** Returns the axle holes, wider in the first layer by what that layer spreads. */
export function axleHoles(sheet: Sheet): Solid[] {
  const bed = -sheet.derived.thickness;
  const { firstLayer } = sheet.printer;
  return axles(sheet).flatMap(({ at, wheel }) => {
    const diameter = holeModelled(sheet, wheel);
    return [
      prism(opening(diameter, at), bed - OVERRUN, OVERRUN),
      prism(opening(diameter + 2 * bedOpening(sheet.printer), at), bed - OVERRUN, bed + firstLayer),
    ];
  });
}

/** Returns the outline of an arm slot, `wider` all round. */
export function slotOutline({ derived }: Sheet, at: Vec2, wider = 0): Profile {
  const width = derived.slotWidthModelled + 2 * wider;
  return slotAlong(at, 90, width, width + derived.clearance);
}

/** Returns the outline of the counterbore of an arm slot. */
export function recessOutline({ derived, printer }: Sheet, at: Vec2): Profile {
  const width = uprightHole(derived.recessWidth, printer);
  return slotAlong(at, 90, width, width + derived.clearance);
}

/** Returns the arm slots with their counterbores, which open on the wheel side, away from the bed. */
export function armSlots(sheet: Sheet): Solid[] {
  const { thickness, recessDepth } = sheet.derived;
  const { firstLayer } = sheet.printer;
  return slots(sheet).flatMap((at) => [
    prism(slotOutline(sheet, at), -thickness - OVERRUN, OVERRUN),
    prism(slotOutline(sheet, at, bedOpening(sheet.printer)), -thickness - OVERRUN, -thickness + firstLayer),
    ...(recessDepth > 0 ? [prism(recessOutline(sheet, at), -recessDepth, OVERRUN)] : []),
  ]);
}

/**
 * Returns the pockets under the tyres: from each axle outward, square to the plate's edges, so that no sharp slivers
 * are left there; a round land stays under spacer and hexagon.
 */
export function reliefs(sheet: Sheet): Solid[] {
  const { given, derived } = sheet;
  if (derived.relief === 0) return [];
  const radius = given.wheel.values.outside / 2 + 1;
  const lands = axles(sheet).map(({ at }) => disc(derived.reliefLand / 2, at));
  const pockets = axles(sheet).map(({ at: [x, y] }) => {
    const side = Math.sign(x);
    const inner = Math.abs(x) - radius < STRIP / 2 ? -OVERRUN : Math.abs(x) - radius;
    const outer = reach(Math.abs(x) + radius, derived.width / 2);
    const low = -reach(radius - y, derived.length / 2);
    const high = reach(radius + y, derived.length / 2);
    const [from, to] = side > 0 ? [inner, outer] : [-outer, -inner];
    return rectangle(from, low - bridge(sheet, y, -1), to, high + bridge(sheet, y, 1));
  });
  return pockets.map((pocket) => prism(without(pocket, ...lands), -derived.relief, OVERRUN));
}

/** Returns where a pocket ends: at its own edge, or past that of the plate where a thin strip would be left. */
function reach(own: number, edge: number): number {
  return own > edge - STRIP ? edge + OVERRUN : own;
}

/** Returns how much farther a pocket goes so that no thin rib is left between it and its neighbour. */
function bridge({ given, derived }: Sheet, y: number, way: 1 | -1): number {
  const rib = derived.rowPitch - given.wheel.values.outside - 2;
  const last = way * y > given.rowSpacing / 2 - 1e-9;
  return !last && rib < STRIP ? rib / 2 + 0.01 : 0;
}
