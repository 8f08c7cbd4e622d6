import { createUnit, unit } from "mathjs";
import { describe, expect, test } from "vitest";
import { length } from "../../src/core/parameter.ts";
import { INSIDE, type Kind, readQuantity, unitsOf } from "../../src/core/quantity.ts";
import { complaintsOf } from "../../src/parts/complaints.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { dice } from "./random.ts";

/** What mathjs, a general-purpose library, calls the units that it knows as well, and what we call inside. */
const SPELLED: Readonly<Record<string, string>> = {
  '"': "in",
  "'": "ft",
  "°": "deg",
  "°C": "degC",
  C: "degC",
  "°F": "degF",
  F: "degF",
  lb: "lbm",
  "N/mm2": "N/mm^2",
};
/** Motor sheets write a mass for its weight, and leave the dot out. */
const TORQUE = /^(mN|N|kgf?|lbf?|ozf?)·?(mm|cm|m|in|ft)$|^(in|ft)·(lbf?|ozf?)$/;
const WEIGHTS: Readonly<Record<string, string>> = { kg: "kgf", lb: "lbf", oz: "ozf" };
// mathjs has no ounce of force: a sixteenth of the pound-force (NIST SP 811, appendix B.8).
createUnit("ozf", "0.0625 lbf");

function spelled(word: string): string {
  const [, force, arm, first, second] = TORQUE.exec(word) ?? [];
  const factors = [force ?? second, arm ?? first];
  if (factors[0] === undefined || SPELLED[word] !== undefined) return SPELLED[word] ?? word;
  return factors.map((one = "") => WEIGHTS[one] ?? one).join(" ");
}

/** A number as somebody may write it, and its value. */
function written(amounts: ReturnType<typeof dice>): readonly [text: string, value: number] {
  const sign = amounts.pick(["", "", "-", "+"]);
  const factor = sign === "-" ? -1 : 1;
  const [whole, below] = [amounts.whole(0, 40), amounts.pick([2, 4, 8, 16, 32, 64])];
  const above = amounts.whole(1, below - 1);
  const decimal = String(amounts.between(0, 10 ** amounts.whole(-3, 4)));
  return amounts.pick([
    [`${sign}${whole}`, factor * whole],
    [`${sign}${decimal}`, factor * Number(decimal)],
    [`${sign}${whole}.`, factor * whole],
    [`${sign}.${whole}`, factor * Number(`.${whole}`)],
    [`${sign}${whole}e-1`, (factor * whole) / 10],
    [`${sign}${above}/${below}`, (factor * above) / below],
    [`${sign}${whole} ${above}/${below}`, factor * (whole + above / below)],
  ] as const);
}

describe("quantities as they are written", () => {
  test("mean what mathjs makes of the same number and unit", () => {
    const amounts = dice(20_261_129);
    const kinds = Object.keys(INSIDE) as Kind[];
    for (let round = 0; round < 4000; round++) {
      const kind = amounts.pick(kinds);
      const typed = amounts.pick(unitsOf(kind));
      const [text, value] = written(amounts);
      const between = amounts.pick(["·", " ", "*", "-", ".", " · ", "⋅"]);
      const gap = amounts.pick(["", " ", "  "]);
      const line = `${amounts.pick(["", " "])}${text}${gap}${typed.replace("·", between)}${amounts.pick(["", " "])}`;
      const reading = readQuantity(line, kind);
      const expected = unit(value, spelled(typed)).toNumber(spelled(INSIDE[kind]));
      expect(reading, line).toHaveProperty("value");
      const found = "value" in reading ? reading.value : Number.NaN;
      // What is read is kept to nine decimals.
      expect(Math.abs(found - expected), `${line} is ${expected}`).toBeLessThanOrEqual(
        1e-9 * Math.max(1, Math.abs(expected)),
      );
    }
  });

  test("a unit of another kind is refused by its name, whichever two they are", () => {
    const kinds = Object.keys(INSIDE) as Kind[];
    for (const kind of kinds) {
      for (const other of kinds.filter((one) => one !== kind)) {
        for (const typed of unitsOf(other)) {
          const reading = readQuantity(`2 ${typed}`, kind);
          expect("wrong" in reading && reading.wrong).toBe(`${typed} measures a ${other}, and this is a ${kind}`);
          expect("set" in reading && reading.set).toContain(`a ${kind} in ${INSIDE[kind]}`);
        }
      }
    }
  });

  test("what was typed is repeated with what it means", () => {
    const schema = length({ symbol: "l", meaning: "the length", min: 1, max: 100 });
    const said = (typed: unknown) => schema.safeParse(typed).error?.issues[0]?.message;
    expect(said("13 in")).toBe("the length is 13 in (330.2 mm), outside 1 to 100 mm");
    expect(said("-1/4 in")).toBe("the length is -1/4 in (-6.35 mm), outside 1 to 100 mm");
    expect(said(330.2)).toBe("the length is 330.2, outside 1 to 100 mm");
  });
});

describe("a misspelled word", () => {
  /** Two neighbours change places, as hurried fingers do. */
  const swapped = (word: string, at: number) =>
    word.slice(0, at) + (word[at + 1] ?? "") + (word[at] ?? "") + word.slice(at + 2);

  test.each(FAMILIES.map((family) => [family.name, family] as const))(
    "as a key of a %s gets the right one",
    (_, family) => {
      const { schema } = family;
      const keys = Object.keys(schema.shape);
      for (const key of keys.filter((one) => one.length > 4)) {
        const typed = swapped(key, 2);
        if (typed === key || keys.includes(typed)) continue;
        const data = { [typed]: 1 };
        const parsed = schema.safeParse(data);
        const told = parsed.success ? [] : complaintsOf(parsed.error, { schema, data, under: [] });
        expect(told.find(({ path }) => path[0] === typed)?.set, typed).toBe(key);
      }
    },
  );
});
