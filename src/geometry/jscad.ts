import modeling from "@jscad/modeling";
import type { Vec2 } from "./mesh.ts";

/** The library's letters come out this much taller than the height it is given (measured on its capitals). */
const TALLER = 1.5;

/** Returns the pen strokes of a text, `height` mm tall, starting at the origin, each a list of points. */
export function strokes(text: string, height: number): Vec2[][] {
  const drawn = modeling.text.vectorText({ height: height / TALLER, align: "left" }, text) as unknown as [
    number,
    number,
  ][][];
  return drawn.filter((stroke) => stroke.length > 1).map((stroke) => stroke.map(([x, y]): Vec2 => [x, y]));
}
