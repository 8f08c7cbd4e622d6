import { bounded } from "./bounded.ts";

/** Thread and shank of a part-threaded bolt. The nut must lie beyond the shank. */
export const boltThreadedLength = bounded({
  name: "bolt-threaded-length",
  title: "Threaded length of a bolt",
  inputs: {
    diameter: { symbol: "d", unit: "mm", meaning: "bolt diameter" },
    length: { symbol: "L", unit: "mm", meaning: "bolt length" },
  },
  results: {
    thread: { symbol: "b", unit: "mm", meaning: "threaded length from the tip" },
    shank: { symbol: "L_shank", unit: "mm", meaning: "length without thread under the head" },
  },
  formulas: { thread: "min(2 * d + 12, L)", shank: "L - b" },
  source: "iso-4762: reference thread length, from memory",
  valid: "bolts up to 125 mm; short bolts are threaded all along. For other bolts of other standards measure",
  examples: [
    {
      given: { diameter: 5, length: 50 },
      gives: { thread: 22, shank: 28 },
      within: 1e-9,
      source: "iso-4762: own arithmetic",
    },
  ],
  limits: { diameter: { above: 0 }, length: { above: 0, to: 125 } },
  compute: ({ diameter, length }) => {
    const thread = Math.min(2 * diameter + 12, length);
    return { thread, shank: length - thread };
  },
});
