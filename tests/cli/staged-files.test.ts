import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { staging } from "../../src/cli/files.ts";
import { replaceSet } from "../../src/cli/replace-set.ts";
import { stagedFiles } from "../../src/cli/staged-files.ts";
import { fresh } from "./program.ts";

const file = (name: string, text: string) => ({ name, bytes: new TextEncoder().encode(`tramwright ${text}`) });
const text = (folder: string, name: string) => readFileSync(join(folder, name), "utf8");
const namesIn = (folder: string) => readdirSync(folder, { recursive: true, encoding: "utf8" }).sort();

describe("files that are written before their set is whole", () => {
  const [one, two, three] = [file("parts/one.stl", "1"), file("parts/two.stl", "2"), file("three.json", "3")];

  test("are in no one's sight, and then in the set with the rest of it", () => {
    const above = fresh();
    const folder = join(above, "stage");
    const staged = stagedFiles(folder);
    staged.put([one]);
    staged.put([two]);
    expect(readdirSync(above).every((name) => name.startsWith(".tramwright-"))).toBe(true);
    replaceSet(folder, { files: [one, two, three], kept: [], force: false }, staged);
    expect(namesIn(above)).toEqual([
      "stage",
      ...["parts", "parts/one.stl", "parts/two.stl", "three.json"].map((name) => `stage/${name}`),
    ]);
    expect([one, two, three].map(({ name }) => text(folder, name))).toEqual([1, 2, 3].map((n) => `tramwright ${n}`));
    expect(staging.size).toBe(0);
  });

  test("stay out of a set that has no such file, or another one of that name", () => {
    const folder = join(fresh(), "stage");
    const staged = stagedFiles(folder);
    staged.put([one, two]);
    const other = file(two.name, "other");
    replaceSet(folder, { files: [other, three], kept: [], force: false }, staged);
    expect(namesIn(folder)).toEqual(["parts", "parts/two.stl", "three.json"]);
    expect(text(folder, two.name)).toBe("tramwright other");
  });

  test("leave nothing when they are dropped, and can be dropped twice", () => {
    const above = fresh();
    const staged = stagedFiles(join(above, "stage"));
    staged.put([one]);
    expect(staging.size).toBe(1);
    staged.drop();
    staged.drop();
    expect(readdirSync(above)).toEqual([]);
    expect(staging.size).toBe(0);
  });

  test("wait in the nearest folder above where the output folder is not there yet", () => {
    const above = fresh();
    const deep = join(above, "not", "yet");
    // Of a process that is no more.
    mkdirSync(join(above, ".tramwright-999999999-abcdef"));
    const staged = stagedFiles(join(deep, "stage"));
    staged.put([one]);
    expect(readdirSync(above)).toEqual([expect.stringMatching(new RegExp(`^\\.tramwright-${process.pid}-`))]);
    staged.drop();
    expect(readdirSync(above)).toEqual([]);
    staged.put([one]);
    replaceSet(join(deep, "stage"), { files: [one], kept: [], force: false }, staged);
    expect(readdirSync(above)).toEqual(["not"]);
    expect(text(join(deep, "stage"), one.name)).toBe("tramwright 1");
  });

  test("are left to the whole set where they cannot be written yet", () => {
    const above = fresh();
    // A file stands in the way of a folder of the set.
    const clashing = stagedFiles(join(above, "stage"));
    clashing.put([one, file(`${one.name}/below.stl`, "a file is no folder")]);
    expect(staging.size).toBe(0);
    replaceSet(join(above, "stage"), { files: [one, two], kept: [], force: false }, clashing);
    expect(namesIn(join(above, "stage"))).toEqual(["parts", "parts/one.stl", "parts/two.stl"]);
  });

  test("are down on the disk when that was waited for, each written once", async () => {
    const folder = join(fresh(), "stage");
    const staged = stagedFiles(folder);
    staged.put([one]);
    staged.put([one, two, three]);
    await staged.settled();
    const { stage, written } = staged.take();
    expect([...written.keys()]).toEqual([one, two, three].map(({ name }) => name));
    expect([one, two, three].map(({ name }) => text(join(stage, "set"), name))).toEqual(
      [1, 2, 3].map((n) => `tramwright ${n}`),
    );
    await staged.settled();
  });

  test("are left to the whole set where another of that name is there already", async () => {
    const above = fresh();
    const staged = stagedFiles(join(above, "stage"));
    staged.put([one]);
    staged.put([file(one.name, "another")]);
    expect(readdirSync(above)).toEqual([]);
    await staged.settled();
    replaceSet(join(above, "stage"), { files: [two], kept: [], force: false }, staged);
    expect(namesIn(join(above, "stage"))).toEqual(["parts", "parts/two.stl"]);
  });

  test("are gone when the set is refused", () => {
    const above = fresh();
    const folder = join(above, "stage");
    mkdirSync(folder);
    writeFileSync(join(folder, "three.json"), "somebody's");
    const staged = stagedFiles(folder);
    staged.put([one]);
    expect(() => replaceSet(folder, { files: [one, three], kept: [], force: false }, staged)).toThrow();
    staged.drop();
    expect(namesIn(above)).toEqual(["stage", "stage/three.json"]);
    expect(text(folder, "three.json")).toBe("somebody's");
  });
});
