import type { PlacedPart } from "../machine.ts";

/** Parameters of parts that a plan has no key for, and the key that moves them as far, by family. */
const KEYS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "screw-foot": { beltPlane: "motor.plateTop" },
};

/** Returns what a part of a family asks to be set in the words of a plan: `motor.plateTop` for a foot's `beltPlane`. */
export function planWords(family: string, set: string): string {
  return Object.entries(KEYS[family] ?? {}).reduce((words, [own, key]) => words.replaceAll(own, key), set);
}

/**
 * Returns the same for a part of a machine. A foot whose rings were chosen for want of height is to keep them where its
 * plane is raised: the usual ring would fit again, and take up what was gained.
 */
export function partWords({ family, parameters: { washers }, derived, path }: PlacedPart, set: string): string {
  const words = planWords(family, set);
  if (!derived.includes("washers") || !Array.isArray(washers)) return words;
  const rings = washers.map(({ key }: { readonly key: string }) => key).join(", ");
  return words.replace(/motor\.plateTop: [\d.]+ mm higher/, `$& and ${path.join(".")}.foot.washers: [${rings}]`);
}
