import type { Finished } from "../build/order.ts";
import { count, type Diagnostic } from "../core/diagnostic.ts";

/** Returns an amount with its word: `2 parts`. */
export const plural = (amount: number, word: string) => `${amount} ${word}${amount === 1 ? "" : "s"}`;

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
