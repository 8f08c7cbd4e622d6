import { describe, expect, test } from "vitest";
import { widePlan } from "../../support/plans.ts";
import { printerWith } from "../../support/printer.ts";
import { feetOf, handLoop } from "./hand-made.ts";

type Change = Readonly<Record<string, unknown>>;

const WORKED = { foot: { thrust: "pulley", pulley: "40 teeth 2 mm" }, motor: { plateTop: 11.5 } };
/** A on top of the front bar, where its seat can only be on a layer; B beside it, where it fits to a hair. */
const MIXED = { ...WORKED, screws: { A: { at: [150, 15], foot: { mount: "on-top" } } } };

const named = (outcome: ReturnType<typeof feetOf>) =>
  outcome.diagnostics
    .filter(({ name }) => name === "belt-planes-apart-in-loop")
    .map(({ level, path, found, limit }) => [level, path.join("."), found?.value, limit?.value]);

describe("pulleys of one loop", () => {
  test("all in one plane: nothing to say, and the table of the plane has them all", () => {
    const outcome = feetOf(widePlan(WORKED));
    expect(outcome.diagnostics).toEqual([]);
    const section = outcome.sections.find(({ title }) => title === "Pulleys of low");
    expect(section?.facts.map(({ key, value, limit }) => [key, value, limit?.value])).toEqual([
      ["loop.low.spread", 0, 0.5],
    ]);
    expect(section?.lines?.map((line) => line.slice(0, 11))).toEqual(["24.00 mm  m", "24.00 mm  A", "24.00 mm  B"]);
  });

  test("half a layer apart is within the play of a usual belt", () => {
    const outcome = feetOf(widePlan(MIXED));
    expect(outcome.of("A").residual).toBe(-0.1);
    expect(named(outcome)).toEqual([]);
    const spread = outcome.sections.flatMap(({ facts }) => facts).find(({ key }) => key === "loop.low.spread");
    expect(spread?.value).toBe(0.1);
  });

  test("beyond half of what the flanges guide it is a warning", () => {
    // Groove 7 and belt 6.7: the flanges guide 0.15, half of it is 0.075.
    const outcome = feetOf(widePlan({ ...MIXED, loops: { low: { width: 6.7 } } }));
    expect(named(outcome)).toEqual([["warning", "loops.low", 0.1, 0.075]]);
    expect(outcome.diagnostics[0]?.set).toContain("0.10 mm more under the bearing of A");
  });

  test("coarse layers get a shim, and what is left counts", () => {
    const printer = printerWith({ nozzle: 0.8, line: 0.8, layer: 0.4, firstLayer: 0.4 });
    // Seat 11.4 lies half a layer, 0.2, over the boundary of 11.2.
    const { of } = feetOf(widePlan({ ...MIXED, motor: { plateTop: 11.4 } }), { printer });
    expect([of("A").seat, of("A").shim, of("A").residual, of("A").plane]).toEqual([11.2, 0.2, 0, 23.9]);
  });

  test("a groove too narrow for the belt is told of at the screw, whatever the spread", () => {
    const narrow = { screws: { B: { foot: { pulley: { row: "40 teeth 2 mm", toothWidth: 6.1, height: 15.1 } } } } };
    const found = feetOf(widePlan({ ...WORKED, ...narrow })).diagnostics;
    expect(found.map(({ name, path }) => [name, path.join(".")])).toEqual([["hardware-data-disagrees", "screws.B"]]);
  });
});

describe("spans", () => {
  const node = (name: string, x: number, y: number) => ({ name, x, y, radius: 6, inside: true, teeth: 20 });
  const spans = (change: Change, apart: number) => {
    const low = handLoop("low", [node("A", 150, 15), node("motor", 150 + apart, 15)]);
    const outcome = feetOf(widePlan({ ...MIXED, ...change }), { loops: [low] });
    const facts = outcome.sections.flatMap(({ facts: all }) => all).filter(({ key }) => key.includes(".span."));
    return { facts, named: named(outcome) };
  };

  test("the angle of each is the arc tangent of the step over its length (geometry: own arithmetic)", () => {
    const { facts } = spans({}, 100);
    const angle = (Math.atan(0.1 / 100) * 180) / Math.PI;
    expect(facts.map(({ key, value }) => [key, value])).toEqual([
      ["loop.low.span.A-motor", expect.closeTo(angle, 9)],
      ["loop.low.span.motor-A", expect.closeTo(angle, 9)],
    ]);
  });

  test("up to 0.125 deg silent, beyond a warning, beyond 0.25 deg an error: 46 mm and 23 mm of span for 0.1 mm", () => {
    expect(spans({}, 46).named).toEqual([]);
    expect(spans({}, 45).named.map(([level, , , limit]) => [level, limit])).toEqual([["warning", 0.125]]);
    expect(spans({}, 23).named.map(([level]) => level)).toEqual(["warning"]);
    expect(spans({}, 22).named.map(([level, , , limit]) => [level, limit])).toEqual([["error", 0.25]]);
  });
});
