import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isRefusal } from "../../src/core/calculation.ts";
import * as m from "../../src/mechanics/index.ts";
import { one, sound } from "./printed.ts";

const seed = 5;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("seats", () => {
  const layers = fc.constantFrom(0.1, 0.15, 0.2, 0.3);

  test("a seat on a layer is whole layers up, half a layer off at most, and never raised on a tie", () => {
    fc.assert(
      fc.property(between(1, 60), layers, between(-30, 0.5), (seat, layer, bed) => {
        const { printed, residual, below } = sound(m.seatOnLayer.compute({ seat, bed, first: 0.2, layer }));
        const count = (printed - bed - 0.2) / layer;
        expect(count).toBeCloseTo(Math.round(count), 6);
        expect(Math.abs(residual)).toBeLessThanOrEqual(layer / 2 + 1e-6);
        expect(printed - below).toBeLessThan(layer + 1e-6);
        expect(below).toBeLessThanOrEqual(seat + 1e-6);
      }),
      { seed },
    );
    expect(one(m.seatOnLayer, "residual", { seat: 11.5, bed: 0, first: 0.2, layer: 0.2 })).toBeLessThan(0);
  });

  test("a free bed puts the seat on a layer without residual, less than a layer above the lowest", () => {
    fc.assert(
      fc.property(between(1, 60), layers, between(-30, 0), (seat, layer, lowest) => {
        const bed = one(m.bedOnLayer, "bed", { seat, lowest, first: 0.2, layer });
        expect(bed).toBeGreaterThanOrEqual(lowest - 1e-6);
        expect(bed).toBeLessThan(lowest + layer + 1e-6);
        expect(one(m.seatOnLayer, "residual", { seat, bed, first: 0.2, layer })).toBeCloseTo(0, 6);
      }),
      { seed },
    );
  });

  test("a shim only raises, and leaves a tenth of a millimetre at most", () => {
    const shims = [0.1, 0.2, 0.3, 0.5, 1];
    expect(m.shimForSeat({ seat: 11.5, bed: 0, first: 0.2, layer: 0.2 }, shims)).toEqual({
      printed: 11.4,
      shim: 0,
      residual: -0.1,
    });
    const coarse = { seat: 11.35, bed: 0, first: 0.3, layer: 0.4 };
    expect(m.shimForSeat(coarse, shims)).toEqual({ printed: 11.1, shim: 0.2, residual: -0.05 });
    expect(m.shimForSeat({ ...coarse, seat: -1 }, shims)).toHaveProperty("refused");
    fc.assert(
      fc.property(between(1, 60), between(0.21, 0.4), (seat, layer) => {
        const { shim, residual, printed } = sound(m.shimForSeat({ seat, bed: 0, first: 0.3, layer }, shims));
        expect(shim === 0 || shims.includes(shim)).toBe(true);
        expect(Math.abs(residual)).toBeLessThanOrEqual(0.1 + 1e-6);
        expect(printed + shim - seat).toBeCloseTo(residual, 6);
      }),
      { seed },
    );
  });

  test("candidates: what fits comes first, then the lowest seat, then the fewest washers", () => {
    const question = {
      plane: 24,
      pulley: 16,
      groove: 7,
      flange: 1,
      hub: 7,
      collar: 0,
      bearing: 7,
      stacks: [[0.5, 0.5], [1], [1, 1]],
      lowest: 4,
      highest: 60,
    };
    const found = sound(m.seatCandidates(question));
    expect(found.map(({ hub, washers, seat }) => [hub, washers.length, seat])).toEqual([
      ["down", 1, 4.5],
      ["down", 2, 4.5],
      ["up", 2, 10.5],
      ["up", 1, 11.5],
      ["up", 2, 11.5],
      ["down", 2, 3.5],
    ]);
    expect(found.map(({ lost }) => lost)).toEqual([...Array(5).fill(undefined), "the seat is 0.5 mm too low"]);
    expect(sound(m.seatCandidates({ ...question, highest: 4 })).at(-1)?.lost).toBe("the seat is 7.5 mm too high");
    expect(m.seatCandidates({ ...question, pulley: 17 })).toHaveProperty(
      "refused",
      expect.stringMatching(/measure again$/),
    );
  });

  test("turning a pulley over moves its belt by pulley height less twice the offset", () => {
    fc.assert(
      fc.property(between(6, 12), between(0.5, 2), between(0, 10), between(-0.29, 0.29), (groove, flange, hub, off) => {
        const pulley = hub + 2 * flange + groove + off;
        const seat = sound(
          m.beltSeat.compute({ plane: 30, pulley, groove, flange, hub, washers: 1, collar: 0, bearing: 7 }),
        );
        expect(seat.seatUp - seat.seatDown).toBeCloseTo(pulley - 2 * seat.offsetUp, 9);
      }),
      { seed },
    );
  });
});

describe("stock", () => {
  test("takes the next length up, the last length down, and says when there is none", () => {
    expect(m.nextStock([20, 10, 16], 11)).toBe(16);
    expect(m.nextStock([20, 10, 16], 16.0000001)).toBe(16);
    expect(m.nextStock([20, 10, 16], 20.1)).toBeUndefined();
    expect(m.nextStock([20], Number.NaN)).toBeUndefined();
    expect(m.longestStock([20, 10, 16], 19)).toBe(16);
    expect(m.longestStock([20, 10, 16], 16)).toBe(16);
    expect(m.longestStock([20, 10, 16], 15.9999999)).toBe(16);
    expect(m.longestStock([20, 10, 16], 9)).toBeUndefined();
  });

  test("a slot bolt keeps exactly 3 mm of plastic, and rounds a sideways counterbore to a tenth", () => {
    const bar = { washer: 0.2, diameter: 5, threadStart: 0.5, slotDepth: 6.1 };
    expect(m.slotBolt({ ...bar, plate: 7, stock: [8] })).toEqual({ length: 8, counterbore: 4, floor: 3 });
    expect(m.slotBolt({ ...bar, washer: 1, plate: 8.04, stock: [12] })).toEqual({
      length: 12,
      counterbore: 1.8,
      floor: 6.24,
    });
  });

  test("a slot bolt always engages, never bottoms and leaves its floor", () => {
    const depths = { threadStart: between(0.3, 1.2), slotDepth: between(5, 13), plate: between(3, 20) };
    const bolts = fc.record({
      ...depths,
      diameter: fc.constantFrom(3, 4, 5, 6, 8),
      washer: between(0.5, 2),
      layer: fc.option(between(0.1, 0.3)),
    });
    let found = 0;
    fc.assert(
      fc.property(bolts, ({ layer, ...given }) => {
        const question = { ...given, stock: [8, 10, 12, 16, 20, 25, 30], layer: layer ?? undefined };
        const bolt = m.slotBolt(question);
        if (isRefusal(bolt)) return;
        found++;
        const reach = bolt.length - (given.plate - bolt.counterbore + given.washer);
        expect(reach).toBeGreaterThanOrEqual(given.threadStart + 0.8 * given.diameter - 2e-6);
        expect(reach).toBeLessThanOrEqual(given.slotDepth - 1 + 2e-6);
        expect(bolt.counterbore + bolt.floor).toBeCloseTo(given.plate, 8);
        if (bolt.counterbore > 0) expect(bolt.floor).toBeGreaterThanOrEqual(Math.max(3, 0.6 * given.diameter) - 2e-6);
      }),
      { seed, numRuns: 500 },
    );
    expect(found).toBeGreaterThan(100);
  });
});
