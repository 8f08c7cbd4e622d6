import { join } from "node:path";
import type { TestedAssembly } from "../build/assembly.ts";
import type { Builders } from "../build/builders.ts";
import { builtMachine, type Means } from "../build/built-machine.ts";
import { partNamesTwice } from "../build/output-names.ts";
import { type PrintAgain, printAgain } from "../build/print-again.ts";
import { forbidden } from "../build/stage-parts.ts";
import {
  alikeIn,
  type Earlier,
  foundOf,
  isGood,
  keptPart,
  partFiles,
  type SetPart,
  setFiles,
} from "../build/stage-set.ts";
import { defect } from "../core/defects.ts";
import { type Diagnostic, hasErrors } from "../core/diagnostic.ts";
import { beltsSvg } from "../outputs/belts-svg.ts";
import { type CautionName, forSupply } from "../parts/cautions.ts";
import type { Located } from "../presets/read.ts";
import { breath } from "./breath.ts";
import type { MakeArgs } from "./commands/make.ts";
import { earlierIn } from "./earlier-set.ts";
import type { Target } from "./load.ts";
import { inPlan, type LoadedStage, type Machine } from "./load-stage.ts";
import { inOrder } from "./message.ts";
import { replaceSet, settleSet } from "./replace-set.ts";
import { sha256 } from "./sha256.ts";
import { type StagedFiles, stagedFiles } from "./staged-files.ts";
import { sourceOf } from "./unchanged.ts";

export type StageArgs = MakeArgs;

/** What came of one plan. */
export interface Outcome {
  readonly loaded: LoadedStage;
  readonly folder: string;
  readonly parts: readonly SetPart[];
  readonly assembly?: TestedAssembly | undefined;
  /** Files that this run wrote, or would have. */
  readonly written: readonly string[];
  /** Files of the set before that went. */
  readonly removed: readonly string[];
  /** Files of the set before that somebody had changed, by the names under which they stay. */
  readonly changed?: readonly string[];
  /** What differs from the set that was there before; undefined where there was none. */
  readonly again?: PrintAgain | undefined;
  /** Parts that are the same bodies: any of them serves for the others. */
  readonly alike?: readonly (readonly string[])[];
  readonly messages: readonly Located[];
}

/** A plan that was worked out, and the file of another one in this run whose stage has the same name. */
interface Asked {
  readonly target: Target;
  readonly loaded: LoadedStage;
  readonly twin: string | undefined;
}

/** Makes one plan: builds what is not there yet, writes the set unless the run is dry. */
export async function outcomeOf(
  { target, loaded, twin }: Asked,
  args: StageArgs,
  builders: Builders,
): Promise<Outcome> {
  const { machine } = loaded;
  const nothing = (more: readonly Diagnostic[] = []) => {
    const messages = inOrder([...loaded.messages, ...more.map(loaded.locate)]);
    return { loaded, folder: args.output, parts: [], written: [], removed: [], messages };
  };
  if (machine === undefined) return nothing();
  const folder = join(args.output, machine.preset.name);
  const taken = [...(twin === undefined ? [] : [takenFolder(folder, twin)]), ...partNamesTwice(machine.parts)];
  if (taken.length > 0) return nothing(taken);
  if (!args.dry) settleSet(folder);
  const staged = stagedFiles(folder);
  try {
    return await builtOutcome({ target, loaded, machine, folder }, args, builders, staged);
  } finally {
    staged.drop();
  }
}

/** A plan without errors that forbid all of it, and where its set goes. */
interface Begun {
  readonly target: Target;
  readonly loaded: LoadedStage;
  readonly machine: Machine;
  readonly folder: string;
}

async function builtOutcome(
  { target, loaded, machine, folder }: Begun,
  args: StageArgs,
  builders: Builders,
  staged: StagedFiles,
): Promise<Outcome> {
  const before = earlierIn(folder);
  const building = partsOf(machine, args.dry || args.force ? undefined : before, {
    builders,
    version: args.version,
    pause: breath,
    // Written down while others are still built.
    ...(args.dry ? {} : { heard: (part: SetPart) => staged.put(partFiles(part)) }),
  });
  // What follows from the plan alone is drawn and told while the first bodies are carved.
  const belts = beltsSvg(machine.stage, machine.preset.name);
  const said = loaded.messages;
  const { parts, assembly } = await building;
  const found = inPlan(
    machine.preset,
    parts.map((one) => ({ part: one.part, diagnostics: foundOf(one) })),
  );
  const all = inOrder([...said, ...[...(assembly?.found ?? []), ...found].map(loaded.locate)]);
  const outcome = { loaded, folder, parts, assembly, written: [], removed: [], messages: all };
  const wrong = hasErrors(all.map(({ diagnostic }) => diagnostic));
  if (wrong && !parts.some(isGood)) return outcome;
  const cautions = cautionsOf(machine, parts);
  const source = wrong ? undefined : sourceOf(target, machine.preset, { messages: all, cautions }, args);
  const { stage, preset } = machine;
  const same = alikeIn(parts);
  const set = { name: preset.name, stage, parts, assembly, version: args.version, source, alike: same, belts };
  const files = setFiles(set, sha256);
  const written = files.map(({ name }) => name);
  const kept = parts.flatMap((one) => ("kept" in one ? one.files.map(({ name }) => name) : []));
  const again = before === undefined ? undefined : printAgain(parts, before.manifest, sha256);
  if (args.dry) return { ...outcome, written, again, alike: same };
  staged.put(files);
  await staged.settled();
  const { removed, changed } = replaceSet(folder, { files, kept, force: args.force }, staged);
  return { ...outcome, written, removed, changed, again, alike: same };
}

/** Returns the cautions of a machine, each once: those of its parts and of its heater, as fits the heater's voltage. */
export function cautionsOf({ preset }: Machine, parts: readonly SetPart[]): CautionName[] {
  const { heater } = preset.plan.plate;
  const names = parts.flatMap(({ part }) => part.designed.design.cautions);
  return [...new Set(forSupply([...(heater === undefined ? [] : HEATED), ...names], heater?.volts))];
}

/** What a heater brings, however warm the plate is to be. */
const HEATED: readonly CautionName[] = ["hot-surface", "heater-supply"];

/** Builds and puts together what is not there yet. */
async function partsOf(
  machine: Machine,
  earlier: Earlier | undefined,
  means: Omit<Means, "earlier">,
): Promise<{ readonly parts: readonly SetPart[]; readonly assembly: TestedAssembly | undefined }> {
  const refused = forbidden(machine.stage);
  const possible = machine.parts.filter(({ owner }) => !refused(owner));
  const kept = possible.flatMap((part) => keptPart(part, earlier) ?? []);
  const missing = possible.filter((part) => !kept.some((one) => one.part === part));
  const { parts, assembly } = await builtMachine(machine, missing, { ...means, earlier: earlier?.manifest.assembly });
  const stopped = forbidden(machine.stage, assembly?.found);
  const all = [...kept.filter(({ part }) => !stopped(part.owner)), ...parts];
  return { parts: all.sort((a, b) => possible.indexOf(a.part) - possible.indexOf(b.part)), assembly };
}

function takenFolder(folder: string, other: string): Diagnostic {
  const says = `${other} is written to ${folder} as well`;
  return defect("file-name-taken-twice", {
    level: "error",
    path: ["stage"],
    says,
    set: "stage: another name, in one of the two",
  });
}
