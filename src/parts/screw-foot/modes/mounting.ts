import type { Vec2 } from "../../../geometry/mesh.ts";
import { disc, hullOf, type Profile, polygon } from "../../../geometry/profile.ts";
import { alongY, prism, type Solid } from "../../../geometry/solid.ts";
import type { Case } from "../../family.ts";
import type { Feature } from "../../feature.ts";
import type { MountBolt } from "../../features/mount-bolt.ts";
import type { Contact, KeepOut } from "../../piece.ts";
import { CAP } from "../derive/cap.ts";
import type { Derived } from "../derive/index.ts";
import type { Parameters } from "../parameters.ts";

export type Foot = Case<Parameters, Derived>;

/** What one way of mounting makes of the foot: its body up to the rim, walls included, and what holds it. */
export interface Mounting {
  readonly adds: readonly Solid[];
  readonly cuts: readonly Solid[];
  readonly bolts: Feature;
  /** The bar itself, and the slot nuts in it. */
  readonly keepOuts: readonly KeepOut[];
  readonly contacts: readonly Contact[];
}

/** Bed-edge chamfer, and chamfer where the housing meets a plate, mm. */
export const FOOT = 0.4;
export const FILLET = 1.5;
/** Bodies that stand on each other share this much, so that no seam is left, mm. */
export const OVERLAP = 0.5;
/** The boss of a slot nut, in the slot's mouth. */
const BOSS = { radius: 7.5, deep: 1.2 };

export function mountBolt({ derived }: Foot): MountBolt {
  return { ...derived.bought.bolt, counterbore: derived.counterbore };
}

/** Returns what stands round the housing up to its rim: stems of the bridge's posts, lobes for the cap's screws. */
export function beside({ given, derived }: Foot): Profile[] {
  const { housing, posts, capCircle } = derived;
  const stems = posts.map(({ section }) => hullOf(disc(housing), polygon(section)));
  const lobes = given.cap ? CAP.azimuths.map((azimuth) => disc(CAP.lobe, onCircle(capCircle / 2, azimuth))) : [];
  return [...stems, ...lobes];
}

export function onCircle(radius: number, azimuth: number): Vec2 {
  const angle = (azimuth * Math.PI) / 180;
  return [radius * Math.cos(angle), radius * Math.sin(angle)];
}

/** Returns the chamfers between the housing's flanks and a plate whose front is y = `front`; none without room. */
export function flankChamfers(half: number, front: number, sides: readonly (1 | -1)[] = [1, -1]): Profile[] {
  if (front > -FILLET - 1) return [];
  const reach = FILLET + OVERLAP;
  const corner: Vec2[] = [
    [half - OVERLAP, front - OVERLAP],
    [half + reach, front - OVERLAP],
    [half - OVERLAP, front + reach],
  ];
  return sides.map((side) => polygon(side === 1 ? corner : corner.map(([x, y]): Vec2 => [-x, y]).reverse()));
}

/** Returns a prism that reaches a little into what stands below it; none when it would have no height. */
export function standing(profile: Profile, from: number, to: number): Solid[] {
  return to > from + 1e-6 ? [prism(profile, from - OVERLAP, to)] : [];
}

/** Returns the boss of the slot nut behind a level bolt, as a body in the bar's slot. */
export function nutBoss([x, z]: Vec2, mate: number): KeepOut {
  const body = alongY(disc(BOSS.radius, [x, z]), mate - BOSS.deep, mate);
  return { name: `slot nut at x ${x.toFixed(1)}, z ${z.toFixed(1)}`, body };
}
