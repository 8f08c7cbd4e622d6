import { join } from "node:path";
import type { TestedAssembly } from "../../build/assembly.ts";
import type { Builders } from "../../build/builders.ts";
import type { PrintAgain } from "../../build/print-again.ts";
import { PARTS, type SetPart, withFound } from "../../build/stage-set.ts";
import { type Diagnostic, hasErrors } from "../../core/diagnostic.ts";
import { reportData } from "../../outputs/report-json.ts";
import type { Located } from "../../presets/read.ts";
import { cautionLines, spoken } from "../cautioned.ts";
import { hanging } from "../explain/hanging.ts";
import { EXIT, type Io } from "../io.ts";
import type { Target } from "../load.ts";
import { type LoadedStage, loadStage, type Machine } from "../load-stage.ts";
import { messageData } from "../message.ts";
import { alikeLines, keptLines, repeat } from "../repeat.ts";
import { setSummary } from "../set-summary.ts";
import { cautionsOf, type Outcome, outcomeOf, type StageArgs } from "../stage-outcome.ts";
import { plural } from "../summary.ts";
import { tell } from "../tell.ts";
import { type Unchanged, unchangedSet } from "../unchanged.ts";
import { partData, partLines } from "./make.ts";

/** Makes every plan, or finds that nothing has changed since it was made. Returns the exit code. */
export async function makeStages(args: StageArgs, builders: Builders, io: Io): Promise<number> {
  const asked = args.targets.map((target) => ({ target, was: unchangedOr(target, args, builders) }));
  const names = asked.map(({ was }) => nameOf(was));
  const outcomes: (Outcome | Unchanged)[] = [];
  for (const [index, { target, was }] of asked.entries()) {
    const twin = asked.find((_, at) => at !== index && names[at] !== undefined && names[at] === names[index]);
    if ("manifest" in was && twin === undefined) outcomes.push(was);
    else {
      io.progress?.(`working out ${target.file.name}`);
      const loaded = "manifest" in was ? loadStage(target, args) : was;
      outcomes.push(await outcomeOf({ target, loaded, twin: twin?.target.file.name }, args, builders));
    }
  }
  if (args.json) io.out(JSON.stringify(asData(outcomes.filter(isOutcome), args), undefined, 2));
  else for (const outcome of outcomes) isOutcome(outcome) ? report(outcome, args, io) : repeat(outcome, args, io);
  return hasErrors(outcomes.flatMap(({ messages }) => messages.map(({ diagnostic }) => diagnostic)))
    ? EXIT.errors
    : EXIT.done;
}

/** Returns the set that is there as this run would make it, or the plan worked out. */
function unchangedOr(target: Target, args: StageArgs, builders: Builders): Unchanged | LoadedStage {
  const full = args.dry || args.force || args.json;
  const unchanged = full ? undefined : unchangedSet(planText(target), args.output, args);
  if (unchanged !== undefined) return unchanged;
  builders.getReady();
  return loadStage(target, args);
}

const planText = ({ target, file: { name, text, data } }: Target) => ({
  target,
  name,
  text,
  stage: (data as { readonly stage?: unknown } | null | undefined)?.stage,
});

const nameOf = (one: Unchanged | LoadedStage) => ("manifest" in one ? one.manifest.stage : one.machine?.preset.name);

const isOutcome = (one: Outcome | Unchanged): one is Outcome => "loaded" in one;

function report(outcome: Outcome, args: StageArgs, io: Io): void {
  const { loaded, folder, parts, written, removed, changed = [], again, messages } = outcome;
  const cautions = loaded.machine === undefined ? [] : cautionsOf(loaded.machine, parts);
  tell(messages, io, spoken(args, io));
  if (!args.quiet) {
    for (const one of parts) for (const line of linesOf(one, join(folder, PARTS), args, io.verbose)) io.out(line);
    const rest = written.filter((name) => !name.startsWith(PARTS)).join(", ");
    if (rest !== "")
      io.out(
        `${loaded.machine?.preset.name}  (machine)\n  ${args.dry ? "would be" : "made    "}  ${rest} in ${folder}`,
      );
    for (const line of alikeLines(outcome.alike ?? [])) io.out(line);
    if (removed.length > 0) io.out(`  removed   ${removed.join(", ")}: no longer of this machine`);
    if (again !== undefined) for (const line of againLines(again, loaded.file, parts)) io.out(line);
  }
  // Somebody's work that lies elsewhere now is told to whoever wants to hear little as well.
  for (const name of changed)
    for (const line of hanging("  kept      ", `${join(folder, name)}: what somebody had changed`))
      (args.quiet ? io.err : io.out)(line);
  for (const line of cautionLines(cautions, args)) io.err(line);
  io.err(setSummary(diagnosticsOf(messages), parts, { ...args, written: written.length, folder }));
}

/** What to print of a machine that was made before with other numbers; feet may do with other rings instead. */
function againLines({ names, hours, same }: PrintAgain, plan: string, parts: readonly SetPart[]): string[] {
  const stay = `${plural(same, "part")} ${same === 1 ? "is" : "are"} as before`;
  if (names.length === 0) return hanging("  reprint   ", `nothing: ${stay}`);
  const feet = parts.filter(
    ({ part }) => part.request.family.name === "screw-foot" && names.includes(part.request.name),
  );
  const which = `whether ${feet.length === 1 ? "the foot" : "the feet"} can stay with other rings or the hub turned`;
  return [
    ...hanging("  reprint   ", `${names.join(", ")}: about ${hours.toFixed(1)} h; ${stay}`),
    ...(feet.length === 0 ? [] : hanging("  or        ", `tramwright compare <plan as before> ${plan} says ${which}`)),
  ];
}

const diagnosticsOf = (messages: readonly Located[]): Diagnostic[] => messages.map(({ diagnostic }) => diagnostic);

function linesOf(one: SetPart, output: string, { dry }: StageArgs, verbose = false): string[] {
  return "kept" in one ? keptLines(one.kept, output) : partLines(one.finished, { output, dry }, verbose);
}

function asData(outcomes: readonly Outcome[], { dry, version }: StageArgs): object {
  return {
    stages: outcomes.map(({ loaded: { machine, file }, folder, parts, assembly, written, ...outcome }) => ({
      file,
      ...(machine === undefined ? {} : reportOf(machine, assembly, version)),
      folder,
      written: dry ? [] : written.map((name) => join(folder, name)),
      ...(outcome.again === undefined ? {} : { reprint: outcome.again }),
      removed: dry ? [] : outcome.removed.map((name) => join(folder, name)),
      ...((outcome.changed ?? []).length === 0 ? {} : { changed: outcome.changed?.map((name) => join(folder, name)) }),
      ...(outcome.alike === undefined ? {} : { alike: outcome.alike }),
      parts: parts.map((one) =>
        "kept" in one
          ? { ...one.kept, sameAs: undefined, kept: true }
          : partData(one.finished, { output: join(folder, PARTS), dry }),
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
