/** Lengths in which bar is sold, mm. common practice */
const SOLD = [500, 1000, 1500, 2000, 3000, 6000];
/** What a saw takes away, mm. common practice */
const KERF = 3;

/** A length that is sold, and what is cut from it, the longest first. mm. */
export interface StockBar {
  readonly length: number;
  readonly cuts: readonly number[];
}

/**
 * Returns lengths to buy for the cuts: the longest first, each into the first bar with room for it, bars as short as
 * what they hold allows. A cut longer than all that is sold is ordered as it is. Units: mm. A rule of this project:
 * near the least waste, not always the least.
 */
export function stockBars(cuts: readonly number[]): StockBar[] {
  // Lengths up to this are shared between cuts; longer ones are hard to carry home and are for longer cuts only.
  const common = 2000;
  const bars: number[][] = [];
  for (const cut of [...cuts].sort((a, b) => b - a)) {
    const room = bars.find((bar) => taken([...bar, cut]) <= common);
    if (room === undefined) bars.push([cut]);
    else room.push(cut);
  }
  return bars.map((bar) => ({ length: SOLD.find((sold) => sold >= taken(bar)) ?? Math.max(...bar), cuts: bar }));
}

/** Returns the length that the cuts take from a bar, the saw's included; the last cut may end where the bar ends. */
function taken(cuts: readonly number[]): number {
  return cuts.reduce((sum, cut) => sum + cut, 0) + KERF * (cuts.length - 1);
}
