import { expect, test } from "vitest";
import { make } from "../../../src/build/make.ts";
import { screwFoot } from "../../../src/parts/screw-foot/index.ts";
import { kernel } from "../../support/kernel.ts";
import { printerWith } from "../../support/printer.ts";

const DOWN = { thrust: "collar", pulley: "36 teeth 2 mm", hub: "down", locate: "key" };

/** Feet of high bars whose bearing lies so low that a slot of the bar runs past over the housing. */
test.each([
  { mount: "on-side", bar: "20x40 slot 6", axisOffset: 32, beltPlane: 8 },
  { mount: "on-side", bar: "20x40 slot 6", axisOffset: 32, beltPlane: 9.5 },
  { mount: "in-corner", bar: "20x40 slot 6", axisOffset: 32, beltPlane: 5.5 },
  { mount: "in-corner", bar: "40x40 slot 8", axisOffset: 38, beltPlane: -1.4 },
])("$mount on $bar, belt at $beltPlane: no rib hangs in the air over the housing", (change) => {
  const parameters = screwFoot.schema.parse({ ...DOWN, ...change });
  const request = { name: "x", family: screwFoot, parameters, printer: printerWith(), calibrated: true, accept: [] };
  const made = make(request, kernel);
  expect(made.diagnostics.filter(({ level }) => level === "error")).toEqual([]);
  const value = (key: string) => made.design.dimensions.find((one) => one.key === key)?.value ?? Number.NaN;
  // As it is drawn: the lower slot, or what of the upper one the ears carry, still has its rib.
  const piece = made.design.pieces()[0];
  if (piece === undefined) throw new Error("a foot is one body");
  const { positions } = kernel.build(piece.solid, (body) => body.mesh());
  const beyond = Array.from({ length: positions.length / 3 }, (_, corner) =>
    Array.from(positions.subarray(corner * 3, corner * 3 + 3)),
  ).filter(([, y = 0]) => y < -(change.axisOffset + 1));
  expect(beyond.length).toBeGreaterThan(0);
  const inTheAir = beyond.filter(([x = 0, , z = 0]) => z > value("rim") + 0.01 && Math.abs(x) < value("boltX") - 8.1);
  if (change.mount === "on-side") expect(inTheAir).toEqual([]);
});
