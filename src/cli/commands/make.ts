import { join } from "node:path";
import type { Draft } from "../../build/make.ts";
import { draftOrder, type Finished, type FinishedPiece, finishDrafts } from "../../build/order.ts";
import { namesTakenTwice } from "../../build/output-names.ts";
import { type Diagnostic, hasErrors } from "../../core/diagnostic.ts";
import type { Kernel } from "../../geometry/kernel.ts";
import { CAUTIONS } from "../../parts/cautions.ts";
import type { Design } from "../../parts/family.ts";
import type { Located } from "../../presets/read.ts";
import { breath } from "../breath.ts";
import { cautionLines, spoken } from "../cautioned.ts";
import { hanging } from "../explain/hanging.ts";
import { writeSet } from "../files.ts";
import { EXIT, type Io } from "../io.ts";
import { type Loaded, load, type Target } from "../load.ts";
import { measureLines, type Told } from "../measure-lines.ts";
import { inOrder, messageData } from "../message.ts";
import { amount, figure } from "../screen.ts";
import { summary } from "../summary.ts";
import { tell } from "../tell.ts";

export interface MakeArgs {
  readonly targets: readonly Target[];
  readonly set: readonly string[];
  readonly output: string;
  readonly printer: string | undefined;
  readonly json: boolean;
  readonly quiet: boolean;
  readonly force: boolean;
  /** Nothing is written: `check`, and `make --dry-run`. */
  readonly dry: boolean;
  readonly version: string;
}

/** One target worked out and drawn; nothing is drawn of what could not be understood. */
interface Drafted {
  readonly loaded: Loaded;
  readonly drafts: readonly Draft[];
}

/** What came of one target. */
interface Outcome {
  readonly loaded: Loaded;
  readonly finished: readonly Finished[];
  readonly messages: readonly Located[];
}

/** Makes every target: reads, derives, checks, builds, verifies, writes. Returns the exit code. */
export async function make(args: MakeArgs, kernel: Promise<Kernel>, io: Io): Promise<number> {
  const loaded = args.targets.map((target) => load(target, args));
  const drafted: Drafted[] = [];
  for (const one of loaded) {
    io.progress?.(`working out ${one.file}`);
    drafted.push({ loaded: one, drafts: draftsOf(one) });
    await breath();
  }
  const taken = namesTakenTwice(drafted.map(({ loaded: { file }, drafts }) => ({ file, drafts })));
  const ready = await kernel;
  const outcomes: Outcome[] = [];
  for (const [index, one] of drafted.entries()) {
    io.progress?.(`building ${index + 1} of ${drafted.length}: ${one.loaded.file}`);
    outcomes.push(outcomeOf(one, taken[index] ?? [], ready, args.version));
    const files = outcomes.at(-1)?.finished.flatMap((part) => part.files) ?? [];
    if (!args.dry && files.length > 0) writeSet(args.output, files, { force: args.force });
    await breath();
  }
  if (args.json) io.out(JSON.stringify(asData(outcomes, args), undefined, 2));
  else report(outcomes, args, io);
  return outcomes.some(({ messages }) => messages.some(({ diagnostic }) => diagnostic.level === "error"))
    ? EXIT.errors
    : EXIT.done;
}

function draftsOf({ request, messages }: Loaded): Draft[] {
  const wrong = hasErrors(messages.map(({ diagnostic }) => diagnostic));
  return request === undefined || wrong ? [] : draftOrder(request);
}

function outcomeOf(
  { loaded, drafts }: Drafted,
  taken: readonly Diagnostic[],
  kernel: Kernel,
  version: string,
): Outcome {
  const [main] = drafts;
  if (main === undefined || taken.length > 0) {
    return { loaded, finished: [], messages: inOrder([...loaded.messages, ...taken.map(loaded.locate)]) };
  }
  const finished = finishDrafts(drafts, kernel, version);
  const found = finished.flatMap(({ made }, index) =>
    made.diagnostics.map((diagnostic) =>
      loaded.locate(index === 0 ? diagnostic : ofCompanion(made.request.name, diagnostic)),
    ),
  );
  return { loaded, finished, messages: inOrder([...loaded.messages, ...found]) };
}

/** A companion's parameters come from the main part, so its complaints stand at the part itself. */
function ofCompanion(name: string, diagnostic: Diagnostic): Diagnostic {
  return { ...diagnostic, path: ["part"], says: `${name}: ${diagnostic.says}` };
}

