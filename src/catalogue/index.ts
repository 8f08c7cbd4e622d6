import type { Table } from "../core/table.ts";
import { BAR_SLOTS } from "./bar-slots.ts";
import { BARS } from "./bars.ts";
import { BEARING_SHOULDERS } from "./bearing-shoulders.ts";
import { BEARINGS } from "./bearings.ts";
import { BELT_TENSIONS } from "./belt-tensions.ts";
import { BELTS } from "./belts.ts";
import { BOLT_LENGTHS } from "./bolt-lengths.ts";
import { BUTTON_SCREWS } from "./button-screws.ts";
import { CAP_SCREWS } from "./cap-screws.ts";
import { COLLARS } from "./collars.ts";
import { COUNTERSUNK_SCREWS } from "./countersunk-screws.ts";
import { ECCENTRICS } from "./eccentrics.ts";
import { FITS } from "./fits.ts";
import { HEX_SCREWS } from "./hex-screws.ts";
import { IDLERS } from "./idlers.ts";
import { INSERTS } from "./inserts.ts";
import { LARGE_WASHERS } from "./large-washers.ts";
import { LEAD_NUTS } from "./lead-nuts.ts";
import { LENGTH_RANGES } from "./length-ranges.ts";
import { LOCK_NUTS } from "./lock-nuts.ts";
import { LOOPS } from "./loops.ts";
import { METALS } from "./metals.ts";
import { MOTORS } from "./motors.ts";
import { NOMINAL_LENGTHS } from "./nominal-lengths.ts";
import { NUT_LIMITS } from "./nut-limits.ts";
import { NUTS } from "./nuts.ts";
import { POLYMERS } from "./polymers.ts";
import { PULLEYS } from "./pulleys.ts";
import { SCREW_LIMITS } from "./screw-limits.ts";
import { SCREWS } from "./screws.ts";
import { SET_SCREWS } from "./set-screws.ts";
import { SHIM_RINGS } from "./shim-rings.ts";
import { SMALL_WASHERS } from "./small-washers.ts";
import { SPRINGS } from "./springs.ts";
import { THIN_NUTS } from "./thin-nuts.ts";
import { THREADS } from "./threads.ts";
import { THRUST_BEARINGS } from "./thrust-bearings.ts";
import { WASHER_LIMITS } from "./washer-limits.ts";
import { WASHERS } from "./washers.ts";
import { WHEELS } from "./wheels.ts";

export * from "./bar-slots.ts";
export * from "./bars.ts";
export * from "./bearing-shoulders.ts";
export * from "./bearings.ts";
export * from "./belt-tensions.ts";
export * from "./belts.ts";
export * from "./bolt-lengths.ts";
export * from "./button-screws.ts";
export * from "./cap-screws.ts";
export * from "./collars.ts";
export * from "./countersunk-screws.ts";
export * from "./eccentrics.ts";
export * from "./fits.ts";
export * from "./hex-screws.ts";
export * from "./idlers.ts";
export * from "./inserts.ts";
export * from "./large-washers.ts";
export * from "./lead-nuts.ts";
export * from "./length-ranges.ts";
export * from "./lock-nuts.ts";
export * from "./loops.ts";
export * from "./metals.ts";
export * from "./motors.ts";
export * from "./nominal-lengths.ts";
export * from "./nut-limits.ts";
export * from "./nuts.ts";
export * from "./polymers.ts";
export * from "./pulleys.ts";
export * from "./screw-limits.ts";
export * from "./screws.ts";
export * from "./set-screws.ts";
export * from "./shim-rings.ts";
export * from "./small-washers.ts";
export * from "./springs.ts";
export * from "./thin-nuts.ts";
export * from "./threads.ts";
export * from "./thrust-bearings.ts";
export * from "./washer-limits.ts";
export * from "./washers.ts";
export * from "./wheels.ts";

/** Every table of bought hardware, in the order `stock` lists them. */
export const TABLES: readonly Table[] = [
  BEARINGS,
  BEARING_SHOULDERS,
  THRUST_BEARINGS,
  THREADS,
  CAP_SCREWS,
  BUTTON_SCREWS,
  COUNTERSUNK_SCREWS,
  HEX_SCREWS,
  SET_SCREWS,
  BOLT_LENGTHS,
  NOMINAL_LENGTHS,
  LENGTH_RANGES,
  NUTS,
  THIN_NUTS,
  LOCK_NUTS,
  NUT_LIMITS,
  WASHERS,
  LARGE_WASHERS,
  SMALL_WASHERS,
  WASHER_LIMITS,
  SHIM_RINGS,
  INSERTS,
  BARS,
  BAR_SLOTS,
  MOTORS,
  PULLEYS,
  IDLERS,
  BELTS,
  BELT_TENSIONS,
  LOOPS,
  SCREWS,
  SCREW_LIMITS,
  LEAD_NUTS,
  COLLARS,
  SPRINGS,
  WHEELS,
  ECCENTRICS,
  METALS,
  POLYMERS,
  FITS,
];
