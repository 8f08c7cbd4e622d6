import { below, type Finding } from "../../parts/check.ts";

/** Room between a hole's edge and the heater, mm. common practice */
export const HEATER_ROOM = 6;

/** A rectangle in plan: plate or heater. mm */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly front: number;
  readonly back: number;
}

export type Spot = readonly [number, number];

/** Returns the rectangle round a middle. */
export function boxOf([x, y]: Spot, [a, b]: Spot): Box {
  return { left: x - a / 2, right: x + a / 2, front: y - b / 2, back: y + b / 2 };
}

/** Returns the distance of a place from a box; inside, the negative distance to its nearest side. mm */
export function outside({ left, right, front, back }: Box, [x, y]: Spot): number {
  const [dx, dy] = [Math.max(left - x, x - right), Math.max(front - y, y - back)];
  return dx > 0 && dy > 0 ? Math.hypot(dx, dy) : Math.max(dx, dy);
}

/** Returns the nearest place that far outside a box. */
export function besideBox({ left, right, front, back }: Box, [x, y]: Spot, away: number): Spot {
  const places: Spot[] = [
    [left - away, y],
    [right + away, y],
    [x, front - away],
    [x, back + away],
  ];
  const far = (place: Spot) => Math.hypot(place[0] - x, place[1] - y);
  const [px, py] = places.reduce((best, place) => (far(place) < far(best) ? place : best));
  // Away from the box, so that what is typed with one place is free.
  const out = (value: number, from: number) => (value < from ? Math.floor(value * 10) : Math.ceil(value * 10)) / 10;
  return [out(px, x), out(py, y)];
}

/** Returns what is wrong with a hole whose edge lies `room` mm beside the heater, below 0 under it; undefined for none. */
export function nearHeater(hole: string, room: number, set: string): Finding | undefined {
  return below({
    value: room,
    unit: "mm",
    error: 0,
    warning: HEATER_ROOM,
    says: (limit) =>
      room < 0
        ? `${hole} lies under the heater, or cuts its edge, by ${(-room).toFixed(1)} mm`
        : `${hole} lies ${room.toFixed(1)} mm beside the heater, under ${limit} mm`,
    set,
  });
}
