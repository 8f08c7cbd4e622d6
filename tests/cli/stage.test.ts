import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeEach, describe, expect, test, vi } from "vitest";
import { stringify } from "yaml";
import { oneBuilder } from "../../src/build/builders.ts";
import { makeStages } from "../../src/cli/commands/make-stage.ts";
import { isTrouble, painter } from "../../src/cli/io.ts";
import { readTarget } from "../../src/cli/load.ts";
import { withReason } from "../../src/stage/acceptance.ts";
import type { PlacedPart, Stage } from "../../src/stage/index.ts";
import { kernel } from "../support/kernel.ts";
import { WIDE } from "../support/plans.ts";
import { placedPart } from "../support/stages.ts";
import { folderWith } from "./program.ts";

/** What the derivation adds in these tests: parts made by hand, so that the files do not hang on the machine's arithmetic. */
const added = vi.hoisted(() => ({ change: (stage: unknown) => stage }));

vi.mock("../../src/stage/index.ts", async (original) => {
  const real = await original<typeof import("../../src/stage/index.ts")>();
  return {
    ...real,
    deriveStage: (...given: Parameters<typeof real.deriveStage>) => added.change(real.deriveStage(...given)),
  };
});

const PLAN = stringify({ format: 1, stage: "wide", printer: "printer.yaml", ...WIDE });
const PRINTER = "format: 1\nprinter: mine\nsettings: {}\n";

/** Beside the machine, each part in a place of its own. */
const beside = (part: PlacedPart, x: number): PlacedPart => ({ ...part, placement: { origin: [x, 0, 0], angle: 0 } });
const spacer = (name: string, parameters = {}) =>
  beside(
    placedPart(name, "wheel-spacer", { length: 8, ...parameters }, ["screws", "A"]),
    -100 * (name.charCodeAt(7) - 95),
  );
const knob = beside(placedPart("knob", "thumb-wheel", {}, ["plate", "mounts", "one"]), -100);

/** Stands in the plan's file, since a plan that has not changed is not worked out again. */
let machines = 0;

/** The machine has these parts and nothing to complain of, unless told. */
function machineWith(parts: Stage["parts"], diagnostics: Stage["diagnostics"] = []): void {
  machines++;
  added.change = (stage) => {
    const { plan } = stage as Stage;
    return { ...(stage as Stage), parts, diagnostics: diagnostics.map((one) => withReason(one, plan)) };
  };
}

beforeEach(() => machineWith([spacer("spacer-a"), knob]));

interface Said {
  readonly code: number | string;
  readonly out: string[];
  readonly err: string[];
}

async function makeIn(folder: string, more: Record<string, unknown> = {}): Promise<Said> {
  const said: { out: string[]; err: string[] } = { out: [], err: [] };
  const io = {
    out: (line: string) => said.out.push(...line.split("\n")),
    err: (line: string) => said.err.push(...line.split("\n")),
    paint: painter("never", {}, false),
  };
  const usual = { set: [], output: join(folder, "out"), printer: undefined, json: false, quiet: false, force: false };
  const plan = join(folder, "plan.yaml");
  writeFileSync(plan, `${readFileSync(plan, "utf8").replace(/# machine \d+\n$/, "")}# machine ${machines}\n`);
  const targets = [readTarget(plan)];
  try {
    const args = { ...usual, dry: false, version: "1.2.3", targets, ...more };
    return {
      code: await makeStages(
        args,
        oneBuilder(() => Promise.resolve(kernel)),
        io,
      ),
      ...said,
    };
  } catch (thrown) {
    if (isTrouble(thrown)) return { code: `${thrown.exit}: ${thrown.trouble}`, ...said };
    throw thrown;
  }
}

const fresh = () => folderWith({ "plan.yaml": PLAN, "printer.yaml": PRINTER });

/** Every file below a folder with its text, by its name. */
function filesIn(folder: string): Record<string, string> {
  const names = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) =>
    statSync(join(folder, name)).isFile(),
  );
  return Object.fromEntries(names.sort().map((name) => [name, readFileSync(join(folder, name), "latin1")]));
}

