import type { Citation } from "../../core/bibliography.ts";
import type { Unit } from "../../core/unit.ts";

/** How a number is found that no single formula gives, and where that is from. */
export interface SolverWords {
  readonly how: string;
  readonly source: Citation;
  /** Unit of an input by the letters before its underscore. */
  readonly units: Readonly<Record<string, Unit>>;
}

const PLACES = { x: "mm", y: "mm", r: "mm", sigma: "" } as const;

/** Returns how a search of the machine goes, by the name that facts have it under; the docs say the same. */
export const SOLVER_WORDS: Readonly<Record<"belt-loop" | "slide-for-length" | "summed-pull", SolverWords>> = {
  "belt-loop": {
    how:
      "for each pair of nodes delta = sigma_i r_i - sigma_j r_j, span = sqrt(D^2 - delta^2), direction = " +
      "atan2(d_y, d_x) + asin(delta / D); wraps from direction to direction; L = sum of spans + sum of r w; sigma is 1 " +
      "inside the loop, -1 outside",
    source: "geometry",
    units: PLACES,
  },
  "slide-for-length": {
    how:
      "Newton's search for the exact length, its slope from the directions of the two spans, on the stretches of the " +
      "slide where the loop is sound; nearest mid-slide wins",
    source: "geometry",
    units: { ...PLACES, direction: "deg", from: "mm", to: "mm", L: "mm" },
  },
  "summed-pull": { how: "the spans add as arrows", source: "statics", units: { phi: "deg", T: "N" } },
};
