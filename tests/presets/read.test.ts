import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseParameters, readPartPreset } from "../../src/presets/part-preset.ts";
import { readPrinterPreset } from "../../src/presets/printer-preset.ts";
import { readValue, readYaml } from "../../src/presets/read.ts";

const GOOD = `# a comment
format: 1
part: wheel-spacer
name: bench-left
parameters:
  bolt: M5
  length: 1/4 in
  outside: 10
`;

/** Everything that is wrong with a preset, with its place, as the command line collects it. */
function complaints(text: string) {
  const file = readYaml("bench.yaml", text);
  const { value, complaints: outer } = readPartPreset(file);
  const inner = value === undefined ? [] : parseParameters(value.family, value.parameters).complaints;
  const placed = inner.map((diagnostic) => ({ place: file.place(diagnostic.path), diagnostic }));
  return [...outer, ...placed].map(({ place, diagnostic: { says, set } }) => ({
    at: place === undefined ? "" : `${place.line}:${place.column}`,
    says,
    set,
  }));
}

describe("a part preset", () => {
  test("is read with units", () => {
    const { value } = readPartPreset(readYaml("bench.yaml", GOOD));
    expect(value?.name).toBe("bench-left");
    expect(value && parseParameters(value.family, value.parameters).value).toMatchObject({ length: 6.35, outside: 10 });
  });

  test.each([
    ["a misspelled key", "  outside: 10", "  outsied: 10", "8:12", "outside"],
    ["a misspelled word", "  bolt: M5", "  kind: flangd", "6:9", "flanged"],
    ["a unit of another kind", "1/4 in", "2 N/mm", "7:11", "a length in mm"],
    ["a decimal comma", "1/4 in", "6,35 mm", "7:11", "6.35 mm"],
    ["a value out of range", "  outside: 10", "  outside: 90", "8:12", "a value from 4 to 20 mm"],
    ["an unknown unit", "1/4 in", "6 mmm", "7:11", "a length in mm, cm,"],
    ["an unknown family", "wheel-spacer", "wheel-spacr", "3:7", "wheel-spacer"],
    ["an unknown outer key", "name:", "nam:", "4:6", "name"],
    ["a name that is a path", "bench-left", "../../etc/passwd", "4:7", ""],
    ["an unknown row", "  outside: 10", "  material: PETGG", "8:13", "PETG"],
    ["an unknown field of a row", "  outside: 10", "  material: { row: PETG, modulsu: 3 }", "8:35", "modulus"],
    ["a row that is unknown inside a map", "  outside: 10", "  material: { row: PETGG }", "8:20", "PETG"],
    ["a newer format", "format: 1", "format: 7", "2:9", "a newer tramwright"],
    ["a missing format", "format: 1\n", "", "1:1", "format: 1"],
    ["not a number", "1/4 in", "short", "7:11", "a length from "],
  ])("%s is answered at its place with what to set", (_, before, after, at, set) => {
    const found = complaints(GOOD.replace(before, after));
    expect(found).toHaveLength(1);
    expect(found[0]?.at).toBe(at);
    expect(found[0]?.set).toContain(set);
    expect(found[0]?.says).not.toMatch(/undefined|NaN|\[object/);
  });

  test("every complaint comes at once", () => {
    const found = complaints(
      "format: 1\npart: wheel-spacer\nnme: x\nparameters: { kind: roud, outside: 900, bolt: M9, length: x }\n",
    );
    expect(found.map(({ at }) => at)).toHaveLength(5);
  });

  test.each([
    ["a tab as indent", "parameters:\n\tbolt: M5\n"],
    ["a duplicate key", "format: 1\nformat: 1\npart: wheel-spacer\n"],
    ["an unfinished quotation", 'format: 1\npart: "wheel-spacer\n'],
    [
      "a bomb of aliases",
      `a: &a [1,1,1,1,1,1]\n${"bcdefgh"
        .split("")
        .map((key, i) => `${key}: &${key} [${Array(9).fill(`*${"abcdefgh"[i]}`).join()}]`)
        .join("\n")}\n`,
    ],
    ["a very long file", `# ${"x".repeat(300_000)}`],
    ["a list instead of a map", "- 1\n- 2\n"],
    ["nothing", ""],
    ["a lone NUL", "\u0000"],
    ["an unknown tag", "format: !!js/function 1\n"],
    ["deep nesting", "[".repeat(20_000)],
  ])("%s is an error, not an exception", (_, text) => {
    const { value, complaints: found } = readPartPreset(readYaml("odd.yaml", text));
    expect(value).toBeUndefined();
    expect(found.length).toBeGreaterThan(0);
    expect(found[0]?.diagnostic.level).toBe("error");
  });

  test("carriage returns and a byte-order mark do no harm", () => {
    const { value } = readPartPreset(readYaml("bench.yaml", `\ufeff${GOOD.replaceAll("\n", "\r\n")}`));
    expect(value?.name).toBe("bench-left");
  });

  test("keys of the prototype are strangers like any other", () => {
    expect(complaints(`${GOOD}  __proto__: 3\n`).some(({ says }) => says.includes("__proto__"))).toBe(true);
    expect(complaints(`${GOOD}  constructor: 3\n`)).toHaveLength(1);
  });

  test("any mutation of its text gives complaints or a value, never an exception", () => {
    fc.assert(
      fc.property(fc.nat(GOOD.length), fc.nat(6), fc.string({ maxLength: 6, unit: "binary" }), (at, cut, insert) => {
        const text = GOOD.slice(0, at) + insert + GOOD.slice(at + cut);
        for (const { says, set } of complaints(text)) expect(says.length + set.length).toBeGreaterThan(0);
      }),
      { numRuns: 1500 },
    );
  });
});

describe("a printer file", () => {
  const printer = (settings: string) =>
    readPrinterPreset(readYaml("p.yaml", `format: 1\nprinter: mine\nsettings:\n${settings}`));

  test.each(["workshop-petg", "inch-garage-asa"])("%s is read", (name) => {
    const { value, complaints: found } = readPrinterPreset(
      readYaml(name, readFileSync(`presets/printers/${name}.yaml`, "utf8")),
    );
    expect(found).toEqual([]);
    expect(value?.layer).toBe(0.2);
  });

  test.each([
    ["  line: 0.2\n", "line", "4:9"],
    ["  layer: 0.5\n", "layer", "4:10"],
    ["  wallLines: 1\n", "wall lines", "4:14"],
    ["  holeShrinkVertical: 2\n", "upright", "4:23"],
    ["  materialShrink: 9\n", "per cent", "4:19"],
  ])("%j is out of range, at its place", (settings, word, at) => {
    const { complaints: found } = printer(settings);
    expect(found).toHaveLength(1);
    expect(found[0]?.diagnostic.name).toBe("printer-setting-out-of-range");
    expect(`${found[0]?.place?.line}:${found[0]?.place?.column}`).toBe(at);
    expect(found[0]?.diagnostic.says).toContain(word);
  });
});

test("values typed on the command line are read as a preset would hold them", () => {
  expect(readValue("12")).toBe(12);
  expect(readValue("13 in")).toBe("13 in");
  expect(readValue('3/4"')).toBe('3/4"');
  expect(readValue("[1, 2]")).toEqual([1, 2]);
  expect(readValue("{ row: '608' }")).toEqual({ row: "608" });
  expect(readValue("}{")).toBe("}{");
});
