import { describe, expect, test } from "vitest";
import { explain } from "../../src/cli/commands/explain.ts";
import { printerFields } from "../../src/cli/explain/parameter-page.ts";
import { presetLines } from "../../src/cli/explain/preset-lines.ts";
import { presetValue } from "../../src/cli/explain/preset-value.ts";
import { shown } from "../../src/cli/explain/shown.ts";
import { ALL_TABLES } from "../../src/cli/stock/tables.ts";
import { SOURCES, type SourceKey, splitCitation } from "../../src/core/bibliography.ts";
import { isWords } from "../../src/core/formula.ts";
import { CALCULATIONS } from "../../src/mechanics/index.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { readYaml } from "../../src/presets/read.ts";
import { printerSchema, UNCALIBRATED } from "../../src/printing/printer.ts";
import { evaluateFormula } from "../support/evaluate.ts";
import { collect, document, expectReadable, troubleOf } from "./collect.ts";

type Rest = Partial<Parameters<typeof explain>[0]>;

const page = (what: string, rest: Rest = {}) =>
  collect((io) => explain({ what, json: false, ...rest }, io, UNCALIBRATED));
const data = <What>(what: string, rest: Rest = {}) =>
  document<What[]>((io) => explain({ what, json: true, ...rest }, io, UNCALIBRATED));
const refusal = (what: string) => troubleOf((io) => explain({ what, json: false }, io, UNCALIBRATED));
const flat = (lines: readonly string[]) => lines.join(" ").replace(/\s+/g, " ");

