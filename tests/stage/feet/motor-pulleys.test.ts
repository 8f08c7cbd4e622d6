import { describe, expect, test } from "vitest";
import { motorPulleys } from "../../../src/stage/feet/motor-pulleys.ts";
import { widePlan } from "../../support/plans.ts";

type Change = Readonly<Record<string, unknown>>;

const LONG = { row: "NEMA 17", shaftLength: 60 };

function stack(pulleys: readonly Change[], motor: Change = {}) {
  const loops = ["low", "high"];
  const listed = pulleys.map((one, index) => ({ loop: loops[index], pulley: "20 teeth 2 mm", ...one }));
  return motorPulleys(widePlan({ motor: { motor: LONG, pulleys: listed, ...motor } }));
}

const planes = (pulleys: readonly Change[], motor: Change = {}) =>
  stack(pulleys, motor).pulleys.map((one) => one.plane);
const found = (outcome: ReturnType<typeof stack>) =>
  outcome.diagnostics.map(({ name, path }) => [name, path.join(".")]);

/** A section of a double pulley: two flanges and a groove, no hub. */
const SECTION = { row: "20 teeth 2 mm", hubLength: 0, height: 9, setScrewFromEnd: 0, setScrewCount: 0 };

describe("the stack on the motor's shaft", () => {
  // Pulley of the table: groove 7, flanges 1, hub 7, height 16; the plate ends at 10, 1 mm of air.
  test("gives the plane of each pulley by hand's arithmetic, for every way of putting them on", () => {
    expect(planes([{ hub: "down" }, { hub: "up" }])).toEqual([22.5, 32.5]);
    expect(planes([{ hub: "up" }, { hub: "up" }])).toEqual([15.5, 32.5]);
    expect(planes([{ hub: "up" }, { hub: "down" }])).toEqual([15.5, 39.5]);
    expect(
      planes([
        { hub: "down", gap: 3 },
        { hub: "down", gap: 0.5 },
      ]),
    ).toEqual([24.5, 41]);
    const [low, high] = stack([{ hub: "down" }, { hub: "up" }]).pulleys;
    expect([low?.bottom, low?.top, high?.bottom, high?.top]).toEqual([11, 27, 28, 44]);
  });

  test("a double pulley's sections lie one groove and the flange between them apart", () => {
    const double = stack([
      { hub: "down", pulley: SECTION },
      { hub: "up", commonFlange: true },
    ]);
    const [low, high] = double.pulleys;
    expect((high?.plane ?? 0) - (low?.plane ?? 0)).toBe(7 + 1);
    expect(double.diagnostics).toEqual([]);
    expect(high?.bottom).toBe((low?.top ?? 0) - 1);
  });

  test("with the plate 3 mm higher everything stands 3 mm higher", () => {
    const [still, moved] = [10, 13].map((plateTop) => stack([{ hub: "down" }, { hub: "up" }], { plateTop }).pulleys);
    const heights = (all: typeof still) => (all ?? []).flatMap(({ bottom, top, plane }) => [bottom, top, plane]);
    expect(heights(moved)).toEqual(heights(still).map((height) => height + 3));
  });

  test("says the spacing by the calculation that has the same arrangement", () => {
    const spacing = (pulleys: readonly Change[]) =>
      stack(pulleys).sections[0]?.facts.find(({ key }) => key === "loop.high.spacing");
    expect(spacing([{ hub: "down" }, { hub: "up" }])).toMatchObject({ value: 10, from: { result: "toothed" } });
    expect(spacing([{ hub: "up" }, { hub: "down" }])).toMatchObject({ value: 24, from: { result: "hubs" } });
    expect(spacing([{ hub: "up" }, { hub: "up" }])).toMatchObject({ value: 17, from: { result: "same" } });
    // Two unlike pulleys are no case of the calculation: the number stands alone.
    const unlike = spacing([
      { hub: "down", pulley: SECTION },
      { hub: "up", commonFlange: true },
    ]);
    expect(unlike).toMatchObject({ value: 8 });
  });
});

