import type { Diagnostic } from "../core/diagnostic.ts";
import type { Mesh } from "../geometry/mesh.ts";
import type { Limits } from "./limits.ts";
import { meshEdges } from "./mesh-edges.ts";
import { brokenMesh, meshNotSound } from "./mesh-not-sound.ts";
import { type Overhang, overhangs } from "./overhang.ts";
import { overhangNeedsSupport } from "./overhang-needs-support.ts";
import { type Soundness, soundness } from "./soundness.ts";
import { thinnestWalls, type Wall } from "./wall.ts";
import { wallTooThin } from "./wall-too-thin.ts";
import { brokenFacets } from "./weld.ts";

/** What was measured; walls and overhangs only on a closed surface, since on another they mean nothing. */
export interface Measures {
  readonly soundness?: Soundness | undefined;
  /** Thinnest first. */
  readonly walls?: readonly Wall[] | undefined;
  /** Worst first. */
  readonly overhangs?: readonly Overhang[] | undefined;
}

export interface Inspection {
  readonly measures: Measures;
  readonly diagnostics: readonly Diagnostic[];
}

/** Returns what a finished mesh, in the frame of the print, measures and every limit that it breaks. Never throws. */
export function inspect(mesh: Mesh, limits: Limits): Inspection {
  const broken = brokenFacets(mesh);
  if (broken > 0) return { measures: {}, diagnostics: [brokenMesh(broken)] };
  const edges = meshEdges(mesh);
  const sound = soundness(mesh, edges);
  const faults = meshNotSound(sound, limits);
  if (!sound.closed || !sound.oriented || sound.volume <= 0) {
    return { measures: { soundness: sound }, diagnostics: faults };
  }
  const walls = thinnestWalls(edges.mesh, { sampleDensity: limits.sampleDensity, except: limits.thinOnPurpose });
  const hanging = overhangs(edges.mesh, limits, edges);
  const diagnostics = [...faults, ...wallTooThin(walls, limits), ...overhangNeedsSupport(hanging, limits)];
  return { measures: { soundness: sound, walls, overhangs: hanging }, diagnostics };
}
