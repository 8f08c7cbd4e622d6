import { describe, expect, test } from "vitest";
import { FAMILIES } from "../../src/parts/index.ts";
import { inCurrentFormat, STEPS, stepped } from "../../src/presets/formats.ts";
import { readPartPreset } from "../../src/presets/part-preset.ts";
import { FORMAT } from "../../src/presets/preset-file.ts";
import { readYaml } from "../../src/presets/read.ts";
import { folderWith, run } from "../cli/program.ts";

/** A carriage as it was written down before the first release. */
const OLD = `# a carriage of the first weeks
format: 0
part: wheel-plate
name: old-carriage
parameters:
  wheelCount: 4
  style: sandwich
  rowSpacing: 140   # calipers
  armX: 700
  load: 25 N
`;

describe("older formats", () => {
  test("there is a step from each format before this one to the next", () => {
    expect(STEPS.map(({ from }) => from)).toEqual(Array.from({ length: FORMAT }, (_, format) => format));
  });

  test("every new name is a parameter of its family today, and no old one is", () => {
    for (const { part, from, to } of STEPS.flatMap(({ renames }) => renames)) {
      const shape = FAMILIES.find(({ name }) => name === part)?.schema.shape ?? {};
      expect(Object.keys(shape)).toContain(to);
      expect(Object.keys(shape)).not.toContain(from);
    }
  });

  test("a step leaves what it is given as it was, and keys in their order", () => {
    const [step] = STEPS;
    if (step === undefined) throw new Error("there is no step");
    const data = Object.freeze({
      part: "wheel-plate",
      parameters: Object.freeze({ load: 9, wheelCount: 3, armX: 20 }),
    });
    expect(stepped(step, data)).toEqual({ part: "wheel-plate", parameters: { load: 9, wheels: 3, armBoltAt: 20 } });
    expect(Object.keys(stepped(step, data).parameters as object)).toEqual(["load", "wheels", "armBoltAt"]);
  });

  test("an old file is read, and says what its keys are called now", () => {
    const file = inCurrentFormat(readYaml("old.yaml", OLD));
    expect(readPartPreset(file).value?.parameters).toEqual({
      wheels: 4,
      sandwich: true,
      rowSpacing: 140,
      armBoltAt: 700,
      load: "25 N",
    });
    expect(file.notes?.map(({ place, diagnostic }) => [place?.line, place?.column, diagnostic.says])).toEqual([
      [2, 9, "format 0 is read as format 1: wheelCount is now wheels, armX is now armBoltAt, style is now sandwich"],
    ]);
  });

  test("what is wrong is told at the line of the old name", () => {
    const folder = folderWith({ "old.yaml": OLD });
    const { code, out } = run(["check", "old.yaml"], folder);
    expect(code).toBe(1);
    expect(out).toContain("old.yaml:2:9: note: format 0 is read as format 1");
    expect(out).toContain(
      "old.yaml:9:9: error: armBoltAt: arm bolt from the plate's middle is 700, outside 5 to 120 mm",
    );
    expect(out).toContain("    armX: 700\n");
  });

  test("both names at once: the old one is no key", () => {
    const file = inCurrentFormat(readYaml("old.yaml", OLD.replace("wheelCount: 4", "wheelCount: 4\n  wheels: 3")));
    expect(readPartPreset(file).value?.parameters).toMatchObject({ wheelCount: 4, wheels: 3 });
  });

  test.each([
    ["format: 2", "old.yaml:2:9: error: format 2 is newer than this program, which reads formats up to 1"],
    ["format: -1", "old.yaml:2:9: error: format is -1; it takes 1, the version of the format"],
    ["format: 0.5", "old.yaml:2:9: error: format is 0.5; it takes 1, the version of the format"],
  ])("%s is told", (format, says) => {
    const { code, out } = run(["check", "old.yaml"], folderWith({ "old.yaml": OLD.replace("format: 0", format) }));
    expect(code).toBe(1);
    expect(out).toContain(says);
  });
});
