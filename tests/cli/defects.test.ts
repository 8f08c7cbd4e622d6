import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { explain } from "../../src/cli/commands/explain.ts";
import { parts } from "../../src/cli/commands/parts.ts";
import { printerFields } from "../../src/cli/explain/parameter-page.ts";
import { CALCULATION_DEFECTS } from "../../src/core/calculation-defects.ts";
import { DEFECTS, type Defect } from "../../src/core/defects.ts";
import { HOW_TO_MEASURE, TEST_PIECE_SKETCH } from "../../src/printing/calibration.ts";
import { UNCALIBRATED } from "../../src/printing/printer.ts";
import { STAGE_DEFECTS } from "../../src/stage/stage-defects.ts";
import { collect, document, expectReadable } from "./collect.ts";

const page = (what: string) => collect((io) => explain({ what, json: false }, io, UNCALIBRATED));

/** Every name of several words that the sources give to anything: checks, defects, calculations, tables, families. */
const NAMES = [
  ...new Set(
    readdirSync("src", { recursive: true, encoding: "utf8" })
      .filter((file) => file.endsWith(".ts"))
      .flatMap((file) => [
        ...readFileSync(join("src", file), "utf8").matchAll(/(?:\bname: [^,\n]*?|\bdefect\()"([a-z]+(?:-[a-z]+)+)"/g),
      ])
      .map((match) => match[1] ?? "")
      // The suffix of a file's name.
      .filter((name) => name !== "other-hand"),
  ),
].sort();

describe("every name that can be printed can be explained", () => {
  test("the names are found in the sources", () => {
    expect(NAMES.length).toBeGreaterThan(150);
    for (const name of Object.keys({ ...DEFECTS, ...CALCULATION_DEFECTS })) expect(NAMES).toContain(name);
    expect(NAMES).toContain("spring-goes-solid");
  });

  test.each(NAMES)("%s", (name) => expectReadable(page(name), name));
});

describe("a defect that is no family's own", () => {
  test.each(Object.entries(DEFECTS))("%s tells what it is, why it matters and what to set", (name, defect) => {
    const said = page(name).join(" ").replace(/\s+/g, " ");
    for (const words of [defect.what, defect.why, defect.set]) expect(said).toContain(words);
    expect(said).toContain(defect.excusable ? `accept: [{ check: ${name}, because: <reason> }]` : "excuse none");
    const [data] = document<{ kind: string }[]>((io) => explain({ what: name, json: true }, io, UNCALIBRATED)).filter(
      ({ kind }) => kind === "defect",
    );
    expect(data).toMatchObject({ name, ...defect });
  });

  test.each(Object.entries<Defect>(STAGE_DEFECTS))("%s of a machine tells how a plan accepts it", (name, defect) => {
    const said = page(name).join(" ").replace(/\s+/g, " ");
    const line = `accept: [{ part: stage, check: ${name}, because: <reason> }] in a plan`;
    expect(said).toContain(defect.excusable ? line : "excuse none: accept: in a plan does not lift it");
  });

  test("one that a family checks as well is told for both", () => {
    const said = page("wall-too-thin").join("\n");
    expect(said).toContain("wall-too-thin: a check of tram-mount");
    expect(said).toContain("wall-too-thin: a defect that any part may have");
  });
});

describe("the printer's file", () => {
  const said = page("printer");
  const words = said.join(" ").replace(/\s+/g, " ");

  test("fits the screen", () => {
    expectReadable(said, "printer");
    for (const line of TEST_PIECE_SKETCH.split("\n")) expect(line.length).toBeLessThanOrEqual(90);
  });

  test("every setting is told with unit, default, range, meaning and how it is found", () => {
    for (const { key, unit, usual, range = "", description } of printerFields()) {
      const row = said.find((line) => line.startsWith(`  ${key} `)) ?? "";
      for (const cell of [unit, String(usual), range]) expect(row, key).toContain(cell);
      expect(words).toContain(description);
      expect(words).toContain(`how: ${HOW_TO_MEASURE[key as keyof typeof HOW_TO_MEASURE]}`);
    }
    expect(page("printer.outerGrowth").join(" ")).toContain("how: pins of the test piece");
  });

  test("parts tells the same, and both have JSON", () => {
    expect(collect((io) => parts({ family: "printer", json: false }, io))).toEqual(said);
    const [data] = document<{ settings: { key: string; default: unknown }[] }[]>((io) =>
      explain({ what: "printer", json: true }, io, UNCALIBRATED),
    );
    expect(data?.settings.map(({ key }) => key)).toEqual(Object.keys(UNCALIBRATED));
    expect(document((io) => parts({ family: "printer", json: true }, io))).toEqual(data);
  });

  test("the worked figures are measured less drawn with the sign that each setting asks for", () => {
    const worked = Object.values(HOW_TO_MEASURE).flatMap((how) => [
      ...how.matchAll(/([0-9.]+) - ([0-9.]+) = (-?[0-9.]+) gives ([0-9.]+)/g),
    ]);
    expect(worked).toHaveLength(4);
    for (const [about, measured, drawn, difference, written] of worked) {
      const gap = Number(measured) - Number(drawn);
      expect(gap, about).toBeCloseTo(Number(difference), 6);
      // A hole lacks all of it, a face that stands proud does so on each of two sides.
      expect(Number(written), about).toBeCloseTo(gap < 0 ? -gap : gap / 2, 6);
    }
  });
});
