import type { DefectName } from "../core/defects.ts";
import type { Level } from "../core/diagnostic.ts";

/** Files that bring a defect about: test, example and demonstration in one. */
export interface FileExample {
  readonly level: Level;
  /** The texts by their names; the first is the one that is made, with others of its kind in the same run. */
  readonly files: Readonly<Record<string, string>>;
  /** What is told, where only a run that builds, or has several files, shows it. */
  readonly built?: string;
}

const SPACER = "format: 1\npart: wheel-spacer\n";
const PRINTER = "format: 1\nprinter: example\nsettings:\n";
const CALIBRATED = { "printer.yaml": `${PRINTER}  layer: 0.2\n` };
const PRINTED = "printer: printer.yaml\n";

/** How each defect of files comes about, and those of a finished mesh that a file brings about. */
export const FILE_EXAMPLES = {
  "preset-does-not-resolve": [
    {
      level: "error",
      files: { "spacer.yaml": `${SPACER}${PRINTED}parameters:\n  outsied: 10\n`, ...CALIBRATED },
    },
    { level: "error", files: { "spacer.yaml": `${SPACER}${PRINTED}parameters:\n  length: 2 N/mm\n`, ...CALIBRATED } },
    { level: "error", files: { "spacer.yaml": `${SPACER}part: screw-foot\n` } },
  ],
  "printer-setting-out-of-range": [
    { level: "error", files: { "printer.yaml": `${PRINTER}  layer: 0.2\n  wallLines: 1\n` } },
  ],
  "printer-not-calibrated": [{ level: "warning", files: { "spacer.yaml": SPACER } }],
  "preset-of-older-format": [
    {
      level: "note",
      files: {
        "plate.yaml": `format: 0\npart: wheel-plate\n${PRINTED}parameters:\n  wheelCount: 4\n`,
        ...CALIBRATED,
      },
    },
  ],
  "typical-value-not-measured": [
    { level: "note", files: { "mount.yaml": `format: 1\npart: tram-mount\n${PRINTED}`, ...CALIBRATED } },
  ],
  "file-name-taken-twice": [
    {
      level: "error",
      files: {
        "left.yaml": `${SPACER}name: spacer\n${PRINTED}`,
        "right.yaml": `${SPACER}name: spacer\n${PRINTED}parameters:\n  length: 8\n`,
        ...CALIBRATED,
      },
      built: "right.yaml writes spacer.stl as well",
    },
  ],
  "mesh-not-sound": [
    {
      level: "error",
      files: {
        "plate.yaml": `format: 1\npart: wheel-plate\n${PRINTED}`,
        "printer.yaml": `${PRINTER}  bedX: 60\n`,
      },
      built: "the part takes 63.7 x 144.0 x 8.0 mm of a bed of 60 x 220 x 250",
    },
  ],
} as const satisfies Readonly<Partial<Record<DefectName, readonly FileExample[]>>>;
