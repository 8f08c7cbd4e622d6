import { describe, expect, it } from "vitest";
import { BARS } from "../../src/catalogue/bars.ts";
import { BEARINGS } from "../../src/catalogue/bearings.ts";
import { ECCENTRICS } from "../../src/catalogue/eccentrics.ts";
import { INSERTS } from "../../src/catalogue/inserts.ts";
import { LARGE_WASHERS } from "../../src/catalogue/large-washers.ts";
import { LEAD_NUTS } from "../../src/catalogue/lead-nuts.ts";
import { LOOPS } from "../../src/catalogue/loops.ts";
import { PULLEYS } from "../../src/catalogue/pulleys.ts";
import { SCREWS } from "../../src/catalogue/screws.ts";
import { SET_SCREWS } from "../../src/catalogue/set-screws.ts";
import { SPRINGS } from "../../src/catalogue/springs.ts";
import { THREADS } from "../../src/catalogue/threads.ts";
import { WHEELS } from "../../src/catalogue/wheels.ts";
import { row } from "../../src/core/table.ts";
import { agrees } from "./agrees.ts";

describe("facts of the trade that everybody can check (common practice)", () => {
  it.each([
    [16, 10.186],
    [20, 12.732],
    [40, 25.465],
    [60, 38.197],
    [80, 50.93],
  ])(
    "a pulley of %d teeth, 2 mm apart, has a pitch diameter of %d (pulley maker's formula: seen)",
    (teeth, diameter) => {
      const { values } = row(PULLEYS, `${teeth} teeth 2 mm`);
      expect((values.teeth * values.pitch) / Math.PI).toBeCloseTo(diameter, 3);
    },
  );

  it("a 608 is 8 x 22 x 7, a 625 is 5 x 16 x 5 (seen)", () => {
    const { bore, outside, width } = row(BEARINGS, "608").values;
    expect([bore, outside, width]).toEqual([8, 22, 7]);
    expect(row(BEARINGS, "625").values).toMatchObject({ bore: 5, outside: 16, width: 5 });
  });

  it("an M5 has a pitch of 0.8 and is drilled 4.2 (seen)", () => {
    expect(row(THREADS, "M5").values).toMatchObject({ pitch: 0.8, tapDrill: 4.2 });
  });

  it("a lead screw with four starts and a pitch of 2 rises 8 per turn (seen)", () => {
    expect(row(SCREWS, "Tr8x8(P2)").values).toMatchObject({ starts: 4, pitch: 2, lead: 8, rootDiameter: 5.5 });
  });

  it("a loop of 200 mm has 100 teeth (memory)", () => {
    expect(row(LOOPS, "200").values).toEqual({ length: 200, teeth: 100, pitch: 2 });
  });
});

const BARS_USUAL = {
  source: "common practice, profile makers' trade catalogues",
  from: "memory",
  columns: ["width", "height", "module", "slotOpening", "slotMouth", "slotDepth", "lip", "threadStart", "nutLength"],
  rows: [
    ["20x20 slot 6", 20, 20, 20, 6.2, 6.2, 6.1, 1.8, 0.5, 15],
    ["20x40 slot 6", 20, 40, 20, 6.2, 6.2, 6.1, 1.8, 0.5, 15],
    ["V 20x20", 20, 20, 20, 6.2, 9.2, 6.1, 1.8, 0.5, 15],
    ["V 20x40", 20, 40, 20, 6.2, 9.2, 6.1, 1.8, 0.5, 15],
    ["30x30 slot 8", 30, 30, 30, 8.2, 8.2, 9, 2, 0.6, 22],
    ["40x40 slot 8", 40, 40, 40, 8.2, 8.2, 12.2, 4, 1, 22],
    ["40x80 slot 8", 40, 80, 40, 8.2, 8.2, 12.2, 4, 1, 22],
    ["1 in", 25.4, 25.4, 25.4, 6.5, 6.5, 6.2, 2.2, 0.6, 15],
    ["1.5 in", 38.1, 38.1, 38.1, 8.1, 8.1, 9.7, 3.3, 1, 22],
  ],
} as const;

agrees(BARS, BARS_USUAL);

describe("bars (common practice)", () => {
  it("have slots one module apart: each side is a whole number of modules", () => {
    for (const { key, values } of BARS.rows) {
      expect(Number.isInteger(values.width / values.module), key).toBe(true);
      expect(Number.isInteger(values.height / values.module), key).toBe(true);
    }
  });

  it("have the second moment of a profile page: 0.0442 in4 for 1 in, 0.254 in4 for 1.5 in (memory)", () => {
    const fourth = 2.54 ** 4;
    expect(row(BARS, "1 in").values.inertiaStrong).toBeCloseTo(0.0442 * fourth, 2);
    expect(Math.abs(row(BARS, "1.5 in").values.inertiaStrong - 0.254 * fourth)).toBeLessThan(0.05);
  });
});

