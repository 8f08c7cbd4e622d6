import { isRefusal } from "../../src/core/calculation.ts";
import { beltLoop } from "../../src/mechanics/belt-loop.ts";
import type { Plan, Stage } from "../../src/stage/index.ts";
import type { FootChoice, LoopChoice, Placement } from "../../src/stage/machine.ts";

type Place = [number, number, number];

/**
 * The same machine laid differently: mirrored in x when asked, then turned about z by whole quarters, in what was
 * placed and in the plan. Printed parts are not mirrored themselves, only put where their mirrored copies would be.
 */
export function laidDifferently(stage: Stage, quarters: 0 | 1 | 2 | 3, mirror: boolean): Stage {
  const flat = ([x, y]: readonly [number, number, ...number[]]): [number, number] => {
    let [a, b] = [mirror ? -x : x, y];
    for (let turn = 0; turn < quarters; turn++) [a, b] = [-b, a];
    return [a, b];
  };
  const solid = ([x, y, z]: readonly [number, number, number]): Place => [...flat([x, y]), z];
  const angle = (deg: number) => (mirror ? -deg : deg) + 90 * quarters;
  const placement = (at: Placement): Placement => ({ ...at, origin: solid(at.origin), angle: angle(at.angle) });
  const foot = (choice: FootChoice): FootChoice => ({
    ...choice,
    part: { ...choice.part, placement: placement(choice.part.placement) },
  });
  return {
    ...stage,
    plan: planLaid(stage.plan, { flat, solid, angle, sides: quarters % 2 === 1, mirror }),
    loops: stage.loops.map((loop) => loopLaid(loop, flat, mirror)),
    feet: stage.feet.map(foot),
    parts: stage.parts.map((part) => ({ ...part, placement: placement(part.placement) })),
  };
}

interface Laying {
  readonly flat: (at: readonly [number, number]) => [number, number];
  readonly solid: (at: readonly [number, number, number]) => Place;
  readonly angle: (deg: number) => number;
  readonly sides: boolean;
  readonly mirror: boolean;
}

function planLaid(plan: Plan, { flat, solid, angle, sides, mirror }: Laying): Plan {
  const each = <Thing>(things: Readonly<Record<string, Thing>>, lay: (thing: Thing) => Thing) =>
    Object.fromEntries(Object.entries(things).map(([name, thing]) => [name, lay(thing)]));
  const swapped = ([x, y]: [number, number]): [number, number] => (sides ? [y, x] : [x, y]);
  const { heater } = plan.plate;
  return {
    ...plan,
    bars: each(plan.bars, (bar) => ({
      ...bar,
      from: solid(bar.from),
      to: solid(bar.to),
      facing: angle(bar.facing),
    })),
    screws: each(plan.screws, (screw) => ({ ...screw, at: flat(screw.at) })),
    motor: { ...plan.motor, at: flat(plan.motor.at) },
    loops: each(plan.loops, (loop) => {
      if (loop.slide === undefined) return loop;
      const direction = mirror ? angle(180 + loop.slide.direction) : angle(loop.slide.direction);
      return { ...loop, slide: { ...loop.slide, direction } };
    }),
    plate: {
      ...plan.plate,
      at: flat(plan.plate.at),
      size: swapped(plan.plate.size),
      heater: heater && {
        ...heater,
        size: swapped(heater.size),
        ...(heater.at === undefined ? {} : { at: flat(heater.at) }),
      },
    },
  };
}

function loopLaid(choice: LoopChoice, flat: Laying["flat"], mirror: boolean): LoopChoice {
  const turned = choice.nodes.map((node) => {
    const [x, y] = flat([node.x, node.y]);
    return { ...node, x, y };
  });
  const nodes = mirror ? turned.reverse() : turned;
  const belt = beltLoop(nodes);
  if (isRefusal(belt)) throw new Error(belt.refused);
  return { ...choice, nodes, belt };
}
