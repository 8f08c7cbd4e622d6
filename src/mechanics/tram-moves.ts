import type { Refusal } from "../core/calculation.ts";
import { brief } from "./bounded.ts";
import type { Point } from "./point.ts";
import { planeHeight, type TramPlane } from "./tram-plane.ts";

export interface TramMount extends Point {
  readonly name: string;
  /** Thread pitch of its bolt, mm per turn. */
  readonly pitch: number;
  /** How far it can still rise and sink, mm. */
  readonly up: number;
  readonly down: number;
}

export interface TramMove {
  readonly name: string;
  /** Height to add at this mount, mm; negative lowers. */
  readonly move: number;
  /** Turns of the part seen from its own outer face; clockwise is positive and lowers. */
  readonly clockwise: number;
}

const GUARD = 1e-9;

/**
 * Returns what each mount must do so that the plate lies level: with the fixed mount, which stays, where all others
 * reach that height, else at the height nearest to it that all of them reach, and then the fixed one moves too.
 *
 * Units: mm and turns, right-hand threads: turning clockwise, seen from the part's own outer face, shortens the stack
 * and lowers the plate. Refuses an unknown fixed mount, and where no height is in the reach of all, with what each
 * mount lacks upwards while the others are as low as they go. Source: geometry.
 */
export function tramMoves(
  plane: TramPlane,
  mounts: readonly TramMount[],
  fixed: string,
): readonly TramMove[] | Refusal {
  const still = mounts.find(({ name }) => name === fixed);
  if (still === undefined) return { refused: `there is no mount ${fixed}` };
  const reaches: Reach[] = [];
  for (const mount of mounts) {
    if (!(mount.pitch > 0)) return { refused: `the pitch of mount ${mount.name} must be above 0 mm` };
    const height = planeHeight(plane, mount);
    const [low, high] = [height - mount.down, height + mount.up];
    if (Number.isNaN(high - low)) return { refused: `a height or range of mount ${mount.name} is not a number` };
    reaches.push({ mount, height, low, high });
  }
  const level = commonHeight(reaches, planeHeight(plane, still));
  if (level === undefined) return { refused: lacking(reaches) };
  return reaches.map(({ mount, height }) => {
    const move = level - height;
    return { name: mount.name, move, clockwise: move === 0 ? 0 : -move / mount.pitch };
  });
}

/** How high a mount stands, and how low and high it can. mm */
interface Reach {
  readonly mount: TramMount;
  readonly height: number;
  readonly low: number;
  readonly high: number;
}

/** The height nearest to the wanted one that all mounts reach; undefined where there is none. */
function commonHeight(reaches: readonly Reach[], wanted: number): number | undefined {
  const low = Math.max(...reaches.map((each) => each.low));
  const high = Math.min(...reaches.map((each) => each.high));
  if (wanted >= low - GUARD && wanted <= high + GUARD) return wanted;
  return low > high + GUARD ? undefined : Math.min(high, Math.max(low, wanted));
}

function lacking(reaches: readonly Reach[]): string {
  const low = Math.max(...reaches.map((each) => each.low));
  const short = reaches.filter(({ high }) => low - high > GUARD);
  const each = short.map(({ mount, high }) => `mount ${mount.name} lacks ${brief(low - high)} mm upwards`);
  return `no height is in the reach of all mounts: with the others as low as they go, ${each.join(", and ")}`;
}
