import { disc, opening } from "../../geometry/profile.ts";
import { alongY, moved, prism, revolved, type Solid } from "../../geometry/solid.ts";
import { levelHole, uprightHole } from "../../printing/compensation.ts";
import { wanted } from "../../printing/fits.ts";
import type { Printer } from "../../printing/printer.ts";
import type { Feature } from "../feature.ts";
import type { KeepOut } from "../piece.ts";
import { teardrop } from "./teardrop.ts";

/** A cap screw with washer that holds the part to a bar: all sizes in mm, nominal. */
export interface MountBolt {
  readonly thread: string;
  readonly diameter: number;
  /** Wanted hole, ISO 273. */
  readonly hole: number;
  readonly headDiameter: number;
  readonly headHeight: number;
  /** Hex key, across flats. */
  readonly key: number;
  readonly washerDiameter: number;
  readonly washerThickness: number;
  /** Depth of the counterbore under the washer; 0 when the washer lies on the face. */
  readonly counterbore: number;
}

/** How far a hex key must reach straight out from a bolt head. */
const KEY_REACH = 40;
/** What a cutter sticks out of a face, so that no skin is left. */
const OVERRUN = 1;

/** Returns the diameter of the straight path a hex key needs: across corners plus play. mm. */
export function keyPath(across: number): number {
  return 1.1547 * across + 3;
}

/**
 * Returns a level bolt through a plate that stands against a bar: the mating face is y = `mate`, the head is on the
 * side of greater y, the axis at (x, z). Holes are teardrops with the roof to +z.
 */
export function levelBolt(
  bolt: MountBolt,
  [x, z]: readonly [number, number],
  mate: number,
  plate: number,
  printer: Printer,
): Feature {
  const front = mate + plate;
  const seat = front - bolt.counterbore;
  const cuts = [
    alongY(teardrop(levelHole(bolt.hole, printer), printer.layer, [x, z]), mate - OVERRUN - 2, front + OVERRUN),
  ];
  if (bolt.counterbore > 0) {
    const recess = levelHole(wanted(bolt.washerDiameter, "headRecess"), printer);
    cuts.push(alongY(teardrop(recess, printer.layer, [x, z]), seat, front + OVERRUN));
  }
  return { adds: [], cuts, keepOuts: levelKeepOuts(bolt, [x, z], seat) };
}

function levelKeepOuts(bolt: MountBolt, at: readonly [number, number], seat: number): KeepOut[] {
  const head = seat + bolt.washerThickness;
  const body = (diameter: number, from: number, to: number): Solid => alongY(disc(diameter / 2, at), from, to);
  const name = `${bolt.thread} bolt at x ${at[0].toFixed(1)}, z ${at[1].toFixed(1)}`;
  return [
    { name: `washer of the ${name}`, body: body(bolt.washerDiameter, seat, head), fastener: true },
    { name: `head of the ${name}`, body: body(bolt.headDiameter, head, head + bolt.headHeight), fastener: true },
    {
      name: `hex key to the ${name}`,
      body: body(keyPath(bolt.key), head + bolt.headHeight, head + bolt.headHeight + KEY_REACH),
    },
  ];
}

/**
 * Returns an upright bolt through a plate, head above: the plate lies from `bottom` to `top`, the axis at `at`. The
 * stepped hole is one revolved tool. A head from below is the same feature, turned.
 */
export function uprightBolt(
  bolt: MountBolt,
  at: readonly [number, number],
  bottom: number,
  top: number,
  printer: Printer,
): Feature {
  const seat = top - bolt.counterbore;
  const hole = uprightHole(bolt.hole, printer) / 2;
  const recess = uprightHole(wanted(bolt.washerDiameter, "headRecess"), printer) / 2;
  const tool: Solid =
    bolt.counterbore === 0
      ? prism(opening(2 * hole, at), bottom - OVERRUN, top + OVERRUN)
      : moved(steppedTool(hole, recess, bottom, seat, top), [at[0], at[1], 0]);
  const head = seat + bolt.washerThickness;
  const disc3 = (diameter: number, from: number, to: number) => prism(disc(diameter / 2, at), from, to);
  const name = `${bolt.thread} bolt at x ${at[0].toFixed(1)}, y ${at[1].toFixed(1)}`;
  return {
    adds: [],
    cuts: [tool],
    keepOuts: [
      { name: `washer of the ${name}`, body: disc3(bolt.washerDiameter, seat, head), fastener: true },
      { name: `head of the ${name}`, body: disc3(bolt.headDiameter, head, head + bolt.headHeight), fastener: true },
      {
        name: `hex key to the ${name}`,
        body: disc3(keyPath(bolt.key), head + bolt.headHeight, head + bolt.headHeight + KEY_REACH),
      },
    ],
  };
}

function steppedTool(hole: number, recess: number, bottom: number, seat: number, top: number): Solid {
  const outline = [
    [0, bottom - OVERRUN],
    [hole, bottom - OVERRUN],
    [hole, seat],
    [recess, seat],
    [recess, top + OVERRUN],
    [0, top + OVERRUN],
  ] as const;
  return revolved(outline, "around", recess);
}
