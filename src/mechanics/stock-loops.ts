import { isRefusal, type Refusal } from "../core/calculation.ts";
import { tidy } from "../core/rounding.ts";
import { beltLoop, type LoopNode } from "./belt-loop.ts";
import { brief } from "./bounded.ts";
import { type LengthOnSlide, lengthOnSlide, type Slide, type SlidePosition } from "./slide-for-length.ts";

export interface StockLoop {
  readonly length: number;
  readonly teeth: number;
  readonly position: SlidePosition | Refusal;
}

/** Share of the nominal length beyond which a stock loop is not looked at. */
const REACH = 0.04;

/**
 * Returns the stock loops within 4 % of the nominal length, those that fit first, nearest to the middle of the slide.
 *
 * Lengths in mm. A loop that does not fit is kept with the reason. Refuses a nominal loop that is not sound, a pitch
 * that is no pitch, and a stock without any loop in reach. A stock length that is no whole number of pitches does not
 * exist and is left with that reason. Source: plane geometry.
 */
export function stockLoops(
  nodes: readonly LoopNode[],
  slide: Slide,
  pitch: number,
  stock: readonly number[],
): readonly StockLoop[] | Refusal {
  if (!(pitch > 0)) return { refused: "the belt pitch must be above 0 mm" };
  const nominal = beltLoop(nodes);
  if (isRefusal(nominal)) return nominal;
  const near = stock.filter((length) => Math.abs(length - nominal.length) <= REACH * nominal.length);
  if (near.length === 0) {
    return { refused: `no stock loop lies within 4 % of ${brief(nominal.length)} mm` };
  }
  const middle = (slide.from + slide.to) / 2;
  const off = ({ position }: StockLoop) => (isRefusal(position) ? Infinity : Math.abs(position.at - middle));
  const order = (a: StockLoop, b: StockLoop) => (off(a) === off(b) ? a.length - b.length : off(a) - off(b));
  const positionOf = lengthOnSlide(nodes, slide);
  return near.map((length) => candidate(positionOf, pitch, length)).sort(order);
}

function candidate(positionOf: LengthOnSlide, pitch: number, length: number): StockLoop {
  const teeth = tidy(length / pitch);
  const whole = Math.abs(teeth - Math.round(teeth)) < 1e-6;
  if (!whole)
    return { length, teeth, position: { refused: `${length} mm is not a whole number of ${pitch} mm teeth` } };
  return { length, teeth: Math.round(teeth), position: positionOf(length) };
}
