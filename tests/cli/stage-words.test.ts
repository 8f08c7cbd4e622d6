import { describe, expect, test } from "vitest";
import { stringify } from "yaml";
import { compareParts } from "../../src/build/compare.ts";
import { printHours } from "../../src/build/print-hours.ts";
import { stageParts } from "../../src/build/stage-parts.ts";
import { readArguments } from "../../src/cli/arguments.ts";
import { explain } from "../../src/cli/commands/explain.ts";
import { parts as partsCommand } from "../../src/cli/commands/parts.ts";
import { report } from "../../src/cli/commands/report.ts";
import { tram } from "../../src/cli/commands/tram.ts";
import type { Io } from "../../src/cli/io.ts";
import type { Machine } from "../../src/cli/load-stage.ts";
import { sectionLines } from "../../src/cli/section-lines.ts";
import { readYaml } from "../../src/presets/read.ts";
import { readStagePreset, type StagePreset } from "../../src/presets/stage-preset.ts";
import { UNCALIBRATED } from "../../src/printing/printer.ts";
import type { FootChoice, PlacedPart, Stage } from "../../src/stage/index.ts";
import { deepMerge } from "../support/deep-merge.ts";
import { WIDE } from "../support/plans.ts";
import { handmade, placedPart, SECTION } from "../support/stages.ts";
import { collect, document, expectReadable, troubleOf } from "./collect.ts";

const plain = (_: unknown, words: string) => words;

function presetOf(changes: Readonly<Record<string, unknown>> = {}): StagePreset {
  const text = stringify({ format: 1, stage: "wide", ...deepMerge(WIDE, changes) });
  const { value, complaints } = readStagePreset(readYaml("plan.yaml", text));
  if (value === undefined || complaints.length > 0) throw new Error(JSON.stringify(complaints));
  return value;
}

function machine(changes: Partial<Stage> = {}, plan: Readonly<Record<string, unknown>> = {}): Machine {
  const preset = presetOf(plan);
  const stage = handmade({ plan: preset.plan, ...changes });
  const printer = () => UNCALIBRATED;
  return { preset, stage, parts: stageParts(stage, () => ({ printer: UNCALIBRATED, calibrated: true }), "1"), printer };
}

const loaded = (one: Machine | undefined) => ({ file: "plan.yaml", machine: one, messages: [], locate: () => never() });
const never = (): never => {
  throw new Error("nothing to locate");
};

describe("the report", () => {
  test("is a table: what, value, unit, limit, margin, name; long words go on below", () => {
    expect(sectionLines(SECTION, plain).join("\n")).toBe(
      `Loads
  what                                           value  unit  limit        margin  name
  ---------------------------------------------  -----  ----  -----------  ------  --------------
  largest share of the weight on screw A         23.46  N     at most 50     53 %  screw.A.share
  weight that the screws carry                    61.2  N                          stage.weight
  column factor of screw C, with the nut at the    1.5        at least 2    -25 %  screw.C.column
    top of its travel and the end steadied
  shift under a print                                0  mm    at most 0.2   100 %  print.shift
  the stage stands on three screws; a lean on a corner lifts none of them off, whatever lies on
  the plate here`,
    );
  });

  test("of a machine is readable, within the screen, and lists its parts with their places", () => {
    const one = machine({ sections: [SECTION], parts: [placedPart("knob", "thumb-wheel")] });
    const said = collect((io) => report(loaded(one), { json: false, quiet: false, version: "1" }, io));
    expectReadable(said, "report");
    const [row = ""] = said.filter((line) => line.includes("knob"));
    expect(row.split(/\s{2,}/).slice(1)).toEqual([
      "knob",
      "thumb-wheel",
      one.parts[0]?.hash,
      "1.00",
      "2.00",
      "3.00",
      "90.00",
    ]);
  });

  test("as JSON holds the same numbers", () => {
    const one = machine({ sections: [SECTION] });
    const data = document<{ sections: (typeof SECTION)[] }>((io) =>
      report(loaded(one), { json: true, quiet: false, version: "1" }, io),
    );
    expect(data.sections[0]?.facts.map(({ value }) => value)).toEqual(SECTION.facts.map(({ value }) => value));
  });

  test("of a file that could not be read ends with the error's code", () => {
    const diagnostic = { name: "x", level: "error" as const, path: [], says: "s", why: "w", set: "t" };
    const messages = [{ file: "f", place: undefined, diagnostic }];
    const io = { out: () => undefined, err: () => undefined, paint: plain };
    expect(report({ ...loaded(undefined), messages }, { json: false, quiet: false, version: "1" }, io)).toBe(1);
  });

  test("any labels, keys and values stay within 100 columns", () => {
    const long = "word ".repeat(60).trim();
    const facts = Array.from({ length: 12 }, (_, index) => ({
      key: `screw.front-left-${index}.share-of-all-loads`,
      label: index % 2 === 0 ? long : "short",
      value: -(10 ** (index - 6)) * 1.23456,
      unit: "W/(m2·K)" as const,
      limit: { value: 10 ** index, kind: "at least" as const },
    }));
    expectReadable(sectionLines({ title: "t", facts, lines: [long] }, plain), "long");
  });
});

