import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Diagnostic, Level } from "../../../src/core/diagnostic.ts";
import type { Plan } from "../../../src/stage/index.ts";
import type { LOOP_DEFECTS } from "../../../src/stage/loops/defects.ts";
import { type Layout, layout, solved } from "../../support/belt-plans.ts";
import { widePlan } from "../../support/plans.ts";

/** Two pulleys of 40 teeth 300 apart: the spans lie 12.73 above and below the axes. */
const PAIR = { motorTeeth: 40, screws: { A: [300, 0, 40] } } as const satisfies Layout;
const SPAN = 40 / Math.PI;
/** An idler that the belt's back runs on at 16 mm; its pitch line lies 8.376 from its axis. */
const outside = (at: readonly [number, number], idler: unknown = "two F625") => ({ at, idler, side: "outside" });
const inside = (at: readonly [number, number], idler: unknown) => ({ at, idler, side: "inside" });
const withIdler = (idler: unknown) => layout({ ...PAIR, idlers: { rub: idler } });
const THREE = { screws: { B: [250, 120, 40], C: [-150, 140, 40] } } as const satisfies Layout;
const SMOOTH_18 = { row: "smooth, bore 5", runDiameter: 18, flangeDiameter: 20 };

/** The wide machine with both motor pulleys so thin that the planes lie this far apart. */
function thinStack(toothWidth: number, flangeThickness: number): Plan {
  const height = 7 + toothWidth + 2 * flangeThickness;
  const pulley = { row: "20 teeth 2 mm", toothWidth, flangeThickness, height };
  const pulleys = [
    { loop: "low", pulley, hub: "down" },
    { loop: "high", pulley, hub: "up", gap: 0 },
  ];
  return widePlan({ motor: { pulleys } });
}

/** An idler that presses the upper span down, to this height of its axis. */
const pressed = (y: number) =>
  layout({ ...PAIR, idlers: { rub: outside([150, y]) }, loop: { nodes: ["motor", "A", "rub"], inOrder: true } });

function post(y: number): Plan {
  return layout({ ...PAIR, more: { bars: { post: { bar: "30x30 slot 8", from: [150, y, 0], to: [150, y, 300] } } } });
}

const beside = (y: number) =>
  layout({ ...PAIR, screws: { ...PAIR.screws, X: [150, y, 40] }, loop: { nodes: ["motor", "A"] } });

/** Two pulleys of 40 teeth 1000 apart, for which a loop of 2000 + 80 mm can be bought. */
const long = (loop: Readonly<Record<string, unknown>>) =>
  layout({
    motorTeeth: 40,
    screws: { A: [1000, 0, 40] },
    loop: { stock: [2080], slide: { direction: 180, from: -15, to: 15 }, ...loop },
  });

const pressAt = (change: Readonly<Record<string, unknown>>) => ({ idlers: { press: change } });

interface Case {
  readonly level: Level;
  readonly plan: () => Plan;
  readonly path: readonly (string | number)[];
}

