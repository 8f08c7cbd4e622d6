// How long the assembled machine takes to be tested for clashes and gaps, beside what the bare kernel needs to evaluate
// its bodies: a machine of about 60 bodies at three heights of its travel.
import { ALLOWED } from "../src/build/clash/allowed.ts";
import { clashesOf } from "../src/build/clash/clashes.ts";
import { narrowGaps } from "../src/build/clash/gaps.ts";
import { assemblyFaults } from "../src/build/clash/index.ts";
import { nearPairs } from "../src/build/clash/near-pairs.ts";
import { loadKernel } from "../src/geometry/kernel.ts";
import { bodiesOf } from "../src/stage/bodies/index.ts";
import { handStage, printerOf } from "../tests/support/hand-stage.ts";
import { inTurn, median, ms, table, times, worked } from "./timing.ts";

/** What the whole test may take warm, ms. */
const LIMIT = 2000;
const ROUNDS = 7;

const kernel = await loadKernel();
const stage = handStage();
const { lift } = stage.plan.travel;
const bodies = bodiesOf(stage, printerOf);
const parts = bodies.filter(({ kind }) => kind === "part");
const evaluated = (some: typeof bodies) => () => kernel.assemble((hall) => some.map(({ solid }) => hall.box(solid)));

const steps: readonly (readonly [string, () => unknown])[] = [
  ["drawing all bodies as data", () => bodiesOf(stage, printerOf)],
  [`evaluating the ${parts.length} printed parts`, evaluated(parts)],
  [`evaluating all ${bodies.length} bodies`, evaluated(bodies)],
  ["clashes, evaluation included", () => kernel.assemble((hall) => clashesOf(bodies, lift, hall))],
  ["clashes with nothing allowed", () => kernel.assemble((hall) => clashesOf(bodies, lift, hall, []))],
  ["gaps, evaluation included", () => kernel.assemble((hall) => narrowGaps(bodies, hall))],
  ["the whole test", () => assemblyFaults(stage, printerOf, kernel)],
];
const taken = inTurn(
  steps.map(([, step]) => step),
  ROUNDS,
  worked,
).map(median);
const all = taken[2] ?? Number.NaN;

const near = nearPairs(bodies.map(({ box }) => box)).length;
table(
  `A machine of ${bodies.length} bodies, ${near} pairs of boxes near each other, ${ALLOWED.length} pairs of kinds allowed`,
  ["step", "ms", "of evaluating all"],
  steps.map(([name], index) => [name, ms(taken[index] ?? 0), times((taken[index] ?? 0) / all)]),
);
const whole = taken.at(-1) ?? Number.NaN;
console.log(`\nThe whole test in ${LIMIT} ms, warm: ${whole <= LIMIT ? "met" : "MISSED"}`);