describe("tram", () => {
  const of = (probes: readonly string[], plan: Readonly<Record<string, unknown>> = {}) =>
    collect((io) => tram(machine({}, plan), { probes, json: false }, io));
  const refusal = (probes: readonly string[], plan: Readonly<Record<string, unknown>> = {}) =>
    troubleOf((io) => tram(machine({}, plan), { probes, json: false }, io));

  test("tells the distance first, then turns and marks, and from where it is seen", () => {
    // Probed at the mounts: two is 0.192 high, which is 0.24 of a turn of an M5 bolt, pitch 0.8 (ISO 261).
    expect(of(["200,130,0", "560,130,0.192", "380,430,0"])).toEqual([
      "mount one: stays, the plate is brought level with it",
      "mount two: lower 0.19 mm = 0.24 turn (2.4 marks), clockwise seen from below",
      "mount three: stays, it is level",
      "travel left as if the springs were as long as set: two 16.00 mm, 3.00 mm to each side; --spring",
      "two=<length> counts from what it is now",
    ]);
  });

  test("counts what is left of the travel from the length that a spring has now", () => {
    const plan = {};
    const with_ = (high: string, springs: readonly string[]) => (io: Io) =>
      tram(machine({}, plan), { probes: ["200,130,0", `560,130,${high}`, "380,430,0"], springs, json: true }, io);
    const moves = document<{ moves: { mount: string; left: object; measured: boolean }[] }>(with_("0.5", ["two=14"]));
    // Set to 16 with 3 mm to each side: 13 to 19.
    expect(moves.moves[1]).toMatchObject({ mount: "two", spring: 14, measured: true, left: { up: 5, down: 1 } });
    // Two reaches 1 lower, and 1 is left: one and three come up to meet it.
    const out = document<{ moves: { move: number }[] }>(with_("2", ["two=14"]));
    expect(out.moves.map(({ move }) => Number(move.toFixed(6)))).toEqual([1, -1, 1]);
    expect(troubleOf(with_("6", ["two=14"]))).toContain(
      "mount one lacks 2 mm upwards, and mount three lacks 2 mm upwards",
    );
    expect(collect(with_("2", ["two=15 mm"])).join()).toContain('"move": -2');
    expect(troubleOf(with_("0", ["two=30"]))).toContain("is 30.00 mm long, outside its travel of 13.00 to 19.00 mm");
    expect(troubleOf(with_("0", ["tow=13"]))).toContain("the plate has no mount tow; the nearest is two");
    expect(troubleOf(with_("0", ["two"]))).toContain("write mount=length");
  });

  test("what is too much for one mount is shared out, and the fixed one moves too", () => {
    expect(of(["200,130,0", "560,130,4", "380,430,0"]).slice(0, 5)).toEqual([
      "mount one: raise 1.00 mm = 1.25 turn (12.5 marks), counter-clockwise seen from below",
      "mount two: lower 3.00 mm = 3.75 turn (37.5 marks), clockwise seen from below",
      "mount three: raise 1.00 mm = 1.25 turn (12.5 marks), counter-clockwise seen from below",
      "shared out, since one mount alone would leave its travel: the plate comes to lie 1 mm higher at",
      "one",
    ]);
  });

  test("four mounts: the twist as a number, and which mounts stand high", () => {
    const mounts = { three: { at: [200, 430] }, four: { at: [560, 430], type: "free", bar: "arm-back" } };
    const four = (heights: readonly number[]) =>
      of(
        ["200,130", "560,130", "560,430", "200,430"].map((at, index) => `${at},${heights[index]}`),
        { plate: { mounts } },
      );
    // (0.1 - 0 + 0.3 - 0) / 4 = 0.1.
    const said = four([0.1, 0, 0.3, 0]).join(" ");
    expect(said).toContain(
      "twist: one and four 0.1 mm over the plane nearest to all four mounts, two and three as much",
    );
    expect(four([0.1, 0.2, 0.1, 0]).join(" ")).toContain("lie in a plane within 0.01 mm: no twist");
    const three = of(["200,130,0", "560,130,0.1", "380,430,0"], { plate: { mounts } }).join(" ");
    expect(three).toContain("the twist over the four mounts is not known: a twist needs 4 probes or more");
  });

  test("a low mount is raised, counter-clockwise; a bolt that is turned from above has no marks", () => {
    const plate = { mounts: { three: { parameters: { joint: "captive-nut" } } } };
    expect(of(["200,130,0", "560,130,0", "380,430,-0.4"], { plate })[2]).toBe(
      "mount three: raise 0.40 mm = 0.50 turn, counter-clockwise seen from above",
    );
  });

  test("what lies off a plane is told as what stays", () => {
    const said = of(["200,130,0", "560,130,0", "200,430,0", "560,430,0.2"]);
    expect(said).toContain("the probes lie up to 0.05 mm off a plane: that stays");
  });

  test("probes are in the plan's unit, or in their own", () => {
    const inches = of(["200 mm,130 mm,0", "560 mm,130 mm,0.01", "380 mm,430 mm,0 mm"], { units: "mm" });
    expect(inches[1]).toContain("lower 0.01 mm");
    const typed = of(["200 mm,130 mm,0", "560 mm,130 mm,0.01 in", "380 mm,430 mm,0"]);
    expect(typed[1]).toContain("lower 0.25 mm");
  });

  test.each([
    [["200,130,0", "560,130,0"], "a plane needs 3 probes or more"],
    [["200,200,0", "300,300,0", "400,400,0"], "the probes lie on a line"],
    [["200,130,0", "560,130,0", "380,80,0"], "lies off the plate: x goes from 170 to 590 mm, y from 115 to 445 mm"],
    [["200,130,0", "160,130,0", "380,430,0"], "--probe 160,130,0 lies off the plate"],
    [["200,130,0", "560,130,9", "380,430,0"], "lacks 3 mm upwards"],
    [["200,130", "560,130,9", "380,430,0"], "has 2 numbers and needs three"],
    [["200,130,a", "560,130,9", "380,430,0"], "a is not a number"],
    [["200,130,1 N", "560,130,9", "380,430,0"], "N measures a force"],
  ])("%j is refused: %s", (probes, words) => {
    expect(refusal(probes)).toContain(words);
  });

  test("a plate with no fixed mount, or two of them, cannot be trammed", () => {
    const mounts = { one: { type: "free" } };
    expect(refusal(["200,130,0", "560,130,0", "380,430,0"], { plate: { mounts } })).toContain(
      "one mount of type: fixed",
    );
  });

  test("probes with a minus reach the command, behind the option or among the names", () => {
    const { operands, values } = readArguments([
      "tram",
      "p.yaml",
      "--probe",
      "-10,20,-0.1",
      "-5.5,3,1",
      "--probe=1,2,3",
    ]);
    expect(operands).toEqual(["p.yaml", "-5.5,3,1"]);
    expect(values.probe).toEqual(["-10,20,-0.1", "1,2,3"]);
    expect(readArguments(["make", "-"]).operands).toEqual(["-"]);
  });
});

