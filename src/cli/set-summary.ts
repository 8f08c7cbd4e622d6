import { isGood, type SetPart } from "../build/stage-set.ts";
import { count, type Diagnostic } from "../core/diagnostic.ts";
import { plural } from "./summary.ts";

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
