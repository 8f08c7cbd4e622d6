import type { MessagePort } from "node:worker_threads";
import { carve } from "../build/carve.ts";
import { meetingsOf } from "../build/clash/meetings.ts";
import { loadKernel } from "../geometry/kernel.ts";
import { readShipped } from "./files.ts";
import type { Answer, Order } from "./two-builders.ts";

/** Does on the second thread what the first one orders through the port. `keepCompiled` is for the build's trial run. */
export function serve(port: MessagePort, keepCompiled: () => void): void {
  // V8 knows these bytes from the first thread: both wait for one compilation, and share what it optimises later.
  const loading = loadKernel(WebAssembly.compile(readShipped("manifold.wasm")));
  const answer = (one: Answer, handedOver: ArrayBuffer[] = []) => port.postMessage(one, handedOver);
  port.on("message", async (order: Order) => {
    const kernel = await loading;
    if ("machine" in order) answer({ found: meetingsOf(order.machine, kernel) });
    else
      for (const [index, work] of order.works.entries()) {
        const carved = carve(work, kernel);
        const { positions, triangles } = carved.mesh;
        answer({ index, carved }, [positions.buffer, triangles.buffer] as ArrayBuffer[]);
      }
    // Set by the build's trial run only.
    if (process.env.TRAMWRIGHT_KEEP_COMPILED !== undefined) keepCompiled();
    answer("nothing left");
  });
}
