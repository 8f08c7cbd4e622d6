import { bounded } from "./bounded.ts";

/** Pitch and root diameter, and lead, of a metric trapezoidal screw. */
export const trapezoidalThread = bounded({
  name: "trapezoidal-thread",
  title: "Diameters and lead of a trapezoidal screw",
  inputs: {
    diameter: { symbol: "d", unit: "mm", meaning: "outside diameter" },
    pitch: { symbol: "p", unit: "mm", meaning: "pitch" },
    starts: { symbol: "n", unit: "", meaning: "starts" },
  },
  results: {
    clearance: { symbol: "a_c", unit: "mm", meaning: "crest clearance" },
    pitchDiameter: { symbol: "d_2", unit: "mm", meaning: "pitch diameter" },
    root: { symbol: "d_3", unit: "mm", meaning: "root diameter of the screw" },
    nutMinor: { symbol: "D_1", unit: "mm", meaning: "inside diameter of the nut" },
    nutMajor: { symbol: "D_4", unit: "mm", meaning: "root diameter of the nut" },
    lead: { symbol: "l", unit: "mm", meaning: "lead" },
  },
  formulas: {
    clearance: '"0.15 for a pitch of 1.5 mm, 0.25 for 2 to 5 mm, 0.5 for 6 to 12 mm"',
    pitchDiameter: "d - p / 2",
    root: "d - p - 2 * a_c",
    nutMinor: "d - p",
    nutMajor: "d + 2 * a_c",
    lead: "n * p",
  },
  source: "iso-2904",
  valid: "pitch 1.5 to 12 mm; other pitches and threads without a core are refused",
  differs: ["a handbook site garbles Tr9x2 and Tr10x1.5; the formulas of ISO 2904 are used"],
  examples: [
    {
      given: { diameter: 8, pitch: 1.5, starts: 1 },
      gives: { pitchDiameter: 7.25, root: 6.2, nutMinor: 6.5, nutMajor: 8.3 },
      within: 1e-9,
      source: "iso-2904: Tr8x1.5",
    },
    {
      given: { diameter: 10, pitch: 2, starts: 1 },
      gives: { pitchDiameter: 9, root: 7.5 },
      within: 1e-9,
      source: "iso-2904: Tr10x2",
    },
    {
      given: { diameter: 12, pitch: 3, starts: 1 },
      gives: { pitchDiameter: 10.5, root: 8.5 },
      within: 1e-9,
      source: "iso-2904: Tr12x3",
    },
    {
      given: { diameter: 28, pitch: 5, starts: 1 },
      gives: { pitchDiameter: 25.5, root: 22.5 },
      within: 1e-9,
      source: "iso-2904: Tr28x5, from memory",
    },
    {
      given: { diameter: 30, pitch: 6, starts: 2 },
      gives: { pitchDiameter: 27, root: 23, lead: 12 },
      within: 1e-9,
      source: "iso-2904: Tr30x6, from memory",
    },
  ],
  limits: { diameter: { above: 0 }, pitch: { from: 1.5, to: 12 }, starts: { from: 1, to: 16, whole: true } },
  compute: ({ diameter, pitch, starts }) => {
    const clearance = pitch < 2 ? 0.15 : pitch <= 5 ? 0.25 : 0.5;
    const root = diameter - pitch - 2 * clearance;
    if (root <= 0) return { refused: "the pitch leaves the screw no core" };
    const nut = { nutMinor: diameter - pitch, nutMajor: diameter + 2 * clearance };
    return { clearance, pitchDiameter: diameter - pitch / 2, root, ...nut, lead: starts * pitch };
  },
});
