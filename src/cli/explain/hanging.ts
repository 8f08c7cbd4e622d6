import { SCREEN, wrap } from "../screen.ts";

/** Returns the words behind a lead, broken so that every further line begins under the first word. */
export function hanging(lead: string, words: string, width = SCREEN): string[] {
  const lines = wrap(words, Math.max(20, width - lead.length));
  return (lines.length === 0 ? [""] : lines).map((line, index) =>
    `${index === 0 ? lead : " ".repeat(lead.length)}${line}`.trimEnd(),
  );
}
