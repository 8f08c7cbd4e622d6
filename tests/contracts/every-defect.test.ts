import { describe, expect, test } from "vitest";
import { BODY_EXAMPLES, type BodyExample } from "../../src/build/body-examples.ts";
import { pieceResult } from "../../src/build/piece-work.ts";
import { defectExamples, toldOfFiles } from "../../src/cli/explain/defect-examples.ts";
import { stageExamples, toldOf, toldOnceBuilt } from "../../src/cli/explain/stage-example.ts";
import type { Refusal } from "../../src/core/calculation.ts";
import { CALCULATION_DEFECTS, type CalculationDefect } from "../../src/core/calculation-defects.ts";
import { DEFECTS, type DefectName } from "../../src/core/defects.ts";
import type { Diagnostic } from "../../src/core/diagnostic.ts";
import { REFUSAL_EXAMPLES } from "../../src/mechanics/refusal-examples.ts";
import { FILE_EXAMPLES, type FileExample } from "../../src/presets/file-examples.ts";
import { UNCALIBRATED } from "../../src/printing/printer.ts";
import { BRINGS, EXAMPLE_PLANS, STAGE_EXAMPLES, type StageExample } from "../../src/stage/examples/index.ts";
import { STAGE_DEFECTS, type StageDefect } from "../../src/stage/stage-defects.ts";
import { folderWith, run } from "../cli/program.ts";
import { kernel } from "../support/kernel.ts";

type Told = Pick<Diagnostic, "name" | "level" | "says">;

const labels = (told: readonly Told[]) => [...new Set(told.map(({ level, name }) => `${level} ${name}`))];

describe("every defect of a machine", () => {
  const all = Object.entries(STAGE_EXAMPLES).flatMap(([name, list]: [string, readonly StageExample[]]) =>
    list.map((example) => ({ ...example, name, change: example.set.join(" ") })),
  );

  test("has an example", () => {
    for (const name of Object.keys(STAGE_DEFECTS) as StageDefect[])
      expect(stageExamples(name).length, name).toBeGreaterThan(0);
  });

  test.each(all.filter(({ built }) => built === undefined))("$name, $level: $change", ({ name, level, plan, set }) => {
    const told = toldOf({ plan, set });
    const own = told.filter((one) => one.name === name && one.level === level);
    expect(own.length).toBeGreaterThan(0);
    for (const { place, set: cure } of own) expect([place?.line === undefined, cure.length > 0]).toEqual([false, true]);
    if (set.length === 0) return;
    // The change brings the defect, and beside it only what is told with the example.
    const before = labels(toldOf({ plan, set: [] }));
    expect(before).not.toContain(`${level} ${name}`);
    const fresh = labels(told).filter((one) => !before.includes(one) && !one.startsWith("note"));
    const others = fresh.filter((one) => one !== `${level} ${name}`).sort();
    expect(others).toEqual(BRINGS[`${name} ${level}`] ?? []);
  });

  test.each(all.filter(({ built }) => built !== undefined))(
    "$name, $level, once the machine is built: $change",
    async ({ name, level, plan, set, built }) => {
      const before = labels(toldOf({ plan, set: [] }));
      const told = await toldOnceBuilt({ plan, set }, kernel);
      const fresh = told.filter((one) => one.level !== "note" && !before.includes(`${one.level} ${one.name}`));
      const own = fresh.filter((one) => one.name === name);
      expect(own.map((one) => [one.name, one.level, one.says])).toEqual([[name, level, built]]);
      expect(labels(fresh.filter((one) => !own.includes(one)))).toEqual(BRINGS[`${name} ${level}`] ?? []);
      expect(labels(toldOf({ plan, set })).filter((one) => one.endsWith(` ${name}`))).toEqual([]);
    },
  );

  test("nothing is said to come along with an example that there is not", () => {
    const known = all.map(({ name, level }) => `${name} ${level}`);
    expect(Object.keys(BRINGS).filter((one) => !known.includes(one))).toEqual([]);
  });

  test("the wide plan has warnings that are told of, and no error", () => {
    const told = labels(toldOf({ plan: "example-stage.yaml", set: [] })).filter((one) => !one.startsWith("note"));
    const alone = all.filter(
      ({ plan, set, level }) => plan === "example-stage.yaml" && set.length === 0 && level !== "note",
    );
    const meant = alone.map(({ name, level }) => `${level} ${name}`);
    expect(told.sort()).toEqual([...meant, "warning printer-not-calibrated"].sort());
    expect(Object.keys(EXAMPLE_PLANS)).toHaveLength(2);
  });
});

describe("every defect of files and finished bodies", () => {
  const files = Object.entries(FILE_EXAMPLES).flatMap(([name, list]: [string, readonly FileExample[]]) =>
    list.map((example) => ({ ...example, name })),
  );
  const bodies = Object.entries(BODY_EXAMPLES).flatMap(([name, list]: [string, readonly BodyExample[]]) =>
    list.map((example) => ({ ...example, name })),
  );

  test("has an example", () => {
    for (const name of Object.keys(DEFECTS) as DefectName[])
      expect(defectExamples(name).length, name).toBeGreaterThan(0);
  });

  test.each(files.filter(({ built }) => built === undefined))("$name: $files", ({ name, level, files: texts }) => {
    const told = toldOfFiles({ files: texts });
    // Notes on what else is usual come with it; nothing louder does.
    const own = `${level} ${name}`;
    expect(labels(told).filter((one) => one === own || !one.startsWith("note"))).toEqual([own]);
  });

  test.each(files.filter(({ built }) => built !== undefined))(
    "$name, in a run of the program: $files",
    ({ name, level, files: texts, built }) => {
      const folder = folderWith(texts);
      const made = Object.keys(texts).filter((file) => file !== "printer.yaml");
      const { out, code } = run(["check", ...made, "--json"], folder);
      const { messages } = JSON.parse(out) as { messages: Diagnostic[] };
      expect(code).toBe(level === "error" ? 1 : 0);
      expect(labels(messages).filter((one) => !one.startsWith("note"))).toEqual([`${level} ${name}`]);
      expect(messages.map(({ says }) => says)).toContain(built);
    },
  );

  test.each(bodies)("$name: $body", ({ name, level, piece, built }) => {
    const { diagnostics } = pieceResult({ piece, wanted: undefined, printer: UNCALIBRATED }, kernel);
    expect(diagnostics.map((one) => [one.name, one.level, one.says])).toEqual([[name, level, built]]);
  });
});

describe("every reason of a calculation to refuse", () => {
  test.each(Object.keys(CALCULATION_DEFECTS) as CalculationDefect[])("%s", (name) => {
    const outcome = REFUSAL_EXAMPLES[name].ask() as Partial<Refusal>;
    expect(outcome.defect?.name).toBe(name);
    expect(outcome.refused?.length).toBeGreaterThan(5);
  });
});
