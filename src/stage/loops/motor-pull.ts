import { isRefusal } from "../../core/calculation.ts";
import { pullAtRating, type SpanPull, summedPull } from "../../mechanics/index.ts";
import { above, type Finding } from "../../parts/check.ts";
import { type Fact, factFrom, type Topic } from "../fact.ts";
import type { MotorPulley } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { told } from "../worked.ts";
import type { SolvedLoop } from "./solve.ts";

/** Where on the shaft a motor's radial load is rated, from its face, mm. Source: the table of motors. */
const RATED_AT = 20;
/** Motors live with somewhat more than they are rated for, not for long with this share of it. common practice */
const TOO_MUCH = 1.5;

/** Returns the pull of all belts together on the motor's shaft, and the same at the place where that is rated. */
export function motorPull(plan: Plan, loops: readonly SolvedLoop[], pulleys: readonly MotorPulley[]): Topic {
  const turned = loops.map((loop) => ({ loop, spans: spansAtMotor(loop) })).filter(({ spans }) => spans.length > 0);
  const pull = pullFacts(
    turned.flatMap(({ spans }) => spans),
    "motor.pull",
    "pull of all belts on the motor's shaft",
  );
  const levers = turned.flatMap(({ loop, spans }) => leverOf(plan, loop, spans, pulleys));
  // Belts that pull against one another spare the bearing: without one of them nothing can be said of all together.
  const known = levers.length === plan.motor.pulleys.length ? levers : [];
  const rated = ratedPull(
    plan,
    known.flatMap(({ spans }) => spans),
  );
  const facts = [...pull, ...known.flatMap((lever) => lever.facts), ...rated];
  if (facts.length === 0) return { sections: [], diagnostics: [] };
  const diagnostics = rated.flatMap((fact) =>
    told("motor-shaft-overloaded", ["motor", "motor"], overload(fact, known)),
  );
  return { sections: [{ title: "Pull on the motor", facts }], diagnostics };
}

/** The two spans that leave the motor's pulley. */
function spansAtMotor({ ordered, nodes, belt }: SolvedLoop): SpanPull[] {
  const at = nodes.findIndex(({ kind }) => kind === "motor");
  const [before, after] = [belt.spans.at(at - 1), belt.spans[at]];
  if (at < 0 || before === undefined || after === undefined) return [];
  const { tension } = ordered.plan;
  return [
    { direction: after.direction, tension },
    { direction: before.direction + 180, tension },
  ];
}

function pullFacts(spans: readonly SpanPull[], key: string, label: string, limit?: Fact["limit"]): Fact[] {
  const sum = summedPull(spans);
  if (spans.length === 0 || isRefusal(sum)) return [];
  const inputs = Object.fromEntries(
    spans.flatMap(({ direction, tension }, at) => [
      [`phi_${at + 1}`, direction],
      [`T_${at + 1}`, tension],
    ]),
  );
  const from = (result: string) => ({ from: { calculation: "summed-pull", result, inputs } });
  return [
    { key, label, value: sum.pull, unit: "N", ...(limit === undefined ? {} : { limit }), ...from("pull") },
    { key: `${key}.direction`, label: "its direction", value: sum.direction, unit: "deg", ...from("direction") },
  ];
}

interface Lever {
  readonly loop: string;
  readonly lever: number;
  readonly facts: readonly Fact[];
  /** The spans, as heavy on the motor at the rated place as they are where they run. */
  readonly spans: readonly SpanPull[];
}

function leverOf(plan: Plan, of: SolvedLoop, spans: readonly SpanPull[], pulleys: readonly MotorPulley[]): Lever[] {
  const { name: loop, plan: own } = of.ordered;
  const plane = pulleys.find((pulley) => pulley.loop === loop)?.plane;
  if (plane === undefined) return [];
  const lever = plane - faceOf(plan);
  const fact = factFrom(pullAtRating, { tension: own.tension, lever, rated: RATED_AT }, "tension", {
    key: `loop.${loop}.rated-tension`,
    label: `tension of ${loop} brought from ${shown(lever)} to ${RATED_AT} mm from the motor's face`,
  });
  if (isRefusal(fact)) return [];
  return [{ loop, lever, facts: [fact], spans: spans.map((span) => ({ ...span, tension: fact.value })) }];
}

/** The motor's face lies under the plate that it hangs from. */
const faceOf = ({ motor }: Plan) => motor.plateTop - motor.plate;
const shown = (value: number) => String(Number(value.toFixed(1)));

function ratedPull({ motor }: Plan, spans: readonly SpanPull[]): Fact[] {
  const limit = { value: motor.motor.values.radialLoad, kind: "at most" } as const;
  const label = `pull of all belts on the motor's shaft, brought to ${RATED_AT} mm from its face`;
  return pullFacts(spans, "motor.rated-pull", label, limit).slice(0, 1);
}

function overload({ value, limit }: Fact, levers: readonly Lever[]): Finding | undefined {
  if (limit === undefined) return undefined;
  const where = levers.map(({ loop, lever }) => `${loop} ${shown(lever)} mm from its face`).join(", ");
  // Tensions and their sum fall together; a tenth of a newton less than just enough is enough as well.
  const least = levers.map(({ loop, facts, lever }) => {
    const tension = ((facts[0]?.value ?? 0) * RATED_AT) / Math.max(lever, RATED_AT / 2);
    return `loops.${loop}.tension: ${Math.floor((10 * tension * limit.value) / value) / 10} N`;
  });
  return above({
    value,
    unit: "N",
    error: TOO_MUCH * limit.value,
    warning: limit.value,
    says: (bound) =>
      `the belts pull with ${value.toFixed(1)} N on the motor's shaft, counted ${RATED_AT} mm from its face, over ` +
      `${bound} N: ${where}`,
    set: `${least.join(" and ")}, belts nearer to the face, or a motor rated for ${Math.ceil(value)} N`,
  });
}
