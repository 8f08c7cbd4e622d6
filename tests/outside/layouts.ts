import { distance, type LoopNode } from "../../src/mechanics/index.ts";
import { hullOfCircles } from "./hull-of-circles.ts";
import type { Dice } from "./random.ts";

/** Pulleys thrown on a table, all inside; listed as the hull meets them, sometimes with a hidden one, or shuffled. */
export function thrown(roll: Dice): LoopNode[] {
  const count = roll.whole(2, 9);
  const pulleys = Array.from({ length: count }, (_, index) => pulley(roll, `n${index}`));
  const { met } = hullOfCircles(pulleys);
  const seen = [...new Set(met)].map((index) => pulleys[index] as LoopNode);
  const hidden = pulleys.filter((each) => !seen.includes(each));
  const kind = roll.between(0, 1);
  if (kind < 0.15) return roll.shuffled(seen);
  return kind < 0.3 ? [...seen, ...hidden] : seen;
}

function pulley(roll: Dice, name: string): LoopNode {
  return { name, x: roll.between(0, 600), y: roll.between(0, 450), radius: roll.between(4, 30), inside: true };
}

/** Inside pulleys round a middle with outside idlers near their spans, pressing or just missing; often not sound. */
export function withIdlers(roll: Dice): LoopNode[] {
  const count = roll.whole(2, 5);
  const first = roll.between(0, 2 * Math.PI);
  const pulleys = Array.from({ length: count }, (_, index): LoopNode => {
    const angle = first + (2 * Math.PI * (index + roll.between(-0.3, 0.3))) / count;
    const out = roll.between(80, 300);
    const place = { x: out * Math.cos(angle), y: out * Math.sin(angle) };
    return { name: `n${index}`, ...place, radius: roll.between(5, 35), inside: true };
  });
  const nodes = pulleys.flatMap((from, index) => {
    const to = pulleys[(index + 1) % count] as LoopNode;
    return roll.between(0, 1) < 0.6 ? [from, idler(roll, from, to, `i${index}`)] : [from];
  });
  return roll.between(0, 1) < 0.1 ? roll.shuffled(nodes) : nodes;
}

/** An idler beside the line of two pulleys, on its outer (right-hand) side more often than not. */
function idler(roll: Dice, from: LoopNode, to: LoopNode, name: string): LoopNode {
  const apart = distance(from, to);
  const [along, across] = [roll.between(0.2, 0.8), roll.between(-60, 45)];
  const [ux, uy] = [(to.x - from.x) / apart, (to.y - from.y) / apart];
  const place = {
    x: from.x + along * (to.x - from.x) + across * uy,
    y: from.y + along * (to.y - from.y) - across * ux,
  };
  return { name, ...place, radius: roll.between(4, 15), inside: false };
}

export function overlapping(nodes: readonly LoopNode[]): boolean {
  return nodes.some((a, index) =>
    nodes.slice(index + 1).some((b) => Math.sqrt((a.x - b.x) ** 2 + (a.y - b.y) ** 2) <= a.radius + b.radius),
  );
}
