import { type Room, rooms } from "../rooms.ts";
import type { PlateCheck } from "./wheels.ts";

/** Returns the first axis-wise gap; negative when the boxes overlap on all three axes. mm. */
function overlaps(one: Room, other: Room): boolean {
  return [0, 1, 2].every((axis) => {
    const [a, b] = [one.spans[axis], other.spans[axis]];
    return a !== undefined && b !== undefined && a[0] < b[1] - 1e-9 && b[0] < a[1] - 1e-9;
  });
}

export const obstructed: PlateCheck = {
  name: "wheel-path-obstructed",
  path: ["obstacles"],
  why: "the carriage runs into what else is bolted to the bar before its travel ends",
  trips: { error: { obstacles: [{ name: "belt clamp", x: [15, 30], y: [70, 90], z: [5, 15] }] } },
  test: ({ given, derived }) => {
    const moving = rooms(given, derived);
    for (const [index, { name, x, y, z }] of given.obstacles.entries()) {
      const still: Room = { name, spans: [x, [y[0] - given.travelUp, y[1] + given.travelDown], z] };
      const hit = moving.find((room) => overlaps(room, still));
      if (hit === undefined) continue;
      const says = `the ${hit.name} meets the ${name === "" ? "obstacle" : name} within the travel`;
      return {
        level: "error",
        says,
        set: "travelUp or travelDown: less, or move what stands there",
        path: ["obstacles", index],
      };
    }
    return undefined;
  },
};
