import { describe, expect, test } from "vitest";
import { screwFoot } from "../../../src/parts/screw-foot/index.ts";
import { widePlan } from "../../support/plans.ts";
import { printerWith } from "../../support/printer.ts";
import { evenLoads, feetOf, handLoop } from "./hand-made.ts";

type Change = Readonly<Record<string, unknown>>;

/** Groove 7, flanges 1, hub 7 and bearing 608 of width 7 on one ring of 1; the lower plane at 24. */
const WORKED = { foot: { thrust: "pulley", pulley: "40 teeth 2 mm" }, motor: { plateTop: 11.5 } };

describe("the seat of a foot", () => {
  test("worked by hand: 24 - 4.5 - 1 - 7 hub up, 24 - 11.5 - 1 - 7 hub down", () => {
    const { of } = feetOf(widePlan(WORKED));
    const a = of("A");
    expect([a.hub, a.seat, a.plane, a.residual, a.shim]).toEqual(["down", 4.5, 24, 0, 0]);
    const one = a.candidates.filter(({ rings }) => rings.length === 1);
    expect(one.map(({ hub, seat, washers }) => [hub, seat, washers])).toEqual([
      ["down", 4.5, [1]],
      ["up", 11.5, [1]],
    ]);
    expect(feetOf(widePlan({ ...WORKED, screws: { A: { foot: { hub: "up" } } } })).of("A").seat).toBe(11.5);
  });

  test("rises by 3 mm with the motor's plate, and nothing else of the foot changes", () => {
    const [still, moved] = [11.5, 14.5].map((plateTop) => feetOf(widePlan({ ...WORKED, motor: { plateTop } })));
    for (const screw of ["A", "B", "C"]) {
      const [one, other] = [still?.of(screw), moved?.of(screw)];
      expect((other?.seat ?? 0) - (one?.seat ?? 0)).toBe(3);
      const rest = (foot: typeof one) => ({ ...foot?.part.parameters, beltPlane: 0, bearingToNut: 0 });
      expect(rest(other)).toEqual(rest(one));
      expect(other?.part.placement).toEqual(one?.part.placement);
    }
  });

  test("keeps every byte where the motor slides by 3 mm in plan and no span turns", () => {
    const [still, moved] = [380, 383].map((x) =>
      feetOf(widePlan({ ...WORKED, motor: { plateTop: 11.5, at: [x, 400] } })),
    );
    expect(JSON.stringify(moved?.feet)).toBe(JSON.stringify(still?.feet));
  });

  test("two screws' pulleys on one level, the third reversed: one hub length higher (common practice)", () => {
    // Hubs of 10 put the two motor pulleys, teeth to teeth with 1 mm of air, 10 mm apart.
    const pulley = { row: "40 teeth 2 mm", hubLength: 10, height: 19 };
    const foot = { thrust: "pulley", pulley, hub: "up" };
    const plan = widePlan({ ...WORKED, foot, screws: { C: { foot: { hub: "down" } } } });
    const { of, drive } = feetOf(plan);
    expect(of("A").seat).toBe(of("B").seat);
    expect(of("C").seat).toBe(of("A").seat);
    expect(of("C").plane - of("A").plane).toBe(10);
    expect((drive.pulleys[1]?.plane ?? 0) - (drive.pulleys[0]?.plane ?? 0)).toBe(10);
  });

  test("of a lower bar is as much higher over it", () => {
    const lower = { from: [0, 15, -20], to: [760, 15, -20] };
    const [one, other] = [feetOf(widePlan(WORKED)), feetOf(widePlan({ ...WORKED, bars: { front: lower } }))];
    expect(other.of("A").seat - one.of("A").seat).toBe(5);
    expect(other.of("A").seatOverDatum).toBe(one.of("A").seatOverDatum);
    expect(other.of("A").part.placement.origin[2]).toBe(-5);
  });
});

