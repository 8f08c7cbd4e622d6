/** Signs that show nothing, or steer a terminal: control characters, half letters, marks of no meaning. */
const STEERING = String.raw`\p{Cc}\p{Cs}\u2028\u2029\ufeff\ufffe\uffff`;
/** Marks that turn round the order in which the text behind them is shown (Unicode Standard Annex 9, table 4). */
const TURNING = String.raw`\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069`;

const UNPRINTABLE = new RegExp(`[${STEERING}${TURNING}]`, "gu");

/** Returns text with every sign spelled out that could steer a terminal or belie what is read; lines and tabs stay. */
export function harmless(text: string): string {
  return text.replace(UNPRINTABLE, (sign) => (sign === "\n" || sign === "\t" ? sign : spelled(sign)));
}

/** Returns text as one harmless line: line ends and tabs are spelled out as well. */
export function oneLine(text: string): string {
  return text.replace(UNPRINTABLE, spelled);
}

/** Returns a sign by its number, as JSON and YAML write it: `\u001b`. */
export function spelled(sign: string): string {
  return `\\u${(sign.codePointAt(0) ?? 0).toString(16).padStart(4, "0")}`;
}

/** Returns the first sign of a text that would have to be spelled out; undefined where there is none. */
export function unprintableIn(text: string): string | undefined {
  return text.match(UNPRINTABLE)?.find((sign) => sign !== "\n" && sign !== "\t");
}
