import { describe, expect, test } from "vitest";
import { screwFoot } from "../../../src/parts/screw-foot/index.ts";
import { printerWith } from "../../support/printer.ts";
import { finding, footWith } from "./foot.ts";

const NAME = "label-not-engraved";
type Change = Readonly<Record<string, unknown>>;

/** How many letters' bodies stand in the foot's solid: each line of text is one laid body. */
const linesOf = (change: Change) => JSON.stringify(footWith(change).pieces()[0]?.solid).split('"laid"').length - 1;

describe("the label of a foot", () => {
  test("stands over the seat's height where there is room, beside it where there is less", () => {
    expect(linesOf({ label: "L1" })).toBe(2);
    const low = {
      ...{ mount: "on-top", bar: "45x45 slot 10", screw: "Tr12x3", bearing: "6001", beltPlane: 30, label: "T2" },
      pulley: { row: "60 teeth 2 mm", bore: 12, hubDiameter: 22 },
    };
    expect(linesOf(low)).toBe(1);
    expect(finding(NAME, low)).toBeUndefined();
  });

  test("that does not fit is a note with the room and what would fit", () => {
    const post = { mount: "on-post", bar: "30x30 slot 8", beltPlane: "2 in", thrust: "collar", label: "P1" };
    const found = finding(NAME, post);
    expect(found?.says).toBe(
      "the label P1 does not fit the bare wall, 19.3 mm wide and 8.0 mm high: only 22.30 is engraved",
    );
    expect(found?.set).toBe("label: 1 letter, such as P");
    expect(finding(NAME, { ...post, label: "P" })).toBeUndefined();
    expect(finding(NAME, { mount: "on-top", label: "LEFT END" })?.set).toContain("such as LE");
  });

  test("that nobody gave is not missed", () => {
    expect(linesOf({ mount: "on-top" })).toBe(1);
    expect(finding(NAME, { mount: "on-top" })).toBeUndefined();
    expect(finding(NAME, { mount: "on-top", label: "" })).toBeUndefined();
  });

  test("keeps the mark of an accepted error on whatever is engraved", () => {
    const marked = screwFoot.design(screwFoot.schema.parse({ label: "L1" }), printerWith(), "X").pieces()[0]?.solid;
    expect(JSON.stringify(marked)).not.toBe(JSON.stringify(footWith({ label: "L1" }).pieces()[0]?.solid));
  });
});
