import { layerAbove } from "../../../printing/layers.ts";
import type { Printer } from "../../../printing/printer.ts";
import { above, below, type Check } from "../../check.ts";
import type { Derived } from "../derive/index.ts";
import { tallestSeat } from "../derive/stack.ts";
import type { Parameters } from "../parameters.ts";

export type FootCheck = Check<Parameters, Derived>;

const f = (value: number, digits = 1) => value.toFixed(digits);

/** Height over the lowest seat that is kept in reserve, mm. A rule of this project. */
const RESERVE = 1;

/** A wide nozzle whose layers no shim makes up for. */
const COARSE = { nozzle: 1.2, line: 1.3, layer: 0.9, firstLayer: 0.9 };

const seatTooLow: FootCheck = {
  name: "seat-below-lowest-floor",
  path: ["beltPlane"],
  why: "the floor under the bearing would be too thin, or the screw's tip would meet the bar",
  trips: { error: { beltPlane: -1 }, warning: { beltPlane: 0 } },
  test: ({ given, derived, printer }) => {
    const { lowestSeat, seatWanted, seat } = derived;
    // Where not even one layer lies under the seat, the seat as drawn says nothing of the one that is wanted.
    const value = belowBed(derived, printer) ? seatWanted : seat;
    const raise = seatAtLeast(lowestSeat + RESERVE, given, derived, printer) - seatWanted;
    return below({
      value,
      unit: "mm",
      error: lowestSeat,
      warning: lowestSeat + RESERVE,
      says: (limit) => `the seat comes to ${f(value, 2)} mm; ${allowed(limit, lowestSeat)}`,
      set: [`beltPlane: ${f(raise, 2)} mm higher`, ...otherWaysUp(given, derived)].join(", or "),
    });
  },
};

/** Returns what the limit is that a seat is held against: the lowest that the floor allows, or the reserve over it. */
function allowed(limit: number, lowestSeat: number): string {
  const least = `the floor allows ${f(lowestSeat, 2)} mm`;
  return limit > lowestSeat
    ? `${least}, and the last ${RESERVE} mm over that, to ${f(limit, 2)} mm, is a reserve`
    : least;
}

/** Returns the lowest seat not under a height that can be printed: a bed face on the bar fixes the layers. mm */
function seatAtLeast(height: number, { mount }: Parameters, { bed }: Derived, printer: Printer): number {
  return mount === "on-top" || mount === "under" ? bed + layerAbove(height - bed, printer) : height;
}

/** Whether the wanted seat lies below the first layer, so that it cannot be drawn at all. */
function belowBed({ seatWanted, bed }: Derived, { firstLayer }: Printer): boolean {
  return seatWanted < bed + firstLayer;
}

/** What else raises the seat or lowers the floor, of what this foot does not do yet. */
function otherWaysUp({ mount, thrust }: Parameters, { hubPoints, offsetUp, offsetDown, bought, padDepth }: Derived) {
  return [
    ...(hubPoints === "down" && offsetDown > offsetUp ? ["hub: up"] : []),
    ...(bought.washers.length > 1 ? ["fewer rings"] : []),
    ...(thrust === "collar" ? ["a thrust without the collar"] : []),
    ...(mount === "on-top" && padDepth === 0 ? ["a shorter tipLength"] : []),
    ...(mount === "on-top" ? ["mount: on-side"] : []),
    ...(mount === "on-side" || mount === "in-corner" ? ["mount: under"] : []),
    ...(mount === "on-post" ? ["a lower lowestZ"] : []),
    "a thinner bearing",
  ];
}

const washerSpans: FootCheck = {
  name: "washer-spans-both-rings",
  path: ["washers"],
  why: "the outer ring stands still; a ring that reaches it drags and grinds, one on the shield rubs",
  trips: { error: { washers: [{ row: "M8", outside: 20 }] }, warning: { washers: ["M8"] } },
  test: ({ given, derived: { lowestOutside, bought } }) =>
    above({
      value: lowestOutside,
      unit: "mm",
      error: bought.bearing.outerLand,
      warning: bought.bearing.innerLand,
      says: (limit) =>
        `what lies on the ${given.bearing.key} is ${f(lowestOutside)} mm wide and reaches past its ${f(limit)} mm`,
      set: `washers: a metal ring ${bought.bearing.bore} x ${Math.floor(bought.bearing.innerLand)}`,
    }),
};

const shoulderOff: FootCheck = {
  name: "shoulder-bore-off-outer-land",
  path: ["shoulderBore"],
  why: "a smaller bore touches the shield, a larger one leaves the ring without a seat",
  trips: { error: { shoulderBore: 15 } },
  test: ({ derived: { shoulder, bought } }) => {
    const { outside, outerLand } = bought.bearing;
    const [low, high] = [outerLand - 0.2, outside - 1.2];
    const set = `shoulderBore: ${f(outerLand)} mm`;
    const says = `the shoulder's bore is ${f(shoulder)} mm; the outer ring's face runs from ${f(outerLand)} to ${f(outside)} mm`;
    return (
      below({ value: shoulder, unit: "mm", error: low, says: () => says, set }) ??
      above({ value: shoulder, unit: "mm", error: high, says: () => says, set })
    );
  },
};

