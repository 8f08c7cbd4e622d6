import { harmless } from "../core/unprintable.ts";
import type { Place } from "../presets/read.ts";
import { SCREEN } from "./screen.ts";
import { screenWidth, signsOf, signWidth } from "./screen-width.ts";

const INDENT = "    ";
const CUT = "...";
/** Columns that are shown before what is meant, at most. */
const BEFORE = 48;
/** Longer pieces of a line are not looked at: nobody sees so much of one. */
const LONGEST = 400;

/**
 * Returns the line of a file with marks below what is meant, indented; nothing for an empty line. Tabulators stay, so
 * that both lines meet the same stops; signs of two columns get two blanks or two marks. Of a long line that part is
 * shown which fits the screen.
 */
export function excerpt({ text, column, width }: Place): string[] {
  if (text.trim() === "") return [];
  const indent = text.length - text.trimStart().length;
  const start = Math.max(column - 1, indent);
  const before = ending(harmless(text.slice(Math.max(indent, start - LONGEST), start)), BEFORE);
  const room = SCREEN - INDENT.length - screenWidth(before);
  const meant = beginning(harmless(text.slice(start, start + Math.min(width, LONGEST)).trimEnd()), room);
  const after = harmless(text.slice(start + width, start + width + LONGEST).trimEnd());
  const marks = below(meant, "^") || "^";
  return [
    `${INDENT}${before}${meant}${beginning(after, room - screenWidth(meant))}`.trimEnd(),
    `${INDENT}${below(before, " ")}${marks}`,
  ];
}

/** Returns as many columns of a sign's stand-in as the text takes. */
function below(text: string, mark: string): string {
  return signsOf(text)
    .map((sign) => (sign === "\t" ? sign : mark.repeat(signWidth(sign))))
    .join("");
}

function beginning(text: string, room: number): string {
  if (screenWidth(text) <= room) return text;
  return fitting(signsOf(text), room - CUT.length).join("") + CUT;
}

function ending(text: string, room: number): string {
  if (screenWidth(text) <= room) return text;
  return (
    CUT +
    fitting(signsOf(text).reverse(), room - CUT.length)
      .reverse()
      .join("")
  );
}

/** Returns the first signs that fit into so many columns. */
function fitting(signs: readonly string[], room: number): string[] {
  let taken = 0;
  const end = signs.findIndex((sign) => {
    taken += signWidth(sign);
    return taken > room;
  });
  return signs.slice(0, end < 0 ? undefined : end);
}
