import { letteringWidth } from "../../geometry/lettering.ts";
import type { Solid } from "../../geometry/solid.ts";
import { engraveRound, textHeight } from "../features/round-engraving.ts";
import { freeArc } from "./free-arc.ts";
import type { Foot } from "./modes/mounting.ts";

/** Free height above and below a line of text, and between two lines, mm. */
const EDGE = 1.5;
const GAP = 1.5;
const LEAD_IN = 0.6;
const TALLEST = 6;
/** Shares of the housing's diameter that the text may cover, widest first: beyond, it would be read at a slant. */
const SHARES = [0.6, 0.5, 0.4];
/** Room between text and what stands beside it, degrees. */
const BESIDE = 4;

/** Returns the label and the seat's height, cut 0.4 mm into the bare part of the housing's round wall. */
export function engraving(foot: Foot): Solid[] {
  const { given, derived, mark = "" } = foot;
  const seat = `${derived.seat.toFixed(2)}${mark}`;
  const lines = [given.label, seat].filter((text) => text.trim() !== "");
  for (const wanted of lines.length === 2 ? [lines, [seat]] : [[seat]]) {
    for (const share of SHARES) {
      const text = written(wanted, 2 * share * derived.housing, foot);
      if (text.length > 0) return text;
    }
  }
  return [];
}

/** Returns lines of text no wider than `wide`, the first on top; nothing when they do not fit. */
function written(lines: readonly string[], wide: number, foot: Foot): Solid[] {
  const { housing, rim } = foot.derived;
  const [low, high] = [lowestOf(foot), rim - EDGE - LEAD_IN];
  const tall = Math.min(TALLEST, (high - low - GAP * (lines.length - 1)) / lines.length);
  const heights = lines.map((text) => textHeight(text, wide, tall));
  const widths = lines.map((text, index) => letteringWidth(text, heights[index] ?? TALLEST));
  if (heights.includes(undefined)) return [];
  const half = (Math.asin(Math.min(1, Math.max(...widths) / 2 / housing)) * 180) / Math.PI + BESIDE;
  const azimuth = freeArc(foot, foot.given.mount === "in-corner" ? foot.given.cornerAngle / 2 : 90, half);
  if (azimuth === undefined) return [];
  const top = (low + high + tall * lines.length + GAP * (lines.length - 1)) / 2;
  return lines.flatMap((text, index) => {
    const z = top - tall / 2 - index * (tall + GAP);
    return engraveRound(text, housing, azimuth, z, [wide, tall]);
  });
}

/** Where the round wall stands free: above the base and its chamfer. */
function lowestOf({ given, derived }: Foot): number {
  const { plate, bed } = derived;
  return given.mount === "on-top" || given.mount === "under" ? bed + plate + EDGE + 1.5 : bed + EDGE;
}
