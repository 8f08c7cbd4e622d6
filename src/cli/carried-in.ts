import { type Carried, LARGEST, readThreeMf } from "../outputs/package/read-three-mf.ts";
import { bytesUpTo } from "./file-text.ts";
import { EXIT, trouble } from "./io.ts";

/** Whether a name is that of a 3MF package. */
export const isPackage = (path: string): boolean => /\.3mf$/i.test(path);

/** Returns a 3MF package with the preset that it carries; a file that has none ends the program with the reason. */
export function carriedIn(path: string): { readonly carried: Carried; readonly bytes: Uint8Array } {
  const read = bytesUpTo(path, LARGEST);
  if ("reason" in read) throw trouble(`cannot read ${path}: ${read.reason}`, EXIT.files);
  const carried = readThreeMf(read.bytes);
  if ("wrong" in carried) throw trouble(`cannot take a preset out of ${path}: ${carried.wrong}`, EXIT.files);
  return { carried, bytes: read.bytes };
}
