import { join } from "node:path";
import { type TestedAssembly, testedAssembly } from "../../build/assembly.ts";
import { sha256Hex } from "../../build/hash.ts";
import { forbidden, type StagePart } from "../../build/stage-parts.ts";
import {
  builtPart,
  type Earlier,
  foundOf,
  isGood,
  keptPart,
  MANIFEST,
  PARTS,
  type SetPart,
  setFiles,
  withFound,
} from "../../build/stage-set.ts";
import { defect } from "../../core/defects.ts";
import { type Diagnostic, hasErrors } from "../../core/diagnostic.ts";
import type { Kernel } from "../../geometry/kernel.ts";
import { type ManifestFile, readManifest } from "../../outputs/manifest.ts";
import { reportData } from "../../outputs/report-json.ts";
import type { Located } from "../../presets/read.ts";
import { tryBytes, tryText, writeSet } from "../files.ts";
import { EXIT, type Io } from "../io.ts";
import { inPlan, type LoadedStage, loadStage, type Machine } from "../load-stage.ts";
import { inOrder, messageData, messageLines } from "../message.ts";
import { setSummary } from "../set-summary.ts";
import { breath, cautionLines, type MakeArgs, partData, partLines } from "./make.ts";

interface StageArgs extends MakeArgs {
  readonly version: string;
}

/** What came of one plan. */
interface Outcome {
  readonly loaded: LoadedStage;
  readonly folder: string;
  readonly parts: readonly SetPart[];
  readonly assembly?: TestedAssembly | undefined;
  /** Files that this run wrote, or would have. */
  readonly written: readonly string[];
  /** Files of the set before that went. */
  readonly removed: readonly string[];
  readonly messages: readonly Located[];
}

/** Makes every plan: derives the machine, builds what is not there yet, writes the set. Returns the exit code. */
export async function makeStages(args: StageArgs, kernel: Promise<Kernel>, io: Io): Promise<number> {
  const loaded = args.targets.map((target) => loadStage(target, args));
  const names = loaded.map(({ machine }) => machine?.preset.name);
  const outcomes: Outcome[] = [];
  for (const [index, one] of loaded.entries()) {
    const twin = loaded.find((_, at) => at !== index && names[at] !== undefined && names[at] === names[index]);
    outcomes.push(await outcomeOf(one, twin?.file, args, kernel));
  }
  if (args.json) io.out(JSON.stringify(asData(outcomes, args), undefined, 2));
  else for (const outcome of outcomes) report(outcome, args, io);
  const all = outcomes.flatMap(({ messages }) => messages.map(({ diagnostic }) => diagnostic));
  return hasErrors(all) ? EXIT.errors : EXIT.done;
}

async function outcomeOf(
  loaded: LoadedStage,
  twin: string | undefined,
  args: StageArgs,
  kernel: Promise<Kernel>,
): Promise<Outcome> {
  const { machine, messages } = loaded;
  const nothing = { loaded, folder: args.output, parts: [], written: [], removed: [], messages: inOrder(messages) };
  if (machine === undefined) return nothing;
  const folder = join(args.output, machine.preset.name);
  const taken = [...(twin === undefined ? [] : [takenFolder(folder, twin)]), ...takenNames(machine.parts)];
  if (taken.length > 0) return { ...nothing, messages: inOrder([...messages, ...taken.map(loaded.locate)]) };
  const earlier = args.dry || args.force ? undefined : earlierIn(folder);
  const assembly = await testedAssembly(machine, earlier?.manifest.assembly, args.version, kernel);
  await breath();
  const parts = await partsOf(machine, assembly, earlier, kernel);
  const found = inPlan(
    machine.preset,
    parts.map((one) => ({ part: one.part, diagnostics: foundOf(one) })),
  );
  const all = inOrder([...messages, ...[...(assembly?.found ?? []), ...found].map(loaded.locate)]);
  const useless = hasErrors(all.map(({ diagnostic }) => diagnostic)) && !parts.some(isGood);
  if (useless) return { ...nothing, folder, parts, assembly, messages: all };
  const { name } = machine.preset;
  const files = setFiles({ name, stage: machine.stage, parts, assembly, version: args.version });
  const listed = new Set([...files.map((file) => file.name), ...parts.flatMap((one) => keptNames(one))]);
  const before = earlierIn(folder);
  const stale = (before?.manifest.files ?? []).filter((file) => !listed.has(file.name) && before?.intact(file));
  const removed = stale.map((file) => file.name);
  const isOwn = (name: string) =>
    before?.manifest.files.some((file) => file.name === name && before.intact(file)) === true;
  if (!args.dry) writeSet(folder, files, { force: args.force, isOwn, stale: removed });
  return { loaded, folder, parts, assembly, written: files.map((file) => file.name), removed, messages: all };
}

