import type { Defect } from "../../core/defects.ts";
import { PLATE_DEFECTS } from "./plate-defects.ts";

/** What can be wrong with loads, drive and screws of a stage, and with what it carries. */
export const CARGO_DEFECTS = {
  "stage-corner-lifts-off": {
    what: "in one of the load cases a screw would have to pull the stage down, or carries less than a tenth of it",
    why: "a nut only pushes: the corner lifts off it, and the stage tips or rests on its wheels alone",
    set: "at: of that screw further out, or the masses nearer to the middle of the screws",
    excusable: true,
  },
  "screw-loads-uneven": {
    what: "in one of the load cases one screw carries over three times what another does",
    why: "the loaded screw wears and is driven down more than the others, and the stage tilts under way",
    set: "screws that stand round the centre of mass",
    excusable: true,
  },
  "screws-nearly-in-line": {
    what: "the three screws stand nearly in one line, or two in one place",
    why: "a stage on one line tips over it, and small play shows at the edge of the plate many times over",
    set: "at: of one screw further beside the line of the others",
    excusable: false,
  },
  "stage-tips-over-its-screws": {
    what: "one or two screws carry the stage, and no wheels keep it level",
    why: "nuts float: they carry weight but no tilting moment",
    set: "carriages: one on a post, or a third screw",
    excusable: false,
  },
  "four-screws-share-by-twist": {
    what: "four screws carry the stage",
    why: "three points make a plane; which three of the four carry depends on the last tooth of the belts",
    set: "three screws",
    excusable: true,
  },
  "screws-not-in-step": {
    what: "lead, teeth or hand of the screws of one stage differ",
    why: "the stage tilts with every turn of the motor, until something jams",
    set: "screw, hand and pulley the same on all screws",
    excusable: false,
  },
  "drive-not-resolved": {
    what: "step angle, microsteps, teeth and lead do not give a lift per step",
    why: "the controller cannot be told how many steps a millimetre has",
    set: "stepAngle: and microsteps: of the motor, teeth of its pulley, lead of the screws",
    excusable: false,
  },
  "layer-heights-off-full-steps": {
    what: "a layer height that is asked for is no whole number of full steps",
    why: "between full steps the motor places the stage less truly, and the layers show it as bands",
    set: "layers: heights of whole full steps, which the report lists",
    excusable: true,
  },
  "motor-torque-short": {
    what: "the motor has little more torque than the lift needs, or less",
    why: "it loses steps when grease stiffens or a nut binds, and the stage is then not where it is thought to be",
    set: "torque: that of a stronger motor, a larger ratio, or a smaller lead",
    excusable: true,
  },
  "motor-torque-beyond-motor": {
    what: "the plan states more torque than the strongest motor of that size holds with",
    why: "a motor has less torque while it turns than while it holds; what is worked out with more is too good",
    set: "torque: what the data sheet gives at the lifting speed, or motor: a larger one",
    excusable: true,
  },
  "motor-turns-too-fast": {
    what: "the motor turns faster than stepping motors keep their torque at: 600 rpm, and 1200 as an error",
    why: "its torque falls with speed until it stands still and hums, and the stage is then not where it is thought to be",
    set: "speed: less, smaller pulleys on the screws, or screws of a larger lead",
    excusable: true,
  },
  "stage-runs-down-unpowered": {
    what: "the thread of a screw does not surely hold its load when the power is off",
    why: "the stage sinks or falls on what is below it when the power fails",
    set: "a screw of a smaller lead, a brake on the motor, or a prop under the stage",
    excusable: true,
  },
  "screw-near-buckling": {
    what: "the load on a screw is near that at which it buckles",
    why: "a screw that bows throws the stage sideways, and then folds",
    set: "a thicker screw, a shorter one, or one hung from its head",
    excusable: true,
  },
  "screw-buckles-at-stall": {
    what: "the stalled motor pushes a screw harder than it stands: all its force may come on one",
    why: "a stage that jams is pressed on until the motor stalls, and a screw that folds before that is lost",
    set: "a thicker screw, a smaller ratio, a weaker motor, or a current limit of its driver",
    excusable: true,
  },
  "screw-near-whirl": {
    what: "a screw turns near the speed at which it whirls",
    why: "it swings out like a skipping rope, shakes the stage and wears the nut",
    set: "speed: less, or a steadied upper end",
    excusable: true,
  },
  "screw-held-rigid-at-both-ends": {
    what: "both ends of a screw carry thrust",
    why: "frame and screw warm unequally, and the screw is bent or the bearings are loaded against each other",
    set: "top: steadied",
    excusable: true,
  },
  "screw-thrust-carried-nowhere": {
    what: "neither foot nor head of a screw carries its thrust",
    why: "the screw slides through its bearings, and the stage comes down with it",
    set: "top: held, or another thrust of the foot",
    excusable: false,
  },
  "nut-out-of-reach-of-stage": {
    what: "no bar of the stage lies near a nut, in plan or in height",
    why: "the nut lifts the stage through its flange; what has to reach far to join them bends and tilts the stage",
    set: "travel.nut: the height of the bars of the stage, or a moving bar that reaches to the nut",
    excusable: true,
  },
  "stage-lowest-disagrees": {
    what: "travel.lowest is not where the lowest bar of the stage is at the bottom of the travel",
    why: "feet are built as high as lowest lets them: too high and the stage comes down on them",
    set: "travel.lowest: the underside of the lowest bar of the stage, or of what hangs lower",
    excusable: true,
  },
  "nut-runs-off-screw": {
    what: "a screw ends below the nut at the top of the travel",
    why: "the stage drops off its screw",
    set: "length: of a longer screw, or a smaller lift",
    excusable: false,
  },
  ...PLATE_DEFECTS,
} as const satisfies Readonly<Record<string, Defect>>;
