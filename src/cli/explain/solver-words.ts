import type { Citation } from "../../core/bibliography.ts";
import type { Unit } from "../../core/unit.ts";
import { SEARCHES } from "../../stage/searches.ts";

/** How a number is found that no single formula gives, and where that is from. */
export interface SolverWords {
  readonly how: string;
  readonly source: Citation;
  /** Unit of an input by the letters before its underscore. */
  readonly units: Readonly<Record<string, Unit>>;
}

const PLACES = { x: "mm", y: "mm", r: "mm", sigma: "" } as const;

/** Returns how a search of the machine goes, by the name that facts have it under; the docs say the same. */
export const SOLVER_WORDS: Readonly<Record<keyof typeof SEARCHES, SolverWords>> = {
  "belt-loop": { ...SEARCHES["belt-loop"], units: PLACES },
  "slide-for-length": {
    ...SEARCHES["slide-for-length"],
    units: { ...PLACES, direction: "deg", from: "mm", to: "mm", L: "mm" },
  },
  "summed-pull": { ...SEARCHES["summed-pull"], units: { phi: "deg", T: "N" } },
};
