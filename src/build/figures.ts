import { row } from "../core/table.ts";
import type { Design } from "../parts/family.ts";
import { MATERIALS } from "../printing/materials.ts";
import type { Printer } from "../printing/printer.ts";
import type { MadePiece } from "./make.ts";

/** What a finished piece measures, in mm, mm2, mm3 and grams. */
export interface Figures {
  readonly size: readonly [number, number, number];
  readonly volume: number;
  readonly mass: number;
  readonly facets: number;
  /** Undefined when no two faces lie opposite each other. */
  readonly thinnestWall: number | undefined;
  /** The widest bridge the printer must span, 0 when there is none. */
  readonly widestBridge: number;
}

/** Returns the figures of a piece. The mass is an estimate: a solid skin, the rest at the printer's infill. */
export function figuresOf({ mesh, measures }: MadePiece, design: Design, printer: Printer): Figures {
  const { soundness, walls = [], overhangs = [] } = measures;
  const box = soundness?.box;
  const size = [0, 1, 2].map((axis) => (box?.max[axis] ?? 0) - (box?.min[axis] ?? 0)) as unknown as Figures["size"];
  const volume = soundness?.volume ?? 0;
  const skin = Math.min(volume, (soundness?.area ?? 0) * printer.wallLines * printer.line);
  const filled = skin + ((volume - skin) * (design.solid ? 100 : printer.infill)) / 100;
  const density = row(MATERIALS, design.material).values.density;
  const bridges = overhangs.filter(({ support }) => support === "bridge").map(({ span }) => span);
  return {
    size,
    volume,
    mass: (filled * density) / 1000,
    facets: mesh.triangles.length / 3,
    thinnestWall: walls[0]?.thickness,
    widestBridge: Math.max(0, ...bridges),
  };
}
