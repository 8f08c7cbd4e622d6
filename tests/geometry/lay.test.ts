import { describe, expect, test } from "vitest";
import { rectangle } from "../../src/geometry/profile.ts";
import { carve, cylinder, laid } from "../../src/geometry/solid.ts";
import { kernel, measured } from "../support/kernel.ts";

describe("what is laid on a round wall", () => {
  const [radius, depth] = [15, 0.4];
  const stroke = rectangle(-6, -0.5, 6, 0.5);

  test("cuts equally deep from end to end", () => {
    const wall = cylinder(radius, -5, 5);
    const cut = carve(wall, [laid(stroke, radius - depth, depth + 1)]);
    const taken = measured(wall).volume - measured(cut).volume;
    // Between two circles, across a stroke 12 wide and 1 high: the difference of two circular strips.
    const strip = (r: number) => r ** 2 * Math.asin(6 / r) + 6 * Math.sqrt(r ** 2 - 36);
    expect(taken).toBeCloseTo(strip(radius) - strip(radius - depth), 0);
    expect(Math.abs(taken / (strip(radius) - strip(radius - depth)) - 1)).toBeLessThan(0.1);
  });

  test("has no corner farther from the wall than the chord of its longest edge", () => {
    const { positions } = kernel.build(laid(stroke, radius, 1), (body) => body.mesh());
    for (let corner = 0; corner < positions.length; corner += 3) {
      const [x = 0, y = 0] = positions.slice(corner, corner + 2);
      const out = x - Math.sqrt(radius ** 2 - y ** 2);
      expect(Math.min(Math.abs(out), Math.abs(out - 1))).toBeLessThan(1e-5);
    }
    const ys = [...positions].filter((_, index) => index % 3 === 1).sort((one, other) => one - other);
    const steps = ys.map((y, index) => y - (ys[index - 1] ?? y));
    expect(Math.max(...steps)).toBeLessThanOrEqual(2.5 + 1e-6);
  });

  test("is a closed body of its profile's area times its height", () => {
    // Moving corners along x changes no section square to it but the ends, which shift alike.
    expect(measured(laid(stroke, radius, 1)).volume).toBeCloseTo(12, 4);
  });
});
