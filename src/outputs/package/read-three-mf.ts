import { Unzip, UnzipInflate } from "fflate/browser";
import { SPACE } from "./model-xml.ts";
import { MODEL } from "./three-mf.ts";

/** What this program left in a 3MF package. */
export interface Carried {
  readonly preset: string;
  readonly hash: string;
  /** The program that made it: `tramwright 0.1.0`. */
  readonly application: string;
  /** The whole model part. */
  readonly model: string;
}

/** Larger files, and models that unpack to more, are none of ours. Bytes. */
export const LARGEST = 32 * 2 ** 20;
const LARGEST_MODEL = LARGEST;
/** What is unpacked at a time: no more than a thousand times as much can come of it before it is counted. */
const STEP = 2 ** 14;
/** More entries than these no package of a part has. */
const MOST_ENTRIES = 1000;

/**
 * Returns what a 3MF package carries, or why nothing can be taken from it. Only its model part is unpacked, in memory
 * and up to 32 MB; names of entries lead nowhere, and what refers to anything outside is refused.
 */
export function readThreeMf(bytes: Uint8Array): Carried | { readonly wrong: string } {
  if (bytes.length > LARGEST) return { wrong: "it is larger than 32 MB" };
  const entry = entryOf(bytes, MODEL);
  if ("wrong" in entry) return entry;
  const text = decoded(entry.bytes);
  if (text === undefined) return { wrong: `its ${MODEL} is not text in UTF-8` };
  if (/<!(?!--)/.test(text)) return { wrong: `its ${MODEL} declares things of its own, which a 3MF may not` };
  if (!text.trimEnd().endsWith("</model>")) return { wrong: `its ${MODEL} is cut off` };
  return carriedIn(text);
}

function entryOf(bytes: Uint8Array, wanted: string): { readonly bytes: Uint8Array } | { readonly wrong: string } {
  const found: Uint8Array[][] = [];
  let entries = 0;
  let size = 0;
  const unzip = new Unzip((file) => {
    if (++entries > MOST_ENTRIES) throw new RangeError("it has more than 1000 entries");
    if (file.name !== wanted) return;
    const pieces: Uint8Array[] = [];
    found.push(pieces);
    if (found.length > 1) throw new RangeError(`it holds ${wanted} twice`);
    file.ondata = (fault, piece) => {
      if (fault) throw fault;
      size += piece.length;
      if (size > LARGEST_MODEL) throw new RangeError(`its ${wanted} unpacks to more than 32 MB`);
      pieces.push(piece.slice());
    };
    file.start();
  });
  unzip.register(UnzipInflate);
  try {
    for (let at = 0; at < bytes.length; at += STEP)
      unzip.push(bytes.subarray(at, at + STEP), at + STEP >= bytes.length);
  } catch (thrown) {
    return { wrong: thrown instanceof RangeError ? thrown.message : "it is damaged, or no zip file" };
  }
  const [pieces] = found;
  if (pieces === undefined) return { wrong: `it holds no ${wanted}` };
  return { bytes: joined(pieces, size) };
}

function joined(pieces: readonly Uint8Array[], size: number): Uint8Array {
  const whole = new Uint8Array(size);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

function decoded(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

const METADATA = /<metadata\s+name="([^"<]{1,80})"[^<>]{0,200}>([^<]*)<\/metadata>/g;

/** What stands before the solids says what they are. Another program may call our space by another prefix. */
function carriedIn(model: string): Carried | { readonly wrong: string } {
  const head = model.slice(0, Math.max(0, model.indexOf("<resources")));
  const [, prefix] = new RegExp(`xmlns:([A-Za-z_][\\w.-]{0,40})="${SPACE}"`).exec(head) ?? [];
  if (prefix === undefined) return { wrong: "it carries no preset of tramwright" };
  const all = [...head.matchAll(METADATA)].map(([, name = "", text = ""]) => ({ name, text: plain(text) }));
  const only = (name: string) => {
    const [first, ...more] = all.filter((one) => one.name === name);
    return more.length > 0 ? undefined : first?.text;
  };
  const preset = only(`${prefix}:preset`);
  if (preset === undefined) return { wrong: "it carries no preset of tramwright, or more than one" };
  return { preset, hash: only(`${prefix}:hash`) ?? "", application: only("Application") ?? "", model };
}

const NAMED: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/** Returns text as it was before it was put into XML. */
function plain(text: string): string {
  return text.replace(/&(?:#(\d{1,7})|#x([\da-fA-F]{1,6})|(\w{2,4}));/g, (whole, decimal, hex, name) => {
    if (name !== undefined) return NAMED[name] ?? whole;
    const code = decimal === undefined ? Number.parseInt(hex, 16) : Number(decimal);
    return code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });
}
