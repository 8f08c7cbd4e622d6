import { describe, expect, test } from "vitest";
import { layout, onlyLoop, solved } from "../../support/belt-plans.ts";
import { widePlan } from "../../support/plans.ts";

/** Belt of 2 mm pitch: pitch line 0.254, thickness 1.38, tooth 0.75. An idler that it runs on at 18 mm. */
const SMOOTH_18 = { row: "smooth, bore 5", runDiameter: 18, flangeDiameter: 20 };
const THREE = { screws: { B: [250, 120, 40], C: [-150, 140, 40] } } as const;
const FOUR = { ...THREE, idlers: { rub: { at: [60, 30], idler: SMOOTH_18, side: "outside" } } };

const fact = (facts: ReturnType<typeof onlyLoop>["facts"], key: string) => facts.find((one) => one.key === key)?.value;

describe("loops worked by hand", () => {
  test("two pulleys of 40 teeth 300 apart: 600 and one turn of 80, half a turn on each", () => {
    const { loop, facts } = onlyLoop(layout({ motorTeeth: 40, screws: { A: [300, 0, 40] } }));
    expect(loop.nominal).toBeCloseTo(680, 9);
    expect(loop.belt.wraps[0]).toBeCloseTo(180, 9);
    expect(loop.bought).toBe(680);
    expect(fact(facts, "loop.one.teeth")).toBe(340);
    expect(fact(facts, "loop.one.span.motor-to-A")).toBeCloseTo(300, 9);
  });

  // 2 sqrt(200^2 - (40/pi - 20/pi)^2) and the two arcs: the open-belt formula of machine design textbooks.
  test("20 and 40 teeth 200 apart: 460.2027 mm, 9.797 teeth in mesh on the small one", () => {
    const { loop, facts } = onlyLoop(layout({ screws: { A: [200, 0, 40] } }));
    expect(loop.nominal).toBeCloseTo(460.2027, 4);
    expect(loop.belt.spans[0]?.length).toBeCloseTo(199.8987, 4);
    expect(loop.belt.wraps[0]).toBeCloseTo(176.3518, 4);
    expect(fact(facts, "loop.one.node.motor.mesh")).toBeCloseTo(9.797, 3);
  });

  test("motor between two screws: 955.5333 mm, and 3.643 teeth in mesh are an error", () => {
    const { loop, diagnostics } = onlyLoop(layout(THREE));
    expect(loop.nominal).toBeCloseTo(955.5333, 4);
    expect(loop.belt.spans.map(({ length }) => length.toFixed(4))).toEqual(["277.2354", "400.4997", "205.0841"]);
    expect(loop.belt.wraps.map((wrap) => wrap.toFixed(4))).toEqual(["65.5726", "152.8120", "141.6153"]);
    const mesh = diagnostics.find(({ name }) => name === "too-few-teeth-in-mesh");
    expect(mesh).toMatchObject({ level: "error", path: ["motor", "pulleys", 0, "pulley"], limit: { value: 4 } });
    expect(mesh?.found?.value).toBeCloseTo(3.643, 3);
  });

  test("an idler outside makes that 958.8586 mm and 4.521 teeth, a warning", () => {
    const { loop, diagnostics, facts } = onlyLoop(layout(FOUR));
    expect(loop.nodes.map(({ name }) => name)).toEqual(["motor", "rub", "B", "C"]);
    expect(loop.nominal).toBeCloseTo(958.8586, 4);
    const spans = loop.belt.spans.map(({ length }) => length.toFixed(4));
    expect(spans).toEqual(["65.2088", "209.0723", "400.4997", "205.0841"]);
    expect(fact(facts, "loop.one.node.rub.wrap")).toBeCloseTo(20.8274, 4);
    const mesh = diagnostics.find(({ name }) => name === "too-few-teeth-in-mesh");
    expect(mesh).toMatchObject({ level: "warning", limit: { value: 6 } });
    expect(mesh?.found?.value).toBeCloseTo(4.521, 3);
  });

  test("that idler makes the wrap and must stay", () => {
    const lines = solved(layout(FOUR)).sections.flatMap(({ lines = [] }) => lines);
    expect(lines).toContain("idler rub must stay: without it motor has 3.6 teeth in mesh");
  });

  // f = sqrt(T / mu) / (2 l): the vibrating string; 15 N, 0.00852 kg/m, 300 mm: 69.93 Hz by hand.
  test("the note of a span, and the pull on a shaft that is wrapped by half a turn", () => {
    const { facts } = onlyLoop(layout({ motorTeeth: 40, screws: { A: [300, 0, 40] } }));
    expect(fact(facts, "loop.one.span.motor-to-A.pluck")).toBeCloseTo(69.93, 2);
    expect(fact(facts, "loop.one.node.A.pull")).toBeCloseTo(30, 9);
    expect(fact(facts, "motor.pull")).toBeCloseTo(30, 9);
  });

  // Moments about the face, statics: a belt 46 mm from it weighs as much on the front bearing as 46/20 of it at 20 mm.
  test("the pull on the motor's shaft counts as far from its face as the belt runs", () => {
    // The belt lies flange and half a groove, 1 + 3.5, over 1 of air on the plate, and the plate this thick on the face.
    const of = (plate: number) => {
      const motor = { motor: { row: "NEMA 17", shaftLength: 60 }, plate };
      const pulleys = [{ loop: "one", pulley: "40 teeth 2 mm" }];
      const { facts, diagnostics } = onlyLoop(
        layout({ screws: { A: [300, 0, 40] }, more: { motor: { at: [0, 0], pulleys, ...motor } } }),
      );
      const told = diagnostics.filter(({ name }) => name === "motor-shaft-overloaded");
      return { pull: fact(facts, "motor.pull"), rated: fact(facts, "motor.rated-pull"), told };
    };
    expect(of(14.5)).toMatchObject({ pull: 30, rated: 30, told: [{ level: "warning", limit: { value: 28 } }] });
    expect(of(24.5)).toMatchObject({ pull: 30, rated: 45, told: [{ level: "error", limit: { value: 42 } }] });
    // Near the face no more than twice the rating is counted on.
    expect(of(2)).toMatchObject({ pull: 30, rated: 15, told: [] });
  });

  // 0.3 N m on 20 teeth of 2 mm: 0.3 / (0.02 / pi) = 47.12 N.
  test("the motor's torque as a difference of span tensions", () => {
    const { sections } = solved(widePlan());
    const facts = sections.flatMap((section) => section.facts);
    expect(fact(facts, "loop.low.motorPull")).toBeCloseTo(47.124, 3);
  });
});

