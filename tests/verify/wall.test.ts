import fc from "fast-check";
import type { Manifold } from "manifold-3d";
import { describe, expect, it } from "vitest";
import { boxRegion, cylinderRegion } from "../../src/verify/region.ts";
import { thinnestWalls } from "../../src/verify/wall.ts";
import { alongY, Body, between, block, meshOf, rod, Section } from "./bodies.ts";

const search = { sampleDensity: 0.2 };
const thinnest = (body: Manifold) => thinnestWalls(meshOf(body), search)[0]?.thickness ?? Number.NaN;

describe("the thinnest wall, exact on parallel faces,", () => {
  it("is the thickness of a plate", () => {
    expect(thinnest(block(60, 40, 1.2))).toBeCloseTo(1.2, 5);
  });

  it("is the side of a cup", () => {
    const cup = block(40, 30, 20).subtract(block(40 - 1.6, 30 - 1.6, 20, [0.8, 0.8, 3]));
    expect(thinnest(cup)).toBeCloseTo(0.8, 5);
  });

  it("is the web between two pockets", () => {
    const webbed = block(50, 30, 10).subtract(
      Body.union([block(10, 20, 7, [5, 5, 5]), block(10, 20, 7, [15.6, 5, 5])]),
    );
    expect(thinnest(webbed)).toBeCloseTo(0.6, 5);
  });

  it("is the floor under a bearing pocket, and says where", () => {
    const housing = rod(20, 12, [0, 0, 0]).subtract(rod(11, 10, [0, 0, 3.2]));
    const [wall] = thinnestWalls(meshOf(housing), search);
    expect(wall?.thickness).toBeCloseTo(3.2, 5);
    expect(wall?.at[2]).toBeCloseTo(1.6, 5);
    expect(Math.hypot(wall?.at[0] ?? 99, wall?.at[1] ?? 99)).toBeLessThan(11);
  });

  it("is the wall of a tube, within the chords of its circles", () => {
    const tube = rod(12.2, 20, [0, 0, 0], 96).subtract(rod(11, 40, [0, 0, -10], 72));
    const found = thinnest(tube);
    expect(found).toBeGreaterThan(1.2 - 0.02);
    expect(found).toBeLessThan(1.2 + 0.02);
  });

  it("is what remains between a hole and the edge", () => {
    // The corners of a circumscribed circle lie on the flat sides' distance, here 4 from the edge.
    const hole = rod(2.75 / Math.cos(Math.PI / 40), 20, [0, 0, -5], 40).rotate([0, 0, 180 / 40]);
    expect(thinnest(block(40, 40, 10).subtract(hole.translate([20, 6.75 - 2.9, 0])))).toBeCloseTo(1.1, 4);
  });

  it("is found however the body is turned", () => {
    const angle = between(-180, 180);
    const thickness = between(0.3, 5);
    fc.assert(
      fc.property(angle, angle, angle, thickness, (a, b, c, floor) => {
        const body = block(30, 30, 12)
          .subtract(block(8, 8, 20, [11, 11, floor]))
          .rotate([a, b, c]);
        expect(Math.abs(thinnest(body) - floor)).toBeLessThan(1e-4);
      }),
      { numRuns: 60 },
    );
  });

  it("is 5 places at most, 5 mm apart, thinnest first", () => {
    const floors = [0.7, 1.1, 0.9, 2, 1.5, 1.3];
    const pockets = floors.map((floor, index) => block(3, 3, 9, [4 + 12 * index, 8, floor]));
    const walls = thinnestWalls(meshOf(block(76, 20, 6).subtract(Body.union(pockets))), search);
    expect(walls.map(({ thickness }) => Number(thickness.toFixed(4)))).toEqual([0.7, 0.9, 1.1, 1.3, 1.5]);
    for (const one of walls) {
      for (const other of walls) {
        if (one === other) continue;
        const [dx, dy, dz] = [0, 1, 2].map((axis) => (one.at[axis as 0] as number) - (other.at[axis as 0] as number));
        expect(Math.hypot(dx ?? 0, dy ?? 0, dz ?? 0)).toBeGreaterThanOrEqual(5);
      }
    }
  });
});

