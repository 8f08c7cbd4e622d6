import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { contactArea } from "../../src/verify/contact.ts";
import { boxRegion, cylinderRegion, holds } from "../../src/verify/region.ts";
import { between, block, meshOf, rod } from "./bodies.ts";

const up = [0, 0, 1] as const;

describe("the contact area", () => {
  it("of a bearing's shoulder is its ring", () => {
    const housing = meshOf(
      rod(20, 12, [0, 0, 0], 128)
        .subtract(rod(11, 10, [0, 0, 5], 128))
        .subtract(rod(8, 30, [0, 0, -5], 128)),
    );
    const plane = { point: [0, 0, 5], normal: up } as const;
    const ring = Math.PI * (11 ** 2 - 8 ** 2);
    expect(Math.abs(contactArea(housing, plane) / ring - 1)).toBeLessThan(0.001);
    const seat = cylinderRegion([0, 0, 4], [0, 0, 6], 11);
    expect(Math.abs(contactArea(housing, plane, seat) / ring - 1)).toBeLessThan(0.001);
    const land = Math.PI * (9.5 ** 2 - 8 ** 2);
    const inner = cylinderRegion([0, 0, 4], [0, 0, 6], 9.5);
    expect(Math.abs(contactArea(housing, plane, inner) / land - 1)).toBeLessThan(0.005);
  });

  it("of a washer on a large face is the washer's, without the hole", () => {
    const plate = meshOf(block(80, 60, 6).subtract(rod(2.75, 30, [20, 20, -5], 96)));
    const washer = cylinderRegion([20, 20, 5], [20, 20, 7], 5);
    const area = contactArea(plate, { point: [20, 20, 6], normal: up }, washer);
    expect(Math.abs(area / (Math.PI * (5 ** 2 - 2.75 ** 2)) - 1)).toBeLessThan(0.003);
    const outside = cylinderRegion([20, 20, 6.5], [20, 20, 7], 5);
    expect(contactArea(plate, { point: [20, 20, 6], normal: up }, outside)).toBe(0);
  });

  it("counts only facets in the plane that face the same way", () => {
    const mesh = meshOf(block(10, 20, 5));
    expect(contactArea(mesh, { point: [3, 3, 5], normal: up })).toBeCloseTo(200, 6);
    expect(contactArea(mesh, { point: [3, 3, 5.0015], normal: up })).toBeCloseTo(200, 6);
    expect(contactArea(mesh, { point: [3, 3, 5.0025], normal: up })).toBe(0);
    expect(contactArea(mesh, { point: [3, 3, 5], normal: [0, 0, -1] })).toBe(0);
    expect(contactArea(mesh, { point: [0, 9, 2], normal: [-1, 0, 0] })).toBeCloseTo(100, 6);
    const tilted = [Math.sin(0.02), 0, Math.cos(0.02)] as const;
    expect(contactArea(mesh, { point: [0, 0, 5], normal: tilted })).toBe(0);
  });

  it("in a box is the overlap of two rectangles", () => {
    const mesh = meshOf(block(10, 20, 5));
    const side = between(-15, 25);
    fc.assert(
      fc.property(side, side, side, side, (a, b, c, d) => {
        const [x0, x1, y0, y1] = [Math.min(a, b), Math.max(a, b), Math.min(c, d), Math.max(c, d)];
        const expected =
          Math.max(0, Math.min(10, x1) - Math.max(0, x0)) * Math.max(0, Math.min(20, y1) - Math.max(0, y0));
        const area = contactArea(mesh, { point: [0, 0, 5], normal: up }, boxRegion([x0, y0, 4], [x1, y1, 6]));
        expect(Math.abs(area - expected)).toBeLessThan(1e-6);
      }),
    );
  });
});

describe("a region", () => {
  it("holds what lies in it, on a slanted axis too", () => {
    const slanted = cylinderRegion([0, 0, 0], [10, 10, 0], 2);
    expect(holds(slanted, [5, 5, 1.9])).toBe(true);
    expect(holds(slanted, [5, 5, 2.1])).toBe(false);
    expect(holds(slanted, [-0.2, 0, 0])).toBe(false);
    expect(holds(boxRegion([0, 0, 0], [1, 2, 3]), [1, 2, 3])).toBe(true);
    expect(holds(boxRegion([0, 0, 0], [1, 2, 3]), [1.01, 2, 3])).toBe(false);
    expect(() => cylinderRegion([1, 1, 1], [1, 1, 1], 2)).toThrow(RangeError);
  });
});
