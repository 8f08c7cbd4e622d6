import fc from "fast-check";
import { expect, test } from "vitest";
import { nearPairs } from "../../../src/build/clash/near-pairs.ts";
import type { Box } from "../../../src/geometry/mesh.ts";

const box = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 12 })), { minLength: 3, maxLength: 3 })
  .map(
    ([x = [0, 0], y = [0, 0], z = [0, 0]]): Box => ({
      min: [x[0], y[0], z[0]],
      max: [x[0] + x[1], y[0] + y[1], z[0] + z[1]],
    }),
  );

test("the pairs are those that a look at every pair finds, boxes that touch among them", () => {
  fc.assert(
    fc.property(fc.array(box, { maxLength: 25 }), fc.integer({ min: 0, max: 4 }), (boxes, reach) => {
      const wanted = boxes.flatMap((one, at) =>
        boxes.slice(at + 1).flatMap((other, off): [number, number][] => {
          const near = ([0, 1, 2] as const).every(
            (axis) => one.max[axis] + reach >= other.min[axis] && other.max[axis] + reach >= one.min[axis],
          );
          return near ? [[at, at + 1 + off]] : [];
        }),
      );
      expect(nearPairs(boxes, reach)).toEqual(wanted);
    }),
  );
});
