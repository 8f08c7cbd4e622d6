import { findingsOf, type Machine, machineOf, printerOf } from "../build/machine.ts";
import type { Printing } from "../build/stage-parts.ts";
import type { Diagnostic } from "../core/diagnostic.ts";
import { locatedIn } from "../presets/preset-file.ts";
import type { Located, YamlFile } from "../presets/read.ts";
import { readStagePreset, type StagePreset, usualAt } from "../presets/stage-preset.ts";
import { UNCALIBRATED } from "../printing/printer.ts";
import { deriveStage } from "../stage/index.ts";
import { type Calibration, calibrationOf, loadPrinter } from "./calibration.ts";
import type { LoadOptions, Target } from "./load.ts";
import { withSettings } from "./settings.ts";

export { inPlan, type Machine } from "../build/machine.ts";

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
    const unknown = printers.messages.length > 0 || preset.unread.some(([key]) => key === "printer");
    const noPrinter = unknown ? [["printers"]] : [];
    const { diagnostics } = deriveStage(preset.plan, printerOf(printers.printing), [...preset.unread, ...noPrinter]);
    const messages = [...wrong, ...diagnostics.map(locate)];
    return { file: file.name, machine: undefined, messages, locate };
  }
  const machine = machineOf(preset, printers.printing, options.version);
  let messages: readonly Located[] | undefined;
  return {
    file: file.name,
    machine,
    // Worked out when they are asked for: what is to be built may be on its way by then.
    get messages() {
      messages ??= [...wrong, ...findingsOf(machine).map(locate)];
      return messages;
    },
    locate,
  };
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
