import { createHash } from "node:crypto";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sha256Hex } from "../../src/build/hash.ts";
import { builtPart, planBuilds } from "../../src/build/part-builds.ts";
import { pieceResult } from "../../src/build/piece-work.ts";
import { type Printing, type StagePart, stageParts } from "../../src/build/stage-parts.ts";
import { setFiles } from "../../src/build/stage-set.ts";
import { grouped } from "../../src/outputs/buying.ts";
import { hardwareCsv } from "../../src/outputs/hardware-csv.ts";
import { manifestText, readManifest } from "../../src/outputs/manifest.ts";
import { reportJson } from "../../src/outputs/report-json.ts";
import { stockBars } from "../../src/outputs/stock-bars.ts";
import { UNCALIBRATED } from "../../src/printing/printer.ts";
import { deriveStage } from "../../src/stage/index.ts";
import { stageDefect } from "../../src/stage/stage-defects.ts";
import { kernel } from "../support/kernel.ts";
import { widePlan } from "../support/plans.ts";
import { handmade, placedPart, SECTION } from "../support/stages.ts";

function builtParts(parts: readonly StagePart[]) {
  const { builds, works: drawn } = planBuilds(parts);
  const works = [...drawn];
  const results = works.map((work) => pieceResult(work, kernel));
  return builds.map((one) => builtPart(one, results, "1.2.3"));
}

const bodies = (...parts: readonly StagePart[]) => [...planBuilds(parts).works];

/** Reads CSV by the letter of RFC 4180: CRLF ends a record, quotes hold commas, line ends and doubled quotes. */
function readCsv(text: string): string[][] {
  const records: string[][] = [];
  let record: string[] = [];
  let at = 0;
  while (at < text.length) {
    let field = "";
    if (text[at] === '"') {
      for (at++; !(text[at] === '"' && text[at + 1] !== '"'); at++) {
        if (at >= text.length) throw new Error("an open quote");
        if (text[at] === '"') at++;
        field += text[at];
      }
      at++;
    } else {
      for (; at < text.length && text[at] !== "," && text[at] !== "\r"; at++) {
        if (text[at] === '"' || text[at] === "\n") throw new Error("a bare quote or line end");
        field += text[at];
      }
    }
    record.push(field);
    if (text[at] === ",") at++;
    else if (text.slice(at, at + 2) === "\r\n") {
      records.push(record);
      record = [];
      at += 2;
    } else throw new Error(`record ends badly at ${at}`);
  }
  return records;
}

const printing: Printing = { printer: UNCALIBRATED, calibrated: true };

/** A list as a table by item. */
function listed(text: string) {
  const [head = [], ...rows] = readCsv(text);
  return rows.map((row) => Object.fromEntries(head.map((name, index) => [name, row[index] ?? ""])));
}

