import { expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";
import { one } from "../mechanics/printed.ts";
import { dice } from "./random.ts";

type Vector = readonly [number, number, number];

const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const across = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: Vector): Vector => {
  const length = Math.sqrt(dot(a, a));
  return [a[0] / length, a[1] / length, a[2] / length];
};

interface Thread {
  readonly load: number;
  readonly pitchDiameter: number;
  readonly lead: number;
  readonly flank: number;
  readonly friction: number;
}

/**
 * Torque on a nut that carries a load, by statics in space at a point of its flank (axes: outwards, round, up): the
 * flank pushes along its normal, friction acts along the thread against the motion, their upward parts carry the load.
 */
function torque({ load, pitchDiameter, lead, flank, friction }: Thread, up: boolean): number {
  const along = unit([0, Math.PI * pitchDiameter, lead]);
  const sloping = unit([Math.cos((flank * Math.PI) / 180), 0, -Math.sin((flank * Math.PI) / 180)]);
  const normal = unit(across(sloping, along));
  const push: Vector = normal[2] > 0 ? normal : [-normal[0], -normal[1], -normal[2]];
  const sense = up ? -1 : 1;
  const carried = push[2] + sense * friction * along[2];
  const round = push[1] + sense * friction * along[1];
  const force = load / carried;
  return sense * force * round * (pitchDiameter / 2);
}

function random(seed: number, flank: number, count = 80): Thread[] {
  const roll = dice(seed);
  return Array.from({ length: count }, () => {
    const pitchDiameter = roll.between(5, 28);
    const lead = pitchDiameter * roll.between(0.1, 1);
    return { load: roll.between(10, 400), pitchDiameter, lead, flank, friction: roll.between(0.03, 0.3) };
  });
}

// Source of every check in this file: statics in space on the thread's flank.
test("square threads: torque to raise and to lower", () => {
  for (const thread of random(100, 0)) {
    const { raise, lower } = m.screwTorque.compute(thread) as Record<string, number>;
    expect((raise ?? 0) / torque(thread, true)).toBeCloseTo(1, 10);
    expect(Math.abs((lower ?? 0) - torque(thread, false))).toBeLessThan(1e-9 * (raise ?? 0));
  }
});

test("trapezoidal and Acme threads: the handbook's flank, taken along the axis, is on the safe side by under 2 %", () => {
  for (const thread of [...random(101, 15), ...random(102, 14.5)]) {
    const { raise } = m.screwTorque.compute(thread) as Record<string, number>;
    const there = torque(thread, true);
    expect((raise ?? 0) / there).toBeGreaterThan(1 - 1e-9);
    expect((raise ?? 0) / there).toBeLessThan(1.02);
  }
});

test("work: what is put in in one turn is the lift over the efficiency", () => {
  for (const thread of random(103, 0)) {
    const put = 2 * Math.PI * torque(thread, true);
    expect((thread.load * thread.lead) / put).toBeCloseTo(one(m.screwTorque, "efficiency", thread), 10);
  }
});

test("a screw runs down below the critical friction, and not above it", () => {
  for (const thread of random(104, 0)) {
    const critical = one(m.screwTorque, "critical", thread);
    expect(torque({ ...thread, friction: critical * 1.0001 }, false)).toBeGreaterThan(0);
    expect(torque({ ...thread, friction: critical * 0.9999 }, false)).toBeLessThan(0);
  }
  for (const thread of random(105, 15)) {
    const critical = one(m.screwTorque, "critical", thread);
    expect(torque({ ...thread, friction: critical * 1.02 }, false)).toBeGreaterThan(0);
    expect(torque({ ...thread, friction: critical * 0.97 }, false)).toBeLessThan(0);
  }
});

test("nothing raises a load where the flank's own friction holds it: the screw jams", () => {
  const roll = dice(106);
  let jams = 0;
  for (let run = 0; run < 60; run++) {
    const thread = {
      load: 50,
      pitchDiameter: 7,
      lead: roll.between(30, 200),
      flank: 0,
      friction: roll.between(0.1, 0.49),
    };
    const there = torque(thread, true);
    const outcome = m.screwTorque.compute(thread);
    // Past the pole the statics ask for a torque the other way: no push from below carries the load.
    expect(outcome).toMatchObject({ defect: { name: there < 0 ? "screw-jams" : "lead-angle-too-steep" } });
    if (there < 0) jams++;
  }
  expect(jams).toBeGreaterThan(10);
  expect(jams).toBeLessThan(55);
});
