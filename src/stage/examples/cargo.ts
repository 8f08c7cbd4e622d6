import type { CARGO_DEFECTS } from "../cargo/cargo-defects.ts";
import { onStage, type StageExample } from "./example.ts";

/** How each defect of loads, drive, plate and carriages comes about. */
export const CARGO_EXAMPLES = {
  "stage-corner-lifts-off": [onStage("error", "carriages={}"), onStage("warning")],
  "screw-loads-uneven": [onStage("warning")],
  "screws-nearly-in-line": [
    onStage("error", "screws.C.at=[380, 64]", "screws.C.bar=front"),
    onStage(
      "warning",
      "screws.C.at=[380, 180]",
      "screws.C.bar=beam",
      "bars.beam={ bar: 30x30 slot 8, from: [30, 133, -15], to: [730, 133, -15] }",
    ),
  ],
  "stage-tips-over-its-screws": [
    onStage(
      "error",
      "screws={ A: { at: [150, 62], length: 420, bar: front }, B: { at: [610, 62], length: 420, bar: front } }",
      "loops.high.nodes=[motor, B]",
      "loops.low={ nodes: [motor, A], slide: { direction: 90 } }",
      "idlers={}",
      "carriages={}",
    ),
  ],
  "four-screws-share-by-twist": [
    onStage("warning", "screws.D={ at: [150, 498], length: 420, bar: back }", "loops.high.nodes=[motor, C, D]"),
  ],
  "screws-not-in-step": [onStage("error", "screws.B.screw=Tr8x8(P2)")],
  "drive-not-resolved": [onStage("error", "motor.stepAngle=1.7")],
  "layer-heights-off-full-steps": [onStage("warning", "layers=[0.2, 0.123]")],
  "motor-torque-short": [onStage("error", "motor.torque=0.02 N m"), onStage("warning", "motor.torque=0.06 N m")],
  "motor-torque-beyond-motor": [onStage("warning", "motor.torque=0.7 N m")],
  "motor-turns-too-fast": [onStage("error", "motor.speed=25"), onStage("warning", "motor.speed=12")],
  "stage-runs-down-unpowered": [onStage("warning")],
  "screw-near-buckling": [
    onStage("error", "screws.C.length=1500", "travel.lift=1250"),
    onStage("warning", "screws.C.length=1000", "travel.lift=600"),
  ],
  "screw-buckles-at-stall": [onStage("warning", "motor.torque=0.6 N m")],
  "screw-near-whirl": [
    onStage("error", "screws.A.length=2000", "screws.A.top=free", "motor.speed=20"),
    onStage("warning", "screws.A.length=2000", "screws.A.top=free", "motor.speed=2"),
  ],
  "screw-held-rigid-at-both-ends": [onStage("error", "screws.B.top=held")],
  "screw-thrust-carried-nowhere": [onStage("error", "foot.thrust=hung")],
  "nut-out-of-reach-of-stage": [onStage("warning", "travel.nut=170")],
  "stage-lowest-disagrees": [onStage("warning", "travel.lowest=110"), onStage("note", "travel.lowest=90")],
  "nut-runs-off-screw": [onStage("error", "screws.A.length=340")],
  "plate-on-too-few-mounts": [
    onStage(
      "error",
      "plate.mounts={ one: { at: [200, 130], type: fixed, bar: arm-front }, two: { at: [560, 130], type: slot, bar: arm-front } }",
    ),
  ],
  "plate-tips-off-its-mounts": [onStage("error", "plate.at=[700, 280]")],
  "plate-sinks-on-springs": [onStage("warning")],
  "plate-shifts-on-springs": [onStage("warning", "plate.sheet=8 kg")],
  "mount-too-near-bar": [
    onStage("error", "plate.mounts.one.at=[200, 120]"),
    onStage("warning", "plate.mounts.one.at=[200, 128.8]"),
  ],
  "hole-under-heater": [
    onStage("error", "plate.heater.size=[400, 310]"),
    onStage("warning", "plate.heater.size=[300, 288]", "plate.mounts.one.at=[240, 130]"),
  ],
  "sensor-under-heater": [
    onStage("error", "plate.sensor={ at: [380, 280] }"),
    onStage("warning", "plate.sensor={ at: [380, 395] }"),
  ],
  "sensor-hole-too-deep": [onStage("error", "plate.sensor={ at: [300, 420], depth: 5 }")],
  "hole-near-plate-edge": [onStage("error", "plate.size=[420, 310]"), onStage("warning", "plate.size=[420, 320]")],
  "heater-overhangs-plate": [onStage("error", "plate.heater.size=[430, 220]")],
  "heater-off-centre": [onStage("warning", "plate.heater.at=[384, 280]")],
  "heater-density-out-of-range": [
    onStage("error", "plate.heater.power=1400 W"),
    onStage("warning", "plate.heater.power=800 W"),
  ],
  "plate-cannot-reach-temperature": [
    onStage("error", "plate.heater.power=120 W"),
    onStage("warning", "plate.heater.power=205 W"),
  ],
  "plate-colder-than-air": [onStage("warning", "plate.temperature=12 °C")],
  "stuck-heater-overheats-plate": [onStage("warning")],
  "stage-tip-sags-with-print": [
    onStage("error", "print=10 kg"),
    onStage(
      "warning",
      "print=3 kg",
      "bars.arm-front.bar=20x20 slot 6",
      "plate.mounts.one.at=[260, 130]",
      "plate.mounts.two.at=[500, 130]",
    ),
  ],
  "arm-off-carriage": [onStage("error", "bars.side-left.from=[55, 111, 115]", "bars.side-left.to=[55, 449, 115]")],
  "carriage-runs-off-post": [onStage("error", "bars.post-left.to=[15, 280, 380]")],
  "part-contradicts-plan": [onStage("error", "plate.mounts.two.parameters={ type: free }")],
} as const satisfies Readonly<Record<keyof typeof CARGO_DEFECTS, readonly StageExample[]>>;
