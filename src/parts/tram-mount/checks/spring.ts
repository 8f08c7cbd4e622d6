import { isRefusal } from "../../../core/calculation.ts";
import { springRateNeeded } from "../../../mechanics/spring-rate-needed.ts";
import { above, below, type Check, type Finding } from "../../check.ts";
import type { Derived } from "../derive.ts";
import { fittings } from "../fittings.ts";
import type { Parameters } from "../parameters.ts";

export type MountCheck = Check<Parameters, Derived>;

/** Clash allowance, preload and stress that are wanted and that must be. Sources: shigley 10-3, 10-9; design-rule. */
const CLASH = { error: 0.1, warning: 0.15 };
const PRELOAD = { error: 1, warning: 1.5 };
const SHEAR = { error: 0.56, warning: 0.45 };
const SLENDER = 4;
const INDEX = { low: 4, high: 12, lowest: 3, highest: 16 };

export const goesSolid: MountCheck = {
  name: "spring-goes-solid",
  path: ["setLength"],
  why: "a spring that is pressed solid turns the bolt into a rod: the plate bends instead of moving",
  trips: { error: { setLength: 13.6 }, warning: { setLength: 14.2 } },
  neverAccepted: true,
  test: ({ given, derived }) =>
    below({
      value: derived.clash,
      unit: "",
      ...CLASH,
      says: (limit) =>
        `at ${derived.shortest.toFixed(1)} mm the spring keeps ${(100 * derived.clash).toFixed(0)} % of its travel before the coils meet at ${derived.solidLength.toFixed(1)} mm, under ${100 * limit} %`,
      set: longer(given, derived),
    }),
};

function longer(given: Parameters, { springLow, springHigh }: Derived): string {
  if (springLow <= springHigh) return `setLength: ${(Math.ceil(springLow * 10) / 10).toFixed(1)} mm or more`;
  return `a smaller range than ${given.range ?? "the usual one"}, or a spring with more free length`;
}

export const preloadTooLow: MountCheck = {
  name: "spring-preload-too-low",
  path: ["setLength"],
  why: "a spring that barely holds the plate's weight lets the nozzle push the plate down or sideways",
  trips: { error: { setLength: 19.2 }, warning: { setLength: 17.8 } },
  test: ({ given, derived }) => emptyBand(given, derived) ?? lowPreload(derived),
};

/** No set length serves both ends of the travel: says which spring would. */
function emptyBand(given: Parameters, { springLow, springHigh, solidLength, range }: Derived): Finding | undefined {
  if (springLow <= springHigh + 1e-9) return undefined;
  const { freeLength } = fittings(given).spring;
  const needed = springRateNeeded.compute({ solidLength, freeLength, share: given.share, range });
  const smaller = range - (springLow - springHigh) / 2;
  const narrow = smaller >= 0.3 ? `, or range: ${(Math.floor(smaller * 10) / 10).toFixed(1)} mm` : "";
  return {
    level: "error",
    says: `this spring has no set length for ${given.share.toFixed(1)} N and a travel of ${range} mm each way: it must be at least ${springLow.toFixed(2)} mm and at most ${springHigh.toFixed(2)} mm`,
    set: isRefusal(needed)
      ? `spring: one with more free length${narrow}`
      : `spring: one of ${(Math.ceil(needed.rate * 100) / 100).toFixed(2)} N/mm or more at this length${narrow}`,
    found: springLow,
    limit: springHigh,
    unit: "mm",
    path: ["spring"],
  };
}

function lowPreload(derived: Derived): Finding | undefined {
  return below({
    value: derived.preload,
    unit: "",
    ...PRELOAD,
    says: (limit) =>
      `at its longest the spring pushes with ${derived.forceLong.toFixed(1)} N, ${derived.preload.toFixed(2)} times the weight, under ${limit} times`,
    set: `setLength: ${(Math.floor(derived.springHigh * 10) / 10).toFixed(1)} mm or less`,
  });
}

export const mayBuckle: MountCheck = {
  name: "spring-may-buckle",
  path: ["spring"],
  why: "a long thin spring bows sideways and rubs on the bolt; the bolt guides it, so it still works",
  trips: { warning: { spring: { row: "1.2 x 10 x 25", freeLength: 36 } } },
  test: ({ derived }) =>
    above({
      value: derived.slenderness,
      unit: "",
      warning: SLENDER,
      says: (limit) => `the spring is ${derived.slenderness.toFixed(2)} mean diameters long, over ${limit}`,
      set: `spring: one of at most ${(SLENDER * derived.meanDiameter).toFixed(1)} mm free length, or a wider one`,
    }),
};

