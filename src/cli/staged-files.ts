import { mkdirSync, rmSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { isFolder, type OutputFile, removeAbandoned, staging, stagingFolder, writeBegun } from "./files.ts";

/** Files of a set that are written down before all of it is there, in a hidden folder beside its place. */
export interface StagedFiles {
  /** Writes files as far as that can be done already. What is in the way is told when the whole set is put in place. */
  readonly put: (files: readonly OutputFile[]) => void;
  /** Waits until all of them are down on the disk, which goes on beside other work. */
  readonly settled: () => Promise<void>;
  /** Hands over the hidden folder, made if need be, and what stands in it by its names; whoever has it removes it. */
  readonly take: () => { readonly stage: string; readonly written: ReadonlyMap<string, Uint8Array> };
  /** Removes what was not taken. */
  readonly drop: () => void;
}

/**
 * Returns what files of a set in `folder` are written with before its time: where the folder above it is not there yet,
 * in the nearest one that is, which lies on the same disk.
 */
export function stagedFiles(folder: string): StagedFiles {
  const above = dirname(resolve(folder));
  const written = new Map<string, Uint8Array>();
  let pending: Promise<boolean>[] = [];
  let stage: string | undefined;
  const begin = (): string => {
    const there = nearestFolder(above);
    // What a run that was killed left in the output folder is removed when that folder is looked at.
    if (there !== above) removeAbandoned(there);
    const begun = stagingFolder(there);
    staging.add(begun);
    stage = begun;
    return begun;
  };
  const drop = () => {
    if (stage === undefined) return;
    rmSync(stage, { recursive: true, force: true });
    staging.delete(stage);
    stage = undefined;
    written.clear();
  };
  return {
    put: (files) => {
      try {
        const fresh = join(stage ?? begin(), "set");
        for (const { name, bytes } of files) {
          if (written.get(name) === bytes) continue;
          mkdirSync(dirname(join(fresh, name)), { recursive: true });
          pending.push(writeBegun(join(fresh, name), bytes));
          written.set(name, bytes);
        }
      } catch {
        drop();
      }
    },
    settled: async () => {
      const down = await Promise.all(pending);
      pending = [];
      if (!down.every(Boolean)) drop();
    },
    take: () => {
      const taken = stage ?? begin();
      stage = undefined;
      return { stage: taken, written };
    },
    drop,
  };
}

/** Returns a folder itself, or the first one above it that is there. */
function nearestFolder(path: string): string {
  return isFolder(path) || dirname(path) === path ? path : nearestFolder(dirname(path));
}