describe("the wide machine", () => {
  test("is sound: both loops are bought, and nothing but notes is said", () => {
    const { loops, diagnostics } = solved(widePlan());
    expect(loops.map(({ loop, bought }) => [loop, bought])).toEqual([
      ["low", 1350],
      ["high", 252],
    ]);
    expect(diagnostics.filter(({ level }) => level !== "note")).toEqual([]);
  });

  test("the motor stands in one place for both loops, where the one that slides it puts it", () => {
    const { loops } = solved(widePlan());
    const motors = loops.map(({ nodes }) => nodes.find(({ name }) => name === "motor"));
    expect(motors[0]).toMatchObject({ x: motors[1]?.x, y: motors[1]?.y });
    expect(loops[1]?.slid?.at).toBeCloseTo((motors[1]?.y ?? 0) - 400, 9);
    expect(loops[0]?.belt.length).toBeCloseTo(1350, 6);
    expect(loops[1]?.belt.length).toBeCloseTo(252, 6);
  });

  test("every number says what it follows from, or is placed, bought, or read from a catalogue", () => {
    const { sections } = solved(widePlan());
    const bare = sections.flatMap(({ facts }) => facts).filter(({ from }) => from === undefined);
    const kinds = new Set(bare.map(({ key }) => key.replace(/^loop\.\w+\./, "").replace(/node\.\w+/, "node")));
    expect([...kinds].sort()).toEqual([
      "idler.press.axle",
      "idler.press.bottom",
      "leftInward",
      "leftOutward",
      "length",
      "node.bend",
      "teeth",
      "tension",
    ]);
  });
});
