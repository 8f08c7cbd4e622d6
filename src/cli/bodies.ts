import { deserialize, serialize } from "node:v8";
import type { MessagePort } from "node:worker_threads";
import { type PieceWork, pieceResult } from "../build/piece-work.ts";
import { loadKernel } from "../geometry/kernel.ts";
import { breath } from "./breath.ts";
import { exists, readShipped, shipped, writeShipped } from "./files.ts";
import { type Answer, type Orders, taken } from "./two-builders.ts";

/** Bodies of the build's trial run, for practice. */
const PRACTICE = "practice.bin";

/**
 * Builds and verifies the bodies that the port asks for. Until it does, it builds those of the build's trial run and
 * throws them away: the first thread is still working out what to build, and what V8 has compiled and optimised by then
 * builds the real ones in half of the time. `keepCompiled` is for the trial run.
 */
export async function serve(port: MessagePort, keepCompiled: () => void): Promise<void> {
  // V8 knows these bytes from the first thread: both wait for one compilation, and share what it optimises later.
  const loading = loadKernel(WebAssembly.compile(readShipped("manifold.wasm")));
  // Set by the build's trial run only.
  const trial = process.env.TRAMWRIGHT_KEEP_COMPILED !== undefined;
  const answer = (one: Answer) => port.postMessage(one);
  let asked = false;
  port.on("message", async ({ works, next }: Orders) => {
    asked = true;
    const kernel = await loading;
    for (let index = taken(next); index < works.length; index = taken(next)) {
      const work = works[index];
      if (work !== undefined) answer({ index, result: pieceResult(work, kernel) });
    }
    if (trial) {
      keepCompiled();
      writeShipped(PRACTICE, serialize(works));
    }
    answer("nothing left");
  });
  const kernel = await loading;
  for (const work of trial ? [] : practice()) {
    if (asked) return;
    pieceResult(work, kernel);
    await breath();
  }
}

function practice(): readonly PieceWork[] {
  return exists(shipped(PRACTICE)) ? deserialize(readShipped(PRACTICE)) : [];
}
