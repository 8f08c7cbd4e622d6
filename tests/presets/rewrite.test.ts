import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { FAMILIES } from "../../src/parts/index.ts";
import { inCurrentFormat } from "../../src/presets/formats.ts";
import { parseParameters, readPartPreset } from "../../src/presets/part-preset.ts";
import { readYaml } from "../../src/presets/read.ts";
import { rewritten } from "../../src/presets/rewrite.ts";
import { folderWith, run } from "../cli/program.ts";

const OLD = `# a carriage of the first weeks
format: 0  # ours
part: wheel-plate

name:   "old-carriage"
parameters:
    wheelCount:   4 # the usual
    # style is what we changed last
    style: 'sandwich'
    load:  25 N   # scales
    # margin: 14
accept: []
`;
const add = { modeline: "# yaml-language-server: $schema=x.json", below: () => [] };

describe("a preset brought up to date", () => {
  test("keeps every letter but format and old names", () => {
    const expected = OLD.replace("format: 0", "format: 1")
      .replace("wheelCount:", "wheels:")
      .replace("style: 'sandwich'", "sandwich: true");
    expect(rewritten(OLD, add)).toBe(`${add.modeline}\n${expected}`);
  });

  test("says the same as before", () => {
    const before = readPartPreset(inCurrentFormat(readYaml("old", OLD))).value?.parameters;
    expect(readPartPreset(readYaml("new", rewritten(OLD, add))).value?.parameters).toEqual(before);
  });

  test("done twice is done once", () => {
    expect(rewritten(rewritten(OLD, add), add)).toBe(rewritten(OLD, add));
  });

  test("lines stand below the last key, before what follows the block, however the file ends", () => {
    const below = (keys: readonly string[], indent: string) => [`${indent}# ${keys.join(" ")}`];
    expect(rewritten(OLD, { ...add, below })).toContain("    load:  25 N   # scales\n    # wheels sandwich load\n");
    const short = "format: 1\npart: wheel-plate\nparameters:\n  load: 9";
    expect(rewritten(short, { ...add, below })).toBe(`${add.modeline}\n${short}\n  # load\n`);
    const braces = "format: 1\npart: wheel-plate\nparameters: { load: 9 }\n";
    expect(rewritten(braces, { ...add, below })).toBe(`${add.modeline}\n${braces}`);
  });

  test("comments and blank lines anywhere stay where they are", () => {
    const pieces = fc.array(fc.constantFrom("", "# a word", "    # deeper", "  "), { maxLength: 3 });
    fc.assert(
      fc.property(fc.array(pieces, { minLength: 13, maxLength: 13 }), (between) => {
        const text = OLD.split("\n")
          .flatMap((line, at) => [line, ...(between[at] ?? [])])
          .join("\n");
        const lines = rewritten(text, add).split("\n").slice(1);
        expect(lines.filter((line) => !/format|wheel|sandwich|style:/.test(line))).toEqual(
          text.split("\n").filter((line) => !/format|wheel|sandwich|style:/.test(line)),
        );
      }),
      { numRuns: 200, seed: 3 },
    );
  });
});

describe("new --from", () => {
  test("fills in what the preset lacks as comments, each of which can be used", () => {
    const folder = folderWith({ "old.yaml": OLD });
    expect(run(["new", "--from", "old.yaml", "-o", "today.yaml"], folder)).toMatchObject({ code: 0, err: "" });
    const text = readFileSync(join(folder, "today.yaml"), "utf8");
    const family = FAMILIES.find(({ name }) => name === "wheel-plate");
    for (const key of Object.keys(family?.schema.shape ?? {}))
      expect(text.match(new RegExp(`^    (# )?${key}:`, "gm")), key).toHaveLength(1);
    const { value } = readPartPreset(readYaml("today.yaml", text));
    expect(value?.parameters).toEqual({ wheels: 4, sandwich: true, load: "25 N" });
    const used = text.replace("    # rowSpacing:", "    rowSpacing:");
    const { value: all } = readPartPreset(readYaml("used.yaml", used));
    expect(all?.parameters.rowSpacing).toBe(120);
    expect(all && parseParameters(all.family, all.parameters).complaints).toEqual([]);
    expect(run(["check", "today.yaml"], folder).out).not.toContain("older");
  });

  test("leaves the file itself alone unless forced, and refuses what is no preset", () => {
    const folder = folderWith({ "old.yaml": OLD, "list.yaml": "[1, 2]\n", "torn.yaml": "format: [1\n" });
    expect(run(["new", "--from", "old.yaml"], folder).code).toBe(3);
    expect(readFileSync(join(folder, "old.yaml"), "utf8")).toBe(OLD);
    expect(run(["new", "--from", "old.yaml", "--force"], folder).code).toBe(0);
    expect(readFileSync(join(folder, "old.yaml"), "utf8")).toContain("    wheels:   4 # the usual\n");
    expect(run(["new", "--from", "list.yaml", "-o", "-"], folder).err).toContain("is no preset of a part, a stage");
    expect(run(["new", "--from", "torn.yaml", "-o", "-"], folder)).toMatchObject({ code: 2, out: "" });
    expect(run(["new", "stage", "--from", "old.yaml"], folder).code).toBe(2);
    expect(run(["new", "--from", "nowhere.yaml"], folder).code).toBe(3);
  });
});
