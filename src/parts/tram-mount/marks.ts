import { cosDeg, sinDeg } from "../../core/rounding.ts";
import { placed, polygon, rectangle } from "../../geometry/profile.ts";
import { alongY, prism, type Solid } from "../../geometry/solid.ts";
import { ENGRAVING_DEPTH, engraveFront } from "../features/engraving.ts";
import { nutPocket } from "../features/nut-pocket.ts";
import { sweepRadius } from "../features/sweep.ts";
import { pocketOf } from "./joints/captive-nut.ts";
import type { Subject } from "./subject.ts";

/** What is cut into each type of mount. */
const LETTERS = { fixed: "F", slot: "S", free: "N" } as const;
const PEN = 0.7;
/** Height of the letters, mm; the front of the thinnest bracket still holds them. */
const TALLEST = 4;
/** Half the length of the arrow, and its distance from the plate's edges, mm. */
const ARROW = { half: 3.3, edge: 3.8 };

/** Returns the engraving: letter and number on the front, growth arrow beside the cup, pointer for the wheel. */
export function marks(subject: Subject): Solid[] {
  const pointer = subject.given.joint === "thumb-wheel" ? [pointerLine(subject)] : [];
  return [...label(subject), ...arrow(subject), ...pointer];
}

/** Stretches of the front that are not free, in x. */
function blocked(subject: Subject): [number, number][] {
  if (subject.given.joint === "thumb-wheel") return [[-PEN - 0.5, PEN + 0.5]];
  if (subject.given.joint !== "captive-nut") return [];
  const pocket = pocketOf(subject);
  const slope = sinDeg(pocket.towards);
  if (slope < 0.05) return [];
  const { half } = nutPocket(pocket, subject.printer);
  const at = (subject.derived.halfFront * cosDeg(pocket.towards)) / slope;
  return [[at - half / slope - 0.8, at + half / slope + 0.8]];
}

function label(subject: Subject): Solid[] {
  const { given, derived, mark = "" } = subject;
  const edge = derived.halfWidth - 2;
  const cuts = blocked(subject).flat();
  const ends = [-edge, ...cuts.map((x) => Math.max(-edge, Math.min(edge, x))), edge];
  const gaps = ends.flatMap((from, index): [number, number][] =>
    index % 2 === 0 ? [[from, ends[index + 1] ?? edge]] : [],
  );
  const [from, to] = gaps.reduce((best, gap) => (gap[1] - gap[0] > best[1] - best[0] + 1e-9 ? gap : best), [0, 0]);
  const text = `${LETTERS[given.type]}${given.mountNumber}${mark}`;
  const room = [to - from, Math.min(TALLEST, derived.thickness - 1.6)] as const;
  return engraveFront(text, [(from + to) / 2, -derived.thickness / 2], derived.halfFront, room);
}

/** Points the way the plate grows; a fixed point does not grow. */
function arrow(subject: Subject): Solid[] {
  const { given, derived, sweep } = subject;
  // A captive nut's pocket may come out at one corner, so the arrow stands at the other.
  const side = given.joint === "captive-nut" && cosDeg(pocketOf(subject).towards) > 0 ? -1 : 1;
  const at = [side * (derived.halfWidth - ARROW.edge), derived.halfFront - ARROW.edge] as const;
  const cup = sweepRadius(derived.cupRadius, sweep) + (sweep.along === undefined ? 0 : sweep.excursion);
  const half = Math.min(ARROW.half, Math.hypot(...at) - cup - 0.6);
  if (given.type === "fixed" || half < 2) return [];
  const shape = polygon([
    [-half, -PEN / 2],
    [0, -PEN / 2],
    [0, -1.4],
    [half, 0],
    [0, 1.4],
    [0, PEN / 2],
    [-half, PEN / 2],
  ]);
  return [prism(placed(shape, at, given.growthAngle), -ENGRAVING_DEPTH, 1)];
}

/** A line on the lower half of the front, against which the marks of the wheel are read. */
function pointerLine({ derived }: Subject): Solid {
  const { thickness, halfFront } = derived;
  const line = rectangle(-PEN / 2, -thickness - 1, PEN / 2, -thickness / 2);
  return alongY(line, halfFront - ENGRAVING_DEPTH, halfFront + 1);
}
