/** Returns the first line of a preset, by which editors find its schema. */
export const modeline = (schema: string): string => `# yaml-language-server: $schema=${schema}`;

/** What somebody needs to know who has never seen a preset. */
export const HOW_TO_WRITE: readonly string[] = [
  "Nothing here has been measured yet: the values are what is usually sold or done. Go through them, measure, write down.",
  'Lengths are in mm, or with their unit: 26, 26 mm, 1 1/32 in. A bought item is a row of a table, or what you measured laid over one: { row: "608", width: 6.98, measured: true }.',
];

/** What stands above keys that are comments. */
export const HEADING_OPTIONAL = "---- The rest has a default. To change one, take away its # and write your value.";
