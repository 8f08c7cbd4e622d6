import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { Ajv } from "ajv";
import { describe, expect, test } from "vitest";
import { metaOf } from "../../src/core/parameter.ts";
import { GUIDES, ITEM_GUIDES } from "../../src/parts/guides.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { parseParameters, readPartPreset } from "../../src/presets/part-preset.ts";
import { readPrinterPreset } from "../../src/presets/printer-preset.ts";
import { readYaml } from "../../src/presets/read.ts";
import { SUBJECTS } from "../../src/presets/schema/preset-schema.ts";
import { readStagePreset } from "../../src/presets/stage-preset.ts";
import { printerSchema } from "../../src/printing/printer.ts";
import { hasTool } from "../support/outside-tool.ts";
import { someOf } from "../support/thorough.ts";
import { folderWith, fresh, PROGRAM, run } from "./program.ts";

const FAMILY_NAMES = FAMILIES.map(({ name }) => name);
const ajv = new Ajv({ strict: true, allowUnionTypes: true });

/** Returns what the reader says of a preset's text. */
function complaints(subject: string, text: string): string[] {
  const file = readYaml("new.yaml", text);
  if (subject === "stage") return readStagePreset(file).complaints.map(({ diagnostic }) => diagnostic.says);
  if (subject === "printer") return readPrinterPreset(file).complaints.map(({ diagnostic }) => diagnostic.says);
  const { value, complaints: outer } = readPartPreset(file);
  const inner = value === undefined ? [] : parseParameters(value.family, value.parameters).complaints;
  return [...outer.map(({ diagnostic }) => diagnostic.says), ...inner.map(({ says }) => says)];
}

const textOf = (subject: string) => run(["new", subject, "-o", "-"]).out;

