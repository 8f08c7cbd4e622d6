import * as z from "zod";
import type { Kind } from "./quantity.ts";
import type { Unit } from "./unit.ts";

/** What every parameter says about itself; it travels in the zod schema's metadata. */
export interface ParameterMeta {
  readonly symbol: string;
  readonly unit: Unit;
  readonly description: string;
  /** The range as printed, for numbers. */
  readonly range?: string;
  /** Name of the hardware table, when the parameter is a bought item. */
  readonly table?: string;
  /** The words it may be, with their meaning. */
  readonly words?: Readonly<Record<string, string>>;
  /** Name of the family, when the value is a block of its parameters. */
  readonly family?: string;
}

/** What a schema asks of a value in its own code, as data: for whoever must tell others what is allowed. */
export interface Limits {
  /** What a number measures, when text with a unit stands for it as well. */
  readonly kind?: Kind;
  readonly min?: number;
  readonly max?: number;
  readonly whole?: boolean;
  /** The regular expression of a text. */
  readonly pattern?: string;
  /** The most entries that a map of things by their names may have. */
  readonly most?: number;
}

/** The limits of each schema that has any. */
export const LIMITS = z.registry<Limits>();

/** What a complaint of a schema carries, in its `params`, for the message layer to print. */
export interface ComplaintParams {
  readonly set?: string;
  readonly found?: number;
  readonly limit?: number;
  readonly unit?: Unit;
  readonly why?: string;
}

/** Complains of a value while a schema reads it; what it returns stands for the value that is not there. */
export function complain(ctx: z.RefinementCtx, message: string, params: ComplaintParams, path: string[] = []): never {
  ctx.addIssue({ code: "custom", message, params, path });
  return z.NEVER;
}

/** Returns a value as a message shows it: short, and text as text. */
export function presented(value: unknown): string {
  if (value === undefined || value === null) return "empty";
  if (typeof value === "string") return JSON.stringify(value.length > 40 ? `${value.slice(0, 37)}...` : value);
  if (typeof value === "number" && !Number.isFinite(value)) return "no number";
  if (Array.isArray(value)) return "a list";
  return typeof value === "object" ? "a block of keys" : String(value);
}
