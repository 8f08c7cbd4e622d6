import { type Box, boxOfText, overlap, type Point, type Segment } from "./marks.ts";

/** A label to be placed: its lines, and the place that it tells of. */
export interface Label {
  readonly lines: readonly string[];
  readonly colour: string;
  readonly of: Point;
  /** How far from that place it may begin, mm: the thing itself lies there. */
  readonly clear: number;
  /** Whether it had better lie on the thing itself. */
  readonly upon?: boolean;
}

export interface PlacedLabel extends Label {
  readonly box: Box;
}

/** Directions that are tried round a place, and how many rings of them. */
const DIRECTIONS = 16;
const RINGS = 14;
/** What it costs to lie on a line, in rings further out. */
const ON_LINE = 5;

/**
 * Returns labels in places where none lies on another, each as near to what it tells of as it can be and off the lines
 * where there is room. The first labels choose first. mm, y downwards.
 */
export function placeLabels(labels: readonly Label[], lines: readonly Segment[], taken: readonly Box[], size: number) {
  const placed: PlacedLabel[] = [];
  for (const label of labels) {
    const full = [...taken, ...placed.map(({ box }) => box)];
    placed.push({ ...label, box: bestBox(label, lines, full, size) });
  }
  return placed;
}

function bestBox(
  { lines: words, of, clear, upon = false }: Label,
  lines: readonly Segment[],
  full: readonly Box[],
  size: number,
): Box {
  let best: { readonly box: Box; readonly cost: number } | undefined;
  const on = boxOfText(words, size, of);
  if (upon && !full.some((other) => overlap(other, on)) && !lines.some((line) => meets(line, on))) return on;
  for (let ring = 0; ring < RINGS; ring++) {
    if (best !== undefined && best.cost <= ring) break;
    for (let direction = 0; direction < DIRECTIONS; direction++) {
      const box = boxBeside(words, size, of, (2 * Math.PI * direction) / DIRECTIONS, clear + (0.4 + ring) * size);
      if (full.some((other) => overlap(other, box))) continue;
      const cost = ring + ON_LINE * lines.filter((line) => meets(line, box)).length;
      if (best === undefined || cost < best.cost - 1e-9) best = { box, cost };
    }
  }
  return best?.box ?? below(words, size, of, full);
}

/** The box that begins at a distance from a place, in a direction. */
function boxBeside(words: readonly string[], size: number, { x, y }: Point, angle: number, away: number): Box {
  const own = boxOfText(words, size, { x: 0, y: 0 });
  const [cos, sin] = [Math.cos(angle), -Math.sin(angle)];
  return boxOfText(words, size, { x: x + cos * (away + own.right), y: y + sin * (away + own.bottom) });
}

/** Under everything: where no ring has room. */
function below(words: readonly string[], size: number, { x }: Point, full: readonly Box[]): Box {
  const own = boxOfText(words, size, { x, y: 0 });
  const bottom = Math.max(...full.map((box) => box.bottom));
  return boxOfText(words, size, { x, y: bottom + size - own.top });
}

/** Whether a line meets a box: cut to the box's slabs, something is left of it. */
export function meets({ from, to }: Segment, { left, right, top, bottom }: Box): boolean {
  // Most lie wholly to one side of it.
  if ((from.x < left && to.x < left) || (from.x > right && to.x > right)) return false;
  if ((from.y < top && to.y < top) || (from.y > bottom && to.y > bottom)) return false;
  const [startX, endX] = inSlab(from.x, to.x, left, right);
  const [startY, endY] = inSlab(from.y, to.y, top, bottom);
  return Math.max(startX, startY) <= Math.min(endX, endY);
}

/** The share of the way at which a coordinate enters a slab that it meets, and at which it leaves it: 0 to 1. */
function inSlab(from: number, to: number, low: number, high: number): readonly [number, number] {
  const step = to - from;
  if (step === 0) return [0, 1];
  const [one, other] = [(low - from) / step, (high - from) / step];
  return [Math.max(0, Math.min(one, other)), Math.min(1, Math.max(one, other))];
}
