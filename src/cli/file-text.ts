import { closeSync, lstatSync, openSync, readdirSync, readFileSync, readSync, statSync } from "node:fs";
import { join } from "node:path";
import { reason } from "./file-reason.ts";
import { interruptible } from "./interruptible.ts";
import { EXIT, trouble } from "./io.ts";

/** Returns the text of a file; a file that cannot be read ends the program with the reason. */
export function readText(path: string): string {
  const read = tryText(path);
  if ("text" in read) return read.text;
  throw trouble(`cannot read ${path}: ${read.reason}${insideWords(path)}`, EXIT.files);
}

/** Returns what in a folder could be meant instead of it, in words; nothing where it is no folder. */
export function insideWords(path: string): string {
  const names = namesIn(path);
  if (names === undefined) return "";
  const presets = names.filter((name) => /\.ya?ml$/i.test(name)).sort();
  const within = (name: string) => join(path, name);
  if (presets.length === 1) return `; the preset in it is ${within(presets[0] ?? "")}`;
  if (presets.length > 1) return `; it holds ${presets.length} presets, such as ${within(presets[0] ?? "")}`;
  const parts = names.filter((name) => /\.3mf$/i.test(name)).sort();
  if (parts.length > 0) return `; it holds parts that carry their presets, such as ${within(parts[0] ?? "")}`;
  if (names.includes("manifest.json"))
    return `, a set that make wrote; name the plan it came from, or one part of it as ${within("parts/<part>.3mf")}`;
  return ", and no preset (.yaml) is in it";
}

/** Returns the names in a folder; undefined where it is none or may not be looked into. */
function namesIn(path: string): string[] | undefined {
  try {
    return statSync(path).isDirectory() ? readdirSync(path) : undefined;
  } catch {
    return undefined;
  }
}

/** More than any file of ours holds; a device or pipe may go on for ever. */
const MOST = 16 * 1024 * 1024;

/** Returns the text of a file, or why it cannot be read. */
export function tryText(path: string): { readonly text: string } | { readonly reason: string } {
  const read = bytesUpTo(path, MOST);
  return "bytes" in read ? { text: read.bytes.toString("utf8") } : read;
}

/** Returns the bytes of a file that has at most so many, or why it cannot be read. */
export function bytesUpTo(path: string, most: number): { readonly bytes: Buffer } | { readonly reason: string } {
  try {
    // Only what may keep us waiting: a signal that comes meanwhile to a handler would be lost.
    const waits = path === "-" || !statSync(path).isFile();
    const asked: typeof interruptible = waits ? interruptible : (read) => read();
    const file = path === "-" ? 0 : asked(() => openSync(path, "r"));
    try {
      const bytes = asked(() => readUpTo(file, most + 1));
      return bytes.length > most ? { reason: `it is longer than ${most / 1024 / 1024} MB` } : { bytes };
    } finally {
      if (file !== 0) closeSync(file);
    }
  } catch (thrown) {
    return { reason: reason(thrown) };
  }
}

/** Returns the text of a file that another file names: an ordinary one, for a pipe may never answer. */
export function tryOrdinary(path: string): ReturnType<typeof tryText> {
  try {
    const there = statSync(path);
    return there.isFile() || there.isDirectory() ? tryText(path) : { reason: "it is no ordinary file" };
  } catch (thrown) {
    return { reason: reason(thrown) };
  }
}

function readUpTo(file: number, most: number): Buffer {
  const parts: Buffer[] = [];
  let length = 0;
  while (length < most) {
    const part = Buffer.alloc(64 * 1024);
    const read = readWaiting(file, part);
    if (read === 0) break;
    parts.push(part.subarray(0, read));
    length += read;
  }
  return Buffer.concat(parts, length);
}

/** Reads on; a terminal or pipe that has nothing yet is asked again in a moment. */
function readWaiting(file: number, into: Buffer): number {
  for (;;) {
    try {
      return readSync(file, into, 0, into.length, null);
    } catch (thrown) {
      const { code } = thrown as { code?: string };
      if (code === "EOF") return 0;
      if (code !== "EAGAIN") throw thrown;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 10);
    }
  }
}

/** Returns the bytes of an ordinary file, which is no link and has at most so many; undefined where there is none. */
export function ordinaryBytes(path: string, most: number): Uint8Array | undefined {
  const size = lstatSync(path, { throwIfNoEntry: false })?.size ?? 0;
  return size > most ? undefined : tryBytes(path, size);
}

/** Returns the bytes of an ordinary file of this length, which is no link; undefined where there is none. */
export function tryBytes(path: string, length: number): Uint8Array | undefined {
  try {
    const there = lstatSync(path);
    return there.isFile() && there.size === length ? readFileSync(path) : undefined;
  } catch {
    return undefined;
  }
}
