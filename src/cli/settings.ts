import { valueAt } from "../parts/schema-walk.ts";
import { readValue } from "../presets/read.ts";
import { trouble } from "./io.ts";

type Data = Record<string, unknown>;

/**
 * Lays `--set path=value` over what a file holds; the path may go into a bought item: `bearing.width=6.98`. `usual`
 * tells what stands at a path that the file leaves out.
 */
export function withSettings(
  data: Readonly<Data>,
  set: readonly string[],
  usual: (path: readonly string[]) => unknown,
): Data {
  const copy = structuredClone(data) as Data;
  for (const setting of set) {
    const [path = "", ...rest] = setting.split("=");
    if (path === "" || rest.length === 0) throw trouble(`--set ${setting} lacks a value; write --set key=value`);
    const steps = path.split(".");
    const holder = steps.slice(0, -1);
    // A field of a bought item that the file leaves at its default is laid over the default's row.
    const item = holder.length > 0 && valueAt(copy, holder) === undefined ? usual(holder) : undefined;
    if (typeof item === "object" && item !== null && "key" in item) lay(copy, holder, { row: item.key });
    lay(copy, steps, readValue(rest.join("=")));
  }
  return copy;
}

function lay(into: Data, [first = "", ...rest]: readonly string[], value: unknown): void {
  if (["__proto__", "prototype", "constructor"].includes(first)) throw trouble(`${first} is not a key of any part`);
  if (Array.isArray(into) && !(/^\d+$/.test(first) && Number(first) <= into.length)) {
    const allowed = `0 to ${into.length}`;
    throw trouble(`${first} is no place in the list that --set goes into; entries are counted from 0: ${allowed}`);
  }
  if (rest.length === 0) {
    into[first] = value;
    return;
  }
  const inner = into[first];
  // A bought item named by its row alone becomes a map, so that one of its fields can be set.
  const next = typeof inner === "object" && inner !== null ? inner : inner === undefined ? {} : { row: inner };
  into[first] = next;
  lay(next as Data, rest, value);
}
