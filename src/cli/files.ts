import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readFileSync,
  readSync,
  renameSync,
  rmSync,
  writeFileSync,
  writeSync,
} from "node:fs";
import { dirname, join, resolve } from "node:path";
import { EXIT, trouble } from "./io.ts";

/** A file to write: its plain name and its bytes. */
export interface OutputFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** The words by which a file that this program wrote is known again, within its first 200 bytes. */
export const SIGNATURE = "tramwright ";
const SNIFF = 200;

/** Staging folders that exist right now; a signal handler removes them. */
const staging = new Set<string>();

/** Returns the text of a file; a file that cannot be read ends the program with the reason. */
export function readText(path: string): string {
  try {
    return readFileSync(path === "-" ? 0 : path, "utf8");
  } catch (thrown) {
    throw trouble(`cannot read ${path}: ${reason(thrown)}`, EXIT.files);
  }
}

export const exists = (path: string): boolean => existsSync(path);

/** Returns the path that `relative` means inside the folder of `file`. */
export function besideFile(file: string, relative: string): string {
  return resolve(dirname(file), relative);
}

/** Returns the bytes of a file that is shipped beside the program. */
export function readShipped(name: string): Buffer<ArrayBuffer> {
  return readFileSync(join(__dirname, name));
}

/** Puts a file beside the program: for the build's trial run only. */
export function writeShipped(name: string, bytes: Uint8Array): void {
  writeFileSync(join(__dirname, name), bytes);
}

/**
 * Writes a set of files: first all of them into a hidden folder beside their targets, then each is renamed into place,
 * so that no target is ever half written. A file that this program did not write is left alone unless `force`.
 */
export function writeSet(folder: string, files: readonly OutputFile[], force: boolean): void {
  const foreign = files.filter(({ name }) => !force && isForeign(join(folder, name)));
  if (foreign.length > 0) {
    const names = foreign.map(({ name }) => join(folder, name)).join(", ");
    throw trouble(`${names} was not written by tramwright and is left alone; --force replaces it`, EXIT.files);
  }
  try {
    mkdirSync(folder, { recursive: true });
    const stage = mkdtempSync(join(folder, ".tramwright-"));
    staging.add(stage);
    try {
      for (const { name, bytes } of files) writeWhole(join(stage, name), bytes);
      for (const { name } of files) renameSync(join(stage, name), join(folder, name));
    } finally {
      rmSync(stage, { recursive: true, force: true });
      staging.delete(stage);
    }
  } catch (thrown) {
    throw trouble(`cannot write into ${folder}: ${reason(thrown)}`, EXIT.files);
  }
}

/** Removes what an interrupted run would leave behind. */
export function cleanUp(): void {
  for (const stage of staging) rmSync(stage, { recursive: true, force: true });
  staging.clear();
}

function writeWhole(path: string, bytes: Uint8Array): void {
  const file = openSync(path, "wx");
  try {
    for (let done = 0; done < bytes.length; ) done += writeSync(file, bytes, done);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

function isForeign(path: string): boolean {
  if (!existsSync(path)) return false;
  try {
    const file = openSync(path, "r");
    const start = Buffer.alloc(SNIFF);
    const length = readSync(file, start, 0, SNIFF, 0);
    closeSync(file);
    return !start.toString("latin1", 0, length).includes(SIGNATURE);
  } catch {
    return true;
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file or folder",
  EACCES: "permission is refused",
  EPERM: "permission is refused",
  EROFS: "the disk is read-only",
  EISDIR: "it is a folder",
  ENOTDIR: "a file stands where a folder should be",
  ENOSPC: "the disk is full",
  EEXIST: "a file stands where a folder should be",
};

function reason(thrown: unknown): string {
  const code = (thrown as { code?: string }).code ?? "";
  return REASONS[code] ?? (thrown instanceof Error ? thrown.message : String(thrown));
}
