import { bounded } from "./bounded.ts";

/** What one motor step, one belt tooth and one millimetre are worth on a belt-driven lead screw. */
export const driveResolution = bounded({
  name: "drive-resolution",
  title: "Ratio and resolution of a lift drive",
  inputs: {
    screwTeeth: { symbol: "z_s", unit: "", meaning: "teeth of the screw's pulley" },
    motorTeeth: { symbol: "z_m", unit: "", meaning: "teeth of the motor's pulley" },
    lead: { symbol: "l", unit: "mm", meaning: "lead of the screw: pitch times starts" },
    stepAngle: { symbol: "phi", unit: "deg", meaning: "full step of the motor" },
    microsteps: { symbol: "m", unit: "", meaning: "microsteps per full step" },
  },
  results: {
    ratio: { symbol: "i", unit: "", meaning: "motor turns per screw turn" },
    perStep: { symbol: "h_step", unit: "mm", meaning: "lift per full step" },
    perMicrostep: { symbol: "h_micro", unit: "mm", meaning: "lift per microstep" },
    stepsPerMillimetre: { symbol: "q", unit: "", meaning: "microsteps per mm of lift" },
    perTooth: { symbol: "h_tooth", unit: "mm", meaning: "lift when the belt hops one tooth of the screw's pulley" },
  },
  formulas: {
    ratio: "z_s / z_m",
    perStep: "l * phi / (360 * i)",
    perMicrostep: "h_step / m",
    stepsPerMillimetre: "1 / h_micro",
    perTooth: "l / z_s",
  },
  source: "geometry",
  valid: "no slip; at least 10 teeth, a whole number of full steps a turn, microsteps a power of two up to 256",
  examples: [
    {
      given: { screwTeeth: 40, motorTeeth: 20, lead: 8, stepAngle: 1.8, microsteps: 16 },
      gives: { ratio: 2, perStep: 0.02, stepsPerMillimetre: 800, perTooth: 0.2 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
    {
      given: { screwTeeth: 20, motorTeeth: 20, lead: 8, stepAngle: 1.8, microsteps: 16 },
      gives: { stepsPerMillimetre: 400, perMicrostep: 0.0025 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: {
    screwTeeth: { from: 10, whole: true },
    motorTeeth: { from: 10, whole: true },
    lead: { above: 0 },
    stepAngle: { above: 0, to: 90 },
    microsteps: { from: 1, to: 256, whole: true },
  },
  compute: ({ screwTeeth, motorTeeth, lead, stepAngle, microsteps }) => {
    const steps = 360 / stepAngle;
    if (Math.abs(steps - Math.round(steps)) > 1e-6) return { refused: "phi does not divide a turn into whole steps" };
    if (!Number.isInteger(Math.log2(microsteps))) return { refused: "m is not a power of two" };
    const ratio = screwTeeth / motorTeeth;
    const perStep = (lead * stepAngle) / (360 * ratio);
    const perMicrostep = perStep / microsteps;
    return { ratio, perStep, perMicrostep, stepsPerMillimetre: 1 / perMicrostep, perTooth: lead / screwTeeth };
  },
});
