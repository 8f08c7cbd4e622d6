import type { MessagePort } from "node:worker_threads";
import { carve } from "../build/carve.ts";
import { loadKernel } from "../geometry/kernel.ts";
import { readShipped } from "./files.ts";
import { taken } from "./taken.ts";
import type { Answer, Orders } from "./two-builders.ts";

/** Carves the bodies that the port asks for. `keepCompiled` is for the build's trial run. */
export function serve(port: MessagePort, keepCompiled: () => void): void {
  // V8 knows these bytes from the first thread: both wait for one compilation, and share what it optimises later.
  const loading = loadKernel(WebAssembly.compile(readShipped("manifold.wasm")));
  port.on("message", async ({ works, next }: Orders) => {
    const kernel = await loading;
    for (let index = taken(next); index < works.length; index = taken(next)) {
      const work = works[index];
      if (work === undefined) continue;
      const carved = carve(work, kernel);
      const { positions, triangles } = carved.mesh;
      port.postMessage({ index, carved } satisfies Answer, [positions.buffer, triangles.buffer] as ArrayBuffer[]);
    }
    // Set by the build's trial run only.
    if (process.env.TRAMWRIGHT_KEEP_COMPILED !== undefined) keepCompiled();
    port.postMessage("nothing left" satisfies Answer);
  });
}
