import { stripVTControlCharacters } from "node:util";
import { describe, expect, test } from "vitest";
import { parts } from "../../src/cli/commands/parts.ts";
import { parameterFields } from "../../src/cli/explain/parameter-field.ts";
import { shown } from "../../src/cli/explain/shown.ts";
import { wrap } from "../../src/cli/screen.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { UNCALIBRATED } from "../../src/printing/printer.ts";
import { collect, document, expectReadable, troubleOf } from "./collect.ts";

const tell = (family: string) => collect((io) => parts({ family, json: false }, io));

describe("the list", () => {
  test("holds name, title and purpose of every family", () => {
    const said = collect((io) => parts({ json: false }, io));
    expectReadable(said, "parts");
    const words = said.join(" ").replace(/\s+/g, " ");
    for (const { name, title, purpose } of FAMILIES) {
      expect(said.some((line) => line.startsWith(`${name} `) && line.endsWith(title))).toBe(true);
      expect(words).toContain(purpose);
    }
  });

  test("is one JSON document on demand", () => {
    const data = document<{ name: string }[]>((io) => parts({ json: true }, io));
    expect(data.map(({ name }) => name)).toEqual(FAMILIES.map(({ name }) => name));
  });
});

describe.each(FAMILIES)("$name", (family) => {
  const said = tell(family.name);
  const design = family.design(family.schema.parse({}), UNCALIBRATED);
  const numbers = said.slice(said.indexOf("Numbers, with the defaults"));

  test("fits the screen and holds no number that is none", () => expectReadable(said, family.name));

  test("says what it is for, how it lies on the bed, and shows the sketch", () => {
    const words = said.join(" ").replace(/\s+/g, " ");
    expect(words).toContain(family.purpose);
    expect(words).toContain(`Print: ${family.orientation}.`);
    for (const line of family.sketch.trimEnd().split("\n")) expect(said).toContain(line);
  });

  test("tells every parameter with unit, range, default and meaning", () => {
    const defaults = family.schema.parse({}) as Record<string, unknown>;
    for (const field of parameterFields(family.schema, defaults)) {
      const at = said.findIndex((line) => line.startsWith(`  ${field.key} `));
      const row = said[at] ?? "";
      expect(at, field.key).toBeGreaterThan(0);
      if (field.range !== undefined) expect(row).toContain(field.range);
      if (field.unit !== "") expect(row).toContain(` ${field.unit}`);
      if (typeof defaults[field.key] === "number") expect(row).toContain(` ${defaults[field.key]} `);
      if (defaults[field.key] === undefined) expect(row).toMatch(/ (derived|left out) /);
      const [first = ""] = wrap(field.description, 92);
      expect(said[at + 1], field.key).toBe(`      ${first}`);
    }
  });

  test("tells every number with its default value, every check with its reason, and what to buy", () => {
    for (const { key, symbol, value, unit } of design.dimensions) {
      const row = numbers.find((line) => new RegExp(`^ {2}${key} +${symbol} `).test(line));
      expect(row, key).toContain(` ${shown(value, unit)}`);
    }
    const words = said.join(" ").replace(/\s+/g, " ");
    for (const { name, why } of family.checks) {
      expect(said).toContain(`  ${name}`);
      expect(words).toContain(why);
    }
    for (const { item, count } of design.hardware) expect(words).toContain(`${count} x ${item}`);
  });

  test("is one JSON document with the same", () => {
    const data = document<{
      parameters: { key: string; default: unknown }[];
      dimensions: { key: string; value: number }[];
      checks: { name: string }[];
    }>((io) => parts({ family: family.name, json: true }, io));
    expect(data.parameters.map(({ key }) => key)).toEqual(Object.keys(family.schema.shape));
    expect(data.dimensions.map(({ key, value }) => [key, value])).toEqual(
      // JSON knows no -0.
      design.dimensions.map(({ key, value }) => [key, value + 0]),
    );
    expect(data.checks.map(({ name }) => name)).toEqual(family.checks.map(({ name }) => name));
  });

  test("the defaults in the JSON, put into a preset, give the same part", () => {
    const data = document<{ parameters: { key: string; default: unknown }[] }>((io) =>
      parts({ family: family.name, json: true }, io),
    );
    const set = data.parameters.filter((one) => one.default !== null).map((one) => [one.key, one.default]);
    const again = family.design(family.schema.parse(Object.fromEntries(set)), UNCALIBRATED);
    expect(again.dimensions).toEqual(design.dimensions);
  });
});

test("a parameter that the part works out is called derived, another is left out", () => {
  const said = tell("screw-foot");
  expect(said.find((line) => line.startsWith("  axisOffset "))).toMatch(/ derived +mm +8 to 80$/);
  expect(said.find((line) => line.startsWith("  stageLowest "))).toMatch(/ left out +mm /);
});

test("words have their meanings below, and the keys of a list's entries too", () => {
  const said = tell("screw-foot").map((line) => line.trim());
  expect(said).toContain("collar    a clamp collar on the washer");
  expect(said).toContain("azimuth  direction in which the span leaves: 0 to 360 deg");
});

test("capitals and blanks round a family do not matter; a misspelled one gets the nearest", () => {
  expect(tell(" Screw-Foot ")).toEqual(tell("screw-foot"));
  expect(troubleOf((io) => parts({ family: "screw-fot", json: false }, io))).toBe(
    "there is no part family screw-fot; the nearest is screw-foot",
  );
});

test("colour paints lines and changes no word", () => {
  const painted = collect((io) => parts({ family: "thumb-wheel", json: false }, io), "always");
  expect(painted).not.toEqual(tell("thumb-wheel"));
  expect(painted.map((line) => stripVTControlCharacters(line))).toEqual(tell("thumb-wheel"));
});
