import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isRefusal } from "../../src/core/calculation.ts";
import * as m from "../../src/mechanics/index.ts";
import { one, sound } from "./printed.ts";

const seed = 5;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("springs", () => {
  test("at the low end of the band the clash allowance is 0.15, at the high end the force is 1.5 shares", () => {
    fc.assert(
      fc.property(between(4, 12), between(15, 40), between(1, 30), between(2, 12), between(0, 4), (...given) => {
        const [solidLength, freeLength, share, rate, range] = given;
        const band = m.springBand.compute({ solidLength, freeLength, share, rate, range });
        fc.pre(!isRefusal(band));
        const shortest = band.low - range;
        expect(one(m.clashAllowance, "allowance", { freeLength, solidLength, shortest })).toBeCloseTo(0.15, 8);
        expect(one(m.springForce, "force", { rate, freeLength, length: band.high + range })).toBeCloseTo(
          1.5 * share,
          8,
        );
      }),
      { seed },
    );
  });

  test("the rate needed opens the band, and a hundredth less closes it", () => {
    fc.assert(
      fc.property(
        between(4, 12),
        between(15, 40),
        between(1, 30),
        between(0, 4),
        (solidLength, freeLength, share, range) => {
          const needed = m.springRateNeeded.compute({ solidLength, freeLength, share, range });
          fc.pre(!isRefusal(needed));
          const band = (rate: number) => m.springBand.compute({ solidLength, freeLength, share, rate, range });
          expect(isRefusal(band(needed.rate * 1.000001))).toBe(false);
          expect(band(needed.rate * 0.99)).toHaveProperty("refused", expect.stringMatching(/rate of .* opens one$/));
        },
      ),
      { seed },
    );
  });
});