describe("the thinnest wall raises no false alarm", () => {
  it("at the toe of a 45 degree gusset", () => {
    const bracket = Body.union([
      block(40, 30, 6),
      block(6, 30, 40),
      alongY(
        [
          [5, 5],
          [34, 5],
          [5, 34],
        ],
        5,
      ).translate([0, 12, 0]),
    ]);
    expect(thinnest(bracket)).toBeCloseTo(5, 4);
  });

  it("at chamfered edges and at a countersink's knife edge", () => {
    const chamfered = Body.hull([block(40, 30, 7, [0, 0, 0.5]), block(39, 29, 8, [0.5, 0.5, 0])]);
    const sunk = chamfered.subtract(Body.cylinder(8.02, 0.01, 8.03, 64).translate([20, 15, 0]));
    expect(thinnest(sunk)).toBeCloseTo(8, 3);
  });

  it("at a wedge of 30 degrees", () => {
    const wedge = alongY(
      [
        [0, 0],
        [30, 0],
        [30, 30 * Math.tan(Math.PI / 6)],
      ],
      12,
    );
    expect(thinnest(wedge)).toBeCloseTo(12, 4);
  });

  it("at a rounded edge", () => {
    const rounded = Body.hull([rod(10, 8, [0, 0, 0], 96), rod(12, 4, [0, 0, 0], 96)].concat(fillet(10, 8, 2)));
    const found = thinnest(rounded);
    expect(found).toBeGreaterThan(7.8);
    expect(found).toBeLessThanOrEqual(8.0001);
  });

  it("between engraved letters", () => {
    const grooves = [0, 1, 2, 3].map((index) => block(0.6, 5, 1, [10 + 1.1 * index, 5, 5.6]));
    expect(thinnest(block(30, 15, 6).subtract(Body.union(grooves)))).toBeCloseTo(5.6, 4);
  });

  it("on raised letters", () => {
    const strokes = [0, 1, 2].map((index) => block(0.6, 5, 1, [10 + 2 * index, 5, 5.4]));
    expect(thinnest(block(30, 15, 6).add(Body.union(strokes)))).toBeCloseTo(6, 4);
  });

  it("where the part is thin on purpose", () => {
    const membrane = block(30, 30, 10).subtract(Body.union([rod(2.75, 6, [15, 15, 5.2]), rod(5.5, 6, [15, 15, -1])]));
    expect(thinnest(membrane)).toBeCloseTo(0.2, 4);
    const except = [cylinderRegion([15, 15, 4.9], [15, 15, 5.3], 2.8)];
    expect(thinnestWalls(meshOf(membrane), { ...search, except })[0]?.thickness).toBeGreaterThan(4.7);
    const besides = [boxRegion([0, 0, 0], [5, 5, 10])];
    expect(thinnestWalls(meshOf(membrane), { ...search, except: besides })[0]?.thickness).toBeCloseTo(0.2, 4);
  });
});

describe("the thinnest wall misses nothing that matters", () => {
  it("at the thin end of a wall that tapers by 10 degrees", () => {
    const top = 1.2;
    const foot = top + 2 * 20 * Math.tan((5 * Math.PI) / 180);
    const outline: [number, number][] = [
      [-foot / 2, 0],
      [foot / 2, 0],
      [top / 2, 20],
      [-top / 2, 20],
    ];
    const tapered = alongY(outline, 40).add(block(30, 40, 6, [-15, 0, -6]));
    const found = thinnest(tapered);
    expect(found).toBeGreaterThan(1.2);
    expect(found).toBeLessThan(1.35);
    // Even when each facet is sampled once, in its middle.
    const [sparse] = thinnestWalls(meshOf(tapered), { sampleDensity: 0 });
    expect(sparse?.thickness).toBeGreaterThan(1.2);
    expect(sparse?.thickness).toBeLessThan(1.4);
  });

  it("in deep grooves that stand as close as letters", () => {
    const grooves = [0, 1, 2].map((index) => block(0.6, 5, 4, [10 + 1.1 * index, 5, 3]));
    expect(thinnest(block(30, 15, 6).subtract(Body.union(grooves)))).toBeCloseTo(0.5, 4);
  });

  it("in a strut that is thin both ways", () => {
    const strut = Body.union([block(10, 10, 5), block(0.6, 0.7, 15, [5, 5, 4]), block(10, 10, 5, [0, 0, 18])]);
    expect(thinnest(strut)).toBeCloseTo(0.6, 4);
  });

  it("gives the same answer every time, and none for a body without opposite faces", () => {
    const body = block(30, 20, 6).subtract(rod(4, 20, [10, 10, -5], 30));
    expect(thinnestWalls(meshOf(body), search)).toEqual(thinnestWalls(meshOf(body), search));
    expect(thinnestWalls(meshOf(Body.tetrahedron()), search)).toEqual([]);
  });
});

/** Rings that round the upper rim of a rod. */
function fillet(radius: number, height: number, round: number): Manifold[] {
  return Array.from({ length: 17 }, (_, step) => {
    const turn = (step / 16) * (Math.PI / 2);
    const reach = radius + round * Math.cos(turn);
    const rim = new Section([circle(reach, 96)]).extrude(1e-3);
    return rim.translate([0, 0, height - round - 1e-3 + round * Math.sin(turn)]);
  });
}

function circle(radius: number, segments: number): [number, number][] {
  return Array.from({ length: segments }, (_, index) => {
    const turn = (2 * Math.PI * index) / segments;
    return [radius * Math.cos(turn), radius * Math.sin(turn)];
  });
}
