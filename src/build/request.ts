import type { Acceptance } from "../parts/acceptance.ts";
import type { AnyFamily } from "../parts/family.ts";
import type { Printer } from "../printing/printer.ts";

/** One part to make: parsed, nothing left to look up. */
export interface Request {
  /** Slug that names the files. */
  readonly name: string;
  readonly family: AnyFamily;
  /** Parameters as the family's schema returned them. */
  readonly parameters: Readonly<Record<string, unknown>>;
  readonly printer: Printer;
  /** Whether the printer's settings come from a calibration. */
  readonly calibrated: boolean;
  readonly accept: readonly Acceptance[];
}