const ringNarrow: FootCheck = {
  name: "shoulder-ring-too-narrow",
  path: ["shoulderBore"],
  why: "a narrow seat is crushed by the screw's thrust, and the pulley sinks out of its plane",
  trips: { error: { shoulderBore: 20.7 }, warning: { shoulderBore: 20 } },
  test: ({ derived: { ring } }) =>
    below({
      value: ring,
      unit: "mm",
      error: 0.8,
      warning: 1.2,
      says: (limit) => `the ring under the bearing is ${f(ring, 2)} mm wide, under ${limit} mm`,
      set: "a smaller shoulderBore, or a bearing with a wider outer ring",
    }),
};

const rubsRim: FootCheck = {
  name: "pulley-rubs-rim",
  path: ["pocketDepth"],
  why: "the pulley turns against the printed rim, wears it and brakes",
  trips: { error: { pocketDepth: 7.4 }, warning: { pocketDepth: 7 } },
  test: ({ derived: { rimGap } }) =>
    below({
      value: rimGap,
      unit: "mm",
      error: 0.8,
      warning: 1.2,
      says: (limit) => `${f(rimGap, 2)} mm lie between rim and pulley, under ${limit} mm`,
      set: "a smaller pocketDepth, or a thicker ring",
    }),
};

const pocketWall: FootCheck = {
  name: "bearing-pocket-wall-too-thin",
  path: ["wall"],
  why: "a thin wall splits along the layers when the belt pulls",
  trips: { error: { wall: 2.5 }, warning: { wall: 3.5 } },
  test: ({ given: { wall } }) =>
    below({
      value: wall,
      unit: "mm",
      error: 3,
      warning: 4,
      says: (limit) => `the wall round the bearing is ${f(wall)} mm, under ${limit} mm`,
      set: "wall: 5 mm",
    }),
};

const pressSplits: FootCheck = {
  name: "press-fit-splits-pocket",
  path: ["pocketFit"],
  why: "the ring stretches the plastic, which cracks within a week",
  trips: { error: { pocketFit: "press", bearing: "688", material: "PLA" } },
  test: ({ given, derived: { interference, bought } }) =>
    above({
      value: interference,
      unit: "%",
      error: bought.material.pressInterference,
      says: (limit) =>
        `the pocket is ${f(interference, 2)} % tighter than the bearing; ${given.material.key} bears ${limit} %`,
      set: "pocketFit: push or drop-in",
    }),
};

const tooTall: FootCheck = {
  name: "seat-too-tall",
  path: ["beltPlane"],
  why: "a tall foot leans under the belt's pull, and the stage may come down on it",
  trips: { error: { beltPlane: 85 }, warning: { beltPlane: 65 } },
  test: ({ given, derived: { seat, pulleyTop } }) => {
    const { stageLowest, mount } = given;
    if (stageLowest !== undefined && pulleyTop + 3 > stageLowest) {
      const says = `the pulley ends at ${f(pulleyTop)} mm and the stage comes down to ${f(stageLowest)} mm: under 3 mm between`;
      return {
        level: "error",
        says,
        set: `beltPlane: ${f(pulleyTop + 3 - stageLowest)} mm lower, or a higher stop`,
        found: pulleyTop,
        limit: stageLowest - 3,
        unit: "mm",
      };
    }
    // Beside a post a foot is no taller than its floor and pocket, wherever it hangs.
    if (mount === "on-post") return undefined;
    return above({
      value: seat,
      unit: "mm",
      error: tallestSeat(given),
      warning: 40,
      says: (limit) => `the seat stands ${f(seat)} mm over the bar, over ${limit} mm`,
      set: "a lower beltPlane, hub: down, or another mount",
    });
  },
};

const planeOff: FootCheck = {
  name: "belt-plane-off-after-shims",
  path: ["beltPlane"],
  why: "the belt climbs to a flange and wears its edge",
  trips: {
    error: { mount: "on-top", beltWidth: 6.8, printer: COARSE },
    warning: { mount: "on-top", printer: COARSE },
  },
  test: ({ given, derived, printer }) => {
    // A seat below the bed is off its plane as a consequence; the check of the floor says what to do.
    if (belowBed(derived, printer)) return undefined;
    const { residual, bought } = derived;
    return above({
      value: Math.abs(residual),
      unit: "mm",
      error: Math.max(0.1, (bought.pulley.toothWidth - given.beltWidth) / 2),
      warning: 0.1,
      says: (limit) => `after shims the belt lies ${f(residual, 2)} mm off its plane, over ${f(limit, 2)} mm`,
      set: "a beltPlane on a layer, or a finer layer",
    });
  },
};

export const seatChecks: readonly FootCheck[] = [
  seatTooLow,
  washerSpans,
  shoulderOff,
  ringNarrow,
  rubsRim,
  pocketWall,
  pressSplits,
  tooTall,
  planeOff,
];