const SET = [
  "belts.svg",
  "hardware.csv",
  "manifest.json",
  "parts/knob.3mf",
  "parts/knob.md",
  "parts/knob.stl",
  "parts/spacer-a.3mf",
  "parts/spacer-a.md",
  "parts/spacer-a.stl",
  "report.json",
];

describe("make of a stage", () => {
  test("writes all parts, the numbers, the hardware list and the manifest", async () => {
    const folder = fresh();
    const { code, out, err } = await makeIn(folder);
    expect(code).toBe(0);
    expect(Object.keys(filesIn(join(folder, "out", "wide")))).toEqual(SET);
    expect(out.join("\n")).toContain(`made      1 x ${folder}/out/wide/parts/knob.stl`.slice(0, 30));
    expect(out.join("\n")).toContain("report.json, hardware.csv, belts.svg, manifest.json in");
    expect(err.at(-1)).toMatch(/^2 parts, 10 files written to .*out\/wide: 0 errors, 0 warnings$/);
  });

  test("a second run keeps every part, says so, and leaves the bytes as they are", async () => {
    const folder = fresh();
    await makeIn(folder);
    const before = filesIn(join(folder, "out"));
    const stamp = statSync(join(folder, "out/wide/parts/knob.stl")).mtimeMs;
    const { code, out, err } = await makeIn(folder);
    expect(code).toBe(0);
    expect(out.filter((line) => line.includes("unchanged, not built again"))).toHaveLength(2);
    expect(err.at(-1)).toMatch(/^nothing has changed, 2 parts kept in .*out\/wide: 0 errors, 0 warnings$/);
    expect(filesIn(join(folder, "out"))).toEqual(before);
    expect(statSync(join(folder, "out/wide/parts/knob.stl")).mtimeMs).toBe(stamp);
  });

  test("parts that are one body are told together, in the manifest as well, and again when nothing has changed", async () => {
    machineWith([spacer("spacer-a"), spacer("spacer-b"), knob]);
    const folder = fresh();
    const kinds = () => {
      const { parts } = JSON.parse(readFileSync(join(folder, "out/wide/manifest.json"), "utf8")) as {
        parts: { name: string; sameAs?: string }[];
      };
      return parts.map(({ name, sameAs }) => [name, sameAs]);
    };
    const told = ["  alike     spacer-a, spacer-b: the same body, print 2 of one of them"];
    const alike = ({ out }: Said) => out.filter((line) => line.includes("alike"));
    expect(alike(await makeIn(folder))).toEqual(told);
    const both = [
      ["spacer-a", undefined],
      ["spacer-b", "spacer-a"],
      ["knob", undefined],
    ];
    expect(kinds()).toEqual(both);
    const again = await makeIn(folder);
    expect(again.err.at(-1)).toMatch(/^nothing has changed/);
    expect(alike(again)).toEqual(told);
    const { out } = await makeIn(folder, { json: true, dry: true });
    expect((JSON.parse(out.join("\n")) as { stages: { alike: unknown }[] }).stages[0]?.alike).toEqual([
      ["spacer-a", "spacer-b"],
    ]);
    // The first of its kind goes: what is kept of the other one no longer names it.
    machineWith([spacer("spacer-b"), knob]);
    expect(alike(await makeIn(folder))).toEqual([]);
    expect(kinds()).toEqual([
      ["spacer-b", undefined],
      ["knob", undefined],
    ]);
  });

  test("a plan with another comment only is worked out again, and every part kept", async () => {
    const folder = fresh();
    await makeIn(folder);
    const before = filesIn(join(folder, "out/wide"));
    const stamp = statSync(join(folder, "out/wide/parts/knob.stl")).mtimeMs;
    machineWith([spacer("spacer-a"), knob]);
    const { err } = await makeIn(folder);
    expect(err.at(-1)).toContain("2 parts, 2 of them kept, 4 files written");
    const after = filesIn(join(folder, "out/wide"));
    expect({ ...after, "manifest.json": "" }).toEqual({ ...before, "manifest.json": "" });
    expect(statSync(join(folder, "out/wide/parts/knob.stl")).mtimeMs).toBe(stamp);
  });

  test("feet that would be printed again: the command that knows a way with other rings is named", async () => {
    const folder = fresh();
    const foot = (beltPlane: number) => {
      const part = placedPart("foot-a", "screw-foot", { beltPlane, thrust: "collar" }, ["screws", "A"]);
      return { ...part, placement: { origin: [-300, 0, 0] as const, angle: 0 } };
    };
    machineWith([foot(32)]);
    expect((await makeIn(folder)).out.join(" ")).not.toContain("compare");
    machineWith([foot(33)]);
    const told = (await makeIn(folder)).out.join(" ").replace(/\s+/g, " ");
    expect(told).toMatch(
      /reprint foot-a: about .* or tramwright compare <plan as before> .*plan.yaml says whether the foot/,
    );
  });

  test("a part that changed is built, the other is kept", async () => {
    const folder = fresh();
    await makeIn(folder);
    const before = filesIn(join(folder, "out/wide"));
    machineWith([spacer("spacer-a", { length: 9 }), knob]);
    const { out } = await makeIn(folder);
    expect(out.join("\n")).toMatch(/^ {2}reprint {3}spacer-a: about \d\.\d h; 1 part is as before$/m);
    expect(out.filter((line) => line.includes("not built again")).join()).toContain("knob.stl");
    expect(out.filter((line) => line.includes("not built again"))).toHaveLength(1);
    const after = filesIn(join(folder, "out/wide"));
    expect(after["parts/knob.stl"]).toBe(before["parts/knob.stl"]);
    expect(after["parts/spacer-a.stl"]).not.toBe(before["parts/spacer-a.stl"]);
    // What the manifest says is the same as if all had been made at once.
    const elsewhere = fresh();
    await makeIn(elsewhere);
    expect(filesIn(join(elsewhere, "out/wide"))).toEqual(after);
  });

  test.each([
    ["was cut short", (path: string) => writeFileSync(path, readFileSync(path).subarray(0, 500))],
    ["was changed in place", (path: string) => writeFileSync(path, readFileSync(path).fill(1, 400, 410))],
  ])("a file that %s is made again", async (_, damage) => {
    const folder = fresh();
    await makeIn(folder);
    const path = join(folder, "out/wide/parts/knob.stl");
    const whole = readFileSync(path);
    damage(path);
    const { out } = await makeIn(folder);
    expect(out.filter((line) => line.includes("not built again"))).toHaveLength(1);
    expect(readFileSync(path).equals(whole)).toBe(true);
  });

  test("another version of the program, or --force, builds all again", async () => {
    const folder = fresh();
    await makeIn(folder);
    for (const more of [{ version: "1.2.4" }, { force: true, version: "1.2.4" }]) {
      const { out } = await makeIn(folder, more);
      expect(out.filter((line) => line.includes("not built again"))).toEqual([]);
    }
  });

  test("a manifest that is no manifest is not believed", async () => {
    const folder = fresh();
    await makeIn(folder);
    writeFileSync(join(folder, "out/wide/manifest.json"), '{"madeBy":"tramwright 1.2.3","files":7}');
    // Without the manifest nobody knows whose the list is.
    expect((await makeIn(folder)).code).toMatch(/^3: .*hardware\.csv, .*belts\.svg were not written by tramwright/);
    const { code, out } = await makeIn(folder, { force: true });
    expect([code, out.filter((line) => line.includes("not built again"))]).toEqual([0, []]);
  });

  test("a part with an error is not written, and the others are", async () => {
    const folder = fresh();
    machineWith([spacer("spacer-a", { outside: 5.2 }), knob]);
    const { code, err } = await makeIn(folder);
    expect(code).toBe(1);
    expect(Object.keys(filesIn(join(folder, "out/wide")))).toEqual(SET.filter((name) => !name.includes("spacer-a")));
    const plan = PLAN.split("\n");
    const line = plan.indexOf("  A:") + 1;
    expect(err.join("\n")).toMatch(new RegExp(`plan\\.yaml:${line}:3: error: spacer-a: `));
  });

  test("what two parts have alike is told once, with both names", async () => {
    const folder = fresh();
    const bad = { outside: 5.2 };
    machineWith([spacer("spacer-a", bad), { ...spacer("spacer-b", bad), path: ["screws", "B"] }, knob]);
    const { err } = await makeIn(folder);
    const errors = err.filter((line) => line.includes(": error: "));
    expect(errors.length).toBeGreaterThan(0);
    expect(errors.every((line) => line.includes("error: spacer-a, spacer-b:"))).toBe(true);
  });

  test.each([
    ["of the whole machine stops all parts", [], 0],
    ["of one thing stops the parts of that thing", ["screws", "A", "at"], 1],
  ])("an error %s", async (_, path, good) => {
    const folder = fresh();
    const error = { name: "x", level: "error" as const, path, says: "it does not go", why: "because", set: "another" };
    machineWith([spacer("spacer-a"), knob], [error]);
    const { code, err } = await makeIn(folder);
    expect(code).toBe(1);
    expect(err.at(-1)).toContain(good === 0 ? "nothing written: 1 error" : "1 part, 7 files written");
    expect(readdirSync(folder).includes("out")).toBe(good > 0);
  });

  test("files of a part that the machine has no more go, others stay", async () => {
    const folder = fresh();
    await makeIn(folder);
    const set = join(folder, "out/wide");
    writeFileSync(join(set, "parts", "notes.txt"), "mine");
    machineWith([knob]);
    const { out } = await makeIn(folder);
    expect(out.join("\n")).toContain("removed   parts/spacer-a.3mf, parts/spacer-a.md, parts/spacer-a.stl");
    const left = [...SET.filter((name) => !name.includes("spacer-a")), "parts/notes.txt"].sort();
    expect(Object.keys(filesIn(set))).toEqual(left);
  });

  test("a part's file that somebody changed is not removed", async () => {
    const folder = fresh();
    await makeIn(folder);
    writeFileSync(join(folder, "out/wide/parts/spacer-a.md"), "my notes");
    machineWith([knob]);
    await makeIn(folder);
    expect(filesIn(join(folder, "out/wide"))["parts/spacer-a.md"]).toBe("my notes");
  });
});

