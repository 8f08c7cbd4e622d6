import { tidy } from "./rounding.ts";
import type { Unit } from "./unit.ts";

/** What a number measures. A parameter of one kind refuses the units of another. */
export type Kind =
  | "length"
  | "angle"
  | "force"
  | "rate"
  | "torque"
  | "mass"
  | "temperature"
  | "pressure"
  | "power"
  | "voltage";

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
  voltage: "V",
};

const INCH = 25.4;
const POUND_FORCE = 4.4482216152605;
const KILOGRAM_FORCE = 9.80665;

/** Forces and arms as sheets of motors and wrenches multiply them; a mass there is its weight, as in "kg cm". */
const FORCES = { N: 1, mN: 0.001, kgf: KILOGRAM_FORCE, kg: KILOGRAM_FORCE, lbf: POUND_FORCE, lb: POUND_FORCE };
const OUNCES = { ozf: POUND_FORCE / 16, oz: POUND_FORCE / 16 };
const ARMS = { m: 1, cm: 0.01, mm: 0.001, in: INCH / 1000, ft: (12 * INCH) / 1000 };
const TORQUES: readonly string[] = [
  ...["N·m", "N·cm", "N·mm", "mN·m", "kgf·m", "kgf·cm", "kgf·mm", "kg·m", "kg·cm", "kg·mm"],
  ...["lbf·in", "in·lbf", "lbf·ft", "ft·lbf", "lb·in", "in·lb", "lb·ft", "ft·lb"],
  ...["ozf·in", "in·ozf", "oz·in", "in·oz"],
];
/** Written without anything between the two. */
const CLOSED: readonly string[] = ["N·m", "N·cm", "N·mm", "mN·m", "kgf·cm", "kg·cm", "oz·in"];

/** Returns the spellings of a torque, a dot between force and arm; the inch-pound is 0.1129848290276167 N·m. */
function torques(): Record<string, Spelling> {
  const sizes: Readonly<Record<string, number>> = { ...FORCES, ...OUNCES, ...ARMS };
  const factorOf = (unit: string) => unit.split("·").reduce((product, one) => product * (sizes[one] ?? Number.NaN), 1);
  const entries = TORQUES.map((unit) => [unit, { kind: "torque", factor: factorOf(unit) }] as const);
  const closed = entries.filter(([unit]) => CLOSED.includes(unit));
  return Object.fromEntries([...entries, ...closed.map(([unit, spelling]) => [unit.replace("·", ""), spelling])]);
}

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
  kgf: { kind: "force", factor: KILOGRAM_FORCE },
  "N/mm": { kind: "rate", factor: 1 },
  "N/m": { kind: "rate", factor: 0.001 },
  "lbf/in": { kind: "rate", factor: POUND_FORCE / INCH },
  ...torques(),
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
  V: { kind: "voltage", factor: 1 },
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
  const key = dotted(unit);
  return Object.hasOwn(SPELLINGS, key) ? SPELLINGS[key] : undefined;
}

/** What stands between force and arm on sheets: a dot of any height, a cross of a computer, a hyphen, a blank. */
const dotted = (unit: string) => unit.replace(/ ?[·⋅∙•*.-] ?(?=[a-z])| (?=[a-z])/i, "·");

/**
 * A unit is guessed only where capitals or a plural are all that differs: any other guess may be a thousand times off,
 * and a number without its unit is another size.
 */
function unknown(text: string, unit: string, kind: Kind): Reading {
  if (/\d/.test(unit)) return { wrong: `${text} cannot be read as one number with a unit`, set: allowed(kind) };
  const bare = (word: string) =>
    dotted(word)
      .toLowerCase()
      .replace(/(?<=..)[s.]$/, "");
  const [close, ...others] = unitsOf(kind).filter((one) => bare(one) === bare(unit));
  const number = text.slice(0, text.length - unit.length).trim();
  const set = close === undefined || others.length > 0 ? allowed(kind) : `${number} ${close}`;
  return { wrong: `${unit} is not a unit known here`, set };
}

/** Returns in words what a quantity may be written in. */
function allowed(kind: Kind): string {
  const example = kind === "length" ? ", such as 1 1/4 in" : "";
  return `a ${kind} in ${shownUnitsOf(kind).join(", ")}${example}`;
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

/** Returns the spellings to name to a person: those that only leave a dot out go without saying. */
export function shownUnitsOf(kind: Kind): string[] {
  const units = unitsOf(kind);
  const closed = units.filter((unit) => unit.includes("·")).map((unit) => unit.replace("·", ""));
  return units.filter((unit) => !closed.includes(unit));
}
