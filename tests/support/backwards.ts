/** Returns the same value with the keys of every map in it in the opposite order; lists stay as they are. */
export function backwards(value: unknown): unknown {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return value;
  const entries = Object.entries(value).map(([name, each]): [string, unknown] => [name, backwards(each)]);
  return Object.fromEntries(entries.reverse());
}
