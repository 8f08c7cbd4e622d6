import type { Diagnostic } from "../../core/diagnostic.ts";
import { above } from "../../parts/check.ts";
import type { Fact } from "../fact.ts";
import type { Plan } from "../schema/index.ts";
import { told } from "../worked.ts";

/**
 * Speed of a stepping motor, rpm: past the first its torque has fallen far below what it holds with, past the second
 * usual drivers no longer drive it. common practice
 */
export const MOTOR_SPEED = { error: 1200, warning: 600 };

/** Returns whether the plan asks more of its motor, in torque or speed, than motors of that size give. */
export function motorLimits(plan: Plan, facts: readonly Fact[]): readonly Diagnostic[] {
  const speed = facts.find(({ key }) => key === "drive.motor-speed")?.value ?? 0;
  return [...tooStrong(plan), ...tooFast(plan, speed)];
}

function tooStrong({ motor }: Plan): readonly Diagnostic[] {
  const { torqueLarge } = motor.motor.values;
  const torque = motor.torque ?? 0;
  if (!(torqueLarge > 0)) return [];
  const finding = above({
    value: torque,
    unit: "N·m",
    warning: torqueLarge,
    says: (limit) =>
      `the motor is to have ${torque} N·m while it turns; the strongest ${motor.motor.key} holds ${limit}`,
    set: `torque: ${torqueLarge} N·m or less, or motor: a larger one`,
  });
  return told("motor-torque-beyond-motor", ["motor", "torque"], finding);
}

function tooFast({ motor }: Plan, turns: number): readonly Diagnostic[] {
  const most = Math.floor((100 * MOTOR_SPEED.warning * motor.speed) / turns) / 100;
  const finding = above({
    value: turns,
    unit: "rpm",
    ...MOTOR_SPEED,
    says: (limit) => `the motor turns at ${turns.toFixed(0)} rpm to lift ${motor.speed} mm/s, over ${limit} rpm`,
    set: `speed: ${most} or less, smaller pulleys on the screws, or screws of a larger lead`,
  });
  return told("motor-turns-too-fast", ["motor", "speed"], finding);
}
