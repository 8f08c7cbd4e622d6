import { deserialize, serialize } from "node:v8";
import type { MessagePort } from "node:worker_threads";
import { carve, type PieceWork } from "../build/carve.ts";
import { meetingsOf } from "../build/clash/meetings.ts";
import { type Kernel, loadKernel } from "../geometry/kernel.ts";
import { breath } from "./breath.ts";
import { exists, readShipped, shipped, writeShipped } from "./files.ts";
import type { Answer, Order } from "./two-builders.ts";

/** Bodies of the build's trial run, for practice. */
const PRACTICE = "practice.bin";

/**
 * Does on the second thread what the first one orders through the port. Until there is an order it carves bodies of the
 * build's trial run and throws them away: the first thread is still working out what to build, and what V8 has compiled
 * by then carves the real ones sooner. `keepCompiled` is for the trial run.
 */
export async function serve(port: MessagePort, keepCompiled: () => void): Promise<void> {
  // V8 knows these bytes from the first thread: both wait for one compilation, and share what it optimises later.
  const loading = loadKernel(WebAssembly.compile(readShipped("manifold.wasm")));
  // Set by the build's trial run only.
  const trial = process.env.TRAMWRIGHT_KEEP_COMPILED !== undefined;
  let asked = false;
  port.on("message", async (order: Order) => {
    asked = true;
    answer(order, await loading, (one, handedOver = []) => port.postMessage(one, handedOver));
    if (!trial) return;
    keepCompiled();
    if ("works" in order) writeShipped(PRACTICE, serialize(order.works));
  });
  const kernel = await loading;
  for (const work of trial ? [] : practice()) {
    if (asked) return;
    carve(work, kernel);
    await breath();
  }
}

function answer(order: Order, kernel: Kernel, post: (one: Answer, handedOver?: ArrayBuffer[]) => void): void {
  if ("machine" in order) post({ found: meetingsOf(order.machine, kernel) });
  else
    for (const [index, work] of order.works.entries()) {
      const carved = carve(work, kernel);
      const { positions, triangles } = carved.mesh;
      post({ index, carved }, [positions.buffer, triangles.buffer] as ArrayBuffer[]);
    }
  post("nothing left");
}

function practice(): readonly PieceWork[] {
  return exists(shipped(PRACTICE)) ? deserialize(readShipped(PRACTICE)) : [];
}
