import { cosDeg, down, sinDeg, tanDeg, up } from "./rounding.ts";

/** The functions that a printed formula may use, besides + - * / ^ and brackets. Angles are in degrees. */
export const FORMULA_FUNCTIONS = {
  up,
  down,
  sind: sinDeg,
  cosd: cosDeg,
  tand: tanDeg,
  atand: (ratio: number) => (Math.atan(ratio) * 180) / Math.PI,
  asind: (ratio: number) => (Math.asin(ratio) * 180) / Math.PI,
  sqrt: Math.sqrt,
  abs: Math.abs,
  min: Math.min,
  max: Math.max,
  exp: Math.exp,
  log: Math.log,
  floor: Math.floor,
  ceil: Math.ceil,
  round: Math.round,
} as const;

const WORD = /[A-Za-z_][A-Za-z0-9_]*/g;

/** Returns the symbols that a printed formula names, each once, in order; functions and pi are left out. */
export function symbolsOf(formula: string): string[] {
  const words = formula.match(WORD) ?? [];
  return [...new Set(words)].filter((word) => word !== "pi" && !(word in FORMULA_FUNCTIONS));
}

/** Returns the formula with every known symbol replaced by its value, as `explain` prints it. */
export function substitute(formula: string, values: ReadonlyMap<string, number>, print: (value: number) => string) {
  return formula.replace(WORD, (word) => {
    const value = values.get(word);
    if (value === undefined) return word;
    return value < 0 ? `(${print(value)})` : print(value);
  });
}

/** Returns whether a formula is an explanation in words (it starts with a quotation mark) and cannot be evaluated. */
export function isWords(formula: string): boolean {
  return formula.startsWith('"');
}
