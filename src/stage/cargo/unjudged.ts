import type { Diagnostic, Level } from "../../core/diagnostic.ts";
import { screwFoot } from "../../parts/screw-foot/index.ts";
import { type Fact, marginOf } from "../fact.ts";

/** Numbers of a foot that its own checks judge: the check, below what it is an error, and the way out. */
const JUDGED = [
  { of: "axial-limit", check: "foot-bearing-overloaded", error: Number.POSITIVE_INFINITY },
  { of: "bearing-safety", check: "foot-bearing-overloaded", error: 1 },
  { of: "set-screws", check: "thrust-hangs-on-set-screws", error: 1.5 },
  { of: "set-screws-crash", check: "thrust-hangs-on-set-screws", error: 0 },
] as const;

const WAY_OUT = {
  "foot-bearing-overloaded": "bearing: a larger one, or a thrust bearing beside it",
  "thrust-hangs-on-set-screws": "thrust: collar, or file flats for the set screws",
} as const;

/** Returns what the checks of a foot would say of its numbers, for a screw whose foot could not be worked out. */
export function unjudged(screw: string, facts: readonly Fact[]): readonly Diagnostic[] {
  const found = JUDGED.flatMap(({ of, check, error }) => {
    const fact = facts.find(({ key }) => key === `screw.${screw}.${of}`);
    if (fact === undefined || (marginOf(fact) ?? 0) >= -1e-9) return [];
    return [told(screw, fact, check, fact.value < error ? "error" : "warning")];
  });
  return found.filter(({ name }, at) => found.findIndex((other) => other.name === name) === at);
}

function told(
  screw: string,
  { label, value, unit, limit }: Fact,
  name: keyof typeof WAY_OUT,
  level: Level,
): Diagnostic {
  const shown = (number: number) => `${Number(number.toPrecision(3))} ${unit}`.trimEnd();
  const bound = limit?.value ?? 0;
  return {
    name,
    level,
    path: ["screws", screw],
    says: `${label}: ${shown(value)}, under ${shown(bound)}`,
    found: { value, unit },
    limit: { value: bound, unit },
    why: screwFoot.checks.find((check) => check.name === name)?.why ?? "",
    set: WAY_OUT[name],
  };
}
