import { resolve } from "node:path";
import type { Path } from "../core/diagnostic.ts";
import { unresolved } from "../parts/complaints.ts";
import { inCurrentFormat } from "../presets/formats.ts";
import { locatedIn } from "../presets/preset-file.ts";
import { readPrinterPreset, readSettings } from "../presets/printer-preset.ts";
import { type Located, readYaml, type YamlFile } from "../presets/read.ts";
import { type Printer, UNCALIBRATED } from "../printing/printer.ts";
import { readText, tryOrdinary } from "./file-text.ts";
import { besideFile } from "./files.ts";

/** The settings of a printer; undefined when its file cannot be read or understood. */
export interface Calibration {
  readonly printer: Printer | undefined;
  readonly calibrated: boolean;
  readonly messages: readonly Located[];
}

/** Returns the printer that a file names under a key, from the folder of the file `target`; the usual one for none. */
export function calibrationOf(file: YamlFile, target: string, key: Path, named: string | undefined): Calibration {
  if (named === undefined) return { printer: UNCALIBRATED, calibrated: false, messages: [] };
  const path = shortest(besideFile(target, named));
  const read = tryOrdinary(path);
  if ("text" in read) return calibration(path, read.text);
  const says = `the printer file ${path} cannot be read: ${read.reason}`;
  const set = `${key.join(": ")}: the path of your printer's file from the folder of this preset, or leave it out`;
  const missing = locatedIn(file, unresolved(key, says, set));
  return { printer: undefined, calibrated: false, messages: [missing] };
}

/** Returns the settings of a printer that stand in the preset of a part. */
export function calibrationIn(file: YamlFile, settings: unknown, calibrated: boolean): Calibration {
  const { value, complaints } = readSettings(file, settings, ["printer"]);
  return { printer: value, calibrated, messages: complaints };
}

/** Returns the calibration in a file. A missing file ends the program; a wrong one is answered. */
export function loadPrinter(path: string): Calibration {
  const short = shortest(path);
  return calibration(short, readText(short));
}

function calibration(path: string, text: string): Calibration {
  const file = inCurrentFormat(readYaml(path, text));
  const { value, complaints } = readPrinterPreset(file);
  return { printer: value, calibrated: true, messages: [...(file.notes ?? []), ...complaints] };
}

/** Absolute paths inside the working folder are shown as the user would type them. */
function shortest(path: string): string {
  const here = `${resolve(".")}/`;
  return path.startsWith(here) ? path.slice(here.length) : path;
}
