import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { stringify } from "yaml";
import { readPartPreset } from "../../src/presets/part-preset.ts";
import { planUnmeasured } from "../../src/presets/plan-unmeasured.ts";
import { readPrinterPreset } from "../../src/presets/printer-preset.ts";
import { readYaml } from "../../src/presets/read.ts";
import { readStagePreset } from "../../src/presets/stage-preset.ts";
import { deepMerge } from "../support/deep-merge.ts";
import { WIDE } from "../support/plans.ts";

const GOOD = stringify({ format: 1, stage: "wide", ...WIDE });

const read = (text: string) => readStagePreset(readYaml("plan.yaml", text));

/** Everything that is wrong with a plan, with its place. */
function complaints(text: string) {
  return read(text).complaints.map(({ place, diagnostic: { says, set, level, name } }) => {
    expect([level, name]).toEqual(["error", "preset-does-not-resolve"]);
    return { at: place === undefined ? "" : `${place.line}:${place.column}`, line: place?.text ?? "", says, set };
  });
}

describe("the plan of a stage", () => {
  test("is read with its name, and its values with units", () => {
    const { value, complaints: found } = read(GOOD);
    expect(found).toEqual([]);
    expect(value?.name).toBe("wide");
    expect(value?.plan.screws.A?.at).toEqual([150, 62]);
    expect(value?.plan.print).toBe(2);
    expect(value?.plan.motor.torque).toBeCloseTo(0.3, 12);
  });

  test.each([
    ["a misspelled key of a block", "  lift: 220", "  lfit: 220", "lfit: 220", "lift"],
    [
      "a misspelled key of a thing that has a name",
      "length: 420\n    bar: front\n  B",
      "lenght: 420\n    bar: front\n  B",
      "lenght",
      "length",
    ],
    ["a misspelled parameter of all feet", "thrust: collar", "thurst: collar", "thurst", "thrust"],
    ["a misspelled word of a parameter of the feet", "thrust: collar", "thrust: colar", "thrust: colar", "collar"],
    ["a misspelled word in a list", "hub: down", "hub: dwon", "hub: dwon", "down"],
    ["an unknown row", "pulley: 36 teeth 2 mm", "pulley: 36 teeth 2 m", "36 teeth 2 m", "36 teeth 2 mm"],
    ["a unit of another kind", "lift: 220", "lift: 220 N", "220 N", "a length in mm"],
    ["a decimal comma", "lift: 220", "lift: 220,5 mm", "220,5 mm", "220.5 mm"],
    ["text for a place", "      - 150\n      - 62", "      - here\n      - 62", "here", "a length from"],
    ["a place of one number", "      - 150\n      - 62", "      - 150", "at:", "[x, y]"],
    ["a name that is none", "  front:", "  fr!ont:", "fr!ont", "a short name such as A or front-left"],
    ["a name that only capitals tell apart", "  back:", "  Front:", "Front:", "another name"],
    ["a name of the stage that is a path", "stage: wide", "stage: ../../wide", "../../wide", "stage: wide"],
    ["a newer format", "format: 1", "format: 2", "format: 2", "a newer tramwright"],
    ["a word for a truth", "moves: true", "moves: yes", "moves: yes", "moves: true"],
  ])("%s is answered at its line with what to set", (_, before, after, line, set) => {
    const text = GOOD.replace(before, after);
    expect(text).not.toBe(GOOD);
    const found = complaints(text).filter((one) => one.line.includes(line));
    expect(found.map((one) => one.set).join("\n")).toContain(set);
    for (const one of complaints(text)) expect(`${one.says}${one.set}`).not.toMatch(/undefined|NaN|\[object/);
  });

  test("a thing that is given as one bare value is told how it is written, with the value where it belongs", () => {
    const told = complaints(stringify({ format: 1, stage: "wide", ...WIDE, masses: { heater: "0.15 kg" } }));
    expect(told.map(({ set }) => set)).toEqual(["heater: { mass: 0.15 kg, at: [x, y] }"]);
    const written = { format: 1, stage: "wide", ...WIDE, masses: { heater: { mass: "0.15 kg", at: [1, 2] } } };
    expect(complaints(stringify(written))).toEqual([]);
  });

  test("a family that nobody knows has no printer", () => {
    const [found] = complaints(`${GOOD}printers:\n  screw-fot: a.yaml\n`);
    expect(found).toMatchObject({ says: "there is no part family screw-fot", set: "screw-foot" });
    expect(found?.line).toContain("screw-fot");
  });

  test("all complaints come at once, each once", () => {
    const text = GOOD.replace("lift: 220", "lfit: 220")
      .replace("thrust: collar", "thurst: 1")
      .replace("hub: down", "hub: dwon");
    const found = complaints(`${text}colour: red\nprinters: { x: y }\n`);
    expect(found).toHaveLength(5);
    expect(new Set(found.map(({ at }) => at)).size).toBe(5);
  });

  test("with single things wrong the rest of the plan is there, with what was not understood", () => {
    const { value, complaints: found } = read(GOOD.replace("lift: 220", "lfit: 220"));
    expect(found).toHaveLength(1);
    expect(value?.plan.travel.lift).toBe(200);
    expect(value?.unread).toContainEqual(["travel", "lfit"]);
    const word = read(GOOD.replace("hub: down", "hub: dwon")).value;
    expect(word?.plan.motor.pulleys).toMatchObject([{ loop: "low", hub: "up" }, { loop: "high" }]);
    expect(word?.unread).toContainEqual(["motor", "pulleys", 0, "hub"]);
    const screw = read(GOOD.replace("length: 420\n    bar: front\n  B", "length: far\n    bar: front\n  B")).value;
    expect(Object.keys(screw?.plan.screws ?? {})).toEqual(["B", "C"]);
    expect(screw?.unread).toContainEqual(["screws", "A"]);
  });

  test("a key that stands there twice is told at the second, with the line of the first; the second is read", () => {
    const text = GOOD.replace("  lift: 220", "  lift: 220\n  lift: 230");
    const [found, ...more] = complaints(text);
    expect(more).toEqual([]);
    expect(found?.says).toMatch(/^lift: this key is there twice, first in line \d+$/);
    expect(found?.line).toContain("lift: 230");
    expect(read(text).value?.plan.travel.lift).toBe(230);
    expect(read(text).value?.unread).toEqual([["travel", "lift"]]);
  });

  test("whatever one value is replaced by, what is read of the plan has only what the file has", () => {
    const lines = GOOD.split("\n");
    const line = fc.integer({ min: 2, max: lines.length - 2 });
    fc.assert(
      fc.property(line, fc.constantFrom("[", "true", "-1e9", '""', "{}", "none", "[1, 2, 3, 4]"), (at, odd) => {
        const text = lines
          .map((one, index) => (index === at ? one.replace(/(:|-) ?.*$/, `$1 ${odd}`) : one))
          .join("\n");
        const { value, complaints: found } = read(text);
        if (value === undefined) expect(found.length).toBeGreaterThan(0);
        else for (const name of Object.keys(value.plan.screws)) expect(text).toContain(`${name}:`);
      }),
      { numRuns: 150 },
    );
  });
});

describe("a file of another kind", () => {
  const part = "format: 1\npart: wheel-spacer\n";
  const printer = "format: 1\nprinter: mine\nsettings: {}\n";
  const wanted = { part: readPartPreset, stage: readStagePreset, printer: readPrinterPreset };
  test.each([
    ["part", "stage", part, "this file describes a part, and a whole stage is wanted", "2:7"],
    ["part", "printer", part, "this file describes a part, and a printer is wanted", "2:7"],
    ["stage", "part", GOOD, "this file describes a whole stage, and a part is wanted", "2:8"],
    ["stage", "printer", GOOD, "this file describes a whole stage, and a printer is wanted", "2:8"],
    ["printer", "part", printer, "this file describes a printer, and a part is wanted", "3:1"],
    ["printer", "stage", printer, "this file describes a printer, and a whole stage is wanted", "3:1"],
  ] as const)("%s for %s is said in one message that tells what to do", (_, kind, text, says, at) => {
    const { value, complaints: found } = wanted[kind](readYaml("file.yaml", text));
    expect(value).toBeUndefined();
    expect(found).toHaveLength(1);
    expect(found[0]?.diagnostic.says).toBe(says);
    expect(`${found[0]?.place?.line}:${found[0]?.place?.column.toString()}`).toBe(at);
    expect(found[0]?.diagnostic.set).toContain("file.yaml");
  });

  test("an empty file tells what the wanted kind begins with", () => {
    expect(complaints("")[0]?.set).toContain("stage: <its name>");
  });
});

describe("inches", () => {
  /** Every length of the wide plan by hand: mm over 25.4. */
  const inch = (value: number) => value / 25.4;
  const place = (all: readonly number[]) => all.map(inch);
  const bars = Object.fromEntries(
    Object.entries(WIDE.bars).map(([name, one]) => [name, { ...one, from: place(one.from), to: place(one.to) }]),
  );
  const screws = Object.fromEntries(
    Object.entries(WIDE.screws).map(([name, one]) => [name, { ...one, at: place(one.at), length: inch(one.length) }]),
  );
  const mounts = Object.fromEntries(
    Object.entries(WIDE.plate.mounts).map(([name, one]) => [name, { ...one, at: place(one.at) }]),
  );
  const INCHES = {
    ...WIDE,
    units: "in",
    bars,
    screws,
    travel: { lowest: inch(100), lift: inch(220), nut: inch(125) },
    motor: {
      ...WIDE.motor,
      motor: { ...WIDE.motor.motor, shaftLength: inch(WIDE.motor.motor.shaftLength) },
      at: place(WIDE.motor.at),
      plateTop: inch(10),
    },
    loops: {
      ...WIDE.loops,
      low: { ...WIDE.loops.low, slide: { ...WIDE.loops.low.slide, from: inch(-15), to: inch(15) } },
    },
    idlers: { press: { ...WIDE.idlers.press, at: place(WIDE.idlers.press.at) } },
    plate: {
      ...WIDE.plate,
      at: place(WIDE.plate.at),
      size: place(WIDE.plate.size),
      thickness: inch(6),
      mounts,
      heater: { ...WIDE.plate.heater, size: place(WIDE.plate.heater.size) },
    },
    masses: { nuts: { mass: "0.4 kg", at: place(WIDE.masses.nuts.at) } },
  };
  const planOf = (data: object) => read(stringify({ format: 1, stage: "wide", ...data })).value?.plan;
  /** Numbers to a nanometre: 25.4 times the inch is off by binary noise. */
  const rounded = (plan: unknown) =>
    JSON.parse(JSON.stringify(plan, (_, one) => (typeof one === "number" ? Number(one.toFixed(6)) : one)));

  test("a plan in inches is the same machine", () => {
    const { units, ...machine } = planOf(INCHES) ?? { units: undefined };
    const { units: _, ...same } = planOf(WIDE) ?? { units: undefined };
    expect(units).toBe("in");
    expect(rounded(machine)).toEqual(rounded(same));
  });

  test("lengths with a unit, and what is no length, stay as they are", () => {
    const plan = planOf({
      ...INCHES,
      travel: { lowest: "100 mm", lift: "8 1/2", nut: '5"' },
      motor: { ...INCHES.motor, speed: 4, stepAngle: 0.9 },
    });
    expect(plan?.travel).toEqual({ lowest: 100, lift: 215.9, nut: 127 });
    expect(plan?.motor.speed).toBe(4);
    expect(plan?.motor.stepAngle).toBe(0.9);
    expect(plan?.plate.temperature).toBe(90);
  });

  test("they reach into the parameters of a family, into lists, and into the fields of bought items", () => {
    const plan = planOf({
      ...INCHES,
      bars: { ...bars, front: { bar: { row: "30x30 slot 8", width: 1.2 }, from: [0, 0, 0], to: [30, 0, 0] } },
      screws: { ...screws, A: { at: [4, 2], length: 14, foot: { wall: 0.25, boltLengths: [0.5], axialLoad: 40 } } },
      foot: { axisOffset: 1, bearing: { row: "608", width: 0.275 } },
      stock: { bolts: [0.5, "12 mm"] },
    });
    expect(plan?.bars.front?.bar.values.width).toBeCloseTo(30.48, 9);
    expect(plan?.bars.front?.to).toEqual([762, 0, 0]);
    expect(plan?.screws.A?.foot).toEqual({ wall: "0.25 in", boltLengths: ["0.5 in"], axialLoad: 40 });
    expect(plan?.foot).toEqual({ axisOffset: "1 in", bearing: { row: "608", width: "0.275 in" } });
    expect(plan?.stock.bolts).toEqual([12.7, 12]);
  });

  test("a message repeats what was typed with what it means", () => {
    const text = stringify({ format: 1, stage: "wide", ...INCHES, travel: { lift: 200 } });
    expect(complaints(text)[0]?.says).toContain("is 200 in (5080 mm), outside 1 to 3000 mm");
  });
});

describe("hostile files", () => {
  test.each([
    ["a list of bars", "bars: []\n", "bars"],
    ["bars that are text", "bars: many\n", "bars"],
    ["a motor that is a list", "motor: [1]\n", "motor"],
    ["a block of parameters that is a list", "foot: [1]\n", "foot"],
    ["printers that are text", "printers: mine\n", "printers"],
    ["a key of the prototype", "constructor: 1\n", "constructor"],
  ])("%s is an error with a place", (_, line, key) => {
    const own = GOOD.replace(/^(?:bars|motor|foot):\n(?: .*\n)*/gm, (block) =>
      block.startsWith(`${key}:`) ? "" : block,
    );
    const found = complaints(own + line).filter(({ says, line: at }) => `${says}${at}`.includes(key));
    expect(found.length).toBeGreaterThan(0);
    for (const { at, says, set } of found) {
      expect(at).not.toBe("");
      expect(`${says} ${set}`).not.toMatch(/undefined|NaN|\[object/);
    }
  });

  test.each([
    ["bars", (index: number) => `  b${index}: {}`],
    ["foot", (index: number) => `  beltPlan${index}: 1`],
    ["loops", (index: number) => `  l${index}: { nodes: [a, b] }`],
  ])("thousands of %s are answered in few words", (key, line) => {
    const lines = Array.from({ length: 9000 }, (_, index) => line(index)).join("\n");
    const found = complaints(`format: 1\nstage: x\n${key}:\n${lines}\n`);
    expect(found.length).toBeGreaterThan(0);
    expect(found.length).toBeLessThan(100);
  });

  test("any mutation of its text gives complaints or a value, never an exception", () => {
    fc.assert(
      fc.property(fc.nat(GOOD.length), fc.nat(9), fc.string({ maxLength: 6, unit: "binary" }), (at, cut, insert) => {
        for (const { says, set } of complaints(GOOD.slice(0, at) + insert + GOOD.slice(at + cut)))
          expect(says.length * set.length).toBeGreaterThan(0);
      }),
      { numRuns: 100 },
    );
  });
});

describe("what nobody measured", () => {
  const note = (changes: Readonly<Record<string, unknown>>) => {
    const { value } = read(stringify({ format: 1, stage: "wide", ...deepMerge(WIDE, changes) }));
    return value === undefined ? [] : planUnmeasured(value, []);
  };

  test("is one note: items as sold, and sizes left at their defaults, each once", () => {
    const notes = note({});
    expect(notes).toHaveLength(1);
    const { name, level, says } = notes[0] ?? { says: "" };
    expect([name, level]).toEqual(["typical-value-not-measured", "note"]);
    for (const word of ["bar 30x30 slot 8", "motor NEMA 17", "pulley 20 teeth 2 mm", "belt 2 mm round"])
      expect(says?.split(word)).toHaveLength(2);
    expect(says?.split("loops.tension 15 N")).toHaveLength(2);
    expect(says).not.toContain("travel");
  });

  test("loses what is measured, and what is stated", () => {
    const bar = { row: "30x30 slot 8", width: 30.02, measured: true };
    const bars = Object.fromEntries(Object.keys(WIDE.bars).map((key) => [key, { bar }]));
    const loops = { low: { tension: 20 }, high: { tension: 20 } };
    const [found] = note({ bars, loops });
    expect(found?.says).not.toContain("bar 30x30");
    expect(found?.says).not.toContain("tension");
  });
});
