import { HOW_TO_MEASURE, TEST_PIECE_SKETCH, TEST_PIECE_STEPS } from "../../printing/calibration.ts";
import type { Printer } from "../../printing/printer.ts";
import { printerFields } from "../explain/parameter-page.ts";
import { presetValue } from "../explain/preset-value.ts";
import { comment } from "./comment.ts";
import { HEADING_OPTIONAL, modeline } from "./heading.ts";
import { keyLines } from "./key-lines.ts";
import type { Place } from "./part-text.ts";

/** What is read off the slicer and measured on the test piece for every printer, in that order. */
export const PRINTER_FIRST: readonly (keyof Printer)[] = [
  "nozzle",
  "line",
  "layer",
  "firstLayer",
  "wallLines",
  "infill",
  "bedX",
  "bedY",
  "bedZ",
  "holeShrinkVertical",
  "holeShrinkHorizontal",
  "outerGrowth",
  "firstLayerSpread",
];

/** Returns the file of a printer to fill in. */
export function printerText(chosen: Readonly<Record<string, unknown>>, { name, file, schema }: Place): string {
  const fields = printerFields();
  const isFirst = (key: string) => (PRINTER_FIRST as string[]).includes(key) || key in chosen;
  const linesOf = (set: boolean) => (field: (typeof fields)[number]) => {
    const value = chosen[field.key] ?? field.usual;
    return ["", ...keyLines("  ", { field, value, how: HOW_TO_MEASURE[field.key as keyof Printer], set })];
  };
  const ahead = [...PRINTER_FIRST, ...Object.keys(chosen).filter((key) => !(PRINTER_FIRST as string[]).includes(key))];
  return [
    modeline(schema),
    "# A printer: one file for each printer, nozzle and material.",
    ...comment("", "", "Nothing here has been measured yet: the values are usual ones for a 0.4 mm nozzle."),
    ...comment("", "", "The first nine are read off the slicer; print the test piece for the four below them."),
    ...TEST_PIECE_SKETCH.trimEnd()
      .split("\n")
      .map((line) => `# ${line}`.trimEnd()),
    "#",
    ...TEST_PIECE_STEPS.flatMap((step, index) => comment("", `${index + 1}  `, step)),
    "#",
    ...comment("", "", `A preset takes this file with printer: ${file}, every command with --printer ${file}.`),
    "",
    "format: 1",
    `printer: ${presetValue(name)}`,
    "",
    "settings:",
    "  # ---- Read off and measured for every printer",
    ...ahead.flatMap((key) => fields.filter((field) => field.key === key)).flatMap(linesOf(true)),
    "",
    ...comment("  ", "", HEADING_OPTIONAL),
    ...fields.filter(({ key }) => !isFirst(key)).flatMap(linesOf(false)),
    "",
  ].join("\n");
}