describe("what is wrong with the stack", () => {
  test("a loop without a pulley and one with two are told of together", () => {
    const outcome = stack([{ loop: "low" }, { loop: "low" }]);
    expect(found(outcome)).toEqual([
      ["loop-with-two-motor-pulleys", "motor.pulleys.1.loop"],
      ["loop-without-motor-pulley", "loops.high"],
    ]);
    expect(outcome.diagnostics[0]?.set).toBe("loop: high");
  });

  test("a hub where two pulleys share a flange", () => {
    const common = { commonFlange: true };
    expect(found(stack([{ hub: "up" }, { hub: "up", ...common }]))).toEqual([
      ["motor-pulleys-overlap", "motor.pulleys.1.commonFlange"],
    ]);
    expect(found(stack([{ hub: "down" }, { hub: "down", ...common }]))).toHaveLength(1);
    expect(found(stack([{ hub: "down" }, { hub: "up", ...common }]))).toEqual([]);
    expect(found(stack([{ hub: "down", ...common }, { hub: "up" }]))).toEqual([
      ["motor-pulleys-overlap", "motor.pulleys.0.commonFlange"],
    ]);
  });

  test.each([
    ["a height that its parts do not make", { height: 15.6 }],
    ["a flange inside the pitch circle", { flangeDiameter: 12.7 }],
    ["a groove no wider than the belt", { toothWidth: 6.2, height: 15.2 }],
    ["no teeth", { teeth: 0 }],
  ])("pulley data that contradict each other: %s", (_, change) => {
    const outcome = stack([{ hub: "down", pulley: { row: "20 teeth 2 mm", ...change } }, { hub: "up" }]);
    expect(found(outcome)).toEqual([["hardware-data-disagrees", "motor.pulleys.0.pulley"]]);
  });

  test("a height within 0.3 mm of the sum is a measured one, and counts", () => {
    const measured = { row: "20 teeth 2 mm", height: 16.3 };
    const outcome = stack([{ hub: "down", pulley: measured }, { hub: "up" }]);
    expect(outcome.diagnostics).toEqual([]);
    expect(outcome.pulleys.map(({ plane }) => plane)).toEqual([22.8, 32.8]);
  });

  test("a pulley whose bore is not the shaft's; with the bore that is asked for it goes on", () => {
    // Shafts by NEMA ICS 16: 5 mm on size 17, 6.35 mm on size 23; a pulley of 20 teeth is usually sold with 5.
    const big = { motor: { row: "NEMA 23", shaftLength: 60 } };
    const outcome = stack([{ hub: "down" }, { hub: "up", pulley: { row: "20 teeth 2 mm", bore: 6.35 } }], big);
    expect(found(outcome)).toEqual([["motor-pulley-bore-off-shaft", "motor.pulleys.0.pulley"]]);
    expect(outcome.diagnostics[0]).toMatchObject({
      says: "the shaft of the NEMA 23, 6.35 mm, does not go into the 5 mm bore of low's pulley",
      set: 'pulley: { row: "20 teeth 2 mm", bore: 6.35 } if it is sold or bored so',
    });
    const wide = (bore: number) => found(stack([{ pulley: { row: "20 teeth 2 mm", bore } }, {}]));
    expect(wide(5.2)).toEqual([["motor-pulley-bore-off-shaft", "motor.pulleys.0.pulley"]]);
    expect([wide(5.1), wide(4.95)]).toEqual([[], []]);
  });

  test("a shaft too short for the stack; the length that is asked for is enough", () => {
    const pulleys = [{ hub: "down" }, { hub: "up" }];
    const outcome = stack(pulleys, { motor: "NEMA 17" });
    // Of 22 mm of shaft 16 stand over the plate, which ends at 10: the low pulley's toothed part ends at 27.
    expect(outcome.diagnostics.map(({ name, found: has, limit }) => [name, has?.value, limit?.value])).toEqual([
      ["motor-shaft-too-short", 26, 27.5],
      ["motor-shaft-too-short", 26, 41],
    ]);
    const asked = /a shaft of ([\d.]+) mm/.exec(outcome.diagnostics[1]?.set ?? "")?.[1];
    expect(Number(asked)).toBe(37);
    expect(stack(pulleys, { motor: { row: "NEMA 17", shaftLength: Number(asked) } }).diagnostics).toEqual([]);
    const nearly = { row: "NEMA 17", shaftLength: Number(asked) - 0.1 };
    expect(stack(pulleys, { motor: nearly }).diagnostics).toHaveLength(1);
  });
});
