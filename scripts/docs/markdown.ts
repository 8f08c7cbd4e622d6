/** Returns a table of markdown; a bar in a cell is escaped. */
export function table(heads: readonly string[], rows: readonly (readonly string[])[]): string[] {
  const line = (cells: readonly string[]) => `| ${cells.map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`;
  return [line(heads), line(heads.map(() => "---")), ...rows.map(line)];
}

/** Returns a number as a reader wants it: six digits, no trailing zeros. */
export function figure(value: number): string {
  return String(Number(value.toPrecision(6)));
}

/** Returns a number with its unit. */
export function measure(value: number, unit: string): string {
  return `${figure(value)} ${unit}`.trimEnd();
}

/** Returns the anchor that a heading gets. */
export function anchor(heading: string): string {
  return heading
    .toLowerCase()
    .replaceAll(/[^a-z0-9 -]/g, "")
    .replaceAll(" ", "-");
}

export const NOTICE = "Written by `npm run docs` from the tables in `src`; change those, not this page.";
