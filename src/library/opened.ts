import type { Diagnostic } from "../core/diagnostic.ts";
import { unresolved } from "../parts/complaints.ts";
import { inCurrentFormat } from "../presets/formats.ts";
import { locatedIn } from "../presets/preset-file.ts";
import { readPrinterPreset } from "../presets/printer-preset.ts";
import { type Located, readYaml, type YamlFile } from "../presets/read.ts";
import { type Printer, UNCALIBRATED } from "../printing/printer.ts";
import type { Complaint, Options } from "./answers.ts";

/** What complaints call a text that has no name. */
const NAMELESS = "preset.yaml";

/** Returns a text as a file in today's format; what is no text at all is an empty file. */
export function opened(text: unknown, { file = NAMELESS }: Options): YamlFile {
  return inCurrentFormat(readYaml(String(file), typeof text === "string" ? text : ""));
}

/** A printer as its file gives it; undefined where that cannot be understood. */
export interface GivenPrinter {
  readonly printer: Printer | undefined;
  readonly calibrated: boolean;
  readonly messages: readonly Located[];
}

/** Returns the printer that a preset names under a key; the one for everything goes before it. */
export function printerFor(
  preset: YamlFile,
  key: readonly string[],
  named: string | undefined,
  { printer, printers = {} }: Options,
): GivenPrinter {
  if (printer !== undefined) return printerIn("printer.yaml", printer);
  if (named === undefined) return { printer: UNCALIBRATED, calibrated: false, messages: [] };
  const text = Object.hasOwn(printers, named) ? printers[named] : undefined;
  if (text !== undefined) return printerIn(named, text);
  const says = `the printer file ${named} cannot be read: its text was not given`;
  const set = `printers: { ${JSON.stringify(named)}: <its text> } beside the preset, or leave the key out`;
  return { printer: undefined, calibrated: false, messages: [locatedIn(preset, unresolved(key, says, set))] };
}

function printerIn(name: string, text: string): GivenPrinter {
  const file = opened(text, { file: name });
  const { value, complaints } = readPrinterPreset(file);
  return { printer: value, calibrated: true, messages: [...(file.notes ?? []), ...complaints] };
}

/** Returns messages as complaints, equal ones once, in the order of their places. */
export function complaintsOf(messages: readonly Located[]): Complaint[] {
  const once = new Map<string, Complaint>();
  for (const { file, place, diagnostic } of messages) {
    const key = [file, diagnostic.name, diagnostic.says].join("\n");
    if (!once.has(key)) once.set(key, { ...diagnostic, file, place });
  }
  const line = ({ place }: Complaint) => (place === undefined ? 0 : place.line * 1e4 + place.column);
  return [...once.values()].sort((a, b) => (a.file === b.file ? line(a) - line(b) : a.file < b.file ? -1 : 1));
}

/** Returns whether a message among these forbids what they are about. */
export const anyError = (messages: readonly { readonly diagnostic: Diagnostic }[]): boolean =>
  messages.some(({ diagnostic }) => diagnostic.level === "error");
