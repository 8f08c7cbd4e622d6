import { createHash } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isTrouble } from "../../src/cli/io.ts";
import { replaceSet, settleSet } from "../../src/cli/replace-set.ts";
import { manifestText } from "../../src/outputs/manifest.ts";
import { fresh } from "./program.ts";

type Files = Readonly<Record<string, string>>;

const bytes = (text: string) => new TextEncoder().encode(text);
const entryOf = ([name, text]: [string, string]) => ({
  name,
  bytes: bytes(text).length,
  sha256: createHash("sha256").update(text).digest("hex"),
});

/** The files of a set with its manifest, as they are handed over to be written. */
function withManifest(set: Files): { name: string; bytes: Uint8Array }[] {
  const manifest = manifestText({
    madeBy: "tramwright 1",
    stage: "s",
    files: Object.entries(set).map(entryOf),
    parts: [],
  });
  return [...Object.entries(set), ["manifest.json", manifest]].map(([name = "", text = ""]) => ({
    name,
    bytes: bytes(text),
  }));
}

function filesBelow(folder: string): Record<string, string> {
  const names = readdirSync(folder, { recursive: true, encoding: "utf8" }).sort();
  const files = names.filter((name) => statSync(join(folder, name)).isFile());
  return Object.fromEntries(files.map((name) => [name, readFileSync(join(folder, name), "utf8")]));
}

function put(folder: string, files: Files): void {
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
}

function attempt(act: () => unknown): string {
  try {
    act();
    return "done";
  } catch (thrown) {
    if (isTrouble(thrown)) return thrown.trouble;
    throw thrown;
  }
}

const names = (...all: string[]) => fc.dictionary(fc.constantFrom(...all), fc.string({ maxLength: 5 }));
const sets = names("parts/a.stl", "parts/b.stl", "parts/b.md", "report.json", "belts.svg");
const strangers = names("notes.txt", "parts/a.gcode", "photos/one.jpg", "photos/old/two.jpg");

