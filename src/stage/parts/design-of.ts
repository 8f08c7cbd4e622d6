import type { DefectName } from "../../core/defects.ts";
import type { Diagnostic, Path } from "../../core/diagnostic.ts";
import { applyAcceptance } from "../../parts/acceptance.ts";
import type { Design } from "../../parts/family.ts";
import { FAMILIES } from "../../parts/index.ts";
import { shapeOf } from "../../parts/piece.ts";
import { acceptedOf } from "../acceptance.ts";
import type { PlacedPart, PrinterOf } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { partWords } from "./plan-words.ts";

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

/** Told once for the whole machine, in the plan's own note, and not again at each part. */
const TOLD_ONCE: readonly string[] = ["typical-value-not-measured" satisfies DefectName];

/** Returns what is to be told of a part of a machine, out of what its family has to say. */
export function toldOfPart(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  return diagnostics.filter(({ name }) => !TOLD_ONCE.includes(name));
}

/**
 * Returns whether two parts come out of the printer alike: what shapes them is the same, whatever loads they were held
 * against. Parts of which one must not be printed are alike when all their parameters are.
 */
export function printsAlike(one: PlacedPart, other: PlacedPart, printer: PrinterOf): boolean {
  if (one.family !== other.family) return false;
  if (JSON.stringify(one.parameters) === JSON.stringify(other.parameters)) return true;
  const [before, after] = [drawn(one, printer), drawn(other, printer)];
  return before !== undefined && before === after;
}

/** The bodies of a part and its material as text; undefined when an error forbids them. */
function drawn(part: PlacedPart, printer: PrinterOf): string | undefined {
  const designed = designOf(part, printer).map(({ design }) => ({
    material: design.material,
    pieces: design.pieces(),
  }));
  if (designed.every(({ pieces }) => pieces.length === 0)) return undefined;
  return JSON.stringify(designed.map(({ material, pieces }) => [material, shapeOf(pieces)]));
}

/**
 * Returns what the family's own checks find wrong with a part, each at the place of the plan that it comes from; what
 * the plan accepts of it as a warning.
 */
export function findingsOf({ part, design }: DesignedPart, plan: Plan): readonly Diagnostic[] {
  const checks = FAMILIES.find(({ name }) => name === part.family)?.checks ?? [];
  const judged = applyAcceptance(design.diagnostics, acceptedOf(plan, part.name), { checks });
  // A plate that is colder than the air round it is told once, of the plate.
  const cold = plan.plate.temperature < plan.plate.ambient;
  const own = toldOfPart(judged).filter(({ name }) => !(cold && name === "plate-colder-than-air"));
  return own.map((each) => ({
    ...each,
    path: placeIn(part, each.path),
    says: `${part.name}: ${each.says}`,
    set: partWords(part, each.set),
  }));
}

/** Returns where in the plan a parameter of a part stands: its own place, else the place of the part itself. */
export function placeIn({ path, places = {} }: Pick<PlacedPart, "path" | "places">, inPart: Path): Path {
  const [name, ...deeper] = inPart;
  const place = name === undefined ? undefined : places[name];
  if (place === undefined) return path;
  return place.at(-1) === name ? [...place, ...deeper] : place;
}
