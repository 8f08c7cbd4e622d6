import type { LoopNode } from "../../src/mechanics/index.ts";

/** What the worked examples of the solvers start from. */
export const pulley = (name: string, x: number, y: number, teeth: number) => ({
  name,
  x,
  y,
  radius: teeth / Math.PI,
  inside: true,
  teeth,
});
export const PAIR = [pulley("a", 0, 0, 40), pulley("b", 300, 0, 40)];
export const THREE = [pulley("motor", 0, 0, 20), pulley("right", 250, 120, 40), pulley("left", -150, 140, 40)];
export const IDLER: LoopNode = { name: "idler", x: 60, y: 30, radius: 9.376, inside: false };
export const FOUR = [THREE[0] as LoopNode, IDLER, THREE[1] as LoopNode, THREE[2] as LoopNode];
export const SLIDE = { node: "b", direction: 0, from: -6, to: 6 };
export const SEATS = { plane: 24, pulley: 16, groove: 7, flange: 1, hub: 7, collar: 0, bearing: 7, stacks: [[1]] };
export const SLOT = { washer: 1, diameter: 5, threadStart: 0.5, slotDepth: 6.1, stock: [10, 12, 16] };
export const CORNERS = [
  { x: 0, y: 0 },
  { x: 400, y: 0 },
  { x: 400, y: 300 },
  { x: 0, y: 300 },
];
export const SCREW = { name: "A", lead: 8, screwTeeth: 40, motorTeeth: 20, hand: "right", inside: true } as const;
export const TILTED = { centre: { x: 0, y: 0 }, atCentre: 0, slopeX: 0.01, slopeY: 0, worst: 0 };
export const MOUNT = { name: "fixed", x: 0, y: 0, pitch: 0.8, up: 3, down: 3 };

export const mass = (kilograms: number, x: number) => ({ mass: kilograms, x, y: 0 });
export const arrow = (direction: number, tension: number) => ({ direction, tension });

export function probes(...heights: readonly [number, number, number, number]) {
  const places = [
    { x: -150, y: -150 },
    { x: 150, y: -150 },
    { x: 150, y: 150 },
    { x: -150, y: 150 },
  ];
  return places.map((place, index) => ({ ...place, height: heights[index] as number }));
}

/** Returns one number of an outcome, or its reason when it was refused. */
export function numberOf(outcome: object, key: string): number | string {
  const found = (outcome as Readonly<Record<string, number | string>>)[key];
  return found ?? (outcome as { readonly refused: string }).refused;
}

export const TRIANGLE = [
  { name: "A", x: 0, y: 0 },
  { name: "B", x: 300, y: 0 },
  { name: "C", x: 150, y: 260 },
] as const;
