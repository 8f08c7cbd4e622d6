import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { run } from "../cli/program.ts";
import { loadedPlan } from "../support/loaded-plan.ts";

// common practice: what a builder tries, from the least trouble to the most, when a seat lies under the floor.
const PLAN = resolve("tests/support/infeasible.yaml");
const IN_ORDER = [
  /^turn the hub over\b/,
  /^change the rings\b/,
  /^a thinner bearing of the same bore\b/,
  /^a lower mount\b/,
  /^move all belt planes\b/,
  /^swap which loop is lower\b/,
  /^a pulley without a hub\b/,
  /^two single pulleys on the motor\b/,
  /^move the whole drive under the bars\b/,
];

function loaded(set: readonly string[] = []) {
  const { machine, errors } = loadedPlan(PLAN, set);
  return { machine, errors, names: errors.map(({ diagnostic: { name, path } }) => `${name} at ${path.join(".")}`) };
}

const BASE = loaded();
const HOPELESS = ["A", "B", "C"].map((screw) => `belt-plane-below-lowest-seat at screws.${screw}`);

/** The ways that a message names, each as the settings that would be typed; those without a path are left out. */
function named(set: string): string[][] {
  return set
    .replaceAll(/ \([^()]*\)/g, "")
    .split(", or ")
    .map((way) => way.split(" and ").map((one) => /^([a-z][\w-]*(?:\.[\w-]+)+): (.+)$/i.exec(one)))
    .filter((way) => way.every((one) => one !== null))
    .map((way) => way.map((one) => `${one?.[1]}=${one?.[2]}`));
}

/** The ways out of all feet as the report lists them, once: what each asks for, and what came of it. */
function listed() {
  const section = BASE.machine.stage.sections.find(({ title }) => title === "Ways out for the feet of A, B and C");
  return section?.lines ?? [];
}

describe("a machine of which no single way out helps", () => {
  // A lacks the length of a hub, B a millimetre or two of its own; the screws' lower end leaves no room for higher planes.
  const SET = [
    "motor.plateTop=14",
    "travel.lowest=48",
    "screws.A.foot.hub=down",
    'screws.B.foot.washers=["8 x 14 x 1.0", "8 x 14 x 1.0"]',
    "screws.C.foot.hub=down",
  ];
  const { machine, errors, names } = loaded(SET);
  const { lines = [] } = machine.stage.sections.find(({ title }) => title === "Ways out for the feet of A and B") ?? {};

  test("has two of them together, told last, after each of them alone", () => {
    expect(names).toEqual(["A", "B"].map((screw) => `belt-plane-below-lowest-seat at screws.${screw}`));
    expect(lines).toHaveLength(IN_ORDER.length + 1);
    for (const line of lines.slice(0, -1)) expect(line).toMatch(/leaves [a-z-]+ at /);
    const both = 'screws.A.foot.hub: up and screws.B.foot.bearing: "688"';
    expect(lines.at(-1)).toEqual(
      expect.stringMatching(/^two of these together, .*: A and B fit; warns of .*; prints 2 parts anew$/),
    );
    expect(lines.at(-1)).toContain(`two of these together, ${both}: `);
    const sets = errors.map(({ diagnostic: { set } }) => set);
    expect(sets).toEqual([
      `${both} (prints 2 parts anew, with 5 warnings more)`,
      "what is set for A, which mends this foot too",
    ]);
  });

  test("typed as --set the two let the machine be built, and each of them alone does not", () => {
    const [both = []] = named(errors[0]?.diagnostic.set ?? "");
    expect(both).toHaveLength(2);
    expect(loaded([...SET, ...both]).names).toEqual([]);
    for (const one of both) expect(loaded([...SET, one]).names).toHaveLength(1);
  });
});

describe("a machine whose motor hangs too low for all its feet", () => {
  test("has that against it and nothing else, each at its screw", () => {
    expect(BASE.names).toEqual(HOPELESS);
    for (const { place, diagnostic } of BASE.errors) {
      expect(place?.line).toBeGreaterThan(1);
      expect(diagnostic.found?.value).toBeLessThan(diagnostic.limit?.value ?? Number.NaN);
    }
    expect(BASE.machine.stage.feet).toEqual([]);
  });

  test("the feet have every way out in its order, with what came of it", () => {
    const lines = listed();
    expect(lines).toHaveLength(IN_ORDER.length);
    for (const [index, line] of lines.entries()) {
      expect(line).toMatch(IN_ORDER[index] as RegExp);
      expect(line.split(": ").at(-1)?.length).toBeGreaterThan(5);
    }
  });

  test("what was tried says how many parts it prints anew and what is left, the rest why it was not tried", () => {
    for (const line of listed()) {
      if (/both tried|were tried|not$|not tried/.test(line)) continue;
      expect(line).toMatch(/(fit|leaves [a-z-]+ at ).*; (prints|would print) \d+ parts? anew/);
    }
    const helping = listed().filter((line) => line.includes("prints "));
    expect(helping.length).toBeGreaterThan(0);
    for (const line of helping) expect(Number(/prints (\d+)/.exec(line)?.[1])).toBeGreaterThan(0);
  });

  test("the plane moved up by the shortfall of the lowest foot is one of them, and prints all feet", () => {
    // Over the motor's plate at 2 the seats of A and B would lie at -6, and they need 6: 12 mm, 1 more for a usual ring,
    // and 1 for the reserve over the floor.
    const line = listed().find((each) => each.startsWith("move all belt planes")) ?? "";
    expect(line).toContain("motor.plateTop: 16: A, B and C fit; prints 3 parts anew");
    expect(line).toMatch(/, and takes another mount of the motor or shims under it$/);
  });

  test("as many parts are said to be printed anew as have another hash when the way is taken", () => {
    const hashes = (machine: typeof BASE.machine) =>
      new Map(machine.parts.map(({ request: { name }, hash }) => [name, hash]));
    const before = hashes(BASE.machine);
    const helping = BASE.errors.flatMap(({ diagnostic: { set } }) =>
      set.includes("(prints ") ? set.split(", or ") : [],
    );
    expect(helping.length).toBeGreaterThan(0);
    for (const way of helping) {
      const after = hashes(loaded(named(way)[0] ?? []).machine);
      const anew = [...after].filter(([name, hash]) => before.get(name) !== hash);
      expect(Number(/\(prints (\d+) parts? anew/.exec(way)?.[1])).toBe(anew.length);
    }
  });

  test("each way that a message names makes its own error go when it is typed as --set", () => {
    const ways = BASE.errors.flatMap(({ diagnostic: { name, path, set } }) =>
      named(set).map((way) => ({ own: `${name} at ${path.join(".")}`, way })),
    );
    expect(ways.length).toBeGreaterThan(0);
    for (const { own, way } of ways) expect(loaded(way).names).not.toContain(own);
  });

  test("and one of them makes the whole machine go together", () => {
    const ways = BASE.errors.flatMap(({ diagnostic: { set } }) => named(set));
    expect(ways).toContainEqual(["motor.plateTop=16"]);
    const { names, machine } = loaded(["motor.plateTop=16"]);
    expect(names).toEqual([]);
    expect(machine.stage.feet.map(({ screw }) => screw)).toEqual(["A", "B", "C"]);
    const { code, out } = run(["report", PLAN, "--set", "motor.plateTop=16", "--json"]);
    expect(code).toBe(0);
    expect(out).not.toContain("belt-plane-below-lowest-seat");
  });
});
