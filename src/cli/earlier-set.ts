import { join } from "node:path";
import type { Earlier } from "../build/stage-set.ts";
import { MANIFEST, type ManifestFile, readManifest } from "../outputs/manifest.ts";
import { tryBytes, tryOrdinary } from "./file-text.ts";
import { sha256 } from "./sha256.ts";

/** Returns what an earlier run left in the folder; undefined where there is no manifest of ours. */
export function earlierIn(folder: string): Earlier | undefined {
  const read = tryOrdinary(join(folder, MANIFEST));
  const manifest = "text" in read ? readManifest(read.text) : undefined;
  if (manifest === undefined) return undefined;
  // Asked more than once in a run.
  const known = new Map<string, boolean>();
  const intact = (file: ManifestFile): boolean => {
    const before = known.get(file.name) ?? isIntact(folder, file);
    known.set(file.name, before);
    return before;
  };
  return { manifest, intact };
}

function isIntact(folder: string, { name, bytes, sha256: digest }: ManifestFile): boolean {
  const there = tryBytes(join(folder, name), bytes);
  return there !== undefined && sha256(there) === digest;
}
