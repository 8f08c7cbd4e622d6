import { describe, expect, test } from "vitest";
import type { Diagnostic } from "../../../src/core/diagnostic.ts";
import { UNCALIBRATED } from "../../../src/printing/printer.ts";
import { curesOf } from "../../../src/stage/feet/cures.ts";
import { deriveOnce, deriveStage, type Plan } from "../../../src/stage/index.ts";
import { widePlan } from "../../support/plans.ts";

type Change = Readonly<Record<string, unknown>>;

const derive = (plan: Plan) => deriveStage(plan, () => UNCALIBRATED);
/** Ways out are tried by working plans out without ways out of their own. */
const once = (plan: Plan) => deriveOnce(plan, () => UNCALIBRATED);

/** A loop of stock for either place of A: 1400 on top of the bar, 1370 beside it. */
const STOCK = { low: { stock: [1370, 1400] } };

/** Groove 7, flanges 1, hub 7, bearing 7, ring 1: hub up the seat lies 12.5 under the plane, the plane 12.5 over the plate. */
const WORKED = { foot: { thrust: "pulley", pulley: "40 teeth 2 mm" } };
const onTop = (foot: Change, plateTop: number): Change => ({
  ...WORKED,
  loops: STOCK,
  motor: { plateTop },
  screws: { A: { at: [150, 15], foot: { mount: "on-top", ...foot } } },
});

function cures(change: Change) {
  const stage = derive(widePlan(change));
  const hopeless = stage.diagnostics.filter(({ name }) => /belt-plane-below|foot-stack/.test(name));
  expect(hopeless.map(({ path }) => path.join("."))).toEqual(["screws.A"]);
  return {
    stage,
    hopeless: hopeless[0] as Diagnostic,
    all: curesOf(stage, once, () => UNCALIBRATED),
  };
}

describe("a foot on top of its bar whose seat would lie 3 mm too low", () => {
  // Lowest seat 6 over the bar, since the screw's tip needs 5 and 1; the plate at 3 gives 3.
  const { stage, hopeless, all } = cures(onTop({}, 3));

  test("is named by its height and its limit", () => {
    expect(hopeless).toMatchObject({ name: "belt-plane-below-lowest-seat", found: { value: 3 }, limit: { value: 6 } });
    expect(stage.feet.map(({ screw }) => screw)).toEqual(["B", "C"]);
    const feet = stage.parts.filter(({ family }) => family === "screw-foot");
    expect(feet.map(({ name }) => name)).toEqual(["foot-b", "foot-c"]);
  });

  test("has its ways out in their order, each with what came of it", () => {
    expect(all.map(({ way, helps }) => [way, helps])).toEqual([
      ["turn the hub over", false],
      ["change the rings", false],
      ["a thinner bearing of the same bore", false],
      ["a lower mount: beside the bar instead of on top of it, under it instead of beside it", true],
      ["move all belt planes by the shortfall", true],
      ["swap which loop is lower", true],
      ["a pulley without a hub, held by a clamp collar", false],
      ["two single pulleys on the motor instead of a double one", false],
      ["move the whole drive under the bars", false],
    ]);
    // A bearing of 5 instead of 7 raises the seat by 2, not by 3.
    expect(all[2]?.outcome).toBe("leaves belt-plane-below-lowest-seat at screws.A");
    // At 6 it is high enough, and so near to the screw's tip that it warns; a millimetre more and nothing is said.
    expect(all[4]).toMatchObject({ set: "motor.plateTop: 7", warns: 0 });
  });

  test("says how many parts each prints anew, this foot or all of them, and what else is made anew", () => {
    expect(all.map(({ reprints }) => reprints).slice(3, 6)).toEqual([1, 3, 3]);
    expect(all.map(({ also }) => also).slice(3, 6)).toEqual([
      undefined,
      "another mount of the motor or shims under it",
      undefined,
    ]);
  });

  test("names those that help where the error stands, and all of them in the report", () => {
    expect(hopeless.set).toBe(
      [
        "screws.A.foot.mount: on-side and screws.A.at: [150, 47] (prints 1 part anew)",
        "motor.plateTop: 7 (prints 3 parts anew, and takes another mount of the motor or shims under it)",
        "loop: low and loop: high exchanged in motor.pulleys (prints 3 parts anew, with 1 warning more)",
      ].join(", or "),
    );
    expect(stage.sections.find(({ title }) => title === "Ways out for the foot of A")?.lines).toHaveLength(9);
  });

  test("and what they set passes when it is typed", () => {
    const errors = (change: Change) => derive(widePlan(change)).diagnostics.filter(({ level }) => level === "error");
    expect(errors(onTop({}, 7))).toEqual([]);
    expect(errors(onTop({}, 6))).toEqual([]);
    const louder = (change: Change) =>
      derive(widePlan(change)).diagnostics.filter(({ level, path }) => level === "warning" && path[1] === "A");
    expect(louder(onTop({}, 6)).length).toBeGreaterThan(louder(onTop({}, 7)).length);
    expect(errors(onTop({}, 5.8)).map(({ name }) => name)).toEqual(["belt-plane-below-lowest-seat"]);
    const beside = { screws: { A: { at: [150, 47], foot: { mount: "on-side" } } } };
    expect(errors({ ...WORKED, loops: STOCK, motor: { plateTop: 3 }, ...beside })).toEqual([]);
  });
});

