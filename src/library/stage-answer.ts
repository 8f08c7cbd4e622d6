import { oneBuilder } from "../build/builders.ts";
import { builtMachine } from "../build/built-machine.ts";
import { findingsOf, inPlan, type Machine, machineOf, printerOf } from "../build/machine.ts";
import { partNamesTwice } from "../build/output-names.ts";
import { forbidden, type Printing } from "../build/stage-parts.ts";
import { foundOf, isGood, setFiles } from "../build/stage-set.ts";
import { hasErrors } from "../core/diagnostic.ts";
import type { Kernel } from "../geometry/kernel.ts";
import { locatedIn } from "../presets/preset-file.ts";
import type { Located, YamlFile } from "../presets/read.ts";
import { readStagePreset, type StagePreset } from "../presets/stage-preset.ts";
import { UNCALIBRATED } from "../printing/printer.ts";
import { deriveStage, type Section } from "../stage/index.ts";
import type { Derived, Made, Options, Part, ReportBlock } from "./answers.ts";
import { anyError, complaintsOf, printerFor } from "./opened.ts";
import { builtPart, partFacts } from "./part-answer.ts";

/** A plan as far as its text could be understood, and what the text and arithmetic have to say. */
interface Planned {
  readonly machine: Machine | undefined;
  readonly messages: readonly Located[];
}

/** Returns what the plan of a machine and arithmetic say. */
export function derivedStage(file: YamlFile, options: Options, version: string): Derived {
  const { machine, messages } = planned(file, options, version);
  const parts = machine?.parts.map(({ request, designed, hash }) => partFacts(request, designed.design, hash));
  return answered(machine, messages, parts ?? []);
}

/** Returns the same with finished bodies, what is found between them, and files. */
export async function madeStage(file: YamlFile, options: Options, version: string, kernel: Kernel): Promise<Made> {
  const { machine, messages } = planned(file, options, version);
  if (machine === undefined) return { ...answered(machine, messages, []), files: [] };
  const taken = partNamesTwice(machine.parts).map((one) => locatedIn(file, one));
  if (taken.length > 0) return { ...answered(machine, [...messages, ...taken], []), files: [] };
  const refused = forbidden(machine.stage);
  const possible = machine.parts.filter(({ owner }) => !refused(owner));
  const builders = oneBuilder(() => Promise.resolve(kernel));
  const { parts, assembly } = await builtMachine(machine, possible, { builders, version });
  const found = inPlan(
    machine.preset,
    parts.map((one) => ({ part: one.part, diagnostics: foundOf(one) })),
  );
  const all = [...messages, ...[...(assembly?.found ?? []), ...found].map((one) => locatedIn(file, one))];
  const told = parts.flatMap((one) => ("finished" in one ? [builtPart(one.finished)] : []));
  const { stage, preset } = machine;
  const nothing = anyError(all) && !parts.some(isGood);
  const files = nothing ? [] : setFiles({ name: preset.name, stage, parts, assembly, version });
  return { ...answered(machine, all, told), files };
}

function planned(file: YamlFile, options: Options, version: string): Planned {
  const { value: preset, complaints } = readStagePreset(file);
  const told = [...(file.notes ?? []), ...complaints];
  if (preset === undefined) return { machine: undefined, messages: told };
  const printers = printersFor(file, preset, options);
  const wrong = [...told, ...printers.messages];
  if (!anyError(wrong)) {
    const machine = machineOf(preset, printers.printing, version);
    return { machine, messages: [...wrong, ...findingsOf(machine).map((one) => locatedIn(file, one))] };
  }
  const unread = [...preset.unread, ...(printers.messages.length > 0 ? [["printers"]] : [])];
  const { diagnostics } = deriveStage(preset.plan, printerOf(printers.printing), unread);
  return { machine: undefined, messages: [...wrong, ...diagnostics.map((one) => locatedIn(file, one))] };
}

function printersFor(file: YamlFile, preset: StagePreset, options: Options) {
  const usual = printerFor(file, ["printer"], preset.printer, options);
  const named = options.printer === undefined ? Object.entries(preset.printers) : [];
  const own = new Map(named.map(([family, path]) => [family, printerFor(file, ["printers", family], path, options)]));
  const printing = (family: string): Printing => {
    const { printer = UNCALIBRATED, calibrated } = own.get(family) ?? usual;
    return { printer, calibrated };
  };
  return { printing, messages: [usual, ...own.values()].flatMap(({ messages }) => messages) };
}

function answered<Of extends Part>(machine: Machine | undefined, messages: readonly Located[], parts: Of[]) {
  return {
    kind: "stage",
    name: machine?.preset.name,
    ok: machine !== undefined && !hasErrors(messages.map(({ diagnostic }) => diagnostic)),
    complaints: complaintsOf(messages),
    parts,
    report: machine?.stage.sections.map(blockOf) ?? [],
  } as const satisfies Derived<Of>;
}

const blockOf = ({ title, facts, lines = [] }: Section): ReportBlock => ({ title, numbers: facts, lines });
