import type { Topic } from "../fact.ts";
import type { FootChoice, LoadCases, LoopChoice, MotorPulley, PrinterOf } from "../machine.ts";
import type { Plan } from "../schema/index.ts";

/** Returns the foot of each screw: hub and rings chosen, seat on a layer, residual and shim, losers with why. */
export function chooseFeet(
  _plan: Plan,
  _pulleys: readonly MotorPulley[],
  _loops: readonly LoopChoice[],
  _loads: LoadCases | undefined,
  _printer: PrinterOf,
): Topic & { readonly feet: readonly FootChoice[] } {
  return { feet: [], sections: [], diagnostics: [] };
}
