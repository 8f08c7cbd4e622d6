import type { Diagnostic, Path } from "../../core/diagnostic.ts";
import type { Kernel } from "../../geometry/kernel.ts";
import { saidBefore } from "../../parts/acceptance.ts";
import { withReason } from "../../stage/acceptance.ts";
import { type Body, bodiesOf } from "../../stage/bodies/index.ts";
import type { Plan, PrinterOf, Stage } from "../../stage/index.ts";
import { stageDefect } from "../../stage/stage-defects.ts";
import type { Clash } from "./clashes.ts";
import type { Narrow } from "./gaps.ts";
import { type Meetings, meetingsOf, withBodies } from "./meetings.ts";

const AXES = ["x", "y", "z"] as const;

/** A fault of the assembled machine, and the printed parts that it forbids: those of an error that are part of it. */
export interface AssemblyFault extends Diagnostic {
  readonly stops: readonly string[];
}

/**
 * Returns what stands in one another in the assembled machine, and which gaps are too small, less the gaps that the
 * stage tells of already: its arithmetic and the bodies find the same.
 */
export function assemblyFaults(stage: Stage, printer: PrinterOf, kernel: Kernel): AssemblyFault[] {
  const bodies = bodiesOf(stage, printer);
  return faultsOf(stage, bodies, meetingsOf({ bodies, lift: stage.plan.travel.lift }, kernel));
}

/** Returns what is to be told of what was found between the bodies of a machine. */
export function faultsOf({ plan, diagnostics }: Stage, bodies: readonly Body[], found: Meetings): AssemblyFault[] {
  const gaps = found.gaps.map((gap) => withBodies(gap, bodies)).filter((gap) => !isTold(gap, diagnostics));
  const clashes = found.clashes.map((clash) => withBodies(clash, bodies));
  return [...clashes.map((clash) => clashFault(clash, plan)), ...gaps.map((gap) => gapFault(gap, plan))];
}

/** Whether the same defect is told of the same two, each by a name of what it belongs to. */
function isTold({ name: defect, first, second }: Narrow, told: readonly Diagnostic[]): boolean {
  return told.some(({ name, says }) => {
    const words = new Set(saidBefore(says).split(/[^A-Za-z0-9-]+/));
    const mentions = ({ belongsTo }: Body) => belongsTo.some((member) => words.has(member.split(" ").at(-1) ?? ""));
    return name === defect && mentions(first) && mentions(second);
  });
}

function clashFault({ first, second, height, volume, centre, size, depth }: Clash, plan: Plan): AssemblyFault {
  const [lead, other] = inPlanOrder(first, second, plan);
  const place = centre.map((value, axis) => `${AXES[axis]} ${value.toFixed(1)}`).join(", ");
  const sides = size.map((side) => side.toFixed(2)).join(" x ");
  const axis = AXES[size.indexOf(depth)] ?? "x";
  const fault = stageDefect("bodies-clash", {
    level: "error",
    path: lead.path,
    says:
      `${lead.name} and ${other.name} stand in one another at the ${height} of the travel: ` +
      `${depth.toFixed(2)} mm deep at ${place}, a box of ${sides} mm, ${volume.toFixed(volume < 1 ? 2 : 0)} mm3`,
    found: { value: depth, unit: "mm" },
    limit: { value: 0, unit: "mm" },
    set: `${placesOf(lead, other)}: ${(Math.ceil(depth * 10) / 10).toFixed(1)} mm or more farther apart along ${axis}`,
  });
  return judged(fault, [lead, other], plan);
}

function gapFault({ name, first, second, gap, level, limit }: Narrow, plan: Plan): AssemblyFault {
  const [lead, other] = inPlanOrder(first, second, plan);
  const between = gap > 0 ? `leave ${gap.toFixed(2)} mm of air between them` : "touch";
  const fault = stageDefect(name, {
    level,
    path: lead.path,
    says: `${lead.name} and ${other.name} ${between}, under ${limit} mm`,
    found: { value: gap, unit: "mm" },
    limit: { value: limit, unit: "mm" },
    set: `${placesOf(lead, other)}: ${(Math.ceil((limit - gap) * 10) / 10).toFixed(1)} mm or more farther apart`,
  });
  return judged(fault, [lead, other], plan);
}

/** Takes what the plan accepts for accepted; what is left as an error stops the printed parts among the two. */
function judged(found: Diagnostic, bodies: readonly Body[], plan: Plan): AssemblyFault {
  const fault = withReason(found, plan);
  const parts = bodies.flatMap(({ kind, part }) => (kind === "part" && part !== undefined ? [part] : []));
  return { ...fault, stops: fault.level === "error" ? [...new Set(parts)] : [] };
}

/** Returns two bodies in the order in which the plan names what they come from. */
function inPlanOrder(first: Body, second: Body, plan: Plan): [Body, Body] {
  const rank = ({ path }: Body): [number, number] => {
    const [key, name] = path;
    const block = plan[key as keyof Plan] ?? {};
    return [Object.keys(plan).indexOf(String(key)), Object.keys(block).indexOf(String(name))];
  };
  const [a, b] = [rank(first), rank(second)];
  return a[0] - b[0] > 0 || (a[0] === b[0] && a[1] > b[1]) ? [second, first] : [first, second];
}

function placesOf(one: Body, other: Body): string {
  const named = (path: Path) => path.join(".");
  return one.path.join() === other.path.join() ? named(one.path) : `${named(one.path)} or ${named(other.path)}`;
}
