import { bounded } from "./bounded.ts";

/** Force that the outermost wheel row takes of a tilting moment; rows at `y` share it in proportion to `y`. */
export const rowForce = bounded({
  name: "row-force",
  title: "Force on the outermost wheel row",
  inputs: {
    moment: { symbol: "M", unit: "N·mm", meaning: "tilting moment on the carriage" },
    outermost: { symbol: "y_max", unit: "mm", meaning: "distance of the outermost row from the middle" },
    squares: { symbol: "S_yy", unit: "mm2", meaning: "sum of the squared row distances" },
    faces: { symbol: "faces", unit: "", meaning: "plates that share the moment, 1 or 2" },
  },
  results: { force: { symbol: "F", unit: "N", meaning: "force on the outermost row" } },
  formulas: { force: "M * y_max / (faces * S_yy)" },
  source: "statics",
  valid: "rigid plate and bar, linear contact, rows symmetric about the middle",
  examples: [
    {
      given: { moment: 6000, outermost: 60, squares: 8000, faces: 1 },
      gives: { force: 45 },
      within: 1e-9,
      source: "statics: own arithmetic",
    },
  ],
  limits: {
    moment: { from: 0 },
    outermost: { above: 0 },
    squares: { above: 0 },
    faces: { from: 1, to: 2, whole: true },
  },
  compute: ({ moment, outermost, squares, faces }) => {
    if (squares < outermost ** 2)
      return { refused: "S_yy is below y_max squared, so the outermost row is missing in it" };
    return { force: (moment * outermost) / (faces * squares) };
  },
});
