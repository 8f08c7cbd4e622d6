import { join } from "node:path";
import { PARTS } from "../build/output-names.ts";
import { count } from "../core/diagnostic.ts";
import { alikeAmong, type ManifestPart } from "../outputs/manifest.ts";
import { cautionLines, type Heard, spoken } from "./cautioned.ts";
import { hanging } from "./explain/hanging.ts";
import type { Io } from "./io.ts";
import { plural } from "./summary.ts";
import { tell } from "./tell.ts";
import type { Unchanged } from "./unchanged.ts";

/** Says of a set that is there what was said when it was made. */
export function repeat({ folder, manifest, messages, cautions }: Unchanged, args: Heard, io: Io): void {
  tell(messages, io, spoken(args, io));
  if (!args.quiet) {
    for (const part of manifest.parts) for (const line of keptLines(part, join(folder, PARTS))) io.out(line);
    for (const line of alikeLines(alikeAmong(manifest.parts))) io.out(line);
  }
  for (const line of cautionLines(cautions, args)) io.err(line);
  const { error, warning } = count(messages.map(({ diagnostic }) => diagnostic));
  const kept = `nothing has changed, ${plural(manifest.parts.length, "part")} kept in ${folder}`;
  io.err(`${kept}: ${plural(error, "error")}, ${plural(warning, "warning")}`);
}

/** Parts that are the same bodies, and how many of one to print. */
export function alikeLines(groups: readonly (readonly string[])[]): string[] {
  return groups.flatMap((names) =>
    hanging("  alike     ", `${names.join(", ")}: the same body, print ${names.length} of one of them`),
  );
}

/** A part that an earlier run built. */
export function keptLines({ name, family, material, hash, pieces }: ManifestPart, output: string): string[] {
  return [
    `${name}  (${family}, ${material}, preset ${hash})`,
    ...pieces.map(({ file }) => `  kept      ${join(output, file)}: unchanged, not built again`),
  ];
}
