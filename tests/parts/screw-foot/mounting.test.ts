import { describe, expect, test } from "vitest";
import { BARS } from "../../../src/catalogue/bars.ts";
import { row } from "../../../src/core/table.ts";
import { finding, footWith, numberOf } from "./foot.ts";

describe("bolts that stand in one slot", () => {
  // ISO 7089: washers of M5 and M8 are 10 and 16 mm wide. Slot nuts for an 8 mm slot are sold up to 22 mm long.
  test("M5 stands 16 mm apart, M8 as far as its slot nuts need", () => {
    expect(numberOf("u_2", { mount: "in-corner" }) - numberOf("u_1", { mount: "in-corner" })).toBeCloseTo(16, 9);
    const wide = { mount: "in-corner", bar: "40x40 slot 8", cornerAngle: 89.2, cornerMeasured: true };
    expect(numberOf("u_2", wide) - numberOf("u_1", wide)).toBeCloseTo(23, 9);
    expect(numberOf("u_4", wide) - numberOf("u_3", wide)).toBeCloseTo(23, 9);
  });

  test("a measured nut sets the distance, down to the washers and their play", () => {
    const apart = (nutLength: number) =>
      numberOf("s_b", { mount: "in-corner", bar: { row: "40x40 slot 8", nutLength } });
    expect(apart(30)).toBe(31);
    expect(apart(10)).toBe(17);
  });

  test.each(BARS.rows.map(({ key }) => key))("on %s no washer and no nut of one cheek meets the next", (bar) => {
    const { nutLength } = row(BARS, bar).values;
    const foot = footWith({ mount: "on-post", bar, beltPlane: 60 });
    const washers = foot
      .pieces()[0]
      ?.keepOuts.map(({ name }) => /^washer of the M\d bolt at x -?[\d.]+, z (-?[\d.]+)/.exec(name)?.[1])
      .filter((z) => z !== undefined)
      .map(Number);
    const heights = [...new Set(washers)].sort((a, b) => a - b);
    expect(washers).toHaveLength(4);
    expect(heights).toHaveLength(2);
    // Heights in names are written to 0.1 mm.
    const apart = (heights[1] ?? 0) - (heights[0] ?? 0) + 0.11;
    expect(apart).toBeGreaterThanOrEqual(nutLength + 1);
    const width = foot.givens.find(({ symbol }) => symbol === "D_w")?.value ?? Number.NaN;
    expect(apart).toBeGreaterThanOrEqual(width + 1);
  });

  test("the shopping list says how long the nuts may be", () => {
    const nuts = (change: Readonly<Record<string, unknown>>) =>
      footWith(change).hardware.find(({ item }) => item.startsWith("slot nut"))?.item;
    expect(nuts({ mount: "in-corner", bar: "40x40 slot 8" })).toBe("slot nut M8 for 40x40 slot 8, at most 22 long");
    expect(nuts({})).toBe("slot nut M5 for 20x20 slot 6");
  });

  test("rows nearer than their washers are an error", () => {
    expect(finding("mount-bolts-collide", { bar: { row: "20x40 slot 6", module: 10 } })?.says).toContain(
      "10.0 mm apart",
    );
    expect(finding("mount-bolts-collide", { bar: "20x40 slot 6" })).toBeUndefined();
  });
});
