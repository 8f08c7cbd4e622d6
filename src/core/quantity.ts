import { nearest } from "./nearest.ts";
import { tidy } from "./rounding.ts";
import type { Unit } from "./unit.ts";

/** What a number measures. A parameter of one kind refuses the units of another. */
export type Kind = "length" | "angle" | "force" | "rate" | "torque" | "mass" | "temperature" | "pressure" | "power";

interface Spelling {
  readonly kind: Kind;
  /** Factor from the written unit to the unit used inside. */
  readonly factor: number;
  /** Added after the factor; only °F needs it. */
  readonly offset?: number;
}

/** The unit used inside for each kind. */
export const INSIDE: Readonly<Record<Kind, Unit>> = {
  length: "mm",
  angle: "deg",
  force: "N",
  rate: "N/mm",
  torque: "N·m",
  mass: "kg",
  temperature: "°C",
  pressure: "MPa",
  power: "W",
};

const INCH = 25.4;
const POUND_FORCE = 4.4482216152605;

/** Every spelling of a unit that is understood, with exact factors (the inch and the pound are exact by definition). */
const SPELLINGS: Readonly<Record<string, Spelling>> = {
  mm: { kind: "length", factor: 1 },
  cm: { kind: "length", factor: 10 },
  m: { kind: "length", factor: 1000 },
  um: { kind: "length", factor: 0.001 },
  in: { kind: "length", factor: INCH },
  inch: { kind: "length", factor: INCH },
  inches: { kind: "length", factor: INCH },
  '"': { kind: "length", factor: INCH },
  ft: { kind: "length", factor: 12 * INCH },
  deg: { kind: "angle", factor: 1 },
  "°": { kind: "angle", factor: 1 },
  rad: { kind: "angle", factor: 180 / Math.PI },
  N: { kind: "force", factor: 1 },
  kN: { kind: "force", factor: 1000 },
  lbf: { kind: "force", factor: POUND_FORCE },
  kgf: { kind: "force", factor: 9.80665 },
  "N/mm": { kind: "rate", factor: 1 },
  "N/m": { kind: "rate", factor: 0.001 },
  "lbf/in": { kind: "rate", factor: POUND_FORCE / INCH },
  N·m: { kind: "torque", factor: 1 },
  "N*m": { kind: "torque", factor: 1 },
  "N m": { kind: "torque", factor: 1 },
  Nm: { kind: "torque", factor: 1 },
  "lbf in": { kind: "torque", factor: (POUND_FORCE * INCH) / 1000 },
  kg: { kind: "mass", factor: 1 },
  g: { kind: "mass", factor: 0.001 },
  lb: { kind: "mass", factor: 0.45359237 },
  oz: { kind: "mass", factor: 0.028349523125 },
  "°C": { kind: "temperature", factor: 1 },
  C: { kind: "temperature", factor: 1 },
  F: { kind: "temperature", factor: 5 / 9, offset: (-32 * 5) / 9 },
  "°F": { kind: "temperature", factor: 5 / 9, offset: (-32 * 5) / 9 },
  MPa: { kind: "pressure", factor: 1 },
  "N/mm2": { kind: "pressure", factor: 1 },
  psi: { kind: "pressure", factor: POUND_FORCE / (INCH * INCH) },
  W: { kind: "power", factor: 1 },
  kW: { kind: "power", factor: 1000 },
};

export type Reading = { readonly value: number } | { readonly wrong: string; readonly set: string };

const NUMBER = String.raw`[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?`;
const MIXED = /^([+-]?)(?:(\d+)\s+)?(\d+)\/(\d+)/;
const DECIMAL = new RegExp(`^${NUMBER}`);

/** Splits "1 1/2 in" into 1.5 and "in"; undefined when it does not start with a number. */
function split(text: string): { amount: number; unit: string } | undefined {
  const mixed = MIXED.exec(text);
  if (mixed !== null && Number(mixed[4]) !== 0) {
    const size = Number(mixed[2] ?? 0) + Number(mixed[3]) / Number(mixed[4]);
    return { amount: mixed[1] === "-" ? -size : size, unit: text.slice(mixed[0].length).trim() };
  }
  const decimal = DECIMAL.exec(text);
  if (decimal === null) return undefined;
  return { amount: Number(decimal[0]), unit: text.slice(decimal[0].length).trim() };
}

/**
 * Returns the value of a written quantity in the unit used inside (mm, deg, N ...). A bare number is already in that
 * unit. Otherwise says what is wrong and what to write.
 */
export function readQuantity(text: string, kind: Kind): Reading {
  const trimmed = text.trim();
  if (/\d,\d/.test(trimmed)) {
    const asPoint = trimmed.replace(",", ".");
    return { wrong: "a comma is not a decimal mark here, since elsewhere it parts thousands", set: asPoint };
  }
  const parts = split(trimmed);
  if (parts === undefined) return { wrong: "this is not a number", set: `a ${kind} such as 12 ${INSIDE[kind]}` };
  if (parts.unit === "") return finite(parts.amount);
  const spelling = SPELLINGS[parts.unit];
  if (spelling === undefined) {
    const close = nearest(parts.unit, Object.keys(SPELLINGS));
    const set = close === undefined ? `${parts.amount} ${INSIDE[kind]}` : `${parts.amount} ${close}`;
    return { wrong: `${parts.unit} is not a unit known here`, set };
  }
  if (spelling.kind !== kind) {
    const wrong = `${parts.unit} measures a ${spelling.kind}, and this is a ${kind}`;
    return { wrong, set: `a ${kind} in ${unitsOf(kind).join(", ")}` };
  }
  return finite(parts.amount * spelling.factor + (spelling.offset ?? 0));
}

function finite(value: number): Reading {
  return Number.isFinite(value)
    ? { value: tidy(value) }
    : { wrong: "the number is too large to hold", set: "a number of ordinary size" };
}

/** Returns the spellings that measure this kind, the one used inside first. */
export function unitsOf(kind: Kind): string[] {
  return Object.keys(SPELLINGS).filter((unit) => SPELLINGS[unit]?.kind === kind);
}
