import type { MessagePort } from "node:worker_threads";
import { asCarved } from "../build/builders.ts";
import { type Carved, carve, type PieceWork } from "../build/carve.ts";
import { meetingsOf } from "../build/clash/meetings.ts";
import { type Kernel, loadKernel } from "../geometry/kernel.ts";
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
  let carved: readonly Carved[] = [];
  const carveAndAnswer = (work: PieceWork, index: number, kernel: Kernel) => {
    const one = carve(work, kernel);
    answer({ index, carved: one });
    return one;
  };
  port.on("message", async (order: Order) => {
    const kernel = await loading;
    if ("works" in order) {
      carved = order.works.map((work, index) => carveAndAnswer(work, index, kernel));
      answer("all carved");
      return;
    }
    const meshes = new Map(carved.map(({ mesh }, index) => [order.carved[index] as Solid, mesh]));
    const found = meetingsOf(asCarved(order.machine, meshes), kernel);
    // Set by the build's trial run only, which ends with the last answer.
    if (process.env.TRAMWRIGHT_KEEP_COMPILED !== undefined) keepCompiled();
    answer({ found });
  });
}
