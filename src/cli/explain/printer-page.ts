import { HOW_TO_MEASURE, TEST_PIECE_SKETCH, TEST_PIECE_STEPS } from "../../printing/calibration.ts";
import { hanging } from "./hanging.ts";
import type { Page } from "./page.ts";
import { parameterLines } from "./parameter-lines.ts";
import { PRINTER, printerFields } from "./parameter-page.ts";

const FILE = ["    format: 1", "    printer: <its name>", "    settings:", "      holeShrinkVertical: 0.18"];

/** Returns the page that tells how a printer's file is filled in: every setting, and the test piece to measure. */
export function printerPage(): Page {
  const fields = printerFields();
  return {
    name: PRINTER,
    title: `${PRINTER}: the file of a printer's settings`,
    lines: [
      ...hanging(
        "",
        "A file of your own, one for each printer, nozzle and material; what is left out takes its default:",
      ),
      ...FILE,
      ...hanging("", "A preset takes it with printer: <file>, every command with --printer <file>."),
      "",
      ...parameterLines(fields),
      "",
      "The test piece",
      ...TEST_PIECE_SKETCH.replace(/\s+$/, "").split("\n"),
      "",
      ...TEST_PIECE_STEPS.flatMap((step, index) => hanging(`  ${index + 1}  `, step)),
    ],
    data: {
      kind: "printer",
      settings: fields.map(({ usual, ...field }) => ({ ...field, default: usual })),
      testPiece: { sketch: TEST_PIECE_SKETCH, steps: TEST_PIECE_STEPS, howToMeasure: HOW_TO_MEASURE },
    },
  };
}
