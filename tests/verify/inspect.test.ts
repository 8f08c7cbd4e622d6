import type { Manifold } from "manifold-3d";
import { describe, expect, it } from "vitest";
import { inspect } from "../../src/verify/inspect.ts";
import { cylinderRegion } from "../../src/verify/region.ts";
import { alongY, Body, bearingBlock, block, LIMITS, meshOf, rod } from "./bodies.ts";

const named = (body: Manifold, limits = LIMITS) =>
  inspect(meshOf(body), limits).diagnostics.map(({ name, level }) => `${level} ${name}`);
const only = (body: Manifold, limits = LIMITS) => {
  const { diagnostics } = inspect(meshOf(body), limits);
  expect(diagnostics).toHaveLength(1);
  return diagnostics[0];
};

describe("a part that prints", () => {
  it("passes, with its measures", () => {
    const { measures, diagnostics } = inspect(meshOf(bearingBlock(() => 64)), LIMITS);
    expect(diagnostics).toEqual([]);
    expect(measures.soundness?.genus).toBe(5);
    expect(measures.walls?.[0]?.thickness).toBeCloseTo(4.9, 1);
    expect(measures.overhangs).toEqual([]);
  });
});

describe("mesh-not-sound", () => {
  const cube = meshOf(block(10, 10, 10));

  it("names what is wrong with the surface, and measures no wall on it", () => {
    const open = inspect({ ...cube, triangles: cube.triangles.slice(3) }, LIMITS);
    expect(open.diagnostics).toHaveLength(1);
    expect(open.diagnostics[0]).toMatchObject({
      name: "mesh-not-sound",
      level: "error",
      found: { value: 3, unit: "" },
    });
    expect(open.diagnostics[0]?.says).toContain("gap");
    expect(open.measures.walls).toBeUndefined();
    const twice = inspect(
      { ...cube, triangles: Uint32Array.of(...cube.triangles, ...cube.triangles.slice(0, 3)) },
      LIMITS,
    );
    expect(twice.diagnostics[0]?.says).toContain("more than two facets");
    const [a = 0, b = 0, c = 0, ...rest] = cube.triangles;
    const flipped = inspect({ ...cube, triangles: Uint32Array.of(a, c, b, ...rest) }, LIMITS);
    expect(flipped.diagnostics[0]?.says).toContain("inside out");
    const all = inspect({ ...cube, triangles: cube.triangles.slice().reverse() }, LIMITS);
    expect(all.diagnostics.map(({ level, says }) => [level, says])).toEqual([
      ["error", "the volume is not above zero: the body is inside out"],
    ]);
  });

  it("does not throw on an empty mesh or one that names corners which are not there", () => {
    const nothing = inspect({ positions: new Float64Array(0), triangles: new Uint32Array(0) }, LIMITS);
    expect(nothing.diagnostics).toMatchObject([{ name: "mesh-not-sound", level: "error" }]);
    const wild = inspect({ positions: cube.positions, triangles: Uint32Array.of(0, 1, 500) }, LIMITS);
    expect(wild.diagnostics).toMatchObject([{ name: "mesh-not-sound", level: "error", found: { value: 1 } }]);
  });

  it("tells a part in two pieces, unless two are meant", () => {
    const two = Body.compose([block(10, 10, 10), block(10, 10, 10, [30, 0, 0])]);
    expect(only(two)).toMatchObject({ name: "mesh-not-sound", found: { value: 2 }, limit: { value: 1 } });
    expect(named(two, { ...LIMITS, pieces: 2 })).toEqual([]);
  });

  it("warns of a hollow without a way out", () => {
    expect(
      named(
        block(30, 30, 30).subtract(
          alongY(
            [
              [10, 10],
              [20, 10],
              [15, 20],
            ],
            10,
          ).translate([0, 10, 0]),
        ),
      ),
    ).toEqual(["warning mesh-not-sound"]);
  });

  it("tells a part that floats, sinks or is larger than the bed", () => {
    expect(only(block(10, 10, 10, [0, 0, -0.5]))?.says).toContain("0.500 mm below the bed");
    expect(named(block(10, 10, 10, [0, 0, 0.5]))).toContain("error mesh-not-sound");
    expect(only(block(221, 20, 20))).toMatchObject({ found: { value: 221 }, limit: { value: 220 } });
    expect(only(block(20, 20, 251))).toMatchObject({ found: { value: 251 }, limit: { value: 250 } });
    const narrow = { ...LIMITS, bed: { x: 220, y: 100, z: 250 } };
    expect(only(block(150, 120, 20), narrow)).toMatchObject({ found: { value: 120 }, limit: { value: 100 } });
    expect(named(block(220, 220, 250))).toEqual([]);
  });

  it("counts in the singular where there is one", () => {
    const broken = inspect({ ...cube, triangles: Uint32Array.of(...cube.triangles, 0, 1, 500) }, LIMITS);
    expect(broken.diagnostics[0]?.says).toBe("1 facet lacks a corner or a finite coordinate");
    const two = Body.compose([block(10, 10, 10), block(10, 10, 10, [30, 0, 0])]);
    expect(only(two)?.says).toBe("the mesh holds 2 separate pieces, and 1 was expected");
  });
});

