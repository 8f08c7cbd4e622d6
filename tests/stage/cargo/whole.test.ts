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
});
