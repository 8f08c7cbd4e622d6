import { BODY_EXAMPLES, type BodyExample } from "../../build/body-examples.ts";
import type { DefectName } from "../../core/defects.ts";
import type { Diagnostic, Level } from "../../core/diagnostic.ts";
import type { Complaint } from "../../library/answers.ts";
import { derivedText } from "../../library/derived-text.ts";
import { FILE_EXAMPLES, type FileExample } from "../../presets/file-examples.ts";

/** What brings a defect about, ready to be shown, and what is told then. */
export interface ShownExample {
  readonly level: Level;
  /** Where the example is from, in words behind the level. */
  readonly from: string;
  readonly lines: readonly string[];
  /** What the program tells, where arithmetic alone finds it. */
  readonly told?: Complaint | Diagnostic | undefined;
  /** What it told when this was written down, where only a run that builds does; a test holds it to that. */
  readonly built?: string | undefined;
  /** What else is told, by `level name`. */
  readonly brings?: readonly string[] | undefined;
}

const FILES: Readonly<Partial<Record<DefectName, readonly FileExample[]>>> = FILE_EXAMPLES;
const BODIES: Readonly<Partial<Record<DefectName, readonly BodyExample[]>>> = BODY_EXAMPLES;

/** Returns the examples of a defect of files and finished meshes. */
export function defectExamples(name: DefectName): ShownExample[] {
  const files = FILES[name] ?? [];
  const bodies = BODIES[name] ?? [];
  return [
    ...files.map(({ level, files: texts, built }) => ({
      level,
      from: Object.keys(texts).length > 1 ? "for example from these files" : "for example from this file",
      lines: Object.entries(texts).flatMap(([file, text]) => [`# ${file}`, ...text.trimEnd().split("\n")]),
      told: built === undefined ? toldOfFiles({ files: texts }).find((one) => one.name === name) : undefined,
      built,
    })),
    ...bodies.map(({ level, body, built }) => ({
      level,
      from: "on a body made for it, since no preset is known that comes so far",
      lines: [body],
      built,
    })),
  ];
}

/** Returns what is told of the first of the files; the others are printers that it names. */
export function toldOfFiles({ files }: Pick<FileExample, "files">): readonly Complaint[] {
  const [[file, text] = ["", ""]] = Object.entries(files);
  return derivedText(text, { file, printers: files }, "").complaints;
}
