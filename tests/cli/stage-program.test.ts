import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { appendFileSync, existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { stringify } from "yaml";
import { WIDE } from "../support/plans.ts";
import { folderWith, PROGRAM, run } from "./program.ts";

const PLAN = stringify({ format: 1, stage: "wide", ...WIDE });
const SHIPPED = readdirSync("presets/stages").map((name) => resolve("presets/stages", name));

/** Expects a set that is whole: each file of the manifest with its bytes, and nothing half done beside it. */
function expectWhole(folder: string): void {
  const all = readdirSync(folder, { recursive: true, encoding: "utf8" });
  expect(all.filter((name) => name.includes(".tramwright-"))).toEqual([]);
  const manifest = JSON.parse(readFileSync(join(folder, "manifest.json"), "utf8")) as {
    files: { name: string; bytes: number; sha256: string }[];
  };
  expect(manifest.files.length).toBeGreaterThan(1);
  for (const { name, bytes, sha256 } of manifest.files) {
    const file = readFileSync(join(folder, name));
    expect(file.length).toBe(bytes);
    expect(createHash("sha256").update(file).digest("hex")).toBe(sha256);
  }
}

describe.each(SHIPPED)("%s", (path) => {
  test("is made, checked and reported, each time with the same words and bytes", () => {
    const folder = folderWith({});
    const first = run(["make", path], folder);
    expect(first.err).not.toContain("a fault of ours");
    expect(first.code).toBe(0);
    const [name = ""] = readdirSync(join(folder, "out"));
    expectWhole(join(folder, "out", name));
    const list = readFileSync(join(folder, "out", name, "hardware.csv"), "utf8");
    expect(run(["make", path], folder).code).toBe(0);
    expect(readFileSync(join(folder, "out", name, "hardware.csv"), "utf8")).toBe(list);
    const report = run(["report", path, "-q"], folder);
    expect([report.code, report.out.startsWith(`${name}: `)]).toEqual([0, true]);
    expect(report.out.split("\n").filter((line) => line.length > 100)).toEqual([]);
    expect(run(["check", path], folder).out).toContain("defect  typical-value-not-measured");
  });

  test("compared with itself nothing is printed again", () => {
    const { code, out } = run(["compare", path, path]);
    expect(code).toBe(0);
    expect(out).toContain("0 parts to print: about 0.0 h");
    expect(out).not.toMatch(/reprint|drop|buy|over /);
  });
});

describe("one line of a plan changed with --set", () => {
  const folder = folderWith({ "plan.yaml": PLAN });

  test.each([
    [["--set", "screws.A.at=[150, 70]"], 0, ""],
    [["--set", "bars.arm-front.bar.width=29.9"], 0, ""],
    [["--set", "bars.front.bar.width=30.1"], 1, "front and left share 45.0 mm3"],
    [["--set", "motor.motor.shaftLength=43"], 0, ""],
    [["--set", "motor.motor.shaftLength=22"], 1, "needs the shaft up to 27.5 mm"],
    [["--set", "motor.pulleys.0.gap=2"], 0, ""],
    [["--set", "foot.wall=6"], 0, ""],
    [["--set", "motor.pulleys.5.gap=2"], 2, "entries are counted from 0: 0 to 2"],
    [["--set", "motor.pulleys.first.gap=2"], 2, "first is no place in the list"],
    [["--set", "plate.thicknes=6"], 1, "thicknes is not a key here"],
    [["--set", "foot.wal=6"], 1, "wal is not a key here"],
    [["--set", "__proto__.x=6"], 2, "__proto__ is not a key"],
  ])("%j ends with %i", (words, code, says) => {
    const ran = run(["report", "plan.yaml", ...words], folder);
    expect(ran.code).toBe(code);
    expect(ran.err).toContain(says);
  });

  test("make says of a heavier print, which shapes nothing, what compare says: no part is printed again", () => {
    const own = folderWith({ "plan.yaml": PLAN });
    expect(run(["make", "plan.yaml", "-q"], own).code).toBe(0);
    const heavier = ["plan.yaml", "--set", "print=2.1 kg"];
    const { out } = run(["compare", ...heavier], own);
    expect(out).toMatch(/ stay, 0 parts to print/);
    expect(out).toContain("the same shape");
    // The same bodies of another plastic are other parts.
    expect(run(["compare", "plan.yaml", "--set", "foot.material=ASA"], own).out).toMatch(/foot-a +reprint/);
    expect(run(["make", ...heavier], own).out).toMatch(/^ {2}reprint {3}nothing: \d+ parts are as before$/m);
    // A part whose sheet somebody wrote in is told even to who wants to hear little.
    appendFileSync(join(own, "out/wide/parts/foot-a.md"), "printed on Monday");
    expect(run(["make", "plan.yaml", "-q"], own).err).toContain("foot-a.md.changed: what somebody had changed");
  });

  test("compare takes one plan and what --set makes of it, and names what to buy", () => {
    const { code, out } = run(["compare", "plan.yaml", "--set", "screws.A.length=500"], folder);
    expect(code).toBe(0);
    expect(out).toContain("over 1 x lead screw Tr8x2, 420 mm");
    expect(out).toContain("buy 1 x lead screw Tr8x2, 500 mm");
  });
});

describe("a plan with an error", () => {
  const lost = PLAN.replace("- motor\n      - C", "- motor\n      - Q");
  const folder = folderWith({ "plan.yaml": PLAN, "lost.yaml": lost, "again.yaml": lost });
  const uncertain = "the two cannot be compared part by part until the errors are mended";

  test.each([
    ["plan.yaml", "lost.yaml"],
    ["lost.yaml", "plan.yaml"],
  ])("%s compared with %s: what the error left out is neither new nor gone, nor bought", (old, next) => {
    const { code, out, err } = run(["compare", old, next], folder);
    expect(err).toContain("there is no motor, screw or idler Q");
    expect(code).toBe(1);
    expect(out.replace(/\n/g, " ")).toContain(`${uncertain}; not compared: foot-c; what to buy is not told`);
    expect(out).toMatch(/foot-a +keep/);
    expect(out).not.toMatch(/drop|it is new|^ +(buy|over) /m);
  });

  test("where both lack the same, what to buy is not told either", () => {
    const { code, out } = run(["compare", "lost.yaml", "again.yaml", "--json"], folder);
    const { parts, ...left } = JSON.parse(out) as { parts: { name: string; action: string }[] };
    expect([code, left]).toEqual([1, { buy: null, notCompared: [] }]);
    expect(new Set(parts.map(({ action }) => action))).toEqual(new Set(["keep"]));
  });

  test("an error that leaves out nothing leaves nothing uncertain", () => {
    const words = ["compare", "plan.yaml", "--set", "motor.motor.shaftLength=22"];
    const { code, out } = run(words, folder);
    expect([code, out.includes(uncertain)]).toEqual([1, false]);
    expect(out).toContain("0 parts to print");
  });

  test("tram tells what to turn and ends with 1", () => {
    const { code, out } = run(["tram", "lost.yaml", "--probe", "200,130,0", "560,130,0.2", "380,430,0"], folder);
    expect(code).toBe(1);
    expect(out).toContain("mount two: lower 0.20 mm");
  });
});

describe("exit codes", () => {
  const folder = folderWith({
    "plan.yaml": PLAN,
    "part.yaml": "format: 1\npart: wheel-spacer\n",
    "wrong.yaml": PLAN.replace("lift: 220", "lift: 9 m"),
    "broken.yaml": "format: [",
    "no-printer.yaml": `${PLAN}printers: { screw-foot: nowhere.yaml }\n`,
  });
  test.each([
    [["report"], 2, "report takes the plan of one stage"],
    [["report", "plan.yaml", "plan.yaml"], 2, "report takes the plan of one stage"],
    [["report", "nowhere.yaml"], 3, "cannot read nowhere.yaml"],
    [["report", "screw-foot"], 2, "screw-foot is a family of parts"],
    [["report", "part.yaml"], 1, "this file describes a part, and a whole stage is wanted"],
    [["report", "wrong.yaml"], 1, "is 9 m (9000 mm), outside 1 to"],
    [["report", "broken.yaml"], 1, "broken.yaml:1:"],
    [["report", "no-printer.yaml"], 1, "the printer file nowhere.yaml cannot be read"],
    [["make", "no-printer.yaml"], 1, "nothing written: 1 error"],
    [["tram", "plan.yaml"], 2, "tram needs three probes or more, and there are 0"],
    [["tram", "wrong.yaml", "--probe", "1,2,3", "4,5,6", "7,8,9"], 1, "is 9 m (9000 mm), outside 1 to"],
    [["tram", "plan.yaml", "--probe", "200,200,0", "300,300,0", "400,400,0"], 2, "the probes lie on a line"],
    [["compare", "plan.yaml"], 2, "compare takes two plans"],
    [["compare", "plan.yaml", "wrong.yaml"], 1, "wrong.yaml:"],
    [["make", "plan.yaml", "part.yaml", "--json"], 2, "--json tells of parts or of stages"],
    [["explain", "no.such.number", "--preset", "plan.yaml"], 2, "no.such.number is not known"],
  ])("%j ends with %i", (words, code, says) => {
    const ran = run(words, folder);
    expect(ran.err).toContain(says);
    expect(ran.code).toBe(code);
  });

  test("probes with a minus are read", () => {
    const words = ["--probe", "200,130,0", "560,130,0", "-20,430,-0.1"];
    const { code, err } = run(["tram", "plan.yaml", ...words], folder);
    expect(code).toBe(2);
    expect(err).toContain("--probe -20,430,-0.1 lies off the plate: x goes from 170 to 590 mm");
  });

  test("parts and stages are made in one run", () => {
    const both = folderWith({ "plan.yaml": PLAN, "part.yaml": "format: 1\npart: wheel-spacer\n" });
    expect(run(["make", "plan.yaml", "part.yaml"], both).code).toBe(0);
    expect(readdirSync(join(both, "out")).sort()).toEqual(["part.3mf", "part.md", "part.stl", "wide"]);
  });

  test("a plan from standard input is read once", () => {
    const { code, err } = run(["check", "-"], folder, {}, PLAN.replace("lift: 220", "lfit: 220"));
    expect(code).toBe(1);
    expect(err + run(["check", "-"], folder, {}, "").out).toContain("the file is empty");
  });
});

test("Ctrl-C at any time leaves a set that is whole", async () => {
  const folder = folderWith({ "plan.yaml": PLAN });
  expect(run(["make", "plan.yaml"], folder).code).toBe(0);
  const set = join(folder, "out", "wide");
  for (const delay of [5, 60, 120, 180, 260, 400]) {
    writeFileSync(join(folder, "plan.yaml"), PLAN.replace("lift: 220", `lift: ${220 + delay / 10}`));
    const child = spawn("node", [PROGRAM, "make", "plan.yaml"], { cwd: folder, stdio: "ignore" });
    const ended = new Promise<number | null>((resume) => child.once("exit", (code) => resume(code)));
    await new Promise((go) => setTimeout(go, delay));
    child.kill("SIGINT");
    expect([null, 0, 130]).toContain(await ended);
    expect(existsSync(set)).toBe(true);
    expectWhole(set);
  }
});
