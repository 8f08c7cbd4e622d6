import type { Finished } from "../build/order.ts";
import { isGood, type SetPart } from "../build/stage-set.ts";
import { count, type Diagnostic } from "../core/diagnostic.ts";

const plural = (amount: number, word: string) => `${amount} ${word}${amount === 1 ? "" : "s"}`;

/** Returns the one line that ends a run: how many parts and files, where they are, how many errors and warnings. */
export function summary(
  diagnostics: readonly Diagnostic[],
  finished: readonly Finished[],
  { dry, output }: { readonly dry: boolean; readonly output: string },
): string {
  const { error, warning } = count(diagnostics);
  const good = finished.filter(({ files }) => files.length > 0).length;
  const written = plural(
    finished.reduce((sum, { files }) => sum + files.length, 0),
    "file",
  );
  const done = dry
    ? `${plural(good, "part")} checked, nothing written`
    : `${plural(good, "part")}, ${written} written to ${output}`;
  return `${good === 0 ? "nothing written" : done}: ${plural(error, "error")}, ${plural(warning, "warning")}`;
}

/** Returns the one line that ends the making of a machine. */
export function setSummary(
  diagnostics: readonly Diagnostic[],
  parts: readonly SetPart[],
  { dry, written, folder }: { readonly dry: boolean; readonly written: number; readonly folder: string },
): string {
  const { error, warning } = count(diagnostics);
  const good = parts.filter(isGood);
  const kept = good.filter((one) => "kept" in one).length;
  const held = kept === 0 ? "" : `, ${kept} of them kept`;
  const done = dry
    ? `${plural(good.length, "part")} checked, nothing written`
    : `${plural(good.length, "part")}${held}, ${plural(written, "file")} written to ${folder}`;
  return `${written === 0 ? "nothing written" : done}: ${plural(error, "error")}, ${plural(warning, "warning")}`;
}