describe("wall-too-thin", () => {
  const plate = (thickness: number) => block(40, 30, thickness);

  it("is an error below the one limit and a warning below the other", () => {
    expect(only(plate(0.8))).toMatchObject({
      name: "wall-too-thin",
      level: "error",
      limit: { value: 0.9, unit: "mm" },
    });
    expect(only(plate(0.8))?.found?.value).toBeCloseTo(0.8, 5);
    expect(only(plate(1.5))).toMatchObject({ name: "wall-too-thin", level: "warning", limit: { value: 1.8 } });
    expect(named(plate(1.8))).toEqual([]);
    expect(named(plate(0.9), { ...LIMITS, wallWarn: 0.9 })).toEqual([]);
    expect(named(plate(1.5), { ...LIMITS, wallError: 1.8, wallWarn: 3 })).toEqual(["error wall-too-thin"]);
  });

  it("says where, and where else", () => {
    const pockets = [0, 1].map((index) => block(4, 4, 9, [8 + 20 * index, 8, 0.6]));
    const found = only(block(40, 20, 6).subtract(Body.union(pockets)));
    expect(found?.says).toMatch(/0\.60 mm thick, 1\.3 printed lines, at x .* z 0\.3, and at x .* z 0\.3/);
  });

  it("leaves out what is thin on purpose", () => {
    const membrane = block(30, 30, 10).subtract(Body.union([rod(2.75, 6, [15, 15, 5.2]), rod(4.5, 6, [15, 15, -1])]));
    expect(named(membrane)).toEqual(["error wall-too-thin"]);
    const thinOnPurpose = [cylinderRegion([15, 15, 4.9], [15, 15, 5.3], 2.8)];
    expect(named(membrane, { ...LIMITS, thinOnPurpose })).toEqual([]);
  });
});

describe("overhang-needs-support", () => {
  const gate = (width: number) => block(width + 20, 12, 20).subtract(block(width, 40, 10, [10, -10, -1]));

  it("warns of a bridge beyond comfort and refuses one beyond the limit", () => {
    expect(named(gate(9.9))).toEqual([]);
    expect(only(gate(15))).toMatchObject({ name: "overhang-needs-support", level: "warning", limit: { value: 10 } });
    expect(only(gate(15))?.found?.value).toBeCloseTo(15, 4);
    expect(only(gate(20.5))).toMatchObject({ name: "overhang-needs-support", level: "error", limit: { value: 20 } });
  });

  it("refuses a ledge, and what begins in mid-air", () => {
    const shelf = block(20, 10, 20).add(block(23, 10, 5, [0, 0, 15]));
    expect(only(shelf)).toMatchObject({ name: "overhang-needs-support", level: "error" });
    expect(only(shelf)?.says).toContain("sticks out 3.00 mm over air");
    const hanging = block(20, 20, 30)
      .subtract(block(9, 40, 25, [5, -10, -1]))
      .add(block(3, 3, 10, [8, 8, 16]));
    expect(inspect(meshOf(hanging), LIMITS).diagnostics[0]?.says).toMatch(/^a face 3\.00 mm wide begins in mid-air/);
  });
});
