import { type Plan, planSchema } from "../../src/stage/index.ts";
import { deepMerge } from "./deep-merge.ts";

/**
 * What the machine that is put together by hand is said to be: a wide stage on 30-series bars, two screws in front, one
 * behind, one motor, a loop low round motor and front screws, a loop high to the screw behind. Invented. Lengths in mm.
 */
const HAND = {
  bars: {
    front: { bar: "30x30 slot 8", from: [0, 15, -15], to: [760, 15, -15] },
    back: { bar: "30x30 slot 8", from: [0, 545, -15], to: [760, 545, -15] },
    left: { bar: "30x30 slot 8", from: [15, 30, -15], to: [15, 530, -15] },
    right: { bar: "30x30 slot 8", from: [745, 30, -15], to: [745, 530, -15] },
    "post-left": { bar: "30x30 slot 8", from: [15, 280, 0], to: [15, 280, 500] },
    "post-right": { bar: "30x30 slot 8", from: [745, 280, 0], to: [745, 280, 500] },
    "arm-front": { bar: "30x30 slot 8", from: [80, 130, 115], to: [680, 130, 115], moves: true },
    "arm-back": { bar: "30x30 slot 8", from: [80, 430, 115], to: [680, 430, 115], moves: true },
  },
  screws: {
    A: { at: [150, 62], length: 420, bar: "front" },
    B: { at: [610, 62], length: 420, bar: "front" },
    C: { at: [380, 498], length: 420, bar: "back" },
  },
  foot: { thrust: "collar", pulley: "36 teeth 2 mm", material: "PETG" },
  travel: { lowest: 100, lift: 220, nut: 125 },
  motor: {
    motor: { row: "NEMA 17", shaftLength: 42 },
    at: [380, 400],
    plateTop: 10,
    pulleys: [
      { loop: "low", pulley: "20 teeth 2 mm", hub: "down" },
      { loop: "high", pulley: "20 teeth 2 mm", hub: "up" },
    ],
    torque: "0.3 N m",
  },
  loops: {
    low: { nodes: ["motor", "A", "B"], slide: { direction: 90 } },
    high: { nodes: ["motor", "C"], slide: { direction: 90 } },
  },
  plate: {
    at: [380, 280],
    size: [420, 330],
    thickness: 6,
    temperature: 90,
    mounts: {
      one: { at: [200, 130], type: "fixed", bar: "arm-front" },
      two: { at: [560, 130], type: "slot", bar: "arm-front" },
      three: { at: [380, 430], type: "free", bar: "arm-back" },
    },
    heater: { size: [300, 200], power: "400 W", volts: 230 },
  },
  carriages: {
    left: { post: "post-left", arms: ["arm-front", "arm-back"] },
    right: { post: "post-right", arms: ["arm-front", "arm-back"] },
  },
  masses: { nuts: { mass: "0.4 kg", at: [380, 200] } },
  print: "2 kg",
};

/** Returns that plan with changes laid over it, as its schema reads it. Throws where the schema refuses it. */
export function handPlan(changes: Readonly<Record<string, unknown>> = {}): Plan {
  return planSchema.parse(deepMerge(HAND, changes));
}
