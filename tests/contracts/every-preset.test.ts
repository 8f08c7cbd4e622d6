import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { draftOrder, finishDrafts } from "../../src/build/order.ts";
import { parseParameters, readPartPreset } from "../../src/presets/part-preset.ts";
import { readPrinterPreset } from "../../src/presets/printer-preset.ts";
import { readYaml } from "../../src/presets/read.ts";
import { kernel } from "../support/kernel.ts";

const ROOT = "presets/parts";
const files = readdirSync(ROOT).flatMap((family) =>
  readdirSync(join(ROOT, family)).map((name) => join(ROOT, family, name)),
);

describe.each(files)("%s", (path) => {
  const text = readFileSync(path, "utf8");
  const file = readYaml(path, text);
  const { value: preset, complaints } = readPartPreset(file);

  test("reads without a complaint and says what it is for", () => {
    expect(complaints.map(({ diagnostic }) => diagnostic.says)).toEqual([]);
    expect(text).toMatch(/^# .{30}/);
    expect(preset?.family.name).toBe(path.split("/")[2]);
    expect(preset?.printer, "a shipped preset names its printer").toBeDefined();
  });

  test("builds without an error, and each warning is said in its comment", () => {
    if (preset === undefined) throw new Error("unreadable");
    const printerPath = resolve(dirname(path), String(preset.printer));
    const printer = readPrinterPreset(readYaml(printerPath, readFileSync(printerPath, "utf8"))).value;
    const parameters = parseParameters(preset.family, preset.parameters);
    expect(parameters.complaints.map(({ says }) => says)).toEqual([]);
    if (printer === undefined || parameters.value === undefined) throw new Error("unreadable");
    const { family, accept } = preset;
    const request = {
      name: preset.name ?? "part",
      family,
      parameters: parameters.value,
      printer,
      calibrated: true,
      accept,
    };
    for (const { made, files: written } of finishDrafts(draftOrder(request), kernel, "test")) {
      expect(made.diagnostics.filter(({ level }) => level === "error").map(({ says }) => says)).toEqual([]);
      expect(written.length).toBeGreaterThan(1);
      for (const { level, name } of made.diagnostics) if (level === "warning") expect(text).toContain(name);
    }
  });
});

test("there are metric and inch presets for every family that has presets", () => {
  const all = files.map((path) => readFileSync(path, "utf8")).join("\n");
  expect(all).toMatch(/\d in$/m);
  expect(all).toMatch(/\d mm$/m);
});
