export type Colour = readonly [number, number, number];

/** A picture of RGBA bytes, rows from the top. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8Array;
}

/** A picture in the making, with the depth of what is nearest to the viewer at each pixel. */
export interface Canvas {
  readonly width: number;
  readonly height: number;
  readonly colours: Uint8Array;
  readonly depths: Float64Array;
}

/** Share of a facet by which it reaches over its edges, so that neighbours leave no pixel between them. */
const GRAZE = 1e-9;

export type Point = readonly [number, number, number];

export function blankCanvas(width: number, height: number): Canvas {
  const colours = new Uint8Array(width * height * 3).fill(255);
  return { width, height, colours, depths: new Float64Array(width * height).fill(-Infinity) };
}

/** Paints a triangle where it is nearer to the viewer than what is there; a pixel belongs to it by its middle. */
export function paintTriangle(canvas: Canvas, [a, b, c]: readonly [Point, Point, Point], colour: Colour): void {
  const area = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  if (area === 0) return;
  const x0 = Math.max(0, Math.floor(Math.min(a[0], b[0], c[0])));
  const x1 = Math.min(canvas.width - 1, Math.ceil(Math.max(a[0], b[0], c[0])));
  const y0 = Math.max(0, Math.floor(Math.min(a[1], b[1], c[1])));
  const y1 = Math.min(canvas.height - 1, Math.ceil(Math.max(a[1], b[1], c[1])));
  for (let y = y0; y <= y1; y++) {
    for (let x = x0; x <= x1; x++) {
      const [px, py] = [x + 0.5, y + 0.5];
      const v = ((px - a[0]) * (c[1] - a[1]) - (py - a[1]) * (c[0] - a[0])) / area;
      const w = ((b[0] - a[0]) * (py - a[1]) - (b[1] - a[1]) * (px - a[0])) / area;
      if (v < -GRAZE || w < -GRAZE || v + w > 1 + GRAZE) continue;
      const depth = a[2] + v * (b[2] - a[2]) + w * (c[2] - a[2]);
      const pixel = y * canvas.width + x;
      if (depth <= (canvas.depths[pixel] as number)) continue;
      canvas.depths[pixel] = depth;
      canvas.colours.set(colour, pixel * 3);
    }
  }
}

/** Paints a line, 2 pixels wide, where nothing is nearer to the viewer by more than `slack` pixels. */
export function paintLine(canvas: Canvas, a: Point, b: Point, colour: Colour, slack: number): void {
  const steps = Math.max(1, Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1])));
  for (let step = 0; step <= steps; step++) {
    const part = step / steps;
    const depth = a[2] + part * (b[2] - a[2]) + slack;
    const left = Math.floor(a[0] + part * (b[0] - a[0]) - 0.5);
    const top = Math.floor(a[1] + part * (b[1] - a[1]) - 0.5);
    for (let y = Math.max(0, top); y <= Math.min(canvas.height - 1, top + 1); y++) {
      for (let x = Math.max(0, left); x <= Math.min(canvas.width - 1, left + 1); x++) {
        const pixel = y * canvas.width + x;
        if (depth >= (canvas.depths[pixel] as number)) canvas.colours.set(colour, pixel * 3);
      }
    }
  }
}

/** Returns the picture at half the size, each pixel the mean of four. */
export function halved({ width, height, colours }: Canvas): Picture {
  const [w, h] = [width / 2, height / 2];
  const pixels = new Uint8Array(w * h * 4).fill(255);
  for (let y = 0; y < h; y++) {
    for (let x = 0; x < w; x++) {
      for (let channel = 0; channel < 3; channel++) {
        const at = (2 * y * width + 2 * x) * 3 + channel;
        const upper = (colours[at] as number) + (colours[at + 3] as number);
        const lower = (colours[at + width * 3] as number) + (colours[at + width * 3 + 3] as number);
        pixels[(y * w + x) * 4 + channel] = Math.round((upper + lower) / 4);
      }
    }
  }
  return { width: w, height: h, pixels };
}
