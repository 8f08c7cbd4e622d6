import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { strToU8, zipSync } from "fflate";
import { expect, test } from "vitest";
import { folderWith, fresh, run } from "./program.ts";

const package3mf = (entries: Readonly<Record<string, string>>) =>
  zipSync(Object.fromEntries(Object.entries(entries).map(([name, text]) => [name, strToU8(text)])));

test("a file that is no preset is called what it is by every command that reads one", () => {
  const folder = folderWith({
    "foot.stl": "solid foot\nendsolid foot\n",
    "hardware.csv": "item,needed,buy\nnut,4,4\n",
  });
  for (const command of ["check", "make", "report", "tram"]) {
    const probes = command === "tram" ? ["0,0,0", "9,0,0", "0,9,0"].flatMap((probe) => ["--probe", probe]) : [];
    const { code, out, err } = run([command, "foot.stl", ...probes], folder);
    expect([command, code]).toEqual([command, 1]);
    expect(`${out}${err}`.replace(/\s+/g, " ")).toContain("this is an STL mesh");
    expect(`${out}${err}`.replace(/\s+/g, " ")).toContain("check or rebuild foot.3mf");
  }
  const rebuilt = run(["rebuild", "foot.stl"], folder);
  expect(rebuilt.code).toBe(3);
  expect(rebuilt.err).toContain("this is an STL mesh");
  expect(run(["new", "--from", "hardware.csv"], folder).err).toContain("this is a table (CSV)");
  expect(run(["check", "hardware.csv"], folder).out).toContain("this is a table (CSV)");
});

test.each([
  ["another program's package", { "3D/3dmodel.model": "<model></model>" }, "it carries no preset of tramwright"],
  ["a package of something else", { "word/document.xml": "<w/>" }, "it holds no 3D/3dmodel.model"],
])("%s named .3mf is told what a .3mf must carry", (_, entries, reason) => {
  const folder = fresh();
  writeFileSync(join(folder, "a.3mf"), package3mf(entries));
  const { code, err } = run(["check", "a.3mf"], folder);
  expect(code).toBe(3);
  expect(err).toContain(`${reason}; a .3mf that tramwright make wrote carries the preset of its part`);
});

test("a file named .3mf that is no package is called what it is", () => {
  const folder = folderWith({ "a.3mf": "%PDF-1.7\n", "b.3mf": "format: 1\npart: wheel-spacer\n" });
  expect(run(["check", "a.3mf"], folder).err).toContain("this is a PDF");
  expect(run(["rebuild", "b.3mf"], folder).err).toContain("it is no 3MF package");
});

test("a folder is told with what in it may be meant", () => {
  const folder = fresh();
  const put = (name: string, file: string) => {
    mkdirSync(join(folder, name), { recursive: true });
    writeFileSync(join(folder, name, file), "");
  };
  put("presets", "foot.yaml");
  put("set", "manifest.json");
  put("parts", "foot.3mf");
  put("empty", "notes.txt");
  const told = (name: string) => run(["check", join(".", name)], folder);
  expect(told("presets").code).toBe(3);
  expect(told("./presets").err).toContain("it is a folder; the preset in it is presets/foot.yaml");
  put("presets", "mount.yaml");
  expect(told("./presets").err).toContain("it holds 2 presets, such as presets/foot.yaml");
  expect(told("./set").err).toContain("a set that make wrote; name the plan it came from");
  expect(told("./parts").err).toContain("it holds parts that carry their presets, such as parts/foot.3mf");
  expect(told("./empty").err).toContain("it is a folder, and no preset (.yaml) is in it");
});
