type Block = Readonly<Record<string, unknown>>;

const isBlock = (value: unknown): value is Block =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Returns a copy of `base` with the values of `over` laid over it, map by map; lists are replaced whole, undefined drops a key. */
export function deepMerge(base: Block, over: Block): Record<string, unknown> {
  const merged: Record<string, unknown> = { ...base };
  for (const [key, value] of Object.entries(over)) {
    const own = merged[key];
    if (value === undefined) delete merged[key];
    else merged[key] = isBlock(own) && isBlock(value) ? deepMerge(own, value) : value;
  }
  return merged;
}
