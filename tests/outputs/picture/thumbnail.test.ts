import { PNG } from "pngjs";
import { expect, test } from "vitest";
import { printMesh } from "../../../src/geometry/print-mesh.ts";
import { rectangle } from "../../../src/geometry/profile.ts";
import { prism } from "../../../src/geometry/solid.ts";
import { depthBuffer, paintFacet } from "../../../src/outputs/picture/depth-buffer.ts";
import { png } from "../../../src/outputs/picture/png.ts";
import { thumbnail } from "../../../src/outputs/picture/thumbnail.ts";
import { measured } from "../../support/kernel.ts";

const cube = printMesh(measured(prism(rectangle(0, 0, 10, 10), 0, 10)).mesh);

test("a PNG is read back by pngjs pixel by pixel", () => {
  const palette = Uint8Array.from({ length: 256 * 3 }, (_, index) => (index * 37) % 256);
  const pixels = Uint8Array.from({ length: 7 * 5 }, (_, index) => (index * 11) % 256);
  const read = PNG.sync.read(Buffer.from(png({ width: 7, height: 5, pixels, palette })));
  expect([read.width, read.height]).toEqual([7, 5]);
  const rgb = [...read.data].filter((_, index) => index % 4 !== 3);
  expect(rgb).toEqual([...pixels].flatMap((colour) => [...palette.subarray(colour * 3, colour * 3 + 3)]));
});

test("a cube covers what the shadow of a cube covers", () => {
  const { width, height, pixels, palette } = thumbnail([{ mesh: cube, at: [0, 0] }]);
  const covered = Array.from(
    { length: width * height },
    (_, pixel) => palette[(pixels[pixel] as number) * 3] !== 255,
  ).filter(Boolean).length;
  // The shadow of a body of flat faces: each face that is lit by the cosine of its slope. From azimuth -55, 30 high.
  const [a, e] = [(-55 * Math.PI) / 180, (30 * Math.PI) / 180];
  const shadow = 100 * (Math.abs(Math.cos(e) * Math.cos(a)) + Math.abs(Math.cos(e) * Math.sin(a)) + Math.sin(e));
  // Its height is the greater side: two diagonals of the base seen from 30 degrees, and the cube's own height.
  const high = 10 * Math.cos(e) + 10 * Math.sin(e) * (Math.abs(Math.cos(a)) + Math.abs(Math.sin(a)));
  const scale = (width - 2 * 4) / high;
  expect(covered / (shadow * scale ** 2)).toBeGreaterThan(0.99);
  expect(covered / (shadow * scale ** 2)).toBeLessThan(1.04);
});

test("three faces of a cube are to be told apart, and its picture is in the middle", () => {
  const { width, height, pixels, palette } = thumbnail([{ mesh: cube, at: [500, -300] }]);
  const colours = new Map<number, number>();
  let [left, right] = [width, 0];
  for (let pixel = 0; pixel < width * height; pixel++) {
    const red = palette[(pixels[pixel] as number) * 3] as number;
    if (red === 255) continue;
    colours.set(red, (colours.get(red) ?? 0) + 1);
    left = Math.min(left, pixel % width);
    right = Math.max(right, pixel % width);
  }
  expect([...colours.values()].filter((count) => count > 500)).toHaveLength(3);
  expect(Math.abs(left - (width - 1 - right))).toBeLessThanOrEqual(1);
});

test("what is nearer hides what is farther, whichever is painted first", () => {
  const points = Float64Array.from([0, 0, 1, 8, 0, 1, 0, 8, 1, 0, 0, 2, 8, 0, 2, 0, 8, 2]);
  const far = [0, 3, 6] as const;
  const near = [9, 12, 15] as const;
  for (const order of [[far, near] as const, [near, far] as const]) {
    const buffer = depthBuffer(8);
    for (const facet of order)
      paintFacet(buffer, points, ...(facet as [number, number, number]), facet === near ? 200 : 50);
    expect(new Set(buffer.shades)).toEqual(new Set([0, 200]));
    // Half of the square belongs to the triangle, the pixels on its long side as well.
    expect(buffer.shades.filter((shade) => shade > 0)).toHaveLength(36);
  }
});
