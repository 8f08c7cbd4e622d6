import { describe, expect, test } from "vitest";
import { BEARINGS } from "../../../src/catalogue/bearings.ts";
import { footWith } from "./foot.ts";

type Change = Readonly<Record<string, unknown>>;
const items = (change: Change, printer = {}) => footWith(change, printer).hardware.map(({ item }) => item);
const limits = (change: Change) => footWith(change).limits.join("\n");

describe("what is bought", () => {
  test("is named by its nominal size, whatever calipers say", () => {
    const bearing = { row: "608", bore: 7.98, measured: true };
    const pulley = { row: "40 teeth 2 mm", bore: 8.03, measured: true };
    const bought = items({ bearing, pulley, thrust: "collar" });
    expect(bought).toContain("metal ring 8 x 12 x 1");
    expect(bought).toContain("clamp collar, bore 8, 18 x 9");
    expect(bought).toContain("pulley 40 teeth 2 mm, bore 8");
    expect(items({ washers: [{ row: "8 x 12 x 1.0", thickness: 0.98, measured: true }] })).toContain(
      "metal ring 8 x 12 x 1",
    );
  });

  test.each([true, false])("is the size that was stated where the row has quite another (measured: %s)", (measured) => {
    const pulley = { row: "60 teeth 2 mm", bore: 12, hubDiameter: 22, measured: measured ? true : [] };
    expect(items({ bearing: "6001", screw: "Tr12x3", pulley })).toContain("pulley 60 teeth 2 mm, bore 12");
  });

  test("is the collar that was chosen", () => {
    expect(items({ thrust: "collar", collar: "8 set screw" })).toContain("set collar, bore 8, 16 x 8");
  });
});

describe("a shim under the bearing", () => {
  // DIN 988: rings of 16 x 22 and 20 x 28 mm. The 608 measures 22 mm outside and 12.1 mm over its inner ring, the 6001
  // 28 and 17.
  const printer = { layer: 0.3, firstLayer: 0.3 };
  test.each([
    ["608", "Tr8x2", 8, "shim ring 16 x 22 x 0.1 under the bearing"],
    ["6001", "Tr12x3", 12, "shim ring 20 x 28 x 0.1 under the bearing"],
    ["688", "Tr8x2", 8, "shim ring cut from 0.1 sheet, 10.9 or more inside, 16 or less outside, under the bearing"],
  ])("for the %s has its diameters", (bearing, screw, bore, ring) => {
    const width = BEARINGS.rows.find(({ key }) => key === bearing)?.values.width ?? 0;
    const pulley = { row: "40 teeth 2 mm", bore };
    // A seat 0.12 mm over a layer, 12.42: hub down 11.5 and a ring of 1 mm over the bearing.
    const foot = { mount: "on-top", hub: "down", bearing, screw, pulley, beltPlane: 12.42 + 12.5 + width };
    expect(items(foot, printer)).toContain(ring);
  });
});

describe("what holds the load", () => {
  // Shigley, Table 7-4: a #5 set screw takes 10 lbf in = 1.13 N·m and holds 200 lbf = 890 N; 0.3 of two is 534 N.
  test("set screws: torque, key and hold", () => {
    expect(limits({})).toContain(
      "set screws of the pulley, 2 x M3: torque 1.13 N·m, key 1.5; hold 534 N on thread crests",
    );
    expect(limits({ pulley: { row: "40 teeth 2 mm", setScrew: "M6" } })).toContain("2 x M6: torque not known: measure");
  });

  test("collars: what the tables know, or that they do not", () => {
    expect(limits({ thrust: "collar" })).toContain("clamp collar, M3: torque and hold on the screw not known: measure");
    const held = limits({ thrust: "collar", collar: "8 set screw" });
    expect(held).toContain("set collar, M4: torque 2.26 N·m, key 2; hold 514 N on thread crests");
    expect(held).not.toContain("of the pulley");
  });
});
