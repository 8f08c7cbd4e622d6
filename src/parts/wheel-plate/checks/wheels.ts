import { above, below, type Check } from "../../check.ts";
import type { Derived } from "../derive.ts";
import { wheelsOf, wheelsOnPlate } from "../layout.ts";
import type { Parameters } from "../parameters.ts";

export type PlateCheck = Check<Parameters, Derived>;

/** What an eccentric must make up: spread of bars, of prints, and the travel that presses. mm. common practice */
const RANGE = 0.3 + 0.2 + 0.1;

const preloadTooLow: PlateCheck = {
  name: "wheel-preload-too-low",
  path: ["preload"],
  why: "the moment lifts a wheel off the bar at every turn of the load, and the carriage rocks",
  trips: { error: { preload: 20 } },
  test: ({ derived }) =>
    below({
      value: derived.preload,
      unit: "N",
      error: derived.preloadLeast,
      says: (limit) =>
        `wheels are pressed with ${derived.preload.toFixed(1)} N and lift off below ${limit.toFixed(1)} N`,
      set: `preload: ${Math.ceil(1.25 * derived.preloadLeast)} N, or leave it out`,
    }),
};

/** A force as a sentence holds it, N. */
const size = (force: number) => String(Number(force.toFixed(1)));

const overloaded: PlateCheck = {
  name: "wheel-overloaded",
  path: ["load"],
  why: "a plastic wheel that stands under more than this gets flat spots, and its bearings dents",
  trips: { warning: { load: 50 }, error: { load: 75 } },
  test: ({ given, derived }) => {
    const limit = given.wheel.values.forceLimit;
    const set = `load: ${Math.floor((given.load * limit) / derived.largest)} N, rows farther apart, or harder wheels`;
    const tyre = above({
      value: derived.largest,
      unit: "N",
      error: 1.5 * limit,
      warning: limit,
      says: (most) =>
        most > limit
          ? `a wheel carries up to ${derived.largest.toFixed(1)} N, over ${size(most)} N: 1.5 times the ${size(limit)} N it bears standing`
          : `a wheel carries up to ${derived.largest.toFixed(1)} N, over the ${size(most)} N it bears standing`,
      set,
    });
    const rating = given.bearing.values.staticRating;
    const bearing = above({
      value: derived.bearingLoad,
      unit: "N",
      error: rating,
      warning: rating / 2,
      says: (most) =>
        `a ${given.bearing.key} bearing carries ${derived.bearingLoad.toFixed(0)} N, over ${size(most)} N: ${most < rating ? "half " : ""}its static rating`,
      set: "load: less, or bearings of a higher static rating",
    });
    return tyre?.level === "error" ? tyre : (bearing ?? tyre);
  },
};

const rangeTooShort: PlateCheck = {
  name: "eccentric-range-too-short",
  path: ["eccentric"],
  why: "bars and prints differ by more than the eccentric makes up, so a wheel cannot be brought to bear",
  trips: { error: { eccentric: { row: "6 mm", offset: 0.5 } } },
  test: ({ given }) => {
    if (!wheelsOf(given).some(({ kind }) => kind === "eccentric")) {
      const set = "right: eccentric for each wheel, or leave left and right out";
      return { level: "error", says: "no wheel has an eccentric, so nothing presses the wheels on the bar", set };
    }
    const { offset } = given.eccentric.values;
    return below({
      value: offset,
      unit: "mm",
      error: RANGE,
      says: (limit) => `the eccentric shifts a wheel by ${offset} mm each way; ${limit.toFixed(1)} mm are needed`,
      set: `eccentric: one with an offset of ${RANGE.toFixed(1)} mm or more`,
    });
  },
};

const mixedSide: PlateCheck = {
  name: "fixed-and-eccentric-on-one-side",
  path: ["right"],
  why: "the fixed wheels of one side hold the carriage straight; an eccentric among them turns it askew when set",
  trips: { error: { left: ["fixed", "eccentric"] } },
  test: ({ given }) => {
    const wheels = wheelsOf(given);
    const kinds = (side: -1 | 1) => new Set(wheels.filter((wheel) => wheel.side === side).map(({ kind }) => kind));
    const set = "left: all fixed, right: all eccentric (leave both out), or the other way round";
    for (const [name, side] of [["left", -1] as const, ["right", 1] as const]) {
      if (kinds(side).size === 1) continue;
      return { level: "error", says: `the ${name} side has fixed and eccentric wheels`, set, path: [name] };
    }
    if (kinds(-1).has("fixed") || kinds(1).has("fixed")) return undefined;
    return { level: "error", says: "both sides have eccentric wheels, and none holds the carriage straight", set };
  },
};

const rowsTooClose: PlateCheck = {
  name: "rows-too-close-for-overhang",
  path: ["rowSpacing"],
  why: "a short carriage under a long arm turns with every bit of play, and the stage's tip shows it many times over",
  trips: { warning: { overhang: 310 }, error: { overhang: 500 } },
  test: ({ given, derived }) =>
    above({
      value: derived.overhangRatio,
      unit: "",
      error: 4,
      warning: 2.5,
      says: (limit) =>
        `the overhang is ${derived.overhangRatio.toFixed(2)} times the row distance, over ${limit} times`,
      set: `rowSpacing: ${Math.ceil(given.overhang / 2.5)} mm or more`,
    }),
};

const collideInRow: PlateCheck = {
  name: "wheels-collide-in-row",
  path: ["rowSpacing"],
  why: "neighbouring wheels on one side rub each other",
  trips: { error: { wheels: 8, rowSpacing: 75 } },
  test: ({ given, derived }) => {
    const need = given.wheel.values.outside + 2;
    const gaps = Math.round(given.rowSpacing / derived.rowPitch);
    return below({
      value: derived.rowPitch,
      unit: "mm",
      error: need,
      says: (limit) => `wheels of one side stand ${derived.rowPitch.toFixed(1)} mm apart, under ${limit.toFixed(1)} mm`,
      set: `rowSpacing: ${Math.ceil(need * gaps)} mm or more${wheelsOnPlate(given) > 4 ? ", or fewer wheels" : ""}`,
    });
  },
};

export const wheelChecks: readonly PlateCheck[] = [
  preloadTooLow,
  overloaded,
  rangeTooShort,
  mixedSide,
  rowsTooClose,
  collideInRow,
];
