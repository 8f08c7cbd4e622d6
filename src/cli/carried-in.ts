import { type Carried, LARGEST, readThreeMf } from "../outputs/package/read-three-mf.ts";
import { sizeOf, tryBytes } from "./files.ts";
import { EXIT, trouble } from "./io.ts";

/** Whether a name is that of a 3MF package. */
export const isPackage = (path: string): boolean => /\.3mf$/i.test(path);

/** Returns a 3MF package with the preset that it carries; a file that has none ends the program with the reason. */
export function carriedIn(path: string): { readonly carried: Carried; readonly bytes: Uint8Array } {
  if (sizeOf(path) > LARGEST) throw trouble(`cannot read ${path}: it is larger than 32 MB`, EXIT.files);
  const bytes = tryBytes(path);
  if (bytes === undefined)
    throw trouble(`cannot read ${path}: there is no such file, or it may not be read`, EXIT.files);
  const carried = readThreeMf(bytes);
  if ("wrong" in carried) throw trouble(`cannot take a preset out of ${path}: ${carried.wrong}`, EXIT.files);
  return { carried, bytes };
}
