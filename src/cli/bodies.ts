import type { MessagePort } from "node:worker_threads";
import { asCarved } from "../build/builders.ts";
import { type Carved, carve } from "../build/carve.ts";
import { meetingsOf } from "../build/clash/meetings.ts";
import { loadKernel } from "../geometry/kernel.ts";
import type { Solid } from "../geometry/solid.ts";
import { kernelCode } from "./kernel-code.ts";
import { runShortly } from "./run-shortly.ts";
import type { Answer, Order } from "./two-builders.ts";

/** Does on the second thread what the first one orders through the port. `keepCompiled` is for the build's trial run. */
export function serve(port: MessagePort, keepCompiled: () => void): void {
  const answer = (one: Answer) => port.postMessage(one);
  const loading = loadKernel(kernelCode());
  // The first thread has its program by now. If it has not, what was compiled of it is lost, and time with it.
  runShortly();
  let carved: Carved[] = [];
  port.on("message", async (order: Order) => {
    const kernel = await loading;
    if ("work" in order) {
      const one = carve(order.work, kernel);
      // The first body of a machine: those of the machine before are done with.
      if (order.index === 0) carved = [];
      carved.push(one);
      answer({ index: order.index, carved: one });
      return;
    }
    const meshes = new Map(order.carved.flatMap((solid, index) => pairOf(solid, carved[index])));
    const found = meetingsOf(asCarved(order.machine, meshes), kernel);
    // Set by the build's trial run only, which ends with the last answer.
    if (process.env.TRAMWRIGHT_KEEP_COMPILED !== undefined) keepCompiled();
    answer({ found });
  });
}

const pairOf = (solid: Solid, carved: Carved | undefined) =>
  carved === undefined ? [] : [[solid, carved.mesh] as const];
