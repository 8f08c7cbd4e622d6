import { type Kind, unitsOf } from "./quantity.ts";

const SIGNED = String.raw`[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?`;
/** A fraction by itself or behind a whole number; its lower half is not zero. */
const FRACTION = String.raw`\d+/0*[1-9]\d*`;
const MIXED = String.raw`[+-]?(?:\d+\s+)?${FRACTION}`;
/** The marks of the keyboard and those that text programs put for them. */
const DOUBLE = `["″”“]`;
const SINGLE = `['′’‘]`;
/** Between a force and its arm: the signs that `readQuantity` takes for a dot. */
const BETWEEN = "(?:\\s*[·⋅∙•*.-]\\s*|\\s+)";
const INCHES = `(?:in|inch|inches|${DOUBLE})`;
/** What stands behind whole feet: `1' 3 1/2"`. */
const UNDER_A_FOOT = String.raw`(?:(?:\d+\s+)?${FRACTION}|\d+\.?\d*(?:[eE]\+?\d+)?)`;
const LENGTHS: readonly string[] = [
  String.raw`[+-]?\d+-${FRACTION}\s*${INCHES}`,
  String.raw`[+-]?\d+\s*(?:${SINGLE}\s*|ft\s+)${UNDER_A_FOOT}\s*${INCHES}`,
];

/** Text that is a number and nothing else. */
export const NUMBER_PATTERN = String.raw`^\s*${SIGNED}\s*$`;

/**
 * Returns the regular expression of all texts that `readQuantity` takes for this kind. Two things it cannot ask: whether
 * the number is small enough to hold, and whether inches behind feet are fewer than 12.
 */
export function quantityPattern(kind: Kind): string {
  const units = unitsOf(kind).map(unitPattern).join("|");
  const usual = String.raw`(?:${SIGNED}|${MIXED})\s*(?:${units})?`;
  const all = kind === "length" ? [usual, ...LENGTHS] : [usual];
  return String.raw`^\s*(?:${all.join("|")})\s*$`;
}

function unitPattern(unit: string): string {
  if (unit === '"') return DOUBLE;
  return unit === "'" ? SINGLE : unit.replace("·", BETWEEN);
}
