import type { Finished } from "../build/order.ts";
import { count, type Diagnostic } from "../core/diagnostic.ts";

const plural = (amount: number, word: string) => `${amount} ${word}${amount === 1 ? "" : "s"}`;

/** Returns the one line that ends a run: how many parts, where they are, how many errors and warnings. */
export function summary(
  diagnostics: readonly Diagnostic[],
  finished: readonly Finished[],
  { dry, output }: { readonly dry: boolean; readonly output: string },
): string {
  const { error, warning } = count(diagnostics);
  const good = finished.filter(({ files }) => files.length > 0).length;
  const done = dry
    ? `${plural(good, "part")} checked, nothing written`
    : `${plural(good, "part")} written to ${output}`;
  return `${good === 0 ? "nothing written" : done}: ${plural(error, "error")}, ${plural(warning, "warning")}`;
}
