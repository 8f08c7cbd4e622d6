import { createHash } from "node:crypto";
import { copyFileSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { unzipSync, type Zippable, zipSync } from "fflate";
import { beforeAll, describe, expect, test } from "vitest";
import { folderWith, fresh, run } from "./program.ts";

const PRESET = `format: 1
part: wheel-plate
name: cart
parameters:
  wheels: 4
  sandwich: true
  arm: { row: "20x20 slot 6", slotDepth: 6.05, measured: true }
`;

/** The files of a part with two bodies, made once. */
const made = folderWith({ "cart.yaml": PRESET });
beforeAll(() => {
  const { code, err } = run(["make", "cart.yaml", "-o", "."], made);
  expect(err).toMatch(/0 errors/);
  expect(code).toBe(0);
});

/** Returns a folder with copies of the part's files. */
function copies(): string {
  const folder = fresh();
  for (const name of readdirSync(made))
    if (/\.(3mf|stl|md)$/.test(name)) copyFileSync(join(made, name), join(folder, name));
  return folder;
}

const last = (text: string) => text.trimEnd().split("\n").at(-1);

/** Changes the model part of a package. */
function changeModel(path: string, change: (model: string) => string): void {
  const entries = unzipSync(readFileSync(path));
  const model = change(new TextDecoder().decode(entries["3D/3dmodel.model"]));
  const changed: Zippable = { ...entries, "3D/3dmodel.model": new TextEncoder().encode(model) };
  writeFileSync(path, zipSync(changed));
}

describe("rebuild", () => {
  test("says that all files are as they come out again, and what to measure first", () => {
    const { code, out, err } = run(["rebuild", "cart.3mf"], copies());
    expect(last(err)).toMatch(/^cart\.3mf: made again from preset [0-9a-f]{8}, \d files equal to the byte$/);
    expect(code).toBe(0);
    const stls = readdirSync(made).filter((name) => name.endsWith(".stl"));
    expect(stls.length).toBeGreaterThan(1);
    for (const name of [...stls, "cart.3mf", "cart.md"]) expect(out).toContain(`  equal     ${name}\n`);
    expect(out).toContain("measure before printing");
    expect(out).toMatch(/arm: 20x20 slot 6, here width 20, .*slotDepth\s+6\.05/s);
    expect(out).toContain("calipers: width and height across the faces");
    expect(out).toMatch(/--printer <file of yours>/);
  });

  test("names a file that differs, and ends with 1", () => {
    const folder = copies();
    const bytes = readFileSync(join(folder, "cart.stl"));
    bytes[200] = (bytes[200] ?? 0) ^ 1;
    writeFileSync(join(folder, "cart.stl"), bytes);
    const { code, out, err } = run(["rebuild", "cart.3mf"], folder);
    expect([code, last(err)]).toEqual([
      1,
      expect.stringMatching(/^cart\.3mf: 1 of \d files differs; it was made by version /),
    ]);
    expect(out).toContain("  differs   cart.stl\n");
  });

  test("names the solid that was changed inside the package", () => {
    const folder = copies();
    changeModel(join(folder, "cart.3mf"), (model) => model.replace(/<vertex x="[^"]+"/, '<vertex x="0.125"'));
    const { code, out } = run(["rebuild", "cart.3mf"], folder);
    expect(code).toBe(1);
    expect(out).toContain("  differs   cart.3mf: the solid cart\n");
  });

  test("makes what a changed preset says, and says that its text is not its own", () => {
    const folder = copies();
    changeModel(join(folder, "cart.3mf"), (model) => model.replace('"margin": 12', '"margin":  14'));
    const { code, out } = run(["rebuild", "cart.3mf"], folder);
    expect(code).toBe(1);
    expect(out).toMatch(/differs {3}cart\.3mf: the preset's text, which was not written like this;\s+the solid cart/);
    expect(out).toContain("  differs   cart.stl\n");
  });

  test("tells a file of another version, whose solids are the same, by that version", () => {
    const folder = copies();
    changeModel(join(folder, "cart.3mf"), (model) => model.replace(/tramwright \d+\.\d+\.\d+</, "tramwright 9.8.7<"));
    const { out, err, code } = run(["rebuild", "cart.3mf"], folder);
    expect(out).toContain("made by   tramwright 9.8.7, this is tramwright ");
    expect(out).toContain("how it is packed, or its picture");
    expect([code, last(err)]).toEqual([1, expect.stringContaining("it was made by version 9.8.7")]);
  });

  test("needs nothing beside the package, and reads one with another name", () => {
    const folder = fresh();
    copyFileSync(join(made, "cart.3mf"), join(folder, "Somebody's part.3MF"));
    const { code, out } = run(["rebuild", "Somebody's part.3MF"], folder);
    expect(code).toBe(0);
    expect(out).toContain("  equal     cart.3mf\n");
    expect(out).toContain("  not there cart.stl\n");
    expect(readdirSync(folder)).toEqual(["Somebody's part.3MF"]);
  });

  test("writes the part and its preset with -o, and make makes the same bytes of that preset", () => {
    const folder = copies();
    expect(run(["rebuild", "cart.3mf", "-o", "mine"], folder).code).toBe(0);
    expect(run(["rebuild", "cart.3mf", "-o", "mine"], folder).code).toBe(0);
    expect(run(["make", "mine/cart.yaml", "-o", "again"], folder).code).toBe(0);
    for (const name of readdirSync(join(folder, "again")))
      expect(readFileSync(join(folder, "again", name)).equals(readFileSync(join(made, name))), name).toBe(true);
    expect(readdirSync(join(folder, "again")).length).toBeGreaterThan(3);
  });

  test("answers in one JSON document", () => {
    const folder = copies();
    const { code, out } = run(["rebuild", "cart.3mf", "--json"], folder);
    const { parts } = JSON.parse(out) as { parts: Record<string, unknown>[] };
    expect(code).toBe(0);
    expect(parts).toMatchObject([{ file: "cart.3mf", equal: true, written: [], hash: {} }]);
    const [{ hash, files, measure } = {}] = parts as {
      hash: Record<string, string>;
      files: object[];
      measure: object[];
    }[];
    expect(hash?.carried).toBe(hash?.made);
    expect(files).toContainEqual({ name: "cart.stl", state: "equal", differs: [] });
    expect(measure?.length).toBeGreaterThan(1);
  });

  test.each<[string, string, number, RegExp]>([
    ["nothing.3mf", "", 3, /cannot read nothing\.3mf: there is no such file/],
    ["words.3mf", "only words", 3, /cannot take a preset out of words\.3mf: /],
  ])("ends in one line where %s cannot be read", (name, text, code, says) => {
    const folder = text === "" ? fresh() : folderWith({ [name]: text });
    for (const command of ["rebuild", "check", "make"]) {
      const ran = run([command, name], folder);
      expect([ran.code, ran.err.trimEnd().split("\n").length]).toEqual([code, 1]);
      expect(ran.err).toMatch(says);
    }
    expect(run(["rebuild"], folder)).toMatchObject({ code: 2 });
  });

  test("refuses a preset that reaches out of the folder, or is none", () => {
    const folder = copies();
    changeModel(join(folder, "cart.3mf"), (model) => model.replace('"name": "cart"', '"name": "../../cart"'));
    const { code, err } = run(["rebuild", "cart.3mf", "-o", "mine"], folder);
    expect(code).toBe(1);
    expect(err).toContain("is no name for files");
    expect(last(err)).toBe("cart.3mf: not made again: its preset has errors");
    expect(readdirSync(folder)).not.toContain("mine");
  });
});

describe("a 3MF where a preset is wanted", () => {
  test("check tells what to measure, make makes the part for one's own printer", () => {
    const folder = copies();
    const checked = run(["check", "cart.3mf"], folder);
    expect(checked.code).toBe(0);
    expect(checked.out).toContain("measure before printing: the sizes are those of whoever wrote this preset");
    writeFileSync(join(folder, "own.yaml"), 'format: 1\nprinter: "own"\nsettings: { holeShrinkVertical: 0.1 }\n');
    expect(run(["make", "cart.3mf", "--printer", "own.yaml", "-o", "own"], folder).code).toBe(0);
    const read = (path: string) => readFileSync(join(folder, path));
    expect(read("own/cart.stl").equals(read("cart.stl"))).toBe(false);
    expect(run(["rebuild", "own/cart.3mf"], folder).code).toBe(0);
  });

  test("check of one's own preset lists what nobody has measured, with how", () => {
    const { out } = run(["check", "cart.yaml"], made);
    expect(out).toMatch(/measure before printing\n {2}wheel: /);
    expect(out).not.toContain("arm: 20x20");
    expect(run(["make", "cart.yaml", "-o", "out"], made).out).not.toContain("measure before printing");
  });
});

test("the package is the same to the byte in every time zone and locale", () => {
  const hashes = ["UTC", "Pacific/Kiritimati", "America/Los_Angeles", "Asia/Kolkata"].map((TZ) => {
    const folder = folderWith({ "cart.yaml": PRESET });
    run(["make", "cart.yaml", "-o", "out"], folder, { TZ, LC_ALL: "de_DE.UTF-8" });
    return createHash("sha256")
      .update(readFileSync(join(folder, "out/cart.3mf")))
      .digest("hex");
  });
  expect(new Set(hashes).size).toBe(1);
});