describe("one set in the place of another", () => {
  test("afterwards the folder holds the new set and what others put there, and nothing else", () => {
    fc.assert(
      fc.property(sets, sets, strangers, (old, next, others) => {
        const root = fresh();
        const folder = join(root, "out/set");
        replaceSet(folder, { files: withManifest(old), kept: [], force: false });
        put(folder, others);
        const kept = Object.keys(next).filter((name) => old[name] === next[name]);
        const all = withManifest(next);
        const files = all.filter(({ name }) => !kept.includes(name));
        const { removed } = replaceSet(folder, { files, kept, force: false });
        const written = Object.fromEntries(all.map((file) => [file.name, new TextDecoder().decode(file.bytes)]));
        expect(filesBelow(folder)).toEqual({ ...others, ...written });
        expect(removed.sort()).toEqual(
          Object.keys(old)
            .filter((name) => !(name in next))
            .sort(),
        );
        expect(readdirSync(join(root, "out"))).toEqual(["set"]);
      }),
      { numRuns: 60 },
    );
  });

  test("a file that somebody changed, or put in the way, is left alone and nothing else changes", () => {
    const folder = join(fresh(), "set");
    replaceSet(folder, { files: withManifest({ "belts.svg": "old", "report.json": "old" }), kept: [], force: false });
    put(folder, { "belts.svg": "mine", "parts/a.stl": "mine" });
    const before = filesBelow(folder);
    const set = { files: withManifest({ "belts.svg": "new", "parts/a.stl": "new" }), kept: [] };
    expect(attempt(() => replaceSet(folder, { ...set, force: false }))).toMatch(
      /set\/belts\.svg, .*set\/parts\/a\.stl were not written by tramwright and are left alone; --force replaces them$/,
    );
    expect(filesBelow(folder)).toEqual(before);
    replaceSet(folder, { ...set, force: true });
    expect(filesBelow(folder)).toMatchObject({ "belts.svg": "new", "parts/a.stl": "new" });
  });

  test("what somebody changed in a file that still has our words stays under another name, unless forced", () => {
    const folder = join(fresh(), "set");
    const made = (text: string, force = false) => {
      const set = { "parts/a.md": `tramwright ${text}`, "parts/b.md": "tramwright as it was" };
      return replaceSet(folder, { files: withManifest(set), kept: [], force }).changed;
    };
    expect(made("1")).toEqual([]);
    put(folder, { "parts/a.md": "tramwright 1, printed on Monday" });
    expect(made("2")).toEqual(["parts/a.md.changed"]);
    put(folder, { "parts/a.md": "tramwright 2, printed on Tuesday" });
    expect(made("3")).toEqual(["parts/a.md.changed-2"]);
    put(folder, { "parts/a.md": "tramwright 3, printed badly" });
    expect(made("4", true)).toEqual([]);
    const { "manifest.json": _, ...files } = filesBelow(folder);
    expect(files).toEqual({
      "parts/a.md": "tramwright 4",
      "parts/a.md.changed": "tramwright 1, printed on Monday",
      "parts/a.md.changed-2": "tramwright 2, printed on Tuesday",
      "parts/b.md": "tramwright as it was",
    });
  });

  test("a changed file that the new set lacks stays", () => {
    const folder = join(fresh(), "set");
    replaceSet(folder, { files: withManifest({ "parts/a.stl": "old", "parts/b.stl": "old" }), kept: [], force: false });
    put(folder, { "parts/a.stl": "mine" });
    const { removed, changed } = replaceSet(folder, { files: withManifest({}), kept: [], force: false });
    expect(removed).toEqual(["parts/b.stl"]);
    expect(changed).toEqual(["parts/a.stl"]);
    expect(Object.keys(filesBelow(folder))).toEqual(["manifest.json", "parts/a.stl"]);
  });

  test.each(["set", "set/parts"])("a link at %s is not followed", (link) => {
    const root = fresh();
    mkdirSync(join(root, "elsewhere"));
    mkdirSync(dirname(join(root, link)), { recursive: true });
    symlinkSync(join(root, "elsewhere"), join(root, link));
    const set = { files: withManifest({ "parts/a.stl": "new" }), kept: [], force: true };
    expect(attempt(() => replaceSet(join(root, "set"), set))).toMatch(/a link stands where a folder should be$/);
    expect(readdirSync(join(root, "elsewhere"))).toEqual([]);
  });
});

describe("a run that was killed", () => {
  const old = { "parts/a.stl": "old", "belts.svg": "old" };
  const aside = ".tramwright-before-set";

  test("between the two renames: the old set comes back", () => {
    const root = fresh();
    const folder = join(root, "set");
    replaceSet(folder, { files: withManifest(old), kept: [], force: false });
    const before = filesBelow(folder);
    renameSync(folder, join(root, aside));
    settleSet(folder);
    expect(filesBelow(folder)).toEqual(before);
    expect(readdirSync(root)).toEqual(["set"]);
  });

  test("after the second one: what others put into the old folder comes over", () => {
    const root = fresh();
    const folder = join(root, "set");
    replaceSet(folder, { files: withManifest(old), kept: [], force: false });
    put(folder, { "notes.txt": "mine" });
    renameSync(folder, join(root, aside));
    replaceSet(join(root, "other"), { files: withManifest({ "belts.svg": "new" }), kept: [], force: false });
    renameSync(join(root, "other"), folder);
    settleSet(folder);
    expect(Object.keys(filesBelow(folder))).toEqual(["belts.svg", "manifest.json", "notes.txt"]);
    expect(readFileSync(join(folder, "belts.svg"), "utf8")).toBe("new");
    expect(readdirSync(root)).toEqual(["set"]);
  });

  test("what it had begun is removed, what a living one has begun is not", () => {
    const root = fresh();
    // Process numbers end far below this one.
    const [dead, living] = [".tramwright-4194999-abcdef", `.tramwright-${process.pid}-abcdef`];
    put(root, { [`${dead}/set/a`]: "half", [`${living}/set/a`]: "half" });
    settleSet(join(root, "set"));
    expect([existsSync(join(root, dead)), existsSync(join(root, living))]).toEqual([false, true]);
  });
});
