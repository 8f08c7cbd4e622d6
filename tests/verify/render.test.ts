import { PNG } from "pngjs";
import { describe, expect, it } from "vitest";
import { VIEWS } from "../../scripts/render/camera.ts";
import type { Picture } from "../../scripts/render/canvas.ts";
import { png } from "../../scripts/render/png.ts";
import { rasterise } from "../../scripts/render/rasterise.ts";
import { readCut, section } from "../../scripts/render/section.ts";
import { soundness } from "../../src/verify/soundness.ts";
import { block, meshOf, rod } from "./bodies.ts";

const size = { width: 200, height: 160 };
const mesh = meshOf(block(40, 20, 10, [-20, -10, 0]).subtract(rod(5, 30, [0, 0, -5], 40)));

function pixel({ width, pixels }: Picture, x: number, y: number): number[] {
  return [...pixels.slice((y * width + x) * 4, (y * width + x) * 4 + 4)];
}

const WHITE = [255, 255, 255, 255];

describe("a picture of a mesh", () => {
  it("is white round the part and in its holes, and not on it", () => {
    const picture = rasterise(mesh, VIEWS.top, size);
    expect(pixel(picture, 2, 2)).toEqual(WHITE);
    expect(pixel(picture, 100, 80)).toEqual(WHITE);
    const [red = 0, green = 0, blue = 0] = pixel(picture, 50, 80);
    expect(blue).toBeGreaterThan(green);
    expect(green).toBeGreaterThan(red);
    // From the front the hole is hidden.
    expect(pixel(rasterise(mesh, VIEWS.front, size), 100, 80)).not.toEqual(WHITE);
  });

  it("has dark lines at edges", () => {
    const row = (y: number) => Array.from({ length: 200 }, (_, x) => pixel(rasterised, x, y)[0] ?? 255);
    const rasterised = rasterise(mesh, VIEWS.top, size);
    expect(row(80).filter((red) => red < 90).length).toBeGreaterThanOrEqual(4);
  });

  it("paints cut material in another colour", async () => {
    const cut = readCut("y=0.01");
    const half = await section(mesh, cut);
    const [red = 0, , blue = 0] = pixel(rasterise(half, VIEWS.front, { ...size, cut }), 40, 80);
    expect(red).toBeGreaterThan(blue);
    const [plainRed = 0, , plainBlue = 0] = pixel(rasterise(half, VIEWS.front, size), 40, 80);
    expect(plainRed).toBeLessThan(plainBlue);
  });

  it("survives as a PNG file", () => {
    const picture = rasterise(mesh, VIEWS.iso, size);
    const back = PNG.sync.read(Buffer.from(png(picture)));
    expect([back.width, back.height]).toEqual([200, 160]);
    expect(Uint8Array.from(back.data)).toEqual(picture.pixels);
  });
});

describe("a section", () => {
  it("keeps the far half, closed", async () => {
    const whole = soundness(mesh).volume;
    for (const text of ["x=0", "y=0", "z=5"]) {
      const sound = soundness(await section(mesh, readCut(text)));
      expect(sound.closed && sound.oriented).toBe(true);
      expect(sound.volume).toBeCloseTo(whole / 2, 2);
    }
    expect(soundness(await section(mesh, readCut("x=10"))).box.max[0]).toBeCloseTo(10, 5);
    expect(soundness(await section(mesh, readCut("y=-3"))).box.min[1]).toBeCloseTo(-3, 5);
    expect(soundness(await section(mesh, readCut("z=3"))).box.max[2]).toBeCloseTo(3, 5);
  });

  it("refuses a cut that it cannot read", () => {
    for (const text of ["w=1", "x", "x=", "x=two"]) expect(() => readCut(text)).toThrow("--cut");
  });
});
