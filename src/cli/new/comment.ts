/** Lines of a preset are no longer than this, so that an editor shows them whole. */
const WIDTH = 100;

/** Returns words as lines of a comment; what does not fit goes on below the first word. */
export function comment(indent: string, lead: string, words: string): string[] {
  const first = `${indent}# ${lead}`;
  const next = `${indent}# ${" ".repeat(lead.length)}`;
  const lines: string[] = [];
  let line = first;
  for (const word of words.split(" ")) {
    const longer = line === first || line === next ? `${line}${word}` : `${line} ${word}`;
    if (longer.length <= WIDTH || line === first || line === next) line = longer;
    else {
      lines.push(line);
      line = `${next}${word}`;
    }
  }
  return [...lines, line.trimEnd()];
}