describe("the hardware list", () => {
  const screw = { item: "M5 x 12 cap screw", count: 4 };
  const design = (...hardware: { item: string; count: number; note?: string }[]) => ({ hardware });

  test("holds the plan's own things with their lengths, and those of all parts, each once", () => {
    const stage = handmade();
    const rows = listed(
      hardwareCsv(stage, [
        { name: "foot-a", design: design({ item: "bearing 608", count: 1 }, screw) },
        { name: "foot-b", design: design({ item: "bearing 608", count: 1 }, { ...screw, note: "to the bar" }) },
      ]),
    );
    const of = (item: string) => rows.filter((row) => row.item === item);
    expect(of("bearing 608")).toEqual([
      expect.objectContaining({ needed: "2", spares: "0", pack: "1", buy: "2", "used by": "foot-a; foot-b" }),
    ]);
    expect(of("M5 x 12 cap screw")).toEqual([
      expect.objectContaining({ needed: "8", spares: "1", pack: "10", buy: "10", notes: "to the bar" }),
    ]);
    expect(of("lead screw Tr8x2")).toEqual([
      expect.objectContaining({ needed: "3", "length mm": "420", "used by": "screw A; screw B; screw C" }),
    ]);
    expect(of("motor NEMA 17")).toHaveLength(1);
    expect(of("pulley 20 teeth 2 mm, bore 5")).toEqual([expect.objectContaining({ needed: "2" })]);
  });

  test("nuts, motor screws, idler axles, upper bearings and the plate are listed; what the plan leaves open is named", () => {
    const rows = listed(
      hardwareCsv(
        deriveStage(widePlan(), () => UNCALIBRATED),
        [],
      ),
    );
    const of = (item: string) => rows.find((row) => row.item?.startsWith(item));
    expect(of("lead nut Tr8x2, brass")).toMatchObject({ needed: "3", spares: "0", buy: "3" });
    // A plate of 6 and a washer of 0.5, the thread 4.5 deep: 9.5 to 10.5.
    expect(of("M3 x 10 cap screw")).toMatchObject({ needed: "4", "used by": "motor" });
    expect(of("M5 bolt, axle of an idler")).toMatchObject({ needed: "1", "used by": "idler press" });
    expect(of("M5 bolt, axle of an idler")?.notes).toMatch(/^length: 15\.7 mm above the idler's lower end/);
    expect(of("bearing, upper end of a screw, bore 8")).toMatchObject({ needed: "3", buy: "3" });
    expect(of("plate, aluminium, 420 x 330 x 6")).toMatchObject({ needed: "1", spares: "0" });
    expect(of("heater, 300 x 220, 400 W, 230 V")?.notes).toContain("thermal cut-out");
    const open = rows.filter(({ item }) => item?.startsWith("not in the plan: "));
    expect(open.map(({ item }) => item?.slice("not in the plan: ".length))).toEqual([
      "joints of the bars",
      "motor plate",
      "joints of the nuts to the stage",
      "holders of the upper bearings",
      "stands of the idlers",
      "wiring, control, power supply, switches",
    ]);
    expect(open.every(({ needed, buy }) => needed === "" && buy === "")).toBe(true);
    expect(rows.slice(-open.length)).toEqual(open);
  });

  test("belts have the length to buy and its teeth: length over pitch", () => {
    const belt = { length: 852.3, spans: [], wraps: [] } as never;
    const low = {
      loop: "low",
      nodes: [],
      belt,
      nominal: 852.3,
      stock: [],
      bought: 852,
      slid: undefined,
      gaps: [],
      meshes: [],
    };
    const high = {
      loop: "high",
      nodes: [],
      belt,
      nominal: 300.4,
      stock: [],
      bought: undefined,
      slid: undefined,
      gaps: [],
      meshes: [],
    };
    const rows = listed(hardwareCsv(handmade({ loops: [low, high] }), [])).filter(({ item }) =>
      item?.startsWith("belt"),
    );
    expect(rows.map((row) => [row["length mm"], row.teeth, row["used by"], row.notes])).toEqual([
      ["300.4", "150", "loop high", "no loop that is sold fits: length as placed"],
      ["852", "426", "loop low", ""],
    ]);
  });

  test("without spares nothing is added, and packs still are whole", () => {
    const stage = handmade();
    const plan = { ...stage.plan, stock: { ...stage.plan.stock, spares: false } };
    const parts = [{ name: "x", design: design({ item: "M4 nut", count: 11 }) }];
    const [nut] = listed(hardwareCsv({ ...stage, plan }, parts)).filter(({ item }) => item === "M4 nut");
    expect(nut).toMatchObject({ needed: "11", spares: "0", pack: "25", buy: "25" });
  });

  test("text that a table program would take for a formula, commas and quotes come through as text", () => {
    const odd = ["=1+2", "-3 and more", 'ring 1/2", thin', "two\r\nlines", "@x", "\t=1", "\r=1+2", "\n=1+2", "+1-2"];
    const rows = listed(
      hardwareCsv(handmade(), [{ name: "p", design: design(...odd.map((item) => ({ item, count: 1 }))) }]),
    );
    const items = rows.map(({ item }) => item);
    for (const item of [
      'ring 1/2", thin',
      "two\r\nlines",
      " =1+2",
      " -3 and more",
      " @x",
      " \t=1",
      " \r=1+2",
      " \n=1+2",
      " +1-2",
    ])
      expect(items).toContain(item);
  });

  test("any words are read back as they were", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", minLength: 1 }), (note) => {
        const text = hardwareCsv(handmade(), [{ name: "p", design: design({ item: "thing", count: 1, note }) }]);
        const [thing] = listed(text).filter(({ item }) => item === "thing");
        const meant = /^[=+\-@\t\r\n]/.test(note) && !/^-?\d+(?:\.\d+)?$/.test(note) ? ` ${note}` : note;
        expect(thing?.notes).toBe(meant);
      }),
    );
  });

  test("spares are a tenth, at least one, of small things only; all is bought that is needed", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.constantFrom("M3 nut", "bearing 608"), (count, item) => {
        const [one] = grouped([{ item, count, usedBy: ["x"] }], true);
        const spares = item === "M3 nut" ? Math.max(1, Math.ceil(count / 10)) : 0;
        expect(one?.spares).toBe(spares);
        expect(one?.buy).toBeGreaterThanOrEqual(count + spares);
        expect((one?.buy ?? 0) % (one?.pack ?? 1)).toBe(0);
      }),
    );
  });
});

