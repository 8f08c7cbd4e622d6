import { describe, expect, test } from "vitest";
import { thumbWheel } from "../../../src/parts/thumb-wheel/index.ts";
import { tramMount } from "../../../src/parts/tram-mount/index.ts";
import { printerWith } from "../../support/printer.ts";

/** All figures of this file were worked by hand for this project. */

function designWith(parameters: object) {
  return tramMount.design(tramMount.schema.parse(parameters) as never, printerWith());
}

function numbersOf(parameters: object): Map<string, number> {
  return new Map(designWith(parameters).dimensions.map(({ symbol, value }) => [symbol, value]));
}

const COLUMNS = {
  "fixed, thumb wheel": { type: "fixed" },
  "slot, thumb wheel": {},
  "free, thumb wheel": { type: "free" },
  "slot, captive nut": { joint: "captive-nut" },
  "fixed, insert": { type: "fixed", joint: "insert" },
  "slot, tapped plate": { joint: "tapped-plate" },
} as const;

type Row = readonly [number, number, number, number, number, number];

/** One line per figure; the columns in the order above. */
const ROWS: Readonly<Record<string, Row>> = {
  R: [3, 3, 3, 3, 3, 0.5],
  L_set: [16, 16, 16, 16, 16, 13.9],
  B_low: [14.609, 14.609, 14.609, 14.609, 14.609, 13.85],
  B_high: [17.355, 17.355, 17.355, 17.355, 17.355, 14.652],
  q: [0, 1.1, 1.1, 1.1, 0, 1.1],
  w_o: [5.3, 5.5, 7.2, 5.5, 5.3, 4.5],
  l_o: [5.3, 7.7, 7.2, 7.7, 5.3, 6.7],
  c_i: [10.8, 10.8, 10.8, 10.8, 10.8, 9.8],
  R_c: [7.9, 7.9, 7.9, 7.9, 7.9, 7.4],
  d_c: [4, 4, 4, 4, 4, 3.6],
  t: [8, 8, 8, 10, 12.6, 8],
  z_row: [0, 0, 0, -2, -4.6, 0],
  a: [16, 17, 17, 17, 16, 16.5],
  h_w: [15, 15, 15, 15, 15, 15],
  x_b: [22, 22, 22, 22, 22, 22],
  z_p: [18.2, 18.2, 18.2, 18.2, 18.2, 15.7],
  g_r: [11.2, 11.2, 11.2, 11.2, 11.2, 11.6],
  L_need: [45.85, 45.85, 45.85, 36.55, 35.35, 29.2],
  L_b: [50, 50, 50, 40, 40, 30],
};

describe.each(Object.entries(COLUMNS).map(([name, parameters], column) => ({ name, parameters, column })))(
  "a $name mount",
  ({ parameters, column }) => {
    const numbers = numbersOf(parameters);

    test.each(Object.entries(ROWS))("%s", (symbol, row) => {
      expect(numbers.get(symbol)).toBeCloseTo(row[column] ?? Number.NaN, 3);
    });

    test("reaches as far when it lies on the bar or over its end", () => {
      const onTop = [14, 15.5, 15.5, 11, 10, 10.5][column] ?? Number.NaN;
      const end = [16, 17, 17, 17, 16, 16.5][column] ?? Number.NaN;
      expect(numbersOf({ ...parameters, mount: "on-top" }).get("a")).toBeCloseTo(onTop, 6);
      expect(numbersOf({ ...parameters, mount: "end" }).get("a")).toBeCloseTo(end, 6);
    });

    test("passes without a warning", () => {
      for (const mount of ["on-side", "on-top", "end"]) {
        const loud = designWith({ ...parameters, mount }).diagnostics.filter(({ level }) => level !== "note");
        expect(loud).toEqual([]);
      }
    });
  },
);

// The usual slot mount needs 17; needs are rounded up to 0.5, a distance that is asked for is kept as it is.
test.each([
  [undefined, 17],
  [12, 17],
  [17, 17],
  [19.05, 19.05],
  [24.13, 24.13],
])("with a reach of %s it stands %s off the bar's face", (reach, stands) => {
  expect(numbersOf({ reach }).get("a")).toBe(stands);
});

