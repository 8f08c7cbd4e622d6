import type { Bed } from "./bed.ts";
import type { Region } from "./region.ts";

/** What a finished mesh is held against. Lengths in mm. */
export interface Limits {
  readonly line: number;
  readonly layer: number;
  /** A bridge longer than this sags visibly; longer than the limit it fails. */
  readonly bridgeComfort: number;
  readonly bridgeLimit: number;
  readonly bed: Bed;
  /** A wall below the first is an error, below the second a warning. */
  readonly wallError: number;
  readonly wallWarn: number;
  /** Samples per mm2 in the search for thin walls. */
  readonly sampleDensity: number;
  /** Bodies the mesh holds when it is right; 1 when left out. */
  readonly pieces?: number | undefined;
  /** Rooms where the part is thin on purpose, such as a membrane that is pierced at assembly. */
  readonly thinOnPurpose?: readonly Region[] | undefined;
}
