import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { UNCALIBRATED } from "../../src/printing/printer.ts";
import { deriveStage, type Plan, type Stage } from "../../src/stage/index.ts";
import { loadedPlan } from "../support/loaded-plan.ts";
import { widePlan } from "../support/plans.ts";

// common practice: how machines of this kind are laid out.
type Change = Readonly<Record<string, unknown>>;

const whole = (change: Change): Stage => deriveStage(widePlan(change), () => UNCALIBRATED);
const fact = ({ sections }: Stage, key: string): number => {
  const found = sections.flatMap(({ facts }) => facts).find((one) => one.key === key);
  // Of numbers that are none one would be like the other.
  if (found === undefined) throw new Error(`the machine has no ${key}`);
  return found.value;
};
const names = ({ diagnostics }: Stage, level: string) =>
  diagnostics.filter((one) => one.level === level).map(({ name }) => name);

describe("pulleys of three screws that are all alike", () => {
  // Hubs of 9.5 are as long as the two motor pulleys, teeth to teeth with 0.5 mm of air, are apart.
  const pulley = { row: "40 teeth 2 mm", hubLength: 9.5, height: 18.5 };
  const close = [
    { loop: "low", pulley: "20 teeth 2 mm", hub: "down" },
    { loop: "high", pulley: "20 teeth 2 mm", hub: "up", gap: 0.5 },
  ];
  const stage = whole({
    foot: { thrust: "pulley", pulley, hub: "up" },
    screws: { C: { foot: { hub: "down" } } },
    motor: { pulleys: close },
  });

  test("two stand on one level, the third reversed on the same seat: one hub length higher", () => {
    expect(names(stage, "error").filter((name) => name !== "no-stock-loop-within-slide")).toEqual([]);
    const seats = ["a", "b", "c"].map((screw) => fact(stage, `foot-${screw}.seat-over-datum`));
    expect(new Set(seats.map((seat) => seat.toFixed(9))).size).toBe(1);
    expect(fact(stage, "foot-b.plane-over-datum")).toBeCloseTo(fact(stage, "foot-a.plane-over-datum"), 9);
    expect(fact(stage, "foot-c.plane-over-datum") - fact(stage, "foot-a.plane-over-datum")).toBeCloseTo(9.5, 9);
    expect(fact(stage, "loop.high.plane") - fact(stage, "loop.low.plane")).toBeCloseTo(9.5, 9);
  });

  test("and the third not reversed would need another seat, by just that length", () => {
    const alike = whole({ foot: { thrust: "pulley", pulley, hub: "up" }, motor: { pulleys: close } });
    const [one, other] = [stage, alike].map((each) => fact(each, "foot-c.seat-over-datum"));
    expect((other ?? 0) - (one ?? 0)).toBeCloseTo(9.5, 9);
  });
});

describe("two loops on a double pulley of the motor", () => {
  const pulleys = [
    { loop: "low", pulley: "20 teeth 2 mm", hub: "down" },
    { loop: "high", pulley: "20 teeth 2 mm", hub: "up", commonFlange: true },
  ];
  const stage = whole({ motor: { pulleys } });
  const at = (loop: string) => {
    const { x, y, radius } =
      stage.loops.find((one) => one.loop === loop)?.nodes.find(({ kind }) => kind === "motor") ?? {};
    return [x, y, radius];
  };

  test("share its axis and its teeth, wherever one of them slides it, and one flange", () => {
    expect(at("low")).toEqual(at("high"));
    expect(at("low").every((each) => Number.isFinite(each))).toBe(true);
    const [low, high] = stage.pulleys;
    // Groove 7 and the flange of 1 between them.
    expect((high?.plane ?? 0) - (low?.plane ?? 0)).toBeCloseTo(8, 9);
    expect((low?.top ?? 0) - (high?.bottom ?? 0)).toBeCloseTo(1, 9);
    expect(names(stage, "error")).toEqual([]);
  });

  test("turn all screws alike: one ratio, one lift for a step", () => {
    const keys = stage.sections.flatMap(({ facts }) => facts.map(({ key }) => key));
    expect(keys.filter((key) => key.startsWith("drive.ratio"))).toEqual(["drive.ratio"]);
    expect(fact(stage, "drive.ratio")).toBeCloseTo(36 / 20, 9);
  });
});

const FILES = [
  "docs/worked-machine.yaml",
  ...readdirSync("presets/stages").map((name) => join("presets/stages", name)),
];
const HEATED = FILES.map((file) => ({ file, plan: loadedPlan(file).machine.stage.plan })).filter(
  ({ plan }) => plan.plate.heater !== undefined,
);

/** How far a place lies outside the heater, mm, by the nearest point of its outline; below 0 within it. */
function outsideHeater({ plate: { at, heater } }: Plan, [x, y]: readonly [number, number]): number {
  const [cx, cy] = heater?.at ?? at;
  const [a, b] = heater?.size ?? [0, 0];
  const [dx, dy] = [Math.abs(x - cx) - a / 2, Math.abs(y - cy) - b / 2];
  return dx <= 0 && dy <= 0 ? Math.max(dx, dy) : Math.hypot(Math.max(dx, 0), Math.max(dy, 0));
}

describe("the heater", () => {
  test("is there in most of the machines that are shipped", () => {
    expect(HEATED.length).toBeGreaterThanOrEqual(3);
  });

  test.each(HEATED)("of $file is centred by equal margins, with every mount and its bolt outside", ({ file, plan }) => {
    const { stage } = loadedPlan(file).machine;
    const margin = (side: string) => fact(stage, `heater.margin.${side}`);
    expect(margin("left")).toBeCloseTo(margin("right"), 9);
    expect(margin("front")).toBeCloseTo(margin("back"), 9);
    expect(Math.min(margin("left"), margin("front"))).toBeGreaterThan(0);
    for (const [name, { at }] of Object.entries(plan.plate.mounts)) {
      const room = outsideHeater(plan, at);
      // A washer of 15 on an M5 bolt lies under the plate there.
      expect(room, name).toBeGreaterThan(15 / 2);
      expect(fact(stage, `mount.${name}.heater`), name).toBeCloseTo(room - 5.5 / 2, 9);
    }
    const own = stage.diagnostics.map(({ name }) => name);
    for (const name of ["hole-under-heater", "heater-off-centre", "heater-overhangs-plate"])
      expect(own).not.toContain(name);
  });

  test("told off where it is moved aside, and where a mount stands under it", () => {
    const { plate } = widePlan();
    const [x, y] = plate.at;
    expect(names(whole({ plate: { heater: { at: [x + 3, y] } } }), "warning")).toContain("heater-off-centre");
    const under = whole({ plate: { heater: { size: [380, 320] } } });
    expect(names(under, "error")).toContain("hole-under-heater");
  });
});