describe("the ends of the tram bolt", () => {
  test.each([
    ["slot, thumb wheel", 8.75, 11.75],
    ["slot, captive nut", 8.05, 11.05],
  ] as const)("%s: beyond the nut as set and at the low end", (column, set, low) => {
    const numbers = numbersOf(COLUMNS[column]);
    expect(numbers.get("u_set")).toBeCloseTo(set, 6);
    expect(numbers.get("u_low")).toBeCloseTo(low, 6);
  });

  test("with an insert it comes 6.15 mm out of the bracket", () => {
    expect(numbersOf(COLUMNS["fixed, insert"]).get("u_all")).toBeCloseTo(6.15, 6);
  });

  test("in a tapped plate 29.2 to 30.05 mm fit, and the tip stays 0.55 mm below the top", () => {
    const numbers = numbersOf(COLUMNS["slot, tapped plate"]);
    expect(numbers.get("L_most")).toBeCloseTo(30.05, 6);
    expect(numbers.get("u_tip")).toBeCloseTo(0.55, 6);
    expect(numbers.get("E_t")).toBeCloseTo(4.8, 6);
  });
});

describe("the washers", () => {
  test.each([
    ["fixed, thumb wheel", 9.3, 15],
    ["slot, thumb wheel", 9.5, 15],
    ["free, thumb wheel", 11.4, 15],
    ["slot, tapped plate", 8.5, 12],
  ] as const)("%s: what slides below is wide enough", (column, need, has) => {
    const { dimensions, givens } = designWith(COLUMNS[column]);
    expect(dimensions.find(({ symbol }) => symbol === "OD_wn")?.value).toBeCloseTo(need, 6);
    expect(givens.find(({ symbol }) => symbol === "OD_w")?.value).toBe(has);
  });

  test("a plain washer that the opening would swallow is replaced by a large one", () => {
    expect(numbersOf({ type: "free", growth: 0.6 }).get("OD_s")).toBe(10);
    expect(numbersOf({ type: "free", growth: 1 }).get("OD_s")).toBe(15);
  });
});

describe("the M5 spring", () => {
  test.each([
    ["k", 5.166, 3],
    ["L_solid", 9.6, 6],
    ["F_set", 46.5, 1],
    ["F_long", 31, 1],
    ["F_short", 62, 1],
    ["n_p", 1.94, 2],
    ["xi", 0.283, 3],
    ["C", 7.33, 2],
    ["K_B", 1.19, 3],
    ["tau", 956.7, 1],
    ["lambda", 2.84, 2],
    ["T_b", 45.4, 1],
    ["sigma", 2.27, 2],
  ] as const)("%s = %f", (symbol, value, digits) => {
    expect(numbersOf({}).get(symbol)).toBeCloseTo(value, digits);
  });

  test("0.45 of the wire's strength is 969.0 MPa", () => {
    expect(0.45 * (numbersOf({}).get("S_ut") ?? 0)).toBeCloseTo(969, 1);
  });
});

describe("the M4 spring in a tapped plate", () => {
  test.each([
    ["k", 4.95, 3],
    ["F_set", 30.2, 1],
    ["F_long", 27.7, 1],
    ["F_short", 32.7, 1],
    ["xi", 0.818, 3],
    ["tau", 698.9, 1],
  ] as const)("%s = %f", (symbol, value, digits) => {
    expect(numbersOf({ joint: "tapped-plate" }).get(symbol)).toBeCloseTo(value, digits);
  });

  test("0.45 of the wire's strength is 995 MPa", () => {
    expect(0.45 * (numbersOf({ joint: "tapped-plate" }).get("S_ut") ?? 0)).toBeCloseTo(995, 0);
  });
});

test("the M3 spring has 4.946 N/mm", () => {
  expect(numbersOf({ bolt: "M3" }).get("k")).toBeCloseTo(4.946, 3);
});

