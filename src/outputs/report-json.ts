import { tidy } from "../core/rounding.ts";
import { marginOf, type PlacedPart, type Stage } from "../stage/index.ts";

/** A part of the machine with the hash of what it is made from. */
export interface ListedPart {
  readonly name: string;
  readonly family: string;
  readonly hash: string;
  /** The part of the plan it is, or belongs to. */
  readonly owner: PlacedPart;
}

export interface StageReport {
  readonly name: string;
  readonly version: string;
  readonly stage: Stage;
  readonly parts: readonly ListedPart[];
}

/** Returns the numbers of a machine as JSON: the same bytes for the same machine, whatever computes it. */
export function reportJson(report: StageReport): string {
  const exact = (_: string, value: unknown) => (typeof value === "number" ? tidy(value) : value);
  return `${JSON.stringify(reportData(report), exact, 2)}\n`;
}

/** Returns the numbers of a machine as plain data: each with its key for `explain`, limit and margin. */
export function reportData({ name, version, stage, parts }: StageReport): object {
  return {
    madeBy: `tramwright ${version}`,
    stage: name,
    sections: stage.sections.map(({ title, facts, lines = [] }) => ({
      title,
      facts: facts.map((fact) => ({ ...fact, margin: marginOf(fact) })),
      lines,
    })),
    loops: stage.loops.map(({ loop, nominal, bought, nodes }) => ({
      loop,
      nominal,
      bought: bought ?? null,
      nodes: nodes.map((node) => node.name),
    })),
    loads: stage.loads ?? null,
    parts: parts.map(({ name, family, hash, owner }) => ({
      name,
      family,
      hash,
      of: owner.name,
      placement: owner.placement,
      moves: owner.moves,
    })),
    messages: stage.diagnostics,
  };
}