describe("ways out that only some feet have", () => {
  test("a hub that was told to point down is turned over, and a ring that was asked for is left out", () => {
    const { all } = cures(onTop({ hub: "down", washers: ["8 x 12 x 1.0", "8 x 12 x 1.0"] }, 8));
    expect(all[0]).toMatchObject({ set: "screws.A.foot.hub: up", helps: true, reprints: 1 });
    expect(all[1]).toMatchObject({ set: 'screws.A.foot.washers: ["8 x 12 x 1.0"]', helps: false });
  });

  test("a thinner bearing where 2 mm are enough", () => {
    const { all } = cures(onTop({}, 4.2));
    expect(all[2]).toMatchObject({ set: 'screws.A.foot.bearing: "688"', helps: true, reprints: 1 });
  });

  test("a foot beside the bar goes under it", () => {
    // Thick and of PLA, since a foot under its bar bends more than one beside it.
    const stiff = { foot: { ...WORKED.foot, plate: 12, material: "PLA" } };
    const { all } = cures({ ...stiff, motor: { plateTop: -26 }, screws: higher });
    expect(all[3]).toMatchObject({
      way: "a lower mount: beside the bar instead of on top of it, under it instead of beside it",
      set: "screws.A.foot.mount: under",
      helps: true,
    });
  });

  test("a stack under the stage: the planes go down", () => {
    const low = { travel: { lowest: 38, nut: 125 }, motor: { plateTop: 12 }, ...WORKED };
    const stage = derive(widePlan(low));
    const [hopeless] = stage.diagnostics.filter(({ name }) => name === "foot-stack-does-not-fit");
    expect(hopeless?.path).toEqual(["screws", "C"]);
    const all = curesOf(stage, once, () => UNCALIBRATED);
    const shift = all.find(({ way }) => way.startsWith("move all belt planes"));
    expect(shift).toMatchObject({ helps: true });
    expect(
      derive(widePlan({ ...low, motor: { plateTop: Number(/-?[\d.]+$/.exec(shift?.set ?? "")?.[0]) } })).feet,
    ).toHaveLength(3);
  });
});

