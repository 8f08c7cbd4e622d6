import { expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";
import { one } from "../mechanics/printed.ts";
import { dice } from "./random.ts";
import { reach, type State } from "./step.ts";

interface Wire {
  readonly wire: number;
  readonly meanDiameter: number;
  readonly activeCoils: number;
  /** Rise of one coil, mm. */
  readonly pitch: number;
  readonly shearModulus: number;
  /** Leave out for a wire that only twists. */
  readonly modulus?: number;
}

/** Polar second moment of a round wire, mm4, summed over rings. */
function polarMoment(wire: number): number {
  const rings = 4000;
  const width = wire / 2 / rings;
  let sum = 0;
  for (let ring = 0; ring < rings; ring++) {
    const radius = (ring + 0.5) * width;
    sum += 2 * Math.PI * radius * width * radius ** 2;
  }
  return sum;
}

/**
 * Rate of a helical spring from its strain energy: the moment of an axial force is taken at every piece of the wire,
 * split into twist along the wire and bending across it, and the energy of both is summed (Castigliano's theorem).
 */
function rateByEnergy({ wire, meanDiameter, activeCoils, pitch, shearModulus, modulus }: Wire): number {
  const [radius, polar] = [meanDiameter / 2, polarMoment(wire)];
  const pieces = Math.ceil(activeCoils * 400);
  const at = (piece: number) => {
    const angle = (2 * Math.PI * activeCoils * piece) / pieces;
    return [radius * Math.cos(angle), radius * Math.sin(angle), (pitch * angle) / (2 * Math.PI)] as const;
  };
  let energy = 0;
  for (let piece = 0; piece < pieces; piece++) {
    const [from, middle, to] = [at(piece), at(piece + 0.5), at(piece + 1)];
    const [tx, ty, tz] = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
    const length = Math.hypot(tx, ty, tz);
    // The moment of 1 N along z about the middle of the piece.
    const [mx, my] = [-middle[1], middle[0]];
    const twist = (mx * tx + my * ty) / length;
    const bend = mx * mx + my * my - twist * twist;
    energy += (twist ** 2 / (2 * shearModulus * polar)) * length;
    if (modulus !== undefined) energy += (bend / (2 * modulus * (polar / 2))) * length;
  }
  return 1 / (2 * energy);
}

function random(seed: number, count: number): Wire[] {
  const roll = dice(seed);
  return Array.from({ length: count }, () => {
    const wire = roll.between(0.4, 2.5);
    const meanDiameter = wire * roll.between(4, 15);
    const activeCoils = roll.between(2, 12);
    return { wire, meanDiameter, activeCoils, pitch: meanDiameter / 5, shearModulus: roll.between(70000, 82000) };
  });
}

// Source: strain energy along the wire, Castigliano's theorem.
test("rate: the handbook's is that of a flat helix that only twists", () => {
  for (const spring of random(80, 40)) {
    const there = rateByEnergy({ ...spring, pitch: 0 });
    expect(one(m.springRate, "rate", spring) / there).toBeCloseTo(1, 4);
  }
});

// Source: the same, with the coils' slope and the bending that comes of it.
test("rate: with a real pitch, twist and bending together, it is within 1 %", () => {
  for (const spring of random(81, 40)) {
    const there = rateByEnergy({ ...spring, modulus: 206000 });
    expect(Math.abs(one(m.springRate, "rate", spring) / there - 1)).toBeLessThan(0.01);
  }
});

// Source: the torsion of a curved round bar, Göhner's series 1 + 5/(4 C) + 7/(8 C^2) + 1/C^3 (shigley, from memory).
test("stress: the factor for curvature is within 2 % of the series of the curved bar", () => {
  for (const { wire, meanDiameter } of random(82, 40)) {
    const force = 20;
    // The shear of the plain twisted bar, its moment arm summed as above.
    const plain = (force * (meanDiameter / 2) * (wire / 2)) / polarMoment(wire);
    const c = meanDiameter / wire;
    const there = plain * (1 + 5 / (4 * c) + 7 / (8 * c ** 2) + 1 / c ** 3);
    expect(Math.abs(one(m.springStress, "stress", { force, wire, meanDiameter }) / there - 1)).toBeLessThan(0.02);
  }
});

// Source: Newton's law, stepped through a quarter of an oscillation.
test("the note of a plate on its springs", () => {
  const roll = dice(83);
  for (let run = 0; run < 30; run++) {
    const [rate, mass] = [roll.between(2, 60), roll.between(0.5, 8)];
    const rates = ([place = 0, speed = 0]: State): State => [speed, (-1000 * rate * place) / mass];
    const frequency = one(m.plateHold, "frequency", { friction: 0.2, force: 100, push: 5, rate, mass });
    const quarter = reach(rates, [1, 0], 0, 1 / frequency / 2000);
    expect(1 / (4 * quarter.time) / frequency).toBeCloseTo(1, 7);
  }
});

// Source: the shape of a swinging string, T y'' + mu w^2 y = 0, shot from one end; its first note is where it comes back.
test("the note of a plucked span", () => {
  const roll = dice(84);
  for (let run = 0; run < 30; run++) {
    const [tension, mass, span] = [roll.between(3, 60), roll.between(0.004, 0.02), roll.between(60, 600)];
    const frequency = one(m.pluckFrequency, "frequency", { tension, mass, span });
    const turns = 2 * Math.PI * frequency;
    const shape = ([place = 0, slope = 0]: State): State => [slope, (-mass * turns ** 2 * place) / tension];
    const start: State = [1e-9, 1];
    expect((1000 * reach(shape, start, 0, span / 1000 / 997).time) / span).toBeCloseTo(1, 5);
  }
});