function report(outcomes: readonly Outcome[], args: MakeArgs, io: Io): void {
  // Presets that share a printer's file share what is wrong with it.
  const messages = inOrder(outcomes.flatMap((outcome) => outcome.messages));
  tell(messages, io, spoken(args, io));
  const finished = outcomes.flatMap((outcome) => outcome.finished);
  if (!args.quiet) for (const part of finished) for (const line of partLines(part, args, io.verbose)) io.out(line);
  if (args.dry && !args.quiet) for (const line of measureLines(outcomes.flatMap(toldOf), io.paint)) io.out(line);
  for (const line of cautionLines(
    finished.flatMap(({ made }) => made.design.cautions),
    args,
  ))
    io.err(line);
  io.err(
    summary(
      messages.map(({ diagnostic }) => diagnostic),
      finished,
      args,
    ),
  );
}

function toldOf({ loaded: { request, foreign } }: Outcome): Told[] {
  return request === undefined ? [] : [{ request, foreign }];
}

/** Where files go, and whether they do. */
type Where = Pick<MakeArgs, "output" | "dry">;

/** Returns one entry of a part's report, nothing where there is nothing to say. */
function entry(head: string, words: string): string[] {
  return words === "" ? [] : hanging(`  ${head.padEnd(10)}`, words);
}

/** Returns what is told of a part: files, what was checked, what to measure and buy, limits; all numbers if `verbose`. */
export function partLines({ made, pieces, files }: Finished, args: Where, verbose = false): string[] {
  const { request, design, hash } = made;
  const head = `${request.name}  (${request.family.name}, ${design.material}, preset ${hash})`;
  if (files.length === 0) return [head, "  not written: see the errors"];
  const bought = design.hardware.map(({ item, count }) => `${count} x ${item}`);
  return [
    head,
    ...pieces.flatMap((piece) => pieceLines(piece, args)),
    ...entry("buy", bought.join(", ")),
    ...design.limits.flatMap((limit) => entry("limit", limit)),
    ...(verbose ? design.dimensions.flatMap((one) => entry("number", numberWords(one))) : []),
  ];
}

const numberWords = ({ symbol, value, unit, meaning, key }: Design["dimensions"][number]) =>
  `${symbol} = ${amount(value, unit)}, ${meaning} (${key})`;

function pieceLines({ file, made, figures }: FinishedPiece, args: Where): string[] {
  const { piece, fit } = made;
  const { size, volume, mass, facets, thinnestWall, widestBridge } = figures;
  const box = size.map((side) => side.toFixed(1)).join(" x ");
  const path = args.dry ? file : join(args.output, file);
  const weight = `${(volume / 1000).toFixed(1)} cm3, about ${mass.toFixed(mass < 10 ? 1 : 0)} g`;
  const wall = thinnestWall === undefined ? "" : `, thinnest wall ${figure(thinnestWall, "mm")} mm`;
  const bridge = widestBridge === 0 ? "no bridges" : `widest bridge ${figure(widestBridge, "mm")} mm`;
  const faces = piece.contacts.length === 0 ? "" : `, ${fit.touching} of ${piece.contacts.length} faces touch`;
  const free = `${fit.free} of ${piece.keepOuts.length} keep-outs free`;
  const sizes = piece.measures.map(
    ({ what, expected, tolerance }) => `${what} ${expected.toFixed(2)} +- ${amount(tolerance, "mm")}`,
  );
  return [
    ...entry(args.dry ? "would be" : "made", `${piece.count} x ${path}: ${piece.title}, ${box} mm, ${weight}`),
    ...entry("checked", `closed, one body, ${facets} facets, ${free}${faces}${wall}, ${bridge}`),
    ...entry("measure", sizes.join("; ")),
  ];
}

function asData(outcomes: readonly Outcome[], args: MakeArgs): object {
  return {
    parts: outcomes.flatMap(({ finished }) => finished.map((one) => partData(one, args))),
    messages: inOrder(outcomes.flatMap(({ messages }) => messages)).map(messageData),
  };
}

/** Returns a part as plain data for `--json`. */
export function partData({ made, pieces, files }: Finished, { dry, output }: Where): object {
  return {
    name: made.request.name,
    family: made.request.family.name,
    hash: made.hash,
    material: made.design.material,
    written: dry ? [] : files.map(({ name }) => join(output, name)),
    pieces: pieces.map(({ file, made: { piece }, figures }) => ({
      file,
      title: piece.title,
      count: piece.count,
      ...figures,
      measures: piece.measures,
    })),
    dimensions: made.design.dimensions,
    hardware: made.design.hardware,
    limits: made.design.limits,
    cautions: made.design.cautions.map((name) => CAUTIONS[name]),
  };
}
