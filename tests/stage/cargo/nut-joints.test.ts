import { describe, expect, test } from "vitest";
import { nutJoints } from "../../../src/stage/cargo/nut-joints.ts";
import { widePlan } from "../../support/plans.ts";

type Change = Readonly<Record<string, unknown>>;

const joints = (change: Change = {}) => {
  const { sections, diagnostics } = nutJoints(widePlan(change));
  const facts = new Map(sections.flatMap(({ facts }) => facts).map(({ key, value }) => [key, value]));
  const told = diagnostics.map(({ path, found, set }) => [path.join("."), found?.value, set]);
  return { facts, told, lines: sections.flatMap(({ lines = [] }) => lines) };
};

describe("where a nut is joined to the stage", () => {
  // By hand: A at y 62, its flange 22 across, the arm's face at y 81: 81 - 62 - 11 = 8, and beside it in height.
  test("is the nearest moving bar, told with the flange's height", () => {
    const { facts, told, lines } = joints();
    expect([facts.get("screw.A.nut-aside"), facts.get("screw.A.nut-height"), told]).toEqual([8, 0, []]);
    expect(lines[0]).toMatch(/^A: the flange, 22 mm across, lies .* and is to be joined to arm-front, 8\.0 mm beside/);
  });

  test("out of reach in height asks for another height of the nuts, which passes", () => {
    const { told } = joints({ travel: { nut: 190 } });
    expect(told).toHaveLength(3);
    const [, nut] = /^travel\.nut: (\S+),/.exec(String(told[0]?.[2])) ?? [];
    expect(joints({ travel: { nut: Number(nut) } }).told).toEqual([]);
    expect(Number(nut)).toBeLessThan(190);
  });

  test("out of reach in plan is told at the screw", () => {
    const far = { bars: { "arm-front": { from: [35.5, 150, 115], to: [724.5, 150, 115] } } };
    const { told, facts } = joints(far);
    // The side arms begin at y 111 and x 65.5: 84.5 and 49 away, less the rim.
    expect(facts.get("screw.A.nut-aside")).toBe(62);
    expect(told.map(([path]) => path)).toEqual(["screws.A.at", "screws.B.at"]);
  });

  test("nothing is told of a stage without bars", () => {
    const still = { moves: false };
    const bars = { "arm-front": still, "arm-back": still, "side-left": still, "side-right": still };
    expect(joints({ bars, carriages: { left: { arms: [] }, right: { arms: [] } } }).told).toEqual([]);
  });
});