const CASES = {
  "loop-tangled-or-not-touching": [
    { level: "error", plan: () => withIdler(outside([150, 200])), path: ["loops", "one", "nodes"] },
    {
      level: "error",
      plan: () => layout({ ...PAIR, screws: { A: [20, 0, 40] } }),
      path: ["loops", "one", "nodes"],
    },
  ],
  "no-stock-loop-within-slide": [
    { level: "error", plan: () => layout({ screws: { A: [200, 0, 40] } }), path: ["loops", "one"] },
    {
      level: "error",
      plan: () => layout({ ...PAIR, loop: { slide: { direction: 180, from: -1, to: 1 } } }),
      path: ["loops", "one", "slide"],
    },
    {
      level: "warning",
      plan: () => layout({ ...PAIR, loop: { stock: [680], slide: { direction: 180, from: -4, to: 30 } } }),
      path: ["loops", "one", "slide"],
    },
  ],
  "loop-tolerance-not-known": [{ level: "error", plan: () => long({}), path: ["loops", "one"] }],
  "stock-loops-not-listed": [
    { level: "note", plan: () => layout({ ...PAIR, loop: { belt: "MXL" } }), path: ["loops", "one"] },
  ],
  "slide-disturbs-other-loop": [
    {
      level: "error",
      plan: () =>
        widePlan({
          loops: { low: { nodes: ["motor", "A", "B"], slide: { node: "motor", direction: 90, from: -8, to: 8 } } },
        }),
      path: ["loops", "low", "slide"],
    },
    {
      level: "warning",
      plan: () => widePlan({ loops: { low: { nodes: ["motor", "A", "B"], slide: undefined, stock: [1340] } } }),
      path: ["loops", "low"],
    },
  ],
  "slide-moves-a-screw": [
    {
      level: "error",
      plan: () => layout({ ...PAIR, loop: { slide: { node: "A", direction: 0 } } }),
      path: ["loops", "one", "slide", "node"],
    },
  ],
  "pulley-of-another-pitch": [
    { level: "error", plan: () => layout({ ...PAIR, loop: { belt: "MXL" } }), path: ["screws", "A", "foot", "pulley"] },
  ],
  "too-few-teeth-in-mesh": [
    { level: "error", plan: () => layout(THREE), path: ["motor", "pulleys", 0, "pulley"] },
    {
      level: "warning",
      plan: () => layout({ ...THREE, idlers: { rub: outside([60, 30], SMOOTH_18) } }),
      path: ["motor", "pulleys", 0, "pulley"],
    },
  ],
  "toothed-idler-barely-meshes": [
    { level: "warning", plan: () => withIdler(inside([150, 14.4], "20 teeth, bore 5")), path: ["idlers", "rub"] },
  ],
  "smooth-idler-on-teeth": [
    { level: "warning", plan: () => withIdler(inside([150, 12], "two F625")), path: ["idlers", "rub", "idler"] },
  ],
  "idler-wrap-out-of-range": [
    { level: "warning", plan: () => withIdler(outside([150, SPAN + 6.376])), path: ["idlers", "rub", "at"] },
  ],
  "idler-flanges-pinch-belt": [
    {
      level: "error",
      plan: () => withIdler(outside([150, 12], { row: "two F625", runWidth: 6.4 })),
      path: ["idlers", "rub", "idler"],
    },
  ],
  // Idler of the table: 10 high, 8 between its flanges, belt 6: 1 mm of play. The plane lies at 22.5.
  "idler-off-belt-plane": [
    { level: "error", plan: () => widePlan(pressAt({ bottom: 16.4 })), path: ["idlers", "press", "bottom"] },
    { level: "warning", plan: () => widePlan(pressAt({ bottom: 18.2 })), path: ["idlers", "press", "bottom"] },
  ],
  // Nut M5 of ISO 4032: 4.7; pitch 0.8 of ISO 261.
  "idler-axle-too-short": [
    { level: "error", plan: () => widePlan(pressAt({ axle: 15.6 })), path: ["idlers", "press", "axle"] },
    { level: "warning", plan: () => widePlan(pressAt({ axle: 17.2 })), path: ["idlers", "press", "axle"] },
  ],
  "belt-bent-too-tight": [
    { level: "error", plan: () => withIdler(outside([150, 12], "smooth, bore 5")), path: ["idlers", "rub"] },
    {
      level: "warning",
      plan: () => withIdler(outside([150, 12], { row: "two F625", runDiameter: 15 })),
      path: ["idlers", "rub"],
    },
    {
      level: "error",
      plan: () => layout({ ...PAIR, motorTeeth: { row: "20 teeth 2 mm", teeth: 11 } }),
      path: ["motor", "pulleys", 0, "pulley"],
    },
  ],
  "belt-overloaded": [
    { level: "error", plan: () => layout({ ...PAIR, loop: { tension: 30 } }), path: ["loops", "one", "tension"] },
    { level: "warning", plan: () => layout({ ...PAIR, loop: { tension: 22 } }), path: ["loops", "one", "tension"] },
  ],
  "belts-too-close": [
    { level: "error", plan: () => thinStack(6.1, 0.3), path: ["loops", "low"] },
    { level: "warning", plan: () => thinStack(6.3, 0.5), path: ["loops", "low"] },
  ],
  "belt-too-near-foreign-flange": [
    { level: "error", plan: () => thinStack(6.1, 0.3), path: ["loops", "low"] },
    { level: "warning", plan: () => thinStack(6.3, 0.5), path: ["loops", "high"] },
  ],
  "belt-too-near-upright": [
    { level: "error", plan: () => beside(14), path: ["loops", "one"] },
    { level: "warning", plan: () => beside(SPAN + 4 + 0.376 + 1.5), path: ["loops", "one"] },
  ],
  "belt-too-near-bar": [
    { level: "error", plan: () => post(SPAN + 15 + 1.5), path: ["loops", "one"] },
    { level: "warning", plan: () => post(SPAN + 15 + 2.5), path: ["loops", "one"] },
  ],
  "spans-of-loop-too-close": [
    { level: "error", plan: () => pressed(-SPAN + 9.7), path: ["idlers", "rub", "at"] },
    { level: "warning", plan: () => pressed(-SPAN + 8.376 + 2 * 1.38 + 1.5), path: ["idlers", "rub", "at"] },
  ],
  "pulley-bodies-collide": [
    { level: "error", plan: () => layout({ screws: { A: [22.5, 0, 40] } }), path: ["loops", "one"] },
    { level: "warning", plan: () => layout({ screws: { A: [23.5, 0, 40] } }), path: ["loops", "one"] },
  ],
  "motor-shaft-overloaded": [
    { level: "error", plan: () => farFromFace(24.5), path: ["motor", "motor"] },
    { level: "warning", plan: () => farFromFace(14.5), path: ["motor", "motor"] },
  ],
  "loop-must-go-on-first": [{ level: "note", plan: () => widePlan(), path: ["loops", "low"] }],
} as const satisfies Readonly<Record<keyof typeof LOOP_DEFECTS, readonly Case[]>>;

