import { THREADS } from "../../catalogue/threads.ts";
import { results } from "../../core/calculation.ts";
import { up } from "../../core/rounding.ts";
import { row } from "../../core/table.ts";
import { segments } from "../../geometry/segments.ts";
import { clampForce, TORQUE_FACTOR } from "../../mechanics/clamp-force.ts";
import { uprightHole } from "../../printing/compensation.ts";
import { layerNearest } from "../../printing/layers.ts";
import type { Printer } from "../../printing/printer.ts";
import type { Parameters } from "./parameters.ts";

/** What the bore is wider than the bolt, mm. Source: design rule. */
const PLAY = 0.3;
/** Thinnest wall of a printed bush or ring, mm. Source: design rule. */
export const THINNEST = 1.2;
/** The flange of a flanged spacer: how much wider on the diameter, and how thick, mm. */
export const FLANGE = { wider: 4, thick: 1.2 };
/** A bush ends this far inside its plate, and turns in a hole that is wider by the second figure, mm. */
const BUSH = { short: 0.5, turning: 0.1 };

export interface Derived {
  readonly bore: number;
  readonly boreModelled: number;
  readonly outside: number;
  readonly length: number;
  readonly wall: number;
  readonly area: number;
  readonly clamp: number;
  readonly pressure: number;
  readonly torqueAllowed: number;
  readonly body: number;
  readonly bodyLength: number;
  readonly plateHole: number;
  readonly hexFlats: number;
  readonly standoff: number;
  readonly bushWall: number;
  readonly roundSides: number;
  readonly boreSides: number;
  readonly flangeSides: number;
  readonly volume: number;
}

/** Returns what follows; a ring without plastic has no area, and so no pressure: its check says so. */
export function derive(given: Parameters, printer: Printer): Derived {
  const diameter = row(THREADS, given.bolt).values.diameter;
  const bore = diameter + PLAY;
  const outside = outsideOf(given, diameter);
  const bush = { ...bushOf(given, diameter), standoff: layerNearest(given.hexHeight, printer) };
  const area = pressedArea(given);
  const { force: clamp } = results(clampForce, { torque: given.torque, diameter, factor: TORQUE_FACTOR });
  const length = layerNearest(given.length, printer);
  const boreModelled = uprightHole(bore, printer);
  return {
    bore,
    boreModelled,
    outside,
    length,
    wall: (outside - bore) / 2,
    area,
    clamp,
    pressure: area > NO_PLASTIC ? clamp / area : 0,
    torqueAllowed: Math.max(0, (given.material.values.washerPressure * area * TORQUE_FACTOR * diameter) / 1000),
    ...bush,
    bushWall: bush.body / 2 - given.offset - bore / 2,
    ...volumeOf(given.kind, { outside, length, boreModelled, ...bush }),
  };
}

/** An area no larger than this is none: rounding, or a bore wider than the ring. mm2 */
export const NO_PLASTIC = 0.01;

function outsideOf({ outside, against, innerLand }: Parameters, diameter: number): number {
  return outside ?? (against === "shim" ? 2 * diameter : innerLand);
}

/** Returns the plastic that the bolt presses; 0 or less where the bore leaves none. mm2 */
export function pressedArea(given: Parameters): number {
  const diameter = row(THREADS, given.bolt).values.diameter;
  const ring = (Math.PI / 4) * (outsideOf(given, diameter) ** 2 - (diameter + PLAY) ** 2);
  if (given.kind !== "bush") return ring;
  // A bush is pressed by the ring beside the wheel above, and stands on the plate round its hole below.
  const { hexFlats, plateHole } = bushOf(given, diameter);
  return Math.min(ring, (Math.sqrt(3) / 2) * hexFlats ** 2 - (Math.PI / 4) * plateHole ** 2);
}

function bushOf(given: Parameters, diameter: number) {
  const body = given.body ?? leastBody(diameter, given.offset);
  return {
    body,
    bodyLength: given.plate - BUSH.short,
    plateHole: body + BUSH.turning,
    hexFlats: given.hexFlats ?? leastFlats(body),
  };
}

/** Returns the least body of a printed bush whose thin side is still plastic. mm. */
export function leastBody(diameter: number, offset: number): number {
  return up(diameter + PLAY + 2 * offset + 2 * THINNEST, 0.2);
}

/** Returns the least hexagon that stands on the plate all round the hole of a body. mm. */
export function leastFlats(body: number): number {
  return up(body + 3, 1);
}

interface Sizes {
  readonly outside: number;
  readonly length: number;
  readonly boreModelled: number;
  readonly body: number;
  readonly bodyLength: number;
  readonly hexFlats: number;
  readonly standoff: number;
}

/** Returns the volume as modelled: rounds are polygons inside their circle, the bore is one round its circle. */
function volumeOf(kind: Parameters["kind"], sizes: Sizes) {
  const round = (kind === "bush" ? sizes.body : sizes.outside) / 2;
  const flange = (sizes.outside + FLANGE.wider) / 2;
  const roundSides = segments(round);
  const boreSides = segments(sizes.boreModelled / 2);
  const flangeSides = segments(flange);
  const inside = (radius: number, sides: number) => (sides / 2) * radius ** 2 * Math.sin((2 * Math.PI) / sides);
  const hole = boreSides * (sizes.boreModelled / 2) ** 2 * Math.tan(Math.PI / boreSides);
  const disc = inside(round, roundSides);
  const bush = sizes.standoff * (Math.sqrt(3) / 2) * sizes.hexFlats ** 2 + sizes.bodyLength * disc;
  const volume = {
    plain: sizes.length * (disc - hole),
    flanged: sizes.length * (disc - hole) + FLANGE.thick * (inside(flange, flangeSides) - disc),
    bush: bush - (sizes.standoff + sizes.bodyLength) * hole,
  }[kind];
  return { roundSides, boreSides, flangeSides, volume };
}
