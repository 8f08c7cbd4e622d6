import fc from "fast-check";
import type { Manifold } from "manifold-3d";
import { describe, expect, it } from "vitest";
import { cornerOf, facets } from "../../src/geometry/facets.ts";
import { meshEdges, next } from "../../src/verify/mesh-edges.ts";
import { type Overhang, overhangs } from "../../src/verify/overhang.ts";
import { soundness } from "../../src/verify/soundness.ts";
import { alongY, Body, between, block, LIMITS, meshOf, rod, Section } from "./bodies.ts";

const over = (body: Manifold): Overhang[] => overhangs(meshOf(body), LIMITS);
const worst = (body: Manifold) => over(body)[0] ?? { support: "nothing hangs", span: 0 };

/** The flat-topped drop of a horizontal hole: a circle, and a 45 degree roof cut off `lift` above it. */
function teardrop(radius: number, lift: number, segments = 40): [number, number][] {
  const half = radius * Math.SQRT2 - radius - lift;
  const top: [number, number][] = [
    [half, radius + lift],
    [-half, radius + lift],
  ];
  const lower = Array.from({ length: segments + 1 }, (_, index): [number, number] => {
    const turn = (135 + (270 * index) / segments) * (Math.PI / 180);
    return [radius * Math.cos(turn), radius * Math.sin(turn)];
  });
  return [...lower, ...top];
}

describe("a bridge", () => {
  it("is the flat roof of a teardrop hole: as wide as the flat, however long", () => {
    const hole = alongY(teardrop(2.875, 0.3), 40).translate([0, -10, 10]);
    const found = over(block(20, 20, 20, [-10, 0, 0]).subtract(hole));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ support: "bridge" });
    expect(found[0]?.span).toBeCloseTo(2 * (2.875 * Math.SQRT2 - 2.875 - 0.3), 3);
    expect(found[0]?.height).toBeCloseTo(10 + 2.875 + 0.3, 4);
    expect(found[0]?.area).toBeCloseTo((found[0]?.span ?? 0) * 20, 2);
  });

  it("is nothing where the teardrop keeps its point", () => {
    const drop = teardrop(2.875, 2.875 * Math.SQRT2 - 2.875 - 1e-3);
    expect(over(block(20, 20, 20, [-10, 0, 0]).subtract(alongY(drop, 40).translate([0, -10, 10])))).toHaveLength(1);
    expect(worst(block(20, 20, 20, [-10, 0, 0]).subtract(alongY(drop, 40).translate([0, -10, 10]))).span).toBeLessThan(
      0.01,
    );
  });

  it("spans a window whichever way it is turned", () => {
    const width = between(1, 30);
    fc.assert(
      fc.property(width, between(0, 180), (wide, turn) => {
        const wall = block(50, 12, 20, [-25, 0, 0]).subtract(block(wide, 40, 10, [-wide / 2, -10, -1]));
        const [only, ...others] = over(wall.rotate([0, 0, turn]));
        expect(others).toEqual([]);
        expect(only?.support).toBe("bridge");
        expect(Math.abs((only?.span ?? 0) - wide)).toBeLessThan(2e-3);
      }),
      { numRuns: 60 },
    );
  });

  it("spans a window in a wall so thin that lines along the wall's depth need no hold", () => {
    const found = over(block(20, 0.8, 10).subtract(block(1.1, 10, 6, [9, -5, -1])));
    expect(found).toHaveLength(1);
    expect(found[0]?.support).toBe("bridge");
    expect(found[0]?.span).toBeCloseTo(1.1, 4);
  });

  it("spans the shorter side of a pocket's roof, and the diameter of a round one", () => {
    expect(worst(block(40, 40, 20).subtract(block(25, 7, 10, [5, 5, -1])))).toMatchObject({ support: "bridge" });
    expect(worst(block(40, 40, 20).subtract(block(25, 7, 10, [5, 5, -1]))).span).toBeCloseTo(7, 4);
    const round = worst(block(40, 40, 20).subtract(rod(6, 10, [20, 20, -1])));
    expect(round.support).toBe("bridge");
    expect(round.span).toBeGreaterThan(11.9);
    expect(round.span).toBeLessThan(12.001);
  });

  it("spans the part of a plain round hole that is flatter than 45 degrees", () => {
    const hole = rod(5, 40, [0, 0, -10], 360).rotate([-90, 0, 0]).translate([10, 0, 10]);
    const found = worst(block(20, 20, 20).subtract(hole));
    expect(found.support).toBe("bridge");
    expect(found.span).toBeGreaterThan(10 * Math.sin((43.5 * Math.PI) / 180));
    expect(found.span).toBeLessThan(10 * Math.sin((45.5 * Math.PI) / 180));
  });

  it("is shortened by a post in the middle", () => {
    const table = block(40, 10, 4, [0, 0, 10]).add(
      Body.union([block(4, 10, 11), block(4, 10, 11, [18, 0, 0]), block(4, 10, 11, [36, 0, 0])]),
    );
    const found = over(table);
    expect(found.map(({ support }) => support)).toEqual(["bridge", "bridge"]);
    expect(found[0]?.span).toBeCloseTo(14, 4);
  });

  it("is the slot of a counterbore's roof in steps", () => {
    const [head, hole, layer] = [5.5, 2.75, 0.2];
    const bore = rod(hole / Math.cos(Math.PI / 40), 30, [0, 0, -5], 40).rotate([0, 0, 4.5]);
    const pocket = rod(head, 6, [0, 0, -1], 64);
    const slot = rod(head, layer, [0, 0, 5], 64).intersect(block(2 * hole, 40, 9, [-hole, -20, 0]));
    const square = block(2 * hole, 2 * hole, layer, [-hole, -hole, 5 + layer]);
    const stepped = block(20, 20, 15, [-10, -10, 0]).subtract(Body.union([bore, pocket, slot, square]));
    const found = over(stepped);
    expect(found.filter(({ support }) => support !== "bridge")).toEqual([]);
    // Longest beside the slot, from rim to rim of the counterbore.
    expect(found[0]?.span).toBeGreaterThan(9.3);
    expect(found[0]?.span).toBeLessThan(2 * Math.sqrt(head ** 2 - hole ** 2) + 1e-3);
  });
});

