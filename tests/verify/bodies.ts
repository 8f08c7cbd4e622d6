import fc from "fast-check";
import Module, { type CrossSection, type Manifold } from "manifold-3d";
import type { Mesh } from "../../src/geometry/mesh.ts";
import type { Limits } from "../../src/verify/limits.ts";

const top = await Module();
top.setup();

/** Kernel classes for building known bodies; the tests free nothing, they are short. */
export const { Manifold: Body, CrossSection: Section } = top;

export const LIMITS: Limits = {
  line: 0.45,
  layer: 0.2,
  bridgeComfort: 10,
  bridgeLimit: 20,
  bed: { x: 220, y: 220, z: 250 },
  wallError: 0.9,
  wallWarn: 1.8,
  sampleDensity: 0.2,
};

export function meshOf(body: Manifold): Mesh {
  const { numProp, vertProperties, triVerts } = body.getMesh();
  const corners = vertProperties.length / numProp;
  const positions = Float64Array.from(
    { length: corners * 3 },
    (_, index) => vertProperties[Math.floor(index / 3) * numProp + (index % 3)] as number,
  );
  return { positions, triangles: Uint32Array.from(triVerts) };
}

/** A box from its lowest corner. */
export function block(x: number, y: number, z: number, at: [number, number, number] = [0, 0, 0]): Manifold {
  return Body.cube([x, y, z]).translate(at);
}

/** An upright cylinder that stands at a height; its corners lie on the circle. */
export function rod(radius: number, height: number, at: [number, number, number], segments = 64): Manifold {
  return Body.cylinder(height, radius, radius, segments).translate(at);
}

/** A prism whose outline is given in x and z, and which runs along y. */
export function alongY(outline: [number, number][], length: number): Manifold {
  return new Section([outline]).extrude(length).rotate([90, 0, 0]).translate([0, length, 0]);
}

/** A rounded plate with a boss, a bearing pocket, a bore and four counterbored holes, about 4000 facets. */
export function bearingBlock(segments: (radius: number) => number): Manifold {
  const plate = roundedPlate(80, 60, 6, segments(6)).extrude(10);
  const boss = rod(16, 24, [0, 0, 0], segments(16));
  const bore = Body.union([
    rod(11.1, 10, [0, 0, 17], segments(11.1)),
    rod(8, 30, [0, 0, -3], segments(8)),
    ...[-1, 1].flatMap((x) =>
      [-1, 1].flatMap((y) => [
        rod(2.75, 20, [30 * x, 20 * y, -5], segments(2.75)),
        rod(5, 10, [30 * x, 20 * y, 5], segments(5)),
      ]),
    ),
  ]);
  return Body.union([plate, boss]).subtract(bore);
}

function roundedPlate(x: number, y: number, radius: number, segments: number): CrossSection {
  return Section.square([x - 2 * radius, y - 2 * radius], true).offset(radius, "Round", 2, segments);
}

/** Numbers spread evenly over a range; fast-check's own doubles crowd round 0. */
export function between(low: number, high: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 2 ** 30 }).map((step) => low + ((high - low) * step) / 2 ** 30);
}
