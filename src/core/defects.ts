import type { Diagnostic } from "./diagnostic.ts";

/** A defect that no family of parts names: what it is, what happens if nothing is done, and the way out. */
export interface Defect {
  readonly what: string;
  readonly why: string;
  readonly set: string;
  /** Whether `accept:` in a preset may lift it. */
  readonly excusable: boolean;
  /** What tells more: a command. */
  readonly more?: string;
}

/** Every defect that is found elsewhere than by a check of a family: in files, on finished meshes. */
export const DEFECTS = {
  "preset-does-not-resolve": {
    what: "a preset or printer file cannot be read, or a key, word, unit or row in it is not known here",
    why: "a preset that does not say what it means would make a part that does not fit",
    set: "what the message names, at the line and column it names",
    excusable: false,
    more: "tramwright parts <family>",
  },
  "printer-setting-out-of-range": {
    what: "a setting in a printer's file is outside its range, or contradicts another, as a line width its nozzle",
    why: "every hole and wall of every part follows these numbers",
    set: "the setting as measured, within the range",
    excusable: false,
    more: "tramwright explain printer",
  },
  "printer-not-calibrated": {
    what: "no printer's file was named, so usual values stand in for what your printer does",
    why: "printers differ by some tenths of a millimetre in hole size, which is a bearing that drops through or sticks",
    set: "printer: <file of your printer> in the preset, or --printer <file>, filled in from a printed test piece",
    excusable: false,
    more: "tramwright explain printer",
  },
  "preset-of-older-format": {
    what: "a preset was written for an older version of the format, and is read as one of today's",
    why: "some keys have other names now; what is not known by its old name either is told by itself",
    set: "format: as it is today, with the keys as they are called now",
    excusable: false,
    more: "tramwright parts <family>",
  },
  "typical-value-not-measured": {
    what: "bought items are taken at the sizes usually sold, and nobody has said they were measured",
    why: "makers differ by some tenths of a millimetre, and the print follows the number",
    set: 'the item as measured, such as bearing: { row: "608", width: 6.98, measured: true }',
    excusable: false,
    more: "tramwright stock <table> <row>",
  },
  "file-name-taken-twice": {
    what: "two bodies of one run would be written to the same file",
    why: "the one written last would replace the other without a word",
    set: "name: another one, in one of the two presets",
    excusable: false,
  },
  "mesh-not-sound": {
    what: "the finished mesh is not the closed surface of one body that stands on the bed and fits it",
    why: "a slicer has to guess where the material is, and guesses differ; what is not joined to the part falls off",
    set: "sizes that let the features of the part overlap, or a larger bed; else change a length by 0.1 mm and report it",
    excusable: false,
  },
  "wall-too-thin": {
    what: "two opposite faces of the finished mesh are nearer than the part's wall may be thin",
    why: "it prints with gaps or splits along the layers, and carries nothing",
    set: "sizes that leave more material at the place that the message names",
    excusable: true,
  },
  "overhang-needs-support": {
    what: "a face of the finished mesh begins in mid-air, ends on a ledge, or is a longer bridge than the printer spans",
    why: "lines that are laid on nothing fall or sag, and supports spoil the face they carry",
    set: "a narrower opening, a slope of 45 degrees under it, or the printer's bridgeLimit as tried out",
    excusable: true,
  },
  "part-in-keep-out": {
    what: "plastic stands where a bolt, nut, pulley, belt, wheel or key must be or move",
    why: "the hardware would not go in, or would rub",
    set: "the parameters that place the hardware, or the wall beside it",
    excusable: true,
  },
  "contact-face-missing": {
    what: "a face that must bear on a bearing, bar or washer is there only in part",
    why: "the load goes through this face; less of it means more pressure and a part that tips",
    set: "the parameters that cut into this face",
    excusable: true,
  },
} as const satisfies Readonly<Record<string, Defect>>;

/** The name of a defect that is not a family's own; one without an entry above does not compile. */
export type DefectName = keyof typeof DEFECTS;

/** Returns a case of such a defect; it matters for the reason that is told of the defect, or more closely for `why`. */
export function defect(
  name: DefectName,
  { why = DEFECTS[name].why, ...found }: Omit<Diagnostic, "name" | "why"> & Partial<Pick<Diagnostic, "why">>,
): Diagnostic {
  return { name, why, ...found };
}