describe("the assembled machine", () => {
  /** The machine as it is, with two spacers in one another beside it. */
  const inOneAnother = () => machineWith([spacer("spacer-a"), beside(spacer("spacer-b"), -195), knob]);

  test("parts that stand in one another are told with both names, place and depth, and stop only themselves", async () => {
    inOneAnother();
    const folder = fresh();
    const { code, err } = await makeIn(folder);
    expect(code).toBe(1);
    // Spacers are 10 wide and 8 high, and their middles 5 apart.
    const line = PLAN.split("\n").indexOf("  A:") + 1;
    expect(err.join(" ").replace(/ +/g, " ")).toMatch(
      new RegExp(
        `plan\\.yaml:${line}:3: error: spacer-a and spacer-b stand in one another at the bottom of the travel: ` +
          "\\d+\\.\\d\\d mm deep at x -197\\.5, y 0\\.0, z 4\\.0, a box of",
      ),
    );
    expect(err.join("\n")).toContain("bodies-clash");
    expect(Object.keys(filesIn(join(folder, "out/wide")))).toEqual(SET.filter((name) => !name.includes("spacer")));
  });

  test("a second run tells the same without testing again, and a moved part is tested", async () => {
    inOneAnother();
    const folder = fresh();
    const first = await makeIn(folder);
    const second = await makeIn(folder);
    expect(second.err.slice(0, -1)).toEqual(first.err.slice(0, -1));
    const path = join(folder, "out/wide/manifest.json");
    // A finding that only the manifest holds is told: it was not looked for again.
    writeFileSync(path, readFileSync(path, "utf8").replaceAll("spacer-a and spacer-b stand", "two dragons stand"));
    expect((await makeIn(folder)).err.join("\n")).toContain("two dragons stand");
    machineWith([spacer("spacer-a"), spacer("spacer-b"), knob]);
    expect((await makeIn(folder)).code).toBe(0);
    inOneAnother();
    expect((await makeIn(folder)).err.join("\n")).toContain("spacer-a and spacer-b stand");
  });

  test("what is accepted for the machine is told as accepted, and stops nothing", async () => {
    inOneAnother();
    const because = "these two are one print";
    const accept = [{ part: "stage", check: "bodies-clash", because }];
    const folder = folderWith({ "plan.yaml": `${PLAN}${stringify({ accept })}`, "printer.yaml": PRINTER });
    const { code, err } = await makeIn(folder);
    expect(code).toBe(0);
    const said = err.join(" ").replace(/\s+/g, " ");
    expect(said).toContain("warning: spacer-a and spacer-b stand in one another");
    expect(said).toContain(`(accepted: ${because})`);
    expect(err.at(-1)).toContain("3 parts, 13 files written");
    expect(readFileSync(join(folder, "out/wide/report.json"), "utf8")).toContain(`(accepted: ${because})`);
  });

  test("the drawing of the belts is listed in the manifest, and a drawing somebody changed is left alone", async () => {
    const folder = fresh();
    await makeIn(folder);
    const path = join(folder, "out/wide/belts.svg");
    const manifest = readFileSync(join(folder, "out/wide/manifest.json"), "utf8");
    expect(manifest).toContain('"belts.svg"');
    expect(readFileSync(path, "utf8")).toMatch(/^<\?xml [^>]*>\n<svg /);
    writeFileSync(path, `${readFileSync(path, "utf8")}<!-- mine -->`);
    expect((await makeIn(folder)).code).toMatch(/^3: .*belts\.svg was not written by tramwright/);
  });
});

