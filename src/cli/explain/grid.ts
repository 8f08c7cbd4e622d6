import { columns } from "../screen.ts";

/** Returns a table two blanks in from the edge. A head with ">" before it stands over figures: they end flush right. */
export function grid(heads: readonly string[], rows: readonly (readonly string[])[]): string[] {
  const named = heads.map((head) => (head.startsWith(">") ? { head: head.slice(1), right: true } : { head }));
  return columns(named, rows).map((line) => `  ${line}`.trimEnd());
}
