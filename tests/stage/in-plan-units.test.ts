import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import type * as z from "zod";
import { TABLES } from "../../src/catalogue/index.ts";
import { length, metaOf } from "../../src/core/parameter.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { schemaAt } from "../../src/parts/schema-walk.ts";
import { inInches } from "../../src/presets/inches.ts";
import { stageFileSchema } from "../../src/presets/stage-preset.ts";
import { EXAMPLE_PLANS, STAGE_EXAMPLES, type StageExample } from "../../src/stage/examples/index.ts";
import { lengthKeys } from "../../src/stage/length-keys.ts";
import { withUnits } from "../../src/stage/with-units.ts";
import { toldInBoth } from "../support/inch-plan.ts";
import { runs } from "../support/thorough.ts";

const INFEASIBLE = readFileSync("tests/support/infeasible.yaml", "utf8");
const WIDE = EXAMPLE_PLANS["example-stage.yaml"];

const withoutMm = (words = "") => words.replaceAll(" mm", "");

/** What is to be set for a defect, in mm and in inches, at the first place that is told. */
function cures(name: string, text: string, set: readonly string[] = []) {
  const { mm, inches } = toldInBoth(text, set);
  return [mm, inches].map(({ complaints }) => complaints.find((one) => one.name === name)?.set);
}

describe("what is to be set in a plan in inches has its unit, and in one in mm none", () => {
  test("the height of the motor, in the message and in the report", () => {
    const { mm, inches } = toldInBoth(INFEASIBLE);
    const told = (of: typeof mm) => of.complaints.find(({ set }) => set.startsWith("motor.plateTop"))?.set;
    expect([told(mm), told(inches)]).toEqual([
      "motor.plateTop: 16 (prints 3 parts anew, and takes another mount of the motor or shims under it)",
      "motor.plateTop: 16 mm (prints 3 parts anew, and takes another mount of the motor or shims under it)",
    ]);
    const ways = (of: typeof mm) => of.report.find(({ title }) => title.startsWith("Ways out"))?.lines.join("\n");
    expect(ways(mm)).toMatch(/motor\.plateTop: 16: /);
    expect(ways(inches)).toMatch(/motor\.plateTop: 16 mm: /);
    expect(withoutMm(ways(inches))).toBe(withoutMm(ways(mm)));
  });

  test("places: of a mount under the heater, and of a screw in line with the others", () => {
    const heater = cures("hole-under-heater", WIDE, ["plate.heater.size=[400, 310]"]);
    expect(heater).toEqual([
      "at: [200, 116.2], 6 mm outside the heater, or a smaller heater",
      "at: [200 mm, 116.2 mm], 6 mm outside the heater, or a smaller heater",
    ]);
    const inLine = cures("screws-nearly-in-line", WIDE, ["screws.C.at=[380, 64]", "screws.C.bar=front"]);
    expect(inLine).toEqual([
      "at: [380, 450] and bar: back, beside that line",
      "at: [380 mm, 450 mm] and bar: back, beside that line",
    ]);
  });

  test("the end of a bar that stands in another one, and where they meet", () => {
    const set = ["bars.left.from=[15, 29.9, -15]"];
    expect(cures("frame-bars-overlap", WIDE, set)).toEqual([
      "left: from: [15, 30, -15]",
      "left: from: [15 mm, 30 mm, -15 mm]",
    ]);
    const { inches } = toldInBoth(WIDE, set);
    const says = inches.complaints.find(({ name }) => name === "frame-bars-overlap")?.says;
    expect(says).toMatch(/^front and left share 90\.0 mm3 round \[10\.91 mm, 29\.95 mm, -15 mm\]$/);
  });

  test("a slide and a loop to buy; angles, teeth and names keep theirs", () => {
    expect(cures("no-stock-loop-within-slide", WIDE, ["screws.A.at=[150, 22]"])).toEqual([
      "slide: { node: press, direction: 0, from: -32.2, to: -2.1 }, for the loop of 1400 mm (700 teeth); " +
        "or stock: [1386], 693 teeth, if you can get that",
      "slide: { node: press, direction: 0, from: -32.2 mm, to: -2.1 mm }, for the loop of 1400 mm (700 teeth); " +
        "or stock: [1386 mm], 693 teeth, if you can get that",
    ]);
  });

  test("a bought item that was not measured", () => {
    const [mm, inches] = cures("typical-value-not-measured", WIDE);
    expect(mm).toMatch(/\{ row: "608", width: 6\.98, measured: true \}$/);
    expect(inches).toMatch(/\{ row: "608", width: 6\.98 mm, measured: true \}$/);
  });
});

