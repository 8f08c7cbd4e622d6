import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { stageParts } from "../../src/build/stage-parts.ts";
import { withSettings } from "../../src/cli/settings.ts";
import type { Diagnostic } from "../../src/core/diagnostic.ts";
import { readYaml, type YamlFile } from "../../src/presets/read.ts";
import { readStagePreset, usualAt } from "../../src/presets/stage-preset.ts";
import { UNCALIBRATED } from "../../src/printing/printer.ts";
import { EXAMPLE_PLANS, STAGE_EXAMPLES, type StageExample } from "../../src/stage/examples/index.ts";
import { deriveOnce, type Fact, type Plan, planSchema } from "../../src/stage/index.ts";
import { near, wild } from "../support/random-plans.ts";
import { runs } from "../support/thorough.ts";

/**
 * What tells that a number is beyond its limit, by the name of the number: `*` stands for one word of it, or the rest of one. A number with
 * a limit that is not listed here fails the test, so whoever adds one says by which defect it is told.
 */
const TOLD_BY: Readonly<Record<string, readonly string[]>> = {
  "bar.*.change": ["stage-tip-sags-with-print"],
  "carriage.*.largest": ["wheel-overloaded"],
  "carriage.*.smallest": ["wheel-loses-contact", "wheel-overloaded"],
  "carriage.*.preload": ["wheel-overloaded"],
  "foot-*.seat": ["belt-plane-below-lowest-seat", "foot-stack-does-not-fit", "seat-below-lowest-floor"],
  "heater.density": ["heater-density-out-of-range"],
  "heater.stuck": ["stuck-heater-overheats-plate"],
  "heater.time": ["plate-cannot-reach-temperature"],
  "idler.*.axle": ["idler-axle-too-short"],
  "loop.*.leftInward": ["no-stock-loop-within-slide"],
  "loop.*.leftOutward": ["no-stock-loop-within-slide"],
  "loop.*.node.*.bend": ["belt-bent-too-tight"],
  "loop.*.node.*.mesh": ["too-few-teeth-in-mesh", "toothed-idler-barely-meshes"],
  "loop.*.span.*": ["belt-planes-apart-in-loop"],
  "loop.*.spread": ["belt-planes-apart-in-loop"],
  "loop.*.tension": ["belt-overloaded"],
  "drive.motor-speed": ["motor-turns-too-fast"],
  "motor.lift": ["motor-torque-short"],
  "motor.margin": ["motor-torque-short"],
  "motor.rated-pull": ["motor-shaft-overloaded"],
  "*.stuck": ["stuck-heater-overheats-plate"],
  "mount.*.clash": ["spring-goes-solid"],
  "mount.*.edge": ["hole-near-plate-edge"],
  "mount.*.heater": ["hole-under-heater"],
  "mount.*.preload": ["spring-preload-too-low", "plate-sinks-on-springs"],
  "mount.*.share": ["plate-tips-off-its-mounts"],
  "plate.hold": ["plate-shifts-on-springs"],
  "screw.*.axial-limit": ["foot-bearing-overloaded"],
  "screw.*.bearing-safety": ["foot-bearing-overloaded"],
  "screw.*.column": ["screw-near-buckling", "screw-buckles-at-stall"],
  "screw.*.column-factor": ["screw-near-buckling"],
  "screw.*.critical": ["stage-runs-down-unpowered"],
  "screw.*.least": ["stage-corner-lifts-off"],
  "screw.*.nut-aside": ["nut-out-of-reach-of-stage"],
  "screw.*.nut-height": ["nut-out-of-reach-of-stage"],
  "screw.*.set-screws": ["thrust-hangs-on-set-screws"],
  "screw.*.set-screws-crash": ["thrust-hangs-on-set-screws"],
  "screw.*.whirl-over": ["screw-near-whirl"],
  "screw.*.whirl-under": ["screw-near-whirl"],
  "screw.*.whirl-use": ["screw-near-whirl"],
  "sensor.depth": ["sensor-hole-too-deep"],
  "sensor.edge": ["hole-near-plate-edge"],
  "sensor.heater": ["sensor-under-heater"],
  "screws.height": ["screws-nearly-in-line"],
};

const isWord = (part: string, word: string) =>
  part.endsWith("*") ? word.startsWith(part.slice(0, -1)) : part === word;

