import type { Mesh, Vec2, Vec3 } from "../geometry/mesh.ts";
import { type BridgeLines, bridgeLines } from "./bridge-lines.ts";
import { type MeshEdges, meshEdges } from "./mesh-edges.ts";
import { type OutlineEdge, type OverhangRegion, overhangRegions } from "./overhang-region.ts";

/** A part of the surface that is printed over air. Lengths in mm, areas in mm2. */
export interface Overhang {
  /**
   * `bridge`: lines held at both ends cover it. `ledge`: some of it hangs on by one side only. `none`: nothing under it
   * holds any edge, so it begins in mid-air.
   */
  readonly support: "bridge" | "ledge" | "none";
  /** Of a bridge its longest line, of a ledge how far it sticks out, of neither the narrowest width. */
  readonly span: number;
  /** Seen from above. */
  readonly area: number;
  /** z of its lowest corner. */
  readonly height: number;
  /** Where the span was found. */
  readonly at: Vec3;
}

/** Directions tried for every region, and longest edges whose square and own direction are tried besides. */
const DIRECTIONS = 16;
const EDGES = 4;
/** A region narrower than this, in mm, that hangs free is a facet which rounding to the file's grid has turned over. */
const FOLD = 1e-3;

/** Returns how far a ledge may stick out, in mm: the next line still lies mostly on the last. Common practice. */
export function tolerableLedge(line: number): number {
  return (line * 4) / 3 + 1e-3;
}

/** Rounding to the file's grid can fold a needle of a facet over; no nozzle prints so little, mm2. */
const SPECK = 0.01;

/**
 * Returns the overhangs of a mesh that stands on z = 0, worst first: those that begin in mid-air, then ledges, then
 * bridges, each by span. `line` and `layer` are the printer's, in mm.
 *
 * A printer fills a region with parallel lines in one direction. A line is held where it ends on an edge with printed
 * material under it. For each direction the longest line held at both ends is the span; points of the other lines must
 * lie near a held edge or a held line, and the farthest is the reach. The direction with a reach within the tolerance
 * and the shortest span counts. So a roof strip 1.8 wide and 20 long spans 1.8; the ring roof of a counterbore that
 * opens to the bed is a ledge, because in no direction does anything hold the lines that end at its inner hole; and the
 * same roof made as a stepped bridge spans the slot.
 */
export function overhangs(
  mesh: Mesh,
  printer: { readonly line: number; readonly layer: number },
  edges: MeshEdges = meshEdges(mesh),
): Overhang[] {
  const rank = { none: 0, ledge: 1, bridge: 2 };
  return overhangRegions(edges, printer.layer)
    .filter(({ area }) => area > SPECK)
    .map((region) => overhangOf(region, printer.line))
    .filter(({ support, span }) => support !== "none" || span > FOLD)
    .sort((one, other) => rank[one.support] - rank[other.support] || other.span - one.span);
}

function overhangOf(region: OverhangRegion, line: number): Overhang {
  const { outline, area, height, middle } = region;
  const lift = ([x, y]: Vec2): Vec3 => [x, y, middle[2]];
  const directions = directionsFor(outline);
  if (!outline.some((edge) => edge.held)) {
    const span = Math.min(
      ...directions.map((angle) => bridgeLines(outline, angle, line, { enough: 0, below: 0 }).width),
    );
    return { support: "none", span, area, height, at: middle };
  }
  const tolerance = tolerableLedge(line);
  let best: BridgeLines | undefined;
  for (const angle of directions) {
    const enough = Math.max(tolerance, best?.reach ?? Infinity);
    // Once a direction has no reach to speak of, only a shorter span is better.
    const below = best !== undefined && best.reach <= tolerance && best.span > 0 ? best.span : Infinity;
    const lines = bridgeLines(outline, angle, line, { enough, below });
    if (best === undefined || isBetter(lines, best, tolerance)) best = lines;
  }
  const { span, spanAt, reach, reachAt } = best as BridgeLines;
  return reach > tolerance || span === 0
    ? { support: "ledge", span: reach, area, height, at: lift(reachAt) }
    : { support: "bridge", span, area, height, at: lift(spanAt) };
}

function isBetter(lines: BridgeLines, best: BridgeLines, tolerance: number): boolean {
  const [here, there] = [Math.max(lines.reach, tolerance), Math.max(best.reach, tolerance)];
  if (here !== there) return here < there;
  // A narrow strip is within the tolerance of its own sides: lines across it still beat lines along it.
  return lines.span > 0 && (best.span === 0 || lines.span < best.span);
}

function directionsFor(outline: readonly OutlineEdge[]): number[] {
  const longest = outline
    .map(({ ax, ay, bx, by }) => ({ length: Math.hypot(bx - ax, by - ay), angle: Math.atan2(by - ay, bx - ax) }))
    .sort((one, other) => other.length - one.length)
    .slice(0, EDGES);
  const own = longest.flatMap(({ angle }) => [angle + Math.PI / 2, angle]);
  return [...own, ...Array.from({ length: DIRECTIONS }, (_, index) => (Math.PI * index) / DIRECTIONS)];
}
