import { lstatSync, mkdirSync, readdirSync, renameSync, rmdirSync, rmSync, type Stats } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import type { Earlier } from "../build/stage-set.ts";
import { MANIFEST } from "../outputs/manifest.ts";
import { earlierIn } from "./earlier-set.ts";
import { reason } from "./file-reason.ts";
import {
  isForeign,
  linkOrCopy,
  makeFolder,
  type OutputFile,
  removeAbandoned,
  removeEmpty,
  staging,
  writeWhole,
} from "./files.ts";
import { EXIT, trouble } from "./io.ts";
import { notOurs } from "./not-ours.ts";
import { stagedFiles } from "./staged-files.ts";

interface NewSet {
  /** Written anew. */
  readonly files: readonly OutputFile[];
  /** Names of files that stay as they are. */
  readonly kept: readonly string[];
  /** Whether files of others are replaced. */
  readonly force: boolean;
}

/**
 * Puts a set of files in the place of the one before: the new folder is made whole beside the old one, and the two
 * change places. So the folder holds the old set or the new one, whenever the program ends; should it end between the
 * two renames, the next run puts the old one back. What others put into the folder goes over into the new one; a file
 * in the way that this program did not write, or that somebody changed, is left alone unless `force`. Returns what of
 * the old set is gone, and under which names what somebody had changed in it stays, unless `force`. Files that are `staged`
 * already are not written again.
 */
export function replaceSet(
  folder: string,
  set: NewSet,
  staged = stagedFiles(folder),
): { readonly removed: string[]; readonly changed: string[] } {
  const target = resolve(folder);
  settleSet(folder);
  const before = earlierIn(folder);
  refuseObstacles(folder, set, before);
  const names = new Set([...set.files.map(({ name }) => name), ...set.kept]);
  const own = before?.manifest.files ?? [];
  const removed = own.filter((file) => !names.has(file.name) && before?.intact(file)).map(({ name }) => name);
  const made: string[] = [];
  const changed: string[] = [];
  try {
    makeFolder(dirname(target), made);
    const { stage, written } = staged.take();
    try {
      const fresh = join(stage, "set");
      fill(fresh, target, set, written);
      changed.push(...exchange(fresh, target, set.force));
    } finally {
      rmSync(stage, { recursive: true, force: true });
      staging.delete(stage);
    }
    return { removed, changed };
  } catch (thrown) {
    // What was made for this set and is still empty goes again.
    for (const one of made.reverse()) removeEmpty(one);
    throw trouble(`cannot write into ${folder}: ${reason(thrown)}`, EXIT.files);
  }
}

/** Ends what a run that was killed between or after the two renames has left. */
export function settleSet(folder: string): void {
  const target = resolve(folder);
  removeAbandoned(dirname(target));
  const aside = asideOf(target);
  if (!isThere(aside)) return;
  try {
    if (isThere(target)) carryOver(aside, target);
    else renameSync(aside, target);
  } catch (thrown) {
    throw trouble(`cannot put ${folder} in order after a run that was killed: ${reason(thrown)}`, EXIT.files);
  }
}

/** Where the old set stands for the moment between the two renames. */
const asideOf = (target: string): string => join(dirname(target), `.tramwright-before-${basename(target)}`);

function refuseObstacles(folder: string, { files, force }: NewSet, before: Earlier | undefined): void {
  const folders = new Set([folder, ...files.map(({ name }) => dirname(join(folder, name)))]);
  for (const one of folders) {
    const kind = kindAt(one);
    if (kind === "file" || kind === "link")
      throw trouble(`cannot write into ${folder}: a ${kind} stands where a folder should be`, EXIT.files);
  }
  const own = (name: string) => before?.manifest.files.some((file) => file.name === name && before.intact(file));
  const inTheWay = files.map(({ name }) => join(folder, name)).find((path) => kindAt(path) === "folder");
  if (inTheWay !== undefined) throw trouble(`cannot write ${inTheWay}: it is a folder`, EXIT.files);
  const foreign = files.filter(({ name }) => !force && own(name) !== true && isForeign(join(folder, name)));
  if (foreign.length === 0) return;
  throw notOurs(foreign.map(({ name }) => join(folder, name)));
}

