import { describe, expect, test } from "vitest";
import { ALLOWED, type Allowed } from "../../../src/build/clash/allowed.ts";
import { clashesOf } from "../../../src/build/clash/clashes.ts";
import { assemblyFaults } from "../../../src/build/clash/index.ts";
import type { Diagnostic } from "../../../src/core/diagnostic.ts";
import { UNCALIBRATED } from "../../../src/printing/printer.ts";
import { bodiesOf } from "../../../src/stage/bodies/index.ts";
import { deriveStage, type Stage } from "../../../src/stage/index.ts";
import type { PlacedPart } from "../../../src/stage/machine.ts";
import { handPlan } from "../../support/hand-plan.ts";
import { handStage, printerOf } from "../../support/hand-stage.ts";
import { kernel } from "../../support/kernel.ts";
import { widePlan } from "../../support/plans.ts";
import { laidDifferently } from "../../support/turned-stage.ts";

/** Pairs that only touch in the wide machine: its bearings are no larger than their pockets, its keys only lie in. */
const HARD: readonly string[] = ["bearing,part"];

const faultsOf = (stage: Stage): Diagnostic[] => assemblyFaults(stage, printerOf, kernel);
const briefly = (stage: Stage) => faultsOf(stage).map(({ name, level, path }) => [name, level, path.join(".")]);

/** Bars are changed in the plan alone: nothing else of a machine put together by hand follows them. */
function withBars(bars: Readonly<Record<string, unknown>>): Stage {
  const stage = handStage();
  return { ...stage, plan: { ...stage.plan, bars: handPlan({ bars }).bars } };
}

function withFoot(screw: string, move: (part: PlacedPart) => PlacedPart): Stage {
  const stage = handStage();
  const feet = stage.feet.map((foot) => (foot.screw === screw ? { ...foot, part: move(foot.part) } : foot));
  const parts = stage.parts.map((part) => feet.find((foot) => foot.part.name === part.name)?.part ?? part);
  return { ...stage, feet, parts };
}

const shifted =
  (dx: number, dy: number) =>
  (part: PlacedPart): PlacedPart => {
    const [x, y, z] = part.placement.origin;
    return { ...part, placement: { ...part.placement, origin: [x + dx, y + dy, z] } };
  };

/** The wide machine as it is derived: it has an idler. */
const derived = () => deriveStage(widePlan(), () => UNCALIBRATED);

