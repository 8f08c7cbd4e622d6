import type { Diagnostic } from "../core/diagnostic.ts";
import { blocksOf } from "../presets/plan-blocks.ts";
import { planUnmeasured } from "../presets/plan-unmeasured.ts";
import { type StagePreset, stageFileSchema } from "../presets/stage-preset.ts";
import { deriveStage, inPlanUnits, type PrinterOf, type Stage } from "../stage/index.ts";
import { partFindings } from "./part-findings.ts";
import { strangeAcceptances } from "./stage-accept.ts";
import { type Printing, type StagePart, stageParts } from "./stage-parts.ts";

/** A machine worked out from its plan. */
export interface Machine {
  readonly preset: StagePreset;
  readonly stage: Stage;
  readonly parts: readonly StagePart[];
  readonly printer: PrinterOf;
}

/** Returns the machine of a plan that was read. */
export function machineOf(preset: StagePreset, printing: (family: string) => Printing, version: string): Machine {
  const printer = printerOf(printing);
  const stage = deriveStage(preset.plan, printer);
  return { preset, stage, parts: stageParts(stage, printing, version), printer };
}

/** Returns the printer of each family alone. */
export const printerOf =
  (printing: (family: string) => Printing): PrinterOf =>
  (family) =>
    printing(family).printer;

/** Returns what arithmetic found: of the machine, of its parts, and what nobody measured. */
export function findingsOf({ preset, stage, parts }: Machine): Diagnostic[] {
  // What the machine has told of a part itself, behind the part's name, is not told again.
  const told = (one: Diagnostic) =>
    stage.diagnostics.some(({ name, says }) => name === one.name && says.endsWith(one.says));
  const designed = parts.map((part) => ({
    part,
    diagnostics: part.designed.diagnostics.filter((one) => !told(one)),
  }));
  const unmeasured = inPlanUnits(planUnmeasured(preset, stage.parts), preset.plan);
  return [...stage.diagnostics, ...strangeAcceptances(stage), ...inPlan(preset, designed), ...unmeasured];
}

/** Returns what was found of parts with paths into the plan. */
export function inPlan({ plan, data }: StagePreset, findings: Parameters<typeof partFindings>[0]): Diagnostic[] {
  return inPlanUnits(partFindings(findings, plan, blocksOf(stageFileSchema, data)), plan);
}
