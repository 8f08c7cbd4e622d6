import { type Assembly, SKIN } from "../../geometry/assembly.ts";
import type { Box, Vec3 } from "../../geometry/mesh.ts";
import { isUpright } from "../../geometry/solid.ts";
import type { Body } from "../../stage/bodies/index.ts";
import { ALLOWED, type Allowance, type Allowed, allowanceOf } from "./allowed.ts";
import { nearPairs } from "./near-pairs.ts";

/** More shared volume than this is a clash, mm3. */
export const LEAST_CLASH = 0.01;

/** Where the stage stands when it is looked at, as a share of its travel. */
export const HEIGHTS = [
  { name: "bottom", share: 0 },
  { name: "middle", share: 0.5 },
  { name: "top", share: 1 },
] as const;

/** Two bodies that stand in one another, at the height of the travel at which they share most. */
export interface Clash {
  readonly first: Body;
  readonly second: Body;
  readonly height: (typeof HEIGHTS)[number]["name"];
  /** mm3 */
  readonly volume: number;
  /** Middle and sides of the box round what they share, mm. */
  readonly centre: Vec3;
  readonly size: Vec3;
  /** The smallest side of that box, mm. */
  readonly depth: number;
}

/**
 * Returns every pair of bodies that stand in one another at the bottom, in the middle or at the top of the travel,
 * less what the table allows. `lift` is the travel in mm. Pairs that move together, or not at all, are tried once.
 */
export function clashesOf(
  bodies: readonly Body[],
  lift: number,
  hall: Assembly,
  table: readonly Allowed[] = ALLOWED,
): Clash[] {
  const worst = new Map<string, Clash>();
  for (const { name: height, share } of HEIGHTS) {
    const raised = (body: Body) => (body.moves ? share * lift : 0);
    const boxes = bodies.map((body) => risen(body.box, raised(body)));
    for (const [at, other] of nearPairs(boxes, -SKIN)) {
      const [first, second] = [bodies[at], bodies[other]];
      if (first === undefined || second === undefined) continue;
      if ((share > 0 && first.moves === second.moves) || toldElsewhere(first, second)) continue;
      const allowance = allowanceOf(first, second, table);
      if (share > 0 && meetsAlike(first, second, share * lift, allowance)) continue;
      const found = meeting(first, second, raised, hall, allowance);
      if (found === undefined) continue;
      const known = worst.get(`${at} ${other}`);
      if (known === undefined || found.volume > known.volume) worst.set(`${at} ${other}`, { ...found, height });
    }
  }
  return [...worst.values()];
}

/**
 * Bars that stand still to each other are compared where the frame is read, by their middle lines; a printed body and
 * its own hardware where its mesh is verified.
 */
function toldElsewhere(first: Body, second: Body): boolean {
  if (first.kind === "part" || second.kind === "part")
    return first.hardwareOf === second.name || second.hardwareOf === first.name;
  return first.kind === "bar" && second.kind === "bar" && first.moves === second.moves;
}

/**
 * Whether what rises meets the other here as it does at the bottom: along a straight upright body that is longer at
 * both ends, as a wheel along its post.
 */
function meetsAlike(first: Body, second: Body, risen: number, allowance: Allowance | undefined): boolean {
  const [still, rising] = first.moves ? [second, first] : [first, second];
  const room = allowance?.owner === still ? roomOf(allowance) : undefined;
  if (!isUpright(still.solid) || (room !== undefined && !isUpright(room))) return false;
  const [low, high] = [rising.box.min[2] - SKIN, rising.box.max[2] + risen + SKIN];
  return low >= still.box.min[2] && high <= still.box.max[2];
}

const roomOf = ({ entry, owner }: Allowance) => (entry.room === undefined ? undefined : owner.rooms[entry.room]);

function meeting(
  first: Body,
  second: Body,
  raised: (body: Body) => number,
  hall: Assembly,
  allowance: Allowance | undefined,
): Omit<Clash, "height"> | undefined {
  if (allowance !== undefined && allowance.entry.room === undefined) return undefined;
  const room = allowance === undefined ? undefined : roomOf(allowance);
  const likely = room !== undefined && allowance?.entry.seldom !== true;
  const rooms = room === undefined ? [] : [{ solid: room, lift: raised(allowance?.owner ?? first) }];
  const lifted = (body: Body) => ({ solid: body.solid, lift: raised(body) });
  const overlap = hall.overlap(lifted(first), lifted(second), rooms, likely);
  if (overlap === undefined || overlap.volume <= LEAST_CLASH) return undefined;
  const { min, max } = overlap.box;
  const size: Vec3 = [max[0] - min[0], max[1] - min[1], max[2] - min[2]];
  const centre: Vec3 = [(max[0] + min[0]) / 2, (max[1] + min[1]) / 2, (max[2] + min[2]) / 2];
  return { first, second, volume: overlap.volume, centre, size, depth: Math.min(...size) };
}

function risen({ min, max }: Box, lift: number): Box {
  return { min: [min[0], min[1], min[2] + lift], max: [max[0], max[1], max[2] + lift] };
}
