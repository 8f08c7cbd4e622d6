import { isRefusal } from "../../core/calculation.ts";
import { summedPull } from "../../mechanics/index.ts";
import type { Section } from "../fact.ts";
import type { Plan } from "../schema/index.ts";
import type { SolvedLoop } from "./solve.ts";

/** Returns the pull of all belts together on the motor's shaft. */
export function motorSection(plan: Plan, loops: readonly SolvedLoop[]): Section {
  const pulls = loops.flatMap(({ ordered, nodes, belt }) => {
    const at = nodes.findIndex(({ kind }) => kind === "motor");
    if (at < 0) return [];
    const [before, after] = [belt.spans.at(at - 1), belt.spans[at]];
    if (before === undefined || after === undefined) return [];
    const { tension } = ordered.plan;
    return [
      { direction: after.direction, tension },
      { direction: before.direction + 180, tension },
    ];
  });
  const sum = summedPull(pulls);
  if (pulls.length === 0 || isRefusal(sum)) return { title: "Pull on the motor", facts: [] };
  const inputs = Object.fromEntries(
    pulls.flatMap(({ direction, tension }, at) => [
      [`phi_${at + 1}`, direction],
      [`T_${at + 1}`, tension],
    ]),
  );
  const from = (result: string) => ({ from: { calculation: "summed-pull", result, inputs } });
  const limit = { value: plan.motor.motor.values.radialLoad, kind: "at most" } as const;
  const label = "pull of all belts on the motor's shaft, rated 20 mm from its face";
  return {
    title: "Pull on the motor",
    facts: [
      { key: "motor.pull", label, value: sum.pull, unit: "N", limit, ...from("pull") },
      { key: "motor.pull.direction", label: "its direction", value: sum.direction, unit: "deg", ...from("direction") },
    ],
  };
}
