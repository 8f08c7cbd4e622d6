import type { Solid } from "../../geometry/solid.ts";
import { engraveRound, textHeight } from "../features/round-engraving.ts";
import type { Foot } from "./modes/mounting.ts";

/** Free height above and below a line of text, and between two lines, mm. */
const EDGE = 1.5;
const GAP = 1.5;
/** The text covers at most this much of the housing's diameter: beyond, it would be read at a slant. */
const SHARE = 0.6;

/** Returns the label and the seat's height, cut 0.4 mm into the round front of the housing. */
export function engraving(foot: Foot): Solid[] {
  const { given, derived, mark = "" } = foot;
  const { housing, seat, bed, rim } = derived;
  const azimuth = azimuthOf(foot);
  const [low, high] = [lowestOf(foot), rim - EDGE - 0.6];
  const wide = (given.cap ? 0.45 : SHARE) * 2 * housing;
  const below = `${seat.toFixed(2)}${mark}`;
  const room = high - low;
  const half = (room - GAP) / 2;
  const lines = [given.label, below].filter((text) => text.trim() !== "");
  if (bed > rim) return [];
  const two = lines.length === 2 && lines.every((text) => textHeight(text, wide, half) !== undefined);
  if (!two) return engraveRound(below, housing, azimuth, (low + high) / 2, [wide, Math.min(6, room)]);
  const tall = Math.min(6, half);
  const middle = (low + high) / 2;
  return lines.flatMap((text, index) => {
    const z = middle + (index === 0 ? 1 : -1) * (tall / 2 + GAP / 2);
    return engraveRound(text, housing, azimuth, z, [wide, tall]);
  });
}

/** Where the round wall stands free: above the base and its chamfer. */
function lowestOf({ given, derived }: Foot): number {
  const { plate, bed } = derived;
  return given.mount === "on-top" || given.mount === "under" ? bed + plate + EDGE + 1.5 : bed + EDGE;
}

/** The side of the housing that looks away from the bar, and from the posts of a bridge and the cap's lobes. */
function azimuthOf({ given, derived }: Foot): number {
  const away = given.mount === "in-corner" ? 45 : 90;
  if (derived.posts.length === 2)
    return betweenPosts(
      derived.posts.map(({ azimuth }) => azimuth),
      away,
    );
  return given.cap ? 35 : away;
}

/** The middle of the gap between two posts that lies nearer to the wanted direction. */
function betweenPosts([first = 0, second = 180]: readonly number[], away: number): number {
  const gap = (((second - first) % 360) + 360) % 360;
  const middles = [first + gap / 2, first + gap / 2 + 180];
  const off = (azimuth: number) => Math.abs(((((azimuth - away) % 360) + 540) % 360) - 180);
  return middles.reduce((best, each) => (off(each) < off(best) ? each : best));
}
