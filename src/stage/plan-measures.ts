/** How the quantities of each block of a plan are measured, and with what. Source: common practice. */
export const PLAN_MEASURES = {
  bars: "tape, from the frame's outer face on the left (x) or in front (y) to the bar's near face, plus half the bar; z: middle of the bar over the top of the level bars (half the bar below it where it lies level with them)",
  screws:
    "at: tape from the frame's outer faces to the screw's flank, plus half the screw; length: end to end; screw: diameter over the crests, and how far the nut moves in one turn",
  travel:
    "stage at the bottom: lowest part of the stage, and middle of the nuts, over the top of the level bars; lift: how far it is to rise",
  motor:
    "at: as of a screw; plateTop: top of that plate over the top of the level bars; motor: calipers, length of the shaft from the motor's face; torque: from its data sheet, at the speed it lifts with",
  loops: "width: calipers; stock: what your shop has, when it is not the usual lengths",
  idlers: "at: as of a screw; idler: the rim the belt runs on",
} as const;
