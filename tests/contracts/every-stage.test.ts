import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { assemblyFaults } from "../../src/build/clash/index.ts";
import { strangeAcceptances } from "../../src/build/stage-accept.ts";
import { stageParts } from "../../src/build/stage-parts.ts";
import { hasErrors } from "../../src/core/diagnostic.ts";
import { loadKernel } from "../../src/geometry/kernel.ts";
import { readPrinterPreset } from "../../src/presets/printer-preset.ts";
import { readYaml } from "../../src/presets/read.ts";
import { readStagePreset } from "../../src/presets/stage-preset.ts";
import { UNCALIBRATED } from "../../src/printing/printer.ts";
import { deriveStage } from "../../src/stage/index.ts";

const ROOT = "presets/stages";
const files = readdirSync(ROOT).map((name) => join(ROOT, name));

function presetIn(path: string) {
  return readStagePreset(readYaml(path, readFileSync(path, "utf8")));
}

describe.each(files)("%s", (path) => {
  const text = readFileSync(path, "utf8");
  const { value: preset, complaints } = presetIn(path);

  test("reads without a complaint, says whose case it is, and has the name of its file", () => {
    expect(complaints.map(({ diagnostic }) => diagnostic.says)).toEqual([]);
    expect(text).toMatch(/^# .{40}/);
    expect(path).toBe(join(ROOT, `${preset?.name}.yaml`));
    expect(preset?.printer, "a shipped plan names its printer").toBeDefined();
  });

  test("derives without an error, and so do its parts", () => {
    if (preset === undefined) throw new Error("unreadable");
    const printerPath = resolve(dirname(path), preset.printer ?? "");
    const printer = readPrinterPreset(readYaml(printerPath, readFileSync(printerPath, "utf8"))).value;
    if (printer === undefined) throw new Error("unreadable");
    const stage = deriveStage(preset.plan, () => printer);
    const parts = stageParts(stage, () => ({ printer, calibrated: true }), "test");
    const said = [
      ...stage.diagnostics,
      ...strangeAcceptances(stage),
      ...parts.flatMap(({ designed }) => designed.diagnostics),
    ];
    expect(said.filter(({ level }) => level === "error").map(({ says }) => says)).toEqual([]);
    expect(hasErrors(said)).toBe(false);
    expect(new Set(parts.map(({ request }) => request.name)).size).toBe(parts.length);
    const keys = stage.sections.flatMap(({ facts }) => facts.map(({ key }) => key));
    expect(new Set(keys).size, "each number has a name of its own").toBe(keys.length);
    const words = stage.sections.flatMap(({ facts, lines }) => [...facts.map(({ label }) => label), ...(lines ?? [])]);
    const raw = words.filter((line) => /\d\.\d{5}/.test(line) && !line.startsWith("layers of whole full steps"));
    expect(raw, "figures in words are rounded, also those that were typed in other units").toEqual([]);
  });
});

test.each(files)("in the assembled %s nothing stands in anything else, at any height of the travel", async (path) => {
  const { value: preset } = presetIn(path);
  if (preset === undefined) throw new Error("unreadable");
  const stage = deriveStage(preset.plan, () => UNCALIBRATED);
  const faults = assemblyFaults(stage, () => UNCALIBRATED, await loadKernel());
  expect(faults.filter(({ level }) => level !== "note").map(({ says }) => says)).toEqual([]);
});

test("the machines differ in unit, bar, number of screws and of loops, and in size", () => {
  const plans = files.map((path) => presetIn(path).value?.plan).filter((plan) => plan !== undefined);
  const all = (of: (plan: (typeof plans)[number]) => unknown) => new Set(plans.map(of));
  expect(plans.length).toBeGreaterThanOrEqual(3);
  expect(all(({ units }) => units)).toEqual(new Set(["mm", "in"]));
  expect(all(({ bars }) => Object.values(bars)[0]?.bar.key).size).toBe(plans.length);
  expect(all(({ screws }) => Object.keys(screws).length)).toEqual(new Set([2, 3]));
  expect(all(({ loops }) => Object.keys(loops).length)).toEqual(new Set([1, 2]));
  expect(all(({ plate }) => JSON.stringify(plate.size)).size).toBe(plans.length);
});
