import type { Diagnostic, Path } from "../../core/diagnostic.ts";
import { below } from "../../parts/check.ts";
import type { BeltGap, MotorPulley } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { found } from "./checks.ts";

/** Returns what is wrong with the gaps of a loop. */
export function gapDefects(plan: Plan, loop: string, gaps: readonly BeltGap[], pulleys: readonly MotorPulley[]) {
  return gaps.flatMap((gap): Diagnostic[] => {
    const { defect, between, error, warning, gap: value } = gap;
    const [one, other] = between;
    const air = value < 0 ? `overlap by ${(-value).toFixed(2)} mm` : `have ${value.toFixed(2)} mm of air`;
    const says = () => `${one} and ${other} ${air}`;
    const set = wayOut(plan, loop, gap, pulleys);
    return found(defect, pathOf(plan, loop, gap), "mm", below({ value, unit: "mm", error, warning, says, set }));
  });
}

/** Where to look first: an idler that is too near, else the loop; not one at the ends of a span. */
function pathOf(plan: Plan, loop: string, { between: [one, other], defect }: BeltGap): Path {
  const either = defect === "spans-of-loop-too-close" || defect === "pulley-bodies-collide";
  const words = `${either ? one : ""} ${other}`.split(/[ ,]+/);
  const idler = words.find((word) => Object.hasOwn(plan.idlers, word));
  return idler === undefined ? ["loops", loop] : ["idlers", idler, "at"];
}

const WORDS = {
  "belt-too-near-upright": "further from the span, or an idler that leads the span past it",
  "belt-too-near-bar": "further from the bar, or a plane over or under it",
  "belt-too-near-foreign-flange": "further apart, in plan or in height",
  "spans-of-loop-too-close": "further apart, by moving the idler that presses them together",
  "pulley-bodies-collide": "further apart",
} as const;

function wayOut(plan: Plan, loop: string, { defect, between, gap, warning }: BeltGap, pulleys: readonly MotorPulley[]) {
  const short = Math.ceil((warning - gap) * 100 - 1e-6) / 100;
  const apart = pulleys.filter(
    (pulley) => pulley.loop === loop || between.some((words) => words.includes(pulley.loop)),
  );
  const upper = [...apart].sort((a, b) => b.plane - a.plane)[0];
  const height = upper === undefined ? undefined : raised(plan, upper, short);
  if (defect === "belts-too-close") return height ?? `the planes ${short} mm further apart`;
  const words = `${short} mm ${WORDS[defect]}`;
  return defect === "belt-too-near-foreign-flange" && height !== undefined ? `${words}: ${height}` : words;
}

/** The air below the upper pulley with which its plane lies as much higher as is short. */
function raised(plan: Plan, { loop }: MotorPulley, short: number): string | undefined {
  const pulley = plan.motor.pulleys.find((one) => one.loop === loop);
  if (pulley === undefined) return undefined;
  const more = Math.round((pulley.gap + short) * 100) / 100;
  const single = pulley.commonFlange ? "commonFlange: false and " : "";
  return `${single}gap: ${more} mm below the motor's pulley of ${loop}`;
}
