import { clashAllowance } from "../../mechanics/clash-allowance.ts";
import { springBand } from "../../mechanics/spring-band.ts";
import { springForce } from "../../mechanics/spring-force.ts";
import { springRate } from "../../mechanics/spring-rate.ts";
import { springSolidLength } from "../../mechanics/spring-solid-length.ts";
import { springStress } from "../../mechanics/spring-stress.ts";
import { wireStrength } from "../../mechanics/wire-strength.ts";
import { orElse } from "../or-else.ts";
import type { Fittings } from "./fittings.ts";
import type { Parameters } from "./parameters.ts";

/** A rate below this is none; it keeps the band finite until a check has named the spring. N/mm. */
const SOFTEST = 0.001;

/** The spring by itself. Lengths in mm; a rate of 0 means that the spring is outside what the formula holds for. */
export interface SpringNumbers {
  readonly meanDiameter: number;
  readonly index: number;
  readonly slenderness: number;
  readonly rate: number;
  readonly solidLength: number;
  readonly strength: number;
  readonly range: number;
  readonly springLow: number;
  readonly springHigh: number;
}

/** Returns the spring's rate, solid length and the band of set lengths it allows. Source: shigley 10. */
export function springNumbers(given: Parameters, { spring }: Fittings): SpringNumbers {
  const { wire, outside, freeLength, totalCoils, shearModulus, strengthA, strengthM } = spring;
  const meanDiameter = outside - wire;
  const activeCoils = totalCoils - 2;
  const rate = given.rate ?? orElse(springRate, { shearModulus, wire, meanDiameter, activeCoils }, { rate: 0 }).rate;
  const ground = given.ground ? 1 : 0;
  const whole = { solidLength: (totalCoils + 1 - ground) * wire };
  const { solidLength } = orElse(springSolidLength, { totalCoils, wire, ground }, whole);
  const range = given.range ?? (given.joint === "tapped-plate" ? 0.5 : 3);
  const firm = Math.max(rate, SOFTEST);
  const band = { solidLength, freeLength, share: given.share, rate: firm, range };
  const empty = {
    low: (solidLength + 0.15 * freeLength) / 1.15 + range,
    high: freeLength - (1.5 * given.share) / firm - range,
  };
  const { low, high } = orElse(springBand, band, empty);
  return {
    meanDiameter,
    index: meanDiameter / wire,
    slenderness: freeLength / Math.max(0.01, meanDiameter),
    rate,
    solidLength,
    strength: orElse(wireStrength, { strength: strengthA, exponent: strengthM, wire }, { tensile: 0 }).tensile,
    range,
    springLow: low,
    springHigh: high,
  };
}

/** The spring at its set, longest and shortest length. mm, N, MPa. */
export interface SettingNumbers {
  readonly longest: number;
  readonly shortest: number;
  readonly forceSet: number;
  readonly forceLong: number;
  readonly forceShort: number;
  readonly preload: number;
  readonly clash: number;
  readonly curvature: number;
  readonly stress: number;
}

/** Returns forces and stress of a spring that is set to a length. A spring longer than free pushes with 0. */
export function settingNumbers(
  given: Parameters,
  { spring }: Fittings,
  { rate, solidLength, range, meanDiameter }: SpringNumbers,
  setLength: number,
): SettingNumbers {
  const { wire, freeLength } = spring;
  const longest = setLength + range;
  const shortest = Math.max(0.1, setLength - range);
  const force = (length: number) => orElse(springForce, { rate, freeLength, length }, { force: 0 }).force;
  const forceShort = force(shortest);
  const bent = orElse(springStress, { force: forceShort, wire, meanDiameter }, { index: 0, curvature: 0, stress: 0 });
  const loose = { allowance: (shortest - solidLength) / Math.max(0.001, freeLength - shortest) };
  return {
    longest,
    shortest,
    forceSet: force(setLength),
    forceLong: force(longest),
    forceShort,
    preload: force(longest) / given.share,
    clash: orElse(clashAllowance, { freeLength, solidLength, shortest }, loose).allowance,
    curvature: bent.curvature,
    stress: bent.stress,
  };
}
