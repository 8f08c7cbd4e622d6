import { describe, expect, test } from "vitest";
import { brief } from "../../src/mechanics/bounded.ts";
import * as m from "../../src/mechanics/index.ts";
import { expectTold, mm, plain, type Told } from "./told.ts";

test("numbers in words have five digits, and say when they lie beyond", () => {
  expect([1.234567, -0.000123456, 1e12, 0].map(brief)).toEqual(["1.2346", "-0.00012346", "1000000000000", "0"]);
  expect(brief(Number.MAX_VALUE)).toBe("1.7976931348623157e+308");
  expect([Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY].map(brief)).toEqual(["over 1e308", "under -1e308"]);
});

describe("an input beyond its limits is told with both numbers", () => {
  const hole = { wanted: 22.3, shrink: 0 };
  const why = `${m.printedHole.title} holds only there: ${m.printedHole.valid}`;
  const screw = { load: 10, pitchDiameter: 7, lead: 8, flank: 15, friction: 0.15 };

  test("at least, at most", () => {
    expectTold(m.printedHole.compute({ ...hole, wanted: 0.9 }), {
      name: "input-out-of-range",
      says: "d is 0.9 and must be at least 1 mm",
      found: mm(0.9),
      limit: mm(1),
      why,
      set: "diameter the print should have: at least 1 mm",
    });
    expectTold(m.printedHole.compute({ ...hole, shrink: 0.7 }), {
      name: "input-out-of-range",
      says: "s_v is 0.7 and must be at most 0.6 mm",
      found: mm(0.7),
      limit: mm(0.6),
      why,
      set: "how much holes of this printer come out small: at most 0.6 mm",
    });
  });

  test("above, below, whole", () => {
    const { symbol, meaning } = m.screwTorque.inputs.friction;
    expectTold(m.screwTorque.compute({ ...screw, friction: 0.5 }), {
      name: "input-out-of-range",
      says: `${symbol} is 0.5 and must be below 0.5`,
      found: plain(0.5),
      limit: plain(0.5),
      set: `${meaning}: below 0.5`,
    });
    expectTold(m.screwTorque.compute({ ...screw, load: 0 }), {
      name: "input-out-of-range",
      says: `${m.screwTorque.inputs.load.symbol} is 0 and must be above 0 N`,
      found: { value: 0, unit: "N" },
      limit: { value: 0, unit: "N" },
      set: `${m.screwTorque.inputs.load.meaning}: above 0 N`,
    });
    expectTold(m.bearingAxialLimit.compute({ rating: 1000, small: 0.6 }), {
      name: "input-out-of-range",
      says: "small is 0.6 and must be a whole number",
      found: plain(0.6),
      limit: plain(1),
      set: "1 for a bore up to 12 mm or a light series, else 0: a whole number",
    });
    expect(m.bearingAxialLimit.compute({ rating: 1000, small: 0 })).toEqual({ limit: 500 });
  });
});

