import modeling from "@jscad/modeling";
import { layOn } from "../src/geometry/corner-moves.ts";
import { circumscribed, segments } from "../src/geometry/segments.ts";
import type { Solid } from "../src/geometry/solid.ts";
import { contours } from "./bare.ts";

const { booleans, extrusions, geometries, hulls, transforms } = modeling;
type Geom3 = ReturnType<typeof geometries.geom3.create>;

/** Returns a function that makes the same solid with @jscad/modeling's booleans; profiles are prepared beforehand. */
export function prepareModeling(solid: Solid): () => Geom3 {
  switch (solid.kind) {
    case "prism": {
      const outlines = contours(solid.profile);
      const shape = geometries.geom2.create(
        outlines.flatMap((points) =>
          points.map((from, index): [[number, number], [number, number]] => [
            from,
            points[(index + 1) % points.length] as [number, number],
          ]),
        ),
      );
      return () =>
        transforms.translate([0, 0, solid.z0], extrusions.extrudeLinear({ height: solid.z1 - solid.z0 }, shape));
    }
    case "revolved": {
      const sides = segments(solid.sizing);
      const stretch = solid.fit === "around" ? circumscribed(1, sides) : 1;
      const points = (solid.sections[0] ?? []).map(([radius, z]): [number, number] => [radius * stretch, z]);
      const shape = geometries.geom2.fromPoints(points);
      return () => extrusions.extrudeRotate({ segments: sides }, shape) as Geom3;
    }
    case "meshed":
      throw new Error("a part is drawn as a tree");
    case "laid": {
      const { profile, radius, height } = solid;
      const flat = prepareModeling({ kind: "prism", profile, z0: 0, z1: height, foot: 0 });
      return () => {
        // The floor is no longer flat once it is laid, so every polygon goes in triangles.
        const facets = geometries.geom3
          .toPolygons(flat())
          .flatMap(({ vertices: [first, ...others] }) =>
            others
              .slice(1)
              .map((last, index) => [first, others[index], last].map((corner) => laidCorner(corner, radius))),
          );
        return geometries.geom3.create(facets.map((corners) => geometries.poly3.create(corners)));
      };
    }
    case "placed": {
      const of = prepareModeling(solid.of);
      const [a, b, c, d, e, f, g, h, i, j, k, l] = solid.placement;
      return () => transforms.transform([a, e, i, 0, b, f, j, 0, c, g, k, 0, d, h, l, 1] as never, of()) as Geom3;
    }
    case "cut": {
      const [from, tools] = [prepareModeling(solid.from), solid.tools.map(prepareModeling)];
      return () => booleans.subtract(from(), ...tools.map((tool) => tool())) as Geom3;
    }
    default: {
      const parts = solid.parts.map(prepareModeling);
      const join = { hull: hulls.hull, union: booleans.union, common: booleans.intersect }[solid.kind] as (
        ...of: Geom3[]
      ) => Geom3;
      return () => join(...parts.map((part) => part()));
    }
  }
}

function laidCorner([x = 0, y = 0, z = 0]: readonly number[] = [], radius: number): [number, number, number] {
  const at: [number, number, number] = [x, y, z];
  layOn(at, radius);
  return at;
}

/** Returns how many edges of the result have no partner: 0 for a closed body. */
export function openEdges(solid: Geom3): number {
  const edges = new Map<string, number>();
  const key = (vertex: readonly number[]) => vertex.map((value) => Math.round(value * 1e4)).join();
  for (const polygon of geometries.geom3.toPolygons(solid)) {
    polygon.vertices.forEach((from, index) => {
      const to = polygon.vertices[(index + 1) % polygon.vertices.length] ?? from;
      const [there, back] = [`${key(from)}>${key(to)}`, `${key(to)}>${key(from)}`];
      if ((edges.get(back) ?? 0) > 0) edges.set(back, (edges.get(back) ?? 0) - 1);
      else edges.set(there, (edges.get(there) ?? 0) + 1);
    });
  }
  return [...edges.values()].reduce((sum, count) => sum + count, 0);
}
