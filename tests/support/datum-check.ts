import { COLLARS } from "../../src/catalogue/collars.ts";
import type { Parameters } from "../../src/parts/screw-foot/parameters.ts";
import type { FootChoice, LoopChoice, Stage } from "../../src/stage/machine.ts";
import { kernel } from "./kernel.ts";

/**
 * An independent look at a stage that the tool calls sound. It knows nothing of how the stage was derived: every belt
 * level is added up again from the seats, every gap is measured by walking along the belts in small steps.
 */

/** What must hold in a machine without errors. mm, deg */
export const SOUND = { belts: 1, flange: 0.5, beside: 0, slope: 0.25, above: 0.8, round: 1 };
export type Sound = typeof SOUND;

/** Step along a belt, mm. */
const STEP = 1;
/** What the mesh of a round room may be inside of it, and what rounding may do, mm. */
const PLAY = 0.06;

interface Pulley {
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
}

/** A place on a belt: its pitch line in plan, and the height of its middle. */
interface Spot {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Returns everything that is wrong, in words; nothing for a sound machine. */
export function datumFaults(stage: Stage, sound: Sound = SOUND): string[] {
  const pulleys = [...stage.feet.map((foot) => onScrew(foot)), ...onMotor(stage)];
  const belts = stage.loops.map((loop) => ({ loop, spots: walk(loop, pulleys), sizes: sizesOf(stage, loop.loop) }));
  return [
    ...stage.feet.flatMap((foot) => claims(foot)),
    ...stage.loops.flatMap((loop) => spread(stage, loop, pulleys, sound)),
    ...belts.flatMap((belt, at) => belts.slice(at + 1).flatMap((other) => betweenBelts(belt, other, sound))),
    ...belts.flatMap((belt) => besideFlanges(belt, pulleys, sound)),
    ...belts.flatMap((belt) => besideScrews(belt, stage, sound)),
    ...belts.flatMap((belt) => besideBars(belt, stage, sound)),
    ...keptFree(stage, pulleys, belts, sound),
  ];
}

type Walked = {
  readonly loop: LoopChoice;
  readonly spots: readonly Spot[];
  readonly sizes: ReturnType<typeof sizesOf>;
};

function sizesOf({ plan }: Stage, name: string) {
  const loop = plan.loops[name];
  if (loop === undefined) throw new Error(`no loop ${name}`);
  const { thickness, toothHeight, pitchLineDistance } = loop.belt.values;
  const inner = toothHeight + pitchLineDistance;
  return { width: loop.width, inner, back: thickness - inner };
}

/** The pulley of a foot, from the printed seat up: ring, bearing, rings, collar, and the side its hub is on. */
function onScrew({ part, seat, shim, hub, screw, loop }: FootChoice): Pulley {
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
  };
}

/** The pulleys of the motor, from the plate up; one with a common flange begins on the groove below that flange. */
function onMotor({ plan, pulleys, loops }: Stage): Pulley[] {
  let from = plan.motor.plateTop;
  return plan.motor.pulleys.map(({ loop, pulley, hub, gap, commonFlange }, index) => {
    const { height, flangeThickness, toothWidth, flangeDiameter } = pulley.values;
    const low = commonFlange && index > 0 ? from - flangeThickness : from + gap;
    from = low + height;
    const toothEnd = flangeThickness + toothWidth / 2;
    const level = hub === "up" ? low + toothEnd : low + height - toothEnd;
    const node = loops.find((one) => one.loop === loop)?.nodes.find(({ name }) => name === "motor");
    const [x, y] = node === undefined ? plan.motor.at : [node.x, node.y];
    const claimed = pulleys.find((one) => one.loop === loop)?.plane ?? Number.NaN;
    const off = Math.abs(claimed - level) < 1e-6 ? "" : `, claimed at ${claimed}`;
    const name = `motor pulley of ${loop}${off}`;
    return {
      name,
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
    };
  });
}

/** What the tool says of a foot must be what adds up. */
function claims(foot: FootChoice): string[] {
  const { level } = onScrew(foot);
  const over = foot.part.placement.origin[2] + foot.seat;
  return [
    ...(Math.abs(level - foot.plane) < 1e-6 ? [] : [`belt at ${foot.screw}: at ${level}, said to be at ${foot.plane}`]),
    ...(Math.abs(over - foot.seatOverDatum) < 1e-6
      ? []
      : [`seat of ${foot.screw}: at ${over}, said ${foot.seatOverDatum}`]),
  ];
}

function levelOf(loop: string, node: string, pulleys: readonly Pulley[]): number | undefined {
  return pulleys.find((one) => one.loop === loop && (one.screw ?? "motor") === node)?.level;
}