export const indexOutOfRange: MountCheck = {
  name: "spring-index-out-of-range",
  path: ["spring"],
  why: "springs wound too tight crack, those wound too wide tangle, and no rate can be computed far outside",
  trips: {
    error: { spring: { row: "1.2 x 10 x 25", wire: 2.6 } },
    warning: { spring: { row: "1.2 x 10 x 25", wire: 2.1 } },
  },
  test: ({ derived }) => {
    const { index } = derived;
    const says = `mean diameter over wire is ${index.toFixed(2)}, outside ${INDEX.low} to ${INDEX.high}`;
    const set = "spring: one with an index from 4 to 12; check the wire with calipers";
    if (index < INDEX.lowest || index > INDEX.highest) return { level: "error", says, set, found: index };
    return index < INDEX.low || index > INDEX.high ? { level: "warning", says, set, found: index } : undefined;
  },
};

export const overstressed: MountCheck = {
  name: "spring-overstressed",
  path: ["spring"],
  why: "an overstressed spring sets: it gets shorter, and the plate sinks out of level",
  trips: {
    error: { spring: { row: "1.2 x 10 x 25", strengthA: 1700 } },
    warning: { spring: { row: "1.2 x 10 x 25", strengthA: 2100 } },
  },
  test: ({ derived }) => {
    const { strength, stress } = derived;
    return above({
      value: stress,
      unit: "MPa",
      error: SHEAR.error * strength,
      warning: SHEAR.warning * strength,
      says: (limit) =>
        `at the low end the wire bears ${stress.toFixed(0)} MPa of shear, over ${limit.toFixed(0)} MPa of ${strength.toFixed(0)} MPa strength`,
      set: "a smaller range, a longer setLength, or a spring with more coils",
    });
  },
};

export const dataDisagrees: MountCheck = {
  name: "hardware-data-disagrees",
  path: ["spring"],
  why: "a size that cannot be true gives a bracket that fits nothing",
  trips: { error: { spring: { row: "1.2 x 10 x 25", outside: 7.5 } } },
  test: ({ given, derived }) => springLies(given, derived) ?? otherLies(given, derived),
};

function springLies(given: Parameters, { solidLength }: Derived): Finding | undefined {
  const { spring, thread, bolt } = fittings(given);
  const inside = spring.outside - 2 * spring.wire;
  const least = thread.diameter + 0.4;
  const wrong = (says: string, set: string): Finding => ({ level: "error", says, set });
  if (inside < least - 1e-9) {
    return wrong(
      `the spring is ${inside.toFixed(2)} mm wide inside, and ${bolt} needs ${least.toFixed(1)} mm`,
      "spring: a wider one, or a thinner bolt",
    );
  }
  if (spring.totalCoils < 4) return wrong(`${spring.totalCoils} coils leave fewer than 2 active`, "spring: as counted");
  return solidLength < spring.freeLength
    ? undefined
    : wrong(
        `${spring.totalCoils} coils of ${spring.wire} mm are as long as the free spring, ${spring.freeLength} mm`,
        "spring: as measured",
      );
}

function otherLies(given: Parameters, { springWasherOutside }: Derived): Finding | undefined {
  const { thread, heatWasher, sliderWasher, springWasher, nut, insert, bolt } = fittings(given);
  const { width, module, slotMouth, slotDepth, mountBolt } = given.bar.values;
  const wrong = (field: string, says: string): Finding => ({
    level: "error",
    says,
    set: `${field}: as measured`,
    path: [field],
  });
  const small = [heatWasher, sliderWasher, ...(springWasher === undefined ? [] : [springWasher])].find(
    ({ hole, outside, thickness }) => hole < thread.diameter || outside <= hole || thickness > 5,
  );
  if (small !== undefined)
    return wrong("sliderWasher", `a washer ${small.hole} x ${small.outside} does not go on ${bolt}`);
  if (springWasherOutside > 60)
    return wrong("springWasher", `a washer ${springWasherOutside} mm wide is no washer of ${bolt}`);
  if (nut.acrossFlats < 1.3 * thread.diameter || nut.acrossFlats > 30 || nut.height < 0.3 * thread.diameter)
    return wrong("nut", `a nut of ${nut.acrossFlats} x ${nut.height} mm is no nut of ${bolt}`);
  if (insert.hole < thread.diameter || insert.hole > 20 || insert.length < 1 || insert.length > 30)
    return wrong("insert", `an insert of ${insert.hole} x ${insert.length} mm is none of ${bolt}`);
  if (
    width < 10 ||
    width > 200 ||
    module < 10 ||
    module > 200 ||
    slotMouth > module ||
    slotMouth < 3 ||
    slotDepth > width
  )
    return wrong("bar", `a bar ${width} mm wide with a slot ${slotMouth} mm wide cannot be`);
  return /^M[34568]$/.test(mountBolt) ? undefined : wrong("bar", `${mountBolt} is no mount bolt known here`);
}
