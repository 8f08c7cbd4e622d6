import { below, type Finding } from "../../check.ts";
import { fittings } from "../fittings.ts";
import type { Parameters } from "../parameters.ts";
import { slotDirection } from "../subject.ts";
import type { MountCheck } from "./spring.ts";

/** Play beyond the growth that is wanted, and how far a slot may point off its line. Source: common practice. */
const PLAY = 0.3;
const OFF_LINE = 5;
/** A thicker plate on four points is not bent down to the fourth. mm. Source: design rule. */
const LIMP_PLATE = 5;

export const slotTooShort: MountCheck = {
  name: "slot-shorter-than-growth",
  path: ["halfTravel"],
  why: "the bolt meets the end of its slot while the plate still grows, and the plate bows by millimetres",
  trips: { error: { halfTravel: 0.5 }, warning: { halfTravel: 0.8 } },
  test: ({ given, derived }) =>
    given.type === "fixed"
      ? undefined
      : below({
          value: derived.halfTravel,
          unit: "mm",
          error: given.growth,
          warning: given.growth + PLAY,
          says: () =>
            `the bolt may slide ${derived.halfTravel.toFixed(2)} mm each way, and the plate grows ${given.growth.toFixed(2)} mm`,
          set: `halfTravel: ${(given.growth + 0.5).toFixed(2)} mm, or leave it out`,
        }),
};

export const slotOffLine: MountCheck = {
  name: "slot-off-growth-line",
  path: ["slotAngle"],
  why: "a slot that does not point to the fixed mount jams as the plate grows",
  trips: { error: { slotAngle: 80 } },
  test: ({ given }) => {
    if (given.type !== "slot") return undefined;
    const turn = (((slotDirection(given) - given.growthAngle) % 180) + 180) % 180;
    const off = Math.min(turn, 180 - turn);
    if (off <= OFF_LINE + 1e-9) return undefined;
    return {
      level: "error",
      says: `the slot lies ${off.toFixed(1)} deg off the line to the fixed mount, more than ${OFF_LINE} deg`,
      set: `slotAngle: ${given.growthAngle} deg, or leave it out`,
      found: off,
      limit: OFF_LINE,
      unit: "deg",
    };
  },
};

export const typesWrong: MountCheck = {
  name: "growth-types-not-one-each",
  path: ["allTypes"],
  why: "a hot plate must be held once, guided once and free elsewhere; round holes all over make it bow as it grows",
  trips: {
    error: { type: "free", allTypes: ["free", "free", "free", "free"] },
    warning: { allTypes: ["fixed", "slot", "slot", "free"] },
  },
  test: ({ given }) => (given.allTypes === undefined ? undefined : typesFinding(given, given.allTypes)),
};

function typesFinding(given: Parameters, all: readonly string[]): Finding | undefined {
  const many = (type: string) => all.filter((one) => one === type).length;
  const wanted = all.length === 3 ? "fixed, slot, free" : "fixed, slot, slot towards the fixed one, the rest free";
  const set = `allTypes: [${all.length === 3 ? wanted : "fixed, slot, slot, free"}]`;
  const wrong = (says: string): Finding => ({ level: "error", says, set });
  if (!all.includes(given.type)) return wrong(`this mount is ${given.type}, and the list of all mounts has none`);
  if (many("fixed") !== 1 || many("slot") === 0 || (all.length === 3 && many("slot") !== 1)) {
    return wrong(
      `the plate's ${all.length} mounts are ${many("fixed")} fixed, ${many("slot")} slot and ${many("free")} free, not ${wanted}`,
    );
  }
  if (all.length === 3 || given.plate <= LIMP_PLATE) return undefined;
  return {
    level: "warning",
    says: `a plate ${given.plate.toFixed(2)} mm thick on ${all.length} points rocks on three of them`,
    set: "three mounts, or a plate of at most 5 mm that bends down to the fourth",
  };
}

export const washerTooSmall: MountCheck = {
  name: "tram-washer-too-small",
  path: ["sliderWasher"],
  why: "the washer tips into the opening it slides over, and the bolt leans",
  trips: { error: { sliderWasher: { row: "M5", outside: 9 } } },
  test: ({ given, derived }) => {
    const slides = given.joint === "thumb-wheel" || given.joint === "tapped-plate";
    const { sliderWasher } = fittings(given);
    const slider = slides ? wide("sliderWasher", "below", sliderWasher.outside, derived.sliderNeed) : undefined;
    return slider ?? wide("springWasher", "under the spring", derived.springWasherOutside, derived.springWasherNeed);
  },
};

function wide(field: string, where: string, outside: number, need: number): Finding | undefined {
  const finding = below({
    value: outside,
    unit: "mm",
    error: need,
    says: (limit) =>
      `the washer ${where} is ${outside.toFixed(1)} mm wide, and the opening needs ${limit.toFixed(1)} mm`,
    set: `${field}: { row: M5, outside: ${(Math.ceil(need * 2) / 2).toFixed(1)} } or wider`,
  });
  return finding === undefined ? undefined : { ...finding, path: [field] };
}

export const cannotFloat: MountCheck = {
  name: "joint-cannot-float",
  path: ["joint"],
  why: "a nut that cannot follow the bolt holds the plate as fast as a fixed mount does",
  trips: { error: { joint: "insert" } },
  test: ({ given }) => {
    const follows = { "thumb-wheel": 2, "tapped-plate": 2, "captive-nut": 1, insert: 0 }[given.joint];
    const needs = { fixed: 0, slot: 1, free: 2 }[given.type];
    if (needs <= follows) return undefined;
    return {
      level: "error",
      says: `a ${given.joint} joint cannot follow the bolt of a ${given.type} mount`,
      set: needs === 1 ? "joint: thumb-wheel, captive-nut or tapped-plate" : "joint: thumb-wheel or tapped-plate",
    };
  },
};
