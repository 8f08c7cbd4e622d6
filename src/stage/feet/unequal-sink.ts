import type { FootChoice, LoadCases, SharedLoad } from "../machine.ts";
import { tenth } from "./foot-input.ts";

/** One foot beside the one that sinks least at the same time: N, mm. */
interface Unequal {
  readonly load: number;
  readonly other: number;
  readonly more: number;
}

/**
 * Returns the feet, each with the load and with the sink of the least sinking foot in that case in which it sinks most
 * beyond it: empty or with the print anywhere, each foot by its own stiffness. A hand that leans is gone before plastic
 * creeps. A foot that carries nothing, or alone, is returned as it is.
 */
export function withUnequalSink(feet: readonly FootChoice[], loads: LoadCases | undefined): FootChoice[] {
  const lasting = loads?.cases.filter(({ leaned }) => !leaned) ?? [];
  const carrying = feet.filter(({ part }) => part.parameters.thrust !== "hung");
  return feet.map((foot) => {
    const others = carrying.filter((one) => one !== foot);
    if (!carrying.includes(foot) || others.length === 0 || lasting.length === 0) return foot;
    const all = lasting.map((each) => unequalIn(each, foot, others));
    const worst = all.reduce(worse);
    return withParameters(foot, { steadyLoad: tenth(worst.load), otherSink: micron(worst.other) });
  });
}

/** In a machine that is even, corners of the print tie; which corner is named first must not matter. */
function worse(one: Unequal, other: Unequal): Unequal {
  const more = other.more - one.more;
  return more > 1e-9 || (more > -1e-9 && other.load > one.load) ? other : one;
}

function unequalIn({ shares, least }: SharedLoad, foot: FootChoice, others: readonly FootChoice[]): Unequal {
  // A screw only pushes: where the stage would lift off it, its foot carries nothing.
  const load = Math.max(0, shares[foot.screw] ?? 0);
  const other = Math.min(...others.map(({ screw, give }) => give * Math.max(0, least[screw] ?? 0)));
  return { load, other, more: foot.give * load - other };
}

function withParameters(foot: FootChoice, more: Readonly<Record<string, number>>): FootChoice {
  const { part } = foot;
  const derived = [...part.derived, ...Object.keys(more)];
  return { ...foot, part: { ...part, parameters: { ...part.parameters, ...more }, derived } };
}

/** A sink without the last digits of a product. mm */
const micron = (sink: number) => Math.round(sink * 1e3) / 1e3;