describe("stock bars", () => {
  test("three cuts of 600 and their saw cuts take a bar of 2000; four take a second one", () => {
    expect(stockBars([600, 600, 600])).toEqual([{ length: 2000, cuts: [600, 600, 600] }]);
    expect(stockBars([500])).toEqual([{ length: 500, cuts: [500] }]);
    // 500 + 500 need 1003 with the saw.
    expect(stockBars([500, 500])).toEqual([{ length: 1500, cuts: [500, 500] }]);
    expect(stockBars([600, 600, 600, 600]).map(({ length }) => length)).toEqual([2000, 1000]);
    expect(stockBars([7000])).toEqual([{ length: 7000, cuts: [7000] }]);
  });

  test("every cut is there once, and fits with the saw's width between", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 20, max: 2500 }), { maxLength: 25 }), (cuts) => {
        const bars = stockBars(cuts);
        expect(bars.flatMap((bar) => bar.cuts).sort()).toEqual([...cuts].sort());
        for (const bar of bars) {
          const taken = bar.cuts.reduce((sum, cut) => sum + cut, 0) + 3 * (bar.cuts.length - 1);
          expect(taken).toBeLessThanOrEqual(bar.length);
        }
      }),
    );
  });
});

describe("the report as JSON", () => {
  const stage = handmade({ sections: [SECTION] });
  const text = reportJson({ name: "wide", version: "9.9.9", stage, parts: [] });
  const data = JSON.parse(text) as {
    madeBy: string;
    sections: { facts: Record<string, unknown>[]; lines: string[] }[];
  };

  test("says who made it within the first letters, by which the program knows its files", () => {
    expect(text.slice(0, 200)).toContain("tramwright 9.9.9");
    expect(data.madeBy).toBe("tramwright 9.9.9");
  });

  test("has every number with its limit and its margin", () => {
    const facts = data.sections[0]?.facts ?? [];
    expect(facts.map(({ key, value, margin }) => [key, value, margin ?? null])).toEqual([
      ["screw.A.share", 23.456, 0.53088],
      ["stage.weight", 61.2, null],
      ["screw.C.column", 1.5, -0.25],
      ["print.shift", 0, 1],
    ]);
    expect(data.sections[0]?.lines).toEqual(SECTION.lines);
  });

  test("binary noise does not reach it", () => {
    const noisy = { ...SECTION, facts: [{ key: "a", label: "a", value: 0.1 + 0.2, unit: "mm" as const }] };
    expect(reportJson({ name: "x", version: "1", stage: handmade({ sections: [noisy] }), parts: [] })).toContain(
      '"value": 0.3,',
    );
  });
});