describe("tramming", () => {
  const corners = [
    { x: -150, y: -150 },
    { x: 150, y: -150 },
    { x: 150, y: 150 },
    { x: -150, y: 150 },
    { x: 20, y: -70 },
  ];

  test("finds the plane that was probed, wherever it is probed", () => {
    fc.assert(
      fc.property(between(-1, 1), between(-0.01, 0.01), between(-0.01, 0.01), (c0, c1, c2) => {
        const height = ({ x, y }: m.Point) => c0 + c1 * x + c2 * y;
        const plane = sound(m.tramPlane(corners.map((at) => ({ ...at, height: height(at) }))));
        expect(plane.worst).toBeLessThan(1e-12);
        expect(m.planeHeight(plane, { x: 60, y: 33 })).toBeCloseTo(height({ x: 60, y: 33 }), 12);
      }),
      { seed },
    );
  });

  test("twist over four corners is what the plane leaves", () => {
    const heights = [0.3, -0.1, 0.2, 0.05];
    const square = corners.slice(0, 4).map((at, index) => ({ ...at, height: heights[index] ?? 0 }));
    const [first = 0, second = 0, third = 0, fourth = 0] = heights;
    const twist = one(m.plateTwist, "twist", { first, second, third, fourth });
    expect(sound(m.tramPlane(square)).worst).toBeCloseTo(Math.abs(twist), 12);
  });

  test("twist of four mounts, probed anywhere: (h1 - h2 + h3 - h4) / 4 on a rectangle however it is turned", () => {
    fc.assert(
      fc.property(between(-0.5, 0.5), between(-0.01, 0.01), between(0, 360), (twist, slope, turn) => {
        const [c, s] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
        const turned = ({ x, y }: m.Point) => ({ x: x * c - y * s + 40, y: x * s + y * c - 25 });
        // A surface straight along both sides (hyperbolic paraboloid) that is `twist` high at (200, 150).
        const height = ({ x, y }: m.Point) => 0.1 + slope * x - slope * y + (twist * x * y) / (200 * 150);
        const places = [
          { x: 180, y: 130 },
          { x: -170, y: 120 },
          { x: -160, y: -140 },
          { x: 150, y: -100 },
          { x: 30, y: 60 },
        ];
        const probes = places.map((at) => ({ ...turned(at), height: height(at) }));
        const rectangle = [
          { x: 200, y: 150 },
          { x: 200, y: -150 },
          { x: -200, y: 150 },
          { x: -200, y: -150 },
        ];
        const { off, worst } = sound(m.tramTwist(probes, rectangle.map(turned)));
        [1, -1, -1, 1].forEach((sign, index) => {
          expect(off[index]).toBeCloseTo(sign * twist, 9);
        });
        const [first, second, fourth, third] = rectangle.map(height) as [number, number, number, number];
        expect(worst).toBeCloseTo(Math.abs(one(m.plateTwist, "twist", { first, second, third, fourth })), 9);
      }),
      { seed },
    );
    const flat = corners.slice(0, 4).map((at) => ({ ...at, height: 0 }));
    const cross = [
      { x: 100, y: 0, height: 0 },
      { x: -100, y: 0, height: 0 },
      { x: 0, y: 100, height: 0 },
      { x: 0, y: -100, height: 0 },
    ];
    expect(m.tramTwist(cross, corners.slice(0, 4))).toHaveProperty(
      "refused",
      expect.stringMatching(/leave the twist open/),
    );
    expect(m.tramTwist(flat, corners.slice(0, 3))).toHaveProperty("refused");
    expect(m.tramTwist(flat.slice(1), corners.slice(0, 4))).toHaveProperty("refused");
  });

  test("after the moves the mounts are level, and clockwise lowers", () => {
    const mount = (name: string, x: number, y: number) => ({ name, x, y, pitch: 0.8, up: 3, down: 3 });
    const mounts = [mount("fixed", 0, 0), mount("slot", 0, 400), mount("free", 300, 0)];
    fc.assert(
      fc.property(between(-0.005, 0.005), between(-0.005, 0.005), (slopeX, slopeY) => {
        const plane = { centre: { x: 0, y: 0 }, atCentre: 0.2, slopeX, slopeY, worst: 0 };
        for (const { name, move, clockwise } of sound(m.tramMoves(plane, mounts, "fixed"))) {
          const at = mounts.find((each) => each.name === name) ?? mounts[0];
          expect(m.planeHeight(plane, at ?? { x: 0, y: 0 }) + move).toBeCloseTo(0.2, 9);
          expect(clockwise * 0.8).toBeCloseTo(-move, 9);
        }
      }),
      { seed },
    );
    const high = { centre: { x: 0, y: 0 }, atCentre: 0, slopeX: 0, slopeY: 0.01, worst: 0 };
    // Slot stands 4 high and sinks by 3: the others meet it 1 higher.
    expect(sound(m.tramMoves(high, mounts, "fixed")).map(({ move }) => move)).toEqual([1, -3, 1]);
    const steep = { ...high, slopeY: 0.0175 };
    expect(m.tramMoves(steep, mounts, "fixed")).toHaveProperty(
      "refused",
      "no height is in the reach of all mounts: with the others as low as they go, mount fixed lacks 1 mm upwards, and " +
        "mount free lacks 1 mm upwards",
    );
    expect(m.tramMoves(high, mounts, "none")).toHaveProperty("refused");
    expect(m.tramMoves(high, [{ ...mount("a", 0, 0), pitch: 0 }], "a")).toHaveProperty("refused");
  });

  // Geometry: each mount reaches an interval of heights; they have one in common when none begins over another's end.
  test("there are moves whenever a common height is in reach, all within the travel, and the fixed one hardly moves", () => {
    const mount = fc.record({ x: between(-300, 300), y: between(-300, 300), up: between(0, 3), down: between(0, 3) });
    const slope = between(-0.02, 0.02);
    fc.assert(
      fc.property(fc.array(mount, { minLength: 2, maxLength: 5 }), slope, slope, (drawn, slopeX, slopeY) => {
        const mounts = drawn.map((one, at) => ({ ...one, name: `m${at}`, pitch: 0.8 }));
        const plane = { centre: { x: 0, y: 0 }, atCentre: 0, slopeX, slopeY, worst: 0 };
        const heights = mounts.map((one) => m.planeHeight(plane, one));
        const low = Math.max(...mounts.map(({ down }, at) => (heights[at] ?? 0) - down));
        const high = Math.min(...mounts.map(({ up }, at) => (heights[at] ?? 0) + up));
        const moves = m.tramMoves(plane, mounts, "m0");
        expect("refused" in moves).toBe(low > high + 1e-9);
        if ("refused" in moves) return;
        const levels = moves.map(({ move }, at) => (heights[at] ?? 0) + move);
        for (const level of levels) expect(level).toBeCloseTo(levels[0] ?? 0, 9);
        for (const [at, { move }] of moves.entries()) {
          expect(move).toBeLessThanOrEqual((mounts[at]?.up ?? 0) + 1e-6);
          expect(-move).toBeLessThanOrEqual((mounts[at]?.down ?? 0) + 1e-6);
        }
        const own = heights[0] ?? 0;
        const nearest = own < low ? low - own : own > high ? own - high : 0;
        expect(Math.abs(moves[0]?.move ?? 0)).toBeCloseTo(nearest, 6);
      }),
      { seed },
    );
  });

  test("refuses too few probes, probes on a line, and what is no number", () => {
    const flat = corners.map(({ x }) => ({ x, y: x / 50, height: 0 }));
    expect(m.tramPlane(corners.slice(0, 2).map((at) => ({ ...at, height: 0 })))).toHaveProperty("refused");
    expect(m.tramPlane(flat)).toHaveProperty("refused", expect.stringMatching(/line/));
    expect(m.tramPlane(corners.map((at) => ({ ...at, height: Number.NaN })))).toHaveProperty("refused");
    expect(m.tramPlane(corners.map(({ x, y }) => ({ x: x * 1e300, y, height: 0 })))).toHaveProperty("refused");
  });
});

test("with loss a plate warms more slowly, and like an ideal one when little is lost", () => {
  fc.assert(
    fc.property(
      between(0.5, 5),
      between(10, 100),
      between(300, 900),
      between(1e-6, 2.9),
      (mass, warming, power, loss) => {
        const plate = { mass, heat: 896, warming, power };
        const ideal = one(m.heatingEnergy, "time", plate);
        expect(one(m.warmUp, "time", { ...plate, loss })).toBeGreaterThanOrEqual(ideal * (1 - 1e-6));
        expect(one(m.warmUp, "time", { ...plate, loss: 1e-4 }) / ideal).toBeCloseTo(1, 4);
      },
    ),
    { seed },
  );
  const never = m.warmUp.compute({ mass: 1, heat: 896, warming: 100, power: 100, loss: 2 });
  expect(never).toHaveProperty("refused", "the plate ends 50 K above the air and never gets there");
});