describe("a whole machine", () => {
  const stage = derived();
  const bodies = bodiesOf(stage, () => UNCALIBRATED);
  const of = (table: readonly Allowed[]) =>
    kernel.assemble((hall) => clashesOf(bodies, stage.plan.travel.lift, hall, table));

  test("has no clash with the whole table", () => {
    expect(of(ALLOWED)).toEqual([]);
  });

  test("has the heads of the motor's screws in the way of an idler that stands on one of them", () => {
    // NEMA 17 has its screws 15.5 mm to both sides of the shaft (nema-ics-16); the motor stands near [380, 400].
    const moved = deriveStage(widePlan({ idlers: { press: { at: [400, 384] } } }), () => UNCALIBRATED);
    const found = assemblyFaults(moved, () => UNCALIBRATED, kernel).map(({ says }) => says);
    expect(found.some((says) => /motor screw \d and axle of idler press stand in one another/.test(says))).toBe(true);
  });

  test.each(ALLOWED.filter(({ kinds }) => !HARD.includes(kinds.join())))(
    "needs the entry for $kinds: without it there is a clash of such two",
    (entry) => {
      const found = of(ALLOWED.filter((one) => one !== entry));
      expect(found.length).toBeGreaterThan(0);
      for (const { first, second } of found) expect([...entry.kinds].sort()).toEqual([first.kind, second.kind].sort());
    },
  );

  test("that is sound has no clash and no gap too small", () => {
    expect(faultsOf(handStage())).toEqual([]);
  });

  test("with its motor pushed into a screw is told so, with both names, place and depth", () => {
    const stage = handStage();
    // The motor is 42.3 wide, so its side then lies 20.15 mm past the middle of the screw.
    const loops = stage.loops.map((loop) => ({
      ...loop,
      nodes: loop.nodes.map((node) => (node.name === "motor" ? { ...node, x: 380, y: 499 } : node)),
    }));
    const plan = { ...stage.plan, motor: { ...stage.plan.motor, at: [380, 499] as [number, number] } };
    const faults = faultsOf({ ...stage, plan, loops });
    const clash = faults.find(({ says }) => says.startsWith("screw C and motor ") && !says.includes("pulley"));
    expect(clash).toMatchObject({ name: "bodies-clash", level: "error", path: ["screws", "C"] });
    expect(clash?.says).toMatch(
      /^screw C and motor stand in one another at the bottom of the travel: \d+\.\d\d mm deep/,
    );
    expect(clash?.set).toMatch(/^screws\.C or motor: \d+\.\d mm or more farther apart along [xyz]$/);
  });

  test("with a belt through a post is told which, where and how deep", () => {
    const y = 62 - 36 / Math.PI;
    const [fault, ...others] = faultsOf(
      withBars({ stray: { bar: "20x20 slot 6", from: [300, y, 0], to: [300, y, 90] } }),
    );
    expect(others).toEqual([]);
    // The belt is 1.38 thick and 6 wide, the post 20 wide.
    expect(fault?.says).toMatch(
      /^bar stray and belt low stand in one another .*: 1\.38 mm deep at x 300\.0, y 50\.\d, z 22\.5/,
    );
    expect(fault?.says).toContain("a box of 20.00 x 1.38 x 6.00 mm, 166 mm3");
    expect(fault?.path).toEqual(["bars", "stray"]);
    expect(fault?.found).toEqual({ value: expect.closeTo(1.38, 6), unit: "mm" });
  });

  test("with a foot through its bar is told so; its key alone in the slot is not", () => {
    const faults = faultsOf(withFoot("A", shifted(0, -3)));
    const clash = faults.find(({ says }) => says.startsWith("bar front and foot-a"));
    expect(clash?.path).toEqual(["bars", "front"]);
    // The rib of 1.2 mm that stands in the slot does not count.
    expect(clash?.found?.value).toBeCloseTo(3, 6);
  });

  test("whose arm meets a beam half way up and at the top is told at which height", () => {
    const beam = (z: number) => withBars({ beam: { bar: "20x20 slot 6", from: [380, 100, z], to: [380, 160, z] } });
    // An arm 30 high stands at 115, and rises by 220.
    const at = (z: number) => faultsOf(beam(z)).map(({ says }) => says.split(":")[0]);
    expect(at(115 + 110)).toContain("bar arm-front and bar beam stand in one another at the middle of the travel");
    expect(at(115 + 220)).toContain("bar arm-front and bar beam stand in one another at the top of the travel");
    expect(at(500)).toEqual([]);
  });

  test("whose stage comes down to 2 mm over a pulley is told so", () => {
    const low = withBars({ low: { bar: "20x20 slot 6", from: [150, 62, 32], to: [300, 62, 32], moves: true } });
    const names = briefly(low).map(([name]) => name);
    expect(names).toContain("bodies-clash");
    // The pulley of A ends at 27: hub down, 17 high from 10.
    const near = withBars({ low: { bar: "20x20 slot 6", from: [157, 62, 39], to: [300, 62, 39], moves: true } });
    expect(briefly(near)).toContainEqual(["stage-meets-foot", "error", "bars.low"]);
  });

  test("whose belts are too close is told so once, by the arithmetic or by its bodies", () => {
    const pulleys = [
      { loop: "low", pulley: "20 teeth 2 mm", hub: "down" },
      { loop: "high", pulley: "20 teeth 2 mm", hub: "up", gap: 0, commonFlange: true },
    ];
    const stage = handStage({ plan: { motor: { pulleys }, loops: { low: { width: 6.8 }, high: { width: 6.8 } } } });
    const close = ["belts-too-close", "warning", "loops.low"];
    // Planes 8 mm apart.
    expect(briefly(stage)).toContainEqual(close);
    expect(faultsOf(stage).find(({ name }) => name === "belts-too-close")?.says).toBe(
      "belt low and belt high leave 1.20 mm of air between them, under 2 mm",
    );
    const told = (says: string): Diagnostic[] => [
      { name: "belts-too-close", level: "warning", path: ["loops", "low"], says, why: "", set: "" },
    ];
    expect(briefly({ ...stage, diagnostics: told("low and high pass with 1.2 mm of air") })).not.toContainEqual(close);
    expect(briefly({ ...stage, diagnostics: told("low and third pass with 1.2 mm of air") })).toContainEqual(close);
  });

  test("is the same however it is turned and mirrored: same clashes, as deep and as large", () => {
    const y = 62 - 36 / Math.PI;
    const faulty = withBars({ stray: { bar: "20x20 slot 6", from: [300, y, 0], to: [300, y, 90] } });
    const feet = withFoot("C", shifted(4, 2));
    const found = (stage: Stage) =>
      kernel
        .assemble((hall) => clashesOf(bodiesOf(stage, printerOf), stage.plan.travel.lift, hall))
        .map(({ first, second, depth, volume, height }) => ({
          pair: `${first.name}, ${second.name}`,
          depth,
          volume,
          height,
        }));
    for (const stage of [faulty, feet]) {
      const wanted = found(stage);
      expect(wanted.length).toBeGreaterThan(0);
      for (const [quarters, mirror] of [
        [1, false],
        [2, true],
        [3, true],
      ] as const) {
        const others = found(laidDifferently(stage, quarters, mirror));
        expect(others.map(({ pair, height }) => [pair, height])).toEqual(wanted.map((one) => [one.pair, one.height]));
        for (const [index, { depth, volume }] of others.entries()) {
          expect(depth).toBeCloseTo(wanted[index]?.depth ?? 0, 1);
          expect(Math.abs(volume / (wanted[index]?.volume ?? 0) - 1)).toBeLessThan(0.05);
        }
      }
    }
  });

  test("that is sound stays so however it is turned and mirrored", () => {
    for (const quarters of [0, 1, 2, 3] as const) {
      expect(faultsOf(laidDifferently(handStage(), quarters, quarters % 2 === 0))).toEqual([]);
    }
  });
});