describe("withUnits", () => {
  const lengths = lengthKeys();

  test("knows lengths from counts, angles and speeds by the schema", () => {
    for (const key of ["at", "from", "plateTop", "stock", "lengthTolerance", "setLength", "bore"])
      expect(lengths.has(key), key).toBe(true);
    for (const key of ["direction", "microsteps", "stepAngle", "speed", "teeth", "power", "tension", "density", "row"])
      expect(lengths.has(key), key).toBe(false);
  });

  test.each([
    ["lengthTolerance: 0.9 in loops.one", "lengthTolerance: 0.9 mm in loops.one"],
    ["from: -17 and to: 17", "from: -17 mm and to: 17 mm"],
    ["thickness: 8 or 10 mm", "thickness: 8 mm or 10 mm"],
    ["lowest: 84.", "lowest: 84 mm."],
    ["at: [1.5 in, 40]", "at: [1.5 in, 40 mm]"],
  ])("%s", (set, told) => {
    expect(withUnits(set, lengths)).toBe(told);
    expect(withUnits(told, lengths)).toBe(told);
  });

  test.each([
    "gap: 1.3 mm below the motor's pulley of high",
    "from: 4in and to: 1/4 in and length: 1 1/4",
    "length: 2'",
    "slide: { direction: 90, node: 3 }",
    'screws.A.foot.washers: ["8 x 14 x 1.0", "8 x 14 x 1.0"]',
    "bearing: 608, screw: Tr8x1.5, bar: 20x40 slot 6, size: 20 x 40",
    "nodes: [1, 2], layers: 0.2 mm, speed: 11.11 or less, stepAngle: 1.8 or 0.9 deg",
    "a pulley of 28 teeth or more (prints 4 parts anew)",
  ])("leaves alone: %s", (set) => {
    expect(withUnits(set, lengths)).toBe(set);
  });
});

/** A key, or a path of keys, with a number, a list or a block behind it. */
const TYPED = /((?:[\w-]+: )?[A-Za-z][\w.-]*): (\{[^{}]*\}|\[[^[\]]*\]|[+-]?\d+(?:\.\d+)?(?: mm\b)?)/g;

/** What `key: value` in a cure means where it is told, by key; keys that the schema does not know are left out. */
function meant(set: string, path: readonly (string | number)[], inches: boolean) {
  return [...set.matchAll(TYPED)].flatMap(([, keys = "", value = ""]) => {
    const schema = schemaOf(keys.split(/: |\./), path);
    if (schema === undefined) return [];
    const data: unknown = parse(value);
    const read = schema.safeParse(inches ? inInches(schema, data) : data);
    return [[keys, read.success ? JSON.stringify(read.data) : read.error.message]];
  });
}

/** The schema of keys as a reader looks for them: at the place of the message, then ever farther out. */
function schemaOf(keys: readonly string[], path: readonly (string | number)[]): z.ZodType | undefined {
  const outwards = path.map((_, deep) => path.slice(0, path.length - deep));
  return [...outwards, [], ["bars"]].map((block) => at([...block, ...keys])).find((one) => one !== undefined);
}

/** Blocks of parameters are read by their family's schema, fields of bought items as their table has them. */
function at(path: readonly (string | number)[]): z.ZodType | undefined {
  const deep = path.indexOf("foot") + 1;
  const outer = deep === 0 ? stageFileSchema : FAMILIES.find(({ name }) => name === "screw-foot")?.schema;
  const inner = path.slice(deep);
  const item = schemaAt(outer as z.ZodType, inner.slice(0, -1));
  const table = TABLES.find(({ name }) => item !== undefined && name === metaOf(item).table);
  const field = table?.fields[String(inner.at(-1))];
  if (field?.unit === "mm") return length({ symbol: "", meaning: "a size of a bought item", min: 0, max: 1000 });
  return schemaAt(outer as z.ZodType, inner);
}

describe("the same plan in inches", () => {
  const examples = (Object.values(STAGE_EXAMPLES) as (readonly StageExample[])[]).flat();
  const changes = examples.map(({ plan, set }) => ({ text: EXAMPLE_PLANS[plan] as string, set }));
  const every = Math.ceil(changes.length / runs(changes.length));
  const tried = [{ text: INFEASIBLE, set: [] }, ...changes.filter((_, index) => index % every === 0)];

  test("is told the same cures, which mean the same where they are typed", () => {
    let typed = 0;
    for (const { text, set } of tried) {
      const { mm, inches } = toldInBoth(text, set);
      expect(inches.complaints.map(({ name }) => name)).toEqual(mm.complaints.map(({ name }) => name));
      for (const [index, { set: cure, path }] of mm.complaints.entries()) {
        const other = inches.complaints[index]?.set ?? "";
        const wanted = meant(cure, path, false);
        expect(meant(other, path, true), `${cure}; ${other}`).toEqual(wanted);
        expect(withoutMm(other)).toBe(withoutMm(cure));
        typed += wanted.length;
      }
    }
    expect(typed).toBeGreaterThan(tried.length / 2);
  });
});