/** Spring rates in N/mm, computed by EN 13906-1 for the sizes the trade sells. The sizes are from memory. */
const RATES = [
  ["0.8 x 6 x 15", "M3", 4.946],
  ["1.0 x 8 x 20", "M4", 4.95],
  ["1.2 x 10 x 25", "M5", 5.166],
  ["1.2 x 9 x 20", "M4", 8.903],
  ["1.5 x 10 x 25", "M5", 13.997],
  ["0.8 x 6 x 20 stainless", "M3", 3.797],
  ["1.2 x 8 x 25 stainless", "M4", 8.597],
] as const;

describe("levelling springs: G d^4 / (8 D^3 n), n two less than the coils (EN 13906-1, memory)", () => {
  it.each(RATES)("%s on %s: %d N/mm", (key, thread, rate) => {
    const { values } = row(SPRINGS, key);
    const mean = values.outside - values.wire;
    const computed = (values.shearModulus * values.wire ** 4) / (8 * mean ** 3 * (values.totalCoils - 2));
    expect(values.forThread).toBe(thread);
    expect(computed).toBeCloseTo(rate, 3);
  });

  it("has wire as strong as the wire table of EN 10270-1 SH, within 3 % (memory)", () => {
    const table = [
      ["0.8 x 6 x 15", 2310],
      ["1.0 x 8 x 20", 2230],
      ["1.2 x 10 x 25", 2170],
      ["1.5 x 10 x 25", 2090],
    ] as const;
    for (const [key, strength] of table) {
      const { wire, strengthA, strengthM } = row(SPRINGS, key).values;
      expect(Math.abs(strengthA / wire ** strengthM / strength - 1), key).toBeLessThan(0.03);
    }
  });
});

const SUPPLIER = {
  source: "a fastener supplier's pilot-hole chart for printed plastics",
  from: "seen",
  columns: ["hole", "outside"],
  rows: [
    ["M3", 4, 4.4],
    ["M4", 5.6, 6.1],
    ["M5", 6.4, 7.1],
    ["M6", 8, 8.5],
  ],
} as const;

agrees(INSERTS, SUPPLIER);

const WHEEL_TEST = {
  source: "a machine maker's incoming-inspection page, 23.89 by 10.23 measured",
  from: "seen",
  columns: ["outside", "width"],
  rows: [["V 23.9", 23.9, 10.2]],
} as const;

agrees(WHEELS, WHEEL_TEST);

const PLATE_HOLES = {
  source: "a component seller's page: plate hole, height",
  from: "seen",
  columns: ["plateHole", "height"],
  rows: [["1/4 in", 7.14, 6.35]],
} as const;

agrees(ECCENTRICS, PLATE_HOLES);

const T8_OUTLINE = {
  source: "common practice for T8 nuts",
  from: "memory",
  columns: ["body", "flange", "flangeThickness", "length", "holeCircle", "holeCount", "hole"],
  rows: [
    ["T8 brass", 10.2, 22, 3.5, 15, 16, 4, 3.5],
    ["T8 POM", 10.2, 22, 3.5, 15, 16, 4, 3.5],
  ],
} as const;

agrees(LEAD_NUTS, T8_OUTLINE);

describe("set screws with a cup point (bibliography: shigley, Table 7-4, from memory)", () => {
  it.each([
    ["M3", 200, 10],
    ["M4", 385, 20],
    ["M5", 540, 36],
  ])("%s holds as the nearest inch size: %d lbf at %d lbf in", (key, force, torque) => {
    const { values } = row(SET_SCREWS, key);
    expect(Math.abs(values.holdingForce - force * 4.44822)).toBeLessThan(0.6);
    expect(values.torque).toBeCloseTo(torque * 0.112985, 2);
  });
});

describe("wide washers for plastic", () => {
  it("takes the thicker M5, 1.2 by DIN 9021 (memory), and says that ISO 7093-1 has 1.0", () => {
    const { values, source, differs } = row(LARGE_WASHERS, "M5");
    expect([values.hole, values.outside, values.thickness]).toEqual([5.3, 15, 1.2]);
    expect(source).toBe("din-9021");
    expect(differs).toMatchObject([{ field: "thickness", others: [1] }]);
  });
});
