import type { Printer } from "./printer.ts";

const SLICER = "read it off the profile in the slicer that prints the parts";
const BED = "the printable room, from the printer's profile";
const TORQUE = "what your torque screwdriver is set to for such bolts in printed parts; without one leave the default";

/**
 * How each setting of a printer is found, on the test piece or elsewhere. Source: common practice. `drawn` and
 * `measured` are in mm.
 */
export const HOW_TO_MEASURE: Readonly<Record<keyof Printer, string>> = {
  nozzle: "the number stamped on the nozzle",
  line: SLICER,
  layer: SLICER,
  firstLayer: SLICER,
  wallLines: SLICER,
  coverLayers: SLICER,
  infill: SLICER,
  holeShrinkVertical:
    "upright holes of the test piece, 10 and 22: across and along, mean of measured - drawn; write it with the sign turned: 9.80 - 10.00 = -0.20 gives 0.20",
  holeShrinkHorizontal:
    "level hole of the test piece, its width at both ends: mean of measured - drawn; write it with the sign turned: 7.72 - 8.00 = -0.28 gives 0.28",
  outerGrowth:
    "pins of the test piece, 10 and 20, above their foot: mean of measured - drawn, halved: 10.12 - 10.00 = 0.12 gives 0.06; a pin too thin gives a value below 0",
  firstLayerSpread:
    "width of the test piece at its lowest edge less its width 5 mm higher, halved: 60.55 - 60.05 = 0.50 gives 0.25",
  bridgeComfort: "bridges of 5, 10, 15, 20 and 30 mm between two blocks: the longest with a level underside",
  bridgeLimit: "the same bridges: the longest that holds, however rough",
  overhang: "a fan of walls leaning 30, 35 ... 60 degrees from upright: the steepest with a clean underside",
  materialShrink:
    "a bar drawn 150 long across the bed, cold: (drawn - measured + 2 x outerGrowth) / drawn x 100; leave 0 where it is under 0.1",
  bedX: BED,
  bedY: BED,
  bedZ: BED,
  torqueM3: TORQUE,
  torqueM4: TORQUE,
  torqueM5: TORQUE,
  torqueM6: TORQUE,
  torqueM8: TORQUE,
};

/** A drawing of the test piece, at most 78 columns. */
export const TEST_PIECE_SKETCH = `
      from above: a plate 60 x 50 x 12             from its end
      +--------------------------------+                   +-----+
      |        +--+          +----+    |                   | pin |   8
      | - - - -|10|- - - - - | 20 |- - |  level   +--------+-----+---+
      | - - - -|  |- - - - - |    |- - |  hole 8  |                  |
      |        +--+          +----+    |  its     |         (8)      |  12
      |                                |  axis 6  |                  |
      |      (10)            (22)      |  up      +------------------+
      |                                |
      +--------------------------------+  upright holes 10 and 22, pins 10 and 20 round
`;

/** What to do with the test piece, in order. */
export const TEST_PIECE_STEPS: readonly string[] = [
  "Draw it true to size in any drawing program: two upright holes right through, two pins 8 mm high on top, one level hole of 8 mm right through the plate.",
  "Print it flat, in the material and with the profile of the parts, the slicer's own corrections of size at 0.",
  "Let it cool. Measure with calipers, each size at least three times, and take the mean; clean burrs off first. Small holes read small between caliper jaws: drill shanks of known size are better.",
  "Write measured minus drawn as told at each setting. With a materialShrink above 0, drawn x (1 - materialShrink / 100) stands for drawn.",
  "Print it again with other settings of the printer and measure again: the file holds for one printer, nozzle, material and profile.",
];