describe("compare", () => {
  const foot = (parameters: object = {}, name = "foot-a") =>
    placedPart(name, "screw-foot", { beltPlane: 32, hub: "down", thrust: "collar", ...parameters });

  function choice(part: PlacedPart, seat: number, candidates: FootChoice["candidates"]): FootChoice {
    const [first] = candidates;
    return {
      ...{
        screw: "A",
        loop: "low",
        bar: "front",
        hub: first?.hub ?? "down",
        seat,
        seatOverDatum: seat,
        shim: 0,
        give: 0,
      },
      ...{ plane: 0, residual: 0, candidates, part },
    };
  }

  const way = (hub: "up" | "down", seat: number) => ({
    hub,
    seat,
    washers: [1],
    rings: ["8 x 12 x 1"],
    lost: undefined,
  });

  const sides = (was: FootChoice, is: FootChoice) =>
    compareParts(machine({ parts: [was.part], feet: [was] }), machine({ parts: [is.part], feet: [is] }));

  test("a part of the same hash is kept, a new one printed, one that is gone dropped", () => {
    const [a, b, c] = ["a", "b", "c"].map((name) => placedPart(name, "wheel-spacer"));
    if (a === undefined || b === undefined || c === undefined) throw new Error("three");
    const verdicts = compareParts(machine({ parts: [a, b] }), machine({ parts: [a, c] }));
    expect(verdicts.map(({ name, action }) => [name, action])).toEqual([
      ["a", "keep"],
      ["c", "print"],
      ["b", "drop"],
    ]);
    expect(verdicts[0]?.before?.hash).toBe(verdicts[0]?.after?.hash);
  });

  test("loads that only checks see change the hash, not the shape: it is kept", () => {
    const [verdict] = compareParts(machine({ parts: [foot()] }), machine({ parts: [foot({ axialLoad: 55 })] }));
    expect(verdict?.before?.hash).not.toBe(verdict?.after?.hash);
    expect(verdict).toMatchObject({ action: "keep", why: "the same shape; axial load 50 -> 55 N" });
  });

  test("another bearing or bar is printed again", () => {
    const [verdict] = compareParts(machine({ parts: [foot()] }), machine({ parts: [foot({ bearing: "6001" })] }));
    expect(verdict?.action).toBe("reprint");
    expect(verdict?.why).toContain("bearing");
  });

  // Bearing 7, ring 1, flanges 1, groove 7, hub 7: seats 19.5 with the hub up and 12.5 with it down for a plane of 32.
  test.each([
    [
      "a plane one hub lower keeps the print with its hub turned",
      25,
      [way("down", 5.5), way("up", 12.5)],
      "flip",
      undefined,
    ],
    ["a plane half a millimetre higher takes a ring", 32.5, [way("down", 13), way("up", 20)], "shim", 0.5],
    [
      "a plane lower than any stack reaches is printed again",
      31,
      [way("down", 11.5), way("up", 18.5)],
      "reprint",
      undefined,
    ],
    [
      "a plane higher than the pocket can give is printed again",
      36,
      [way("down", 16.5), way("up", 23.5)],
      "reprint",
      undefined,
    ],
  ] as const)("%s", (_, plane, candidates, action, shim) => {
    const before = choice(foot(), 12.5, [way("down", 12.5), way("up", 19.5)]);
    const [verdict] = sides(before, choice(foot({ beltPlane: plane }), candidates[0]?.seat ?? 0, candidates));
    expect(verdict?.action).toBe(action);
    if (shim === undefined) expect(verdict?.shim).toBeUndefined();
    else expect(verdict?.shim).toBeCloseTo(shim, 9);
  });

  test("hours follow from volume and flow: 100 g of PETG at 0.45 x 0.2 x 40 mm3/s", () => {
    // 100 g over 1.27 g/cm3 is 78 740 mm3; at 3.6 mm3/s that is 21 872 s. Own arithmetic.
    expect(printHours([{ count: 2, mass: 50 }], "PETG", UNCALIBRATED)).toBeCloseTo(6.08, 1);
  });
});

