import { COLLARS } from "../../src/catalogue/collars.ts";
import type { Parameters } from "../../src/parts/screw-foot/parameters.ts";
import type { FootChoice, LoopChoice, Stage } from "../../src/stage/machine.ts";

/** Step along a belt, mm. */
export const STEP = 1;

export interface Pulley {
  readonly name: string;
  readonly loop: string;
  readonly screw: string | undefined;
  readonly x: number;
  readonly y: number;
  readonly low: number;
  readonly high: number;
  readonly level: number;
  readonly groove: number;
  readonly flange: number;
  readonly radius: number;
  readonly hub: number;
  readonly hubUp: boolean;
}

/** A place on a belt: its pitch line in plan, and the height of its middle. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export type Walked = {
  readonly loop: LoopChoice;
  readonly spots: readonly Spot[];
  readonly sizes: ReturnType<typeof sizesOf>;
};

export function sizesOf({ plan }: Stage, name: string) {
  const loop = plan.loops[name];
  if (loop === undefined) throw new Error(`no loop ${name}`);
  const { thickness, toothHeight, pitchLineDistance } = loop.belt.values;
  const inner = toothHeight + pitchLineDistance;
  return { width: loop.width, inner, back: thickness - inner };
}

/** The pulley of a foot, from the printed seat up: ring, bearing, rings, collar, and the side its hub is on. */
export function onScrew({ part, seat, shim, hub, screw, loop }: FootChoice): Pulley {
  const given = part.parameters as Parameters;
  const [x, y, base] = part.placement.origin;
  const pulley = given.pulley.values;
  const rings = given.washers?.map(({ values }) => values.thickness) ?? [1];
  const bore = given.bearing.values.bore;
  const clamp =
    given.collar?.values.width ?? COLLARS.rows.find(({ key }) => key === `${bore} clamp`)?.values.width ?? 9;
  const low = [seat, shim, given.bearing.values.width, ...rings, given.thrust === "collar" ? clamp : 0].reduce(
    (sum, each) => sum + each,
    base,
  );
  const toothEnd = pulley.flangeThickness + pulley.toothWidth / 2;
  return {
    name: `pulley of ${screw}`,
    loop,
    screw,
    x,
    y,
    low,
    high: low + pulley.height,
    level: hub === "up" ? low + toothEnd : low + pulley.height - toothEnd,
    groove: pulley.toothWidth,
    flange: pulley.flangeThickness,
    radius: pulley.flangeDiameter / 2,
    hub: pulley.hubDiameter / 2,
    hubUp: hub === "up",
  };
}

/** The pulleys of the motor, from the plate up; one with a common flange begins on the groove below that flange. */
export function onMotor({ plan, loops }: Stage): Pulley[] {
  let from = plan.motor.plateTop;
  return plan.motor.pulleys.map(({ loop, pulley, hub, gap, commonFlange }, index, all): Pulley => {
    const { height, flangeThickness, toothWidth, flangeDiameter, hubDiameter } = pulley.values;
    const thinner = Math.min(flangeThickness, all[index - 1]?.pulley.values.flangeThickness ?? 0);
    const low = commonFlange && index > 0 ? from - thinner : from + gap;
    from = low + height;
    const toothEnd = flangeThickness + toothWidth / 2;
    const level = hub === "up" ? low + toothEnd : low + height - toothEnd;
    const node = loops.find((one) => one.loop === loop)?.nodes.find(({ name }) => name === "motor");
    const [x, y] = node === undefined ? plan.motor.at : [node.x, node.y];
    return {
      name: `motor pulley of ${loop}`,
      loop,
      screw: undefined,
      x,
      y,
      low,
      high: from,
      level,
      groove: toothWidth,
      flange: flangeThickness,
      radius: flangeDiameter / 2,
      hub: hubDiameter / 2,
      hubUp: hub === "up",
    };
  });
}

export function levelOf(loop: string, node: string, pulleys: readonly Pulley[]): number | undefined {
  return pulleys.find((one) => one.loop === loop && (one.screw ?? "motor") === node)?.level;
}

/** Places on a belt, a step apart: along each span from node to node, and round each node. */
export function walk({ loop, nodes, belt }: LoopChoice, pulleys: readonly Pulley[]): Spot[] {
  const plane = pulleys.find((one) => one.loop === loop)?.level ?? 0;
  const level = (at: number) => levelOf(loop, nodes[at % nodes.length]?.name ?? "", pulleys) ?? plane;
  return nodes.flatMap((node, at): Spot[] => {
    const span = belt.spans[at];
    if (span === undefined) return [];
    const count = Math.max(2, Math.ceil(span.length / STEP));
    const straight = Array.from({ length: count + 1 }, (_, step): Spot => {
      const t = step / count;
      const [x, y] = [span.from.x + t * (span.to.x - span.from.x), span.from.y + t * (span.to.y - span.from.y)];
      return { x, y, z: level(at) + t * (level(at + 1) - level(at)) };
    });
    const leaves = Math.atan2(span.from.y - node.y, span.from.x - node.x);
    const wrap = (((belt.wraps[at] ?? 0) * Math.PI) / 180) * (node.inside ? -1 : 1);
    const round = Array.from({ length: 73 }, (_, step): Spot => {
      const angle = leaves + (wrap * step) / 72;
      return { x: node.x + node.radius * Math.cos(angle), y: node.y + node.radius * Math.sin(angle), z: level(at) };
    });
    return [...straight, ...round];
  });
}
