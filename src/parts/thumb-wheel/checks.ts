import { THREADS } from "../../catalogue/threads.ts";
import { row } from "../../core/table.ts";
import { below, type Check } from "../check.ts";
import { type Derived, nutOf, washerOf } from "./dimensions.ts";
import type { Parameters } from "./parameters.ts";
import { LEAST_FLOOR } from "./wheel-size.ts";

type WheelCheck = Check<Parameters, Derived>;

/** Least gap to the bar and least wall round the nut, mm. Source: design rule. */
export const BAR_GAP = 2;
export const LEAST_WALL = 2;

const floorTooThin: WheelCheck = {
  name: "thumb-wheel-floor-too-thin",
  path: ["height"],
  why: "the spring pulls the nut through a thin floor, and the plate drops on that corner",
  trips: { error: { height: 7.4 } },
  test: ({ derived }) =>
    below({
      value: derived.floor,
      unit: "mm",
      error: LEAST_FLOOR,
      says: (limit) => `${derived.floor.toFixed(2)} mm of plastic lie under the nut, fewer than ${limit} mm`,
      set: `height: ${(derived.height - derived.floor + LEAST_FLOOR).toFixed(1)} mm or more, or leave it out`,
    }),
};

const smallerThanWasher: WheelCheck = {
  name: "thumb-wheel-smaller-than-washer",
  path: ["diameter"],
  why: "a washer that reaches past the whole face lies on the tips of the lobes and tilts the wheel",
  trips: { error: { washer: { row: "M5", outside: 22 } } },
  test: ({ given, derived }) => {
    const { outside } = washerOf(given);
    return below({
      value: derived.face,
      unit: "mm",
      error: outside,
      says: () => `the slider face is whole to ${derived.face.toFixed(1)} mm, the washer is ${outside} mm wide`,
      set: `diameter: ${(outside / 0.875).toFixed(1)} mm or more, or a smaller washer`,
    });
  },
};

const hitsBar: WheelCheck = {
  name: "thumb-wheel-hits-bar",
  path: ["barDistance"],
  why: "a wheel that meets the bar stops the plate from growing, and the plate bows",
  trips: { error: { barDistance: 15 } },
  test: ({ given, derived }) =>
    below({
      value: derived.barGap,
      unit: "mm",
      error: BAR_GAP,
      says: (limit) =>
        `at full excursion the wheel stands ${derived.barGap.toFixed(2)} mm from the bar, under ${limit} mm`,
      set: `barDistance: ${(BAR_GAP + derived.radius + given.excursion).toFixed(1)} mm or more, or a smaller wheel`,
    }),
};

const wallTooThin: WheelCheck = {
  name: "thumb-wheel-wall-too-thin",
  path: ["diameter"],
  why: "the nut's corner splits the wheel at a scallop the first time it is turned hard",
  trips: { error: { nut: { row: "M5", acrossFlats: 15 } } },
  test: ({ derived }) =>
    below({
      value: derived.wall,
      unit: "mm",
      error: LEAST_WALL,
      says: (limit) =>
        `between the nut's corner and a scallop stand ${derived.wall.toFixed(2)} mm of plastic, under ${limit} mm`,
      set: `diameter: ${((2 * (derived.corner + LEAST_WALL)) / 0.875).toFixed(1)} mm or more`,
    }),
};

const dataDisagrees: WheelCheck = {
  name: "hardware-data-disagrees",
  path: ["nut"],
  why: "a nut or washer of impossible size gives a wheel that fits nothing",
  trips: { error: { nut: { row: "M5", acrossFlats: 5 } } },
  test: ({ given }) => {
    const { diameter } = row(THREADS, given.bolt).values;
    const { acrossFlats, height } = nutOf(given);
    const { hole, outside, thickness } = washerOf(given);
    if (hole < diameter || outside <= hole || thickness <= 0) {
      const says = `a washer ${hole} x ${outside} does not go on the ${given.bolt} bolt`;
      return { level: "error", says, set: "washer: as measured", path: ["washer"] };
    }
    if (acrossFlats >= 1.3 * diameter && height >= 0.3 * diameter && height <= 2 * diameter) return undefined;
    const says = `a nut of ${acrossFlats} mm across flats and ${height} mm is no nut of ${given.bolt}`;
    return { level: "error", says, set: "nut: as measured" };
  },
};

export const checks: readonly WheelCheck[] = [floorTooThin, smallerThanWasher, hitsBar, wallTooThin, dataDisagrees];
