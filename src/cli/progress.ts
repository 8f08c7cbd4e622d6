/** Work that is over sooner says nothing of its progress, ms. */
const SOON = 500;
const ERASE = "\r\u001b[2K";

/** The one line of a terminal that tells what is being done. */
export interface Progress {
  readonly step: (words: string) => void;
  /** Takes the line away; other lines may then be written. */
  readonly clear: () => void;
}

/**
 * Returns the progress line of a run that begins now. `draw` writes to the terminal as it stands, `columns` is its
 * width; without a terminal nothing is ever drawn.
 */
export function progressLine(
  draw: ((text: string) => void) | undefined,
  columns: number,
  clock: () => number,
): Progress {
  const begun = clock();
  let shown = false;
  return {
    step: (words) => {
      if (draw === undefined || clock() - begun < SOON) return;
      draw(`${ERASE}${words.slice(0, columns - 1)}`);
      shown = true;
    },
    clear: () => {
      if (shown) draw?.(ERASE);
      shown = false;
    },
  };
}
