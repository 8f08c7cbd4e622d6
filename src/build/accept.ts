import { DEFECTS, type Defect, defect } from "../core/defects.ts";
import type { Diagnostic } from "../core/diagnostic.ts";
import { nearest } from "../core/nearest.ts";
import { type Acceptance, forbiddenIn } from "../parts/acceptance.ts";
import type { AnyFamily } from "../parts/family.ts";
import { STAGE_DEFECTS } from "../stage/stage-defects.ts";

const GENERAL = Object.entries<Defect>(DEFECTS);
/** Checks on the finished mesh, which every family has. */
const MESH_CHECKS = GENERAL.filter(([, { excusable }]) => excusable).map(([name]) => name);
/** Returns an error for each acceptance that names no check of the family, or one that nobody may accept. */
export function wrongAcceptances(accept: readonly Acceptance[], family: AnyFamily): Diagnostic[] {
  const forbidden = forbiddenIn(family);
  const known = [...family.checks.map(({ name }) => name), ...MESH_CHECKS];
  return accept.flatMap(({ check }, index) => {
    if (forbidden.has(check))
      return [refused(index, `${check} cannot be accepted`, "remove the line and mend what it found")];
    if (known.includes(check)) return [];
    if (Object.hasOwn(STAGE_DEFECTS, check))
      return [refused(index, `${check} is a defect of a machine, not of one ${family.name}`, "part: stage, in a plan")];
    return [
      refused(index, `${check} is no check of a ${family.name}`, nearest(check, known) ?? "the name a message printed"),
    ];
  });
}

/** Returns whether an error was accepted: such a part is marked. */
export function acceptedAny(diagnostics: readonly Diagnostic[], accept: readonly Acceptance[]): boolean {
  return diagnostics.some(({ name, level }) => level === "error" && accept.some(({ check }) => check === name));
}

function refused(index: number, says: string, set: string): Diagnostic {
  const why = "an acceptance that does not fit would hide nothing, or hide what cannot work";
  return defect("preset-does-not-resolve", { level: "error", path: ["accept", index, "check"], says, why, set });
}
