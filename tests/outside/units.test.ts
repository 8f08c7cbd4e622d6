import { expect, test } from "vitest";
import { INSIDE, type Kind, readQuantity, unitsOf } from "../../src/core/quantity.ts";
import { hasTool, runTool } from "../support/outside-tool.ts";
import { dice } from "./random.ts";

/** How GNU units spells what a person may write here; temperatures are functions there. */
const SPELLED: Readonly<Record<string, string>> = {
  mm: "mm",
  cm: "cm",
  m: "m",
  um: "micrometer",
  in: "inch",
  inch: "inch",
  inches: "inch",
  '"': "inch",
  ft: "foot",
  "'": "foot",
  deg: "degree",
  "°": "degree",
  rad: "radian",
  N: "newton",
  kN: "kilonewton",
  lbf: "lbf",
  kgf: "kgf",
  "N/mm": "newton/mm",
  "N/m": "newton/m",
  "lbf/in": "lbf/inch",
  N·m: "newton meter",
  N·cm: "newton cm",
  N·mm: "newton mm",
  mN·m: "millinewton meter",
  kgf·m: "kgf meter",
  kgf·cm: "kgf cm",
  kgf·mm: "kgf mm",
  kg·m: "kgf meter",
  kg·cm: "kgf cm",
  kg·mm: "kgf mm",
  lbf·in: "lbf inch",
  in·lbf: "lbf inch",
  lbf·ft: "lbf foot",
  ft·lbf: "lbf foot",
  lb·in: "lbf inch",
  in·lb: "lbf inch",
  lb·ft: "lbf foot",
  ft·lb: "lbf foot",
  // It knows no ounce of force, a sixteenth of the pound-force (NIST SP 811, appendix B.8).
  ozf·in: "1|16 lbf inch",
  in·ozf: "1|16 lbf inch",
  oz·in: "1|16 lbf inch",
  in·oz: "1|16 lbf inch",
  Nm: "newton meter",
  Ncm: "newton cm",
  Nmm: "newton mm",
  mNm: "millinewton meter",
  kgfcm: "kgf cm",
  kgcm: "kgf cm",
  ozin: "1|16 lbf inch",
  kg: "kg",
  g: "gram",
  lb: "pound",
  oz: "ounce",
  "°C": "tempC",
  C: "tempC",
  F: "tempF",
  "°F": "tempF",
  K: "tempK",
  MPa: "megapascal",
  "N/mm2": "newton/mm^2",
  psi: "psi",
  W: "watt",
  kW: "kilowatt",
  V: "volt",
};

const KINDS = Object.keys(INSIDE) as Kind[];
const VALUES = 320;

interface Written {
  readonly text: string;
  readonly kind: Kind;
  /** The same for GNU units: what there is, and what is wanted. */
  readonly have: string;
  readonly want: string;
}

/** Writes a random amount of any unit: decimals, exponents, signs, feet, and the fractions that inches are sold in. */
function written(roll: ReturnType<typeof dice>, kind: Kind, unit: string): Written {
  const size = 10 ** roll.between(-3, 5) * (roll.between(0, 1) < 0.25 ? -1 : 1);
  const amount =
    kind === "temperature"
      ? roll.between(unit === "K" ? 200 : -60, 500).toFixed(2)
      : size.toPrecision(roll.whole(1, 9));
  const want = spelled(INSIDE[kind]);
  if (kind === "temperature") return { text: `${amount} ${unit}`, kind, have: `${spelled(unit)}(${amount})`, want };
  if (spelled(unit) === "inch" && roll.between(0, 1) < 0.7) {
    const feet = roll.between(0, 1) < 0.3 ? roll.whole(1, 9) : 0;
    const bottom = roll.pick([2, 4, 8, 16, 32, 64]);
    const [whole, top] = [roll.whole(1, feet > 0 ? 10 : 40), roll.whole(1, bottom - 1)];
    const inches = `(${whole} + ${top} / ${bottom}) ${spelled(unit)}`;
    if (feet > 0) {
      const text = `${feet}${roll.pick(["'", " ft"])} ${whole} ${top}/${bottom} ${unit}`;
      return { text, kind, have: `${feet} foot + ${inches}`, want };
    }
    return { text: `${whole}${roll.pick([" ", "-"])}${top}/${bottom} ${unit}`, kind, have: inches, want };
  }
  const between = roll.pick(["·", " ", "*", "-", ".", " · "]);
  return {
    text: `${amount}${roll.pick(["", " "])}${unit.replace("·", between)}`,
    kind,
    have: `(${amount}) ${spelled(unit)}`,
    want,
  };
}

function spelled(unit: string): string {
  const there = SPELLED[unit];
  if (there === undefined) throw new Error(`say how GNU units spells ${unit}`);
  return there;
}

// Source: GNU units (Debian package `units`), which has its own definitions of every unit.
test.skipIf(!hasTool("units"))(
  `${VALUES} written quantities, every unit several times, read as GNU units converts them`,
  () => {
    const roll = dice(30);
    const units = KINDS.flatMap((kind) => unitsOf(kind).map((unit) => ({ kind, unit })));
    expect(new Set(units.map(({ unit }) => unit))).toEqual(new Set(Object.keys(SPELLED)));
    const all = Array.from({ length: VALUES }, (_, index) => {
      const { kind, unit } = units[index % units.length] as (typeof units)[number];
      return written(roll, kind, unit);
    });
    const asked = all.flatMap(({ have, want }) => [have, want]).join("\n");
    const printed = runTool("units", ["--terse", "--output-format", "%.17g"], `${asked}\n`);
    const answers = printed.trim().split("\n").map(Number);
    expect(answers).toHaveLength(VALUES);
    for (const [index, { text, kind, have }] of all.entries()) {
      const reading = readQuantity(text, kind);
      const there = answers[index] ?? Number.NaN;
      // Values are kept to a picometre (core/rounding.ts); the rest is the rounding of doubles.
      const off = "value" in reading ? Math.abs(reading.value - there) : Number.NaN;
      const message = `${text}: ${JSON.stringify(reading)}, GNU units ${there} for ${have}`;
      expect(off, message).toBeLessThanOrEqual(0.51e-9 + 4e-15 * Math.abs(there));
    }
  },
);