test.each([
  ["M3", 1.4],
  ["M4", 0.9],
  ["M5", 0.4],
] as const)("a tapped plate of 6.35 mm leaves %s a travel of %f mm each way and no more", (bolt, range) => {
  // A stock of every tenth: then the plate alone decides.
  const stock = (from: number) => Array.from({ length: 40 }, (_, step) => from + step / 2);
  const names = (travel: number) =>
    [...stock(10), ...stock(20), ...stock(30)].map((boltLength) =>
      designWith({ joint: "tapped-plate", bolt, range: travel, share: 2, boltLength, plate: 6.35 }).diagnostics.some(
        ({ name, level }) => name === "tapped-plate-engagement-short" && level === "error",
      ),
    );
  expect(names(range)).toContain(false);
  expect(names(range + 0.1)).not.toContain(false);
});

describe("the mounting bolts", () => {
  test.each([
    [{ mount: "on-side" }, 12, 0],
    [{ mount: "on-top" }, 12, 1.8],
    [{ mount: "on-top", joint: "captive-nut" }, 16, 0],
    [{ mount: "on-top", joint: "insert", type: "fixed" }, 16, 2.4],
  ] as const)("%j", (parameters, length, counterbore) => {
    const numbers = numbersOf(parameters);
    expect(numbers.get("L_m")).toBe(length);
    expect(numbers.get("c_b")).toBeCloseTo(counterbore, 6);
  });
});

describe("what a builder is told", () => {
  test("four round holes under a hot plate are an error, and three points of one kind each are not", () => {
    const named = (parameters: object) =>
      designWith(parameters).diagnostics.map(({ name, level }) => `${level} ${name}`);
    const round = ["free", "free", "free", "free"];
    expect(named({ type: "free", allTypes: round })).toContain("error growth-types-not-one-each");
    expect(named({ type: "fixed", allTypes: ["fixed", "fixed", "fixed", "fixed"] })).toContain(
      "error growth-types-not-one-each",
    );
    expect(named({ allTypes: ["fixed", "slot", "slot", "free"] })).toContain("warning growth-types-not-one-each");
    expect(
      named({ allTypes: ["fixed", "slot", "slot", "free"], plate: 4, bolt: "M3", joint: "tapped-plate", range: 0.3 }),
    ).not.toContain("warning growth-types-not-one-each");
    expect(named({ allTypes: ["free", "slot", "fixed"] }).join()).not.toContain("growth-types");
  });

  test("a spring with no set length names the rate that would do", () => {
    const found = designWith({ share: 60 }).diagnostics.find(({ name }) => name === "spring-preload-too-low");
    expect(found?.level).toBe("error");
    // 1.5 x 60 N over 25 - 6 - 13.35 / 1.15 mm.
    expect(found?.set).toContain("12.18 N/mm");
  });

  test("the thumb wheel that goes with it is one its own family accepts", () => {
    const [companion] = designWith({ type: "free", lockNut: true, wheelDiameter: 26 }).companions;
    expect(companion).toMatchObject({ family: "thumb-wheel", count: 1 });
    const wheel = thumbWheel.design(thumbWheel.schema.parse(companion?.parameters) as never, printerWith());
    expect(wheel.diagnostics.filter(({ level }) => level !== "note")).toEqual([]);
    const value = (symbol: string) => wheel.dimensions.find((one) => one.symbol === symbol)?.value;
    expect(value("h_k")).toBe(numbersOf({ lockNut: true }).get("h_k"));
    expect(value("f_w")).toBeCloseTo(numbersOf({ lockNut: true }).get("f_w") ?? Number.NaN, 9);
    expect(value("g_b")).toBeGreaterThanOrEqual(2);
    expect(designWith({ joint: "captive-nut" }).companions).toEqual([]);
  });

  test("a bracket too hot is found at its own temperature, and the material's is the limit", () => {
    const hot = (parameters: object) => designWith(parameters).diagnostics.find(({ name }) => name.endsWith("too-hot"));
    const place = numbersOf({ material: "PLA" }).get("T_b") ?? Number.NaN;
    expect(hot({ material: "PLA" })).toMatchObject({ level: "error", limit: { value: 37, unit: "°C" } });
    expect(hot({ material: "PLA" })?.found?.value).toBe(place);
    expect(hot({ material: "PETG" })).toMatchObject({
      level: "warning",
      limit: { value: 35 },
      found: { value: place },
    });
  });
});