const cases = Object.entries(CASES).flatMap(([name, list]: [string, readonly Case[]]) =>
  list.map((one) => ({ name, ...one })),
);

/** Half a turn of a belt of 15 N, as far from the motor's face as this plate and 5.5 mm over it; rated 28 N at 20 mm. */
function farFromFace(plate: number, loop: object = {}): Plan {
  const pulleys = [{ loop: "one", pulley: "40 teeth 2 mm" }];
  const motor = { at: [0, 0], motor: { row: "NEMA 17", shaftLength: 60 }, plate, pulleys };
  return layout({ screws: { A: [300, 0, 40] }, loop: { ...loop }, more: { motor } });
}

/** Returns what stands in a plan at a path. */
function at(plan: unknown, path: Diagnostic["path"]): unknown {
  return path.reduce<unknown>((thing, key) => (thing as Record<string | number, unknown> | undefined)?.[key], plan);
}

describe("each defect of the belts", () => {
  test.each(cases)("$name, $level", ({ name, level, plan, path }) => {
    const read = plan();
    const all = solved(read).diagnostics.filter((one) => one.name === name && one.level === level);
    expect(all.map((one) => one.path)).toContainEqual(path);
    for (const one of all) {
      expect(at(read, one.path)).toBeDefined();
      expect([one.says, one.set].join()).not.toMatch(/NaN|undefined|Infinity|\.$/);
      if (one.found && one.limit && one.name !== "no-stock-loop-within-slide") expect(one.found).not.toEqual(one.limit);
    }
  });
});

/** Errors and warnings of a plan by name. */
const named = (plan: Plan) =>
  solved(plan)
    .diagnostics.filter(({ level }) => level !== "note")
    .map(({ name }) => name);
const setOf = (plan: Plan, name: string) => solved(plan).diagnostics.find((one) => one.name === name)?.set ?? "";

