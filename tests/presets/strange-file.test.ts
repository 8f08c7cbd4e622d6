import fc from "fast-check";
import { expect, test } from "vitest";
import { readYaml } from "../../src/presets/read.ts";
import { strangeFile } from "../../src/presets/strange-file.ts";

/** Bytes as a program that expects text sees them. */
const asText = (bytes: readonly number[]) => new TextDecoder().decode(new Uint8Array(bytes));
const letters = (text: string) => [...text].map((letter) => letter.charCodeAt(0));

/** A binary STL: 80 letters, the count of facets, 50 bytes for each. */
const STL = asText([...letters("made by somebody".padEnd(80)), 1, 0, 0, 0, ...Array<number>(50).fill(0)]);

// Sources of the beginnings: PNG (W3C, 5.2), zip (APPNOTE 4.3.7), PDF (ISO 32000, 7.5.2), SVG 2; STL from memory.
test.each([
  ["foot.stl", STL, /STL mesh.*presets and plans are YAML/, "check or rebuild foot.3mf"],
  ["foot.stl", "solid foot\n facet normal 0 0 1\n", /STL mesh/, "check or rebuild foot.3mf"],
  ["page.png", asText([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0]), /PNG picture/, "YAML file"],
  ["photo", asText([0xff, 0xd8, 0xff, 0xe0, 0, 16, ...letters("JFIF")]), /JPEG picture/, "YAML file"],
  ["part.zip", asText([...letters("PK"), 3, 4, 20, 0]), /zip package/, ".3mf"],
  ["sheet.pdf", "%PDF-1.7\n", /a PDF/, "YAML file"],
  ["belts.svg", '<?xml version="1.0"?>\n<!-- by hand -->\n<svg xmlns="x">', /SVG drawing/, "YAML file"],
  ["page", "<!DOCTYPE html>\n<html>", /web page/, "YAML file"],
  ["foot.md", "# foot\n\nMade by", /sheet to read/, "check or rebuild foot.3mf"],
  ["hardware.csv", "item,length mm,needed\nM5 washer,,4\n", /table \(CSV\)/, "YAML file"],
  ["list", "item;length;needed\nM5 washer;;4\nM6 nut;;2\n", /table \(CSV\)/, "YAML file"],
  ["report.json", '{"madeBy": "t", "stage": "shelf", "sections": []}', /the report of shelf/, "report <plan>"],
  ["manifest.json", '{"madeBy": "t", "stage": "shelf", "files": []}', /list of files of a set of shelf/, "the plan"],
  ["package.json", '{"name": "x", "version": "1"}', /JSON without a key of a preset/, "YAML file"],
  ["bytes", "a\u0000\u0000b\u0000c\u0000", /no text/, "YAML file"],
])("%s is called what it is, with what to name instead", (name, text, says, set) => {
  const { complaints } = readYaml(name, text);
  expect(complaints).toHaveLength(1);
  expect(complaints[0]?.diagnostic.says).toMatch(says);
  expect(complaints[0]?.diagnostic.set).toContain(set);
});

test.each([
  ["a preset written as JSON", "p.json", '{"format": 1, "part": "wheel-spacer"}'],
  ["a preset in braces", "p.yaml", "{ format: 1, part: wheel-spacer }"],
  ["one with commas in its lists", "p.yaml", "mounts:\n  a: [1, 2, 3]\n  b: [4, 5, 6]\n"],
  ["lists alone", "p.yaml", "- [1, 2, 3]\n- [4, 5, 6]\n"],
  ["one without a key so far", "p.yaml", "# to be written\n"],
])("%s is no strange file", (_, name, text) => {
  expect(strangeFile(name, text)).toBeUndefined();
});

test("whatever a file holds, it is told at once", () => {
  const begin = fc.constantFrom("", "<", "<!--", "{", "[[", "solid ", "PK\u0003\u0004", "a,b,c\n", "%PDF-");
  const repeated = fc.tuple(begin, fc.string(), fc.nat(2000)).map(([first, one, count]) => first + one.repeat(count));
  const spent = Date.now();
  fc.assert(
    fc.property(repeated, (text) => {
      const told = strangeFile("x", text);
      if (told !== undefined) expect(told.says.length * told.set.length).toBeGreaterThan(0);
    }),
    { numRuns: 200, seed: 7 },
  );
  expect(strangeFile("x", `<${"<!-- -->".repeat(100_000)}`)).toBeUndefined();
  expect(strangeFile("x", `{${'"a":['.repeat(100_000)}`)).toBeUndefined();
  expect(Date.now() - spent).toBeLessThan(10_000);
});
