import { basename, dirname, join } from "node:path";
import type { Finished } from "../../build/order.ts";
import { presetText } from "../../build/preset-text.ts";
import { type ComparedFile, type Rebuilt, rebuilt } from "../../build/rebuilt.ts";
import type { Request } from "../../build/request.ts";
import { hasErrors } from "../../core/diagnostic.ts";
import { harmless } from "../../core/unprintable.ts";
import type { Kernel } from "../../geometry/kernel.ts";
import type { Carried } from "../../outputs/package/read-three-mf.ts";
import { inCurrentFormat } from "../../presets/formats.ts";
import { type Located, readYaml } from "../../presets/read.ts";
import { carriedIn } from "../carried-in.ts";
import { hanging } from "../explain/hanging.ts";
import { ordinaryBytes } from "../file-text.ts";
import { type OutputFile, writeSet } from "../files.ts";

import { EXIT, type Io } from "../io.ts";
import { load } from "../load.ts";
import { measureLines, toMeasure } from "../measure-lines.ts";
import { inOrder, messageData } from "../message.ts";
import { plural } from "../summary.ts";
import { tell } from "../tell.ts";

export interface RebuildArgs {
  readonly files: readonly string[];
  /** Where what was made is written; nothing is written without it. */
  readonly output: string | undefined;
  readonly json: boolean;
  readonly quiet: boolean;
  readonly force: boolean;
  readonly version: string;
}

/** What came of one package. */
interface Outcome {
  readonly file: string;
  readonly carried: Carried;
  readonly request: Request | undefined;
  /** Undefined where the preset could not be understood. */
  readonly result: Rebuilt | undefined;
  readonly messages: readonly Located[];
  readonly written: readonly string[];
}

/** Makes each part again from the preset in its 3MF file and says whether the bytes agree. Returns the exit code. */
export async function rebuild(args: RebuildArgs, kernel: Promise<Kernel>, io: Io): Promise<number> {
  const ready = await kernel;
  const outcomes = args.files.map((file) => outcomeOf(file, args, ready));
  if (args.json) io.out(JSON.stringify({ parts: outcomes.map((one) => asData(one, args)) }, undefined, 2));
  else for (const outcome of outcomes) report(outcome, args, io);
  return outcomes.every(isEqual) ? EXIT.done : EXIT.errors;
}

function outcomeOf(file: string, args: RebuildArgs, kernel: Kernel): Outcome {
  const { carried, bytes } = carriedIn(file);
  const yaml = inCurrentFormat(readYaml(file, carried.preset));
  const loaded = load({ target: file, file: yaml, family: undefined }, { set: [], printer: undefined });
  const wrong = hasErrors(loaded.messages.map(({ diagnostic }) => diagnostic));
  const request = wrong ? undefined : loaded.request;
  const nothing = { file, carried, request, result: undefined, messages: inOrder(loaded.messages), written: [] };
  if (request === undefined) return nothing;
  const { version } = args;
  const beside = (name: string) => besideOf(file, name);
  const result = rebuilt(request, carried, bytes, { kernel, version, beside });
  const found = result.finished.made.diagnostics.map(loaded.locate);
  const messages = inOrder([...loaded.messages, ...found]);
  return { ...nothing, result, messages, written: written(request, result.finished, args) };
}

/** A file beside the package; what is far larger than any part's is not read. */
function besideOf(file: string, name: string): Uint8Array | undefined {
  return ordinaryBytes(join(dirname(file), name), LARGEST_BESIDE);
}

const LARGEST_BESIDE = 256 * 2 ** 20;

/** Writes the part and its preset, where a folder was named. */
function written(request: Request, { files, made: { hash } }: Finished, { output, force }: RebuildArgs): string[] {
  if (output === undefined || files.length === 0) return [];
  const text = `# tramwright preset ${hash}: all that the part follows from; make reads it\n${presetText(request)}`;
  const preset: OutputFile = { name: `${request.name}.yaml`, bytes: new TextEncoder().encode(text) };
  writeSet(output, [...files, preset], { force });
  return [...files, preset].map(({ name }) => join(output, name));
}

/** Whether everything that is there is as it was made now. */
function isEqual({ result }: Outcome): boolean {
  return result !== undefined && result.files.length > 0 && result.files.every(({ state }) => state !== "differs");
}

function report(outcome: Outcome, args: RebuildArgs, io: Io): void {
  const { file, request, result, messages, written } = outcome;
  const shown = messages.filter(
    ({ diagnostic: { level } }) => level === "error" || (level === "warning" && !args.quiet),
  );
  tell(shown, io);
  if (request !== undefined && result !== undefined && !args.quiet) {
    const { design, hash } = result.finished.made;
    io.out(`${request.name}  (${request.family.name}, ${design.material}, preset ${hash})`);
    io.out(`  made by   ${harmless(outcome.carried.application) || "nobody says what"}${thisOne(result, args)}`);
    for (const one of result.files) for (const line of fileLines(one)) io.out(line);
    for (const line of written) io.out(`  written   ${line}`);
    for (const line of measureLines([{ request, foreign: true }], io.paint)) io.out(line);
  }
  io.err(`${basename(file)}: ${verdict(outcome)}`);
}

const thisOne = ({ version }: Rebuilt, args: RebuildArgs) =>
  version === args.version ? ", as this is" : `, this is tramwright ${args.version}`;

function fileLines({ name, state, differs }: ComparedFile): string[] {
  return hanging(`  ${state.padEnd(10)}`, `${name}${differs.length === 0 ? "" : `: ${harmless(differs.join("; "))}`}`);
}

function verdict({ result }: Outcome): string {
  if (result === undefined) return "not made again: its preset has errors";
  const { files, finished, version } = result;
  if (files.length === 0) return "not made again: this version finds errors in the part";
  const there = files.filter(({ state }) => state !== "not there");
  const wrong = there.filter(({ state }) => state === "differs").length;
  if (wrong === 0)
    return `made again from preset ${finished.made.hash}, ${plural(there.length, "file")} equal to the byte`;
  const by = version === undefined ? "" : `; it was made by version ${harmless(version)}`;
  return `${wrong} of ${plural(there.length, "file")} ${wrong === 1 ? "differs" : "differ"}${by}`;
}

function asData(outcome: Outcome, args: RebuildArgs): object {
  const { file, carried, request, result, messages, written } = outcome;
  return {
    file,
    equal: isEqual(outcome),
    madeBy: carried.application,
    thisIs: `tramwright ${args.version}`,
    hash: { carried: carried.hash, made: result?.finished.made.hash },
    files: result?.files ?? [],
    written,
    measure: request === undefined ? [] : toMeasure([{ request, foreign: true }]),
    messages: messages.map(messageData),
  };
}
