/** A need above a stock length by binary noise only does not ask for the next one. */
const GUARD = 1e-6;

/** Returns the shortest stock length that is not below `needed`; undefined when none is long enough. Lengths in mm. */
export function nextStock(lengths: readonly number[], needed: number): number | undefined {
  const enough = lengths.filter((length) => length >= needed - GUARD);
  return enough.length > 0 ? Math.min(...enough) : undefined;
}

/** Returns the longest stock length that is not above `allowed`; undefined when none is short enough. Lengths in mm. */
export function longestStock(lengths: readonly number[], allowed: number): number | undefined {
  const fitting = lengths.filter((length) => length <= allowed + GUARD);
  return fitting.length > 0 ? Math.max(...fitting) : undefined;
}
