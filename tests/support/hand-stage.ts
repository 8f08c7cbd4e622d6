import { results } from "../../src/core/calculation.ts";
import { pitchRadius } from "../../src/mechanics/pitch-radius.ts";
import { derive as deriveFoot } from "../../src/parts/screw-foot/derive/index.ts";
import { screwFoot } from "../../src/parts/screw-foot/index.ts";
import { schema as footSchema } from "../../src/parts/screw-foot/parameters.ts";
import { derive as deriveMount } from "../../src/parts/tram-mount/derive.ts";
import { schema as mountSchema } from "../../src/parts/tram-mount/parameters.ts";
import { derive as deriveWheels } from "../../src/parts/wheel-plate/derive.ts";
import { schema as wheelSchema } from "../../src/parts/wheel-plate/parameters.ts";
import type { Plan, Stage } from "../../src/stage/index.ts";
import type { FootChoice, LoopChoice, MotorPulley, PlacedPart } from "../../src/stage/machine.ts";
import { handPlan } from "./hand-plan.ts";
import { laidLoop } from "./laid-loop.ts";
import { printerWith } from "./printer.ts";

export const PRINTER = printerWith();
export const printerOf = () => PRINTER;

type Change = Readonly<Record<string, unknown>>;

/** What a test changes in the machine that is put together by hand. */
export interface HandChanges {
  readonly plan?: Change;
  /** Parameters of one foot, by its screw. */
  readonly feet?: Readonly<Record<string, Change>>;
}

/** Radii and order of the loops, counter-clockwise in plan. */
const ORDER: Readonly<Record<string, readonly string[]>> = { low: ["A", "B", "motor"], high: ["motor", "C"] };
/** Which way each foot looks: away from its bar. deg */
const FACING: Readonly<Record<string, number>> = { A: 0, B: 0, C: 180 };

/**
 * The wide machine put together by hand, so that tests of its bodies do not rest on how the tool derives it: two motor
 * pulleys stacked tooth end to tooth end, three feet on the sides of their bars, three tram mounts, two carriages.
 */
export function handStage(changes: HandChanges = {}): Stage {
  const plan = handPlan(changes.plan);
  const pulleys = motorStack(plan);
  const loops = Object.keys(plan.loops).map((name) => loopOf(plan, name));
  const feet = Object.keys(plan.screws).map((screw) => footOf(plan, screw, pulleys, loops, changes.feet?.[screw]));
  const parts = [...feet.map(({ part }) => part), ...mountsOf(plan), ...carriagesOf(plan)];
  return { plan, pulleys, loops, loads: undefined, feet, parts, sections: [], diagnostics: [] };
}

function motorStack({ motor }: Plan): MotorPulley[] {
  let from = motor.plateTop;
  return motor.pulleys.map(({ loop, pulley, hub, gap, commonFlange }) => {
    const { height, toothWidth, flangeThickness } = pulley.values;
    const bottom = commonFlange ? from - flangeThickness : from + gap;
    const up = flangeThickness + toothWidth / 2;
    from = bottom + height;
    return { loop, pulley, hub, bottom, top: from, plane: bottom + (hub === "up" ? up : height - up) };
  });
}

function loopOf(plan: Plan, loop: string): LoopChoice {
  const nodes = (ORDER[loop] ?? []).map((name) => {
    const motor = plan.motor.pulleys.find((one) => one.loop === loop)?.pulley.values;
    const teeth = name === "motor" ? (motor?.teeth ?? 20) : 36;
    const [x, y] = name === "motor" ? plan.motor.at : (plan.screws[name]?.at ?? [0, 0]);
    const body = { flange: name === "motor" ? 8 : 13.5, groove: 7, rim: 1, pitch: 2 };
    const kind: "motor" | "screw" = name === "motor" ? "motor" : "screw";
    const { radius } = results(pitchRadius, { teeth, pitch: 2 });
    return { name, x, y, teeth, inside: true, radius, kind, ...body };
  });
  return laidLoop(loop, nodes);
}

