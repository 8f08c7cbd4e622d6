import { type Carried, LARGEST, readThreeMf } from "../outputs/package/read-three-mf.ts";
import { strangeFile } from "../presets/strange-file.ts";
import { bytesUpTo, insideWords } from "./file-text.ts";
import { EXIT, trouble } from "./io.ts";

/** Whether a name is that of a 3MF package. */
export const isPackage = (path: string): boolean => /\.3mf$/i.test(path);

const CARRIES = "a .3mf that tramwright make wrote carries the preset of its part";

/** Returns why no preset comes out of a file: where it is no package at all, what it is instead. */
function refusal(path: string, bytes: Uint8Array, wrong: string): string {
  const isZip = bytes[0] === 0x50 && bytes[1] === 0x4b;
  if (isZip) return `cannot take a preset out of ${path}: ${wrong}; ${CARRIES}`;
  const strange = strangeFile(path, new TextDecoder().decode(bytes));
  if (strange !== undefined) return `cannot take a preset out of ${path}: ${strange.says}; name ${strange.set}`;
  const here = `rebuild takes only a .3mf; tramwright check ${path} reads a preset in YAML`;
  return `cannot take a preset out of ${path}: it is no 3MF package, or a damaged one; ${here}`;
}

/** Returns a 3MF package with the preset that it carries; a file that has none ends the program with the reason. */
export function carriedIn(path: string): { readonly carried: Carried; readonly bytes: Uint8Array } {
  const read = bytesUpTo(path, LARGEST);
  if ("reason" in read) throw trouble(`cannot read ${path}: ${read.reason}${insideWords(path)}`, EXIT.files);
  const carried = readThreeMf(read.bytes);
  if ("wrong" in carried) throw trouble(refusal(path, read.bytes, carried.wrong), EXIT.files);
  return { carried, bytes: read.bytes };
}
