import { isRefusal } from "../../core/calculation.ts";
import type { Diagnostic } from "../../core/diagnostic.ts";
import { driveResolution } from "../../mechanics/drive-resolution.ts";
import { driveSpeed } from "../../mechanics/drive-speed.ts";
import { friendlyLayers, layerSnap } from "../../mechanics/layer-snap.ts";
import { slippedToothTilt } from "../../mechanics/slipped-tooth-tilt.ts";
import { stepRate } from "../../mechanics/step-rate.ts";
import type { Fact, Topic } from "../fact.ts";
import type { Plan } from "../schema/index.ts";
import { atMost, told, worked } from "../worked.ts";
import { MOTOR_SPEED, motorLimits } from "./motor-limits.ts";
import { motorLoad } from "./motor-load.ts";
import type { ScrewDrive } from "./screw-drives.ts";
import type { SharedStage } from "./structure.ts";

/** Thinnest and thickest layer that heights are listed for: the thickest is 0.8 of a nozzle of 0.4. mm */
const LISTED = { thinnest: 0.05, thickest: 0.32 };

/** Returns ratio, resolution, speed and torque of the drive. */
export function drive(stage: SharedStage): Topic {
  const { plan, drives, height } = stage;
  const [first] = drives;
  if (first === undefined) return { sections: [], diagnostics: [] };
  const resolution = resolutionOf(plan, first);
  const step = resolution.values?.perStep ?? 0;
  const motor = motorLoad(stage);
  const facts = [
    ...resolution.facts,
    ...speedFacts(plan, first, resolution.values?.stepsPerMillimetre ?? 0),
    ...drives.flatMap((each) => slipFacts(each, height)),
    ...motor.facts,
  ];
  const lines = step > 0 ? [heightsLine(step), ...snapLines(plan, step)] : [];
  const layers = step > 0 ? offSteps(plan, step) : unresolved(plan, resolution.refusal?.refused);
  const diagnostics = [...layers, ...motor.diagnostics, ...motorLimits(plan, facts)];
  return { sections: [{ title: "Drive", facts, lines }], diagnostics };
}

function resolutionOf({ motor: { stepAngle, microsteps } }: Plan, { pulley, motorTeeth, screw }: ScrewDrive) {
  const teeth = { screwTeeth: pulley.values.teeth, motorTeeth };
  return worked(
    driveResolution,
    { ...teeth, lead: screw.lead, stepAngle, microsteps },
    {
      ratio: ["drive.ratio", "motor turns per turn of a screw"],
      perStep: ["drive.per-step", "lift per full step"],
      perMicrostep: ["drive.per-microstep", "lift per microstep"],
      stepsPerMillimetre: ["drive.steps-per-mm", "steps for each mm, as the controller wants them"],
      perTooth: ["drive.per-tooth", "lift when a belt jumps one tooth"],
    },
  );
}

function speedFacts({ motor, travel, loops }: Plan, each: ScrewDrive, steps: number): readonly Fact[] {
  const pitch = loops[each.loop]?.belt.values.pitch ?? each.pulley.values.pitch;
  const inputs = { ratio: each.ratio, lead: each.screw.lead, lift: travel.lift, pitch };
  const speeds = worked(
    driveSpeed,
    { ...inputs, speed: motor.speed, screwTeeth: each.pulley.values.teeth },
    {
      screw: ["drive.screw-speed", "speed of the screws while lifting"],
      motor: ["drive.motor-speed", "speed of the motor while lifting", atMost(MOTOR_SPEED.warning)],
      travel: ["drive.belt-travel", "belt that runs past over the whole lift"],
    },
  );
  const rate = worked(stepRate, { speed: motor.speed, steps }, { rate: ["drive.step-rate", "steps a second"] });
  return [...speeds.facts, ...rate.facts];
}

function slipFacts({ name, screw, pulley }: ScrewDrive, height: (screw: string) => number): readonly Fact[] {
  const inputs = { lead: screw.lead, teeth: pulley.values.teeth, height: height(name) };
  return worked(slippedToothTilt, inputs, {
    tilt: [`screw.${name}.slip-tilt`, `screw ${name}: tilt of the stage when its belt jumps one tooth`],
  }).facts;
}

function heightsLine(step: number): string {
  const heights = friendlyLayers(step, LISTED.thinnest, LISTED.thickest);
  const many = heights.length > 30 ? [...heights.slice(0, 30).map(String), "..."] : heights.map(String);
  return heights.length === 0
    ? `no layer of ${LISTED.thinnest} to ${LISTED.thickest} mm is a whole number of full steps`
    : `layers of whole full steps, mm: ${many.join(", ")}`;
}

function snapLines({ layers }: Plan, step: number): string[] {
  return layers.map((layer) => {
    const snap = layerSnap.compute({ layer, step });
    if (isRefusal(snap)) return `layer ${layer} mm: ${snap.refused}`;
    const off = Math.abs(snap.error) < 1e-9;
    const beat = `${snap.error.toFixed(4)} mm off, repeats every ${snap.beat.toFixed(2)} mm`;
    return `layer ${layer} mm: ${snap.steps} full steps${off ? "" : `, ${beat}`}`;
  });
}

function offSteps({ layers }: Plan, step: number): Diagnostic[] {
  return layers.flatMap((layer, index) => {
    const snap = layerSnap.compute({ layer, step });
    if (!isRefusal(snap) && Math.abs(snap.error) < 1e-9) return [];
    const nearest = isRefusal(snap) ? step : snap.snapped;
    return told("layer-heights-off-full-steps", ["layers", index], {
      level: "warning",
      says: `a layer of ${layer} mm is ${(layer / step).toFixed(3)} full steps of ${Number(step.toFixed(6))} mm`,
      set: `layers: ${Number(nearest.toFixed(6))} mm in its place`,
      found: layer,
      limit: nearest,
      unit: "mm",
    });
  });
}

function unresolved({ motor }: Plan, refused = "a number is missing"): Diagnostic[] {
  const odd = !Number.isInteger(Math.log2(motor.microsteps));
  return told("drive-not-resolved", ["motor", odd ? "microsteps" : "stepAngle"], {
    level: "error",
    says: `the lift per step is not known: ${refused}`,
    set: odd
      ? "microsteps: 16, or another power of two up to 256"
      : "stepAngle: 1.8 or 0.9 deg, as the motor's label says",
  });
}