describe("the set of a machine", () => {
  const stage = handmade({
    parts: [placedPart("spacer-a", "wheel-spacer"), placedPart("knob", "thumb-wheel", {}, ["plate", "mounts", "one"])],
    sections: [SECTION],
  });
  const parts = stageParts(stage, () => printing, "1.2.3");
  const fault = {
    ...stageDefect("bodies-clash", { level: "error", path: ["motor"], says: "a and b", set: "motor: at" }),
    stops: ["knob"],
  };
  const assembly = { key: "0123abcd", found: [fault] };
  const set = () => setFiles({ name: "wide", stage, parts: builtParts(parts), assembly, version: "1.2.3" });
  const files = set();

  test("ends with a manifest that lists all other files: name, bytes, SHA-256, hash of the part", () => {
    expect(files.at(-1)?.name).toBe("manifest.json");
    const manifest = JSON.parse(new TextDecoder().decode(files.at(-1)?.bytes)) as {
      files: { name: string; bytes: number; sha256: string; part?: string }[];
    };
    const others = files.slice(0, -1);
    expect(manifest.files.map(({ name }) => name).sort()).toEqual(others.map(({ name }) => name).sort());
    for (const { name, bytes } of others) {
      const entry = manifest.files.find((file) => file.name === name);
      expect(entry?.bytes).toBe(bytes.length);
      expect(entry?.sha256).toBe(createHash("sha256").update(bytes).digest("hex"));
      expect(entry?.part).toBe(
        name.startsWith("parts/") ? parts.find(({ request }) => name.includes(request.name))?.hash : undefined,
      );
    }
    expect(others.map(({ name }) => name).sort()).toEqual([
      ...[
        "belts.svg",
        "hardware.csv",
        "parts/knob.3mf",
        "parts/knob.md",
        "parts/knob.stl",
        "parts/spacer-a.3mf",
        "parts/spacer-a.md",
        "parts/spacer-a.stl",
        "report.json",
      ],
    ]);
  });

  test("is the same bytes every time", () => {
    const again = set();
    expect(again.map(({ name, bytes }) => [name, sha256Hex(bytes)])).toEqual(
      files.map(({ name, bytes }) => [name, sha256Hex(bytes)]),
    );
  });

  test("has the same files for a part that is built once with its twin as for one built by itself", () => {
    // The second is used harder, which changes its checks and its hash, and not its shape.
    const twins = [placedPart("one", "screw-foot"), placedPart("two", "screw-foot", { axialLoad: 51 })];
    const [one, two] = stageParts(handmade({ parts: twins }), () => printing, "1.2.3");
    if (one === undefined || two === undefined) throw new Error("two parts were asked for");
    const [alone] = builtParts([two]);
    const [, together] = builtParts([one, two]);
    expect(together).toEqual(alone);
    expect(one.hash).not.toBe(two.hash);
    expect(bodies(one, two)).toHaveLength(bodies(one).length);
    const other = placedPart("three", "screw-foot", { label: "other" });
    const [three] = stageParts(handmade({ parts: [other] }), () => printing, "1.2.3");
    if (three === undefined) throw new Error("a part was asked for");
    expect(bodies(one, three)).toHaveLength(2 * bodies(one).length);
  });

  test("tells of clashes between bodies with what is told of the machine", () => {
    const bytes = files.find(({ name }) => name === "report.json")?.bytes;
    expect(JSON.parse(new TextDecoder().decode(bytes))).toMatchObject({ messages: [fault] });
  });

  test("its manifest is read back as it was written; other texts are none", () => {
    const text = new TextDecoder().decode(files.at(-1)?.bytes);
    const manifest = readManifest(text);
    expect(manifest && manifestText(manifest)).toBe(text);
    expect(manifest?.assembly).toEqual(assembly);
    const data = JSON.parse(text) as Record<string, unknown> & { files: object[]; parts: object[] };
    const wrong = [
      ...["", "{", "[]", "null", "{}"],
      JSON.stringify({ ...data, madeBy: 1 }),
      JSON.stringify({ ...data, files: [{ ...data.files[0], name: "../../etc/passwd" }] }),
      JSON.stringify({ ...data, files: [{ ...data.files[0], name: "parts/../x.stl" }] }),
      JSON.stringify({ ...data, files: [{ ...data.files[0], bytes: "12" }] }),
      JSON.stringify({ ...data, parts: [{ ...data.parts[0], pieces: 3 }] }),
      JSON.stringify({ ...data, parts: [{ ...data.parts[0], found: [{ name: "x" }] }] }),
      JSON.stringify({ ...data, assembly: { key: 1, found: [] } }),
      JSON.stringify({ ...data, assembly: { key: "a", found: [{ ...fault, stops: undefined }] } }),
      JSON.stringify({ ...data, assembly: { key: "a", found: [{ stops: [] }] } }),
    ];
    for (const one of wrong) expect(readManifest(one), one.slice(0, 80)).toBeUndefined();
  });
});