describe("the choice", () => {
  test("takes the lower seat, and says of every other way why it lost", () => {
    const { candidates } = feetOf(widePlan(WORKED)).of("A");
    expect(candidates).toHaveLength(6);
    expect(candidates.map(({ lost }) => lost === undefined)).toEqual([true, false, false, false, false, false]);
    expect(candidates[1]?.lost).toBe("it fits, with a seat 7.00 mm higher");
    // Other rings are measured out only: without one 5.5 and 12.5, with two 3.5 and 10.5.
    expect(candidates.slice(2).map(({ hub, seat }) => [hub, seat])).toEqual([
      ["down", 5.5],
      ["up", 12.5],
      ["down", 3.5],
      ["up", 10.5],
    ]);
    expect(new Set(candidates.slice(2).map(({ lost }) => lost))).toEqual(
      new Set(["not tried, since the usual ring fits"]),
    );
  });

  test("on a post as high as it is asked for: the foot hangs there, and is no taller for it", () => {
    const post = { bar: "30x30 slot 8", from: [15, 280, 0], to: [15, 280, 500] };
    const screws = { A: { at: [62, 280], bar: "post-left", foot: { mount: "on-post" } } };
    const high = { ...WORKED, motor: { plateTop: 75 }, bars: { "post-left": post }, screws };
    const { seat, candidates } = feetOf(widePlan(high)).of("A");
    // 87.5 - 11.5 - 1 - 7 over the datum, 60 of it allowed over a bar.
    expect(seat).toBe(68);
    const untried = candidates.filter(({ rings }) => rings.length !== 1);
    expect(untried.map(({ hub, seat }) => [hub, seat])).toEqual([
      ["down", 69],
      ["up", 76],
      ["down", 67],
      ["up", 74],
    ]);
    expect(new Set(untried.map(({ lost }) => lost))).toEqual(new Set(["not tried, since the usual ring fits"]));
  });

  test("says of a way without rings what it does to the bearing", () => {
    const plan = widePlan({ ...WORKED, screws: { A: { foot: { washers: [] } } } });
    const section = feetOf(plan).sections.find(({ title }) => title === "Foot of A");
    // The flange would lie on the bearing itself, whose outer land begins at 19.2.
    expect(section?.lines?.join()).toContain("28.0 mm wide and reaches past its 19.2 mm");
  });

  test("takes the hub up where the seat would be too low otherwise: on top of the bar", () => {
    const onTop = { mount: "on-top", hub: "auto" };
    const plan = widePlan({ ...WORKED, screws: { A: { at: [150, 15], foot: onTop } } });
    const { of, diagnostics } = feetOf(plan);
    // As the part's own worked example: lowest seat 6, so 4.5 is out; 11.5 is printed at 11.4.
    expect([of("A").hub, of("A").seat, of("A").plane, of("A").residual]).toEqual(["up", 11.4, 23.9, -0.1]);
    expect(of("A").candidates.find(({ hub, rings }) => hub === "down" && rings.length === 1)?.lost).toContain(
      "6.00 mm",
    );
    expect(diagnostics).toEqual([]);
  });

  test("takes other rings only where the usual one does not fit", () => {
    // Over the bar seats from 6 on; the plane at 27 gives 27 - 4.5 - 1 - 9 - 7 = 5.5 with a ring under the collar.
    const foot = { mount: "on-top", thrust: "collar" };
    const plan = widePlan({ ...WORKED, motor: { plateTop: 14.5 }, screws: { A: { at: [150, 15], foot } } });
    const { candidates } = feetOf(plan).of("A");
    expect(candidates[0]).toMatchObject({ hub: "up", rings: [] });
    expect(candidates.find(({ hub, rings }) => hub === "up" && rings.length === 1)?.lost).toContain(
      "floor allows 6.00",
    );
  });

  test("keeps to rings and hub that were asked for", () => {
    const plan = widePlan({ ...WORKED, screws: { A: { foot: { washers: ["8 x 14 x 0.5"], hub: "up" } } } });
    const { candidates, part } = feetOf(plan).of("A");
    expect(candidates.map(({ hub, rings, seat }) => [hub, rings, seat])).toEqual([["up", ["8 x 14 x 0.5"], 12]]);
    expect(part.derived).not.toContain("hub");
    expect(part.derived).not.toContain("washers");
  });

  test("goes the way of the loop where only the hub is open", () => {
    // Without a hub both ways give one seat; B is told to point up.
    const pulley = { row: "40 teeth 2 mm", hubLength: 0, height: 9 };
    const bare = { foot: { thrust: "collar", pulley } };
    const hubs = (screws: Change) => feetOf(widePlan({ ...WORKED, ...bare, screws })).feet.map(({ hub }) => hub);
    expect(hubs({})).toEqual(["down", "down", "down"]);
    const low = { nodes: ["motor", "A", "B", "C"] };
    const together = feetOf(
      widePlan({
        ...WORKED,
        ...bare,
        loops: { low },
        screws: { B: { foot: { hub: "up" } }, C: { foot: { hub: "up" } } },
      }),
    );
    expect(together.feet.map(({ hub }) => hub)).toEqual(["up", "up", "up"]);
  });

  test("an accepted error of the stack is no reason against a way", () => {
    const accept = [{ part: "foot-a", check: "seat-too-tall", because: "the stage stops above it by a block" }];
    const tall = { ...WORKED, travel: { lowest: 30, nut: 125 } };
    expect(feetOf(widePlan(tall)).diagnostics.map(({ name }) => name)).toContain("foot-stack-does-not-fit");
    expect(feetOf(widePlan({ ...tall, accept })).of("A").seat).toBe(4.5);
  });
});

