import { loadKernel } from "../geometry/kernel.ts";
import { kindOf } from "../presets/preset-file.ts";
import type { BuildOptions, Checked, Derived, Made, Options } from "./answers.ts";
import { derivedText } from "./derived-text.ts";
import { opened } from "./opened.ts";
import { madePart, withoutFiles } from "./part-answer.ts";
import { madeStage } from "./stage-answer.ts";

export type { Amount, Diagnostic, Level, Path } from "../core/diagnostic.ts";
export type { Unit } from "../core/unit.ts";
export type { Mesh } from "../geometry/mesh.ts";
export type { Place } from "../presets/place.ts";
export type * from "./answers.ts";
export { families, messageFacts, schema, subjects } from "./facts.ts";

declare const TRAMWRIGHT_VERSION: string;

/** The version of this package, which the files of a machine name. */
export const version: string = TRAMWRIGHT_VERSION;

/**
 * Returns what the text of a preset says, and arithmetic of it: complaints with their places, the numbers of each part,
 * the report of a machine. Builds nothing: a part takes milliseconds, a machine some tenths of a second. Never throws,
 * whatever the text is.
 */
export function derive(text: string, options: Options = {}): Derived {
  return derivedText(text, options, version);
}

/**
 * Returns the same with what the finished bodies say: every mesh is built and verified, a machine is put together and
 * tested for clashes. What is wrong with the text or the part is a complaint; it is rejected only where the kernel
 * cannot be loaded.
 */
export async function check(text: string, options: BuildOptions = {}): Promise<Checked> {
  return withoutFiles(await make(text, options));
}

/** Returns the same with the files as bytes: STL, 3MF and sheet of each part, lists, drawing, manifest of a machine. */
export async function make(text: string, options: BuildOptions = {}): Promise<Made> {
  const file = opened(text, options);
  const kind = kindOf(file);
  if (kind === "printer") return { ...derivedText(text, options, version), parts: [], files: [] };
  const kernel = await loadKernel(options.kernel as Promise<WebAssembly.Module> | undefined);
  if (kind === "stage") return await madeStage(file, options, version, kernel);
  return { ...madePart(file, options, version, kernel), kind };
}
