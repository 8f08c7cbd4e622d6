import type { Idler } from "../../catalogue/idlers.ts";
import { NUTS } from "../../catalogue/nuts.ts";
import { THREADS } from "../../catalogue/threads.ts";
import type { Diagnostic } from "../../core/diagnostic.ts";
import { row } from "../../core/table.ts";
import { above, below } from "../../parts/check.ts";
import type { Fact } from "../fact.ts";
import { rounded } from "../frame/footing.ts";
import type { MotorPulley } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { found } from "./checks.ts";
import type { SolvedLoop } from "./solve.ts";

/** The washer between an idler and its nut, mm; threads of a bolt that stand out of a nut. common practice */
const WASHER = 1;
const STAND_OUT = { error: 0, warning: 2 };
/** Share of its side play up to which an idler may stand off its belt without a word. common practice */
const SILENT = 0.5;

interface Standing {
  readonly name: string;
  readonly loop: string;
  readonly idler: Idler;
  /** Height of its lower end over the datum: as stated, and as its belt wants it. mm */
  readonly bottom: number;
  readonly wanted: number;
  readonly width: number;
  readonly axle: number | undefined;
}

/** Returns where each idler stands on its axle and how long that must be, and what is wrong with either. */
export function idlerStands(plan: Plan, loops: readonly SolvedLoop[], pulleys: readonly MotorPulley[]) {
  const all = loops.flatMap((solved) => standingsOf(plan, solved, pulleys));
  return {
    facts: all.flatMap(factsOf),
    diagnostics: all.flatMap((one): Diagnostic[] => [...offPlane(one), ...shortAxle(one)]),
  };
}

function standingsOf(plan: Plan, { ordered, nodes }: SolvedLoop, pulleys: readonly MotorPulley[]): Standing[] {
  const { name: loop, plan: own } = ordered;
  const plane = pulleys.find((pulley) => pulley.loop === loop)?.plane;
  return nodes.flatMap(({ name }): Standing[] => {
    const planned = plan.idlers[name];
    if (planned === undefined || plane === undefined) return [];
    const idler = planned.idler.values;
    const wanted = rounded(plane - idler.height / 2);
    return [{ name, loop, idler, bottom: planned.bottom ?? wanted, wanted, width: own.width, axle: planned.axle }];
  });
}

/** Returns the height of the nut on an idler's axle, mm; by its diameter where no nut of its thread is listed. */
function nutHeight({ bore }: Idler): number {
  const nut = NUTS.rows.find(({ key }) => key === `M${bore}`);
  return nut?.values.height ?? 0.8 * bore;
}

const pitchOf = ({ bore }: Idler) =>
  THREADS.rows.some(({ key }) => key === `M${bore}`) ? row(THREADS, `M${bore}`).values.pitch : 0.8;

const neededFor = (idler: Idler) => rounded(idler.height + WASHER + nutHeight(idler));

function factsOf({ name, idler, bottom, wanted, axle }: Standing): Fact[] {
  const height: Fact = {
    key: `idler.${name}.bottom`,
    label: `idler ${name}: its lower end over the datum, for its belt's plane`,
    value: wanted,
    unit: "mm",
  };
  const needed = neededFor(idler);
  const long: Fact = {
    key: `idler.${name}.axle`,
    label: `idler ${name}: axle over that end, to the top of its nut`,
    value: axle ?? needed,
    unit: "mm",
    ...(axle === undefined ? {} : { limit: { value: needed, kind: "at least" } as const }),
  };
  return [bottom === wanted ? height : { ...height, label: `${height.label}; it stands at ${bottom} mm` }, long];
}

/** The face between the flanges must hold the whole width of the belt. */
function offPlane({ name, loop, idler, bottom, wanted, width }: Standing): Diagnostic[] {
  const { runWidth, beltWidth } = idler;
  const play = Math.max(0, ((runWidth > 0 ? runWidth : beltWidth) - width) / 2);
  const off = Math.abs(bottom - wanted);
  const way = bottom > wanted ? "above" : "below";
  const finding = above({
    value: off,
    unit: "mm",
    error: play,
    warning: SILENT * play,
    says: (limit) =>
      `the face of ${name} lies ${off.toFixed(2)} mm ${way} the belt of ${loop}, over ${limit.toFixed(2)} mm`,
    set: `bottom: ${Number(wanted.toFixed(3))}`,
  });
  return found("idler-off-belt-plane", ["idlers", name, "bottom"], "mm", off > 1e-6 ? finding : undefined);
}

function shortAxle({ name, idler, axle }: Standing): Diagnostic[] {
  if (axle === undefined) return [];
  const needed = neededFor(idler);
  const out = STAND_OUT.warning * pitchOf(idler);
  const finding = below({
    value: axle,
    unit: "mm",
    error: needed + STAND_OUT.error,
    warning: needed + out,
    says: (limit) =>
      `the axle of ${name} is ${axle} mm long over its lower end, under the ${limit.toFixed(1)} mm of idler, washer and nut`,
    set: `axle: ${(Math.ceil((needed + out) * 10) / 10).toFixed(1)} or more`,
  });
  return found("idler-axle-too-short", ["idlers", name, "axle"], "mm", finding);
}
