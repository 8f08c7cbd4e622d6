import type { Diagnostic } from "../../core/diagnostic.ts";
import { encloses } from "../../mechanics/loop-inside.ts";
import type { MotorPulley } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { stageDefect } from "../stage-defects.ts";
import { outlineBetween } from "./bars.ts";
import type { SolvedLoop } from "./solve.ts";

const TOPS = { steadied: "steadied", held: "held" } as const;

/** Returns a note on each loop that cannot be put on once the machine is together, with what must wait for it. */
export function assemblyNotes(plan: Plan, loops: readonly SolvedLoop[], pulleys: readonly MotorPulley[]): Diagnostic[] {
  const order = [...pulleys].sort((a, b) => a.plane - b.plane).map(({ loop }) => loop);
  return loops.flatMap((solved) => {
    const { name } = solved.ordered;
    const captured = solved.nodes.filter(
      ({ kind, name: node }) => kind === "screw" && plan.screws[node]?.top !== "free",
    );
    const heads = captured.map(({ name: node }) => `screw ${node}, which is ${topOf(plan, node)} at its top`);
    const posts = postsWithin(plan, solved, pulleys).map((post) => `the post ${post}, which stands inside it`);
    if (heads.length + posts.length === 0) return [];
    const place = order.indexOf(name);
    const after = place > 0 ? `, after ${order.slice(0, place).join(" and ")}, which lies below it` : "";
    const says = `loop ${name} runs round ${[...heads, ...posts].join("; ")}`;
    const set = `${name} on before the heads are bolted on${posts.length > 0 ? " and the posts closed" : ""}${after}`;
    return [stageDefect("loop-must-go-on-first", { level: "note", path: ["loops", name], says, set })];
  });
}

function topOf(plan: Plan, screw: string): string {
  const top = plan.screws[screw]?.top;
  return top === undefined || top === "free" ? "free" : TOPS[top];
}

/** Upright bars of the frame that stand within the loop and go through its plane. */
function postsWithin(plan: Plan, { ordered, belt }: SolvedLoop, pulleys: readonly MotorPulley[]): string[] {
  const pulley = pulleys.find(({ loop }) => loop === ordered.name);
  if (pulley === undefined) return [];
  const half = ordered.plan.width / 2;
  return Object.entries(plan.bars)
    .filter(([, bar]) => {
      const [x, y] = bar.from;
      const upright = Math.hypot(bar.to[0] - x, bar.to[1] - y) < 1e-6;
      const through = outlineBetween(bar, pulley.plane - half, pulley.plane + half) !== undefined;
      return upright && !bar.moves && through && encloses(belt, { x, y });
    })
    .map(([name]) => name);
}
