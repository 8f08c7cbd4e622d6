import { isRefusal } from "../../core/calculation.ts";
import { centreOfMass, type Mass } from "../../mechanics/centre-of-mass.ts";
import type { Point } from "../../mechanics/point.ts";
import type { Plan } from "../schema/index.ts";
import { massOf } from "./masses.ts";

/** A hand that leans on a corner of the plate, N. common practice */
export const LEAN = 50;

/** One way in which the stage is loaded: weight, N, and where it acts, mm. */
export interface LoadCase {
  readonly name: string;
  readonly weight: number;
  readonly centre: Point;
  /** Whether a person leans on the plate; what is held against evenness leaves these out. */
  readonly leaned: boolean;
}

/** Returns the corners of the plate by their names; front is towards -y. */
export function cornersOf({ plate: { at, size } }: Plan): readonly { readonly name: string; readonly at: Point }[] {
  const [x, y] = at;
  const [a, b] = [size[0] / 2, size[1] / 2];
  return [
    { name: "front left", at: { x: x - a, y: y - b } },
    { name: "front right", at: { x: x + a, y: y - b } },
    { name: "back right", at: { x: x + a, y: y + b } },
    { name: "back left", at: { x: x - a, y: y + b } },
  ];
}

/** Returns all cases: the empty stage, the print in the middle and at each corner, a hand at each corner. */
export function casesOf(plan: Plan, masses: readonly Mass[]): readonly LoadCase[] {
  const loaded = (name: string, extra: readonly Mass[], leaned = false): LoadCase[] => {
    const outcome = centreOfMass([...masses, ...extra]);
    if (isRefusal(outcome)) return [];
    return [{ name, weight: outcome.weight, centre: { x: outcome.x, y: outcome.y }, leaned }];
  };
  const [x, y] = plan.plate.at;
  const corners = cornersOf(plan);
  return [
    ...loaded("empty", []),
    ...loaded("print in the middle", [{ x, y, mass: plan.print }]),
    ...corners.flatMap(({ name, at }) => loaded(`print at the ${name}`, [{ ...at, mass: plan.print }])),
    ...corners.flatMap(({ name, at }) => loaded(`hand on the ${name}`, [{ ...at, mass: massOf(LEAN) }], true)),
  ];
}
