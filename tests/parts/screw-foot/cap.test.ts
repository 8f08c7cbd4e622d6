import { expect, test } from "vitest";
import { finding } from "./foot.ts";

const NAME = "cap-hits-rotating-face";
const WALLED = {
  ...{ style: "walled", bar: "40x40 slot 8", screw: "Tr10x2", bearing: "6000", beltPlane: 40, cap: true, hub: "down" },
  pulley: { row: "48 teeth 2 mm", bore: 10, hubDiameter: 20, measured: true },
};

test("the thing that the cap meets is named: collar, hub or flange", () => {
  expect(finding(NAME, { ...WALLED, thrust: "collar" })?.says).toContain("2.00 mm into the clamp collar");
  expect(finding(NAME, { cap: true, hub: "down", pulley: { row: "40 teeth 2 mm", hubDiameter: 19 } })?.says).toContain(
    "into the pulley's hub",
  );
  expect(finding(NAME, { cap: true, hub: "up" })?.says).toContain("into the pulley's flange");
});

test("hub: down is advised only where it helps", () => {
  expect(finding(NAME, { cap: true, hub: "up" })?.set).toContain("hub: down");
  expect(finding(NAME, { cap: true, hub: "down" })).toBeUndefined();
  expect(finding(NAME, { ...WALLED, thrust: "collar" })?.set).not.toContain("hub: down");
  const wide = { row: "40 teeth 2 mm", hubDiameter: 19 };
  expect(finding(NAME, { cap: true, hub: "up", pulley: wide })?.set).not.toContain("hub: down");
});

test("with as many rings more as the cure says, the cap is free", () => {
  const found = finding(NAME, { ...WALLED, thrust: "collar" });
  const more = Number(/washers: ([\d.]+) mm more, at most/.exec(found?.set ?? "")?.[1]);
  // The usual ring is 1 mm thick.
  const rings = [{ row: "10 x 14 x 1.0", thickness: 1 + more }];
  expect(finding(NAME, { ...WALLED, thrust: "collar", washers: rings })).toBeUndefined();
});