function footOf(
  plan: Plan,
  screw: string,
  pulleys: readonly MotorPulley[],
  loops: readonly LoopChoice[],
  change: Change = {},
): FootChoice {
  const choice = loops.find(({ nodes }) => nodes.some(({ name }) => name === screw));
  const loop = choice?.loop ?? "";
  const wanted = pulleys.find((one) => one.loop === loop)?.plane ?? 0;
  const angle = FACING[screw] ?? 0;
  const [x, y] = plan.screws[screw]?.at ?? [0, 0];
  const parameters = footSchema.parse({
    mount: "on-side",
    bar: "30x30 slot 8",
    axisOffset: 32,
    thrust: "collar",
    pulley: "36 teeth 2 mm",
    beltPlane: wanted,
    beltSpans: choice === undefined ? [] : spansAt(choice, screw, angle),
    label: `F${screw}`,
    ...change,
  });
  const derived = deriveFoot(parameters, PRINTER);
  const part: PlacedPart = {
    name: `foot-${screw.toLowerCase()}`,
    family: screwFoot.name,
    parameters,
    derived: [],
    path: ["screws", screw],
    placement: { origin: [x, y, 0], angle },
    moves: false,
  };
  return {
    screw,
    loop,
    bar: plan.screws[screw]?.bar ?? "",
    hub: derived.hubPoints,
    seat: derived.seat,
    seatOverDatum: derived.seat,
    shim: derived.shim,
    give: derived.sink / derived.thrust,
    plane: derived.plane,
    residual: derived.plane - wanted,
    candidates: [],
    part,
  };
}

/** The two spans of a loop as they leave one of its pulleys, in the frame of a foot that is turned by `angle`. */
function spansAt({ nodes, belt }: LoopChoice, screw: string, angle: number) {
  const at = nodes.findIndex(({ name }) => name === screw);
  const turned = (direction: number) => (((direction - angle) % 360) + 360) % 360;
  const [leaving, landing] = [belt.spans[at], belt.spans.at(at - 1)];
  return [
    { azimuth: turned(leaving?.direction ?? 0), side: "right" },
    { azimuth: turned((landing?.direction ?? 0) + 180), side: "left" },
  ];
}

/** Mounts on the inner sides of the two arms. */
function mountsOf(plan: Plan): PlacedPart[] {
  return Object.entries(plan.plate.mounts).map(([name, { at, type, bar }], index) => {
    const arm = plan.bars[bar ?? ""];
    const parameters = mountSchema.parse({ type, bar: "30x30 slot 8", mountNumber: index + 1 });
    const derived = deriveMount(parameters, PRINTER);
    const [, y = 0, z = 0] = arm?.from ?? [];
    const inward = y < plan.plate.at[1] ? 1 : -1;
    return {
      name: `mount-${name}`,
      family: "tram-mount",
      parameters,
      derived: [],
      path: ["plate", "mounts", name],
      placement: {
        origin: [at[0], y + inward * (15 + derived.reach), z - derived.rowHeight],
        angle: inward > 0 ? 0 : 180,
      },
      moves: true,
    };
  });
}

/** Plates behind the posts, their wheels on the posts' left and right. */
function carriagesOf(plan: Plan): PlacedPart[] {
  return Object.entries(plan.carriages).map(([name, { post }]) => {
    const bar = plan.bars[post];
    const parameters = wheelSchema.parse({
      barWidth: 30,
      barDepth: 30,
      module: 30,
      armsAt: [],
      eccentric: { row: "6 mm", height: 10 },
    });
    const { barGap } = deriveWheels(parameters, PRINTER);
    const [x = 0, y = 0] = bar?.from ?? [];
    return {
      name: `carriage-${name}`,
      family: "wheel-plate",
      parameters,
      derived: [],
      path: ["carriages", name],
      placement: { origin: [x, y + 15 + barGap, 200], angle: 0, upright: true },
      moves: true,
    };
  });
}
