import * as z from "zod";
import { angle, length, plainNumber, torque } from "../core/parameter.ts";

const mm = (symbol: string, meaning: string, min: number, max: number, usual: number) =>
  length({ symbol, meaning, min, max }).default(usual);
const count = (symbol: string, meaning: string, min: number, max: number, usual: number) =>
  plainNumber({ symbol, meaning, min, max }).default(usual);
const tightening = (thread: string, usual: number) =>
  torque({ symbol: `T_${thread}`, meaning: `torque for ${thread} bolts on plastic`, min: 0.02, max: 10 }).default(
    usual,
  );

/**
 * What one printer does to a part: a small file of its own, filled in from a fit coupon. Diametral shrink is what a
 * printed hole lacks of its drawn diameter; growth is per side. Defaults: common practice for a 0.4 nozzle.
 */
export const printerSchema = z
  .strictObject({
    nozzle: mm("nozzle", "nozzle bore", 0.15, 1.2, 0.4),
    line: mm("line", "line width", 0.12, 1.8, 0.45),
    layer: mm("layer", "layer height", 0.05, 0.96, 0.2),
    firstLayer: mm("first", "first layer height", 0.1, 0.96, 0.2),
    wallLines: count("wallLines", "wall lines round the outline", 1, 20, 5),
    coverLayers: count("cover", "closed layers at bottom and top", 1, 40, 5),
    infill: plainNumber({ symbol: "infill", meaning: "infill in per cent", min: 0, max: 100, whole: false }).default(
      40,
    ),
    holeShrinkVertical: mm("holeShrinkV", "what a hole with an upright axis lacks in diameter", -0.1, 0.6, 0.2),
    holeShrinkHorizontal: mm("holeShrinkH", "what a hole with a level axis lacks in diameter", -0.1, 0.6, 0.25),
    outerGrowth: mm("outerGrowth", "how far an outside face stands proud", -0.2, 0.3, 0.05),
    firstLayerSpread: mm("spread", "how far the first layer spreads", 0, 0.6, 0.3),
    bridgeComfort: mm("bridge", "longest bridge that prints well", 2, 60, 10),
    bridgeLimit: mm("bridgeLimit", "longest bridge that prints at all", 2, 80, 20),
    overhang: angle({ symbol: "overhang", meaning: "steepest overhang from upright", min: 20, max: 70 }).default(45),
    materialShrink: plainNumber({
      symbol: "shrink",
      meaning: "what a long print lacks in length, in per cent, across the bed",
      min: 0,
      max: 3,
      whole: false,
    }).default(0),
    bedX: mm("bedX", "bed width", 60, 1000, 220),
    bedY: mm("bedY", "bed depth", 60, 1000, 220),
    bedZ: mm("bedZ", "build height", 60, 1000, 250),
    torqueM3: tightening("M3", 0.2),
    torqueM4: tightening("M4", 0.4),
    torqueM5: tightening("M5", 0.6),
    torqueM6: tightening("M6", 1.0),
    torqueM8: tightening("M8", 2.0),
  })
  .superRefine((printer, ctx) => {
    const { nozzle, line, layer, firstLayer, wallLines } = printer;
    const complain = (path: string, message: string, set: string) =>
      ctx.addIssue({ code: "custom", path: [path], message, params: { set } });
    const [thin, wide, tall] = [0.8 * nozzle, 1.5 * nozzle, 0.8 * nozzle];
    const between = `${thin.toFixed(2)} to ${wide.toFixed(2)} mm`;
    if (line < thin || line > wide)
      complain("line", `a ${line} mm line does not come from a ${nozzle} mm nozzle`, between);
    if (layer > tall)
      complain("layer", `a ${layer} mm layer is too high for a ${nozzle} mm nozzle`, `at most ${tall.toFixed(2)} mm`);
    if (firstLayer > tall)
      complain("firstLayer", `a ${firstLayer} mm first layer is too high`, `at most ${tall.toFixed(2)} mm`);
    if (wallLines < 2) complain("wallLines", "a part that carries load needs at least 2 wall lines", "2 to 20");
  });

/** One printer's settings and errors, in mm, N·m and degrees. */
export type Printer = z.output<typeof printerSchema>;

/** A printer nobody has calibrated: the defaults. */
export const UNCALIBRATED: Printer = printerSchema.parse({});

/** Returns the tightening torque in N·m that this printer's owner uses on plastic. */
export function boltTorque(printer: Printer, thread: string): number {
  const torques: Readonly<Record<string, number>> = {
    M3: printer.torqueM3,
    M4: printer.torqueM4,
    M5: printer.torqueM5,
    M6: printer.torqueM6,
    M8: printer.torqueM8,
  };
  return torques[thread] ?? printer.torqueM3;
}
