import { tidy } from "./rounding.ts";
import type { Unit } from "./unit.ts";

/** What a number measures. A parameter of one kind refuses the units of another. */
export type Kind = "length" | "angle" | "force" | "rate" | "torque" | "mass" | "temperature" | "pressure" | "power";

interface Spelling {
  readonly kind: Kind;
  /** Factor from the written unit to the unit used inside. */
  readonly factor: number;
  /** Added after the factor; only °F and K need it. */
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
/** 1 lbf in = 0.1129848290276167 N·m. */
const INCH_POUND = (POUND_FORCE * INCH) / 1000;

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
  "'": { kind: "length", factor: 12 * INCH },
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
  N·mm: { kind: "torque", factor: 0.001 },
  "N mm": { kind: "torque", factor: 0.001 },
  Nmm: { kind: "torque", factor: 0.001 },
  "lbf in": { kind: "torque", factor: INCH_POUND },
  "in lbf": { kind: "torque", factor: INCH_POUND },
  lbf·in: { kind: "torque", factor: INCH_POUND },
  in·lbf: { kind: "torque", factor: INCH_POUND },
  "lbf ft": { kind: "torque", factor: 12 * INCH_POUND },
  "ft lbf": { kind: "torque", factor: 12 * INCH_POUND },
  kg: { kind: "mass", factor: 1 },
  g: { kind: "mass", factor: 0.001 },
  lb: { kind: "mass", factor: 0.45359237 },
  oz: { kind: "mass", factor: 0.028349523125 },
  "°C": { kind: "temperature", factor: 1 },
  C: { kind: "temperature", factor: 1 },
  F: { kind: "temperature", factor: 5 / 9, offset: (-32 * 5) / 9 },
  "°F": { kind: "temperature", factor: 5 / 9, offset: (-32 * 5) / 9 },
  K: { kind: "temperature", factor: 1, offset: -273.15 },
  MPa: { kind: "pressure", factor: 1 },
  "N/mm2": { kind: "pressure", factor: 1 },
  psi: { kind: "pressure", factor: POUND_FORCE / (INCH * INCH) },
  W: { kind: "power", factor: 1 },
  kW: { kind: "power", factor: 1000 },
};

/** A value, or what is wrong and what to write; `anything` where nothing of what was written is of use. */
export type Reading =
  | { readonly value: number }
  | { readonly wrong: string; readonly set: string; readonly anything?: true };

const NUMBER = String.raw`[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?`;
const MIXED = /^([+-]?)(?:(\d+)\s+)?(\d+)\/(\d+)/;
/** "1-1/4": one and a quarter where inches are meant; elsewhere it might be a difference. */
const HYPHENED = /^([+-]?\d+)-(\d+\/\d+\s*(?:in|inch|inches|"))$/;
/** `1' 3 1/2"` and `1 ft 3 in`. */
const FEET = /^([+-]?\d+)\s*(?:'|ft\b)\s*(\d[^'-]*?)\s*(?:"|in|inch|inches)$/;
const DECIMAL = new RegExp(`^${NUMBER}`);

interface Parts {
  readonly amount: number;
  readonly unit: string;
}

/** Splits "1 1/2 in" into 1.5 and "in"; undefined when it does not start with a number. */
function split(text: string): Parts | undefined {
  const mixed = MIXED.exec(text);
  if (mixed !== null && Number(mixed[4]) !== 0) {
    const size = Number(mixed[2] ?? 0) + Number(mixed[3]) / Number(mixed[4]);
    return { amount: mixed[1] === "-" ? -size : size, unit: text.slice(mixed[0].length).trim() };
  }
  const decimal = DECIMAL.exec(text);
  if (decimal === null) return undefined;
  return { amount: Number(decimal[0]), unit: text.slice(decimal[0].length).trim() };
}

/** Returns feet and inches as inches; undefined when the text is something else. */
function feetAndInches(text: string): Parts | undefined {
  const [, feet = "", rest = ""] = FEET.exec(text) ?? [];
  const inches = split(rest);
  if (inches === undefined || inches.unit !== "" || inches.amount >= 12) return undefined;
  return { amount: 12 * Number(feet) + (feet.startsWith("-") ? -1 : 1) * inches.amount, unit: "in" };
}

/** Marks that text programs put for those of the keyboard, and blanks in a row. */
function plain(text: string): string {
  return text.trim().replace(/[″”“]/g, '"').replace(/[′’‘]/g, "'").replace(/\s+/g, " ");
}

/**
 * Returns the value of a written quantity in the unit used inside (mm, deg, N ...). A bare number is already in that
 * unit. Otherwise says what is wrong and what to write.
 */
export function readQuantity(text: string, kind: Kind): Reading {
  const trimmed = plain(text);
  if (/\d,\d/.test(trimmed)) return comma(trimmed);
  const parts = feetAndInches(trimmed) ?? split(trimmed.replace(HYPHENED, "$1 $2"));
  if (parts === undefined) {
    const wrong = `${trimmed || "an empty text"} is not a number`;
    return { wrong, set: `a ${kind} such as 12 ${INSIDE[kind]}`, anything: true };
  }
  if (parts.unit === "") return finite(parts.amount);
  const spelling = spellingOf(parts.unit);
  if (spelling === undefined) return unknown(trimmed, parts.unit, kind);
  if (spelling.kind !== kind) {
    const wrong = `${parts.unit} measures a ${spelling.kind}, and this is a ${kind}`;
    return { wrong, set: allowed(kind) };
  }
  return finite(parts.amount * spelling.factor + (spelling.offset ?? 0));
}

/** "1,200" may be one and a fifth or twelve hundred: only the writer knows. */
function comma(text: string): Reading {
  const [point, none] = [text.replace(",", "."), text.replaceAll(",", "")];
  const groups = /^[+-]?\d{1,3}(,\d{3})+(?!\d)/.test(text);
  const wrong = `${text} has a comma, which is no decimal mark here, since elsewhere it parts thousands`;
  return { wrong, set: groups ? (/,.*,/.test(text) ? none : `${point} or ${none}, whichever is meant`) : point };
}

function spellingOf(unit: string): Spelling | undefined {
  return Object.hasOwn(SPELLINGS, unit) ? SPELLINGS[unit] : undefined;
}

/**
 * A unit is guessed only where capitals or a plural are all that differs: any other guess may be a thousand times off,
 * and a number without its unit is another size.
 */
function unknown(text: string, unit: string, kind: Kind): Reading {
  if (/\d/.test(unit)) return { wrong: `${text} cannot be read as one number with a unit`, set: allowed(kind) };
  const bare = (word: string) => word.toLowerCase().replace(/(?<=..)[s.]$/, "");
  const [close, ...others] = unitsOf(kind).filter((one) => bare(one) === bare(unit));
  const number = text.slice(0, text.length - unit.length).trim();
  const set = close === undefined || others.length > 0 ? allowed(kind) : `${number} ${close}`;
  return { wrong: `${unit} is not a unit known here`, set };
}

/** Returns in words what a quantity may be written in. */
function allowed(kind: Kind): string {
  const example = kind === "length" ? ", such as 1 1/4 in" : "";
  return `a ${kind} in ${unitsOf(kind).join(", ")}${example}`;
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
