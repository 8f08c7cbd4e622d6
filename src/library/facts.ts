import { CALCULATION_DEFECTS } from "../core/calculation-defects.ts";
import { DEFECTS } from "../core/defects.ts";
import { FAMILIES } from "../parts/index.ts";
import { presetSchema, SUBJECTS } from "../presets/schema/preset-schema.ts";
import { STAGE_DEFECTS } from "../stage/stage-defects.ts";
import type { DefectFacts, FamilyFacts, Schema } from "./answers.ts";

/** Returns every family of parts. */
export function families(): FamilyFacts[] {
  return FAMILIES.map(({ name, title, purpose, orientation, sketch, checks }) => ({
    name,
    title,
    purpose,
    orientation,
    sketch,
    checks: checks.map((check) => ({ name: check.name, why: check.why, trips: check.trips })),
  }));
}

/** What a preset may be of: each family by its name, `stage`, `printer`. */
export const subjects: readonly string[] = SUBJECTS;

/** Returns the JSON Schema, draft-07, of the presets of a subject; undefined for what is none. */
export function schema(subject: string): Schema | undefined {
  return presetSchema(subject) as Schema | undefined;
}

interface Told {
  readonly what: string;
  readonly why: string;
  readonly set: string;
}

/** Returns what the defect is that a complaint names: one entry, or one for each family that checks it. */
export function messageFacts(name: string): DefectFacts[] {
  const tables: readonly Readonly<Record<string, Told>>[] = [DEFECTS, STAGE_DEFECTS, CALCULATION_DEFECTS];
  const general = tables.flatMap((table) => {
    const told = Object.hasOwn(table, name) ? table[name] : undefined;
    return told === undefined ? [] : [{ name, families: [], what: told.what, why: told.why, set: told.set }];
  });
  const checks = FAMILIES.flatMap((family) => {
    const check = family.checks.find((one) => one.name === name);
    return check === undefined
      ? []
      : [{ name, families: [family.name], what: undefined, why: check.why, set: undefined }];
  });
  return [...checks, ...general];
}
