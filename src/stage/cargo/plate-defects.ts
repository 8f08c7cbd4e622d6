import type { Defect } from "../../core/defects.ts";
import { WHY_COLD } from "../../parts/heat.ts";

/** What can be wrong with plate, heater, mounts, arms and carriages of a stage. */
export const PLATE_DEFECTS = {
  "plate-on-too-few-mounts": {
    what: "fewer than three mounts hold the plate",
    why: "a plate on one or two points tips",
    set: "mounts: three, not in line",
    excusable: false,
  },
  "plate-tips-off-its-mounts": {
    what: "a mount of the plate carries none of its weight and would have to pull it down",
    why: "the plate hangs on a bolt there, and the spring pushes it further up",
    set: "at: of the mounts round the middle of the plate",
    excusable: true,
  },
  "plate-sinks-on-springs": {
    what: "plate and print press on a mount with more than its spring bears at the highest setting",
    why: "the plate leaves the head of its bolt and sinks while it prints",
    set: "a stiffer spring, or mounts nearer to the plate's corners",
    excusable: true,
  },
  "plate-shifts-on-springs": {
    what: "friction under the springs holds less than nozzle and jerk push",
    why: "the plate is shoved sideways while it prints",
    set: "stiffer springs, or more of them",
    excusable: true,
  },
  "mount-too-near-bar": {
    what: "the bolt of a mount stands nearer to its bar than the bracket is long",
    why: "the bracket cannot be bolted to the bar",
    set: "at: further from the bar, or the bar moved",
    excusable: false,
  },
  "hole-under-heater": {
    what: "a hole of the plate lies under the heater or too near to it",
    why: "drilling cuts the heater, and a bolt under it cannot be reached",
    set: "at: of the mount outside the heater, or a smaller heater",
    excusable: true,
  },
  "sensor-under-heater": {
    what: "the hole of the temperature sensor lies under the heater, or near its edge",
    why: "a hole there cuts the heater's tracks, and a sensor on them reads the heater and not the plate",
    set: "at: of the sensor, outside the heater's outline; or underHeater: true",
    excusable: true,
  },
  "sensor-hole-too-deep": {
    what: "the hole of the temperature sensor leaves too little metal to the plate's upper face",
    why: "the drill marks the face that is to be flat, or comes through it",
    set: "depth: of the sensor, 1.5 mm less than the plate is thick",
    excusable: true,
  },
  "hole-near-plate-edge": {
    what: "a hole of the plate is nearer to its edge than one and a half diameters",
    why: "the edge bulges or tears out",
    set: "at: of the mount further in, or a larger plate",
    excusable: true,
  },
  "heater-overhangs-plate": {
    what: "the heater sticks out over the plate",
    why: "the part in the air has nothing to heat and burns out",
    set: "size: and at: of the heater inside the plate",
    excusable: false,
  },
  "heater-off-centre": {
    what: "the heater does not lie in the middle of the plate",
    why: "the plate is warmer on one side",
    set: "at: the middle of the plate, or leave it out",
    excusable: true,
  },
  "heater-density-out-of-range": {
    what: "the heater is much stronger or weaker for its area than is usual",
    why: "above 1.2 W/cm2 the adhesive lets go in spots, below 0.4 W/cm2 the plate warms slowly",
    set: "power: or size: of the heater",
    excusable: true,
  },
  "plate-cannot-reach-temperature": {
    what: "the heater does not bring the plate to its temperature, or takes over 20 minutes",
    why: "the print does not stick, or every print starts with a long wait",
    set: "power: of a stronger heater, or a cooler plate",
    excusable: true,
  },
  "plate-colder-than-air": {
    what: "the plate is to be colder than the air round it",
    why: WHY_COLD,
    set: "temperature: at least that of the air, or ambient: as it is there",
    excusable: true,
  },
  "stuck-heater-overheats-plate": {
    what: "a heater that stays on brings the plate over what its adhesive or a printed mount bears",
    why: "a switch that sticks is no rare event, and the plate then burns",
    set: "a cut-out on the heater itself, or less power",
    excusable: true,
  },
  "stage-tip-sags-with-print": {
    what: "a bar of the stage sags with the print by more than a layer can hide",
    why: "the first layers are squashed on one side and loose on the other",
    set: "a stiffer bar, upright, or supports nearer to the mounts",
    excusable: true,
  },
  "arm-off-carriage": {
    what: "an arm does not lie on the outer face of its carriage's plate",
    why: "the bolts of the plate do not reach the arm",
    set: "from: and to: of the arm, by the distance that the message names",
    excusable: false,
  },
  "carriage-runs-off-post": {
    what: "the wheels of a carriage leave their post within the travel",
    why: "the stage comes off its guide",
    set: "a longer post, or a smaller lift",
    excusable: false,
  },
  "part-contradicts-plan": {
    what: "a block of parameters gives what the plan already says elsewhere",
    why: "two places that say different things would make a part that does not fit",
    set: "leave it out there; change what it follows from",
    excusable: false,
  },
} as const satisfies Readonly<Record<string, Defect>>;