describe("explain of a machine's number", () => {
  const { stage } = machine({ sections: [SECTION] });

  test("is formula, substitution, result, source and limit", () => {
    const said = collect((io) => explain({ what: "screw.A.share", stage, json: false }, io, UNCALIBRATED));
    expectReadable(said, "page");
    expect(said[0]).toBe("screw.A.share: largest share of the weight on screw A");
    expect(said).toContain("  t = dz / p");
    expect(said).toContain("    = 0.192 / 0.8");
    expect(said.join("\n")).toMatch(/source {2}.*ISO 261/);
    expect(said).toContain("limit   at most 50 N, margin 53 %");
    expect(said).toContain("more    tramwright explain thread-travel");
  });

  test("that was only placed or counted says so", () => {
    const said = collect((io) => explain({ what: "stage.weight", stage, json: false }, io, UNCALIBRATED));
    expect(said).toContain("source  placed or counted: no formula");
  });

  test("that is not there gets the nearest name; what is no number of it is explained as ever", () => {
    expect(troubleOf((io) => explain({ what: "screw.A.shar", stage, json: false }, io, UNCALIBRATED))).toContain(
      "the nearest is screw.A.share",
    );
    const said = collect((io) => explain({ what: "thread-travel", stage, json: false }, io, UNCALIBRATED));
    expect(said[0]).toContain("Height of a turn");
  });

  test("a defect of a machine has a page", () => {
    const said = collect((io) => explain({ what: "frame-bars-overlap", json: false }, io, UNCALIBRATED));
    expect(said[0]).toBe("frame-bars-overlap: a defect that a stage may have");
  });
});

describe("parts stage", () => {
  test("tells every block and key of the plan", () => {
    const said = collect((io) => partsCommand({ family: "stage", json: false }, io));
    expectReadable(said, "page");
    for (const key of ["plateTop", "lowest", "nodes", "adhesive", "moves", "tension"])
      expect(said.some((line) => line.trim().startsWith(`${key} `))).toBe(true);
    for (const block of ["bars: ", "screws: ", "motor", "loops: ", "plate.mounts: ", "plate.heater", "carriages: "])
      expect(said.some((line) => line.startsWith(block))).toBe(true);
  });

  test("as JSON it is one document", () => {
    const data = document<{ blocks: { key: string }[] }>((io) => partsCommand({ family: "stage", json: true }, io));
    expect(data.blocks.map(({ key }) => key)).toContain("loops.slide");
  });
});