describe("several feet that cannot be built", () => {
  // Seats of A and B at -40, of C, whose loop is 10 higher, at -30; the lowest beside their bars is -23.
  const deep: Change = { ...WORKED, motor: { plateTop: -40 } };
  const stage = derive(widePlan(deep));
  const all = curesOf(stage, once, () => UNCALIBRATED);
  const hopeless = stage.diagnostics.filter(({ name }) => name === "belt-plane-below-lowest-seat");
  const errorsOf = (change: Change) => derive(widePlan(change)).diagnostics.filter(({ level }) => level === "error");

  test("are judged together, once: what each way leaves of all of them, and how many parts it prints", () => {
    expect(hopeless.map(({ path }) => path[1])).toEqual(["A", "B", "C"]);
    const told = stage.sections.filter(({ title }) => title.startsWith("Ways out"));
    expect(told.map(({ title }) => title)).toEqual(["Ways out for the feet of A, B and C"]);
    expect(told[0]?.lines).toHaveLength(9);
    // Under their bars C fits and A and B, 10 lower, do not: a change is not said to help because of one foot.
    expect(all[3]).toMatchObject({ helps: false, fits: ["C"], reprints: 1 });
    expect(all[3]?.outcome).toBe("C fits; leaves belt-plane-below-lowest-seat at screws.A and screws.B");
    expect(all[4]).toMatchObject({ set: "motor.plateTop: -22", helps: true, fits: ["A", "B", "C"], reprints: 3 });
  });

  test("name what mends all of them at the first, and point to it at the others", () => {
    expect(hopeless[0]?.set).toBe(
      "motor.plateTop: -22 (prints 3 parts anew, and takes another mount of the motor or shims under it)",
    );
    expect(hopeless.slice(1).map(({ set }) => set)).toEqual(
      Array(2).fill("what is set for A, which mends this foot too"),
    );
    expect(errorsOf({ ...WORKED, motor: { plateTop: -22 } })).toEqual([]);
    expect(errorsOf({ ...WORKED, motor: { plateTop: -23 } })).toEqual([]);
  });

  test("hang under their bars with the whole drive, the motor's plate as low as they reach then", () => {
    const last = all.at(-1);
    expect(last).toMatchObject({ way: "move the whole drive under the bars", fits: ["A", "B", "C"], reprints: 3 });
    expect(last?.set).toBe(
      `${[..."ABC"].map((screw) => `screws.${screw}.foot.mount: under and `).join("")}motor.plateTop: -34`,
    );
    expect(last?.outcome).toContain("measure the room under the bars for feet and motor");
    const hung = (plateTop: number) => errorsOf({ foot: { ...WORKED.foot, mount: "under" }, motor: { plateTop } });
    expect(hung(-34).map(({ name }) => name)).toEqual(["feet-sink-unequally"]);
    expect(hung(-34.2).map(({ name }) => name)).toContain("belt-plane-below-lowest-seat");
  });

  test("of which one has no place under a bar: the drive cannot go there, and why is said", () => {
    const post = { C: { at: [15, 330], bar: "post-left", foot: { mount: "on-post", lowestZ: 0 } } };
    const way = curesOf(derive(widePlan({ ...deep, screws: post })), once, () => UNCALIBRATED).at(-1);
    expect(way).toMatchObject({ set: "", helps: false });
    expect(way?.outcome).toMatch(/^cannot be tried: a foot on-post has no lower mount; measure the room/);
  });
});

describe("what the plan accepts is no error of a way out", () => {
  const because = "the plate is trammed again every month";
  const accepting = (change: Change, part: string, check: string) =>
    derive(widePlan({ ...change, accept: [{ part, check, because }] }));
  const wayOf = (stage: ReturnType<typeof derive>, at: number) => curesOf(stage, once, () => UNCALIBRATED).at(at);

  test("of a part", () => {
    const deep: Change = { ...WORKED, motor: { plateTop: -40 } };
    expect(wayOf(derive(widePlan(deep)), -1)?.outcome).toContain("leaves feet-sink-unequally at screws.C");
    expect(wayOf(accepting(deep, "foot-a", "feet-sink-unequally"), -1)?.helps).toBe(false);
    expect(wayOf(accepting(deep, "foot-c", "feet-sink-unequally"), -1)?.helps).toBe(true);
  });

  test("of the machine", () => {
    // Beside its bar A leads the belt to B through a stake that it passes from the top of the bar.
    const stake = { stake: { bar: "20x20 slot 6", from: [300, 42, 0], to: [300, 42, 60] } };
    const staked = { ...onTop({}, 3), bars: stake };
    expect(wayOf(derive(widePlan(staked)), 3)?.outcome).toMatch(/^A fits; leaves belt-too-near-bar at/);
    expect(wayOf(accepting(staked, "stage", "belt-too-near-bar"), 3)?.helps).toBe(true);
  });

  test("and it is told as accepted, of a part too", () => {
    const under: Change = { foot: { mount: "under" }, motor: { plateTop: -10 } };
    const levels = (stage: ReturnType<typeof derive>) =>
      stage.diagnostics.filter(({ name }) => name === "feet-sink-unequally").map(({ path, level }) => [path[1], level]);
    expect(levels(derive(widePlan(under)))).toContainEqual(["C", "error"]);
    const stage = accepting(under, "foot-c", "feet-sink-unequally");
    expect(levels(stage)).not.toContainEqual(["C", "error"]);
    expect(stage.diagnostics.filter(({ says }) => says.endsWith(`(accepted: ${because})`))).toHaveLength(1);
  });
});

/** The other screws' bars far below, so that only A is in trouble. */
const higher = { B: { foot: { mount: "under" } } };
