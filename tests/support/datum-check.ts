import type { FootChoice, LoopChoice, PrinterOf, Stage } from "../../src/stage/machine.ts";
import { boxesOf, roomsEntered } from "./datum-rooms.ts";
import { levelOf, onMotor, onScrew, type Pulley, STEP, sizesOf, type Walked, walk } from "./datums.ts";

/**
 * An independent look at a stage that the tool calls sound. It knows nothing of how the stage was derived: every belt
 * level is added up again from the seats, every gap is measured by walking along the belts in small steps.
 */

/** What must hold in a machine without errors. mm, deg */
export const SOUND = { belts: 1, flange: 0.5, beside: 0.3, slope: 0.25, above: 0.8, round: 1 };
export type Sound = typeof SOUND;

/** Returns everything that is wrong, in words; nothing for a sound machine. */
export function datumFaults(stage: Stage, printer: PrinterOf, sound: Sound = SOUND): string[] {
  const pulleys = [...stage.feet.map((foot) => onScrew(foot)), ...onMotor(stage)];
  const belts = stage.loops.map((loop) => ({ loop, spots: walk(loop, pulleys), sizes: sizesOf(stage, loop.loop) }));
  return [
    ...stage.feet.flatMap((foot) => claims(foot)),
    ...planesClaimed(stage),
    ...stage.loops.flatMap((loop) => spread(stage, loop, pulleys, sound)),
    ...belts.flatMap((belt, at) => belts.slice(at + 1).flatMap((other) => betweenBelts(belt, other, sound))),
    ...belts.flatMap((belt) => besideFlanges(belt, pulleys, sound)),
    ...belts.flatMap((belt) => besideScrews(belt, stage, sound)),
    ...belts.flatMap((belt) => besideBars(belt, stage, sound)),
    ...roomsEntered(stage, printer, pulleys, belts, sound),
  ];
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

function planesClaimed(stage: Stage): string[] {
  return onMotor(stage).flatMap(({ name, loop, level }): string[] => {
    const said = stage.pulleys.find((one) => one.loop === loop)?.plane ?? Number.NaN;
    return Math.abs(said - level) < 1e-6 ? [] : [`${name}: at ${level}, said to be at ${said}`];
  });
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
  const wide =
    apart <= guided + 1e-6 ? [] : [`belt ${loop}: levels ${apart.toFixed(3)} apart, flanges guide ${guided}`];
  return [...wide, ...slopes];
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
