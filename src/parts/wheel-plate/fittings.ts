import { STOCK_LENGTHS } from "../../catalogue/bolt-lengths.ts";
import { CAP_SCREWS } from "../../catalogue/cap-screws.ts";
import { LARGE_WASHERS } from "../../catalogue/large-washers.ts";
import { LOCK_NUTS } from "../../catalogue/lock-nuts.ts";
import { THREADS } from "../../catalogue/threads.ts";
import { WASHERS } from "../../catalogue/washers.ts";
import { up } from "../../core/rounding.ts";
import { row } from "../../core/table.ts";
import type { Parameters } from "./parameters.ts";

/** What a printed eccentric bush needs round the bolt: play, twice its thinnest wall, hexagon over body. mm */
const PRINTED = { play: 0.3, walls: 2.4, hexagon: 3 };

/** Returns the rows of everything bought that a plate needs. */
export function fittings(given: Parameters) {
  const bolt = given.wheel.values.boltThread;
  const armBolt = given.arm.values.mountBolt;
  return {
    bolt,
    thread: row(THREADS, bolt).values,
    head: row(CAP_SCREWS, bolt).values,
    nut: row(LOCK_NUTS, bolt).values,
    washer: given.washer?.values ?? row(WASHERS, bolt).values,
    fender: given.eccentricWasher?.values ?? row(LARGE_WASHERS, bolt).values,
    stock: given.stock ?? STOCK_LENGTHS[bolt]?.lengths ?? [],
    armBolt,
    armThread: row(THREADS, armBolt).values,
    armHead: row(CAP_SCREWS, armBolt).values,
    armWasher: row(WASHERS, armBolt).values,
    armStock: STOCK_LENGTHS[armBolt]?.lengths ?? [],
    eccentric: eccentricOf(given),
  };
}

export type Fittings = ReturnType<typeof fittings>;

/** A printed bush is thicker than a bought one: its thin side must still be plastic. */
function eccentricOf(given: Parameters): { body: number; hexFlats: number } {
  const { body, hexFlats, offset } = given.eccentric.values;
  if (given.eccentricKind === "metal") return { body, hexFlats };
  const { diameter } = row(THREADS, given.wheel.values.boltThread).values;
  const printed = up(diameter + PRINTED.play + 2 * offset + PRINTED.walls, 0.2);
  return { body: printed, hexFlats: up(printed + PRINTED.hexagon, 1) };
}