describe("what blocks the writing leaves the old set as it was", () => {
  const change = () => machineWith([spacer("spacer-a", { length: 9 }), knob]);

  test("a hardware list with the builder's own notes", async () => {
    const folder = fresh();
    await makeIn(folder);
    const list = join(folder, "out/wide/hardware.csv");
    writeFileSync(list, `${readFileSync(list, "utf8")}my prices\r\n`);
    const before = filesIn(join(folder, "out"));
    change();
    expect((await makeIn(folder)).code).toMatch(/^3: .*hardware\.csv was not written by tramwright and is left alone/);
    expect(filesIn(join(folder, "out"))).toEqual(before);
    expect((await makeIn(folder, { force: true })).code).toBe(0);
  });

  test("a folder where a file should be", async () => {
    const folder = fresh();
    mkdirSync(join(folder, "out/wide/report.json"), { recursive: true });
    expect((await makeIn(folder)).code).toMatch(/^3: cannot write .*report\.json: it is a folder/);
    expect(filesIn(join(folder, "out"))).toEqual({});
  });

  test("a file where the folder of the parts should be", async () => {
    const folder = fresh();
    mkdirSync(join(folder, "out/wide"), { recursive: true });
    writeFileSync(join(folder, "out/wide/parts"), "a file");
    expect((await makeIn(folder)).code).toMatch(/^3: cannot write into .*: a file stands where a folder should be/);
    expect(filesIn(join(folder, "out"))).toEqual({ "wide/parts": "a file" });
  });
});

