import { appendFileSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { Ajv, type ValidateFunction } from "ajv";
import { describe, expect, test } from "vitest";
import { explain } from "../../src/cli/commands/explain.ts";
import { parts } from "../../src/cli/commands/parts.ts";
import { stock } from "../../src/cli/commands/stock.ts";
import { knownNames } from "../../src/cli/explain/known-names.ts";
import { COMMANDS } from "../../src/cli/help.ts";
import { ALL_TABLES } from "../../src/cli/stock/tables.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { UNCALIBRATED } from "../../src/printing/printer.ts";
import { isThorough, someOf } from "../support/thorough.ts";
import { document } from "./collect.ts";
import { folderWith, fresh, run } from "./program.ts";

// The published schemas, read as files; ajv is the judge.
const ajv = new Ajv({ strict: true, allowUnionTypes: true });
const validators = new Map<string, ValidateFunction>();

function expectValid(name: string, data: unknown, about = name): void {
  const known = validators.get(name);
  const validate = known ?? ajv.compile(JSON.parse(readFileSync(`docs/json/${name}.schema.json`, "utf8")) as object);
  validators.set(name, validate);
  const fits = validate(data);
  expect(fits ? [] : validate.errors?.slice(0, 3), about).toEqual([]);
}

const PLAN = resolve("presets/stages/seed-bench.yaml");
const INFEASIBLE = resolve("tests/support/infeasible.yaml");
const FOOT = "format: 1\npart: screw-foot\nname: foot\nparameters: { style: bridged }\n";
const BAD = "format: 1\npart: screw-foot\nname: bad\nparameters: { washers: [M8], beltPlain: 3 }\nprinter: gone.yaml\n";

/** Runs a command with --json; its one document must be as the schema has it. */
function told(schema: string, words: readonly string[], files: Readonly<Record<string, string>> = {}): unknown {
  const { out, err } = run([...words, "--json"], folderWith(files));
  expect(out, err).not.toBe("");
  const data: unknown = JSON.parse(out);
  expectValid(schema, data, words.join(" "));
  return data;
}

describe("what --json prints is as docs/json describes it", () => {
  test.each([
    ["make", ["make", "foot.yaml", "wheel-plate"]],
    ["make", ["check", "foot.yaml", "bad.yaml"]],
    ["make", ["make", PLAN]],
    ["make", ["check", INFEASIBLE]],
    ["make", ["check", "bad-plan.yaml"]],
    ["report", ["report", PLAN]],
    ["report", ["report", INFEASIBLE]],
    ["report", ["report", "bad-plan.yaml"]],
    ["compare", ["compare", PLAN, "--set", "motor.plateTop=12"]],
    ["compare", ["compare", PLAN, resolve("presets/stages/copy-stand.yaml")]],
    ["compare", ["compare", PLAN, INFEASIBLE]],
    ["tram", ["tram", PLAN, "--probe", "160,133,0", "460,133,0.2", "310,350,-0.1"]],
    ["new", ["new", "stage"]],
    ["new", ["new", "screw-foot", "-o", "mine.yaml"]],
    ["new", ["new", "--from", "foot.yaml", "--force"]],
    ["explain", ["explain", "screw.A.share", "--preset", PLAN]],
    ["explain", ["explain", "seat", "--preset", "foot.yaml"]],
  ] as const)("%s: %j", (schema, words) => {
    told(schema, words, { "foot.yaml": FOOT, "bad.yaml": BAD, "bad-plan.yaml": "format: 1\nstage: x\nbars: 3\n" });
  });

  test("make: of a machine that was made before with other numbers", () => {
    const folder = fresh();
    expect(run(["make", PLAN, "-q"], folder).code).toBe(0);
    const [machine = ""] = readdirSync(join(folder, "out"));
    const [sheet = ""] = readdirSync(join(folder, "out", machine, "parts")).filter((name) => name.endsWith(".md"));
    appendFileSync(join(folder, "out", machine, "parts", sheet), "printed on Monday\n");
    const { out } = run(["make", PLAN, "--set", "motor.plateTop=12", "--json"], folder);
    expectValid("make", JSON.parse(out));
    const changed = [join("out", machine, "parts", `${sheet}.changed`)];
    expect(JSON.parse(out)).toMatchObject({ stages: [{ reprint: { hours: expect.any(Number) }, changed }] });
  });

  test("rebuild: of a part as it was made, and of one that somebody changed", () => {
    const folder = folderWith({ "foot.yaml": FOOT });
    expect(run(["make", "foot.yaml", "-q"], folder).code).toBe(0);
    const told = () => JSON.parse(run(["rebuild", "out/foot.3mf", "--json"], folder).out) as unknown;
    expectValid("rebuild", told());
    expect(told()).toMatchObject({ parts: [{ equal: true }] });
    writeFileSync(join(folder, "out/foot.stl"), "changed");
    expectValid("rebuild", told());
    expect(told()).toMatchObject({ parts: [{ equal: false }] });
  });

  test("parts: the list, each family, the printer and the stage", () => {
    expectValid(
      "parts",
      document((io) => parts({ json: true }, io)),
    );
    for (const family of [...FAMILIES.map(({ name }) => name), "printer", "stage"])
      expectValid(
        "parts",
        document((io) => parts({ family, json: true }, io)),
        family,
      );
  });

  test("stock: the list, each table, each row", () => {
    expectValid(
      "stock",
      document((io) => stock({ filters: {}, json: true }, io)),
    );
    for (const { name, rows } of ALL_TABLES) {
      expectValid(
        "stock",
        document((io) => stock({ table: name, filters: {}, json: true }, io)),
        name,
      );
      for (const { key } of rows)
        expectValid(
          "stock",
          document((io) => stock({ table: name, row: key, filters: {}, json: true }, io)),
          key,
        );
    }
  });

  test("explain: every name that it knows", () => {
    const kinds = new Set<string>();
    // A name behind its family is the same page as the name alone.
    for (const what of someOf(knownNames().filter((name) => !name.includes(".")))) {
      const pages = document<{ kind: string }[]>((io) => explain({ what, json: true }, io, UNCALIBRATED));
      expectValid("explain", pages, what);
      for (const { kind } of pages) kinds.add(kind);
    }
    const all = [
      "calculation",
      "check",
      "defect",
      "family",
      "number",
      "parameter",
      "printer",
      "printer setting",
      "refusal",
      "search",
      "source",
      "table",
    ];
    expect([...kinds].filter((kind) => !all.includes(kind))).toEqual([]);
    expect(kinds.size).toBeGreaterThanOrEqual(isThorough ? all.length : 6);
    const row = document((io) => explain({ what: "608", json: true }, io, UNCALIBRATED));
    expectValid("explain", row);
    expect(row).toContainEqual(expect.objectContaining({ kind: "row" }));
  });

  test("schema prints a JSON Schema, draft-07, with and without --json", () => {
    const [plain, json] = [run(["schema", "stage"]).out, run(["schema", "stage", "--json"]).out];
    expect(json).toBe(plain);
    expect(ajv.validateSchema(JSON.parse(json) as object)).toBe(true);
  });

  test("each line of --messages json is a message", () => {
    const lines = run(["check", INFEASIBLE, "--messages", "json", "-q"], fresh()).out.trimEnd().split("\n");
    expect(lines.length).toBeGreaterThan(3);
    for (const line of lines) expectValid("message", JSON.parse(line));
  });

  test("every command that has --json is tried here", () => {
    const having = Object.entries(COMMANDS).filter(([, { options }]) => options.some(([flag]) => flag === "--json"));
    const tried = [
      "make",
      "check",
      "report",
      "compare",
      "tram",
      "new",
      "explain",
      "parts",
      "stock",
      "schema",
      "rebuild",
    ];
    expect(having.map(([name]) => name).sort()).toEqual(tried.sort());
  });

  test("a document with a key too many, or one too few, is told apart", () => {
    const data = told("report", ["report", PLAN]) as object;
    expect(() => expectValid("report", { ...data, extra: 1 })).toThrow();
    expect(() => expectValid("message", { file: "x", level: "error" })).toThrow();
  });
});
