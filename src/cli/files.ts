import {
  close,
  closeSync,
  copyFileSync,
  existsSync,
  fsync,
  fsyncSync,
  linkSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  readSync,
  renameSync,
  rmdirSync,
  rmSync,
  statSync,
  writeFileSync,
  writeSync,
} from "node:fs";
import { dirname, join, resolve } from "node:path";
import { reason } from "./file-reason.ts";
import { EXIT, trouble } from "./io.ts";
import { notOurs } from "./not-ours.ts";

/** A file to write: its name from the folder of its set, with `/`, and its bytes. */
export interface OutputFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** The words by which a file that this program wrote is known again, within its first 200 bytes. */
export const SIGNATURE = "tramwright ";
const SNIFF = 200;

/** Staging folders that exist right now; a signal handler removes them. */
export const staging = new Set<string>();

export const exists = (path: string): boolean => existsSync(path);

/** Returns the path that `relative` means inside the folder of `file`. */
export function besideFile(file: string, relative: string): string {
  return resolve(dirname(file), relative);
}

/** Returns the path of a file that is shipped beside the program. */
export const shipped = (name: string): string => join(__dirname, name);

export const readShipped = (name: string): Buffer<ArrayBuffer> => readFileSync(shipped(name));

/** Puts a file beside the program: for the build's trial run only. */
export function writeShipped(name: string, bytes: Uint8Array): void {
  writeFileSync(shipped(name), bytes);
}

/**
 * Writes a set of files: first all of them into a hidden folder beside their targets, then each is renamed into place
 * in the order given, so that no target is ever half written. A file that this program did not write is left alone
 * unless `force`.
 */
export function writeSet(folder: string, files: readonly OutputFile[], { force }: { readonly force: boolean }): void {
  const blocked = files.map(({ name }) => join(folder, name)).find(isFolder);
  if (blocked !== undefined) throw trouble(`cannot write ${blocked}: it is a folder`, EXIT.files);
  const foreign = files.filter(({ name }) => !force && isForeign(join(folder, name)));
  if (foreign.length > 0) {
    throw notOurs(foreign.map(({ name }) => join(folder, name)));
  }
  const made: string[] = [];
  try {
    makeFolder(resolve(folder), made);
    removeAbandoned(folder);
    const stage = stagingFolder(folder);
    staging.add(stage);
    try {
      for (const inner of innerFolders(files)) {
        makeFolder(resolve(folder, inner), made);
        mkdirSync(join(stage, inner), { recursive: true });
      }
      for (const { name, bytes } of files) writeWhole(join(stage, name), bytes);
      putInPlace(stage, folder, files);
    } finally {
      rmSync(stage, { recursive: true, force: true });
      staging.delete(stage);
    }
  } catch (thrown) {
    // What was made for these files and is still empty goes again.
    for (const one of made.reverse()) removeEmpty(one);
    throw trouble(`cannot write into ${folder}: ${reason(thrown)}`, EXIT.files);
  }
}

/** Renames each file into its place; where one cannot go, those before it go back and what they replaced returns. */
function putInPlace(stage: string, folder: string, files: readonly OutputFile[]): void {
  const undo: (() => void)[] = [];
  try {
    for (const [index, { name }] of files.entries()) {
      const [from, to, before] = [join(stage, name), join(folder, name), join(stage, `.before-${index}`)];
      const replaces = lstatSync(to, { throwIfNoEntry: false }) !== undefined;
      if (replaces) linkOrCopy(to, before);
      renameSync(from, to);
      undo.push(() => (replaces ? renameSync(before, to) : rmSync(to)));
    }
  } catch (thrown) {
    for (const step of undo.reverse()) step();
    throw thrown;
  }
}

/** Gives a file a second name, or copies it where the disk has no links. */
export function linkOrCopy(from: string, to: string): void {
  try {
    linkSync(from, to);
  } catch {
    copyFileSync(from, to);
  }
}

