import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { DEFECTS } from "../../src/core/defects.ts";
import {
  type Complaint,
  check,
  derive,
  families,
  make,
  messageFacts,
  schema,
  subjects,
} from "../../src/library/index.ts";
import { STAGE_DEFECTS } from "../../src/stage/stage-defects.ts";
import { folderWith, run } from "../cli/program.ts";

const PRINTER = readFileSync("presets/printers/workshop-petg.yaml", "utf8");
const STAGE = readFileSync("presets/stages/copy-stand.yaml", "utf8");
const printers = { "../printers/workshop-petg.yaml": PRINTER };

const MISTAKES = `format: 1
part: wheel-spacer
name: odd
parameters:
  bolt: M9
  outsied: 3
  length: 2 N/mm
`;

/** A complaint as the program's JSON has it. */
const flat = ({ place, ...rest }: Complaint) => ({
  ...rest,
  ...(place === undefined ? {} : { line: place.line, column: place.column }),
});

/** What the program says of the same text, built by a bundle of its own. */
function programSays(text: string, words: readonly string[] = []) {
  const folder = folderWith({ "preset.yaml": text, "printer.yaml": PRINTER });
  const { out } = run(["make", "preset.yaml", "-o", "out", "--json", ...words], folder);
  return { folder, answer: JSON.parse(out) };
}

describe("the library says what the program says", () => {
  test("of mistakes in a text: the same messages at the same places", () => {
    const { answer } = programSays(MISTAKES);
    const { complaints, ok, parts, kind, name } = derive(MISTAKES);
    expect({ ok, parts, kind, name }).toEqual({ ok: false, parts: [], kind: "part", name: undefined });
    expect(complaints.map(({ place }) => place?.line)).toEqual([5, 6, 7]);
    expect(JSON.parse(JSON.stringify(complaints.map(flat)))).toEqual(answer.messages);
  });

  test("of a part: the same files, byte by byte", async () => {
    const text = "format: 1\npart: tram-mount\nname: same\nparameters: { type: slot }\n";
    const { folder } = programSays(text, ["--printer", "printer.yaml"]);
    const { files, ok, parts } = await make(text, { printer: PRINTER });
    expect(ok).toBe(true);
    expect(parts.map(({ family }) => family)).toEqual(["tram-mount", "thumb-wheel"]);
    expect(parts.every(({ bodies }) => bodies.length > 0 && bodies.every(({ volume }) => volume > 100))).toBe(true);
    expect(files.length).toBeGreaterThanOrEqual(4);
    for (const { name, bytes } of files) expect(readFileSync(join(folder, "out", name)).equals(bytes), name).toBe(true);
  });

  test("of a machine: the same files but for what the manifest tells of the run, and the same report", async () => {
    const { folder } = programSays(STAGE, ["--printer", "printer.yaml"]);
    const { files, ok, parts, report, complaints } = await make(STAGE, { printers });
    expect({ ok, complaints: complaints.filter(({ level }) => level !== "note") }).toEqual({
      ok: true,
      complaints: [],
    });
    expect(parts).toHaveLength(10);
    const other = files.filter(({ name, bytes }) => !readFileSync(join(folder, "out/copy-stand", name)).equals(bytes));
    expect(other.map(({ name }) => name)).toEqual(["manifest.json"]);
    const written = JSON.parse(readFileSync(join(folder, "out/copy-stand/report.json"), "utf8"));
    const facts = written.sections.flatMap((one: { facts: { key: string }[] }) => one.facts.map(({ key }) => key));
    expect(report.flatMap(({ numbers }) => numbers.map(({ key }) => key))).toEqual(facts);
  });
});

describe("results instead of exceptions", () => {
  test("a printer's file is read too, and one that was not given is told where it is named", () => {
    expect(derive(PRINTER)).toMatchObject({
      kind: "printer",
      ok: true,
      name: "workshop printer, PETG",
      complaints: [],
    });
    expect(derive("format: 1\nprinter: x\nsettings: { layer: 9 }\n").complaints).toMatchObject([
      { name: "printer-setting-out-of-range", place: { line: 3 } },
    ]);
    const { ok, complaints } = derive(STAGE);
    expect(ok).toBe(false);
    expect(complaints[0]).toMatchObject({ level: "error", place: { line: 6 } });
    expect(complaints[0]?.set).toContain("printers: {");
    expect(derive("format: 1\npart: wheel-spacer\n", { printer: "format: [" }).ok).toBe(false);
  });

  test("an error leaves no files, and a check none at all", async () => {
    const thin = "format: 1\npart: wheel-spacer\nparameters: { outside: 6 }\n";
    const { ok, files, complaints } = await make(thin);
    expect({ ok, files }).toEqual({ ok: false, files: [] });
    expect(complaints.some(({ level }) => level === "error")).toBe(true);
    const good = await check("format: 1\npart: wheel-spacer\n");
    expect(good).toMatchObject({ ok: true, parts: [{ bodies: [{ file: "preset.stl" }] }] });
    expect(good).not.toHaveProperty("files");
  });

  test("no text is one that throws", async () => {
    for (const odd of [undefined, null, 3, {}, "", "- 1", "\u0000", "part: 3", "stage: x", "settings: 1"]) {
      expect(derive(odd as string).ok, String(odd)).toBe(false);
      expect((await make(odd as string)).ok, String(odd)).toBe(false);
    }
    const texts = fc.oneof(fc.string({ unit: "binary" }), fc.constantFrom(MISTAKES, PRINTER));
    fc.assert(
      fc.property(
        texts,
        fc.nat(200),
        fc.nat(9),
        fc.string({ unit: "binary", maxLength: 5 }),
        (text, at, cut, insert) => {
          const { complaints, ok } = derive(text.slice(0, at) + insert + text.slice(at + cut));
          expect(ok).toBe(!complaints.some(({ level }) => level === "error"));
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe("facts", () => {
  test("every subject has a schema, nothing else has", () => {
    expect(subjects).toEqual([...families().map(({ name }) => name), "stage", "printer"]);
    for (const subject of subjects) {
      expect(schema(subject)).toEqual(JSON.parse(readFileSync(`presets/schemas/${subject}.json`, "utf8")));
    }
    expect(schema("constructor")).toBeUndefined();
  });

  test("every name of a complaint is told", () => {
    const checks = families().flatMap((family) => family.checks.map(({ name }) => name));
    for (const name of [...checks, ...Object.keys(DEFECTS), ...Object.keys(STAGE_DEFECTS)]) {
      const told = messageFacts(name);
      expect(told.length, name).toBeGreaterThan(0);
      for (const { why } of told) expect(why.length, name).toBeGreaterThan(10);
    }
    expect(messageFacts("toString")).toEqual([]);
  });
});