describe("what a message says to set passes", () => {
  const short = { ...PAIR, loop: { stock: [684], slide: { direction: 180, from: -1, to: 1 } } } as const;

  test("the tension at which the motor's shaft carries the belt", () => {
    const [, tension] = /loops\.one\.tension: (\S+) N/.exec(setOf(farFromFace(24.5), "motor-shaft-overloaded")) ?? [];
    expect(Number(tension)).toBeCloseTo((15 * 28) / 45, 0);
    expect(named(farFromFace(24.5, { tension: Number(tension) }))).not.toContain("motor-shaft-overloaded");
    expect(named(farFromFace(24.5, { tension: Number(tension) + 0.2 }))).toContain("motor-shaft-overloaded");
  });

  test("a longer slide", () => {
    const set = /from: (\S+), to: (\S+) }/.exec(setOf(layout(short), "no-stock-loop-within-slide"));
    const [from, to] = [Number(set?.[1]), Number(set?.[2])];
    const slide = { direction: 180, from, to };
    const { loops, diagnostics } = solved(layout({ ...short, loop: { stock: [684], slide } }));
    expect(loops[0]?.bought).toBe(684);
    expect(diagnostics.filter(({ level }) => level === "error")).toEqual([]);
  });

  test("the first way out for a loop without a length brings nothing new, neither error nor warning", () => {
    fc.assert(
      fc.property(fc.integer({ min: 190, max: 420 }), fc.integer({ min: 1, max: 6 }), (x, half) => {
        const spec = (slide: object): Layout => ({ ...PAIR, screws: { A: [x, 0, 40] }, loop: { slide } });
        const own = { direction: 180, from: -half, to: half };
        const set = setOf(layout(spec(own)), "no-stock-loop-within-slide");
        const [, from, to] = /^slide: \{ direction: 180, from: (\S+), to: (\S+) \}/.exec(set) ?? [];
        if (from === undefined || to === undefined) return;
        expect(named(layout(spec({ direction: 180, from: Number(from), to: Number(to) }))), `${x} ${set}`).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test("a way out that brings something new comes behind one that does not", () => {
    // A longer slide takes the motor towards the post behind it, so another loop comes first.
    const screws = { A: [297, 0, 40] } as const;
    const bars = { post: { bar: "30x30 slot 8", from: [-32.5, 0, 0], to: [-32.5, 0, 300] } };
    expect(named(layout({ ...PAIR, more: { bars } }))).toEqual([]);
    const spec = (loop: Readonly<Record<string, unknown>>): Layout => ({
      motorTeeth: 40,
      screws,
      more: { bars },
      loop,
    });
    const slide = { direction: 180, from: -4, to: 4 };
    const set = setOf(layout(spec({ slide, stock: [680] })), "no-stock-loop-within-slide");
    const [first = ""] = set.split("; or ");
    const [, length] = /^stock: \[(\S+)\]/.exec(first) ?? [];
    expect([first, set.includes("slide: {")]).toEqual([expect.stringMatching(/^stock: /), true]);
    expect(named(layout(spec({ slide, stock: [Number(length)] })))).not.toContain("no-stock-loop-within-slide");
  });

  test("a foot moved along its bar", () => {
    const bars = { rail: { bar: "20x20 slot 6", from: [-100, -60, -10], to: [400, -60, -10] } };
    const spec = (x: number, y: number): Layout => ({ motorTeeth: 40, screws: { A: [x, y, 40] }, more: { bars } });
    const set = setOf(layout(spec(302.4, 0)), "no-stock-loop-within-slide");
    expect(set).toContain("move screw A 2.4 mm inwards along rail");
    const [, x, y] = /at: \[(\S+), (\S+)\]/.exec(set) ?? [];
    expect(solved(layout(spec(Number(x), Number(y)))).loops[0]?.bought).toBe(680);
  });

  test("a loop in stock", () => {
    const set = setOf(layout({ screws: { A: [200, 0, 40] } }), "no-stock-loop-within-slide");
    const length = Number(/stock: \[(\S+)\]/.exec(set)?.[1]);
    expect(length).toBe(460);
    const { loops } = solved(layout({ screws: { A: [200, 0, 40] }, loop: { stock: [length] } }));
    expect(loops[0]?.bought).toBe(460);
  });

  test("more air below the upper motor pulley", () => {
    const tight = thinStack(6.1, 0.3);
    const gap = Number(/gap: (\S+) mm/.exec(setOf(tight, "belts-too-close"))?.[1]);
    const [low, high] = tight.motor.pulleys;
    const apart = { ...tight, motor: { ...tight.motor, pulleys: [low, { ...high, gap }] } } as Plan;
    expect(named(apart)).not.toContain("belts-too-close");
  });

  test("a pulley with more teeth on the motor", () => {
    const set = setOf(layout({ ...THREE, idlers: { rub: outside([60, 30], SMOOTH_18) } }), "too-few-teeth-in-mesh");
    const teeth = Number(/pulley of (\d+) teeth/.exec(set)?.[1]);
    expect(teeth).toBe(27);
  });

  test("less tension", () => {
    const tension = Number(
      /tension: (\S+) N/.exec(setOf(layout({ ...PAIR, loop: { tension: 30 } }), "belt-overloaded"))?.[1],
    );
    expect(named(layout({ ...PAIR, loop: { tension } }))).not.toContain("belt-overloaded");
  });
});

describe("what the report says of idlers", () => {
  const lines = (plan: Plan) => solved(plan).sections.flatMap((section) => section.lines ?? []);

  test("one that makes no wrap may be parked, one that tightens the loop must stay", () => {
    const idle = withIdler(outside([150, 16]));
    expect(lines(idle)).toContain("idler rub may be parked: every pulley keeps its teeth in mesh without it");
    const tightening = layout({
      motorTeeth: 40,
      screws: { A: [100, 0, 40] },
      idlers: { rub: outside([50, 6]) },
      loop: { slide: { node: "rub", direction: 90, from: -12, to: 12 } },
    });
    if (solved(tightening).loops[0]?.slid === undefined) throw new Error("the slide is not used");
    expect(lines(tightening)).toContain("idler rub must stay: it tightens the loop");
  });

  test("one is not needed where a foot slides a little", () => {
    const bars = { rail: { bar: "20x20 slot 6", from: [-100, -60, -10], to: [400, -60, -10] } };
    const plan = layout({
      motorTeeth: 40,
      screws: { A: [298.2, 0, 40] },
      idlers: { rub: outside([150, 16]) },
      more: { bars },
    });
    expect(lines(plan)).toContain(
      "move screw A 1.8 mm outwards along rail and no idler is needed, with the loop of 680 mm",
    );
  });
});

describe("a loop over 2000 mm, where the usual tolerances end", () => {
  const named = (plan: Plan) => solved(plan).diagnostics.filter(({ level }) => level === "error");

  test("is told what to set and where, and fits once that is set", () => {
    const [vague, ...others] = named(long({}));
    expect(others).toEqual([]);
    expect(vague).toMatchObject({
      name: "loop-tolerance-not-known",
      set: "lengthTolerance: 0.9 in loops.one, or what the seller of the belt states",
      found: { value: expect.closeTo(2080, 6), unit: "mm" },
      limit: { value: 2000, unit: "mm" },
    });
    expect(vague?.says).toBe("the belt round one is 2080 mm long, and the usual tolerances end at 2000 mm");
    expect(named(long({ lengthTolerance: 0.9 }))).toEqual([]);
    expect(solved(long({ lengthTolerance: 0.9 })).loops[0]?.bought).toBe(2080);
  });

  test("that would not fit even then is told both", () => {
    const short = long({ slide: { direction: 180, from: -0.1, to: 0.1 } });
    expect(named(short).map(({ name }) => name)).toEqual(["loop-tolerance-not-known", "no-stock-loop-within-slide"]);
  });
});

describe("an idler on its axle", () => {
  const named = (change: Readonly<Record<string, unknown>>) =>
    solved(widePlan(pressAt(change))).diagnostics.filter(({ name }) => name.startsWith("idler-"));

  test("is told where its lower end belongs, and stands right there", () => {
    const facts = solved(widePlan()).sections.flatMap((section) => section.facts);
    // 22.5 less half of 10; 10 high, a washer of 1 and a nut of 4.7 on it.
    expect(facts.find(({ key }) => key === "idler.press.bottom")?.value).toBe(17.5);
    expect(facts.find(({ key }) => key === "idler.press.axle")?.value).toBeCloseTo(15.7, 9);
    expect(named({})).toEqual([]);
    expect(named({ bottom: 17.5, axle: 17.3 })).toEqual([]);
    expect(named({ bottom: 17.95 })).toEqual([]);
  });

  test("is told what to set, and nothing more once it is set", () => {
    const [low] = named({ bottom: 15 });
    expect(low).toMatchObject({ level: "error", set: "bottom: 17.5", found: { value: 2.5, unit: "mm" } });
    const [short] = named({ axle: 12 });
    expect(short).toMatchObject({ level: "error", set: "axle: 17.3 or more", limit: { value: 15.7, unit: "mm" } });
  });
});
