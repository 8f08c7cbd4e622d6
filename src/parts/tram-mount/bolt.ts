import { STOCK_LENGTHS } from "../../catalogue/bolt-lengths.ts";
import { tidy, up } from "../../core/rounding.ts";
import { boltThreadedLength } from "../../mechanics/bolt-threaded-length.ts";
import { boltThroughLength } from "../../mechanics/bolt-through-length.ts";
import { nextStock } from "../../mechanics/next-stock.ts";
import { orElse } from "../or-else.ts";
import type { Fittings } from "./fittings.ts";
import type { Parameters } from "./parameters.ts";
import type { SettingNumbers, SpringNumbers } from "./spring.ts";
import type { StackNumbers } from "./stack.ts";

/** The tip of a bolt in a tapped plate stays this far below the plate's top, mm. */
export const TIP_BELOW = 0.5;

/** An empty band has no middle; what stands in for it stays a length. mm. */
const SHORTEST = 1;

/** Set length of the spring and the bands it comes from. mm. */
export interface SetLength {
  readonly bandLow: number;
  readonly bandHigh: number;
  readonly setLength: number;
  /** Tapped plate only: the length the band was made for. */
  readonly tappedBolt: number;
}

/** Returns the set length: the middle of the spring's band, or the low end of what spring and tapped bolt allow. */
export function chooseSetLength(
  given: Parameters,
  parts: Fittings,
  spring: SpringNumbers,
  { stack }: StackNumbers,
): SetLength {
  if (given.joint !== "tapped-plate") {
    const { springLow: bandLow, springHigh: bandHigh } = spring;
    return { bandLow, bandHigh, setLength: given.setLength ?? middle(bandLow, bandHigh), tappedBolt: 0 };
  }
  const bands = stockOf(given, parts).map((bolt) => tappedBand(bolt, given, parts, spring, stack));
  const wanted = given.setLength;
  const lack = ({ bandLow, bandHigh }: SetLength) =>
    wanted === undefined ? bandLow - bandHigh : Math.max(bandLow - wanted, wanted - bandHigh);
  const fitting = bands.find((band) => lack(band) <= 1e-9);
  const best = fitting ?? bands.reduce((least, band) => (lack(band) < lack(least) ? band : least));
  return wanted === undefined ? best : { ...best, setLength: wanted };
}

/** Returns the bolt lengths to choose from, shortest first; never empty. mm. */
export function stockOf(given: Parameters, { bolt }: Fittings): readonly number[] {
  if (given.boltLength !== undefined) return [given.boltLength];
  const stock = given.stock ?? STOCK_LENGTHS[bolt]?.lengths ?? [];
  return stock.length === 0 ? [0] : [...stock].sort((a, b) => a - b);
}

function tappedBand(
  bolt: number,
  given: Parameters,
  { thread }: Fittings,
  { springLow, springHigh, range }: SpringNumbers,
  stack: number,
): SetLength {
  const bandLow = Math.max(springLow, bolt - stack - given.plate + TIP_BELOW + range);
  const bandHigh = Math.min(springHigh, bolt - stack - thread.diameter - range);
  const rounded = up(bandLow, 0.1);
  const setLength = rounded <= bandHigh + 1e-9 ? rounded : Math.max(SHORTEST, (bandLow + bandHigh) / 2);
  return { bandLow, bandHigh, setLength, tappedBolt: bolt };
}

function middle(low: number, high: number): number {
  const exact = (low + high) / 2;
  const inside = [0.5, 0.1].map((step) => tidy(Math.round(exact / step) * step)).find((at) => at >= low && at <= high);
  return inside ?? Math.max(SHORTEST, exact);
}

/** The tram bolt. mm; a length of 0 means that no length in stock will do. */
export interface BoltNumbers {
  readonly boltNeeded: number;
  readonly boltMost: number;
  readonly boltLength: number;
  readonly shank: number;
  readonly nutAt: number;
  readonly engagement: number;
  readonly tipBelow: number;
  readonly tailSet: number;
  readonly tailLow: number;
  readonly under: number;
}

/** Returns the tram bolt's length and where its ends and its thread lie. */
export function boltNumbers(
  given: Parameters,
  parts: Fittings,
  body: StackNumbers,
  set: SetLength,
  setting: SettingNumbers,
): BoltNumbers {
  const { longest, shortest } = setting;
  const { stack } = body;
  const tapped = given.joint === "tapped-plate";
  const { diameter } = parts.thread;
  const boltNeeded = neededLength(given, parts, stack + longest);
  const boltLength = tapped ? set.tappedBolt : (given.boltLength ?? nextStock(stockOf(given, parts), boltNeeded) ?? 0);
  const past = given.joint === "insert" ? parts.insert.length : parts.nut.height;
  const tailSet = tapped ? 0 : boltLength - stack - set.setLength - past;
  const tailLow = tapped ? 0 : boltLength - stack - shortest - past;
  const full = given.fullThread || tapped;
  return {
    boltNeeded,
    boltMost: tapped ? stack + shortest + given.plate - TIP_BELOW : 0,
    boltLength,
    shank: full ? 0 : orElse(boltThreadedLength, { diameter, length: boltLength }, { thread: 0, shank: 0 }).shank,
    nutAt: stack + shortest,
    engagement: tapped ? boltLength - stack - longest : 0,
    tipBelow: tapped ? stack + shortest + given.plate - boltLength : 0,
    tailSet,
    tailLow,
    under: underBracket(given, parts, body, tailLow),
  };
}

function neededLength(given: Parameters, { thread, nut }: Fittings, grip: number): number {
  const { diameter, pitch } = thread;
  if (given.joint === "insert" || given.joint === "tapped-plate") return grip + diameter;
  const plain = { needed: grip + nut.height + 2 * pitch };
  return orElse(boltThroughLength, { grip, nut: nut.height, pitch }, plain).needed;
}

/** How far the lowest point of bolt, nut or head lies below the bracket's underside with the plate at its lowest. */
function underBracket(given: Parameters, parts: Fittings, body: StackNumbers, tailLow: number): number {
  switch (given.joint) {
    case "thumb-wheel":
      return tailLow + parts.sliderWasher.thickness + body.wheelFloor + parts.nut.height;
    case "captive-nut":
      return tailLow - (body.thickness - body.roof - parts.nut.height);
    case "insert":
      return tailLow;
    case "tapped-plate":
      return parts.sliderWasher.thickness + parts.hexHead.headHeight;
  }
}
