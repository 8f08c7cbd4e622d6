import { basename, dirname } from "node:path";
import { GUIDES } from "../../parts/guides.ts";
import { FAMILIES } from "../../parts/index.ts";
import { slugFrom } from "../../presets/preset-file.ts";
import { SUBJECTS } from "../../presets/schema/preset-schema.ts";
import { nearestWords } from "../explain/nearest-words.ts";
import { writeSet } from "../files.ts";
import { EXIT, type Io, trouble } from "../io.ts";
import { familyPreset } from "../new/family-preset.ts";
import { refuseInTheWay } from "../new/in-the-way.ts";
import { printerPreset } from "../new/printer-preset.ts";
import type { Ask, Question } from "../new/question.ts";
import { schemaPath } from "../new/schema-path.ts";
import { stagePreset } from "../new/stage-preset.ts";
import type { Wanted, Written } from "../new/wanted.ts";

interface NewArgs {
  readonly subject: string | undefined;
  readonly output: string | undefined;
  /** Answers given on the command line, by option. */
  readonly given: Readonly<Record<string, string>>;
  readonly set: readonly string[];
  readonly force: boolean;
  readonly json: boolean;
  /** Asks on a terminal; undefined where nobody can answer. */
  readonly ask: Ask | undefined;
}

/** What a person who stopped it all is told: nothing, and nothing is written. */
const STOPPED = 130;

/** Writes a preset to fill in: of a family, of a stage or of a printer. Returns the exit code. */
export async function newPreset(args: NewArgs, io: Io): Promise<number> {
  const subject = subjectOf(args.subject);
  const usual = args.given.name ?? (args.output === undefined || args.output === "-" ? undefined : stem(args.output));
  const name = usual ?? (args.ask === undefined ? `my-${subject}` : await args.ask(nameQuestion(subject)));
  if (name === undefined) return STOPPED;
  const file = args.output ?? `${slugFrom(name)}.yaml`;
  if (file !== "-") refuseInTheWay(file, args.force);
  const shown = file === "-" ? `${slugFrom(name)}.yaml` : file;
  const wanted: Wanted = {
    place: { name, file: typed(basename(shown)), schema: schemaPath(subject, dirname(shown)) },
    given: args.given,
    set: args.set,
    ask: args.ask,
    say: io.err,
  };
  const written = await write(subject, wanted);
  return written === undefined ? STOPPED : handOut(written, { file, subject, name }, args, io);
}

async function write(subject: string, wanted: Wanted): Promise<Written | undefined> {
  if (subject === "stage") return await stagePreset(wanted);
  if (subject === "printer") return await printerPreset(wanted);
  const family = FAMILIES.find((one) => one.name === subject);
  return family === undefined ? undefined : await familyPreset(family, GUIDES[subject], wanted);
}

function handOut(
  { text, notes }: Written,
  told: { readonly file: string; readonly subject: string; readonly name: string },
  { force, json }: NewArgs,
  io: Io,
): number {
  const { file, subject } = told;
  if (file === "-") {
    io.out(text.trimEnd());
    for (const note of notes) io.err(note);
    return EXIT.done;
  }
  // Somebody may have put a file there while questions were asked.
  refuseInTheWay(file, force);
  const set = [{ name: basename(file), bytes: new TextEncoder().encode(text) }];
  writeSet(dirname(file), set, { force: true });
  if (json) io.out(JSON.stringify({ ...told, notes }, undefined, 2));
  else {
    io.out(`${file} written: ${WHAT[subject] ?? `a ${subject}`}, with usual values`);
    for (const note of [...notes, nextStep(subject, file)]) io.err(note);
  }
  return EXIT.done;
}

/** Returns a file's name as a shell takes it, on one line. */
const typed = (file: string) => (/^[\w.-]+$/.test(file) ? file : `'${file.replace(/\p{Cc}/gu, "?")}'`);

const WHAT: Readonly<Record<string, string>> = { stage: "the plan of a stage", printer: "settings of a printer" };

const nextStep = (subject: string, file: string) =>
  subject === "printer"
    ? `next: measure a test piece, put the figures into ${file}, and name it with printer: in your presets`
    : `next: measure what ${file} lists and put it in, then tramwright check ${file}`;

function subjectOf(subject: string | undefined): string {
  if (subject === undefined) throw trouble(`new needs one of ${SUBJECTS.join(", ")}`);
  const found = SUBJECTS.find((one) => one === subject.trim().toLowerCase());
  if (found === undefined) throw trouble(`there is no preset of ${subject}; ${nearestWords(subject, SUBJECTS)}`);
  return found;
}

const stem = (file: string) => slugFrom(basename(file).replace(/\.ya?ml$/i, ""));

function nameQuestion(subject: string): Question {
  const what = subject === "stage" ? "the stage" : subject === "printer" ? "the printer" : "the part";
  return {
    flag: "name",
    asks: `What is ${what} called? The file is named after it.`,
    usual: `my-${subject}`,
    check: (text) =>
      slugFrom(text) === "part" && !/part/i.test(text) ? { wrong: "a name has letters" } : { value: text },
  };
}
