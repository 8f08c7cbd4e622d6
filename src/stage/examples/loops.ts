import type { LOOP_DEFECTS } from "../loops/defects.ts";
import { onBelt, onStage, type StageExample } from "./example.ts";

/** An idler that the belt's back runs on, put where the upper span passes, and the loop led round it. */
const rub = (at: string, idler = "two F625", side = "outside") => [
  `idlers={ rub: { at: ${at}, idler: ${idler}, side: ${side} } }`,
  "loops.one.nodes=[motor, A, rub]",
];

const SMOOTH_18 = '{ row: "smooth, bore 5", runDiameter: 18, flangeDiameter: 20 }';

/** Two more screws instead of one, so near one another as the motor's pulley sees them that little of it is wrapped. */
const THREE = [
  "motor.pulleys=[{ loop: one, pulley: 20 teeth 2 mm }]",
  "bars.beam={ bar: 30x30 slot 8, from: [-300, 177, -15], to: [400, 177, -15] }",
  "screws={ B: { at: [250, 130], length: 300, top: free, bar: beam, foot: { pulley: 40 teeth 2 mm } }, " +
    "C: { at: [-150, 130], length: 300, top: free, bar: beam, foot: { pulley: 40 teeth 2 mm } } }",
];

/** Both pulleys of the motor so thin that the belts lie this near one another. */
const thin = (toothWidth: number, flange: number) => {
  const height = Math.round((7 + toothWidth + 2 * flange) * 100) / 100;
  const pulley = `{ row: 20 teeth 2 mm, toothWidth: ${toothWidth}, flangeThickness: ${flange}, height: ${height} }`;
  return `motor.pulleys=[{ loop: low, pulley: ${pulley}, hub: down }, { loop: high, pulley: ${pulley}, hub: up, gap: 0 }]`;
};

/** The screw 1000 mm off, for which a loop of 2080 mm can be bought. */
const LONG = [
  "screws.A.at=[1000, 0]",
  "loops.one.stock=[2080]",
  "loops.one.slide={ direction: 180, from: -15, to: 15 }",
];

/** How each defect of the belts comes about. */
export const LOOP_EXAMPLES = {
  "loop-tangled-or-not-touching": [onBelt("error", ...rub("[150, 200]"))],
  "no-stock-loop-within-slide": [
    onBelt("error", "screws.A.at=[207, 0]"),
    onBelt("warning", "loops.one.stock=[680]", "loops.one.slide={ direction: 180, from: -4, to: 30 }"),
  ],
  "loop-tolerance-not-known": [onBelt("error", ...LONG)],
  "stock-loops-not-listed": [onBelt("note", "loops.one.belt=MXL")],
  "slide-disturbs-other-loop": [
    onStage(
      "error",
      "loops.low={ nodes: [motor, A, B], slide: { node: motor, direction: 90, from: -8, to: 8 } }",
      "idlers={}",
    ),
    onStage("warning", "loops.low={ nodes: [motor, A, B], stock: [1340] }", "idlers={}"),
  ],
  "slide-moves-a-screw": [onBelt("error", "loops.one.slide={ node: A, direction: 0 }")],
  "pulley-of-another-pitch": [onBelt("error", "loops.one.belt=MXL")],
  "too-few-teeth-in-mesh": [
    onBelt("error", ...THREE, "loops.one.nodes=[motor, B, C]"),
    onBelt(
      "warning",
      ...THREE,
      `idlers={ rub: { at: [60, 30], idler: ${SMOOTH_18}, side: outside } }`,
      "loops.one.nodes=[motor, B, C, rub]",
    ),
  ],
  "toothed-idler-barely-meshes": [onBelt("warning", ...rub("[150, 14.4]", '"20 teeth, bore 5"', "inside"))],
  "smooth-idler-on-teeth": [onBelt("warning", ...rub("[150, 12]", "two F625", "inside"))],
  "idler-wrap-out-of-range": [onBelt("warning", ...rub("[150, 19.1]"))],
  "idler-flanges-pinch-belt": [onBelt("error", ...rub("[150, 12]", "{ row: two F625, runWidth: 6.4 }"))],
  "idler-off-belt-plane": [
    onStage("error", "idlers.press.bottom=16.4"),
    onStage("warning", "idlers.press.bottom=18.2"),
  ],
  "idler-axle-too-short": [onStage("error", "idlers.press.axle=15.6"), onStage("warning", "idlers.press.axle=17.2")],
  "belt-bent-too-tight": [
    onBelt("error", ...rub("[150, 12]", '"smooth, bore 5"')),
    onBelt("warning", ...rub("[150, 12]", "{ row: two F625, runDiameter: 15 }")),
  ],
  "belt-overloaded": [onBelt("error", "loops.one.tension=30"), onBelt("warning", "loops.one.tension=22")],
  "motor-shaft-overloaded": [
    onBelt("error", "motor.motor={ row: NEMA 17, shaftLength: 60 }", "motor.plate=28"),
    onBelt("warning", "motor.motor={ row: NEMA 17, shaftLength: 60 }", "motor.plate=18"),
  ],
  "belts-too-close": [onStage("error", thin(6.1, 0.3)), onStage("warning", thin(6.3, 0.5))],
  "belt-too-near-foreign-flange": [onStage("error", thin(6.1, 0.3)), onStage("warning", thin(6.3, 0.5))],
  "belt-too-near-upright": [
    onBelt("error", "screws.X={ at: [150, 14], length: 300, top: free, bar: rail, foot: { pulley: 40 teeth 2 mm } }"),
    onBelt(
      "warning",
      "screws.X={ at: [150, 18.6], length: 300, top: free, bar: rail, foot: { pulley: 40 teeth 2 mm } }",
    ),
  ],
  "belt-too-near-bar": [
    onBelt("error", "bars.post={ bar: 30x30 slot 8, from: [150, 29.2, 0], to: [150, 29.2, 300] }"),
    onBelt("warning", "bars.post={ bar: 30x30 slot 8, from: [150, 30.2, 0], to: [150, 30.2, 300] }"),
  ],
  "spans-of-loop-too-close": [
    onBelt("error", ...rub("[150, -3]"), "loops.one.inOrder=true"),
    onBelt("warning", ...rub("[150, -0.1]"), "loops.one.inOrder=true"),
  ],
  "pulley-bodies-collide": [
    onBelt("error", "motor.pulleys.0.pulley=20 teeth 2 mm", "screws.A.at=[22.5, 0]"),
    onBelt("warning", "motor.pulleys.0.pulley=20 teeth 2 mm", "screws.A.at=[23.5, 0]"),
  ],
  "loop-must-go-on-first": [onStage("note")],
} as const satisfies Readonly<Record<keyof typeof LOOP_DEFECTS, readonly StageExample[]>>;
