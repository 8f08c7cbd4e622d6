import { describe, expect, test } from "vitest";
import { deriveStage } from "../../../src/stage/index.ts";
import { widePlan } from "../../support/plans.ts";
import { printerWith } from "../../support/printer.ts";

/** The plate covers 170 to 590 and 115 to 445, its heater 230 to 530 and 170 to 390. */
const found = (sensor: object) => {
  const { sections, diagnostics } = deriveStage(widePlan({ plate: { sensor } }), () => printerWith());
  const facts = sections.flatMap((section) => section.facts).filter(({ key }) => key.startsWith("sensor."));
  const told = diagnostics.filter(({ path }) => path[0] === "plate" && path[1] === "sensor");
  return { facts: Object.fromEntries(facts.map(({ key, value }) => [key, value])), told };
};
const names = (sensor: object) => found(sensor).told.map(({ name, level }) => `${level} ${name}`);

// Trade fact: mounts, sensor and bolts live outside the heater's outline. Source: common practice.
describe("the plate's temperature sensor", () => {
  test("outside the heater is listed and nothing is told", () => {
    const { facts, told } = found({ at: [380, 410], diameter: 3, depth: 4 });
    expect(facts).toEqual({ "sensor.edge": 35, "sensor.depth": 4, "sensor.heater": 18.5 });
    expect(told).toEqual([]);
  });

  test("under the heater is an error, near it a warning, and the place that is told passes", () => {
    expect(names({ at: [380, 280] })).toEqual(["error sensor-under-heater"]);
    const [near] = found({ at: [380, 394] }).told;
    expect(near).toMatchObject({ name: "sensor-under-heater", level: "warning", found: { value: 2.4 } });
    const [, x, y] = /^at: \[(\S+), (\S+)\]/.exec(near?.set ?? "") ?? [];
    expect(names({ at: [Number(x), Number(y)] })).toEqual([]);
  });

  test("in or under the heater on purpose is no mistake", () => {
    expect(names({ at: [380, 280], underHeater: true })).toEqual([]);
  });

  test("off the plate, at its edge, and too deep", () => {
    expect(names({ at: [380, 460] })).toEqual(["error hole-near-plate-edge"]);
    expect(names({ at: [380, 441], diameter: 3 })).toEqual(["error hole-near-plate-edge"]);
    expect(names({ at: [380, 440.4], diameter: 3 })).toEqual([]);
    expect(names({ at: [380, 420], depth: 4.6 })).toEqual(["error sensor-hole-too-deep"]);
  });
});
