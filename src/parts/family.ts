import type * as z from "zod";
import type { Diagnostic } from "../core/diagnostic.ts";
import type { Dimensions, Given } from "../core/dimension.ts";
import type { Unit } from "../core/unit.ts";
import type { Printer } from "../printing/printer.ts";
import type { CautionName } from "./cautions.ts";
import type { Check } from "./check.ts";
import type { Piece } from "./piece.ts";

/** One part as asked for: its parameters, the numbers derived from them, and the printer it is meant for. */
export interface Case<Parameters, Derived> {
  readonly given: Parameters;
  readonly derived: Derived;
  readonly printer: Printer;
  /** Engraved behind the label: "X" on a part that was made against an error somebody accepted. */
  readonly mark?: string;
}

/** One line of the hardware list. */
export interface HardwareLine {
  readonly item: string;
  readonly count: number;
  readonly note?: string;
}

/** Another family's part that this one needs, with the parameters that fit. */
export interface Companion {
  readonly family: string;
  /** What it is to the part, a suffix of its file names: no two companions of a part have the same. */
  readonly role: string;
  readonly parameters: Readonly<Record<string, unknown>>;
  readonly count: number;
}

/** Anything zod can parse into the parameters of a part. */
export type ParameterSchema = z.ZodObject;

/**
 * A family of parts, written like a calculation sheet: what is given, what follows, what each number is called, what
 * must hold, what it looks like, what must be bought. All functions are pure and synchronous.
 */
export interface Family<Schema extends ParameterSchema, Derived extends object> {
  readonly name: string;
  readonly title: string;
  /** What the part is for, in one or two sentences. */
  readonly purpose: string;
  /** How it lies on the bed and why. */
  readonly orientation: string;
  /** Printed without hollows, whatever infill the printer's file gives. */
  readonly solid?: boolean;
  readonly schema: Schema;
  /** A text drawing, at most 78 columns, that names the main measures. */
  readonly sketch: string;
  /** What follows: plain arithmetic. Never throws on parameters that the schema accepts. */
  readonly derive: (given: z.output<Schema>, printer: Printer) => Derived;
  readonly dimensions: Dimensions<z.output<Schema>, Derived>;
  /** Numbers the formulas name that nobody derives: hardware values, printer settings, parameters. */
  readonly givens: (each: Case<z.output<Schema>, Derived>) => readonly Given[];
  readonly checks: readonly Check<z.output<Schema>, Derived>[];
  readonly pieces: (each: Case<z.output<Schema>, Derived>) => readonly Piece[];
  readonly hardware: (each: Case<z.output<Schema>, Derived>) => readonly HardwareLine[];
  readonly companions?: (each: Case<z.output<Schema>, Derived>) => readonly Companion[];
  readonly cautions: (each: Case<z.output<Schema>, Derived>) => readonly CautionName[];
  /** Torque limits and other figures for the sheet: `M5 on plastic: at most 0.66 N·m`. */
  readonly limits: (each: Case<z.output<Schema>, Derived>) => readonly string[];
  readonly material: (given: z.output<Schema>) => string;
}

/** A derived number with its name, formula and source: what `explain` and the reports print. */
export interface Explained {
  readonly key: string;
  readonly symbol: string;
  readonly value: number;
  readonly unit: Unit;
  readonly meaning: string;
  readonly formula: string;
  readonly source: string;
}

/** A part worked out as far as plain data goes: everything but the mesh. */
export interface Design {
  readonly family: string;
  readonly title: string;
  readonly parameters: Readonly<Record<string, unknown>>;
  readonly material: string;
  readonly orientation: string;
  readonly solid: boolean;
  readonly dimensions: readonly Explained[];
  readonly givens: readonly Given[];
  readonly diagnostics: readonly Diagnostic[];
  readonly hardware: readonly HardwareLine[];
  readonly companions: readonly Companion[];
  readonly cautions: readonly CautionName[];
  readonly limits: readonly string[];
  /** What to print. Empty when an error forbids it. */
  readonly pieces: () => readonly Piece[];
}

/** A family with its types closed over, so that families of all kinds stand in one list. */
export interface AnyFamily {
  readonly name: string;
  readonly title: string;
  readonly purpose: string;
  readonly orientation: string;
  readonly sketch: string;
  readonly schema: ParameterSchema;
  readonly checks: readonly Check<never, never>[];
  /** The family itself, for tests that look inside. */
  readonly open: Family<ParameterSchema, object>;
  /** Works out parameters that the schema has already parsed. */
  readonly design: (given: Readonly<Record<string, unknown>>, printer: Printer, mark?: string) => Design;
}
