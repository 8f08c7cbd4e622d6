import { describe, expect, test } from "vitest";
import { UNCALIBRATED } from "../../../src/printing/printer.ts";
import type { Plan } from "../../../src/stage/index.ts";
import { deriveStage } from "../../../src/stage/index.ts";
import { widePlan } from "../../support/plans.ts";

const NAME = "seat-below-lowest-floor";

const lowOnes = (plan: Plan) =>
  deriveStage(plan, () => UNCALIBRATED).diagnostics.filter(({ name, path }) => name === NAME && path[1] === "A");

describe("a foot of a machine whose seat comes near the floor", () => {
  // At -13.5 the usual ring lies under the pulley, at -14.5 none: it would put the seat under the floor.
  test.each([
    [-13.5, ""],
    [-14.5, " and screws.A.foot.washers: []"],
  ])("with the motor's plate at %d the warning names its own limit, and a cure of the plan", (plateTop, rings) => {
    const [low, ...more] = lowOnes(widePlan({ motor: { plateTop } }));
    expect([low?.level, more]).toEqual(["warning", []]);
    expect(low?.found?.value).toBeCloseTo(-22.5, 9);
    expect(low?.limit?.value).toBeCloseTo(-22, 9);
    expect(low?.says).toBe(
      "foot-a: the seat comes to -22.50 mm; the floor allows -23.00 mm, " +
        "and the last 1 mm over that, to -22.00 mm, is a reserve",
    );
    expect(low?.set).toMatch(/^motor\.plateTop: 0\.50 mm higher/);
    expect(low?.set).not.toContain("beltPlane");
    expect(low?.set.split(", or ")[0]).toBe(`motor.plateTop: 0.50 mm higher${rings}`);
  });

  test.each([
    [-13, {}],
    [-14, { screws: { A: { foot: { washers: [] } } } }],
  ])("raised to %d as the cure says, it passes", (plateTop, rings) => {
    expect(lowOnes(widePlan({ motor: { plateTop }, ...rings }))).toEqual([]);
  });
});
