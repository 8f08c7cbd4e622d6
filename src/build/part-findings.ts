import type { Diagnostic, Path } from "../core/diagnostic.ts";
import type { Plan } from "../stage/index.ts";
import { toldOfPart } from "../stage/parts/design-of.ts";
import type { StagePart } from "./stage-parts.ts";

/** What was found of one part, paths into its parameters. */
export interface Findings {
  readonly part: StagePart;
  readonly diagnostics: readonly Diagnostic[];
}

/** A block of a family's parameters in the file of a plan. */
interface Block {
  readonly family: { readonly name: string };
  readonly path: Path;
  readonly data: Readonly<Record<string, unknown>>;
}

/**
 * Returns what was found of all parts of a machine with paths into its plan: the parameter where the plan states it, in
 * the part's own block or the one of all such parts, else the thing that the part belongs to. What several parts have
 * alike is told once, with their names.
 */
export function partFindings(all: readonly Findings[], plan: Plan, blocks: readonly Block[]): Diagnostic[] {
  const merged = new Map<string, { readonly diagnostic: Diagnostic; readonly names: string[] }>();
  for (const { part, diagnostics } of all) {
    for (const diagnostic of toldOfPart(diagnostics)) {
      const path = planPath(part, diagnostic, plan, blocks);
      const key = JSON.stringify([
        diagnostic.name,
        diagnostic.level,
        diagnostic.says,
        isShared(path, part) ? path : part.owner.family,
      ]);
      const before = merged.get(key);
      if (before === undefined) merged.set(key, { diagnostic: { ...diagnostic, path }, names: [part.request.name] });
      else if (!before.names.includes(part.request.name)) before.names.push(part.request.name);
    }
  }
  return [...merged.values()].map(({ diagnostic, names }) =>
    diagnostic.path[0] === "printer" ? diagnostic : { ...diagnostic, says: `${names.join(", ")}: ${diagnostic.says}` },
  );
}

/** Whether a path leads somewhere else than to the part's own place in the plan. */
const isShared = (path: Path, { owner }: StagePart) => !owner.path.every((step, index) => path[index] === step);

function planPath(part: StagePart, { path }: Diagnostic, plan: Plan, blocks: readonly Block[]): Path {
  const [first] = path;
  if (first === "printer") return path;
  if (first === "accept") return ["accept", acceptanceIndex(part, Number(path[1]), plan), ...path.slice(2)];
  if (first === undefined || part.companion) return part.owner.path;
  const own = blocks.filter(({ family, data }) => family.name === part.owner.family && Object.hasOwn(data, first));
  const inside = own.find(({ path: at }) => part.owner.path.every((step, index) => at[index] === step));
  const common = own.find(({ path: at }) => at.length === 1);
  const block = inside ?? common;
  return block === undefined ? part.owner.path : [...block.path, ...path];
}

/** A part's acceptances are counted by themselves; returns where in the plan's list the one stands. */
function acceptanceIndex({ owner }: StagePart, index: number, { accept }: Plan): number {
  const own = accept.flatMap(({ part }, at) => (part === owner.name ? [at] : []));
  return own[index] ?? 0;
}
