import { describe, expect, test } from "vitest";
import type * as z from "zod";
import { draftPart, makeDraft } from "../../src/build/make.ts";
import { hasErrors } from "../../src/core/diagnostic.ts";
import { metaOf } from "../../src/core/parameter.ts";
import type { AnyFamily } from "../../src/parts/family.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { kernel } from "../support/kernel.ts";
import { printerWith } from "../support/printer.ts";
import { someOf } from "../support/thorough.ts";

type Setting = readonly [key: string, word: string | boolean];

/** Every word of every parameter that takes one of a few. */
function settingsOf(family: AnyFamily): Setting[] {
  return Object.entries(family.schema.shape as Record<string, z.ZodType>).flatMap(([key, schema]) => {
    const words = Object.keys(metaOf(schema).words ?? {});
    return words.map((word): Setting => [key, word === "true" ? true : word === "false" ? false : word]);
  });
}

/** Every two words of two parameters together, all else at its default; each word stands in one of them at least. */
function pairsOf(family: AnyFamily): (readonly [Setting, Setting])[] {
  const settings = settingsOf(family);
  return settings.flatMap((one, index) =>
    settings.slice(index + 1).flatMap((other) => (one[0] === other[0] ? [] : [[one, other] as const])),
  );
}

describe.each(FAMILIES)("every two words of $name", (family) => {
  test("make a part that prints and takes its hardware, or are refused by arithmetic", () => {
    const faults: string[] = [];
    const seen = new Set<string>();
    const pairs = pairsOf(family);
    for (const pair of pairs.length > 200 ? someOf(pairs, 5) : pairs) {
      const parsed = family.schema.safeParse(Object.fromEntries(pair));
      // Words that are the default anyway make many pairs one and the same part.
      const key = JSON.stringify(parsed.data);
      if (!parsed.success || seen.has(key)) continue;
      const request = {
        name: "x",
        family,
        parameters: parsed.data,
        printer: printerWith({}),
        calibrated: true,
        accept: [],
      };
      const draft = draftPart(request);
      if (hasErrors(draft.diagnostics)) continue;
      seen.add(key);
      const errors = makeDraft(draft, kernel).diagnostics.filter(({ level }) => level === "error");
      faults.push(...errors.map(({ says }) => `${pair.map((one) => one.join(": ")).join(", ")}: ${says}`));
    }
    expect(faults).toEqual([]);
    expect(seen.size).toBeGreaterThan(settingsOf(family).length / 2);
  });
});
