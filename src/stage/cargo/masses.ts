import { GRAVITY, type Mass } from "../../mechanics/centre-of-mass.ts";
import { plateMass } from "../../mechanics/plate-mass.ts";
import type { Fact } from "../fact.ts";
import type { Plan, PlanBar } from "../schema/index.ts";
import { worked } from "../worked.ts";

/** A wheel with its axle and its share of the printed plate, kg. Rough: common practice, weigh it. */
const WHEEL = 0.1;
/** Wheels of a carriage whose parameters do not say how many, as the family has it. */
const WHEELS = 4;

/** Everything that goes up and down, the print left out. */
export interface Masses {
  readonly masses: readonly Mass[];
  /** Mass of the plate alone, kg. */
  readonly plate: number;
  readonly facts: readonly Fact[];
}

/** Returns the masses of plate, sheet, moving bars, carriages and what the plan adds, with their places in plan. */
export function massesOf(plan: Plan): Masses {
  const { at, size, thickness, metal, sheet } = plan.plate;
  const inputs = { length: size[0], width: size[1], thickness, density: metal.values.density };
  const plate = worked(plateMass, inputs, { mass: ["mass.plate", "plate"] });
  const alone = plate.values?.mass ?? 0;
  const lumps = [lump("sheet", "sheet, heater and lagging", sheet, at), ...barLumps(plan), ...otherLumps(plan)];
  return {
    masses: [{ x: at[0], y: at[1], mass: alone }, ...lumps.map(({ place }) => place)],
    plate: alone,
    facts: [...plate.facts, ...lumps.map(({ fact }) => fact)],
  };
}

type Spot = readonly [number, number];

function lump(key: string, label: string, mass: number, [x, y]: Spot): { place: Mass; fact: Fact } {
  return { place: { x, y, mass }, fact: { key: `mass.${key}`, label, value: mass, unit: "kg" } };
}

function barLumps({ bars }: Plan) {
  return Object.entries(bars).flatMap(([name, each]) => {
    if (!each.moves) return [];
    const mass = Math.max(0, (each.bar.values.massPerMetre * lengthOf(each)) / 1000);
    return [lump(`bar.${name}`, `bar ${name}`, mass, middleOf(each))];
  });
}

function otherLumps({ bars, carriages, carriage, masses }: Plan) {
  const onWheels = Object.entries(carriages).flatMap(([name, { post, parameters }]) => {
    const bar = bars[post];
    const wheels = Number(parameters.wheels ?? carriage.wheels ?? WHEELS);
    if (bar === undefined) return [];
    return [lump(`carriage.${name}`, `carriage ${name}, roughly`, WHEEL * (wheels || WHEELS), middleOf(bar))];
  });
  const own = Object.entries(masses).map(([name, { mass, at }]) => lump(`own.${name}`, name, mass, at));
  return [...onWheels, ...own];
}

/** Returns the length of a bar, mm. */
export function lengthOf({ from, to }: PlanBar): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
}

function middleOf({ from, to }: PlanBar): Spot {
  return [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
}

/** Mass whose weight is a force, kg. */
export const massOf = (force: number): number => force / GRAVITY;
