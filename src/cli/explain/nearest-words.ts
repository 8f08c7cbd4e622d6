import { nearest } from "../../core/nearest.ts";

/** How many names a hint lists at most. */
const FEW = 8;
/** Shorter words begin too many names to mean one. */
const LONG = 4;

/**
 * Returns what the user most likely meant, in words: the nearest name, unless others begin with the word; else those
 * that begin with it and those that hold it; else where to look, or the first names when nobody says where.
 */
export function nearestWords(word: string, known: readonly string[], elsewhere?: string): string {
  const asked = word.trim().toLowerCase();
  const close = nearest(asked, known);
  const begun = asked.length < LONG ? [] : known.filter((name) => name.toLowerCase().startsWith(asked));
  if (close !== undefined && (begun.length === 0 || begun.includes(close))) return `the nearest is ${close}`;
  const holding = asked.length < LONG ? [] : known.filter((name) => name.toLowerCase().includes(asked));
  const fitting = [...new Set([...begun, ...holding])];
  if (fitting.length === 0 && elsewhere !== undefined) return elsewhere;
  const listed = fitting.length > 0 ? fitting : known;
  return `there are ${listed.slice(0, FEW).join(", ")}${listed.length > FEW ? " ..." : ""}`;
}
