import type { Path } from "../../core/diagnostic.ts";
import type { Plan } from "../schema/index.ts";

/** What of a plan's file could not be read, by its paths: what the plan has there, if anything, was not typed so. */
export type Unread = readonly Path[];

/** Returns whether anything in one of these keys of the plan could not be read. */
export function isTouched(unread: Unread, ...keys: readonly (keyof Plan)[]): boolean {
  return unread.some(([key]) => keys.some((one) => one === key));
}

/** Returns whether anything at or below one of these places could not be read, or a block that holds one. */
export function isTouchedAt(unread: Unread, ...places: readonly Path[]): boolean {
  const meets = (one: Path, other: Path) => one.slice(0, other.length).every((step, at) => step === other[at]);
  return unread.some((path) => places.some((place) => meets(path, place)));
}

/** Returns the names in a block of things that stand in the file, of which something could not be read. */
export function touchedNames(unread: Unread, ...block: Path): string[] {
  const inside = unread.filter((path) => path.length > block.length && block.every((step, at) => path[at] === step));
  return [...new Set(inside.map((path) => String(path[block.length])))];
}

/** Returns whether names of a block may be missing in the plan: all of it, or one of two things of the same name. */
export function mayLackNames(plan: Plan, unread: Unread, kind: "bars" | "screws" | "idlers" | "loops"): boolean {
  return unread.some(([key, name, ...deeper]) => {
    if (key !== kind) return false;
    return name === undefined || (deeper.length === 0 && plan[kind][String(name)] !== undefined);
  });
}

/** Returns the paths that are about more than where a screw stands. */
export const besidesPlaces = (unread: Unread): Unread => unread.filter((path) => !isPlace(path));

/** Whether it is not known for certain where all screws stand. */
export const mayMove = (unread: Unread): boolean =>
  unread.some((path) => path[0] === "screws" && (path.length <= 2 || isPlace(path)));

/** Whether a path leads to where a screw stands. */
export const isPlace = ([key, , what]: Path): boolean => key === "screws" && what === "at";
