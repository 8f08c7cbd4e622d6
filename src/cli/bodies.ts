import { deserialize, serialize } from "node:v8";
import type { MessagePort } from "node:worker_threads";
import { type PieceWork, pieceResult } from "../build/piece-work.ts";
import { type Kernel, loadKernel } from "../geometry/kernel.ts";
import { breath } from "./breath.ts";
import { exists, readShipped, shipped, writeShipped } from "./files.ts";
import { type Answer, type Orders, type Told, taken } from "./two-builders.ts";

/** Bodies of the build's trial run, for practice. */
const PRACTICE = "practice.bin";

/**
 * Builds and verifies the bodies that the port asks for. Until it does, it builds those of the build's trial run and
 * throws them away: the first thread is still working out what to build, and what V8 has compiled and optimised by then
 * builds the real ones in half of the time. `keepCompiled` is for the trial run.
 */
export function serve(port: MessagePort, keepCompiled: () => void): void {
  let kernel: Promise<Kernel> | undefined;
  let asked = false;
  const answer = (one: Answer) => port.postMessage(one);
  const practise = async () => {
    const ready = await kernel;
    for (const work of practice()) {
      if (asked || ready === undefined) return;
      pieceResult(work, ready);
      await breath();
    }
  };
  const build = async ({ works, next }: Orders) => {
    const ready = await kernel;
    for (let index = taken(next); ready !== undefined && index < works.length; index = taken(next)) {
      const work = works[index];
      if (work !== undefined) answer({ index, result: pieceResult(work, ready) });
    }
    // Set by the build's trial run only.
    if (process.env.TRAMWRIGHT_KEEP_COMPILED !== undefined) {
      keepCompiled();
      writeShipped(PRACTICE, serialize(works));
    }
    answer("nothing left");
  };
  port.on("message", (told: Told) => {
    if ("kernel" in told) {
      kernel = loadKernel(Promise.resolve(told.kernel));
      if (process.env.TRAMWRIGHT_KEEP_COMPILED === undefined) practise();
    } else {
      asked = true;
      build(told.orders);
    }
  });
}

function practice(): readonly PieceWork[] {
  return exists(shipped(PRACTICE)) ? deserialize(readShipped(PRACTICE)) : [];
}