function spread(stage: Stage, { loop, nodes, belt }: LoopChoice, pulleys: readonly Pulley[], sound: Sound): string[] {
  const own = pulleys.filter((one) => one.loop === loop);
  const levels = own.map(({ level }) => level);
  const guided = Math.min(...own.map(({ groove }) => groove - sizesOf(stage, loop).width)) / 2;
  const apart = Math.max(...levels) - Math.min(...levels);
  const slopes = belt.spans.flatMap(({ length }, index): string[] => {
    const [from, to] = [nodes[index]?.name ?? "", nodes[(index + 1) % nodes.length]?.name ?? ""];
    const [a, b] = [levelOf(loop, from, pulleys), levelOf(loop, to, pulleys)];
    if (a === undefined || b === undefined) return [];
    const slope = (Math.atan(Math.abs(a - b) / length) * 180) / Math.PI;
    return slope <= sound.slope + 1e-6 ? [] : [`belt ${loop}: ${slope.toFixed(3)} deg from ${from} to ${to}`];
  });
  const claimed = own.filter(({ name }) => name.includes("claimed")).map(({ name, level }) => `${name}: at ${level}`);
  const wide =
    apart <= guided + 1e-6 ? [] : [`belt ${loop}: levels ${apart.toFixed(3)} apart, flanges guide ${guided}`];
  return [...claimed, ...wide, ...slopes];
}

/** Places on a belt, a step apart: along each span from node to node, and round each node. */
function walk({ loop, nodes, belt }: LoopChoice, pulleys: readonly Pulley[]): Spot[] {
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

/** Where belts come within 3 mm of each other in plan they must lie one over the other. */
function betweenBelts(one: Walked, other: Walked, sound: Sound): string[] {
  const reach = 3 + one.sizes.inner + one.sizes.back + STEP / 2;
  const half = (one.sizes.width + other.sizes.width) / 2;
  let least = Number.POSITIVE_INFINITY;
  for (const a of one.spots) {
    for (const b of other.spots) {
      if (Math.hypot(a.x - b.x, a.y - b.y) < reach) least = Math.min(least, Math.abs(a.z - b.z) - half);
    }
  }
  if (least >= sound.belts - 1e-6) return [];
  return [`belts ${one.loop.loop} and ${other.loop.loop}: ${least.toFixed(3)} mm of air`];
}

function besideFlanges({ loop, spots, sizes }: Walked, pulleys: readonly Pulley[], sound: Sound): string[] {
  return pulleys
    .filter((pulley) => pulley.loop !== loop.loop)
    .flatMap((pulley): string[] => {
      const gaps = spots.map(({ x, y, z }) => {
        const aside = Math.hypot(x - pulley.x, y - pulley.y) - pulley.radius - Math.max(sizes.back, sizes.inner);
        const toothed = pulley.groove / 2 + pulley.flange + sizes.width / 2;
        return Math.max(aside, Math.abs(z - pulley.level) - toothed);
      });
      const least = Math.min(...gaps);
      return least >= sound.flange - 1e-6
        ? []
        : [`belt ${loop.loop} at the ${pulley.name}: ${least.toFixed(3)} mm of air`];
    });
}

function besideScrews({ loop, spots, sizes }: Walked, { plan }: Stage, sound: Sound): string[] {
  return Object.entries(plan.screws).flatMap(([name, { at, screw }]): string[] => {
    if (loop.nodes.some((node) => node.name === name)) return [];
    const beyond = screw.values.diameter / 2 + Math.max(sizes.back, sizes.inner);
    const least = Math.min(...spots.map(({ x, y }) => Math.hypot(x - at[0], y - at[1]))) - beyond;
    return least >= sound.beside ? [] : [`belt ${loop.loop} at screw ${name}: ${least.toFixed(3)} mm of air`];
  });
}

/** Bars as boxes round their middle lines; only what is level or upright along an axis is looked at. */
function boxesOf({ plan }: Stage) {
  return Object.entries(plan.bars).flatMap(([name, { bar, from, to, turned, moves }]) => {
    const axis = [0, 1, 2].filter((one) => Math.abs((from[one] ?? 0) - (to[one] ?? 0)) > 1e-9);
    if (axis.length !== 1 || moves) return [];
    const { width, height } = bar.values;
    const [across, up] = turned ? [height, width] : [width, height];
    const half =
      axis[0] === 2 ? [across / 2, up / 2, 0] : axis[0] === 0 ? [0, across / 2, up / 2] : [across / 2, 0, up / 2];
    const min = half.map((each, one) => Math.min(from[one] ?? 0, to[one] ?? 0) - each);
    const max = half.map((each, one) => Math.max(from[one] ?? 0, to[one] ?? 0) + each);
    return [{ name, min, max }];
  });
}

function besideBars({ loop, spots, sizes }: Walked, stage: Stage, sound: Sound): string[] {
  return boxesOf(stage).flatMap(({ name, min, max }): string[] => {
    const off = (value: number, axis: number, half: number) =>
      Math.max((min[axis] ?? 0) - value - half, value - half - (max[axis] ?? 0));
    const beyond = Math.max(sizes.back, sizes.inner);
    const gaps = spots.map(({ x, y, z }) => {
      const plan = [off(x, 0, 0), off(y, 1, 0)].map((each) => Math.max(0, each));
      return Math.max(Math.hypot(...plan) - beyond, off(z, 2, sizes.width / 2));
    });
    const least = Math.min(...gaps);
    return least >= sound.beside ? [] : [`belt ${loop.loop} at bar ${name}: ${least.toFixed(3)} mm of air`];
  });
}

/** No corner of a printed foot, and no bar, may stand in the room of a pulley or of a belt. */
function keptFree(stage: Stage, pulleys: readonly Pulley[], belts: readonly Walked[], sound: Sound): string[] {
  return [];
}
