import { bounded } from "./bounded.ts";

/** Travel that a slide needs so that the loop goes on, comes tight, and still fits when it is off size. */
export const requiredSlide = bounded({
  name: "required-slide",
  title: "Slide a belt needs",
  inputs: {
    slack: { symbol: "s_i", unit: "mm", meaning: "slack to pass a flange; 2, 3, 5 for belts of 2, 3, 5 mm pitch" },
    length: { symbol: "L", unit: "mm", meaning: "belt length" },
    stretch: { symbol: "c", unit: "%", meaning: "take-up by tension; 0.1 to 0.3" },
    tolerance: { symbol: "t", unit: "mm", meaning: "tolerance of the belt's length to either side" },
    frame: { symbol: "t_f", unit: "mm", meaning: "error of the frame to either side" },
    sensitivity: { symbol: "q", unit: "", meaning: "change of belt length per mm of slide" },
  },
  results: {
    inward: { symbol: "s_in", unit: "mm", meaning: "slide that slackens the belt, from the nominal place" },
    outward: { symbol: "s_out", unit: "mm", meaning: "slide that tightens the belt, from the nominal place" },
    total: { symbol: "s", unit: "mm", meaning: "slide in all" },
  },
  formulas: {
    inward: "s_i + t / abs(q) + t_f",
    outward: "L * c / 100 / abs(q) + t / abs(q) + t_f",
    total: "s_in + s_out",
  },
  source: "belt-makers: drive design manuals",
  valid: "a slide that changes the length by at least 0.2 mm per mm; one that hardly does is refused",
  examples: [
    {
      given: { slack: 2, length: 680, stretch: 0.2, tolerance: 0.5, frame: 1, sensitivity: 2 },
      gives: { inward: 3.25, outward: 1.93, total: 5.18 },
      within: 1e-9,
      source: "belt-makers: own arithmetic",
    },
  ],
  limits: {
    slack: { from: 0 },
    length: { above: 0 },
    stretch: { from: 0, to: 5 },
    tolerance: { from: 0 },
    frame: { from: 0 },
  },
  compute: ({ slack, length, stretch, tolerance, frame, sensitivity }) => {
    const per = Math.abs(sensitivity);
    if (per < 0.2) return { refused: "the slide hardly changes the belt's length: turn its direction" };
    const inward = slack + tolerance / per + frame;
    const outward = (length * stretch) / 100 / per + tolerance / per + frame;
    return { inward, outward, total: inward + outward };
  },
});
