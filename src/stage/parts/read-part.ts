import type { Diagnostic, Path } from "../../core/diagnostic.ts";
import type { Item } from "../../core/item.ts";
import { complaintsOf } from "../../parts/complaints.ts";
import type { AnyFamily } from "../../parts/family.ts";
import type { PlacedPart } from "../machine.ts";
import { told } from "../worked.ts";
import { placeIn } from "./design-of.ts";

type Values = Readonly<Record<string, unknown>>;

/** A parameter that follows from the plan, and where in the plan. */
export interface Follows {
  readonly value: unknown;
  readonly path: Path;
}

/** A part as the plan asks for it. Whatever is undefined is left to the family. */
export interface Asked {
  readonly name: string;
  readonly family: AnyFamily;
  readonly path: Path;
  /** Blocks of parameters in the plan, the closest last. */
  readonly blocks: readonly { readonly values: Values; readonly path: Path }[];
  /** What the plan says elsewhere: a block that says it too is an error. */
  readonly firm: Readonly<Record<string, Follows>>;
  /** What follows unless a block knows better. */
  readonly usual: Readonly<Record<string, Follows>>;
}

/** The parameters of a part as its family reads them, or what is wrong with them at the plan's places. */
export interface Read {
  readonly part?: Omit<PlacedPart, "placement" | "moves">;
  readonly diagnostics: readonly Diagnostic[];
}

/** Lays what follows and what the blocks say over each other and has the family read it. */
export function readPart({ name, family, path, blocks, firm, usual }: Asked): Read {
  const places: Record<string, Path> = {};
  const values: Record<string, unknown> = {};
  const put = (key: string, { value, path: place }: Follows) => {
    if (value === undefined) return;
    values[key] = value;
    places[key] = place;
  };
  for (const [key, each] of Object.entries(usual)) put(key, each);
  for (const block of blocks) {
    for (const [key, value] of Object.entries(block.values)) put(key, { value, path: [...block.path, key] });
  }
  const contradicted = blocks.flatMap((block) =>
    Object.keys(block.values).flatMap((key) => contradiction(name, key, block.path, firm[key])),
  );
  for (const [key, each] of Object.entries(firm)) put(key, each);
  const outcome = family.schema.safeParse(values);
  if (!outcome.success) {
    const complaints = complaintsOf(outcome.error, { schema: family.schema, data: values, under: [] });
    const placed = complaints.map((each) => ({
      ...each,
      path: placeIn({ path, places }, each.path),
      says: `${name}: ${each.says}`,
    }));
    return { diagnostics: [...contradicted, ...placed] };
  }
  const given = new Set(blocks.flatMap((block) => Object.keys(block.values)));
  const derived = Object.keys(places).filter((key) => firm[key] !== undefined || !given.has(key));
  const part = { name, family: family.name, parameters: outcome.data, derived, path, places };
  return { part, diagnostics: contradicted };
}

function contradiction(name: string, key: string, path: Path, follows: Follows | undefined): Diagnostic[] {
  if (follows === undefined || follows.value === undefined) return [];
  return told("part-contradicts-plan", [...path, key], {
    level: "error",
    says: `${name}: ${key} follows from ${follows.path.join(".")} of the plan`,
    set: `leave ${key} out here; change ${follows.path.join(".")}`,
  });
}

/** Returns a bought item as a person would type it, so that a family's schema reads it again. */
export function typed({ row, values, stated, measured }: Item, other: Values = {}): unknown {
  if (row === undefined) return { ...values, ...other, measured };
  const own = Object.fromEntries(stated.map((field) => [field, values[field]]));
  if (stated.length === 0 && Object.keys(other).length === 0) return row.key;
  return { row: row.key, ...own, ...other, measured };
}

/** Returns a level bar as a family sees it, width level and height upright: on its broad side the two are swapped. */
export function levelBar({ bar, turned }: { readonly bar: Item; readonly turned: boolean }): unknown {
  const { width, height } = bar.values;
  return turned && width !== height ? typed(bar, { width: height, height: width }) : typed(bar);
}