describe("what the plan says of a foot", () => {
  const [A, B] = [widePlan().screws.A?.at, widePlan().screws.B?.at] as [[number, number], [number, number]];
  const node = (name: string, [x, y]: [number, number]) => ({ name, x, y, radius: 10, inside: true, teeth: 40 });
  const low = handLoop("low", [node("A", A), node("B", B), node("motor", [380, 400])]);

  test("spans of the belt come in the foot's own frame, right where the belt leaves counter-clockwise", () => {
    const { part, bar } = feetOf(widePlan(WORKED), { loops: [low] }).of("A");
    // The front bar lies before the foot, so its own x is the machine's.
    expect([bar, part.placement.angle]).toEqual(["front", 0]);
    const to = (Math.atan2(400 - 62, 380 - 150) * 180) / Math.PI;
    expect(part.parameters.beltSpans).toEqual([
      { azimuth: 0, side: "right" },
      { azimuth: Math.round(to * 100) / 100, side: "left" },
    ]);
    // The back bar's foot looks the other way.
    expect(feetOf(widePlan(WORKED)).of("C").part.placement.angle).toBe(180);
  });

  test("the belt's pull is twice its tension by the sine of half the wrap", () => {
    const { part } = feetOf(widePlan(WORKED), { loops: [low] }).of("A");
    const wrap = low.belt.wraps[0] ?? 0;
    expect(part.parameters.beltPull).toBeCloseTo(30 * Math.sin((wrap * Math.PI) / 360), 1);
  });

  test("loads, crash, stage, nut, posts and stock", () => {
    const change = { ...WORKED, stock: { bolts: [14, 16, 20] }, travel: { lowest: 90 } };
    const plan = widePlan({ ...change, screws: { A: { at: [55, 230], bar: "left" } } });
    const { part } = feetOf(plan, { loads: evenLoads(plan, 61.234, -3, 140) }).of("A");
    expect(part.parameters).toMatchObject({
      axialLoad: 61.2,
      steadyLoad: 0,
      otherSink: 0,
      crashForce: 140,
      stageLowest: 90,
    });
    expect(part.parameters).toMatchObject({ axisOffset: 25, label: "A", boltLengths: [14, 16, 20], beltWidth: 6 });
    // Seat 4.5 and half a bearing: the nut's middle at 125.
    expect(part.parameters.bearingToNut).toBeCloseTo(125 - 4.5 - 3.5, 9);
    // The foot's y points to +x of the machine: the post at (15, 280) stands 50 along its -x and 40 behind it.
    expect(part.placement.angle).toBe(270);
    expect(part.parameters.framePosts).toEqual([{ x: -50, y: -40, width: 20 }]);
  });

  test("a crash presses on a collar too, and set screws that carry nothing are not counted on", () => {
    const held = (foot: object) => {
      const plan = widePlan({ ...WORKED, foot: { ...WORKED.foot, ...foot } });
      const { part } = feetOf(plan, { loads: evenLoads(plan, 100, -3, 400) }).of("A");
      const { dimensions, diagnostics } = screwFoot.design(part.parameters, printerWith());
      const value = (name: string) => dimensions.find(({ symbol }) => symbol === name)?.value ?? Number.NaN;
      const told = diagnostics.map(({ says }) => says).join("; ");
      return { crash: part.parameters.crashForce, holds: value("n_hold"), factor: value("k_crash"), told };
    };
    const clamp = held({ thrust: "collar" });
    expect(clamp).toMatchObject({ crash: 400, holds: 0, factor: 1000 });
    expect(clamp.told).toContain("the clamp collar carries 100 N, and 500 N when the motor stalls");
    // One M4 point of 1713 N (Shigley, Table 7-4) on thread crests, 0.3 of it (common practice).
    const set = held({ thrust: "collar", collar: "8 set screw" });
    expect(set).toMatchObject({ crash: 400, holds: 1 });
    expect(set.factor).toBeCloseTo((0.3 * 1713) / 500, 3);
    expect(held({ thrust: "shoulder" })).toMatchObject({ crash: 0, holds: 0, factor: 1000 });
  });

  test("what is not known yet is the family's default", () => {
    const { part } = feetOf(widePlan(WORKED)).of("A");
    expect(part.parameters).toMatchObject({ axialLoad: 50, beltPull: 30, crashForce: 0 });
    expect(part.parameters).not.toHaveProperty("otherSink");
    expect(part.derived).not.toContain("axialLoad");
  });

  test("no foot of the machine has a setting that it does not use", () => {
    for (const mount of ["on-side", "on-top", "under"]) {
      for (const more of [{ thrust: "hung" }, { thrust: "collar" }, { style: "bridged" }, {}]) {
        const at = mount === "on-top" ? [150, 15] : [150, 62];
        const screws = { A: { at, foot: { mount, ...more } } };
        const plan = widePlan({ ...WORKED, motor: { plateTop: 20 }, screws });
        const { part } = feetOf(plan, { loads: evenLoads(plan, 60, 20, 100), loops: [low] }).of("A");
        const names = screwFoot.design(part.parameters, printerWith()).diagnostics.map(({ name }) => name);
        expect(names, `${mount} ${JSON.stringify(more)}`).not.toContain("setting-not-used");
      }
    }
  });
});

