import { resolve } from "node:path";
import type { Request } from "../build/request.ts";
import type { Diagnostic } from "../core/diagnostic.ts";
import { unresolved } from "../parts/complaints.ts";
import { FAMILIES } from "../parts/index.ts";
import { locatedIn, type PartPreset, parseParameters, readPartPreset, slugFrom } from "../presets/part-preset.ts";
import { readPrinterPreset } from "../presets/printer-preset.ts";
import { type Located, readValue, readYaml, type YamlFile } from "../presets/read.ts";
import { type Printer, UNCALIBRATED } from "../printing/printer.ts";
import { besideFile, exists, readText, tryText } from "./files.ts";
import { trouble } from "./io.ts";

/** One thing to make, as far as its file could be understood. */
export interface Loaded {
  /** The preset's file, as messages name it. */
  readonly file: string;
  readonly request: Request | undefined;
  readonly messages: readonly Located[];
  /** Puts a diagnostic of the part at its place in the file. */
  readonly locate: (diagnostic: Diagnostic) => Located;
}

interface Options {
  readonly set: readonly string[];
  readonly printer: string | undefined;
}

/** Returns what a preset file or family name asks for. A missing file ends the program; a wrong one is answered. */
export function load(target: string, options: Options): Loaded {
  const family = FAMILIES.find(({ name }) => name === target);
  if (family !== undefined && !exists(target)) {
    const preset = { family, name: undefined, printer: undefined, parameters: {}, accept: [] };
    return complete(emptyFile(target), preset, target, options);
  }
  if (!exists(target) && target !== "-" && !/[./\\]/.test(target)) throw trouble(unknownTarget(target));
  const file = readYaml(target === "-" ? "standard input" : target, readText(target));
  const { value, complaints } = readPartPreset(file);
  if (value === undefined)
    return { file: file.name, request: undefined, messages: complaints, locate: (one) => locatedIn(file, one) };
  const rest = complete(file, value, target, options);
  const request = complaints.length > 0 ? undefined : rest.request;
  return { ...rest, request, messages: [...complaints, ...rest.messages] };
}

function complete(file: YamlFile, preset: PartPreset, target: string, { set, printer }: Options): Loaded {
  const parameters = withSettings(preset, set);
  const { value, complaints } = parseParameters(preset.family, parameters);
  const calibration = calibrationOf(file, preset, target, printer);
  const locate = (one: Diagnostic) =>
    locatedIn(file, belongsOutside(one) ? one : { ...one, path: ["parameters", ...one.path] });
  const messages = [...complaints.map((one) => locatedIn(file, one)), ...calibration.messages];
  if (value === undefined || calibration.printer === undefined)
    return { file: file.name, request: undefined, messages, locate };
  const request = {
    name: preset.name ?? slugFrom(target.replace(/^.*[\\/]/, "").replace(/\.ya?ml$/, "")),
    family: preset.family,
    parameters: value,
    printer: calibration.printer,
    calibrated: calibration.calibrated,
    accept: preset.accept,
  };
  return { file: file.name, request, messages, locate };
}

/** Checks point into the parameters; the file's outer keys are named as they are. */
function belongsOutside({ path }: Diagnostic): boolean {
  return ["accept", "name", "printer", "part", "format", "parameters"].includes(String(path[0]));
}

interface Calibration {
  readonly printer: Printer | undefined;
  readonly calibrated: boolean;
  readonly messages: readonly Located[];
}

function calibrationOf(file: YamlFile, preset: PartPreset, target: string, chosen: string | undefined): Calibration {
  if (chosen !== undefined) return loadPrinter(shortest(chosen));
  if (preset.printer === undefined) return { printer: UNCALIBRATED, calibrated: false, messages: [] };
  const path = shortest(besideFile(target, preset.printer));
  const read = tryText(path);
  if ("text" in read) return calibration(path, read.text);
  const says = `the printer file ${path} cannot be read: ${read.reason}`;
  const set = "printer: the path of your printer's file from the folder of this preset, or leave it out";
  const missing = locatedIn(file, unresolved(["printer"], says, set));
  return { printer: undefined, calibrated: false, messages: [missing] };
}

/** Returns the calibration in a file. A missing file ends the program; a wrong one is answered. */
export function loadPrinter(path: string): Calibration {
  return calibration(path, readText(path));
}

function calibration(path: string, text: string): Calibration {
  const { value, complaints } = readPrinterPreset(readYaml(path, text));
  return { printer: value, calibrated: true, messages: complaints };
}

/** Absolute paths inside the working folder are shown as the user would type them. */
function shortest(path: string): string {
  const here = `${resolve(".")}/`;
  return path.startsWith(here) ? path.slice(here.length) : path;
}

/** Lays `--set path=value` over the parameters; the path may go into a bought item: `bearing.width=6.98`. */
function withSettings({ parameters, family }: PartPreset, set: readonly string[]): Record<string, unknown> {
  const copy = structuredClone(parameters) as Record<string, unknown>;
  const usual = set.length === 0 ? {} : family.schema.parse({});
  for (const setting of set) {
    const [path = "", ...rest] = setting.split("=");
    if (path === "" || rest.length === 0) throw trouble(`--set ${setting} lacks a value; write --set key=value`);
    const steps = path.split(".");
    const [first = ""] = steps;
    // A field of a bought item that the preset leaves at its default is laid over the default's row.
    const item = usual[first];
    if (steps.length > 1 && copy[first] === undefined && typeof item === "object" && item !== null && "key" in item) {
      copy[first] = { row: item.key };
    }
    lay(copy, steps, readValue(rest.join("=")));
  }
  return copy;
}

function lay(into: Record<string, unknown>, [first = "", ...rest]: readonly string[], value: unknown): void {
  if (["__proto__", "prototype", "constructor"].includes(first)) throw trouble(`${first} is not a key of any part`);
  if (rest.length === 0) {
    into[first] = value;
    return;
  }
  const inner = into[first];
  // A bought item named by its row alone becomes a map, so that one of its fields can be set.
  const next = typeof inner === "object" && inner !== null ? inner : inner === undefined ? {} : { row: inner };
  into[first] = next;
  lay(next as Record<string, unknown>, rest, value);
}

function unknownTarget(target: string): string {
  const names = FAMILIES.map(({ name }) => name).join(", ");
  return `${target} is neither a file nor a part family; the families are ${names}`;
}

function emptyFile(name: string): YamlFile {
  return { name, data: {}, place: () => undefined, complaints: [] };
}
