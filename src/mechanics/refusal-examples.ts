import type { Calculation, Refusal } from "../core/calculation.ts";
import type { CalculationDefect } from "../core/calculation-defects.ts";
import {
  beltLoop,
  type LoopNode,
  printedHole,
  screwLoads,
  screwTorque,
  slideForLength,
  springBand,
  threadStarts,
  warmUp,
} from "./index.ts";

/** What a calculation is asked that it refuses: test, example and demonstration in one. */
export interface RefusalExample {
  /** The calculation, or what is searched. */
  readonly of: string;
  /** What it is asked, in words. */
  readonly given: string;
  readonly ask: () => object | Refusal;
}

const number = (value: number) => (Number.isNaN(value) ? "no number" : String(value));

function calculation<Input extends string>(
  { name, inputs, compute }: Pick<Calculation<Input>, "name" | "inputs" | "compute">,
  given: Readonly<Record<Input, number>>,
): RefusalExample {
  const words = Object.entries<number>(given).map(([key, value]) => {
    const { symbol, unit } = inputs[key as Input];
    return `${symbol} = ${number(value)} ${unit}`.trimEnd();
  });
  return { of: name, given: words.join(", "), ask: () => compute(given) };
}

/** A node of a loop: its name, x, y and radius in mm. */
type Short = readonly [name: string, x: number, y: number, radius: number, side?: "outside"];

const nodesOf = (nodes: readonly Short[]): LoopNode[] =>
  nodes.map(([name, x, y, radius, side]) => ({ name, x, y, radius, inside: side === undefined }));

const wordsOf = (nodes: readonly Short[]) =>
  nodes
    .map(([name, x, y, radius, side = "inside"]) => `${name} ${side} at [${number(x)}, ${number(y)}], radius ${radius}`)
    .join("; ");

const loop = (...nodes: Short[]): RefusalExample => ({
  of: "a belt loop",
  given: wordsOf(nodes),
  ask: () => beltLoop(nodesOf(nodes)),
});

/** Two pulleys, of which the second slides. */
const PAIR: readonly Short[] = [
  ["a", 0, 0, 10],
  ["b", 300, 0, 10],
];

const slide = (direction: number, length: number, nodes: readonly Short[] = PAIR): RefusalExample => ({
  of: "the place on a slide for a length",
  given: `${wordsOf(nodes)}; b slides by -10 to 10 mm at ${direction} deg, for a belt of ${length} mm`,
  ask: () => slideForLength(nodesOf(nodes), { node: "b", direction, from: -10, to: 10 }, length),
});

const screws = (at: readonly (readonly [string, number, number])[], x: number, y: number): RefusalExample => ({
  of: "the shares of three screws",
  given: `${at.map(([name, px, py]) => `${name} at [${px}, ${py}]`).join(", ")}; 30 N at [${x}, ${y}]`,
  ask: () =>
    screwLoads(
      at.map(([name, px, py]) => ({ name, x: px, y: py })),
      30,
      { x, y },
    ),
});

const TORQUE = { load: 10, pitchDiameter: 7, lead: 8, flank: 15, friction: 0.15 };
const SPRING = { solidLength: 8.5, freeLength: 20, share: 8, range: 2, rate: 1.5 };

/** How each reason of a calculation to refuse comes about. */
export const REFUSAL_EXAMPLES: Readonly<Record<CalculationDefect, RefusalExample>> = {
  "input-not-a-number": calculation(printedHole, { wanted: Number.NaN, shrink: 0 }),
  "input-out-of-range": calculation(printedHole, { wanted: 22.3, shrink: 0.7 }),
  "loop-node-count": loop(["a", 0, 0, 10]),
  "loop-measure-missing": loop(["a", 0, 0, 10], ["b", 300, Number.NaN, 10]),
  "node-without-radius": loop(["a", 0, 0, 10], ["b", 300, 0, 0]),
  "too-few-inside-nodes": loop(["a", 0, 0, 10], ["b", 300, 0, 10, "outside"]),
  "nodes-overlap": loop(["a", 0, 0, 10], ["b", 9, 12, 15]),
  "spans-cross": loop(["a", -200, 20, 10], ["b", 180, 80, 30], ["c", -80, 80, 50], ["d", 0, -20, 40, "outside"]),
  "span-through-node": loop(["a", -200, 0, 12], ["big", 0, 0, 50], ["b", 200, 0, 12]),
  "belt-misses-node": loop(["a", 0, 0, 10], ["b", 150, -40, 10, "outside"], ["c", 300, 0, 10]),
  "node-order-wrong": loop(["a", 0, 0, 10], ["b", 0, 300, 10], ["c", 300, 0, 10]),
  "loop-too-large": loop(["a", 0, 0, 10], ["b", 1e308, 1e308, 10]),
  "belt-never-touches": slide(0, 700, [...PAIR, ["i", 150, 60, 10, "outside"]]),
  "length-off-slide": slide(0, 700),
  "slide-hardly-tightens": slide(90, 662.88),
  "screws-in-line": screws(
    [
      ["A", 0, 0],
      ["B", 300, 0],
      ["C", 150, 4],
    ],
    150,
    1,
  ),
  "mass-outside-screws": screws(
    [
      ["A", 0, 0],
      ["B", 300, 0],
      ["C", 150, 260],
    ],
    150,
    -26,
  ),
  "lead-not-whole-pitches": calculation(threadStarts, { lead: 8, pitch: 2.5 }),
  "lead-angle-too-steep": calculation(screwTorque, { ...TORQUE, flank: 0, lead: 25 }),
  "screw-jams": calculation(screwTorque, { ...TORQUE, pitchDiameter: 3.2, flank: 45, friction: 0.4, lead: 20 }),
  "spring-already-solid": calculation(springBand, { ...SPRING, solidLength: 20 }),
  "spring-too-short": calculation(springBand, { ...SPRING, range: 5 }),
  "spring-band-empty": calculation(springBand, SPRING),
  "heater-never-gets-there": calculation(warmUp, { mass: 1, heat: 900, warming: 60, power: 120, loss: 2 }),
};