describe("parameters by hand", () => {
  const complaints = (foot: Change, own: Change = {}) =>
    feetOf(widePlan({ ...WORKED, foot: { ...WORKED.foot, ...foot }, screws: { A: { foot: own } } })).diagnostics.map(
      ({ path, set }) => [path.join("."), set],
    );

  test("what only the plan can know is refused where it was typed, once, and the plan's own is used", () => {
    expect(complaints({ beltPlane: 30 })).toEqual([
      ["foot.beltPlane", "nothing here; it follows from motor.plateTop and motor.pulleys"],
    ]);
    expect(complaints({}, { axialLoad: "20 N" })).toEqual([
      ["screws.A.foot.axialLoad", "nothing here; it follows from plate, masses and print"],
    ]);
    expect(feetOf(widePlan({ ...WORKED, foot: { ...WORKED.foot, beltPlane: 30 } })).of("A").plane).toBe(24);
  });

  test("an offset that was measured passes where it agrees with the places", () => {
    expect(complaints({}, { axisOffset: "32.03 mm" })).toEqual([]);
    expect(complaints({}, { axisOffset: 30 })).toEqual([
      ["screws.A.foot.axisOffset", "axisOffset: 32, or another at: of A"],
    ]);
  });

  test("a wrong word is told of at its place, with the nearest right one", () => {
    expect(complaints({ thrust: "colar" })).toEqual([["foot.thrust", "collar"]]);
    expect(complaints({ beering: "608" })).toEqual([["foot.beering", "bearing"]]);
    expect(complaints({}, { washers: ["8 x 12 x 1.1"] }).map(([path]) => path)).toEqual(["screws.A.foot.washers.0"]);
  });

  test("a derived value out of range is told of where it comes from", () => {
    const plan = widePlan({ ...WORKED, loops: { low: { belt: { row: "2 mm round", thickness: 0 } } } });
    expect(feetOf(plan).diagnostics.map(({ path }) => path.join("."))).toEqual(["loops.low.belt"]);
    const near = feetOf(widePlan({ ...WORKED, travel: { nut: 20 } })).diagnostics;
    expect(near.map(({ path }) => path.join("."))).toEqual(["travel.nut", "travel.nut", "travel.nut"]);
    expect(near[0]?.set).toBe("nut: 28");
    expect(feetOf(widePlan({ ...WORKED, travel: { nut: 38 } })).diagnostics).toEqual([]);
  });
});
