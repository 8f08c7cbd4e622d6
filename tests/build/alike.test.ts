import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { alike, firstOfKind } from "../../src/build/alike.ts";
import { stageParts } from "../../src/build/stage-parts.ts";
import { alikeAmong } from "../../src/outputs/manifest.ts";
import { readYaml } from "../../src/presets/read.ts";
import { readStagePreset } from "../../src/presets/stage-preset.ts";
import { UNCALIBRATED } from "../../src/printing/printer.ts";
import { deriveStage } from "../../src/stage/index.ts";

test("thumb wheels and carriages of one machine are one body each; feet of other heights and mounts are not", () => {
  const path = "presets/stages/glaze-shelf.yaml";
  const { value } = readStagePreset(readYaml(path, readFileSync(path, "utf8")));
  if (value === undefined) throw new Error("the plan cannot be read");
  const printing = () => ({ printer: UNCALIBRATED, calibrated: true });
  const parts = stageParts(
    deriveStage(value.plan, () => UNCALIBRATED),
    printing,
    "",
  );
  const groups = alike(parts);
  expect(groups).toContainEqual(["mount-one-thumb-wheel", "mount-two-thumb-wheel", "mount-three-thumb-wheel"]);
  expect(groups).toContainEqual(["carriage-left", "carriage-right"]);
  expect(groups.flat().filter((name) => /^mount-[a-z]+$/.test(name))).toEqual([]);
  expect(alike(parts.slice(0, 1))).toEqual([]);
  // Each names the first of its kind, and the groups follow from that again.
  const firsts = firstOfKind(groups);
  expect(firsts.get("carriage-right")).toBe("carriage-left");
  expect(firsts.get("carriage-left")).toBeUndefined();
  const named = parts.map(({ request: { name } }) => ({ name, sameAs: firsts.get(name) }));
  expect(
    alikeAmong(named)
      .map((names) => names.join())
      .sort(),
  ).toEqual(groups.map((names) => names.join()).sort());
});
