/** A square of pixels, rows from the top: how bright each is (0: nothing there), and how near to the viewer. */
export interface DepthBuffer {
  readonly size: number;
  readonly shades: Uint8Array;
  readonly depths: Float32Array;
}

export function depthBuffer(size: number): DepthBuffer {
  return { size, shades: new Uint8Array(size * size), depths: new Float32Array(size * size).fill(-Infinity) };
}

/**
 * Paints a facet where it is nearer than what is there; a pixel belongs to it by its middle. `points` holds x to the
 * right, y down and depth towards the viewer of each corner, in pixels; `a`, `b`, `c` are where the corners begin.
 */
export function paintFacet(
  { size, shades, depths }: DepthBuffer,
  points: Float64Array,
  a: number,
  b: number,
  c: number,
  shade: number,
): void {
  const ax = points[a] as number;
  const ay = points[a + 1] as number;
  const az = points[a + 2] as number;
  const bx = points[b] as number;
  const by = points[b + 1] as number;
  const bz = points[b + 2] as number;
  const cx = points[c] as number;
  const cy = points[c + 1] as number;
  const cz = points[c + 2] as number;
  const area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  if (area === 0) return;
  // How the shares of b and c change from pixel to pixel and from row to row.
  const vx = (cy - ay) / area;
  const vy = (ax - cx) / area;
  const wx = (ay - by) / area;
  const wy = (bx - ax) / area;
  const top = Math.max(0, Math.ceil(Math.min(ay, by, cy) - 0.5));
  const bottom = Math.min(size - 1, Math.floor(Math.max(ay, by, cy) - 0.5));
  const left = Math.max(0, Math.ceil(Math.min(ax, bx, cx) - 0.5));
  const right = Math.min(size - 1, Math.floor(Math.max(ax, bx, cx) - 0.5));
  for (let y = top; y <= bottom; y++) {
    let v = vx * (left + 0.5 - ax) + vy * (y + 0.5 - ay);
    let w = wx * (left + 0.5 - ax) + wy * (y + 0.5 - ay);
    for (let pixel = y * size + left; pixel <= y * size + right; pixel++) {
      if (v >= -GRAZE && w >= -GRAZE && v + w <= 1 + GRAZE) {
        const depth = az + v * (bz - az) + w * (cz - az);
        if (depth > (depths[pixel] as number)) {
          depths[pixel] = depth;
          shades[pixel] = shade;
        }
      }
      v += vx;
      w += wx;
    }
  }
}

/** Share of a facet by which it reaches over its edges, so that neighbours leave no pixel between them. */
const GRAZE = 1e-7;
