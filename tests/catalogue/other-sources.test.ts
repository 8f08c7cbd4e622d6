import { describe, expect, test } from "vitest";
import * as c from "../../src/catalogue/index.ts";
import type { Row, Table } from "../../src/core/table.ts";

const rowOf = (table: Table, key: string): Row => {
  const found = table.rows.find((row) => row.key === key);
  if (found === undefined) throw new Error(`${table.name} has no ${key}`);
  return found;
};

/** What other sources have for a row: field, then values; empty where all agree. */
function othersOf(table: Table, key: string): Record<string, readonly (number | string)[]> {
  return Object.fromEntries((rowOf(table, key).differs ?? []).map(({ field, others }) => [field, others]));
}

/** Keys of the rows on which sources disagree, in order. */
const disputed = (table: Table) => table.rows.filter(({ differs }) => differs !== undefined).map(({ key }) => key);

describe("rows that an older standard has otherwise (DIN 933, 934 and 985, withdrawn; from memory)", () => {
  test("nuts: lower from M5, and 17 and 19 mm wide as M10 and M12", () => {
    expect(disputed(c.NUTS)).toEqual(["M5", "M6", "M8", "M10", "M12"]);
    expect(othersOf(c.NUTS, "M5")).toEqual({ height: [4] });
    expect(othersOf(c.NUTS, "M6")).toEqual({ height: [5] });
    expect(othersOf(c.NUTS, "M8")).toEqual({ height: [6.5] });
    expect(othersOf(c.NUTS, "M10")).toEqual({ acrossFlats: [17], height: [8] });
    expect(othersOf(c.NUTS, "M12")).toEqual({ acrossFlats: [19], height: [10] });
  });

  test("screws and lock nuts of the same widths, over corners 18.9 and 21.1", () => {
    for (const table of [c.HEX_SCREWS, c.LOCK_NUTS]) {
      expect(othersOf(table, "M10")).toMatchObject({ acrossFlats: [17], acrossCorners: [18.9] });
      expect(othersOf(table, "M12")).toMatchObject({ acrossFlats: [19], acrossCorners: [21.1] });
    }
    expect(disputed(c.HEX_SCREWS)).toEqual(["M10", "M12"]);
    expect(disputed(c.LOCK_NUTS)).toEqual(["M4", "M5", "M6", "M10", "M12"]);
    expect(rowOf(c.LOCK_NUTS, "M3")).not.toHaveProperty("differs");
  });

  test("holes for M12 by a table before ISO 273, 14 and 15 mm; a rounded drill for M2.5", () => {
    expect(disputed(c.THREADS)).toEqual(["M2.5", "M12"]);
    expect(othersOf(c.THREADS, "M12")).toEqual({ mediumHole: [14], coarseHole: [15] });
    expect(othersOf(c.THREADS, "M2.5")).toEqual({ tapDrill: [2.1] });
    expect(rowOf(c.THREADS, "M3")).not.toHaveProperty("differs");
  });

  test("single values: a button head, a thin nut, the shafts h6", () => {
    expect(disputed(c.BUTTON_SCREWS)).toEqual(["M3", "M8"]);
    expect(othersOf(c.BUTTON_SCREWS, "M8")).toEqual({ headHeightLeast: [4.05] });
    expect(disputed(c.THIN_NUTS)).toEqual(["M2"]);
    expect(disputed(c.FITS)).toEqual(["h6 6 to 10", "h6 18 to 30"]);
    expect(othersOf(c.FITS, "h6 6 to 10")).toEqual({ lower: [-0.01] });
    expect(othersOf(c.FITS, "h6 18 to 30")).toEqual({ lower: [-0.03] });
    for (const table of [c.BUTTON_SCREWS, c.THIN_NUTS, c.NUTS, c.HEX_SCREWS, c.FITS]) {
      expect(table.rows.every((row) => !("differs" in row) || disputed(table).includes(row.key))).toBe(true);
    }
  });
});