describe.each(FAMILIES)("$name", (family) => {
  const design = family.design(family.schema.parse({}), UNCALIBRATED);

  test("every number has a page with its value, its source and who gives each symbol", () => {
    for (const { key, symbol, value, unit, formula, source } of design.dimensions) {
      const said = page(`${family.name}.${key}`);
      expectReadable(said, key);
      expect(said.join("\n"), key).toContain(`= ${shown(value, unit)} ${unit}`.trimEnd());
      expect(flat(said), key).toContain(SOURCES[splitCitation(source as never).key].title);
      const [{ inputs }] = data<{ inputs: { symbol: string; from: string }[] }>(`${family.name}.${key}`) as [
        { inputs: { symbol: string; from: string }[] },
      ];
      const lost = isWords(formula) ? [] : (formula.match(/[A-Za-z_]\w*/g) ?? []).filter((word) => word === symbol);
      expect(lost, `${key} names itself`).toEqual([]);
      for (const { symbol: named, from } of inputs) {
        expect(from, `${key}: ${named}`).toMatch(/^(parameter|printer setting) \w+$|\.\w+$|^[a-z0-9-]+(: .+)?$|preset/);
      }
    }
  });

  test("the page's inputs give the value when they are put into the formula", () => {
    for (const { key, value, formula } of design.dimensions) {
      if (isWords(formula)) continue;
      const [one] = data<{ inputs: { symbol: string; value: number }[] }>(`${family.name}.${key}`);
      const values = Object.fromEntries((one?.inputs ?? []).map((input) => [input.symbol, input.value]));
      expect(Math.abs(evaluateFormula(formula, values) - value), key).toBeLessThan(1e-6 * Math.max(1, Math.abs(value)));
    }
  });

  test("every parameter has a page", () => {
    for (const key of Object.keys(family.schema.shape)) {
      const said = page(`${family.name}.${key}`);
      expectReadable(said, key);
      expect(said.join("\n")).toContain(`${family.name}.${key}: a parameter of ${family.name}`);
      expect(
        said.some((line) => line.startsWith(`  ${key} `)),
        key,
      ).toBe(true);
    }
  });

  test("every check shows, for each level, what trips it and what the program says", () => {
    for (const { name, why, trips } of family.checks) {
      const said = page(`${family.name}.${name}`);
      expectReadable(said, name);
      expect(flat(said)).toContain(why);
      const [one] = data<{ examples: { level: string; message: { level: string; says: string; set: string } }[] }>(
        `${family.name}.${name}`,
      );
      expect(one?.examples.map(({ level }) => level).sort()).toEqual(Object.keys(trips).sort());
      for (const { level, message } of one?.examples ?? []) {
        expect(message?.level, `${name} ${level}`).toBe(level);
        expect(flat(said)).toContain(`says ${message.says.replace(/\s+/g, " ")}`);
        expect(flat(said)).toContain(`set ${message.set.replace(/\s+/g, " ")}`);
      }
    }
  });

  test("the snippet of a check is YAML that reads back as the change it shows", () => {
    for (const { name, trips } of family.checks) {
      for (const change of Object.values(trips)) {
        const [preset = "", printer] = presetLines(family.name, change)
          .join("\n")
          .split(/^#.*\n/m);
        const read = readYaml("snippet", preset);
        expect(read.complaints, name).toEqual([]);
        const { printer: settings, ...parameters } = change;
        expect(read.data).toEqual({
          format: 1,
          part: family.name,
          ...(Object.keys(parameters).length === 0 ? {} : { parameters }),
        });
        expect(printer === undefined ? undefined : readYaml("printer", printer).data).toEqual(
          settings === undefined ? undefined : { format: 1, printer: "example", settings },
        );
      }
    }
  });
});

describe("numbers", () => {
  test("formula, numbers put in, result, origin and source, in this order", () => {
    const said = page("wheel-spacer.area");
    expect(said[0]).toMatch(/^wheel-spacer\.area: ./);
    const from = said.findIndex((line) => line.startsWith("  A = "));
    expect(said.slice(from)).toEqual([
      "  A = pi / 4 * (OD^2 - ID^2)",
      "    = pi / 4 * (10^2 - 5.3^2)",
      "    = 56.48 mm2",
      "",
      "  with  value  unit  from                  meaning",
      "  ----  -----  ----  --------------------  ----------------",
      "  OD       10  mm    wheel-spacer.outside  outside diameter",
      "  ID      5.3  mm    wheel-spacer.bore     bore wanted",
      "",
      "source  Plane and solid geometry; derivable, no source needed",
      "given   the defaults; --preset <file> takes your own",
    ]);
  });

  test("a symbol does as well as a key, and the prefix is not needed where one family has it", () => {
    expect(page("wheel-spacer.A")).toEqual(page("wheel-spacer.area"));
    expect(page("screw-foot.seatWanted")).toEqual(page("seatWanted"));
  });

  test("a name that several families have is told for all, with the names of the single pages", () => {
    const said = page("bore");
    expect(said.filter((line) => line.includes(".bore: "))).toHaveLength(2);
    expect(said.at(-1)).toBe("Several have this name. Alone: thumb-wheel.bore, wheel-spacer.bore");
    expect(page("wheel-spacer.area").join("\n")).not.toContain("Several");
  });

  test("parameters of a preset are worked with, for its own family only", () => {
    const family = FAMILIES.find(({ name }) => name === "wheel-spacer");
    const parameters = family?.schema.parse({ outside: 12 }) as Record<string, unknown>;
    const rest = { family: "wheel-spacer", parameters };
    expect(page("area", rest).join("\n")).toContain("pi / 4 * (12^2 - 5.3^2)");
    expect(page("area", rest)).toContain("given   the preset's parameters");
    expect(page("bore", rest).join("\n")).not.toContain("thumb-wheel");
    expect(page("thumb-wheel.bore", rest)).toEqual(page("thumb-wheel.bore"));
    expect(page("wheel-spacer.material", rest)).toContain("preset     PETG");
  });

  test("the printer's calibration is worked with", () => {
    const printer = printerSchema.parse({ holeShrinkVertical: 0.4 });
    const said = collect((io) => explain({ what: "wheel-spacer.boreModelled", json: false }, io, printer));
    expect(said.join("\n")).toMatch(/holeShrinkV +0\.4 +mm +printer setting holeShrinkVertical/);
  });

  test("a formula in words is told as words, and its small words are not taken for symbols", () => {
    const said = page("screw-foot.offsetUsed");
    expect(said[1]).toBe("  e = e_up with the hub up, e_down with the hub down");
    expect(said.join("\n")).toMatch(/ e_up +4\.5 +mm +screw-foot\.offsetUp/);
    const foot = FAMILIES.find(({ name }) => name === "screw-foot");
    const parameters = foot?.schema.parse({ mount: "on-top" }) as Record<string, unknown>;
    const [seat] = data<{ formula: string; inputs: object[] }>("seat", { family: "screw-foot", parameters });
    // The bracket's axis is called a, and "a tie goes down" is not about it.
    expect(seat).toMatchObject({ formula: expect.stringContaining("a tie goes down"), inputs: [] });
  });
});

describe("calculations", () => {
  test.each(CALCULATIONS.map((one) => ({ name: one.name, one })))("$name", ({ name, one }) => {
    const said = page(name);
    expectReadable(said, name);
    const words = flat(said);
    expect(said).toContain(`${name}: ${one.title}`);
    for (const { symbol, meaning } of [...Object.values(one.inputs), ...Object.values(one.results)]) {
      expect(words).toContain(symbol);
      expect(words).toContain(meaning.split(" ")[0]);
    }
    expect(words).toContain(`valid ${one.valid.replace(/\s+/g, " ")}`);
    expect(words).toContain(SOURCES[splitCitation(one.source).key].title);
    const covered = new Set(one.examples.flatMap(({ gives }) => Object.keys(gives)));
    const at = said.findIndex((line) => line.startsWith("worked "));
    expect(at > 0, "has a worked example").toBe(covered.size > 0);
    for (const key of covered) {
      const symbol = one.results[key]?.symbol;
      expect(
        said.slice(at).some((line) => line.startsWith(`  ${symbol} = `)),
        key,
      ).toBe(true);
    }
  });

  test("a worked example goes through the numbers", () => {
    const said = page("spring-rate");
    expect(said).toContain("worked  G = 81500 MPa, d = 1 mm, D_m = 7 mm, N_a = 6");
    expect(said).toContain("    = 81500 * 1^4 / (8 * 7^3 * 6)");
    expect(said).toContain("    = 4.95 N/mm");
  });

  test("where the source prints more digits than we show, both are told", () => {
    expect(page("cup-point-hold")).toContain("    (the example has 889.6 N)");
  });
});

describe("sources, settings and pointers", () => {
  test.each(Object.keys(SOURCES) as SourceKey[])("source %s tells its title and who cites it", (key) => {
    const said = page(key);
    expectReadable(said, key);
    expect(flat(said)).toContain(SOURCES[key].title);
    const [one] = data<{ citedBy: Record<string, string[]> }>(key);
    for (const name of Object.values(one?.citedBy ?? {}).flat()) expect(flat(said)).toContain(name);
  });

  test("what cites a source is found in all four places", () => {
    const [shigley] = data<{ citedBy: Record<string, string[]> }>("shigley");
    expect(shigley?.citedBy.calculations).toContain("spring-rate");
    expect(shigley?.citedBy.numbers).toContain("tram-mount.clash");
    expect(shigley?.citedBy.numbers).not.toContain("wheel-spacer.area");
    expect(shigley?.citedBy.calculations).not.toContain("bearing-life");
    expect(shigley?.citedBy.tables?.some((name) => name.startsWith("bearings "))).toBe(false);
    expect(shigley?.citedBy.examples).toContain("spring-band");
    const [makers] = data<{ citedBy: Record<string, string[]> }>("bearing-makers");
    expect(makers?.citedBy.tables?.some((name) => name.startsWith("bearings ("))).toBe(true);
  });

  test("every setting of the printer has a page", () => {
    for (const { key } of printerFields()) {
      expectReadable(page(`printer.${key}`), key);
      expect(page(`printer.${key}`)[0]).toBe(`printer.${key}: a setting of the printer`);
    }
    expect(flat(page("printer.layer"))).toContain("wheel-spacer.length");
  });

  test("a table, a row and a family are shown by other commands", () => {
    for (const { name } of ALL_TABLES) expect(page(name).join("\n")).toContain(`tramwright stock ${name}`);
    expect(page("608").join("\n")).toContain("tramwright stock bearings 608");
    expect(page("20x20 slot 6").join("\n")).toContain("tramwright stock bars '20x20 slot 6'");
    for (const { name } of FAMILIES) expect(page(name).join("\n")).toContain(`tramwright parts ${name}`);
    // A name that a parameter has as well hides nothing.
    expect(page("washers").join("\n")).toContain("screw-foot.washers: a parameter");
    expect(page("leeway").join("\n")).toContain("Alone: wheel-plate.leeway");
  });
});

test.each([
  "608",
  "20x20 slot 6",
  "true",
  "no",
  "null",
  "on-side",
  "M8",
  "a: b",
  "x, y",
  "# no comment",
  " edge ",
  "1e3",
  0.1 + 0.2,
  false,
  [1, "a"],
  { row: "M8", outside: 20 },
])("%j in a preset reads back as it is", (value) => {
  const { data: read, complaints } = readYaml("snippet", `key: ${presetValue(value)}\nlist: [${presetValue(value)}]\n`);
  expect(complaints).toEqual([]);
  const meant = typeof value === "number" ? 0.3 : value;
  expect(read).toEqual({ key: meant, list: [meant] });
});

describe("names that are not known", () => {
  test.each([
    ["spring-rat", "spring-rat is not known; the nearest is spring-rate"],
    ["wheel-spacer.aera", "wheel-spacer.aera is not known; the nearest is wheel-spacer.area"],
    ["screwfoot.seat", "screwfoot.seat is not known; the nearest is screw-foot.seat"],
    ["wheel-spacer.seat", "wheel-spacer.seat is not known; the nearest is screw-foot.seat"],
    ["washer-spans-both-ring", "washer-spans-both-ring is not known; the nearest is washer-spans-both-rings"],
    ["printer.layr", "printer.layr is not known; the nearest is printer.layer"],
    ["iso-2093", "iso-2093 is not known; the nearest is iso-2903"],
    ["constructor", /^constructor is not known; /],
    [" ", /^explain needs the name of /],
    ["screw-foot.", /^explain needs the name of /],
  ])("%j", (what, says) => {
    if (typeof says === "string") expect(refusal(what)).toBe(says);
    else expect(refusal(what)).toMatch(says);
  });

  test("without a near name those that hold the word are listed, else where to look", () => {
    expect(refusal("heating")).toBe("heating is not known; there are heating-energy");
    expect(refusal("qqqqqq")).toBe(
      "qqqqqq is not known; tramwright parts <family> lists its parameters, numbers and checks",
    );
  });
});
