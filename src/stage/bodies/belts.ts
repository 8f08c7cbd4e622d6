import type { Vec2 } from "../../geometry/mesh.ts";
import { joined, type Profile, polygon } from "../../geometry/profile.ts";
import { prism, type Solid, unite } from "../../geometry/solid.ts";
import type { LoopSpan } from "../../mechanics/belt-loop.ts";
import type { MeshedNode } from "../../mechanics/idler-duties.ts";
import type { LoopChoice } from "../machine.ts";
import type { PlanLoop } from "../schema/index.ts";
import type { Drawn } from "./body.ts";
import { type Machine, planeAt } from "./machine-data.ts";

/** Largest distance between an arc of a belt and its polygon, mm. */
const CHORD = 0.02;

/** How far the belt reaches to either side of its pitch line, mm. Its teeth point to the inside of the loop. */
interface Reach {
  readonly inner: number;
  readonly outer: number;
}

/** A piece of belt in plan and the heights between which it runs, mm over the datum. */
interface Stretch {
  readonly outline: Profile;
  readonly low: number;
  readonly high: number;
}

/** Returns the belts as they run: strips along the spans, arcs round the nodes, on the planes of their pulleys. */
export function belts(machine: Machine): Drawn[] {
  return machine.stage.loops.flatMap((choice): Drawn[] => {
    const loop = machine.stage.plan.loops[choice.loop];
    if (loop === undefined) return [];
    const stretches = stretchesOf(machine, choice, loop);
    if (stretches.length === 0) return [];
    const name = `belt ${choice.loop}`;
    return [{ name, solid: together(stretches), belongsTo: [`loop ${choice.loop}`], path: ["loops", choice.loop] }];
  });
}

function stretchesOf(machine: Machine, { loop: name, nodes, belt }: LoopChoice, loop: PlanLoop): Stretch[] {
  const { thickness, toothHeight, pitchLineDistance } = loop.belt.values;
  const inner = toothHeight + pitchLineDistance;
  const reach = { inner, outer: Math.max(0, thickness - inner) };
  const planes = nodes.map((node) => planeAt(machine, name, node.name));
  return nodes.flatMap((node, index): Stretch[] => {
    const next = (index + 1) % nodes.length;
    const [before, after, here, there] = [belt.spans.at(index - 1), belt.spans[index], planes[index], planes[next]];
    if (before === undefined || after === undefined || here === undefined || there === undefined) return [];
    const half = loop.width / 2;
    return [
      { outline: arc(node, before, belt.wraps[index] ?? 0, reach), low: here - half, high: here + half },
      { outline: strip(after, reach), low: Math.min(here, there) - half, high: Math.max(here, there) + half },
    ];
  });
}

/** Stretches of one height are one prism: a union of profiles costs less than one of solids. */
function together(stretches: readonly Stretch[]): Solid {
  const levels = [...new Set(stretches.map(({ low, high }) => `${low.toFixed(6)} ${high.toFixed(6)}`))];
  const prisms = levels.flatMap((level) => {
    const alike = stretches.filter(({ low, high }) => `${low.toFixed(6)} ${high.toFixed(6)}` === level);
    const [first] = alike;
    return first === undefined ? [] : [prism(joined(...alike.map(({ outline }) => outline)), first.low, first.high)];
  });
  return unite(...prisms);
}

function strip({ from, to, length }: LoopSpan, { inner, outer }: Reach): Profile {
  const [ux, uy] = length > 0 ? [(to.x - from.x) / length, (to.y - from.y) / length] : [0, 0];
  const aside = (point: { x: number; y: number }, left: number): Vec2 => [point.x - left * uy, point.y + left * ux];
  return polygon([aside(from, -outer), aside(to, -outer), aside(to, inner), aside(from, inner)]);
}

/** The belt round a node, from where it lands: to the left round an inside node, to the right round an outside one. */
function arc({ x, y, radius, inside }: MeshedNode, landing: LoopSpan, wrap: number, { inner, outer }: Reach): Profile {
  const [small, large] = inside ? [radius - inner, radius + outer] : [radius - outer, radius + inner];
  const start = Math.atan2(landing.to.y - y, landing.to.x - x);
  const sweep = ((inside ? 1 : -1) * wrap * Math.PI) / 180;
  const finest = 2 * Math.acos(Math.max(0, 1 - CHORD / large));
  const steps = Math.max(1, Math.ceil(Math.abs(sweep) / finest));
  const along = (around: number): Vec2[] =>
    Array.from({ length: steps + 1 }, (_, step): Vec2 => {
      const angle = start + (sweep * step) / steps;
      return [x + around * Math.cos(angle), y + around * Math.sin(angle)];
    });
  const sides = [...along(large), ...along(Math.max(0.1, small)).reverse()];
  return polygon(inside ? sides : sides.reverse());
}
