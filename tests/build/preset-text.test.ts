import { readdirSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { hashOf, presetText } from "../../src/build/preset-text.ts";
import type { Request } from "../../src/build/request.ts";
import { load, readTarget } from "../../src/cli/load.ts";
import { loadStage } from "../../src/cli/load-stage.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { readYaml } from "../../src/presets/read.ts";
import { presetSchema } from "../../src/presets/schema/preset-schema.ts";
import { printerSchema } from "../../src/printing/printer.ts";
import { randomPresets } from "../support/random-presets.ts";
import { runs } from "../support/thorough.ts";

const options = { set: [], printer: undefined };

/** Reads a preset from its text, as `make` does. */
function read(text: string): Request {
  const { request, messages } = load({ target: "x", family: undefined, file: readYaml("x", text) }, options);
  if (request === undefined) throw new Error(messages.map(({ diagnostic }) => diagnostic.says).join("; "));
  return request;
}

/** Expects that a preset's text is read as the same preset: the same hash, text, numbers and findings. */
function expectSame(request: Request): void {
  const again = read(presetText(request));
  expect(presetText(again)).toBe(presetText(request));
  expect(hashOf(again)).toBe(hashOf(request));
  const { name, calibrated, accept, printer, parameters, family } = request;
  // Which fields were stated and measured is told by lists whose order means nothing.
  const isSet = (key: string, value: unknown): value is string[] =>
    /^(stated|measured)$/.test(key) && Array.isArray(value);
  const inOrder = (key: string, value: unknown) => (isSet(key, value) ? [...value].sort() : value);
  const plain = (data: unknown) => JSON.parse(JSON.stringify(data), inOrder) as unknown;
  expect({ ...again, parameters: plain(again.parameters) }).toEqual({
    ...{ name, calibrated, accept, printer, family },
    parameters: plain(parameters),
  });
}

const presets = readdirSync("presets/parts", { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".yaml"))
  .map((name) => join("presets/parts", name));

describe("the canonical text of a preset", () => {
  test.each(presets)("of %s is read as the same preset", (path) => {
    const { request } = load(readTarget(path), options);
    if (request === undefined) throw new Error("unreadable");
    expectSame(request);
  });

  test.each(readdirSync("presets/stages"))("of each part of %s is read as the same preset", (name) => {
    const { machine } = loadStage(readTarget(join("presets/stages", name)), { ...options, version: "1" });
    expect(machine?.parts.length).toBeGreaterThan(8);
    for (const { request } of machine?.parts ?? []) expectSame(request);
  });

  test.each(FAMILIES)("of any $name is read as the same preset", (family) => {
    let good = 0;
    fc.assert(
      fc.property(randomPresets(presetSchema(family.name) ?? {}), (data) => {
        const file = { name: "x", data, place: () => undefined, complaints: [] };
        const { request, messages } = load({ target: "x", family: undefined, file }, options);
        if (request === undefined || messages.length > 0) return;
        good++;
        expectSame(request);
      }),
      { numRuns: runs(300), seed: 7 },
    );
    expect(good).toBeGreaterThan(runs(30, 6));
  });

  test.each(FAMILIES)("of a default $name states every parameter that has a default, and every setting", (family) => {
    const parameters = family.schema.parse({});
    const text = presetText({
      name: "x",
      family,
      parameters,
      printer: printerSchema.parse({}),
      calibrated: false,
      accept: [],
    });
    const data = JSON.parse(text) as Record<string, Record<string, unknown>>;
    expect(Object.keys(data.parameters ?? {})).toEqual(Object.keys(parameters).sort());
    expect(Object.keys(data.printer ?? {})).toEqual(Object.keys(printerSchema.shape).sort());
    expect(data.calibrated).toBe(false);
  });

  test("makes what it made when tables have other values: its own sizes hold, as if they stood in the row", () => {
    const screwFoot = FAMILIES.find(({ name }) => name === "screw-foot");
    if (screwFoot === undefined) throw new Error("no screw-foot");
    const parameters = screwFoot.schema.parse({ bar: { row: "20x20 slot 6", slotDepth: 6.4, measured: true } });
    const printer = printerSchema.parse({});
    const text = presetText({ name: "x", family: screwFoot, parameters, printer, calibrated: true, accept: [] });
    // As a program would have written it whose table says that a 608 is 7.5 mm wide and a slot 6.7 mm at its mouth.
    const other = text.replace('"width": 7\n', '"width": 7.5\n').replace('"slotMouth": 6.2', '"slotMouth": 6.7');
    expect(other).not.toBe(text);
    const request = read(other);
    expect(request.parameters).toMatchObject({
      bearing: { key: "608", values: { width: 7.5 }, stated: [], measured: [] },
      bar: { values: { slotDepth: 6.4, slotMouth: 6.7 }, stated: ["slotDepth"], measured: ["slotDepth"] },
    });
    expect(presetText(request)).toBe(other);
  });

  test("holds no letter that XML or a terminal gives a meaning to", () => {
    const family = FAMILIES[0];
    if (family === undefined) throw new Error("no family");
    const because = "<a href='x'>&amp; ]]> reason";
    const accept = [{ check: "washer-spans-both-rings", because }];
    const parameters = family.schema.parse({});
    const text = presetText({
      name: "x",
      family,
      parameters,
      printer: printerSchema.parse({}),
      calibrated: true,
      accept,
    });
    expect(text).toMatch(/^[\n -%'-;=?-~]+$/);
    expect(read(text).accept).toEqual(accept);
  });
});

test("a part's hash tells apart what makes another part, and nothing else", () => {
  const family = FAMILIES.find(({ name }) => name === "wheel-spacer");
  if (family === undefined) throw new Error("no wheel-spacer");
  const printer = printerSchema.parse({});
  const hash = (data: object, settings = printer) =>
    hashOf({ family, parameters: family.schema.parse(data), printer: settings });
  expect(hash({ material: "PETG" })).toBe(hash({ material: { row: "PETG" } }));
  expect(hash({ material: { row: "PETG", serviceLimit: 48 } })).not.toBe(hash({}));
  expect(hash({ count: 3 })).not.toBe(hash({ count: 4 }));
  expect(hash({}, { ...printer, layer: 0.3 })).not.toBe(hash({}));
});
