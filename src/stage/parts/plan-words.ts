import { FAMILIES } from "../../parts/index.ts";
import type { PlacedPart } from "../machine.ts";

/** Parameters of parts that a plan has no key for, and what is to be set for them, by family. */
const KEYS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "screw-foot": {
    beltPlane: "motor.plateTop",
    "a larger axisOffset, or leave it out": "at: of the screw, farther from its bar",
  },
};

/** Returns what a part of a family asks to be set in the words of a plan: `motor.plateTop` for a foot's `beltPlane`. */
export function planWords(family: string, set: string): string {
  return Object.entries(KEYS[family] ?? {}).reduce((words, [own, key]) => words.replaceAll(own, key), set);
}

/** The block of a plan in which parameters of all parts of a family stand. */
const BLOCKS: Readonly<Record<string, string>> = {
  "screw-foot": "foot",
  "tram-mount": "mount",
  "wheel-plate": "carriage",
};
/** A map, in which keys are not the part's, or a key that stands by itself. */
const MAP_OR_KEY = /\{[^{}]*\}|(?<![\w.-])([A-Za-z]\w*)(?=: )/g;

/** Puts in front of each parameter where it is typed: `mount.thickness: 11`. What the plan derives has no such place. */
function withBlocks({ family, derived, places = {} }: PlacedPart, set: string): string {
  const shape = FAMILIES.find(({ name }) => name === family)?.schema.shape ?? {};
  return set.replace(MAP_OR_KEY, (words, key?: string) => {
    if (key === undefined || !Object.hasOwn(shape, key) || derived.includes(key)) return words;
    return (places[key] ?? [BLOCKS[family] ?? family, key]).join(".");
  });
}

/**
 * Returns the same for a part of a machine. A foot whose rings were chosen for want of height is to keep them where its
 * plane is raised: the usual ring would fit again, and take up what was gained.
 */
export function partWords(part: PlacedPart, set: string): string {
  const { family, derived, path, parameters } = part;
  const { washers } = parameters;
  const words = withBlocks(part, planWords(family, set));
  if (!derived.includes("washers") || !Array.isArray(washers)) return words;
  const rings = washers.map(({ key }: { readonly key: string }) => key).join(", ");
  return words.replace(/motor\.plateTop: [\d.]+ mm higher/, `$& and ${path.join(".")}.foot.washers: [${rings}]`);
}
