import type { StageDefect } from "../stage-defects.ts";
import { CARGO_EXAMPLES } from "./cargo.ts";
import { onceBuilt, onStage, type StageExample } from "./example.ts";
import { LOOP_EXAMPLES } from "./loops.ts";

export { BRINGS } from "./brings.ts";
export type { StageExample } from "./example.ts";
export { EXAMPLE_PLANS } from "./plans.ts";

/** How each defect of a machine comes about: what trips it, by its name. */
export const STAGE_EXAMPLES = {
  "bodies-clash": [
    onceBuilt(
      "error",
      "bar arm-front and bar beam stand in one another at the middle of the travel: 7.00 mm deep at x 380.0, y 84.5, " +
        "z 225.0, a box of 20.00 x 7.00 x 20.00 mm, 2800 mm3",
      "bars.pole={ bar: 20x20 slot 6, from: [380, 15, 0], to: [380, 15, 235] }",
      "bars.beam={ bar: 20x20 slot 6, from: [380, 25, 225], to: [380, 88, 225] }",
    ),
  ],
  "belt-too-near-bracket": [
    onceBuilt(
      "error",
      "foot-b and belt low leave 0.90 mm of air between them, under 1 mm",
      "motor.at=[700, 87]",
      "motor.torque=0.1 N m",
      "screws.B.foot.thrust=pulley",
      "loops.low={ nodes: [motor, A], slide: { direction: 0 }, tension: 6.5 N, stock: [1158] }",
      "loops.high.nodes=[motor, B, C, press]",
      "loops.high.slide={ node: press, direction: 45, from: -20, to: 20 }",
      "loops.high.tension=6.5 N",
      "loops.high.stock=[1174]",
      "idlers.press.at=[560, 248]",
    ),
  ],
  "stage-meets-foot": [
    onceBuilt(
      "error",
      "bar low and pulley of screw A leave 2.00 mm of air between them, under 3 mm",
      "bars.low={ bar: 20x20 slot 6, from: [157, 62, 39], to: [300, 62, 39], moves: true }",
      "bars.leg={ bar: 20x20 slot 6, from: [290, 82, 35], to: [290, 82, 100], moves: true }",
    ),
  ],
  "frame-bars-overlap": [onStage("error", "bars.left.from=[15, 29.9, -15]")],
  "bar-joins-no-other": [
    onStage("warning", "bars.arm-back.from=[75.5, 464, 115]", "bars.arm-back.to=[684.5, 464, 115]"),
  ],
  "screw-axis-inside-bar": [onStage("error", "screws.A.at=[150, 22]")],
  "loop-without-motor-pulley": [onStage("error", "motor.pulleys=[{ loop: low, pulley: 20 teeth 2 mm, hub: down }]")],
  "loop-with-two-motor-pulleys": [onStage("error", "motor.pulleys.1.loop=low")],
  "motor-pulleys-overlap": [onStage("error", "motor.pulleys.0.hub=up", "motor.pulleys.1.commonFlange=true")],
  "motor-pulley-bore-off-shaft": [onStage("error", "motor.pulleys.0.pulley={ row: 20 teeth 2 mm, bore: 5.2 }")],
  "motor-shaft-too-short": [onStage("error", "motor.motor=NEMA 17")],
  "hardware-data-disagrees": [onStage("error", "motor.pulleys.0.pulley={ row: 20 teeth 2 mm, height: 15.6 }")],
  "belt-plane-below-lowest-seat": [onStage("error", "motor.plateTop=-60")],
  "foot-stack-does-not-fit": [onStage("error", "travel.lowest=30")],
  "belt-planes-apart-in-loop": [
    onStage(
      "warning",
      "foot={ thrust: pulley, pulley: 40 teeth 2 mm, material: PETG }",
      "motor.plateTop=11.5",
      "screws.A.at=[150, 15]",
      "screws.A.foot={ mount: on-top }",
      "loops.low.width=6.7",
      "loops.low.stock=[1370, 1400]",
    ),
  ],
  ...LOOP_EXAMPLES,
  ...CARGO_EXAMPLES,
} as const satisfies Readonly<Record<StageDefect, readonly StageExample[]>>;
