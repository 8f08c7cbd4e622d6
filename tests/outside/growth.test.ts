import { expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";
import { one } from "../mechanics/printed.ts";
import { dice } from "./random.ts";

/** Grows a bar piece by piece and kelvin by kelvin, each piece from the length it has by then. */
function grown(length: number, expansion: number, warming: number): number {
  const [pieces, kelvins] = [50, 200];
  const lengths = Array.from({ length: pieces }, () => length / pieces);
  for (let kelvin = 0; kelvin < kelvins; kelvin++) {
    for (let piece = 0; piece < pieces; piece++) {
      lengths[piece] = (lengths[piece] ?? 0) * (1 + (expansion / 1e6) * (warming / kelvins));
    }
  }
  return lengths.reduce((sum, each) => sum + each, 0) - length;
}

// Source of the first three checks: growth summed along the bar, compounded as it warms. The formula leaves the
// compounding out, which at 200 K and 24e-6 is a quarter of a per cent.
const LINEAR = 0.0026;

test("growth of a bar", () => {
  const roll = dice(90);
  for (let run = 0; run < 60; run++) {
    const [length, expansion, warming] = [roll.between(20, 900), roll.between(3, 24), roll.between(-200, 200)];
    const there = grown(length, expansion, warming);
    const growth = one(m.thermalGrowth, "growth", { expansion, length, warming });
    expect(Math.abs(growth - there)).toBeLessThan(LINEAR * Math.abs(there));
    const cold = grown(length, expansion, warming / 1000);
    expect(one(m.thermalGrowth, "growth", { expansion, length, warming: warming / 1000 }) / cold).toBeCloseTo(1, 5);
  }
});

test("shift of a mount: summed along any way from the fixed mount, less that of the bars beneath", () => {
  const roll = dice(91);
  for (let run = 0; run < 60; run++) {
    const [plate, frame] = [roll.between(8, 24), roll.between(8, 24)];
    const [plateWarming, frameWarming] = [roll.between(10, 150), roll.between(0, 20)];
    const target = { x: roll.between(-400, 400), y: roll.between(-400, 400) };
    const corner = { x: roll.between(-400, 400), y: roll.between(-400, 400) };
    const legs = [
      { dx: corner.x, dy: corner.y },
      { dx: target.x - corner.x, dy: target.y - corner.y },
    ];
    let [shiftX, shiftY] = [0, 0];
    for (const { dx, dy } of legs) {
      const length = Math.hypot(dx, dy);
      const longer = grown(length, plate, plateWarming) - grown(length, frame, frameWarming);
      shiftX += (longer * dx) / length;
      shiftY += (longer * dy) / length;
    }
    const { growth, direction } = m.growthVector.compute({
      ...{ plate, plateWarming, frame, frameWarming },
      ...target,
    }) as Record<string, number>;
    const outward = (shiftX * target.x + shiftY * target.y) / Math.hypot(target.x, target.y);
    // Compounding of both parts, of which the difference may be small.
    const parts = ((plate * plateWarming + frame * frameWarming) / 1e6) * Math.hypot(target.x, target.y);
    expect(Math.abs((growth ?? 0) - outward)).toBeLessThan(LINEAR * parts);
    const sideways = Math.abs(shiftX * target.y - shiftY * target.x) / Math.hypot(target.x, target.y);
    expect(sideways).toBeLessThan(1e-9 * Math.abs(outward) + 1e-12);
    expect(Math.cos(((direction ?? 0) * Math.PI) / 180) * Math.hypot(target.x, target.y)).toBeCloseTo(target.x, 8);
    expect(Math.sin(((direction ?? 0) * Math.PI) / 180) * Math.hypot(target.x, target.y)).toBeCloseTo(target.y, 8);
  }
});

test("float of a screw against its frame", () => {
  const roll = dice(92);
  for (let run = 0; run < 40; run++) {
    const [frame, screw] = [roll.between(8, 24), roll.between(8, 24)];
    const [length, warming] = [roll.between(100, 900), roll.between(5, 60)];
    const there = Math.abs(grown(length, frame, warming) - grown(length, screw, warming));
    const difference = one(m.screwFloat, "difference", { frame, screw, length, warming });
    expect(Math.abs(difference - there)).toBeLessThan(2e-3 * there + 1e-12);
  }
});

// Source: the circular arc through both mounts, its half angle searched so that it is as long as the plate has grown.
test("bow of a plate that cannot grow", () => {
  const roll = dice(93);
  for (let run = 0; run < 60; run++) {
    const length = roll.between(150, 600);
    const growth = length * roll.between(1e-4, 1 / 50);
    let [low, high] = [1e-6, Math.PI / 2];
    for (let halving = 0; halving < 80; halving++) {
      const half = (low + high) / 2;
      if ((length * half) / Math.sin(half) < length + growth) low = half;
      else high = half;
    }
    const there = (length / 2) * Math.tan(low / 2);
    expect(Math.abs(one(m.pinnedBow, "bow", { length, growth }) / there - 1)).toBeLessThan(0.01);
  }
});
