import { bounded } from "./bounded.ts";

/** Tolerance of the length of a moulded loop. */
export const loopTolerance = bounded({
  name: "loop-tolerance",
  title: "Tolerance of a belt's length",
  inputs: { length: { symbol: "L", unit: "mm", meaning: "belt length" } },
  results: { tolerance: { symbol: "t", unit: "mm", meaning: "tolerance to either side" } },
  formulas: { tolerance: '"0.3 up to 500 mm, 0.5 up to 1000 mm, 0.8 up to 2000 mm"' },
  source: "belt-makers: drive design manuals, typical",
  valid: "loops up to 2000 mm; longer ones are refused",
  examples: [
    { given: { length: 500 }, gives: { tolerance: 0.3 }, within: 1e-9, source: "belt-makers: drive design manuals" },
    { given: { length: 680 }, gives: { tolerance: 0.5 }, within: 1e-9, source: "belt-makers: drive design manuals" },
    { given: { length: 1400 }, gives: { tolerance: 0.8 }, within: 1e-9, source: "belt-makers: drive design manuals" },
  ],
  limits: { length: { above: 0, to: 2000 } },
  compute: ({ length }) => ({ tolerance: length <= 500 ? 0.3 : length <= 1000 ? 0.5 : 0.8 }),
});
