/**
 * Signs that take two columns on a terminal: East Asian wide and full-width ones and what is shown as a picture.
 * Unicode Standard Annex 11, table of wide ranges; a test compares them with Python's unicodedata.
 */
const RANGES = [
  String.raw`\u1100-\u115f\u2329\u232a\u2e80-\u303e\u3041-\u3247\u3250-\u4dbf\u4e00-\ua4cf\ua960-\ua97c\uac00-\ud7a3`,
  String.raw`\uf900-\ufaff\ufe10-\ufe19\ufe30-\ufe6b\uff01-\uff60\uffe0-\uffe6`,
  String.raw`\u{16fe0}-\u{18dff}\u{1aff0}-\u{1b2ff}\u{1f200}-\u{1f265}\u{20000}-\u{3fffd}`,
];
const WIDE = new RegExp(String.raw`[${RANGES.join("")}]|(?!\p{RI})\p{Emoji_Presentation}|\p{RI}{2}`, "u");
/** A sign that is text by itself and a picture with what follows it. */
const MADE_PICTURE = /\p{Emoji}\ufe0f/u;
const WITHOUT_WIDTH = /^[\p{Mn}\p{Me}\p{Cf}\u1160-\u11ff]$/u;
const PLAIN = /^[\t\x20-\x7e]*$/;

let segmenter: Intl.Segmenter | undefined;

/** Returns the signs of a text as a reader counts them: a letter with its accents is one. */
export function signsOf(text: string): string[] {
  if (PLAIN.test(text)) return [...text];
  segmenter ??= new Intl.Segmenter("en", { granularity: "grapheme" });
  return [...segmenter.segment(text)].map(({ segment }) => segment);
}

/** Returns how many columns a sign takes on a terminal; a tabulator, whose width depends on where it stands, is 1. */
export function signWidth(sign: string): number {
  if (WIDE.test(sign) || MADE_PICTURE.test(sign)) return 2;
  return [...sign].every((point) => WITHOUT_WIDTH.test(point) && point !== "\u00ad") ? 0 : 1;
}

/** Returns how many columns a text takes on a terminal. */
export const screenWidth = (text: string): number => signsOf(text).reduce((sum, sign) => sum + signWidth(sign), 0);
