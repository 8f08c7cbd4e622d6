import type { Solid } from "../geometry/solid.ts";
import type { KeepOut } from "./piece.ts";

/** What a piece of hardware asks of the plastic round it: what it adds, what it cuts, the space it needs. */
export interface Feature {
  readonly adds: readonly Solid[];
  readonly cuts: readonly Solid[];
  readonly keepOuts: readonly KeepOut[];
}

/** Returns several features as one. */
export function together(...features: readonly Feature[]): Feature {
  return {
    adds: features.flatMap((feature) => feature.adds),
    cuts: features.flatMap((feature) => feature.cuts),
    keepOuts: features.flatMap((feature) => feature.keepOuts),
  };
}

/** Returns the feature moved, turned or mirrored: `place` is applied to every body of it. */
export function relocated(feature: Feature, place: (solid: Solid) => Solid): Feature {
  return {
    adds: feature.adds.map(place),
    cuts: feature.cuts.map(place),
    keepOuts: feature.keepOuts.map(({ body, roomy, ...keepOut }) => ({
      ...keepOut,
      body: place(body),
      ...(roomy === undefined ? {} : { roomy: place(roomy) }),
    })),
  };
}
