import type { Diagnostic, Path } from "../../core/diagnostic.ts";
import type { Design } from "../../parts/family.ts";
import { FAMILIES } from "../../parts/index.ts";
import type { PlacedPart, PrinterOf } from "../machine.ts";

/** Returns a part worked out by its family; undefined for a family that is not known. */
export function designOf({ family, parameters }: PlacedPart, printer: PrinterOf): Design | undefined {
  return FAMILIES.find(({ name }) => name === family)?.design(parameters, printer(family));
}

/** Returns what the family's own checks find wrong with a part, each at the place of the plan that it comes from. */
export function findingsOf(part: PlacedPart, printer: PrinterOf): readonly Diagnostic[] {
  const found = designOf(part, printer)?.diagnostics ?? [];
  return found.map((each) => ({ ...each, path: placeIn(part, each.path), says: `${part.name}: ${each.says}` }));
}

/** Returns where in the plan a parameter of a part stands: its own place, else the place of the part itself. */
export function placeIn({ path, places = {} }: Pick<PlacedPart, "path" | "places">, inPart: Path): Path {
  const [name, ...deeper] = inPart;
  const place = name === undefined ? undefined : places[name];
  if (place === undefined) return path;
  return place.at(-1) === name ? [...place, ...deeper] : place;
}
