import type { DefectName } from "../core/defects.ts";
import type { Diagnostic, Level } from "../core/diagnostic.ts";
import type { Limits } from "./limits.ts";
import { type Overhang, tolerableLedge } from "./overhang.ts";
import { place } from "./place.ts";

/** Returns the complaints about overhangs: the worst that begins in mid-air, the worst ledge and the worst bridge. */
export function overhangNeedsSupport(overhangs: readonly Overhang[], limits: Limits): Diagnostic[] {
  return [midAir(overhangs, limits), ledge(overhangs, limits), bridge(overhangs, limits)].flat();
}

function midAir(overhangs: readonly Overhang[], { line }: Limits): Diagnostic[] {
  // What is smaller than the end of one line is not printed at all.
  const bad = overhangs.filter(({ support, area }) => support === "none" && area >= line * line);
  return complaint("error", bad, {
    limit: 0,
    says: (span) => `a face ${span} mm wide begins in mid-air`,
    why: "its first lines are laid on nothing and fall",
    set: "another print orientation, or a slope of 45 degrees under it",
  });
}

function ledge(overhangs: readonly Overhang[], { line }: Limits): Diagnostic[] {
  const tolerance = tolerableLedge(line);
  const bad = overhangs.filter(({ support, span }) => support === "ledge" && span > tolerance);
  return complaint("error", bad, {
    limit: tolerance,
    says: (span) => `a ledge sticks out ${span} mm over air`,
    why: "its lines have an end that nothing holds, and curl down",
    set: "a slope of 45 degrees under it, or a roof in steps that holds each line at both ends",
  });
}

function bridge(overhangs: readonly Overhang[], { bridgeComfort, bridgeLimit }: Limits): Diagnostic[] {
  const longest = overhangs.find(({ support }) => support === "bridge");
  const level = longest !== undefined && longest.span > bridgeLimit ? "error" : "warning";
  const limit = level === "error" ? bridgeLimit : bridgeComfort;
  const bad = overhangs.filter(({ support, span }) => support === "bridge" && span > limit);
  return complaint(level, bad, {
    limit,
    says: (span) => `lines cross ${span} mm of air`,
    why: level === "error" ? "they fall before they reach the other side" : "they sag, so the face is rough and low",
    set: `an opening of at most ${limit} mm, or a roof that slopes at 45 degrees`,
  });
}

interface Wording {
  readonly limit: number;
  readonly says: (span: string) => string;
  readonly why: string;
  readonly set: string;
}

function complaint(level: Level, bad: readonly Overhang[], { limit, says, why, set }: Wording): Diagnostic[] {
  const worst = bad[0];
  if (worst === undefined) return [];
  const more = bad.length === 1 ? "" : `, one of ${bad.length}`;
  return [
    {
      name: "overhang-needs-support" satisfies DefectName,
      level,
      path: [],
      says: `${says(worst.span.toFixed(2))} at ${place(worst.at)}${more}`,
      found: { value: worst.span, unit: "mm" },
      limit: { value: limit, unit: "mm" },
      why,
      set,
    },
  ];
}