/** Makes a hidden folder for files that are not finished; its name says which process it belongs to. */
export const stagingFolder = (folder: string): string => mkdtempSync(join(folder, `${STAGING}${process.pid}-`));

const STAGING = ".tramwright-";

/** Removes the staging folders of runs that were killed: of processes that are no more. */
export function removeAbandoned(folder: string): void {
  const pattern = new RegExp(`^\\${STAGING}(\\d+)-[A-Za-z0-9]{6}$`);
  for (const name of namesIn(folder)) {
    const pid = Number(pattern.exec(name)?.[1] ?? Number.NaN);
    if (Number.isNaN(pid) || isAlive(pid)) continue;
    try {
      rmSync(join(folder, name), { recursive: true, force: true });
    } catch {
      // It is in nobody's way.
    }
  }
}

function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (thrown) {
    return (thrown as { code?: string }).code !== "ESRCH";
  }
}

const innerFolders = (files: readonly OutputFile[]) => [
  ...new Set(files.map(({ name }) => dirname(name)).filter((inner) => inner !== ".")),
];

/**
 * Makes a folder and those above it, one at a time, and notes what it made. The recursive call of Node asks for ever
 * where a folder exists but refuses new ones as if it did not (/proc).
 */
export function makeFolder(path: string, made: string[]): void {
  if (isFolder(path)) return;
  if (dirname(path) !== path) makeFolder(dirname(path), made);
  try {
    mkdirSync(path);
    made.push(path);
  } catch (thrown) {
    // Another run may have made it in between.
    if (isFolder(path)) return;
    throw (thrown as { code?: string }).code === "ENOENT" ? new Error("no folder can be made there") : thrown;
  }
}

export function isFolder(path: string): boolean {
  try {
    return statSync(path).isDirectory();
  } catch {
    return false;
  }
}

/** Removes a folder that holds nothing. */
export function removeEmpty(path: string): void {
  try {
    rmdirSync(path);
  } catch {
    // It holds something: it stays.
  }
}

/** Removes what an interrupted run would leave behind. */
export function cleanUp(): void {
  for (const stage of staging) rmSync(stage, { recursive: true, force: true });
  staging.clear();
}

/** Writes a new file down to the disk; one that is there already is an error. */
export function writeWhole(path: string, bytes: Uint8Array): void {
  const file = opened(path, bytes);
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/**
 * Writes a new file, and has it taken down to the disk beside other work. Fulfilled when that is over: false where the
 * disk refused it. What is in the way of writing is thrown at once.
 */
export function writeBegun(path: string, bytes: Uint8Array): Promise<boolean> {
  const file = opened(path, bytes);
  return new Promise((resolve) => {
    fsync(file, (refused) => close(file, (lost) => resolve((refused ?? lost ?? null) === null)));
  });
}

/** Writes a new file and leaves it open, unless that fails. */
function opened(path: string, bytes: Uint8Array): number {
  const file = openSync(path, "wx");
  try {
    for (let done = 0; done < bytes.length; ) done += writeSync(file, bytes, done);
    return file;
  } catch (thrown) {
    closeSync(file);
    throw thrown;
  }
}

/** Whether something is there that this program did not write: a link, a pipe, or a file without its words. */
export function isForeign(path: string): boolean {
  try {
    const there = lstatSync(path, { throwIfNoEntry: false });
    if (there === undefined) return false;
    if (!there.isFile()) return true;
    const file = openSync(path, "r");
    const start = Buffer.alloc(SNIFF);
    const length = readSync(file, start, 0, SNIFF, 0);
    closeSync(file);
    return !start.toString("latin1", 0, length).includes(SIGNATURE);
  } catch (thrown) {
    // Where a file stands in the place of the folder, or the name is too long, there is nothing of that name.
    return !["ENOTDIR", "ENAMETOOLONG"].includes((thrown as { code?: string }).code ?? "");
  }
}