describe("a ledge", () => {
  it("sticks out as far as it is deep", () => {
    const shelf = block(20, 10, 20).add(block(23, 10, 5, [0, 0, 15]));
    const [found, ...others] = over(shelf);
    expect(others).toEqual([]);
    expect(found?.support).toBe("ledge");
    expect(found?.span).toBeCloseTo(3, 4);
    expect(found?.at[0]).toBeCloseTo(23, 4);
    expect(found?.height).toBeCloseTo(15, 6);
  });

  it("is tolerated, as a bridge or a short ledge, when one more line covers it", () => {
    const lip = over(block(20, 10, 20).add(block(20.5, 10, 5, [0, 0, 15])));
    expect(lip).toHaveLength(1);
    expect(lip[0]?.span).toBeLessThanOrEqual(0.5 + 1e-4);
    const engraved = block(20, 10, 20).subtract(block(6, 0.4, 1, [5, 0, 10]));
    expect(worst(engraved).span).toBeLessThanOrEqual(6);
    expect(over(engraved).every(({ support, span }) => support === "bridge" || span < 0.61)).toBe(true);
  });

  it("is the ring roof of a counterbore that opens to the bed", () => {
    for (const [head, hole] of [
      [5.5, 2.75],
      [3.05, 1.7],
      [8, 4.5],
    ] as const) {
      const bored = block(20, 20, 15, [-10, -10, 0]).subtract(
        Body.union([rod(head, 6, [0, 0, -1], 64), rod(hole, 30, [0, 0, -5], 64)]),
      );
      const found = worst(bored);
      expect(found.support).toBe("ledge");
      expect(found.span).toBeGreaterThan(head - hole - 0.3);
      expect(found.span).toBeLessThan(head - hole + 0.05);
    }
  });

  it("is a slope of 50 degrees from the vertical, but not one of 45 or 44", () => {
    const cone = (angle: number) =>
      Body.cylinder(10, 5, 5 + 10 * Math.tan((angle * Math.PI) / 180), 64)
        .translate([0, 0, 3])
        .add(rod(5, 4, [0, 0, 0]));
    expect(worst(cone(50)).support).toBe("ledge");
    expect(over(cone(45))).toEqual([]);
    expect(over(cone(44))).toEqual([]);
  });

  it("is a fin whose upper side slopes down to its root", () => {
    const tip = 10 + 10 * Math.tan(Math.PI / 6);
    const fin = alongY(
      [
        [-4, 0],
        [0, 0],
        [0, 10],
        [10, tip],
        [0, 13],
        [-4, 13],
      ],
      12,
    );
    const [found, ...others] = over(fin);
    expect(others).toEqual([]);
    expect(found?.support).toBe("ledge");
    expect(found?.span).toBeCloseTo(10, 3);
  });

  it("is a slope that rises from the bed too gently", () => {
    const [found, ...others] = over(
      alongY(
        [
          [0, 0],
          [10, 0],
          [18, 3],
          [18, 10],
          [0, 10],
        ],
        12,
      ),
    );
    expect(others).toEqual([]);
    expect(found).toMatchObject({ support: "ledge", height: 0 });
    expect(found?.span).toBeCloseTo(8, 3);
  });

  it("is the far end of a shelf with an L-shaped wall under two of its sides", () => {
    const corner = Body.union([block(30, 3, 10), block(3, 30, 10), block(30, 30, 3, [0, 0, 10])]);
    const found = worst(corner);
    expect(found.support).toBe("ledge");
    expect(found.span).toBeGreaterThan(10);
  });
});

