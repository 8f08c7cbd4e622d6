import { bounded } from "./bounded.ts";

/** Height that a turn and one mark of a tram wheel are worth. */
export const threadTravel = bounded({
  name: "thread-travel",
  title: "Height of a turn and of a mark",
  inputs: {
    pitch: { symbol: "p", unit: "mm", meaning: "thread pitch" },
    marks: { symbol: "n", unit: "", meaning: "marks round the wheel" },
    move: { symbol: "dz", unit: "mm", meaning: "height to move" },
  },
  results: {
    perMark: { symbol: "h", unit: "mm", meaning: "height of one mark" },
    turns: { symbol: "t", unit: "", meaning: "turns to move" },
    toMove: { symbol: "k", unit: "", meaning: "marks to move" },
  },
  formulas: { perMark: "p / n", turns: "dz / p", toMove: "t * n" },
  source: "iso-261",
  valid: "single-start thread",
  examples: [
    {
      given: { pitch: 0.7, marks: 12, move: 0.175 },
      gives: { perMark: 0.058 },
      within: 6e-3,
      source: "iso-261: own arithmetic",
    },
    {
      given: { pitch: 0.8, marks: 10, move: 0.192 },
      gives: { perMark: 0.08, turns: 0.24, toMove: 2.4 },
      within: 1e-9,
      source: "iso-261: own arithmetic",
    },
  ],
  limits: { pitch: { above: 0 }, marks: { from: 1, whole: true } },
  compute: ({ pitch, marks, move }) => ({
    perMark: pitch / marks,
    turns: move / pitch,
    toMove: (move / pitch) * marks,
  }),
});