describe("what new writes", () => {
  test.each(SUBJECTS)("of %s: reads back without a complaint, names a schema that exists and fits it", (subject) => {
    const folder = fresh();
    const { code, out } = run(["new", subject], folder);
    expect(code).toBe(0);
    expect(out).toContain(`my-${subject}.yaml written`);
    expect(readdirSync(folder)).toEqual([`my-${subject}.yaml`]);
    const text = readFileSync(join(folder, `my-${subject}.yaml`), "utf8");
    expect(complaints(subject, text)).toEqual([]);
    const [, schema = ""] = /^# yaml-language-server: \$schema=(\S+)\n/.exec(text) ?? [];
    expect(resolve(folder, schema)).toBe(resolve(`presets/schemas/${subject}.json`));
    const validate = ajv.compile(JSON.parse(readFileSync(schema, "utf8")));
    expect(validate(readYaml("", text).data), ajv.errorsText(validate.errors)).toBe(true);
    expect(text.split("\n").filter((line) => line.length > 100 && !line.includes("{"))).toEqual([]);
    // The name of the part in words the shell does not break.
    expect(text).toMatch(new RegExp(`^(name|stage|printer): my-${subject}$`, "m"));
  });

  test.each(FAMILY_NAMES)("of %s: can be made as it stands", (subject) => {
    const folder = fresh();
    run(["new", subject, "-o", "one.yaml"], folder);
    const { code, out } = run(["check", "one.yaml"], folder);
    expect(out).not.toContain(": error:");
    expect(code).toBe(0);
  });

  const alone = ["printer-not-calibrated"];
  const answers: readonly (readonly [string, readonly string[], readonly string[] | undefined])[] = [
    ["the usual answers", [], alone],
    ["the usual answers in inches", ["--units", "in"], alone],
    ["two belts", ["--loops", "2"], alone],
    ["two screws", ["--screws", "2"], alone],
    ["four screws on larger bar", ["--screws", "4", "--bar", "30x30 slot 8"], undefined],
    ["high bar", ["--bar", "20x40 slot 6", "--plate", "360 x 260"], undefined],
    ["two belts in inches", ["--units", "in", "--loops", "2"], undefined],
    ["other sizes", ["--units", "in", "--screws", "2", "--plate", "300 mm x 9 in", "--lift", "6 1/2"], undefined],
  ];
  test.each(someOf(answers, 3))("of a stage, %s: works out and is made without an error", (_, words, only) => {
    const folder = fresh();
    const { code, err } = run(["new", "stage", "-o", "machine.yaml", ...words], folder);
    expect(code).toBe(0);
    expect(err).not.toContain("left in it");
    const checked = run(["check", "machine.yaml", "--json"], folder);
    const { messages } = JSON.parse(checked.out) as { messages: { name: string; level: string }[] };
    expect(messages.filter(({ level }) => level === "error")).toEqual([]);
    expect(checked.code).toBe(0);
    // Of the usual answers nothing is told but that nobody measured the printer.
    const told = messages.filter(({ level }) => level !== "note").map(({ name }) => name);
    expect(told).toEqual(only ?? expect.arrayContaining(alone));
  });

  test.each([...FAMILY_NAMES, "printer"])("of %s: every key is there, and each comment can be used", (subject) => {
    const shape =
      subject === "printer" ? printerSchema.shape : FAMILIES.find(({ name }) => name === subject)?.schema.shape;
    const text = textOf(subject);
    for (const key of Object.keys(shape ?? {})) {
      expect(text.match(new RegExp(`^  (# )?${key}:( |$)`, "gm")), key).toHaveLength(1);
      const [, value = ""] = new RegExp(`^  # ${key}:(.*)$`, "m").exec(text) ?? [];
      if (value === "" || value.startsWith("  # left out")) continue;
      const used = text.replace(new RegExp(`^  # ${key}:`, "m"), `  ${key}:`);
      expect(complaints(subject, used), key).toEqual([]);
    }
  });

  test.each(FAMILIES)("of $name: each quantity and each bought item is told how to measure", ({ name, schema }) => {
    const guide = GUIDES[name];
    expect(guide?.first.length).toBeGreaterThan(3);
    for (const [key, one] of Object.entries(schema.shape)) {
      const { unit, table } = metaOf(one as never);
      if (table !== undefined) expect(ITEM_GUIDES[table], table).toBeDefined();
      if (unit !== "") expect(guide?.measure[key], key).toMatch(/.{12}/);
    }
  });

  test("what is given is written and not called typical; the rest is", () => {
    const words = ["--set", "beltPlane=1 1/4 in", "--set", "bearing.width=6.98", "--set", "wall=6"];
    const { out } = run(["new", "screw-foot", "-o", "-", "--name", "My Foot", ...words]);
    expect(out).toContain("\nname: my-foot\n");
    expect(out).toMatch(/^ {2}beltPlane: 1 1\/4 in$/m);
    expect(out).toMatch(/^ {2}bearing: \{ row: "608", width: 6.98 \}$/m);
    expect(out).toMatch(/^ {2}wall: 6$/m);
    expect(out).toMatch(/^ {2}axialLoad: 50 {2}# typical, not measured$/m);
    expect(complaints("screw-foot", out)).toEqual([]);
  });
});

describe("files and words", () => {
  test("a file that is there is left alone, unless forced", () => {
    const folder = folderWith({ "my-printer.yaml": "mine" });
    const refused = run(["new", "printer"], folder);
    expect(refused.code).toBe(3);
    expect(refused.err).toBe(
      "tramwright: my-printer.yaml is there already and is left alone; -o names another file, --force replaces it\n",
    );
    expect(readFileSync(join(folder, "my-printer.yaml"), "utf8")).toBe("mine");
    expect(run(["new", "printer", "--force"], folder).code).toBe(0);
    expect(readFileSync(join(folder, "my-printer.yaml"), "utf8")).toContain("settings:");
  });

  test("its own file is left alone as well: somebody has filled it in", () => {
    const folder = fresh();
    run(["new", "thumb-wheel"], folder);
    const path = join(folder, "my-thumb-wheel.yaml");
    writeFileSync(path, readFileSync(path, "utf8").replace("barDistance: 17", "barDistance: 18"));
    expect(run(["new", "thumb-wheel"], folder).code).toBe(3);
    expect(readFileSync(path, "utf8")).toContain("barDistance: 18");
  });

  test.each([
    [["new"], "new needs one of screw-foot"],
    [["new", "stag"], "there is no preset of stag; the nearest is stage"],
    [["new", "stage", "--screws", "5"], "--screws: 5 is none of 2, 3, 4"],
    [["new", "stage", "--bar", "31x31"], "--bar: 31x31 is not among the bars"],
    [
      ["new", "stage", "--plate", "300"],
      "--plate: 300 is no size of a plate; it takes width x depth, such as 220 x 200",
    ],
    [["new", "stage", "--plate", "3 x 250"], "--plate: 3 is outside 120 mm to 900 mm"],
    [["new", "stage", "--plate", "26 cm x 22"], "--plate: 26 cm x 22 has a unit behind one number only"],
    [["new", "stage", "--frame", "20 x 30 cm"], "--frame: 20cm is outside 300 mm to 1100 mm"],
    [
      ["new", "stage", "--frame", "500 x 480", "--plate", "400 x 200"],
      "the plate needs a frame of at least 600 x 382 mm; the largest plate for this one is 300 x 298 mm",
    ],
    [
      ["new", "stage", "--plate", "400 x 350", "--frame", "500 x 480"],
      "the plate needs a frame of at least 600 x 532 mm",
    ],
    [["new", "stage", "--lift", "5 N"], "--lift: N measures a force, and this is a length"],
    [["new", "stage", "--loops", "2", "--screws", "4"], "--loops: two loops go with 3 screws, not with 4"],
    [["new", "stage", "--set", "print=3"], "new stage takes no --set"],
    [["new", "tram-mount", "--screws", "3"], "--screws is for new stage; new tram-mount takes --set key=value"],
    [["new", "tram-mount", "--set", "rnage=3"], "rnage is not a key here; set range"],
    [["new", "printer", "--set", "layer=9"], "layer: layer height is 9, outside 0.05 to 0.96 mm"],
    [["make", "thumb-wheel", "--screws", "3"], "make has no option --screws"],
    [["schema"], "schema needs one of screw-foot"],
    [["schema", "printr"], "there is no preset of printr; the nearest is printer"],
  ])("%j is wrong usage: code 2, one line, nothing written", (words, says) => {
    const folder = fresh();
    const { code, out, err } = run(words, folder);
    expect(err).toContain(says);
    expect(code).toBe(2);
    expect(out).toBe("");
    expect(err.trimEnd().split("\n")).toHaveLength(1);
    expect(readdirSync(folder)).toEqual([]);
  });

  test("schema prints what is shipped, new says as data what it wrote", () => {
    const shipped = JSON.parse(readFileSync("presets/schemas/thumb-wheel.json", "utf8"));
    expect(JSON.parse(run(["schema", "thumb-wheel"]).out)).toEqual(shipped);
    const folder = fresh();
    const { out } = run(["new", "wheel-spacer", "--json", "-o", "sub/spacer.yaml"], folder);
    expect(JSON.parse(out)).toEqual({ file: "sub/spacer.yaml", subject: "wheel-spacer", name: "spacer", notes: [] });
    expect(existsSync(join(folder, "sub/spacer.yaml"))).toBe(true);
  });

  test("beside the program the schema is named from the preset's folder, so that both may be moved", () => {
    const { out } = run(["new", "wheel-spacer", "-o", "-"], dirname(resolve("dist")));
    expect(out.split("\n")[0]).toBe("# yaml-language-server: $schema=presets/schemas/wheel-spacer.json");
  });
});

describe.skipIf(!hasTool("python3"))("at a terminal", () => {
  const DOWN = "\u001b[B";
  const type = (folder: string, keys: readonly string[], words: readonly string[]) => {
    const script = resolve("tests/support/at-terminal.py");
    const line = [script, folder, JSON.stringify(keys), "node", PROGRAM, ...words];
    const { status, stdout } = spawnSync("python3", line, { encoding: "utf8", timeout: 120_000 });
    return { code: status, shown: stdout };
  };

  test("new stage asks one thing after the other and writes what was answered", () => {
    const folder = fresh();
    const keys = ["Bench lift\r", `${DOWN}\r`, "\r", "22 x 20\r", "13 x 11\r", "\r", "\r"];
    const { code, shown } = type(folder, keys, ["new", "stage", "--bar", "1 in"]);
    expect(code).toBe(0);
    expect(shown).toContain("How many lead screws carry the stage?");
    expect(shown).not.toContain("Which bar");
    expect(readdirSync(folder)).toEqual(["bench-lift.yaml"]);
    const text = readFileSync(join(folder, "bench-lift.yaml"), "utf8");
    expect(text).toContain("\nunits: in\n");
    expect(text).toContain("\n  size: [13, 11]\n");
    expect(complaints("stage", text)).toEqual([]);
  });

  test("an answer that does not fit is asked for again", () => {
    const folder = fresh();
    const erase = "\u007f".repeat(3);
    const { code, shown } = type(
      folder,
      ["\r", "\r", "999\r", `${erase}20\r`, "\r", "\r", "\r"],
      ["new", "thumb-wheel"],
    );
    expect(code).toBe(0);
    expect(shown).toContain("is 999, outside 8 to 120 mm");
    expect(readFileSync(join(folder, "my-thumb-wheel.yaml"), "utf8")).toMatch(/^ {2}barDistance: 20$/m);
  });

  test("Ctrl-C writes nothing and ends with 130", () => {
    const folder = fresh();
    expect(type(folder, ["lift\r", "\u0003"], ["new", "stage"]).code).toBe(130);
    expect(type(folder, ["\u0003"], ["new", "printer"]).code).toBe(130);
    expect(readdirSync(folder)).toEqual([]);
  });
});