async function partsOf(
  { stage, parts }: Machine,
  assembly: TestedAssembly | undefined,
  earlier: Earlier | undefined,
  kernel: Promise<Kernel>,
) {
  const stopped = forbidden(stage, assembly?.found);
  const made: SetPart[] = [];
  for (const part of parts) {
    if (stopped(part.owner)) continue;
    made.push(keptPart(part, earlier) ?? builtPart(part, await kernel, made));
    await breath();
  }
  return made;
}

const keptNames = (one: SetPart) => ("kept" in one ? one.files.map(({ name }) => name) : []);

/** Returns what an earlier run left in the folder; undefined where there is no manifest of ours. */
function earlierIn(folder: string): Earlier | undefined {
  const read = tryText(join(folder, MANIFEST));
  const manifest = "text" in read ? readManifest(read.text) : undefined;
  return manifest === undefined ? undefined : { manifest, intact: (file) => isIntact(folder, file) };
}

function isIntact(folder: string, { name, bytes, sha256 }: ManifestFile): boolean {
  const there = tryBytes(join(folder, name));
  return there !== undefined && there.length === bytes && sha256Hex(there) === sha256;
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

function takenNames(parts: readonly StagePart[]): Diagnostic[] {
  const names = parts.map(({ request }) => request.name);
  return parts
    .filter(({ request }, index) => names.indexOf(request.name) !== index)
    .map(({ request, owner }) =>
      defect("file-name-taken-twice", {
        level: "error",
        path: owner.path,
        says: `two parts of the machine would be written to ${PARTS}${request.name}`,
        set: "another name for the thing in the plan that the part belongs to",
      }),
    );
}

function report({ loaded, folder, parts, written, removed, messages }: Outcome, args: StageArgs, io: Io): void {
  const say = args.dry ? io.out : io.err;
  for (const message of messages) {
    if (args.quiet && message.diagnostic.level === "note") continue;
    for (const line of messageLines(message, io.paint)) say(line);
  }
  if (!args.quiet) {
    for (const one of parts) for (const line of linesOf(one, join(folder, PARTS), args)) io.out(line);
    const rest = written.filter((name) => !name.startsWith(PARTS)).join(", ");
    if (rest !== "")
      io.out(
        `${loaded.machine?.preset.name}  (machine)\n  ${args.dry ? "would be" : "made    "}  ${rest} in ${folder}`,
      );
    if (removed.length > 0) io.out(`  removed   ${removed.join(", ")}: no longer of this machine`);
  }
  for (const line of cautionLines(parts.map(({ part }) => part.designed.design))) io.err(line);
  io.err(
    setSummary(
      messages.map(({ diagnostic }) => diagnostic),
      parts,
      { ...args, written: written.length, folder },
    ),
  );
}

function linesOf(one: SetPart, output: string, { dry }: StageArgs): string[] {
  if (!("kept" in one)) return partLines(one.finished, { output, dry });
  const { family, material } = one.part.designed.design;
  return [
    `${one.kept.name}  (${family}, ${material}, preset ${one.kept.hash})`,
    ...one.kept.pieces.map(({ file }) => `  kept      ${join(output, file)}: unchanged, not built again`),
  ];
}

function asData(outcomes: readonly Outcome[], { dry, version }: StageArgs): object {
  return {
    stages: outcomes.map(({ loaded: { machine, file }, folder, parts, assembly, written, removed }) => ({
      file,
      ...(machine === undefined ? {} : reportOf(machine, assembly, version)),
      folder,
      written: dry ? [] : written.map((name) => join(folder, name)),
      removed: dry ? [] : removed.map((name) => join(folder, name)),
      parts: parts.map((one) =>
        "kept" in one ? { ...one.kept, kept: true } : partData(one.finished, { output: join(folder, PARTS), dry }),
      ),
    })),
    messages: outcomes.flatMap(({ messages }) => messages.map(messageData)),
  };
}

function reportOf({ preset, stage, parts }: Machine, assembly: TestedAssembly | undefined, version: string): object {
  const listed = parts.map(({ request, hash, owner }) => ({
    name: request.name,
    family: request.family.name,
    hash,
    owner,
  }));
  return reportData({ name: preset.name, version, stage: withFound(stage, assembly), parts: listed });
}
