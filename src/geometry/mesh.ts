/**
 * A triangle mesh in mm. `positions` holds x, y, z of each vertex, `triangles` three vertex numbers of each facet,
 * counter-clockwise seen from outside.
 */
export interface Mesh {
  readonly positions: Float64Array;
  readonly triangles: Uint32Array;
}

export type Vec2 = readonly [number, number];
export type Vec3 = readonly [number, number, number];

export interface Box {
  readonly min: Vec3;
  readonly max: Vec3;
}
