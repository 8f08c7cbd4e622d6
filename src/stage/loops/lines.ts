import { isRefusal } from "../../core/calculation.ts";
import { brief } from "../../mechanics/bounded.ts";
import { idlerDuties } from "../../mechanics/index.ts";
import type { BeltNode } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { bare, fittingMoves, moveInWords, movesInsteadOfIdlers } from "./moves.ts";
import type { SolvedLoop } from "./solve.ts";

/** Returns what the report says of a loop in words: order, stock tried, duties of idlers, feet that could move. */
export function loopLines(plan: Plan, solved: SolvedLoop): string[] {
  const { ordered, nodes, slide, led, tried, chosen } = solved;
  const how = ordered.plan.inOrder ? "as listed" : "the shortest way";
  const lead = led === undefined ? [] : [`the motor stands where ${led.loop} puts it`];
  const moves = movesInsteadOfIdlers(plan, solved).slice(0, 1);
  const shifts = chosen === undefined ? fittingMoves(plan, solved).slice(0, 1) : [];
  return [
    `order, counter-clockwise (${how}): ${nodes.map(({ name, inside }) => (inside ? name : `${name} outside`)).join(", ")}`,
    ...lead,
    ...tried.map(({ loop, lost }) => {
      const sits =
        isRefusal(loop.position) || slide === undefined ? "" : `, ${slide.node} at ${loop.position.at.toFixed(2)} mm`;
      const verdict = lost ?? (loop === chosen?.loop ? "taken" : "fits, further from the middle of the slide");
      return `loop of ${brief(loop.length)} mm, ${brief(loop.teeth)} teeth${sits}: ${verdict}`;
    }),
    ...dutyLines(nodes, slide?.node),
    ...moves.map(
      (move) =>
        `${moveInWords(move)} along ${move.bar} and no idler is needed, with the loop of ${brief(move.length)} mm`,
    ),
    ...shifts.map((move) => `${moveInWords(move)} along ${move.bar} and the loop of ${brief(move.length)} mm fits`),
  ];
}

function dutyLines(nodes: readonly BeltNode[], sliding: string | undefined): string[] {
  const duties = idlerDuties(bare(nodes));
  if (isRefusal(duties)) return [];
  return duties.map(({ name, parkable, says }) => {
    if (!parkable) return `idler ${name} must stay: ${says}`;
    if (name === sliding) return `idler ${name} must stay: it tightens the loop`;
    return `idler ${name} may be parked: ${says}`;
  });
}
