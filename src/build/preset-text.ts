import type { Item } from "../core/item.ts";
import { isItem } from "../parts/unmeasured.ts";
import { FORMAT } from "../presets/preset-file.ts";
import { canonical, shortHash } from "./hash.ts";
import type { Request } from "./request.ts";

type Data = Readonly<Record<string, unknown>>;

/**
 * Returns the canonical text of a preset: JSON, which is YAML as well, so that `make` reads it like any other preset.
 * Every parameter, every size of every bought item and every setting of the printer stands in it, keys in alphabetical
 * order below the outer ones: it makes the same part when defaults and tables have other values. No letter in it has a
 * meaning in XML.
 */
export function presetText({ name, family, parameters, printer, calibrated, accept }: Request): string {
  const data = {
    format: FORMAT,
    part: family.name,
    name,
    parameters: sorted(typed(parameters)),
    printer: sorted(printer),
    calibrated,
    accept: accept.map(({ check, because }) => ({ check, because })),
  };
  return `${JSON.stringify(data, undefined, 2).replace(UNSAFE, spelled)}\n`;
}

/** Returns the short hash of what was asked: family, parameters and printer, whatever the file is called. */
export function hashOf({ family, parameters, printer }: Pick<Request, "family" | "parameters" | "printer">): string {
  return shortHash({ format: FORMAT, part: family.name, parameters: typed(parameters), printer });
}

/** What XML gives a meaning to or forbids, and what could steer a terminal. */
const UNSAFE = /[&<>\u007f-\u009f\u2028\u2029\ufffe\uffff]/g;
const spelled = (sign: string) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`;

/** Returns parameters as somebody would have to type them so that they are read as the same ones. */
function typed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(typed);
  if (typeof value !== "object" || value === null) return value;
  if (isItem(value)) return typedItem(value);
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, typed(one)]));
}

function typedItem({ row, values, stated, measured }: Item): Data {
  const copied = Object.keys(values).filter((field) => !stated.includes(field));
  return {
    ...(row === undefined ? {} : { row: row.key }),
    ...values,
    ...(copied.length === 0 ? {} : { copied: [...copied].sort() }),
    ...(measured.length === 0 ? {} : { measured: [...measured].sort() }),
  };
}

const sorted = (data: unknown): unknown => JSON.parse(canonical(data));
