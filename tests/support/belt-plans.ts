import { type Plan, planSchema } from "../../src/stage/index.ts";
import { solveLoops } from "../../src/stage/loops/index.ts";
import { stackedPulleys } from "./motor-stack.ts";
import { WIDE } from "./plans.ts";

export interface Layout {
  readonly motor?: readonly [number, number];
  readonly motorTeeth?: number | Readonly<Record<string, unknown>>;
  /** Screws by name: place and teeth. */
  readonly screws: Readonly<Record<string, readonly [number, number, number]>>;
  readonly idlers?: Readonly<Record<string, unknown>>;
  readonly loop?: Readonly<Record<string, unknown>>;
  /** Further changes of the plan. */
  readonly more?: Readonly<Record<string, unknown>>;
}

const teethOf = (teeth: Layout["motorTeeth"]) => (typeof teeth === "number" ? `${teeth} teeth 2 mm` : teeth);

/** Returns a plan as typed, with one loop, `one`, round the motor and all screws and idlers; no bars near it. */
export function typedLayout({ motor = [0, 0], motorTeeth = 20, screws, idlers = {}, loop = {}, more = {} }: Layout) {
  return {
    ...WIDE,
    bars: { far: { bar: "30x30 slot 8", from: [-900, -900, -15], to: [-100, -900, -15] } },
    carriages: {},
    motor: { at: motor, pulleys: [{ loop: "one", pulley: teethOf(motorTeeth) }] },
    screws: Object.fromEntries(
      Object.entries(screws).map(([name, [x, y, teeth]]) => [
        name,
        { at: [x, y], length: 300, top: "free", foot: { pulley: `${teeth} teeth 2 mm` } },
      ]),
    ),
    idlers,
    loops: { one: { nodes: ["motor", ...Object.keys(screws), ...Object.keys(idlers)], ...loop } },
    ...more,
  };
}

/** Returns such a plan as its schema reads it. */
export function layout(spec: Layout): Plan {
  return planSchema.parse(typedLayout(spec));
}

/** Returns the loops of a plan, the motor's pulleys stacked as the plan has them. */
export function solved(plan: Plan) {
  return solveLoops(plan, stackedPulleys(plan));
}

/** Returns the loop of a plan that has one. */
export function onlyLoop(plan: Plan) {
  const { loops, diagnostics, sections } = solved(plan);
  const [loop] = loops;
  if (loop === undefined) throw new RangeError(diagnostics.map(({ says }) => says).join("; "));
  return { loop, diagnostics, facts: sections.flatMap(({ facts }) => facts) };
}
