/** Returns the number of single-letter edits, swaps of neighbours included, that turn one word into the other. */
export function editDistance(from: string, to: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let i = 1; i <= from.length; i++) {
    const row = [i];
    for (let j = 1; j <= to.length; j++) {
      const same = from[i - 1] === to[j - 1];
      let best = Math.min((row[j - 1] ?? 0) + 1, (last[j] ?? 0) + 1, (last[j - 1] ?? 0) + (same ? 0 : 1));
      const swapped = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1];
      if (swapped) best = Math.min(best, (beforeLast[j - 2] ?? 0) + 1);
      row.push(best);
    }
    beforeLast = last;
    last = row;
  }
  return last[to.length] ?? 0;
}

/** Returns the candidate the user most likely meant, or undefined when none is close. A decimal comma is a point. */
export function nearest(word: string, candidates: readonly string[]): string | undefined {
  const asked = word.toLowerCase().replace(/(\d),(?=\d)/g, "$1.");
  const ranked = candidates
    .map((candidate) => ({ candidate, distance: editDistance(asked, candidate.toLowerCase()) }))
    .sort((a, b) => a.distance - b.distance);
  const best = ranked[0];
  return best !== undefined && best.distance <= Math.max(1, Math.floor(asked.length / 3)) ? best.candidate : undefined;
}
