import { results } from "../../core/calculation.ts";
import { up } from "../../core/rounding.ts";
import { bracketTemperature } from "../../mechanics/bracket-temperature.ts";
import { threadTravel } from "../../mechanics/thread-travel.ts";
import type { Printer } from "../../printing/printer.ts";
import { type BoltNumbers, boltNumbers, chooseSetLength, type SetLength } from "./bolt.ts";
import { type Fittings, fittings } from "./fittings.ts";
import { type FrameNumbers, frameNumbers } from "./frame.ts";
import type { Parameters } from "./parameters.ts";
import { type SettingNumbers, type SpringNumbers, settingNumbers, springNumbers } from "./spring.ts";
import { type StackNumbers, stackNumbers } from "./stack.ts";

/** What depends on the set length besides spring and bolt. mm, °C. */
export interface HeightNumbers {
  readonly cupDepth: number;
  readonly plateHeight: number;
  readonly rimGap: number;
  readonly backGap: number;
  readonly bracketTemperature: number;
  readonly perLobe: number;
  readonly fingerRoom: number;
}

export type Derived = StackNumbers &
  SpringNumbers &
  Omit<SetLength, "tappedBolt"> &
  SettingNumbers &
  BoltNumbers &
  FrameNumbers &
  HeightNumbers;

/** Returns all numbers of a mount; a calculation that refuses leaves a stand-in that a check names. */
export function derive(given: Parameters, printer: Printer): Derived {
  const parts = fittings(given);
  const stack = stackNumbers(given, parts, printer);
  const spring = springNumbers(given, parts);
  const { tappedBolt, ...set } = chooseSetLength(given, parts, spring, stack);
  const setting = settingNumbers(given, parts, spring, set.setLength);
  const frame = frameNumbers(given, parts, stack, printer);
  const back = given.mount === "on-top" ? 0 : Math.max(0, frame.rowHeight + frame.edge);
  return {
    ...stack,
    ...spring,
    ...set,
    ...setting,
    ...boltNumbers(given, parts, stack, { ...set, tappedBolt }, setting),
    ...frame,
    ...heightNumbers(given, parts, stack, { setLength: set.setLength, range: spring.range, back }, printer),
  };
}

function heightNumbers(
  given: Parameters,
  parts: Fittings,
  stack: StackNumbers,
  { setLength, range, back }: { readonly setLength: number; readonly range: number; readonly back: number },
  printer: Printer,
): HeightNumbers {
  const cupDepth = up(given.cupDepth ?? Math.max(3, 0.25 * setLength), printer.layer);
  const plateHeight = stack.springWasherThickness + setLength + parts.heatWasher.thickness;
  const gap = Math.min(60, plateHeight);
  const heat = { plate: given.plateTemperature, ambient: given.ambient, gap };
  const wheelLow = parts.sliderWasher.thickness + stack.wheelHeight;
  return {
    cupDepth,
    plateHeight,
    rimGap: plateHeight - range - cupDepth,
    backGap: plateHeight - range - back,
    bracketTemperature: results(bracketTemperature, heat).bracket,
    perLobe: results(threadTravel, { pitch: parts.thread.pitch, marks: 10, move: 0 }).perMark,
    fingerRoom: Math.min(given.fingerRoom, given.roomBelow - wheelLow),
  };
}
