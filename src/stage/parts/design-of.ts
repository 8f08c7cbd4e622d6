import type { Diagnostic, Path } from "../../core/diagnostic.ts";
import type { Design } from "../../parts/family.ts";
import { FAMILIES } from "../../parts/index.ts";
import type { PlacedPart, PrinterOf } from "../machine.ts";

/** A part of the machine as its family has worked it out. */
export interface DesignedPart {
  readonly part: PlacedPart;
  readonly design: Design;
}

/** Returns a part worked out by its family; nothing for a family that is not known. */
export function designOf(part: PlacedPart, printer: PrinterOf): readonly DesignedPart[] {
  const own = FAMILIES.find(({ name }) => name === part.family);
  return own === undefined ? [] : [{ part, design: own.design(part.parameters, printer(part.family)) }];
}

/** Returns what the family's own checks find wrong with a part, each at the place of the plan that it comes from. */
export function findingsOf({ part, design }: DesignedPart): readonly Diagnostic[] {
  return design.diagnostics.map((each) => ({
    ...each,
    path: placeIn(part, each.path),
    says: `${part.name}: ${each.says}`,
  }));
}

/** Returns where in the plan a parameter of a part stands: its own place, else the place of the part itself. */
export function placeIn({ path, places = {} }: Pick<PlacedPart, "path" | "places">, inPart: Path): Path {
  const [name, ...deeper] = inPart;
  const place = name === undefined ? undefined : places[name];
  if (place === undefined) return path;
  return place.at(-1) === name ? [...place, ...deeper] : place;
}
