import { above, below, type Finding } from "../../check.ts";
import type { Derived } from "../derive.ts";
import { fittings } from "../fittings.ts";
import type { Parameters } from "../parameters.ts";
import type { MountCheck } from "./spring.ts";

/** Sunk head, room for fingers, air above a tip, air below a tail, mm. Source: common practice. */
const SUNK = 0.3;
const FINGERS = 12;
const TIP = 0.5;
const TAIL = 1;

export const headAbovePlate: MountCheck = {
  name: "bolt-head-above-plate",
  path: ["headBelow"],
  why: "the nozzle or the sheet meets the head",
  trips: { error: { headBelow: 0.1 } },
  test: ({ given, derived }) =>
    given.joint === "tapped-plate"
      ? undefined
      : below({
          value: derived.headSunk,
          unit: "mm",
          error: SUNK,
          says: (limit) =>
            derived.headSunk < 0
              ? `the bolt head stands ${(-derived.headSunk).toFixed(2)} mm proud of the plate's top`
              : `the bolt head lies ${derived.headSunk.toFixed(2)} mm below the plate's top, under ${limit} mm`,
          set:
            derived.headSunk < given.headBelow
              ? "a thicker plate, a thinner bolt, or joint: tapped-plate"
              : `headBelow: ${SUNK} mm or more`,
        }),
};

export const wheelOutOfReach: MountCheck = {
  name: "thumb-wheel-out-of-reach",
  path: ["fingerRoom"],
  why: "a wheel that fingers cannot get at is never turned, and the plate stays out of level",
  trips: { warning: { fingerRoom: 8 } },
  test: ({ given, derived }) =>
    given.joint === "thumb-wheel"
      ? below({
          value: derived.fingerRoom,
          unit: "mm",
          warning: FINGERS,
          says: (limit) =>
            `${derived.fingerRoom.toFixed(1)} mm are free beside and below the thumb wheel, under ${limit} mm`,
          set: `fingerRoom and roomBelow for ${FINGERS} mm, or joint: captive-nut, turned from above`,
        })
      : undefined,
};

export const engagementShort: MountCheck = {
  name: "tapped-plate-engagement-short",
  path: ["boltLength"],
  why: "too little thread strips from aluminium; a tip that comes through scratches what lies on the plate",
  trips: {
    error: { joint: "tapped-plate", boltLength: 25 },
    warning: { joint: "tapped-plate", setLength: 14.3 },
  },
  test: ({ given, derived }) => {
    if (given.joint !== "tapped-plate") return undefined;
    const { diameter } = fittings(given).thread;
    const thread = below({
      value: derived.engagement,
      unit: "mm",
      error: diameter,
      warning: 1.2 * diameter,
      says: (limit) =>
        `at the high end ${derived.engagement.toFixed(2)} mm of thread hold in the plate, under ${limit.toFixed(1)} mm`,
      set: "a longer bolt, a shorter setLength, a smaller range, or a thicker plate",
    });
    if (thread?.level === "error") return thread;
    const tip = below({
      value: derived.tipBelow,
      unit: "mm",
      error: TIP,
      says: (limit) =>
        `at the low end the bolt's tip is ${derived.tipBelow.toFixed(2)} mm below the plate's top, under ${limit} mm`,
      set: "a shorter bolt, a longer setLength, a smaller range, or a thicker plate",
    });
    return tip ?? thread;
  },
};

export const threadTooShort: MountCheck = {
  name: "bolt-thread-too-short",
  path: ["boltLength"],
  why: "the nut stops at the bolt's plain shank, or leaves its thread, before the plate is where it should be",
  trips: { error: { boltLength: 60 } },
  test: ({ given, derived }) => {
    const { bolt } = fittings(given);
    const { boltLength, shank, nutAt, boltNeeded } = derived;
    if (given.joint === "tapped-plate" || boltLength === 0) return undefined;
    if (boltLength < boltNeeded - 1e-6) {
      return {
        level: "error",
        says: `${bolt} x ${boltLength} is too short: at the high end ${boltNeeded.toFixed(2)} mm are needed`,
        set: `boltLength: ${boltNeeded.toFixed(1)} mm or more`,
        found: boltLength,
        limit: boltNeeded,
        unit: "mm",
      };
    }
    return above({
      value: shank,
      unit: "mm",
      error: nutAt,
      says: (limit) =>
        `${bolt} x ${boltLength} has ${shank.toFixed(1)} mm without thread, and at the low end the nut needs it from ${limit.toFixed(1)} mm on`,
      set: "fullThread: true and a bolt threaded to its head, or a shorter bolt",
    });
  },
};

export const noStockLength: MountCheck = {
  name: "no-stock-bolt-length",
  path: ["boltLength"],
  why: "a bolt that is not sold, or that meets something below, stops the work on the last evening",
  trips: { error: { plate: 25 }, warning: { roomBelow: 21.5 } },
  test: ({ given, derived }) => noMountBolt(given, derived) ?? noTramBolt(given, derived) ?? tailMeets(given, derived),
};

function noMountBolt(given: Parameters, { mountLength, thickness, backPlate }: Derived): Finding | undefined {
  if (mountLength > 0) return undefined;
  const { bolt } = fittings(given).mount;
  const upright = given.mount === "on-top";
  const plastic = upright ? thickness : backPlate;
  return {
    level: "error",
    says: `no ${bolt} bolt in stock holds ${plastic.toFixed(1)} mm of plastic to a ${given.bar.key} bar and clears its slot`,
    set: upright ? "thickness: 8 or 10 mm" : "backPlate: 6 mm, 8 mm on 30 mm bars",
    path: [upright ? "thickness" : "backPlate"],
  };
}

function noTramBolt(given: Parameters, derived: Derived): Finding | undefined {
  const { bolt } = fittings(given);
  const { boltLength, boltNeeded, boltMost } = derived;
  const tapped = given.joint === "tapped-plate";
  const fits = tapped
    ? given.boltLength !== undefined || (boltLength >= boltNeeded - 1e-6 && boltLength <= boltMost + 1e-6)
    : boltLength > 0;
  if (fits) return undefined;
  const most = tapped ? ` and at most ${boltMost.toFixed(1)} mm` : "";
  return {
    level: "error",
    says: `no ${bolt} bolt in stock is at least ${boltNeeded.toFixed(2)} mm${most} long`,
    set: tapped
      ? "a smaller range, or another setLength or thickness"
      : "stock: with a longer bolt, or a smaller range",
  };
}

function tailMeets(given: Parameters, { under }: Derived): Finding | undefined {
  const { bolt } = fittings(given);
  return above({
    value: under,
    unit: "mm",
    error: given.roomBelow,
    warning: given.roomBelow - TAIL,
    says: () =>
      `with the plate at its lowest the ${bolt} bolt reaches ${under.toFixed(2)} mm under the bracket, and ${given.roomBelow.toFixed(1)} mm are free`,
    set: `roomBelow: ${(Math.ceil(under) + TAIL).toFixed(0)} mm or more, or stop the stage higher`,
  });
}
