import { partFindings } from "../build/part-findings.ts";
import { strangeAcceptances } from "../build/stage-accept.ts";
import { type Printing, type StagePart, stageParts } from "../build/stage-parts.ts";
import type { Diagnostic } from "../core/diagnostic.ts";
import { blocksOf } from "../presets/plan-blocks.ts";
import { planUnmeasured } from "../presets/plan-unmeasured.ts";
import { locatedIn } from "../presets/preset-file.ts";
import type { Located, YamlFile } from "../presets/read.ts";
import { readStagePreset, type StagePreset, stageFileSchema, usualAt } from "../presets/stage-preset.ts";
import { UNCALIBRATED } from "../printing/printer.ts";
import { deriveStage, type PrinterOf, type Stage } from "../stage/index.ts";
import { type Calibration, calibrationOf, loadPrinter } from "./calibration.ts";
import type { LoadOptions, Target } from "./load.ts";
import { withSettings } from "./settings.ts";

/** A machine worked out from its file. */
export interface Machine {
  readonly preset: StagePreset;
  readonly stage: Stage;
  readonly parts: readonly StagePart[];
  readonly printer: PrinterOf;
}

/** A plan as far as its file could be understood. */
export interface LoadedStage {
  /** The plan's file, as messages name it. */
  readonly file: string;
  /** Undefined when the file does not say what it means. */
  readonly machine: Machine | undefined;
  readonly messages: readonly Located[];
  readonly locate: (diagnostic: Diagnostic) => Located;
}

interface StageOptions extends LoadOptions {
  readonly version: string;
}

/** Returns the machine in a plan's file, with all that the file, its references and arithmetic have to say. */
export function loadStage({ target, file: written }: Target, options: StageOptions): LoadedStage {
  const file = laidOver(written, options.set);
  const locate = (one: Diagnostic) => locatedIn(file, one);
  const { value: preset, complaints } = readStagePreset(file);
  if (preset === undefined) return { file: file.name, machine: undefined, messages: complaints, locate };
  const printers = printersOf(file, target, preset, options.printer);
  const wrong = [...(file.notes ?? []), ...complaints, ...printers.messages];
  if (wrong.some(({ diagnostic }) => diagnostic.level === "error")) {
    const noPrinter = printers.messages.length > 0 ? [["printers"]] : [];
    const { diagnostics } = deriveStage(preset.plan, printerOf(printers), [...preset.unread, ...noPrinter]);
    const messages = [...wrong, ...diagnostics.map(locate)];
    return { file: file.name, machine: undefined, messages, locate };
  }
  const machine = machineOf(preset, printers.printing, options.version);
  return { file: file.name, machine, messages: [...wrong, ...findingsOf(machine).map(locate)], locate };
}

function machineOf(preset: StagePreset, printing: (family: string) => Printing, version: string): Machine {
  const printer = printerOf({ printing });
  const stage = deriveStage(preset.plan, printer);
  return { preset, stage, parts: stageParts(stage, printing, version), printer };
}

const printerOf =
  ({ printing }: Pick<Printers, "printing">): PrinterOf =>
  (family) =>
    printing(family).printer;

/** What arithmetic found: of the machine, of its parts, and what nobody measured. */
function findingsOf({ preset, stage, parts }: Machine): Diagnostic[] {
  // What the machine has told of a part itself, behind the part's name, is not told again.
  const told = (one: Diagnostic) =>
    stage.diagnostics.some(({ name, says }) => name === one.name && says.endsWith(one.says));
  const designed = parts.map((part) => ({
    part,
    diagnostics: part.designed.diagnostics.filter((one) => !told(one)),
  }));
  return [
    ...stage.diagnostics,
    ...strangeAcceptances(stage),
    ...inPlan(preset, designed),
    ...planUnmeasured(preset, stage.parts),
  ];
}

/** Returns what was found of parts with paths into the plan. */
export function inPlan({ plan, data }: StagePreset, findings: Parameters<typeof partFindings>[0]): Diagnostic[] {
  return partFindings(findings, plan, blocksOf(stageFileSchema, data));
}

function laidOver(file: YamlFile, set: readonly string[]): YamlFile {
  if (set.length === 0 || typeof file.data !== "object" || file.data === null || Array.isArray(file.data)) return file;
  return { ...file, data: withSettings(file.data as Record<string, unknown>, set, usualAt) };
}

interface Printers {
  readonly printing: (family: string) => Printing;
  readonly messages: readonly Located[];
}

/** Reads the printers' files: the one chosen on the command line for all, else by family, else the plan's own. */
function printersOf(file: YamlFile, target: string, preset: StagePreset, chosen: string | undefined): Printers {
  const usual = chosen === undefined ? calibrationOf(file, target, ["printer"], preset.printer) : loadPrinter(chosen);
  const named = chosen === undefined ? Object.entries(preset.printers) : [];
  const own = new Map(named.map(([family, path]) => [family, calibrationOf(file, target, ["printers", family], path)]));
  const printingOf = ({ printer = UNCALIBRATED, calibrated }: Calibration) => ({ printer, calibrated });
  return {
    printing: (family) => printingOf(own.get(family) ?? usual),
    messages: [usual, ...own.values()].flatMap(({ messages }) => messages),
  };
}
