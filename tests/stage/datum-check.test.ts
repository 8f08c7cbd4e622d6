import { describe, expect, test } from "vitest";
import type { Stage } from "../../src/stage/index.ts";
import type { PlacedPart } from "../../src/stage/machine.ts";
import { datumFaults, SOUND } from "../support/datum-check.ts";
import { handPlan } from "../support/hand-plan.ts";
import { type HandChanges, handStage, printerOf } from "../support/hand-stage.ts";

const faultsOf = (stage: Stage) => datumFaults(stage, printerOf);
const changed = (changes: HandChanges) => faultsOf(handStage(changes));

/** The belt from A to B runs at this y: their pulleys have 36 teeth of 2 mm. */
const FRONT_SPAN = 62 - 36 / Math.PI;

function withPost(x: number, y: number): Stage {
  const { bars } = handPlan({ bars: { stray: { bar: "20x20 slot 6", from: [x, y, 0], to: [x, y, 200] } } });
  const stage = handStage();
  return { ...stage, plan: { ...stage.plan, bars } };
}

function withPart(name: string, change: (part: PlacedPart) => PlacedPart): Stage {
  const stage = handStage();
  return { ...stage, parts: stage.parts.map((part) => (part.name === name ? change(part) : part)) };
}

/** The common pulleys of the motor tooth end to tooth end, as close as a double pulley allows: 8 mm. */
const DOUBLE = {
  motor: {
    pulleys: [
      { loop: "low", pulley: "20 teeth 2 mm", hub: "down" },
      { loop: "high", pulley: "20 teeth 2 mm", hub: "up", gap: 0, commonFlange: true },
    ],
  },
};

describe("the check from placed datums alone", () => {
  test("finds nothing wrong with a sound machine", () => {
    expect(faultsOf(handStage())).toEqual([]);
  });

  test("finds a seat that is not where it is said to be", () => {
    const stage = handStage();
    const feet = stage.feet.map((foot) => (foot.screw === "B" ? { ...foot, seat: foot.seat + 0.3 } : foot));
    expect(faultsOf({ ...stage, feet })).toEqual([
      expect.stringMatching(/^belt at B: at 22\.8/),
      expect.stringMatching(/^seat of B/),
    ]);
  });

  test("finds a shim that was forgotten in the stack", () => {
    const stage = handStage();
    const feet = stage.feet.map((foot) => (foot.screw === "C" ? { ...foot, shim: 0.5 } : foot));
    expect(faultsOf({ ...stage, feet }).some((fault) => fault.startsWith("belt at C: at 33"))).toBe(true);
  });

  test("finds a motor pulley whose plane does not add up", () => {
    const stage = handStage();
    const pulleys = stage.pulleys.map((one) => (one.loop === "high" ? { ...one, plane: one.plane + 0.2 } : one));
    expect(faultsOf({ ...stage, pulleys })).toEqual([expect.stringMatching(/^motor pulley of high: at 32\.5, said/)]);
  });

  test("finds levels that flanges 7 wide no longer guide for a belt 6 wide: 0.5 mm", () => {
    expect(changed({ feet: { A: { beltPlane: 22.95 } } })).toEqual([]);
    expect(changed({ feet: { A: { beltPlane: 23.1 } } })).toEqual(["belt low: levels 0.600 apart, flanges guide 0.5"]);
  });

  test("finds a short span that climbs by more than a quarter of a degree", () => {
    const [fault, ...others] = changed({ feet: { C: { beltPlane: 32.98 } } });
    expect(fault).toMatch(/^belt high: 0\.28\d deg from motor to C/);
    expect(others).toHaveLength(1);
  });

  test("finds belts that lie too close over each other", () => {
    const wide = { ...DOUBLE, loops: { low: { width: 7.4 }, high: { width: 7.4 } } };
    expect(changed({ plan: DOUBLE })).toEqual([]);
    expect(changed({ plan: wide })).toContain("belts low and high: 0.600 mm of air");
  });

  test("finds a belt too near a flange of the other loop", () => {
    const wide = { ...DOUBLE, loops: { low: { width: 6.4 } } };
    expect(changed({ plan: wide })).toContain("belt low at the motor pulley of high: 0.300 mm of air");
  });

  test("finds a span that runs through a screw of another loop", () => {
    const { screws } = handPlan({ screws: { D: { at: [300, FRONT_SPAN + 4], length: 300, bar: "front" } } });
    const stage = handStage();
    const faults = faultsOf({ ...stage, plan: { ...stage.plan, screws } });
    // 4 mm off the pitch line, less 4 mm of screw and 1.004 mm of belt.
    expect(faults).toEqual([expect.stringMatching(/^belt low at screw D: -1\.00/)]);
  });

  test("finds a span that runs through a post, and none that passes it", () => {
    expect(faultsOf(withPost(380, FRONT_SPAN))).toEqual([expect.stringMatching(/^belt low at bar stray: -/)]);
    expect(faultsOf(withPost(380, FRONT_SPAN + 12))).toEqual([]);
  });

  test("finds a bar in the room of a pulley", () => {
    expect(faultsOf(withPost(150, 62 + 13.5 + 10 + 0.5))).toContain("bar stray in the room of the pulley of A");
  });

  test("finds a printed part in the room of a pulley, and in that of a belt", () => {
    const at = (x: number, y: number, z: number) =>
      faultsOf(withPart("mount-one", (part) => ({ ...part, placement: { origin: [x, y, z], angle: 0 } })));
    expect(at(150, 62, 24)).toContain("mount-one in the room of the pulley of A");
    expect(at(380, FRONT_SPAN, 24)).toEqual(["mount-one in the room of belt low"]);
    expect(at(380, FRONT_SPAN, 60)).toEqual([]);
  });

  test("holds a machine to other limits when it is asked to", () => {
    const [fault] = datumFaults(handStage(), printerOf, { ...SOUND, belts: 5 });
    expect(fault).toBe("belts low and high: 4.000 mm of air");
  });
});
