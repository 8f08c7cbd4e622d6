import { describe, expect, it } from "vitest";
import { deriveStage } from "../../../src/stage/index.ts";
import { widePlan } from "../../support/plans.ts";
import { printerWith } from "../../support/printer.ts";
import { fact } from "./stages.ts";

describe("the whole machine", () => {
  const stage = deriveStage(widePlan(), () => printerWith());

  it("has no error, a part for each foot, mount and carriage, and each fact once", () => {
    expect(stage.diagnostics.filter(({ level }) => level === "error")).toEqual([]);
    const families = stage.parts.map(({ family }) => family);
    for (const family of ["screw-foot", "tram-mount"])
      expect(families.filter((each) => each === family)).toHaveLength(3);
    expect(families.filter((each) => each === "wheel-plate")).toHaveLength(2);
    const keys = stage.sections.flatMap(({ facts }) => facts.map(({ key }) => key));
    expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([]);
  });

  it("measures each column from the seat of its foot", () => {
    for (const { screw, seatOverDatum } of stage.feet) {
      const { length } = fact(stage, `screw.${screw}.column`).from?.inputs ?? {};
      expect(length).toBeCloseTo(125 + 220 - seatOverDatum, 9);
    }
    expect(stage.feet).toHaveLength(3);
  });

  it("leaves the tip below the bearing out of what stands over the nut, as the drawn screw has it", () => {
    // The screw starts 5 mm below the seat; its nut is at 125 at the bottom of the travel and at 345 at the top.
    const seat = stage.feet.find(({ screw }) => screw === "A")?.seatOverDatum ?? Number.NaN;
    const least = 345 + 10 - (seat - 5);
    expect(fact(stage, "screw.A.whirl-over").from?.inputs.length).toBeCloseTo(seat - 5 + 420 - 125, 9);
    const short = (length: number) =>
      deriveStage(widePlan({ screws: { A: { length } } }), () => printerWith()).diagnostics.filter(
        ({ name }) => name === "nut-runs-off-screw",
      ).length;
    expect([short(least - 0.1), short(least + 0.1)]).toEqual([1, 0]);
  });
});
