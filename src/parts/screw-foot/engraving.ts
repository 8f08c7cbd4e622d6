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

/** Lines of text on the housing's round wall: what they say, where they stand and how much room each has. */
interface Inscription {
  readonly lines: readonly string[];
  readonly azimuth: number;
  /** Width and height for one line, mm. */
  readonly room: readonly [number, number];
  /** Height of the middle of the first line, mm. */
  readonly first: number;
}

/** Returns the label and the seat's height, cut 0.4 mm into the bare part of the housing's round wall. */
export function engraving(foot: Foot): Solid[] {
  const text = inscription(foot);
  if (text === undefined) return [];
  const { lines, azimuth, room, first } = text;
  return lines.flatMap((line, index) =>
    engraveRound(line, foot.derived.housing, azimuth, first - index * (room[1] + GAP), room),
  );
}

/** Returns what fits of label and seat height: on two lines, else on one, else the height alone; else nothing. */
export function inscription(foot: Foot): Inscription | undefined {
  const { given, derived, mark = "" } = foot;
  const seat = `${derived.seat.toFixed(2)}${mark}`;
  const label = given.label.trim();
  const both = label === "" ? [] : [[label, seat], [`${label} ${seat}`]];
  for (const lines of [...both, [seat]]) {
    for (const share of SHARES) {
      const text = placed(lines, 2 * share * derived.housing, foot);
      if (text !== undefined) return text;
    }
  }
  return undefined;
}

/** Returns the bare height of the round wall, and the widest a line of text may be, mm. */
export function roomForText(foot: Foot): { readonly wide: number; readonly high: number } {
  const { housing, rim } = foot.derived;
  const high = Math.max(0, rim - EDGE - LEAD_IN - lowestOf(foot));
  return { wide: 2 * Math.max(...SHARES) * housing, high };
}

/** Returns where lines of text no wider than `wide` stand, the first on top; undefined when they do not fit. */
function placed(lines: readonly string[], wide: number, foot: Foot): Inscription | undefined {
  const { housing, rim } = foot.derived;
  const [low, high] = [lowestOf(foot), rim - EDGE - LEAD_IN];
  const tall = Math.min(TALLEST, (high - low - GAP * (lines.length - 1)) / lines.length);
  const heights = lines.map((text) => textHeight(text, wide, tall));
  const widths = lines.map((text, index) => letteringWidth(text, heights[index] ?? TALLEST));
  if (heights.includes(undefined)) return undefined;
  const half = (Math.asin(Math.min(1, Math.max(...widths) / 2 / housing)) * 180) / Math.PI + BESIDE;
  const azimuth = freeArc(foot, foot.given.mount === "in-corner" ? foot.given.cornerAngle / 2 : 90, half);
  if (azimuth === undefined) return undefined;
  const top = (low + high + tall * lines.length + GAP * (lines.length - 1)) / 2;
  return { lines, azimuth, room: [wide, tall], first: top - tall / 2 };
}

/** Where the round wall stands free: above the base and its chamfer. */
function lowestOf({ given, derived }: Foot): number {
  const { plate, bed } = derived;
  return given.mount === "on-top" || given.mount === "under" ? bed + plate + EDGE + 1.5 : bed + EDGE;
}