/** Writes the new set into a folder of its own; what stays is the same file under a second name. */
function fill(fresh: string, target: string, { files, kept }: NewSet, written: ReadonlyMap<string, Uint8Array>): void {
  mkdirSync(fresh, { recursive: true });
  const wanted = new Map(files.map(({ name, bytes }) => [name, bytes]));
  const isThere = (name: string) => written.has(name) && written.get(name) === wanted.get(name);
  for (const name of written.keys()) if (!isThere(name)) rmSync(join(fresh, name));
  for (const inner of new Set([...files.map(({ name }) => name), ...kept].map((name) => dirname(name))))
    mkdirSync(join(fresh, inner), { recursive: true });
  for (const { name, bytes } of files) if (!isThere(name)) writeWhole(join(fresh, name), bytes);
  for (const name of kept) linkOrCopy(join(target, name), join(fresh, name));
}

function exchange(fresh: string, target: string, force: boolean): string[] {
  const aside = asideOf(target);
  const replaces = isThere(target);
  if (replaces) renameSync(target, aside);
  try {
    renameSync(fresh, target);
  } catch (thrown) {
    if (replaces) renameSync(aside, target);
    throw thrown;
  }
  return replaces ? carryOver(aside, target, force) : [];
}

/**
 * Moves what others put into the old folder over into the new one, and removes the rest. A file of the set that
 * somebody changed goes over as well, under another name where the new set has one of that name, unless `force`. Returns
 * those names.
 */
function carryOver(aside: string, target: string, force = false): string[] {
  const earlier = earlierIn(aside);
  const own = new Map(earlier?.manifest.files.map((file) => [file.name, file]));
  const isIntact = (name: string): boolean => {
    const file = own.get(name);
    return file !== undefined && earlier?.intact(file) === true;
  };
  const changed: string[] = [];
  const empty = (inner: string) => {
    for (const entry of readdirSync(join(aside, inner), { withFileTypes: true })) {
      const name = inner === "" ? entry.name : `${inner}/${entry.name}`;
      const [from, to] = [join(aside, name), join(target, name)];
      const shared = kindAt(to) === "folder" || [...own.keys()].some((file) => file.startsWith(`${name}/`));
      const isChanged = () => own.has(name) && entry.isFile() && !isIntact(name);
      if (entry.isDirectory() && shared) empty(name);
      else if (isThere(to) && !force && isChanged()) {
        const another = freeName([aside, target], name);
        renameSync(from, join(target, another));
        changed.push(another);
      } else if (isThere(to) || name === MANIFEST || isIntact(name)) rmSync(from, { recursive: true });
      else {
        mkdirSync(dirname(to), { recursive: true });
        renameSync(from, to);
        if (own.has(name)) changed.push(name);
      }
    }
    rmdirSync(join(aside, inner));
  };
  empty("");
  return changed;
}

/** The first name behind this one that nothing in the folders has: `foot-a.md.changed`, `foot-a.md.changed-2`. */
function freeName(folders: readonly string[], name: string): string {
  for (let number = 1; ; number++) {
    const free = `${name}.changed${number === 1 ? "" : `-${number}`}`;
    if (!folders.some((folder) => isThere(join(folder, free)))) return free;
  }
}

function kindAt(path: string): "folder" | "link" | "file" | undefined {
  const found = statusOf(path);
  if (found === undefined) return undefined;
  return found.isDirectory() ? "folder" : found.isSymbolicLink() ? "link" : "file";
}

/** Nothing is there either where a folder above is a file, or may not be looked into. */
function statusOf(path: string): Stats | undefined {
  try {
    return lstatSync(path);
  } catch {
    return undefined;
  }
}

const isThere = (path: string): boolean => kindAt(path) !== undefined;