describe("rows that other makers and sellers have otherwise", () => {
  test.each([
    ["604", 4, 12],
    ["606", 6, 17],
    ["607", 7, 19],
    ["626", 6, 19],
  ])("bearing %s: the estimated land is d + 0.3 (D - d), and the drawing's is less", (key, bore, outside) => {
    const [estimate] = othersOf(c.BEARINGS, key).innerLand ?? [];
    expect(estimate).toBeCloseTo(bore + 0.3 * (outside - bore), 9);
    expect(rowOf(c.BEARINGS, key).values.innerLand).toBeLessThan(Number(estimate));
  });

  test("bearings whose lands are estimated say so, some with more to say", () => {
    expect(rowOf(c.BEARINGS, "603").note).toBe("lands are estimates, measure them");
    expect(rowOf(c.BEARINGS, "MR105").note).toBe("lands are estimates, measure them; ratings of low confidence");
    expect(rowOf(c.BEARINGS, "6003").note).toBeUndefined();
  });

  test("slots: the lowest width is used, and the highest start of the flat", () => {
    const settled = (rowOf(c.BAR_SLOTS, "20x20 slot 6").differs ?? []).map((one) => [one.field, one.settled]);
    expect(settled).toEqual([
      ["innerWidth", "lower"],
      ["coreBore", "lower"],
      ["flatStart", "higher"],
    ]);
    expect(othersOf(c.BAR_SLOTS, "40x40 slot 8")).toEqual({ flatStart: [2] });
    expect(rowOf(c.BAR_SLOTS, "20x20 slot 6").values.flatStart).toBeGreaterThan(1.5);
    expect(disputed(c.BAR_SLOTS).length).toBeLessThan(c.BAR_SLOTS.rows.length);
    const undisputed = c.BAR_SLOTS.rows.filter(({ key }) => !disputed(c.BAR_SLOTS).includes(key));
    for (const row of undisputed) expect(row).not.toHaveProperty("differs");
  });

  test("what varies from seller to seller is to be measured", () => {
    expect(othersOf(c.INSERTS, "M8")).toEqual({ hole: [9.6] });
    expect(othersOf(c.PULLEYS, "24 teeth 2 mm")).toEqual({ height: [16] });
    for (const row of [rowOf(c.INSERTS, "M8"), rowOf(c.PULLEYS, "24 teeth 2 mm")]) {
      expect(row.differs?.map(({ settled }) => settled)).toEqual(["usual"]);
    }
  });

  test("materials: aluminium has 68 to 69 GPa, and of glass, PC and a plain belt one value only is known", () => {
    expect(othersOf(c.METALS, "aluminium 6061-T6").modulus).toEqual([68000]);
    expect(rowOf(c.METALS, "glass")).not.toHaveProperty("differs");
    expect(othersOf(c.POLYMERS, "PLA")).toEqual({ serviceLimit: [45] });
    expect(rowOf(c.POLYMERS, "PC")).not.toHaveProperty("differs");
    expect(rowOf(c.BELTS, "3 mm round")).not.toHaveProperty("differs");
  });
});

describe("rows that are worked out", () => {
  test("shim rings tell of which bearings they touch the shield: same bore, inner land below the ring's outside", () => {
    const rings = c.SHIM_RINGS.rows.filter(({ source }) => source === "din-988");
    const touched = (hole: number, outside: number) =>
      c.BEARINGS.rows.filter(({ values }) => values.bore === hole && values.innerLand < outside).map(({ key }) => key);
    expect(touched(3, 6)).toEqual(["603", "623", "683", "693"]);
    for (const { note, values } of rings) {
      const bearings = touched(values.hole, values.outside);
      const said = `reaches past the inner land, over the shield, of ${bearings.join(", ")}`;
      expect(note).toBe(bearings.length === 0 ? undefined : said);
    }
    expect(rings.filter((ring) => "note" in ring && ring.note === undefined)).toEqual([]);
    expect(rings.some((ring) => !("note" in ring))).toBe(true);
  });

  test("slot nuts are longer in wider slots; the first and the last row that follow", () => {
    expect(rowOf(c.BARS, "20x20 slot 5").values.nutLength).toBe(12);
    expect(rowOf(c.BARS, "20x20 slot 6").values.nutLength).toBe(15);
    expect(rowOf(c.BARS, "45x45 slot 10").values.nutLength).toBe(22);
  });

  test("loops in stock run from short to long", () => {
    const lengths = c.LOOPS.rows.map(({ values }) => values.length);
    expect(lengths).toEqual([...lengths].sort((one, other) => one - other));
    expect(new Set(lengths).size).toBe(lengths.length);
  });

  test("limits of Tr8x2 are worked out, those of Tr8x1.5 and Tr10x2 stand in a table", () => {
    const origin = (key: string) => [rowOf(c.SCREW_LIMITS, key).source, rowOf(c.SCREW_LIMITS, key).from];
    expect(origin("Tr8x2")).toEqual(["iso-2903", "memory"]);
    expect(origin("Tr10x2")).toEqual(["iso-2903", "seen"]);
    expect(rowOf(c.SCREW_LIMITS, "Tr8x2").note).toMatch(/^by the tolerances of Tr10x2/);
  });

  test("collars on a lead screw touch crests only; a set screw marks the thread of the usual one", () => {
    const crests = "on a lead screw it touches the thread's crests only: check that it runs true";
    expect(rowOf(c.COLLARS, "6 clamp").note).toBe(crests);
    expect(rowOf(c.COLLARS, "8 clamp").note?.endsWith(`with M3 or M4; ${crests}`)).toBe(true);
    expect(rowOf(c.COLLARS, "6 set screw")).not.toHaveProperty("note");
  });
});
