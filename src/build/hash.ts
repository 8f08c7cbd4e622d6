import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";

/** Returns JSON with sorted keys and no blanks: equal data, equal text. */
export function canonical(data: unknown): string {
  if (Array.isArray(data)) return `[${data.map(canonical).join()}]`;
  if (typeof data !== "object" || data === null) return JSON.stringify(data) ?? "null";
  const entries = Object.entries(data).filter(([, value]) => value !== undefined);
  entries.sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  return `{${entries.map(([key, value]) => `${JSON.stringify(key)}:${canonical(value)}`).join()}}`;
}

/** Returns eight hex digits that stand for the data; equal data, equal digits, on every machine. */
export function shortHash(data: unknown): string {
  return bytesToHex(sha256(utf8ToBytes(canonical(data)))).slice(0, 8);
}

/** Returns the SHA-256 of bytes in hex digits, as `sha256sum` prints it. */
export function sha256Hex(bytes: Uint8Array): string {
  return bytesToHex(sha256(bytes));
}

/** Returns the SHA-256 of bytes in hex digits. */
export type Digest = (bytes: Uint8Array) => string;
