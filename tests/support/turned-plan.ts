import type { Plan } from "../../src/stage/index.ts";

type Spot = [number, number];
type Place = [number, number, number];

/** Takes every place of a plan through a map of the ground, and every direction with it. deg */
interface Motion {
  readonly spot: (at: Spot) => Spot;
  readonly direction: (angle: number) => number;
}

function through(plan: Plan, { spot, direction }: Motion): Plan {
  const place = ([x, y, z]: Place): Place => [...spot([x, y]), z];
  const each = <Thing extends object>(all: Readonly<Record<string, Thing>>, change: (one: Thing) => Partial<Thing>) =>
    Object.fromEntries(Object.entries(all).map(([name, one]) => [name, { ...one, ...change(one) }]));
  return {
    ...plan,
    bars: each(plan.bars, (bar) => ({ from: place(bar.from), to: place(bar.to), facing: direction(bar.facing) })),
    screws: each(plan.screws, ({ at }) => ({ at: spot(at) })),
    motor: { ...plan.motor, at: spot(plan.motor.at) },
    loops: each(plan.loops, ({ slide }) =>
      slide === undefined ? {} : { slide: { ...slide, direction: direction(slide.direction) } },
    ),
    idlers: each(plan.idlers, ({ at }) => ({ at: spot(at) })),
    plate: { ...plan.plate, at: spot(plan.plate.at), mounts: each(plan.plate.mounts, ({ at }) => ({ at: spot(at) })) },
    masses: each(plan.masses, ({ at }) => ({ at: spot(at) })),
  } as Plan;
}

/** Returns the machine turned about the origin by an angle, deg, and moved. The plate's outline is left as it is. */
export function turnedPlan(plan: Plan, angle: number, [dx, dy]: Spot = [0, 0]): Plan {
  const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
  const spot = ([x, y]: Spot): Spot => [x * c - y * s + dx, x * s + y * c + dy];
  return through(plan, { spot, direction: (other) => other + angle });
}

/** Returns the machine as a mirror along the y-axis shows it. */
export function mirroredPlan(plan: Plan): Plan {
  return through(plan, { spot: ([x, y]) => [-x, y], direction: (angle) => 180 - angle });
}