describe("what begins in mid-air", () => {
  it("is a second body above the bed", () => {
    const found = over(Body.compose([block(10, 10, 10), block(8, 4, 4, [20, 0, 5])]));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ support: "none", height: 5 });
    expect(found[0]?.span).toBeCloseTo(4, 6);
    expect(found[0]?.area).toBeCloseTo(32, 6);
  });

  it("is a boss that hangs from a roof", () => {
    const hall = block(40, 30, 20)
      .subtract(block(9, 60, 15, [15, -5, -1]))
      .add(block(3, 3, 6, [18, 13, 9]));
    expect(over(hall).map(({ support }) => support)).toContain("none");
    expect(worst(hall)).toMatchObject({ support: "none", height: 9 });
  });
});

describe("no overhang", () => {
  it("is found on the bed, on a bed chamfer, on upright walls and faces that look up", () => {
    const foot = Body.hull([block(39.2, 29.2, 1, [0.4, 0.4, 0]), block(40, 30, 9.6, [0, 0, 0.4])]);
    expect(over(foot)).toEqual([]);
    expect(over(Body.cylinder(20, 15, 2, 64))).toEqual([]);
  });

  it("is found under a 45 degree gusset or in an upright hole", () => {
    const gusset = alongY(
      [
        [0, 10],
        [20, 30],
        [20, 40],
        [0, 40],
      ],
      6,
    ).add(block(4, 6, 40, [-4, 0, 0]));
    expect(over(gusset)).toEqual([]);
    expect(over(block(20, 20, 10).subtract(rod(4, 30, [10, 10, -5])))).toEqual([]);
  });
});

describe("a sliver along an edge of a roof", () => {
  it("does not hide the wall under that edge", () => {
    const { mesh, twin } = meshEdges(meshOf(block(36, 12, 20).subtract(block(16, 40, 10, [10, -10, -1]))));
    const { normals } = facets(mesh);
    const isRoof = (half: number) =>
      normals[Math.floor(half / 3) * 3 + 2] === -1 && cornerOf(mesh, Math.floor(half / 3), 0)[2] === 9;
    const half = twin.findIndex(
      (other, index) => isRoof(index) && Math.abs(normals[Math.floor(other / 3) * 3] ?? 0) === 1,
    );
    expect(half).toBeGreaterThanOrEqual(0);
    const [a, b] = [mesh.triangles[half] as number, mesh.triangles[next(half)] as number];
    const wall = Math.floor((twin[half] as number) / 3);
    const c = mesh.triangles[wall * 3 + (((twin[half] as number) + 2) % 3)] as number;
    const between = mesh.positions.length / 3;
    const middle = [0, 1, 2].map(
      (axis) => ((mesh.positions[a * 3 + axis] ?? 0) + (mesh.positions[b * 3 + axis] ?? 0)) / 2,
    );
    const others = [...mesh.triangles].filter((_, index) => Math.floor(index / 3) !== wall);
    const split = {
      positions: Float64Array.of(...mesh.positions, ...middle),
      triangles: Uint32Array.of(...others, b, between, c, between, a, c, b, a, between),
    };
    expect(soundness(split)).toMatchObject({ closed: true, oriented: true, slivers: 1 });
    const found = overhangs(split, LIMITS);
    expect(found.map(({ support, span }) => [support, Math.round(span * 1e3) / 1e3])).toEqual([["bridge", 16]]);
  });
});

describe("a facet that rounding has turned over", () => {
  it("is no overhang", () => {
    const corners = [0, 10].flatMap((z) => [0, 0, z, 10, 0, z, 10, 10, z, 0, 10, z]);
    const positions = Float64Array.of(...corners, 5.00005, 4.99995, 10);
    const sides = [0, 1, 2, 3].flatMap((a) => [a, (a + 1) % 4, ((a + 1) % 4) + 4, a, ((a + 1) % 4) + 4, a + 4]);
    const top = [4, 5, 6, 4, 8, 7, 8, 6, 7, 4, 6, 8];
    const mesh = { positions, triangles: Uint32Array.of(0, 2, 1, 0, 3, 2, ...sides, ...top) };
    expect(soundness(mesh)).toMatchObject({ closed: true, oriented: true, slivers: 0 });
    expect(facets(mesh).normals.at(-1)).toBe(-1);
    expect(overhangs(mesh, LIMITS)).toEqual([]);
  });
});

describe("a shallow dish under a plate", () => {
  it("is one region though its facets slope", () => {
    const dish = new Section([
      [
        [0, 0],
        [8, 0],
        [0, 3],
      ],
    ])
      .revolve(48)
      .translate([15, 15, 2]);
    const found = over(block(30, 30, 12).subtract(Body.union([dish, rod(8, 4, [15, 15, -2], 48)])));
    expect(found).toHaveLength(1);
    expect(found[0]?.support).toBe("bridge");
    expect(found[0]?.span).toBeGreaterThan(15.8);
  });
});
