import { describe, expect, it } from "vitest";
import { amount, fact, wide } from "./stages.ts";

const LEAD_8 = {
  foot: { pulley: "40 teeth 2 mm" },
  screws: { A: { screw: "Tr8x8(P2)" }, B: { screw: "Tr8x8(P2)" }, C: { screw: "Tr8x8(P2)" } },
};

describe("ratio and resolution", () => {
  const stage = wide(LEAD_8);

  it("40 to 20 teeth, lead 8, 1.8 deg, 1/16: 0.02 mm a full step, 800 steps a mm, 0.2 mm a tooth (own arithmetic)", () => {
    expect(amount(stage, "drive.ratio")).toBe(2);
    expect(amount(stage, "drive.per-step")).toBeCloseTo(0.02, 12);
    expect(amount(stage, "drive.steps-per-mm")).toBeCloseTo(800, 9);
    expect(amount(stage, "drive.per-tooth")).toBeCloseTo(0.2, 12);
  });

  it("finds 0.10, 0.12, 0.16 and 0.20 on whole full steps and 0.15 off them", () => {
    const lines = wide({ ...LEAD_8, layers: [0.1, 0.12, 0.15, 0.16, 0.2] });
    const off = lines.diagnostics.filter(({ name }) => name === "layer-heights-off-full-steps");
    expect(off.map(({ path }) => path)).toEqual([["layers", 2]]);
    expect(off[0]?.set).toMatch(/0\.1[46] mm/);
    const listed = stage.sections.find(({ title }) => title === "Drive")?.lines?.[0] ?? "";
    for (const height of [0.06, 0.1, 0.12, 0.16, 0.2, 0.32]) expect(listed).toMatch(new RegExp(`[ ,]${height}(,|$)`));
    expect(listed).not.toContain("0.15");
  });

  it("turns the motor at 75 rpm for 5 mm/s, 4000 steps a second, and passes 2.2 m of belt over 220 mm", () => {
    // 5 mm/s on a lead of 8 is 37.5 rpm of the screw; 220/8 turns of 80 mm each.
    expect(amount(stage, "drive.screw-speed")).toBeCloseTo(37.5, 9);
    expect(amount(stage, "drive.motor-speed")).toBeCloseTo(75, 9);
    expect(amount(stage, "drive.step-rate")).toBeCloseTo(4000, 6);
    expect(amount(stage, "drive.belt-travel")).toBeCloseTo(2200, 6);
  });

  it("tilts by lead over teeth on the height of the triangle when a tooth is jumped", () => {
    // The back screw stands 436 mm behind the line of the others.
    const tilt = (Math.atan(0.2 / 436) * 180) / Math.PI;
    expect(amount(stage, "screw.C.slip-tilt")).toBeCloseTo(tilt, 9);
  });

  it("takes the pulley of one screw from its own foot", () => {
    const odd = wide({
      ...LEAD_8,
      screws: { ...LEAD_8.screws, B: { screw: "Tr8x8(P2)", foot: { pulley: "36 teeth 2 mm" } } },
    });
    const wrong = odd.diagnostics.filter(({ name }) => name === "screws-not-in-step");
    expect(wrong.map(({ path }) => path[1])).toEqual(["B"]);
    const both = wide({
      foot: { pulley: "40 teeth 2 mm" },
      screws: {
        A: { screw: "Tr8x8(P2)" },
        B: { screw: "Tr8x4(P2)", foot: { pulley: "20 teeth 2 mm" } },
        C: { screw: "Tr8x8(P2)" },
      },
    });
    expect(both.diagnostics.filter(({ name }) => name === "screws-not-in-step")).toEqual([]);
  });
});

describe("torque of the motor", () => {
  it("sums the raising torques over ratio and belt: 96.28 N mm for 50 N at 0.15 (own arithmetic)", () => {
    const stage = wide(LEAD_8);
    const weight = amount(stage, "stage.weight") + 2 * 9.80665;
    // Torque is in proportion to load, so the sum is that of the whole weight on one screw.
    const raise = (96.28 * weight) / 50;
    expect(amount(stage, "motor.lift")).toBeCloseTo(raise / (1000 * 2 * 0.95), 4);
    expect(amount(stage, "motor.margin")).toBeCloseTo(0.3 / (raise / 1900), 1);
    // It runs down: 39.0 N mm for 50 N at a friction of 0.10.
    const grip = 0.1 / Math.cos(Math.PI / 12);
    const lower = (25 * 7 * (grip * Math.PI * 7 - 8)) / (Math.PI * 7 + grip * 8);
    expect(amount(stage, "motor.back")).toBeCloseTo((-lower * weight) / 50 / 2000, 6);
  });

  it("is no more on four screws than on one that carries all, whatever their bounds (own arithmetic)", () => {
    const D = { at: [610, 498], length: 420, bar: "back" };
    const loops = { high: { nodes: ["motor", "C", "D"] } };
    const stage = wide({ screws: { B: { at: [610, 62] }, C: { at: [150, 498] }, D }, loops });
    const weight = amount(stage, "stage.weight") + 2 * 9.80665;
    // Tr8x2: 7 mm pitch diameter, flank angle 15 deg, friction 0.15, 36 to 20 teeth, one belt at 0.95.
    const [grip, round] = [0.15 / Math.cos(Math.PI / 12), Math.PI * 7];
    const raise = (((weight * 7) / 2) * (2 + grip * round)) / (round - grip * 2);
    expect(amount(stage, "motor.lift")).toBeCloseTo(raise / (1000 * 1.8 * 0.95), 9);
  });

  it("is held against twice the need", () => {
    expect(fact(wide(), "motor.margin").limit).toEqual({ value: 2, kind: "at least" });
  });
});
