import { above, below } from "../../check.ts";
import { fittings } from "../fittings.ts";
import { wheelsOf } from "../layout.ts";
import type { PlateCheck } from "./wheels.ts";

/** Length by which the standoffs of the two sides may differ, mm. Source: design rule. */
const ALIKE = 0.1;
/** Bending stress of an 8.8 bolt that comes and goes, and the most it may see at all, MPa. common practice */
const STRESS = { warning: 200, error: 400 };

const noStockBolt: PlateCheck = {
  name: "no-stock-axle-bolt",
  path: ["stock"],
  why: "a nut without two threads past it works loose; a bolt that sticks out hits what it passes",
  trips: { error: { stock: [30] }, warning: { tipRoom: 5 } },
  test: ({ given, derived }) => {
    const { bolt, stock } = fittings(given);
    const need = Math.max(derived.neededFixed, derived.neededEccentric);
    if (derived.boltLength === 0) {
      const longest = Math.max(0, ...stock);
      const instead =
        longest < need
          ? `the longest that can be had is ${longest} mm`
          : `none that can be had is long enough and threaded where the nut sits`;
      return {
        level: "error",
        says: `the axles need ${bolt} bolts of ${need.toFixed(1)} mm; ${instead}`,
        set: `stock: with a length of ${Math.ceil(need)} mm or more, or shorter spacers`,
        found: longest,
        limit: need,
        unit: "mm",
      };
    }
    const past = Math.max(derived.pastFixed, derived.pastEccentric);
    return above({
      value: past,
      unit: "mm",
      warning: given.tipRoom - 1,
      says: () =>
        `${bolt} x ${derived.boltLength} sticks out ${past.toFixed(1)} mm past its nut; ${given.tipRoom} mm are free`,
      set: `tipRoom: ${Math.ceil(past + 1)} mm or more, or cut the bolts`,
    });
  },
};

const shimTouches: PlateCheck = {
  name: "shim-touches-outer-ring",
  path: ["shim"],
  why: "a ring that reaches past the inner ring rubs on the shield, and one on both rings stops the wheel",
  trips: { warning: { shim: "5 x 10 x 1.0" }, error: { shim: { row: "5 x 10 x 1.0", outside: 14 } } },
  test: ({ given, derived }) => {
    const { innerLand, outerLand } = given.wheel.values;
    const what = given.shimmed ? "the ring" : "what lies";
    return above({
      value: derived.touching,
      unit: "mm",
      error: outerLand,
      warning: innerLand,
      says: (limit) =>
        `${what} beside the wheel is ${derived.touching.toFixed(1)} mm wide, the bearing's ${limit === outerLand ? "outer ring begins at" : "inner ring ends at"} ${limit} mm`,
      set: given.shimmed ? `shim: a ring at most ${innerLand} mm wide` : "shimmed: true",
    });
  },
};

const axleBends: PlateCheck = {
  name: "axle-bolt-bends",
  path: ["load"],
  why: "the bolt that holds a wheel off its plate bends, and the wheel leans out of its groove",
  trips: { warning: { load: 50 }, error: { load: 100 } },
  test: ({ given, derived }) =>
    above({
      value: derived.axleStress,
      unit: "MPa",
      ...STRESS,
      says: (limit) =>
        `${derived.largest.toFixed(0)} N at ${derived.axleArm.toFixed(1)} mm bend the axle with ${derived.axleStress.toFixed(0)} MPa, over ${limit} MPa`,
      set: given.sandwich ? "load: less, or rows farther apart" : "sandwich: true, or rows farther apart",
    }),
};

const planesDiffer: PlateCheck = {
  name: "wheel-planes-differ",
  path: ["spacerLength"],
  why: "wheels that stand off differently pull the plate askew and run on one flank of the groove",
  trips: { error: { spacerLength: 6.2 } },
  test: ({ derived }) => {
    const { standoff, spacerLength } = derived;
    return above({
      value: Math.abs(standoff - spacerLength),
      unit: "mm",
      error: ALIKE,
      says: (limit) =>
        `fixed wheels stand off ${spacerLength.toFixed(2)} mm, eccentric ones ${standoff.toFixed(2)} mm; ${limit} mm apart is the most`,
      set: `spacerLength: ${standoff.toFixed(2)} mm, or leave it out`,
    });
  },
};

const washerTooSmall: PlateCheck = {
  name: "eccentric-washer-too-small",
  path: ["eccentricWasher"],
  why: "the bolt swings in the wide hole; a small washer tips into it and tears the plastic",
  trips: { error: { eccentricWasher: { row: "M5", outside: 12 } } },
  test: ({ given, derived }) => {
    if (!wheelsOf(given).some(({ kind }) => kind === "eccentric")) return undefined;
    const { outside } = fittings(given).fender;
    return below({
      value: outside,
      unit: "mm",
      error: derived.eccentricHole + 5,
      says: (limit) => `the washer over the eccentric's hole is ${outside} mm wide, under ${limit.toFixed(1)} mm`,
      set: `eccentricWasher: one ${Math.ceil(derived.eccentricHole + 5)} mm wide or more`,
    });
  },
};

export const axleChecks: readonly PlateCheck[] = [noStockBolt, shimTouches, axleBends, planesDiffer, washerTooSmall];
