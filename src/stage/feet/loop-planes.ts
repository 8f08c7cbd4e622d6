import { isRefusal } from "../../core/calculation.ts";
import type { Diagnostic, Level } from "../../core/diagnostic.ts";
import { beltMisalignment } from "../../mechanics/belt-misalignment.ts";
import type { Parameters } from "../../parts/screw-foot/parameters.ts";
import { type Fact, factFrom, type Section } from "../fact.ts";
import { rounded } from "../frame/footing.ts";
import type { FootChoice, LoopChoice, MotorPulley } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { stageDefect } from "../stage-defects.ts";

interface Asked {
  readonly plan: Plan;
  readonly loop: string;
  readonly pulleys: readonly MotorPulley[];
  readonly loops: readonly LoopChoice[];
  readonly feet: readonly FootChoice[];
}

/** One pulley of a loop as it will stand. mm over the datum */
interface Standing {
  readonly node: string;
  readonly plane: number;
  readonly groove: number;
  readonly says: string;
}

/** A span's largest angle out of its plane, deg: synchronous-belt makers' design practice. */
const STEEPEST = 0.25;
/** Beyond this share of a limit there is a warning. */
const SILENT = 0.5;
const GUARD = 1e-9;

/** Returns how far the pulleys of one loop stand apart as printed, and the angle of each of its spans. */
export function planesOfLoop(asked: Asked): { sections: Section[]; diagnostics: Diagnostic[] } {
  const { plan, loop } = asked;
  const standing = pulleysOf(asked);
  const width = plan.loops[loop]?.width ?? 0;
  const groove = Math.min(...standing.map((one) => one.groove));
  if (standing.length < 2 || groove <= width) return { sections: [], diagnostics: narrow(asked, width) };
  const spread = spreadFact(loop, standing, (groove - width) / 2);
  const spans = spanFacts(asked, standing, groove, width);
  const worst = [...spans].sort((a, b) => b.value - a.value).slice(0, 1);
  const lines = [...standing]
    .sort((a, b) => b.plane - a.plane)
    .map(({ plane, says }) => `${plane.toFixed(2)} mm  ${says}`);
  return {
    sections: [{ title: `Pulleys of ${loop}`, facts: [spread, ...spans], lines }],
    diagnostics: [...narrow(asked, width), ...[spread, ...worst].flatMap((fact) => apart(loop, fact, standing))],
  };
}

function pulleysOf({ loop, pulleys, feet }: Asked): Standing[] {
  const motor = pulleys
    .filter((one) => one.loop === loop)
    .map(({ plane, pulley, hub }) => ({
      node: "motor",
      plane,
      groove: pulley.values.toothWidth,
      says: `motor: ${pulley.key}, hub ${hub}`,
    }));
  return [
    ...motor,
    ...feet
      .filter((foot) => foot.loop === loop)
      .map((foot) => {
        const { pulley } = foot.part.parameters as unknown as Parameters;
        const seat = `seat ${foot.seat.toFixed(2)} over ${foot.bar}`;
        const rest = `off by ${foot.residual.toFixed(2)}, shim ${foot.shim}`;
        const says = `${foot.screw}: ${pulley.key}, hub ${foot.hub}, ${seat}, ${rest} mm`;
        return { node: foot.screw, plane: foot.plane, groove: pulley.values.toothWidth, says };
      }),
  ];
}

function spreadFact(loop: string, standing: readonly Standing[], allowed: number): Fact {
  const planes = standing.map(({ plane }) => plane);
  return {
    key: `loop.${loop}.spread`,
    label: `highest less lowest pulley of ${loop}`,
    value: rounded(Math.max(...planes) - Math.min(...planes)),
    unit: "mm",
    limit: { value: rounded(allowed), kind: "at most" },
  };
}

/** Spans from pulley to pulley; an idler is set to the belt, not the belt to it. */
function spanFacts({ loop, loops }: Asked, standing: readonly Standing[], groove: number, belt: number): Fact[] {
  const choice = loops.find((one) => one.loop === loop);
  if (choice === undefined) return [];
  const { nodes } = choice;
  return choice.belt.spans.flatMap(({ length }, index) => {
    const [from, to] = [nodes[index]?.name, nodes[(index + 1) % nodes.length]?.name];
    const [one, other] = [from, to].map((node) => standing.find((each) => each.node === node));
    if (one === undefined || other === undefined) return [];
    const inputs = { difference: rounded(other.plane - one.plane), span: length, groove, belt };
    const fact = factFrom(beltMisalignment, inputs, "angle", {
      key: `loop.${loop}.span.${from}-${to}`,
      label: `angle of the span from ${from} to ${to}`,
      limit: { value: STEEPEST, kind: "at most" },
    });
    return isRefusal(fact) ? [] : [fact];
  });
}

function apart(loop: string, { label, value, unit, limit }: Fact, standing: readonly Standing[]): Diagnostic[] {
  if (limit === undefined) return [];
  const level: Level | undefined =
    value > limit.value + GUARD ? "error" : value > SILENT * limit.value + GUARD ? "warning" : undefined;
  if (level === undefined) return [];
  const bound = level === "error" ? limit.value : SILENT * limit.value;
  const sorted = [...standing].sort((a, b) => a.plane - b.plane);
  const [low, high] = [sorted[0] as Standing, sorted.at(-1) as Standing];
  const raise = (high.plane - low.plane).toFixed(2);
  return [
    stageDefect("belt-planes-apart-in-loop", {
      level,
      path: ["loops", loop],
      says: `${label}: ${value.toFixed(2)} ${unit}, over ${Number(bound.toFixed(3))} ${unit}`,
      found: { value, unit },
      limit: { value: bound, unit },
      set: `${raise} mm more under ${low.node === "motor" ? "the motor's pulley" : `the bearing of ${low.node}`}, or a finer layer`,
    }),
  ];
}

/** What a pulley's groove must be wider than the belt, mm. */
const SIDE_PLAY = 0.3;

/** The motor's pulleys are looked at with their stack; these are the screws'. */
function narrow({ loop, feet }: Asked, width: number): Diagnostic[] {
  return feet.flatMap((foot) => {
    const { pulley } = foot.part.parameters as unknown as Parameters;
    const groove = pulley.values.toothWidth;
    if (foot.loop !== loop || groove >= width + SIDE_PLAY - GUARD) return [];
    return [
      stageDefect("hardware-data-disagrees", {
        level: "error",
        path: ["screws", foot.screw],
        says: `the groove of ${foot.screw}'s ${pulley.key}, ${groove} mm, is too narrow for a belt of ${width} mm`,
        found: { value: groove, unit: "mm" },
        limit: { value: width + SIDE_PLAY, unit: "mm" },
        set: `loops.${loop}.width: ${Number((groove - SIDE_PLAY).toFixed(2))} mm or less, or a wider pulley`,
      }),
    ];
  });
}
