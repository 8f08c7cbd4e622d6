import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { parseDocument } from "yaml";
import type { Diagnostic } from "../../src/core/diagnostic.ts";
import { parseParameters, readPartPreset } from "../../src/presets/part-preset.ts";
import { kindOf } from "../../src/presets/preset-file.ts";
import { readPrinterPreset } from "../../src/presets/printer-preset.ts";
import { readYaml } from "../../src/presets/read.ts";
import { readStagePreset, type StagePreset } from "../../src/presets/stage-preset.ts";
import { UNCALIBRATED } from "../../src/printing/printer.ts";
import { deriveStage } from "../../src/stage/index.ts";
import { runs } from "../support/thorough.ts";

/** What is told of a text as far as arithmetic goes; the first `lost` of it are of lines that cannot be read. */
function toldOf(text: string): {
  readonly syntax: number;
  readonly rest: readonly Diagnostic[];
  readonly data: unknown;
} {
  const file = readYaml("p.yaml", text);
  const syntax = file.complaints.length;
  const { data } = file;
  if (file.data === undefined) return { syntax, data, rest: [] };
  const rest = (complaints: readonly { readonly diagnostic: Diagnostic }[]) =>
    complaints.slice(syntax).map(({ diagnostic }) => diagnostic);
  const kind = kindOf(file);
  if (kind === "printer") return { syntax, data, rest: rest(readPrinterPreset(file).complaints) };
  if (kind === "part") {
    const { value, complaints } = readPartPreset(file);
    const inner = value === undefined ? [] : parseParameters(value.family, value.parameters, file.lost).complaints;
    return { syntax, data, rest: [...rest(complaints), ...inner] };
  }
  const { value, complaints } = readStagePreset(file);
  return { syntax, data, rest: [...rest(complaints), ...(value === undefined ? [] : derived(value))] };
}

const known = new Map<string, readonly Diagnostic[]>();

/** Slips in one line mostly lose the same lines: what was worked out of the same plan is not worked out again. */
function derived({ plan, unread }: StagePreset): readonly Diagnostic[] {
  const key = JSON.stringify([plan, unread]);
  const told = known.get(key) ?? deriveStage(plan, () => UNCALIBRATED, unread).diagnostics;
  known.set(key, told);
  return told;
}

/** Slips of a hand that types, at one line. */
const SLIPS: Readonly<Record<string, (line: string) => string>> = {
  "the colon left out": (line) => line.replace(":", ""),
  "a quotation mark that is not closed": (line) => line.replace(/: (?=\S)/, ': "'),
  "a brace that is not closed": (line) => line.replace(/[}\]]/, ""),
  "a bracket too many": (line) => `${line}]`,
  "a second colon": (line) => line.replace(": ", ": x: "),
  "a tabulator before it": (line) => line.replace(/^ {2}/, "\t"),
  "an indentation of one more": (line) => ` ${line}`,
  "a sign that begins nothing": (line) => line.replace(/: (?=\S)/, ": @"),
};

const FILES = [
  ...["presets/stages", "presets/parts", "presets/printers"].flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: "utf8" }).map((name) => join(folder, name)),
  ),
  "docs/worked-machine.yaml",
].filter((path) => path.endsWith(".yaml"));
const keyOf = ({ name, path }: Diagnostic) => `${name} ${path.join(".")}`;
const isWrong = (text: string) => {
  const { errors, warnings } = parseDocument(text, { uniqueKeys: false });
  return errors.length + warnings.length > 0;
};

describe("a slip of notation in a sound preset is told alone", () => {
  test.each(FILES)("%s", (path) => {
    const text = readFileSync(path, "utf8");
    const sound = new Set(toldOf(text).rest.map(keyOf));
    const lines = text.split("\n");
    // A plan takes long to read: each of its lines has some of the slips, the next line others.
    const apart = path.includes("stages") ? runs(2, 10) : path.includes("worked") ? runs(1, 10) : runs(1, 3);
    let [slips, recovered] = [0, 0];
    for (const [at, line] of lines.entries()) {
      if (line.trim() === "" || line.trim().startsWith("#")) continue;
      for (const [index, [slip, make]] of Object.entries(SLIPS).entries()) {
        if ((at + index) % apart !== apart - 1) continue;
        const wrong = lines.with(at, make(line)).join("\n");
        if (wrong === text || !isWrong(wrong)) continue;
        const { syntax, rest, data } = toldOf(wrong);
        slips++;
        if (data !== undefined) recovered++;
        const follow = rest.filter((one) => !sound.has(keyOf(one))).map((one) => `${keyOf(one)}: ${one.says}`);
        expect([at + 1, slip, syntax, follow]).toEqual([at + 1, slip, 1, []]);
      }
    }
    expect(slips).toBeGreaterThan(runs(10, 3));
    expect(recovered / slips).toBeGreaterThan(0.9);
  });
});

describe("what else is wrong is told in the same run", () => {
  const SLIPPED = `format: 1
part: screw-foot
parameters:
  beltPlane: "12
  outsied: 3
  wall: 2 N
  bearing: { row: 608
  label: A
`;

  test("of a part: each slip, a misspelled key and a wrong unit, in four messages", () => {
    const file = readYaml("p.yaml", SLIPPED);
    expect(file.data).toEqual({ format: 1, part: "screw-foot", parameters: { outsied: 3, wall: "2 N", label: "A" } });
    const { value, complaints } = readPartPreset(file);
    const inner = parseParameters(value?.family as never, value?.parameters, file.lost).complaints;
    expect(complaints.map(({ place }) => place?.line)).toEqual([4, 7]);
    expect(inner.map(({ path }) => path.join("."))).toEqual(["parameters.wall", "parameters.outsied"]);
  });

  test("a block is lost whole where its first line cannot be read, and a list where one entry cannot", () => {
    expect(readYaml("p.yaml", "a: 1\nb: c: d\n  e: 1\nf: 2\n").data).toEqual({ a: 1, f: 2 });
    expect(readYaml("p.yaml", "a: 1\nb:\n  - { x: 1 }\n  - { x: 2\nf: 2\n").data).toEqual({ a: 1, f: 2 });
    expect(readYaml("p.yaml", "a: 1\r\nb:\r\n  c: 1\r\n  d: [1\r\nf: 2\r\n").data).toEqual({ a: 1, b: { c: 1 }, f: 2 });
  });

  test("a file of which nothing certain remains is told of once, at its first fault", () => {
    for (const text of ["{ a: 1\n", " a: 1\n: {\n", "---\na: {\n---\nb: 1\n", `${"a: {\n".repeat(30)}`]) {
      const { data, complaints } = readYaml("p.yaml", text);
      expect([text, data, complaints.length]).toEqual([text, undefined, 1]);
    }
  });

  test("hundreds of slips take no longer than a file may", () => {
    const spent = Date.now();
    for (const line of ["a: {", "  b: [", 'c: "', "  - x: {", "\ta: 1"])
      readYaml("p.yaml", Array.from({ length: 2000 }, (_, at) => line.replace(/[abcx]/, `k${at}`)).join("\n"));
    expect(Date.now() - spent).toBeLessThan(10_000);
  });
});