/** A gap's name ends with its defect's. */
const toldBy = (key: string): readonly string[] => {
  const [, gap] = /^loop\.[^.]+\.gap\.(.+)$/.exec(key) ?? [];
  if (gap !== undefined) return [gap];
  const words = key.split(".");
  const found = Object.entries(TOLD_BY).filter(([name]) => {
    const parts = name.split(".");
    return parts.length === words.length && parts.every((part, at) => isWord(part, words[at] as string));
  });
  return found.flatMap(([, names]) => names);
};

const isBeyond = ({ value, limit }: Fact) => {
  if (limit === undefined) return false;
  const by = limit.kind === "at most" ? value - limit.value : limit.value - value;
  return by > 1e-6 * Math.max(1, Math.abs(limit.value));
};

/** Whether a message is about the thing in the middle of a number's name: its place is, or its words name it. */
function isAbout({ path, says }: Diagnostic, key: string): boolean {
  const [kind = "", name] = key.split(".");
  const [, screw] = /^foot-(.+)$/.exec(kind) ?? [];
  if (screw !== undefined) return says.includes(kind) || path.some((word) => String(word).toLowerCase() === screw);
  if (!["screw", "mount", "idler", "bar"].includes(kind) || name === undefined) return true;
  return path.includes(name) || new RegExp(`(^|\\W)${name}(\\W|$)`).test(says);
}

/** Numbers beyond their limit of which nothing is told, and numbers with a limit that nobody has a defect for. */
function silent(plan: Plan): { readonly beyond: number; readonly silent: string[] } {
  // Ways out add no numbers and no messages.
  const stage = deriveOnce(plan, () => UNCALIBRATED);
  const printing = () => ({ printer: UNCALIBRATED, calibrated: true });
  const ofParts = stageParts(stage, printing, "test").flatMap(({ owner, designed }) =>
    designed.diagnostics.map((one) => ({ ...one, path: owner.path })),
  );
  const told = [...stage.diagnostics, ...ofParts].filter(({ level }) => level !== "note");
  const facts = stage.sections.flatMap((section) => section.facts).filter(({ limit }) => limit !== undefined);
  const beyond = facts.filter(isBeyond);
  const unknown = facts.filter(({ key }) => toldBy(key).length === 0).map(({ key }) => `${key}: told by no defect`);
  const untold = beyond.filter(({ key }) => !told.some((one) => toldBy(key).includes(one.name) && isAbout(one, key)));
  const line = ({ key, value, limit }: Fact) => `${key}: ${value} with ${limit?.kind} ${limit?.value}, told of by none`;
  return { beyond: beyond.length, silent: [...unknown, ...untold.map(line)] };
}

const ROOT = "presets/stages";
const planIn = (file: YamlFile) => readStagePreset(file).value?.plan;
const shipped = [...readdirSync(ROOT).map((name) => join(ROOT, name)), "docs/worked-machine.yaml"];
const examples = [
  ...new Map(
    Object.values<readonly StageExample[]>(STAGE_EXAMPLES)
      .flat()
      .map(({ plan, set }): [string, Pick<StageExample, "plan" | "set">] => [
        `${plan} ${set.join(" ")}`,
        { plan, set },
      ]),
  ).values(),
];

describe("no number of a machine is beyond its limit in silence", () => {
  test.each(shipped)("in %s", (path) => {
    const plan = planIn(readYaml(path, readFileSync(path, "utf8")));
    if (plan === undefined) throw new Error("unreadable");
    expect(silent(plan).silent).toEqual([]);
  });

  test("in any plan that shows a defect", () => {
    let beyond = 0;
    for (const { plan, set } of examples) {
      const file = readYaml(plan, EXAMPLE_PLANS[plan]);
      const changed = planIn({ ...file, data: withSettings(file.data as Record<string, unknown>, set, usualAt) });
      if (changed === undefined) throw new Error(`${plan} ${set.join(" ")} is unreadable`);
      const found = silent(changed);
      expect(found.silent, `${plan} ${set.join(" ")}`).toEqual([]);
      beyond += found.beyond;
    }
    // Most of these plans are spoilt on purpose.
    expect(beyond).toBeGreaterThan(examples.length);
  });

  test("in plans drawn at random", () => {
    let beyond = 0;
    const looked = (raw: unknown) => {
      const found = silent(planSchema.parse(raw));
      expect(found.silent).toEqual([]);
      beyond += found.beyond;
    };
    fc.assert(fc.property(wild, looked), { numRuns: runs(200), endOnFailure: true });
    fc.assert(fc.property(near, looked), { numRuns: runs(60), endOnFailure: true });
    expect(beyond).toBeGreaterThan(runs(260, 60));
  });
});
