import type { Request } from "../build/request.ts";
import type { Diagnostic } from "../core/diagnostic.ts";
import type { AnyFamily } from "../parts/family.ts";
import { FAMILIES } from "../parts/index.ts";
import { inCurrentFormat } from "../presets/formats.ts";
import { locatedInPart, type PartPreset, parseParameters, readPartPreset } from "../presets/part-preset.ts";
import { kindOf, locatedIn, slugFrom } from "../presets/preset-file.ts";
import { type Located, readYaml, type YamlFile } from "../presets/read.ts";
import { type Calibration, calibrationIn, calibrationOf, loadPrinter } from "./calibration.ts";
import { carriedIn, isPackage } from "./carried-in.ts";
import { readText } from "./file-text.ts";
import { exists } from "./files.ts";
import { trouble } from "./io.ts";
import { withSettings } from "./settings.ts";

/** What was named on the command line: a file that was read, or a family of parts. */
export interface Target {
  readonly target: string;
  readonly file: YamlFile;
  readonly family: AnyFamily | undefined;
}

/** One thing to make, as far as its file could be understood. */
export interface Loaded {
  /** The preset's file, as messages name it. */
  readonly file: string;
  readonly request: Request | undefined;
  /** Whether the preset travelled in a part: its sizes are those of whoever wrote it. */
  readonly foreign: boolean;
  readonly messages: readonly Located[];
  /** Puts a diagnostic of the part at its place in the file. */
  readonly locate: (diagnostic: Diagnostic) => Located;
}

export interface LoadOptions {
  readonly set: readonly string[];
  readonly printer: string | undefined;
}

/**
 * Reads what is named: a family of parts, unless there is a file of that name; of a 3MF the preset that it carries. A
 * missing file ends the program.
 */
export function readTarget(target: string): Target {
  const family = FAMILIES.find(({ name }) => name === target);
  if (family !== undefined && !exists(target)) return { target, family, file: emptyFile(target) };
  if (!exists(target) && target !== "-" && !/[./\\]/.test(target)) throw trouble(unknownTarget(target));
  const text = isPackage(target) ? carriedIn(target).carried.preset : readText(target);
  const file = inCurrentFormat(readYaml(target === "-" ? "standard input" : target, text));
  return { target, file, family: undefined };
}

/** Returns whether a file holds the plan of a stage. */
export const isPlan = ({ file }: Target): boolean => kindOf(file) === "stage";

/** Returns the name that a file gives its parts when it states none. */
export const nameFrom = (target: string) => slugFrom(target.replace(/^.*[\\/]/, "").replace(/\.ya?ml$/, ""));

/** Returns what a preset file or family asks for; a wrong file is answered. */
export function load({ target, file, family }: Target, options: LoadOptions): Loaded {
  if (family !== undefined) {
    const preset = { family, name: undefined, printer: undefined, calibrated: true, parameters: {}, accept: [] };
    return complete(file, preset, target, options);
  }
  const { value, complaints } = readPartPreset(file);
  const { notes = [] } = file;
  if (value === undefined) {
    const messages = [...notes, ...complaints];
    return { file: file.name, request: undefined, foreign: false, messages, locate: (one) => locatedIn(file, one) };
  }
  const rest = complete(file, value, target, options);
  const request = complaints.length > 0 ? undefined : rest.request;
  return { ...rest, request, messages: [...notes, ...complaints, ...rest.messages] };
}

function complete(file: YamlFile, preset: PartPreset, target: string, { set, printer }: LoadOptions): Loaded {
  const usual: Readonly<Record<string, unknown>> = set.length === 0 ? {} : preset.family.schema.parse({});
  const parameters = withSettings(preset.parameters, set, ([key = "", ...deeper]) =>
    deeper.length === 0 ? usual[key] : undefined,
  );
  const { value, complaints } = parseParameters(preset.family, parameters, file.lost);
  const foreign = typeof preset.printer === "object";
  const calibration = printer === undefined ? ownPrinter(file, preset, target) : loadPrinter(printer);
  const locate = (one: Diagnostic) => locatedInPart(file, one);
  const messages = [...complaints.map((one) => locatedIn(file, one)), ...calibration.messages];
  if (value === undefined || calibration.printer === undefined)
    return { file: file.name, request: undefined, foreign, messages, locate };
  const request = {
    name: preset.name ?? nameFrom(target),
    family: preset.family,
    parameters: value,
    printer: calibration.printer,
    calibrated: calibration.calibrated,
    accept: preset.accept,
  };
  return { file: file.name, request, foreign, messages, locate };
}

/** Returns the printer that a preset names, or whose settings it holds; the usual one for none. */
function ownPrinter(file: YamlFile, { printer, calibrated }: PartPreset, target: string): Calibration {
  if (typeof printer === "object") return calibrationIn(file, printer, calibrated);
  return calibrationOf(file, target, ["printer"], printer);
}

function unknownTarget(target: string): string {
  const names = FAMILIES.map(({ name }) => name).join(", ");
  return `${target} is neither a file nor a part family; the families are ${names}`;
}

function emptyFile(name: string): YamlFile {
  return { name, data: {}, place: () => undefined, complaints: [] };
}
