import { axleChecks } from "./checks/axles.ts";
import { obstructed } from "./checks/path.ts";
import { plateChecks } from "./checks/plate.ts";
import { sharedChecks } from "./checks/shared.ts";
import { type PlateCheck, wheelChecks } from "./checks/wheels.ts";

export const checks: readonly PlateCheck[] = [
  ...wheelChecks,
  ...axleChecks,
  ...plateChecks,
  obstructed,
  ...sharedChecks,
];
