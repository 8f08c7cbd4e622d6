import type { Request } from "../build/request.ts";
import { measureFirst, type ToMeasure } from "../parts/measure-first.ts";
import { hanging } from "./explain/hanging.ts";
import type { Io } from "./io.ts";

/** A part whose preset is told of, and whether somebody else wrote it. */
export interface Told {
  readonly request: Request;
  readonly foreign: boolean;
}

/** Returns what to measure before printing, with how it is done; nothing where all is known. */
export function measureLines(parts: readonly Told[], paint: Io["paint"]): string[] {
  const all = toMeasure(parts);
  const foreign = parts.some((one) => one.foreign);
  if (all.length === 0 && !foreign) return [];
  return [
    paint("bold", `measure before printing${foreign ? ": the sizes are those of whoever wrote this preset" : ""}`),
    ...all.flatMap(({ what, takes, how }) => [...hanging("  ", `${what}, here ${takes}`), ...hanging("      ", how)]),
    ...(foreign ? hanging("  ", PRINTER) : []),
  ];
}

const PRINTER =
  "printer: the settings are those of another one; --printer <file of yours>, and tramwright explain printer tells how it is filled in";

/** Returns what to measure of several parts, each thing once. */
export function toMeasure(parts: readonly Told[]): ToMeasure[] {
  const all = parts.flatMap(({ request, foreign }) => measureFirst(request.family, request.parameters, foreign));
  const key = ({ what, takes }: ToMeasure) => `${what} ${takes}`;
  return [...new Map(all.map((one) => [key(one), one])).values()];
}
