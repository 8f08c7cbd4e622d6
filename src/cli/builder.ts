// The second thread of a run that makes a whole machine: it builds and verifies bodies until none is left.
import { parentPort, workerData } from "node:worker_threads";
import { pieceResult } from "../build/piece-work.ts";
import { loadKernel } from "../geometry/kernel.ts";
import { type Answer, type Orders, taken } from "./two-builders.ts";

const kernel = loadKernel(Promise.resolve(workerData as WebAssembly.Module));

parentPort?.on("message", ({ works, next }: Orders) => {
  kernel.then((ready) => {
    for (let index = taken(next); index < works.length; index = taken(next)) {
      const work = works[index];
      if (work === undefined) continue;
      parentPort?.postMessage({ index, result: pieceResult(work, ready) } satisfies Answer);
    }
    parentPort?.postMessage("nothing left" satisfies Answer);
  });
});
