import { CAP_SCREWS } from "../../catalogue/cap-screws.ts";
import { COUNTERSUNK_SCREWS } from "../../catalogue/countersunk-screws.ts";
import { HEX_SCREWS } from "../../catalogue/hex-screws.ts";
import { INSERTS } from "../../catalogue/inserts.ts";
import { LARGE_WASHERS } from "../../catalogue/large-washers.ts";
import { SPRINGS, type Spring } from "../../catalogue/springs.ts";
import { THREADS } from "../../catalogue/threads.ts";
import { WASHERS, type Washer } from "../../catalogue/washers.ts";
import { findRow, row, type Table, type Values } from "../../core/table.ts";
import { usualDiameter, usualNut } from "../thumb-wheel/wheel-size.ts";
import type { Parameters } from "./parameters.ts";

/** The springs that are usual for a bolt; the M5 one also passes over M6. */
const USUAL_SPRINGS: Readonly<Record<string, string>> = {
  M3: "0.8 x 6 x 15",
  M4: "1.0 x 8 x 20",
  M5: "1.2 x 10 x 25",
  M6: "1.2 x 10 x 25",
};

/** A stated size below this is no size; it keeps the arithmetic finite until a check has named it. mm. */
const LEAST = 0.01;

/** Everything bought, as numbers: the rows of the tables with the user's measurements over them. */
export type Fittings = ReturnType<typeof fittings>;

/** Returns what is bought for a mount, in mm. Never throws: a bar with an unknown bolt falls back to M5. */
export function fittings(given: Parameters) {
  const bolt = given.bolt ?? (given.joint === "tapped-plate" ? "M4" : "M5");
  const fender = row(LARGE_WASHERS, bolt).values;
  const mountBolt = given.bar.values.mountBolt;
  return {
    bolt,
    thread: row(THREADS, bolt).values,
    head: row(COUNTERSUNK_SCREWS, bolt).values,
    hexHead: row(HEX_SCREWS, bolt).values,
    nut: given.nut?.values ?? usualNut(bolt, given.lockNut),
    insert: given.insert?.values ?? row(INSERTS, bolt).values,
    heatWasher: washer(given.heatWasher?.values ?? fender),
    springWasher: given.springWasher === undefined ? undefined : washer(given.springWasher.values),
    plainWasher: row(WASHERS, bolt).values,
    fender,
    sliderWasher: washer(given.sliderWasher?.values ?? fender),
    spring: springOf(given.spring?.values ?? row(SPRINGS, USUAL_SPRINGS[bolt] ?? "").values),
    wheel: given.wheelDiameter ?? usualDiameter(bolt),
    mount: {
      bolt: mountBolt,
      thread: rowOr(THREADS, mountBolt).values,
      screw: rowOr(CAP_SCREWS, mountBolt).values,
      washer: rowOr(WASHERS, mountBolt).values,
    },
  };
}

function rowOr<V extends Values>(table: Table<V>, key: string) {
  return findRow(table, key) ?? row(table, "M5");
}

function washer({ hole, outside, thickness }: Washer): Washer {
  return { hole: Math.max(LEAST, hole), outside: Math.max(LEAST, outside), thickness: Math.max(LEAST, thickness) };
}

function springOf(spring: Spring) {
  const { wire, outside, freeLength, totalCoils, shearModulus, strengthA, strengthM } = spring;
  return {
    wire: Math.max(LEAST, wire),
    outside: Math.max(LEAST, outside),
    freeLength: Math.max(LEAST, freeLength),
    totalCoils: Math.max(LEAST, totalCoils),
    shearModulus: Math.max(LEAST, shearModulus),
    strengthA: Math.max(LEAST, strengthA),
    strengthM,
  };
}