describe("screws", () => {
  const corners = [
    { name: "A", x: 0, y: 0 },
    { name: "B", x: 300, y: 0 },
    { name: "C", x: 150, y: 260 },
  ];

  test("a weight beside them: which lifts, by how much the weight is out", () => {
    expectTold(m.screwLoads(corners, 30, { x: 150, y: -26 }), {
      name: "mass-outside-screws",
      says: "the centre of mass at x 150, y -26 mm lies 26 mm outside A, B, C: C would pull with 3 N",
      found: { value: expect.closeTo(-3, 9), unit: "N" },
      limit: { value: 0, unit: "N" },
      why: "the stage tips over its two loaded screws, and the third corner lifts off its nut",
      set: "the centre of mass at least 26 mm further in, or a screw further out",
    });
    const loadsAt = (y: number) => m.screwLoads(corners, 1000, { x: 150, y });
    const half = (name: string) => ({ name, load: expect.closeTo(500, 6) });
    expect(loadsAt(0)).toEqual([half("A"), half("B"), { name: "C", load: 0 }]);
    expect(loadsAt(-2.6e-8)).toEqual([half("A"), half("B"), { name: "C", load: 0 }]);
    expect(loadsAt(-2.6e-6)).toHaveProperty("defect.name", "mass-outside-screws");
    expect(m.screwLoads(corners.slice(1), 30, corners[0] as m.Point)).toEqual({
      refused: "three screws are asked for, and these are 2",
    });
  });

  test("four of them: a weight on their edge lifts none, one beside it does", () => {
    const square = [...corners.slice(0, 2), { x: 300, y: 300 }, { x: 0, y: 300 }];
    expect(m.fourScrewBounds(square, 1000, { x: 150, y: -3e-8 })).toHaveProperty("lifts", false);
    expect(m.fourScrewBounds(square, 1000, { x: 150, y: -3e-6 })).toHaveProperty("lifts", true);
  });

  // Ten millimetres round the thread.
  const screw = { load: 1, pitchDiameter: 10 / Math.PI, flank: 0, friction: 0.4 };

  test("a thread that jams, and one that is too steep", () => {
    expectTold(m.screwTorque.compute({ ...screw, flank: 45, lead: 20 }), {
      name: "screw-jams",
      says: "the screw jams: at a friction of 0.4 no torque raises the load, only below 0.35355",
      found: plain(0.4),
      limit: plain(expect.closeTo(Math.SQRT1_2 / 2, 12)),
      set: "a friction below 0.35355: a smaller lead, or a greased nut",
    });
    expect(m.screwTorque.compute({ ...screw, lead: 25 })).toHaveProperty("defect.name", "screw-jams");
    expectTold(m.screwTorque.compute({ ...screw, lead: 10 }), {
      name: "lead-angle-too-steep",
      says: "the lead angle is 45 deg or more: a lead of 10 mm on 10 mm round the thread",
      found: mm(10),
      limit: mm(10),
      set: "a lead below 10 mm",
    });
  });

  test("a lead of no whole pitches, with the nearest that is", () => {
    const told = (lead: number, pitch: number, pitches: string, nearest: number) =>
      expectTold(m.threadStarts.compute({ lead, pitch }), {
        name: "lead-not-whole-pitches",
        says: `a lead of ${lead} mm is ${pitches} pitches of ${pitch} mm, not 1 to 16 whole ones`,
        found: mm(lead),
        limit: mm(nearest),
        set: `a lead of ${nearest} mm, or the pitch as measured over ten crests`,
      });
    told(8, 2.5, "3.2", 7.5);
    told(34, 2, "17", 32);
    told(0.5, 2, "0.25", 2);
    told(1e-7, 1, "1e-7", 1);
    expect(m.threadStarts.compute({ lead: 32, pitch: 2 })).toEqual({ starts: 16 });
    expect(m.threadStarts.compute({ lead: 2, pitch: 2 })).toEqual({ starts: 1 });
  });
});

describe("springs and heat", () => {
  // Coils meet, with 15 % to spare, at 10 mm.
  const spring = { solidLength: 8.5, freeLength: 20, share: 8, range: 2 };
  const why = "shorter the coils would meet, longer the spring would not hold the plate";

  test("a band of set lengths that closes", () => {
    expect(m.springBand.compute({ ...spring, rate: 2 })).toEqual({ low: 12, high: 12 });
    expectTold(m.springBand.compute({ ...spring, rate: 1.5 }), {
      name: "spring-band-empty",
      says: "no set length is left; a rate of 2 N/mm or more opens one",
      found: mm(12),
      limit: mm(10),
      why,
      set: "a spring of 2 N/mm or more",
    });
    expectTold(m.springBand.compute({ ...spring, rate: 1.5, range: 5 }), {
      name: "spring-too-short",
      says: "the spring is too short for a travel of 5 mm to each side",
      found: mm(15),
      limit: mm(7),
      why,
      set: "a longer spring, or less travel",
    });
  });

  test("a spring whose coils already meet", () => {
    const solid: Told = {
      name: "spring-already-solid",
      says: "the spring is solid at its free length: 20 mm, and its coils fill 20 mm",
      found: mm(20),
      limit: mm(20),
      set: "a free length of over 20 mm, fewer coils or thinner wire",
    };
    expectTold(m.springBand.compute({ ...spring, solidLength: 20, rate: 2 }), solid);
    expectTold(m.clashAllowance.compute({ solidLength: 20, freeLength: 20, shortest: 10 }), solid);
  });

  test("a heater that only just keeps up with the loss never gets there", () => {
    expectTold(m.warmUp.compute({ mass: 1, heat: 900, warming: 60, power: 120, loss: 2 }), {
      name: "heater-never-gets-there",
      says: "the plate ends 60 K above the air and never gets there",
      found: { value: 60, unit: "K" },
      limit: { value: 60, unit: "K" },
      why: "the plate loses all the heat that it gets before it is warm",
      set: "a heater of over 120 W, insulation under the plate, or a cooler plate",
    });
  });

  test("a hole that a polygon of 76 sides just keeps gets no more", () => {
    const wanted = 0.02 / (1 - Math.cos(Math.PI / 76));
    expect(m.printedHole.compute({ wanted, shrink: 0 })).toMatchObject({ sides: 76, lost: expect.closeTo(0.02, 9) });
  });

  test("a level plate has no slope at all", () => {
    const at = (x: number, y: number) => ({ x, y, height: 0.1 });
    const plane = m.tramPlane([at(0, 0), at(170, 0), at(0, 130), at(51, 77)]);
    expect(plane).toMatchObject({ slopeX: 0, slopeY: 0, worst: 0 });
  });
});
