import { bounded } from "./bounded.ts";

/** Length of a compression spring with closed ends when all its coils touch. */
export const springSolidLength = bounded({
  name: "spring-solid-length",
  title: "Solid length of a compression spring",
  inputs: {
    totalCoils: { symbol: "N_t", unit: "", meaning: "total coils, the two end coils counted" },
    wire: { symbol: "d", unit: "mm", meaning: "wire diameter" },
    ground: { symbol: "ground", unit: "", meaning: "1 when the ends are ground flat, 0 when they are not" },
  },
  results: { solidLength: { symbol: "L_solid", unit: "mm", meaning: "length at which the coils touch" } },
  formulas: { solidLength: "(N_t + 1 - ground) * d" },
  source: "shigley: Table 10-1, from memory",
  valid:
    "closed ends. Sources differ for ends that are not ground: EN 13906-1 adds another half wire, so measure such a " +
    "spring pressed flat when the margin is small",
  differs: [
    "ends closed but not ground: one wire more by `shigley`, which is used, one and a half by EN 13906-1, none on one page",
    "plain ends: one wire more than the coils in `shigley` and EN 13906-1, none on one page; they are not offered",
  ],
  examples: [
    {
      given: { totalCoils: 8, wire: 1.2, ground: 1 },
      gives: { solidLength: 9.6 },
      within: 1e-9,
      source: "shigley: own arithmetic",
    },
    {
      given: { totalCoils: 12.5, wire: 0.9398, ground: 0 },
      gives: { solidLength: 12.687 },
      within: 1e-4,
      source: "shigley: Example 10-1, 0.4995 in",
    },
  ],
  limits: { totalCoils: { above: 2 }, wire: { above: 0 }, ground: { from: 0, to: 1, whole: true } },
  compute: ({ totalCoils, wire, ground }) => ({ solidLength: (totalCoils + 1 - ground) * wire }),
});