describe("check of a stage", () => {
  test("tells what make finds and writes nothing", async () => {
    const folder = fresh();
    const { code, out, err } = await makeIn(folder, { dry: true });
    expect(code).toBe(0);
    expect(out.join("\n")).toContain("would be  1 x ");
    const notes = out.filter((line) => line.includes(": note: sizes as usually sold, not measured: bar 30x30"));
    expect(notes).toHaveLength(1);
    expect(err.at(-1)).toBe("2 parts checked, nothing written: 0 errors, 0 warnings");
    expect(readdirSync(folder).sort()).toEqual(["plan.yaml", "printer.yaml"]);
  });

  test("two plans of one name are refused, each at its place", async () => {
    const folder = fresh();
    writeFileSync(join(folder, "other.yaml"), PLAN);
    const targets = ["plan.yaml", "other.yaml"].map((name) => readTarget(join(folder, name)));
    const { code, out } = await makeIn(folder, { dry: true, targets });
    expect(code).toBe(1);
    expect(out.filter((line) => line.includes(":2:8: error: "))).toHaveLength(2);
  });

  test("an acceptance of a part that the machine has not is an error with the nearest name", async () => {
    const accept = [{ part: "knop", check: "wall-too-thin", because: "tried it out" }];
    const folder = folderWith({ "plan.yaml": `${PLAN}${stringify({ accept })}`, "printer.yaml": PRINTER });
    const { code, out } = await makeIn(folder, { dry: true });
    expect(code).toBe(1);
    expect(out.join("\n")).toContain("the machine has no part knop");
    expect(out).toContain("  set     knob");
  });

  test("an acceptance of what nobody may accept stands at its own place in the list", async () => {
    const accept = [
      { part: "spacer-a", check: "wall-too-thin", because: "tried it out" },
      { part: "knob", check: "mesh-not-sound", because: "hope is enough" },
    ];
    const folder = folderWith({ "plan.yaml": `${PLAN}${stringify({ accept })}`, "printer.yaml": PRINTER });
    const text = readFileSync(join(folder, "plan.yaml"), "utf8").split("\n");
    const line = text.findIndex((one) => one.includes("mesh-not-sound")) + 1;
    const { out } = await makeIn(folder, { dry: true });
    expect(
      out.some((one) => one.includes(`plan.yaml:${line}:`) && one.includes("knob: mesh-not-sound cannot be accepted")),
    ).toBe(true);
  });

  test.each([
    ["loop-without-motor-pulley", "stage", "loop-without-motor-pulley cannot be accepted"],
    ["belts-too-near", "stage", "belts-too-near is no defect of a machine"],
    ["bodies-clash", "knob", "knob: bodies-clash is a defect of a machine, not of one thumb-wheel"],
  ])("an acceptance of %s for %s is an error at its place", async (check, part, says) => {
    const accept = [{ part, check, because: "tried it out" }];
    const folder = folderWith({ "plan.yaml": `${PLAN}${stringify({ accept })}`, "printer.yaml": PRINTER });
    const line = readFileSync(join(folder, "plan.yaml"), "utf8")
      .split("\n")
      .findIndex((one) => one.includes(`check: ${check}`));
    const { code, out } = await makeIn(folder, { dry: true });
    expect(code).toBe(1);
    const errors = out.filter((one) => one.includes(": error: "));
    expect(errors).toHaveLength(1);
    expect(errors[0]).toContain(`plan.yaml:${line + 1}:`);
    expect(out.join(" ").replace(/\s+/g, " ")).toContain(says);
  });

  test("an error of the machine that is accepted is a warning with the reason, and stops no part", async () => {
    const error = {
      ...{ name: "belts-too-close", level: "error" as const, path: ["loops", "low"] },
      ...{ says: "low and high rub", why: "they do", set: "gap: 3" },
    };
    machineWith([spacer("spacer-a"), knob], [error]);
    const accept = [{ part: "stage", check: "belts-too-close", because: "the belts never ran hotter" }];
    const folder = folderWith({ "plan.yaml": `${PLAN}${stringify({ accept })}`, "printer.yaml": PRINTER });
    expect((await makeIn(fresh(), { dry: true })).code).toBe(1);
    const { code, out, err } = await makeIn(folder, { dry: true });
    expect(code).toBe(0);
    expect(out.join(" ").replace(/\s+/g, " ")).toContain("low and high rub (accepted: the belts never ran hotter)");
    expect(err.at(-1)).toBe("2 parts checked, nothing written: 0 errors, 1 warning");
  });

  test("as JSON it is one document", async () => {
    const { out } = await makeIn(fresh(), { dry: true, json: true });
    const data = JSON.parse(out.join("\n")) as { stages: { stage: string; parts: { name: string }[] }[] };
    expect(data.stages[0]?.stage).toBe("wide");
    expect(data.stages[0]?.parts.map(({ name }) => name)).toEqual(["spacer-a", "knob"]);
  });
});
