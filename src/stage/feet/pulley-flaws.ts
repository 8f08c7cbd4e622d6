import type { Diagnostic, Path } from "../../core/diagnostic.ts";
import type { MotorPulley } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { stageDefect } from "../stage-defects.ts";

type Planned = Plan["motor"]["pulleys"][number];

/** What the height of a pulley may differ from the sum of its hub, flanges and groove, mm. */
const SUM_WITHIN = 0.3;
/** What a belt's groove must be wider than the belt, mm. */
const SIDE_PLAY = 0.3;
/** What must be left of the shaft over the toothed part, mm. */
const SHAFT_OVER = 0.5;

/** What a shaft may measure over its pulley's bore, and under it, mm: calipers, and a fit that set screws can hold. */
const BORE = { under: 0.05, over: 0.1 };

const f = (value: number) => Number(value.toFixed(2)).toString();
const up = (value: number) => (Math.ceil(value * 10 - 1e-6) / 10).toString();

/** Returns the thickness of the flange that a pulley shares with the one below, mm. */
export function sharedFlange(pulleys: readonly Planned[], index: number): number {
  const [below, own] = [pulleys[index - 1], pulleys[index]];
  return Math.min(below?.pulley.values.flangeThickness ?? 0, own?.pulley.values.flangeThickness ?? 0);
}

/** Returns what is wrong with the pulleys on the motor as bodies: their data, the stack, the shaft they stand on. */
export function pulleyFlaws(plan: Plan, pulleys: readonly MotorPulley[]): Diagnostic[] {
  return plan.motor.pulleys.flatMap((planned, index) => {
    const path = ["motor", "pulleys", index];
    const placed = pulleys[index];
    const data = dataFlaws(plan, planned, path);
    const stack = overlaps(plan.motor.pulleys, index, path);
    return [
      ...data,
      ...boreFlaws(plan, planned, [...path, "pulley"]),
      ...stack,
      ...(placed === undefined ? [] : shaftFlaws(plan, placed, path)),
    ];
  });
}

function dataFlaws({ loops }: Plan, { pulley, loop }: Planned, path: Path): Diagnostic[] {
  const { height, hubLength, flangeThickness, toothWidth, flangeDiameter, teeth, pitch, bore } = pulley.values;
  const at = [...path, "pulley"];
  const disagrees = (says: string, set: string) =>
    stageDefect("hardware-data-disagrees", { level: "error", path: at, says: `${pulley.key}: ${says}`, set });
  const sizes = { height, flangeThickness, toothWidth, flangeDiameter, teeth, pitch, bore };
  const [zero] = Object.entries(sizes).filter(([, value]) => !(value > 0) || !Number.isFinite(value));
  if (zero !== undefined) return [disagrees(`${zero[0]} is ${zero[1]}`, `${zero[0]}: as measured, above 0`)];
  if (!(hubLength >= 0)) return [disagrees(`hubLength is ${hubLength}`, "hubLength: 0 or more")];
  const sum = hubLength + 2 * flangeThickness + toothWidth;
  const across = (teeth * pitch) / Math.PI;
  const width = loops[loop]?.width ?? 0;
  return [
    ...(Math.abs(height - sum) > SUM_WITHIN + 1e-9
      ? [disagrees(`it is ${f(height)} mm high, its hub, flanges and groove make ${f(sum)}`, `height: ${f(sum)}`)]
      : []),
    ...(flangeDiameter <= across
      ? [disagrees(`its flange of ${f(flangeDiameter)} mm lies inside its ${f(across)} mm of pitch`, "flangeDiameter")]
      : []),
    ...(toothWidth < width + SIDE_PLAY - 1e-9
      ? [
          disagrees(
            `its groove of ${f(toothWidth)} mm is too narrow for a belt of ${f(width)} mm`,
            `loops.${loop}.width: ${f(toothWidth - SIDE_PLAY)} mm or less, or a wider pulley`,
          ),
        ]
      : []),
  ];
}

/** Motor shafts are ground and pulleys reamed: sizes apart are two sizes. */
function boreFlaws({ motor }: Plan, { loop, pulley }: Planned, path: Path): Diagnostic[] {
  const { bore } = pulley.values;
  const { shaftDiameter: shaft } = motor.motor.values;
  // A bore of nothing is told of among the sizes.
  if (!(bore > 0) || (shaft <= bore + BORE.under && shaft >= bore - BORE.over)) return [];
  const how = shaft > bore ? "does not go into" : "is loose in";
  return [
    stageDefect("motor-pulley-bore-off-shaft", {
      level: "error",
      path,
      says: `the shaft of the ${motor.motor.key}, ${f(shaft)} mm, ${how} the ${f(bore)} mm bore of ${loop}'s pulley`,
      found: { value: bore, unit: "mm" },
      limit: { value: shaft, unit: "mm" },
      set: `pulley: { row: "${pulley.key}", bore: ${f(shaft)} } if it is sold or bored so`,
    }),
  ];
}

/** A common flange wants toothed end on toothed end; a hub in between would stand in the other pulley. */
function overlaps(pulleys: readonly Planned[], index: number, path: Path): Diagnostic[] {
  const [below, own] = [pulleys[index - 1], pulleys[index]];
  if (own === undefined || !own.commonFlange) return [];
  const at = [...path, "commonFlange"];
  const overlap = (says: string, set: string) => [
    stageDefect("motor-pulleys-overlap", { level: "error", path: at, says, set }),
  ];
  if (below === undefined)
    return overlap("the lowest pulley has none below to share a flange with", "commonFlange: false");
  const [low, high] = [below.pulley.values.hubLength, own.pulley.values.hubLength];
  const between = [
    ...(below.hub === "up" && low > 0 ? [`the hub of ${below.loop}'s pulley, ${f(low)} mm,`] : []),
    ...(own.hub === "down" && high > 0 ? [`the hub of ${own.loop}'s pulley, ${f(high)} mm,`] : []),
  ];
  if (between.length === 0) return [];
  const cure = `hub: down for ${below.loop} and hub: up for ${own.loop}, or commonFlange: false`;
  return overlap(`${between.join(" and ")} lies where the common flange should be`, cure);
}

/** The toothed part must stand on the shaft with half a millimetre over, and the set screws must meet it. */
function shaftFlaws({ motor }: Plan, { loop, pulley, hub, bottom, plane }: MotorPulley, path: Path): Diagnostic[] {
  const { toothWidth, flangeThickness, height, setScrewFromEnd, setScrewCount } = pulley.values;
  const end = motor.plateTop + motor.motor.values.shaftLength - motor.plate;
  const toothed = plane + toothWidth / 2 + flangeThickness + SHAFT_OVER;
  const screws = hub === "up" && setScrewCount > 0 ? bottom + height - setScrewFromEnd + SHAFT_OVER : toothed;
  const needed = Math.max(toothed, screws);
  if (needed <= end + 1e-9) return [];
  const what = screws > toothed ? "set screws" : "toothed part";
  const shaft = motor.motor.values.shaftLength + needed - end;
  return [
    stageDefect("motor-shaft-too-short", {
      level: "error",
      path,
      says: `the ${what} of ${loop}'s pulley needs the shaft up to ${f(needed)} mm, and it ends at ${f(end)} mm`,
      found: { value: end, unit: "mm" },
      limit: { value: needed, unit: "mm" },
      set: `motor: a shaft of ${up(shaft)} mm, a plate ${up(needed - end)} mm thinner, or another order of pulleys and hubs`,
    }),
  ];
}
