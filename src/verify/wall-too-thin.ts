import type { DefectName } from "../core/defects.ts";
import type { Diagnostic } from "../core/diagnostic.ts";
import type { Limits } from "./limits.ts";
import { place } from "./place.ts";
import type { Wall } from "./wall.ts";

/** Round walls are polygons: two of them may be nearer than the circles by this, in mm. */
export const CHORDS = 0.02;

/** Returns the complaint about the thinnest wall, if it is below a limit. `walls` comes thinnest first. */
export function wallTooThin(walls: readonly Wall[], limits: Limits): Diagnostic[] {
  const thinnest = walls[0];
  if (thinnest === undefined || thinnest.thickness >= limits.wallWarn - CHORDS) return [];
  const isError = thinnest.thickness < limits.wallError - CHORDS;
  const limit = isError ? limits.wallError : limits.wallWarn;
  const others = walls.filter((wall) => wall !== thinnest && wall.thickness < limit - CHORDS);
  const more = others.length === 0 ? "" : `, and at ${others.map(({ at }) => place(at)).join("; ")}`;
  const lines = (thinnest.thickness / limits.line).toFixed(1);
  const thick = `${thinnest.thickness.toFixed(2)} mm thick, ${lines} printed lines`;
  return [
    {
      name: "wall-too-thin" satisfies DefectName,
      level: isError ? "error" : "warning",
      path: [],
      says: `a wall is ${thick}, at ${place(thinnest.at)}${more}`,
      found: { value: thinnest.thickness, unit: "mm" },
      limit: { value: limit, unit: "mm" },
      why: isError
        ? "it prints with gaps or not at all, and carries nothing"
        : "few lines side by side split along the layers under load",
      set: `sizes that leave at least ${limit.toFixed(2)} mm of material there`,
    },
  ];
}
