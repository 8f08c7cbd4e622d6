import type { Bar } from "../../catalogue/bars.ts";
import type { Bearing } from "../../catalogue/bearings.ts";
import type { Belt } from "../../catalogue/belts.ts";
import { STOCK_LENGTHS } from "../../catalogue/bolt-lengths.ts";
import { CAP_SCREWS } from "../../catalogue/cap-screws.ts";
import { COLLARS, type Collar } from "../../catalogue/collars.ts";
import type { Pulley } from "../../catalogue/pulleys.ts";
import type { Screw } from "../../catalogue/screws.ts";
import { THREADS } from "../../catalogue/threads.ts";
import { WASHERS, type Washer } from "../../catalogue/washers.ts";
import { nominal } from "../../core/item.ts";
import { findRow, row } from "../../core/table.ts";
import type { Material } from "../../printing/materials.ts";
import type { MountBolt } from "../features/mount-bolt.ts";
import type { Parameters } from "./parameters.ts";

/** Everything bought, as plain values. Lengths in mm. */
export interface Bought {
  readonly bearing: Bearing;
  readonly screw: Screw;
  /** Diameter of the screw's lower end: its own, or what it is turned down to. */
  readonly end: number;
  readonly pulley: Pulley;
  readonly belt: Belt;
  readonly bar: Bar;
  readonly material: Material;
  readonly collar: Collar;
  /** From the bearing up. */
  readonly washers: readonly Washer[];
  /** The bolt to the bar; its counterbore is worked out later. */
  readonly bolt: Omit<MountBolt, "counterbore">;
  /** Bolt lengths that can be had. */
  readonly stock: readonly number[];
}

/** What a collar without a row measures: as wide over its bore as the common clamp collars. */
const UNKNOWN_COLLAR = { wider: 10, width: 9 };

/** Returns the bought items of a foot; what was left out follows the bearing. */
export function boughtFor(given: Parameters): Bought {
  const { bearing, bar } = { bearing: given.bearing.values, bar: given.bar.values };
  // Rings and collars are sold for the bore by its name, whatever calipers say.
  const { bore } = nominal(given.bearing);
  return {
    bearing,
    bar,
    screw: given.screw.values,
    end: given.endDiameter ?? given.screw.values.diameter,
    pulley: given.pulley.values,
    belt: given.belt.values,
    material: given.material.values,
    collar: given.collar?.values ?? collarFor(bore),
    washers: given.washers?.map(({ values }) => values) ?? [ringFor(bore, bearing.innerLand)],
    bolt: boltFor(bar.mountBolt),
    stock: given.boltLengths ?? STOCK_LENGTHS[bar.mountBolt]?.lengths ?? [],
  };
}

/** A metal ring turned to the inner land: it touches the inner ring and nothing else. */
function ringFor(bore: number, innerLand: number): Washer {
  return { hole: bore, outside: Math.floor(innerLand), thickness: 1 };
}

function collarFor(bore: number): Collar {
  const { wider, width } = UNKNOWN_COLLAR;
  return findRow(COLLARS, `${bore} clamp`)?.values ?? { bore, outside: bore + wider, width, screw: "M3" };
}

function boltFor(thread: string): Bought["bolt"] {
  const { diameter, mediumHole } = row(THREADS, thread).values;
  const { headDiameter, headHeight, key } = row(CAP_SCREWS, thread).values;
  const { outside, thickness } = row(WASHERS, thread).values;
  const washer = { washerDiameter: outside, washerThickness: thickness };
  return { thread, diameter, hole: mediumHole, headDiameter, headHeight, key, ...washer };
}

/** Returns whether a collar holds by the point of its set screw; a clamp collar holds all round. */
export function isSetCollar(collar: Parameters["collar"]): boolean {
  return collar?.row?.source === "din-705";
}
