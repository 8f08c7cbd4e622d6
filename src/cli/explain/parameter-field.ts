import { metaOf, type ParameterMeta } from "../../core/parameter.ts";

/** One key that a preset may hold: what it is called, means and allows, and what it is when left out. */
export interface ParameterField extends ParameterMeta {
  readonly key: string;
  /** What the schema puts there; undefined when nothing does. */
  readonly usual: unknown;
  /** Whether the part works the value out when the key is left out. */
  readonly derived: boolean;
  /** Whether the value is a list; range, words and table then hold for each entry. */
  readonly list: boolean;
  /** How the value is found, where it is measured on something printed. */
  readonly how?: string;
  /** The keys of one entry, where the value is a list of maps. */
  readonly entry: readonly ParameterField[];
}

/** What is needed of a schema; the library that made it stays out of the command line. */
export interface Schema {
  readonly shape?: Readonly<Record<string, Schema>>;
  readonly element?: Schema;
  readonly valueType?: Schema;
  readonly unwrap?: () => Schema;
}

/**
 * Returns the parameters of a schema in its order. `usual` holds the parsed defaults, `derived` the symbols of the
 * numbers that the part works out.
 */
export function parameterFields(
  schema: unknown,
  usual: Readonly<Record<string, unknown>>,
  derived: ReadonlySet<string> = new Set(),
): ParameterField[] {
  return Object.entries((schema as Schema).shape ?? {}).map(([key, field]) => {
    const own = metaOf(field as never);
    const { element } = bare(field);
    const { range, words, table } = element === undefined ? own : metaOf(element as never);
    return {
      ...own,
      ...(range === undefined ? {} : { range }),
      ...(words === undefined ? {} : { words }),
      ...(table === undefined ? {} : { table }),
      key,
      usual: usual[key],
      derived: usual[key] === undefined && derived.has(own.symbol),
      list: element !== undefined,
      entry: element === undefined ? [] : parameterFields(bare(element), {}),
    };
  });
}

/** Returns the schema without the defaults and optionals round it. */
export function bare(schema: Schema): Schema {
  return schema.element === undefined && schema.shape === undefined && schema.unwrap !== undefined
    ? bare(schema.unwrap())
    : schema;
}

/** Returns what a parameter allows, in words. */
export function allowedWords({ range, words, table, list, entry }: ParameterField): string {
  const one = range ?? (words === undefined ? tableWords(table) : Object.keys(words).join(", "));
  if (entry.length > 0) return "a list of maps";
  return list ? `a list${one === "" ? "" : ` of ${one}`}` : one;
}

const tableWords = (table: string | undefined) => (table === undefined ? "" : `rows of stock ${table}`);
