import { refuse } from "../core/calculation.ts";
import { bounded, brief } from "./bounded.ts";

/** Starts of a thread from its lead and pitch. A lead that is no whole number of pitches belongs to no thread. */
export const threadStarts = bounded({
  name: "thread-starts",
  title: "Starts of a thread",
  inputs: {
    lead: { symbol: "l", unit: "mm", meaning: "lead: travel in one turn" },
    pitch: { symbol: "p", unit: "mm", meaning: "pitch: crest to crest" },
  },
  results: { starts: { symbol: "n", unit: "", meaning: "starts" } },
  formulas: { starts: "round(l / p)" },
  source: "iso-2904",
  valid: "whole starts, 1 to 16; a lead that is no whole number of pitches is refused",
  examples: [
    { given: { lead: 8, pitch: 2 }, gives: { starts: 4 }, within: 1e-9, source: "iso-2904: own arithmetic" },
    { given: { lead: 1.5, pitch: 1.5 }, gives: { starts: 1 }, within: 1e-9, source: "iso-2904: Tr8x1.5" },
  ],
  limits: { lead: { above: 0 }, pitch: { above: 0 } },
  compute: ({ lead, pitch }) => {
    const starts = Math.round(lead / pitch);
    if (starts >= 1 && starts <= 16 && Math.abs(lead / pitch - starts) <= 1e-6) return { starts };
    const nearest = pitch * Math.min(16, Math.max(1, starts));
    const pitches = `${brief(lead / pitch)} pitches of ${brief(pitch)} mm`;
    return refuse({
      name: "lead-not-whole-pitches",
      says: `a lead of ${brief(lead)} mm is ${pitches}, not 1 to 16 whole ones`,
      found: { value: lead, unit: "mm" },
      limit: { value: nearest, unit: "mm" },
      set: `a lead of ${brief(nearest)} mm, or the pitch as measured over ten crests`,
    });
  },
});
