import fc from "fast-check";
import { expect, test } from "vitest";
import { canonical, shortHash } from "../../src/build/hash.ts";

test("a hash is SHA-256 of the canonical text, first eight digits (FIPS 180-4 example: abc)", () => {
  // The canonical text of a string is its JSON, so the published digest of "abc" with quotation marks is not it; the
  // empty object's text is two bytes, {} .
  expect(canonical({ b: [1, { z: null, a: true }], a: "x" })).toBe('{"a":"x","b":[1,{"a":true,"z":null}]}');
  expect(shortHash({})).toBe("44136fa3");
});

test("equal data gives an equal hash, whatever the order of keys", () => {
  fc.assert(
    fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (data) => {
      const reversed = Object.fromEntries(Object.entries(data).reverse());
      expect(shortHash(reversed)).toBe(shortHash(data));
      expect(JSON.parse(canonical(data))).toEqual(JSON.parse(JSON.stringify(data)));
    }),
  );
});
