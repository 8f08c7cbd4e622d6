import type { Mesh, Vec3 } from "../../src/geometry/mesh.ts";

/** Where the viewer stands, in degrees: counter-clockwise from +x seen from above, and above the horizon. */
export interface Camera {
  readonly azimuth: number;
  readonly elevation: number;
}

export const VIEWS = {
  iso: { azimuth: -55, elevation: 30 },
  top: { azimuth: -90, elevation: 90 },
  front: { azimuth: -90, elevation: 0 },
  right: { azimuth: 0, elevation: 0 },
  back: { azimuth: 90, elevation: 0 },
  bottom: { azimuth: -90, elevation: -90 },
  under: { azimuth: -55, elevation: -30 },
} as const satisfies Record<string, Camera>;

export type View = keyof typeof VIEWS;

/** Three directions of length 1: to the right in the picture, up in the picture, and towards the viewer. */
export interface Axes {
  readonly right: Vec3;
  readonly up: Vec3;
  readonly towards: Vec3;
}

/** Returns the axes of the picture that a camera takes, without perspective. */
export function axesOf({ azimuth, elevation }: Camera): Axes {
  const [a, e] = [(azimuth * Math.PI) / 180, (elevation * Math.PI) / 180];
  return {
    right: [-Math.sin(a), Math.cos(a), 0],
    up: [-Math.sin(e) * Math.cos(a), -Math.sin(e) * Math.sin(a), Math.cos(e)],
    towards: [Math.cos(e) * Math.cos(a), Math.cos(e) * Math.sin(a), Math.sin(e)],
  };
}

/** Corners in pixels (x to the right, y down) and their depth towards the viewer in pixels; three numbers each. */
export interface Projection {
  readonly points: Float64Array;
  /** mm per pixel. */
  readonly scale: number;
}

/** Returns the corners of a mesh in a picture of this size, as large as the margin (pixels) allows. */
export function project(mesh: Mesh, axes: Axes, width: number, height: number, margin: number): Projection {
  const count = mesh.positions.length / 3;
  const points = new Float64Array(count * 3);
  const low = [Infinity, Infinity];
  const high = [-Infinity, -Infinity];
  for (let corner = 0; corner < count; corner++) {
    [axes.right, axes.up, axes.towards].forEach(([x, y, z], axis) => {
      const at = corner * 3;
      const [px = 0, py = 0, pz = 0] = mesh.positions.subarray(at, at + 3);
      const value = px * x + py * y + pz * z;
      points[at + axis] = value;
      if (axis === 2) return;
      low[axis] = Math.min(low[axis] ?? value, value);
      high[axis] = Math.max(high[axis] ?? value, value);
    });
  }
  const [left = 0, bottom = 0] = low;
  const [right = 0, top = 0] = high;
  const scale = Math.max((right - left) / (width - 2 * margin), (top - bottom) / (height - 2 * margin), 1e-9);
  for (let at = 0; at < points.length; at += 3) {
    points[at] = width / 2 + ((points[at] as number) - (left + right) / 2) / scale;
    points[at + 1] = height / 2 - ((points[at + 1] as number) - (bottom + top) / 2) / scale;
    points[at + 2] = (points[at + 2] as number) / scale;
  }
  return { points, scale };
}
