import { CST, Lexer } from "yaml";
import type { Excess } from "./yaml-limits.ts";

/** What closes what was opened. */
const CLOSING: Readonly<Record<string, string>> = { "[": "]", "{": "}" };

interface Opened {
  readonly sign: string;
  readonly at: number;
}

/**
 * Returns the first bracket of a text that is not closed, or that closes nothing; undefined where each has its other
 * one, and where a quotation mark is not closed, since brackets behind it may be text.
 */
export function bracketFault(text: string): Excess | undefined {
  const open: Opened[] = [];
  const tokens = tokensOf(text);
  if (tokens.some(({ type, sign }) => type.endsWith("quoted-scalar") && !isClosed(sign))) return undefined;
  for (const { type, sign, at } of tokens) {
    if (type === "flow-map-start" || type === "flow-seq-start") open.push({ sign, at });
    if (type !== "flow-map-end" && type !== "flow-seq-end") continue;
    const last = open.pop();
    if (last === undefined) return surplus(sign, at);
    if (CLOSING[last.sign] === sign) continue;
    if (open.some((one) => CLOSING[one.sign] === sign)) return unclosed(text, last);
    const [line = ""] = text.slice(at).split("\n");
    return line.includes(CLOSING[last.sign] ?? "") ? surplus(sign, at) : unclosed(text, last);
  }
  const last = open.at(-1);
  return last === undefined ? undefined : unclosed(text, last);
}

function surplus(sign: string, at: number): Excess {
  const opening = sign === "]" ? "[" : "{";
  const says = `${sign} closes nothing: no ${opening} is open here`;
  return { from: at, to: at + 1, says, set: `${opening} where it begins, or the line without ${sign}` };
}

function unclosed(text: string, { sign, at }: Opened): Excess {
  const column = at - text.lastIndexOf("\n", at - 1);
  const says = `${sign} opened at column ${column} is not closed`;
  return { from: at, to: at + 1, says, set: `${CLOSING[sign]} behind what belongs inside` };
}

interface Token {
  readonly type: string;
  readonly sign: string;
  readonly at: number;
}

/** Returns the words and signs of a text with their places; marks that the lexer puts between them are left out. */
function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  for (const sign of new Lexer().lex(text)) {
    if (!text.startsWith(sign, at)) continue;
    tokens.push({ type: CST.tokenType(sign) ?? "scalar", sign, at });
    at += sign.length;
  }
  return tokens;
}

const isClosed = (quoted: string) => quoted.length > 1 && quoted.endsWith(quoted.charAt(0));
