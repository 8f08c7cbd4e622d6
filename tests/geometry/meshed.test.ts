import { expect, test } from "vitest";
import { boundsOf } from "../../src/geometry/bounds.ts";
import type { Mesh } from "../../src/geometry/mesh.ts";
import { rectangle } from "../../src/geometry/profile.ts";
import { carve, cylinder, moved, prism, type Solid, turned, withKnown } from "../../src/geometry/solid.ts";
import { kernel } from "../support/kernel.ts";

const plate = carve(prism(rectangle(0, 0, 30, 20), 0, 5), [moved(cylinder(4, -1, 6), [10, 10, 0])]);
const placed = moved(turned(plate, "z", 30), [100, -50, 7]);
const mesh = kernel.build(plate, (body) => body.mesh());
const meshed = (of: Mesh) => (solid: Solid) => (solid === plate ? ({ kind: "meshed", mesh: of } as const) : undefined);

// The kernel knows its own mesh again; one that came from another thread it has to read.
test.each([
  ["the mesh", mesh],
  ["a copy of the mesh", structuredClone(mesh)],
])("a placed solid stands where it stood, and is what it was, with %s in its place", (_, of) => {
  const known = withKnown(placed, meshed(of));
  expect(JSON.stringify(known)).not.toContain('"cut"');
  const told = (solid: Solid) => kernel.build(solid, (body) => ({ volume: body.volume(), box: body.box() }));
  const [before, after] = [told(placed), told(known)];
  expect(after.volume).toBeCloseTo(before.volume, 3);
  for (const side of ["min", "max"] as const) {
    for (const axis of [0, 1, 2]) {
      expect(after.box[side][axis]).toBeCloseTo(before.box[side][axis] ?? Number.NaN, 4);
      expect(boundsOf(known)[side][axis]).toBeCloseTo(before.box[side][axis] ?? Number.NaN, 4);
    }
  }
});

test("a solid that is equal and another object is left as it is", () => {
  const other = moved({ ...plate } as Solid, [1, 2, 3]);
  expect(withKnown(other, meshed(mesh))).toEqual(other);
});
