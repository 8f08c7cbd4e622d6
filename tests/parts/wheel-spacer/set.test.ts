import { expect, test } from "vitest";
import { sheet } from "../../../src/outputs/sheet.ts";
import { wheelSpacer } from "../../../src/parts/wheel-spacer/index.ts";
import { printerWith } from "../../support/printer.ts";

const printer = printerWith();
const designed = (parameters: object) => wheelSpacer.design(wheelSpacer.schema.parse(parameters), printer);
const errors = (parameters: object) =>
  designed(parameters)
    .diagnostics.filter(({ level }) => level === "error")
    .map(({ name, set }) => `${name}: ${set}`);

test("a bush is compared with its set by the height of its hexagon, a ring by its length", () => {
  expect(errors({ kind: "bush", hexHeight: 6.4, length: 12, setLengths: [6.4] })).toEqual([]);
  expect(errors({ kind: "bush", hexHeight: 6.4, length: 12, setLengths: [12] })).toEqual([
    "spacer-set-unequal: hexHeight: 12 mm for all, or leave it out",
  ]);
  expect(errors({ length: 12, setLengths: [6] })).toEqual([
    "spacer-set-unequal: length: 6 mm for all, or leave it out",
  ]);
});

test("the sheet gives one infill: that of the part, not that of the printer", () => {
  const text = sheet({
    name: "ring",
    hash: "00000000",
    purpose: "",
    design: designed({}),
    printer,
    pieces: [],
    diagnostics: [],
  });
  expect(text.match(/infill/g)).toHaveLength(1);
  expect(text).toContain("infill 100 %");
});
