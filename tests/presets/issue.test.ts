import { describe, expect, test } from "vitest";
import { FAMILIES } from "../../src/parts/index.ts";
import { parseParameters, readPartPreset } from "../../src/presets/part-preset.ts";
import { readPrinterPreset } from "../../src/presets/printer-preset.ts";
import { type Located, readYaml } from "../../src/presets/read.ts";
import { printerSchema } from "../../src/printing/printer.ts";

/** Words of the libraries below, which mean nothing to a builder. */
const RAW = /invalid|received|expected|<=|>=|undefined|null|NaN|\[object|array|\bstring\b|boolean|\bmust\b|regex|zod/i;

/** Values of every kind, for keys that want another. */
const ODD: readonly unknown[] = [
  null,
  true,
  "yes",
  "",
  -5e6,
  2.5,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  [],
  Array(50).fill(1),
  Array(50).fill("x"),
  [null],
  [[]],
  [{}],
  {},
  { row: 1 },
  { row: "608", measured: "yes" },
  { row: "PETG", modulus: true },
  { check: 1, because: "no" },
];

/** Returns the complaints about a text, in short. */
function wrong(text: string) {
  return readPartPreset(readYaml("bench.yaml", text)).complaints.map(short);
}

function short({ place, diagnostic: { says, set } }: Located) {
  return { at: place === undefined ? "" : `${place.line}:${place.column}`, says, set };
}

const PART = "format: 1\npart: wheel-spacer\n";

describe("every kind of wrong value is told in our own words", () => {
  test.each(FAMILIES)("$name", (family) => {
    for (const key of Object.keys(family.schema.shape)) {
      for (const odd of ODD) {
        const about = `${key}: ${JSON.stringify(odd)}`;
        for (const { says, set, why } of parseParameters(family, { [key]: odd }).complaints) {
          for (const words of [says, set, why]) expect(words, about).not.toMatch(RAW);
          expect(says, about).toContain(key);
          expect(set.length, about).toBeGreaterThan(0);
        }
      }
    }
  });

  test("a printer file", () => {
    for (const key of [...Object.keys(printerSchema.shape), "format", "printer", "settings"]) {
      for (const odd of ODD) {
        const data = { format: 1, printer: "x", settings: { [key]: odd } };
        const outer = ["format", "printer", "settings"].includes(key) ? { ...data, [key]: odd } : data;
        const file = { name: "p.yaml", data: outer, place: () => undefined, complaints: [] };
        for (const { diagnostic } of readPrinterPreset(file).complaints) {
          expect(`${diagnostic.says} ${diagnostic.set}`, `${key}: ${JSON.stringify(odd)}`).not.toMatch(RAW);
        }
      }
    }
  });

  test("the outer keys of a part", () => {
    for (const key of ["format", "part", "name", "printer", "parameters", "accept"]) {
      for (const odd of ODD) {
        const data = { format: 1, part: "wheel-spacer", [key]: odd };
        const file = { name: "p.yaml", data, place: () => undefined, complaints: [] };
        for (const { diagnostic } of readPartPreset(file).complaints) {
          expect(`${diagnostic.says} ${diagnostic.set}`, `${key}: ${JSON.stringify(odd)}`).not.toMatch(RAW);
        }
      }
    }
  });
});

describe("name, value, what is allowed, cure and place", () => {
  const spacer = (line: string) => {
    const file = readYaml("bench.yaml", `${PART}parameters:\n  ${line}\n`);
    const { value } = readPartPreset(file);
    if (value === undefined) throw new Error("unreadable");
    const { complaints } = parseParameters(value.family, value.parameters);
    return complaints.map((diagnostic) => short({ file: "", place: file.place(diagnostic.path), diagnostic }));
  };

  test.each([
    ["length:", "4:3", "length is empty; it takes a length from ", "a length from "],
    ["length: [1]", "4:3", "length is a list; it takes a length from ", "a length from "],
    ["setLengths: 6", "4:15", "setLengths is 6; it takes a list in square brackets, even of one", "setLengths: [6]"],
    ["setLengths: [true]", "4:16", "entry 1 of setLengths is true; it takes a length", "a length from "],
    ["count: 2.5", "4:10", "count: how many to print is 2.5, not a whole number from 1 to 24", "a whole number"],
    ["count: two", "4:10", 'count is "two"; it takes a number from 1 to 24', "a number from 1 to 24"],
    ["material: { row: PETG, modulus: stiff }", "4:35", "modulus of material: stiff is not a number", "a pressure"],
    ["material: { row: PETG, density: true }", "4:35", "density of material: it is true and takes a number", "g/cm3"],
    ["material: { row: PETG, measured: yes }", "4:36", 'measured of material: it is "yes", neither', "measured: true"],
    ["material: { row: PETG, measured: [modulsu] }", "4:26", 'measured of material: "modulsu" is not', "modulus"],
  ])("%s", (line, at, says, set) => {
    const found = spacer(line);
    expect(found).toHaveLength(1);
    expect(found[0]?.at).toBe(at);
    expect(found[0]?.says.startsWith(says), found[0]?.says).toBe(true);
    expect(found[0]?.set).toContain(set);
  });

  test.each(["yes", "on", "True"])("a flag is strict, and %s is translated", (word) => {
    const [foot] = FAMILIES;
    if (foot === undefined) throw new Error("no family");
    const [found] = parseParameters(foot, { cap: word }).complaints;
    expect(found).toMatchObject({ says: `cap is "${word}"; it takes true or false`, set: "cap: true" });
  });

  test("what is missing is told at the top of the file, not at another key", () => {
    expect(wrong("part: wheel-spacer\n")).toEqual([
      { at: "1:1", says: "format is missing", set: "format: 1, the version of the format" },
    ]);
    expect(wrong("format: 1\nname: x\n")[0]).toMatchObject({ at: "1:1", says: "part is missing" });
  });

  test("an empty file, and one that holds something else than keys", () => {
    expect(wrong("")).toMatchObject([{ at: "1:1", says: "the file is empty" }]);
    expect(wrong("# nothing\n")).toMatchObject([{ at: "1:1", says: "the file is empty" }]);
    expect(wrong("- 1\n")).toMatchObject([{ at: "1:1", says: "the file holds a list, not keys with values" }]);
  });

  test("a name that no file can have is answered with one that can", () => {
    expect(wrong(`${PART}name: "my foot: left/right"\n`)[0]?.set).toBe("name: my-foot-left-right");
    expect(wrong(`${PART}name: ../../evil\n`)[0]?.set).toBe("name: evil");
  });

  test("a printer file is told from a part, and the other way round", () => {
    const printer = "format: 1\nprinter: mine\nsettings:\n  layer: 0.2\n";
    expect(wrong(printer)).toEqual([
      {
        at: "3:1",
        says: "this file describes a printer, and a part is wanted",
        set: "printer: bench.yaml in the preset of a part, or --printer bench.yaml behind one",
      },
    ]);
    const { complaints } = readPrinterPreset(readYaml("p.yaml", PART));
    expect(complaints.map(short)).toMatchObject([
      { at: "2:7", says: "this file describes a part, and a printer is wanted" },
    ]);
  });

  test("keys inside a list are compared with the keys that may stand there", () => {
    const [foot] = FAMILIES;
    if (foot === undefined) throw new Error("no family");
    const { complaints } = parseParameters(foot, { beltSpans: [{ azimuth: 0, sied: "left" }] });
    expect(complaints.map(({ says, set }) => `${says}: ${set}`)).toEqual([
      "side of entry 1 of beltSpans is missing: side: one of right, left",
      "sied is not a key here: side",
    ]);
  });

  test("a reference without an anchor is told at its place", () => {
    expect(wrong(`${PART}parameters:\n  length: *x\n`)).toMatchObject([
      { at: "4:11", says: "*x refers to &x, which does not stand before it" },
    ]);
    expect(
      wrong(`${PART}${Array.from({ length: 20 }, (_, i) => `a${i}: ${i === 0 ? "&a 1" : "*a"}\n`).join("")}`),
    ).toEqual(
      expect.arrayContaining([expect.objectContaining({ at: "20:6", says: expect.stringContaining("too often") })]),
    );
  });
});
