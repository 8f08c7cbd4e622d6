import { above, below, type Finding } from "../../check.ts";
import { colderThanAir, tooHotIn, WHY_COLD } from "../../heat.ts";
import type { Derived } from "../derive.ts";
import { fittings } from "../fittings.ts";
import type { Parameters } from "../parameters.ts";
import type { MountCheck } from "./spring.ts";

/** Distances to the hot plate, share of the torque limit. Source: design rules. */
const GAP = { error: 10, warning: 15, hot: 30, hotPlate: 90 };
const RIM = 2;
const NEAR_LIMIT = 0.95;
const SHOULDER = 3;

export const tooHot: MountCheck = {
  name: "tram-mount-too-hot",
  path: ["material"],
  why: "a bracket near its softening point creeps, and the plate sinks a little with every print",
  trips: { error: { material: "PLA" }, warning: { material: "PETG" } },
  test: ({ given: { material }, derived: { bracketTemperature } }) =>
    tooHotIn({
      material,
      temperature: bracketTemperature,
      words: `the bracket gets about ${bracketTemperature.toFixed(1)} °C (an estimate)`,
      cooler: "a longer spring for more air, or a cooler plate",
    }),
};

export const gapTooSmall: MountCheck = {
  name: "air-gap-too-small",
  path: ["setLength"],
  why: "air between plate and bracket is what keeps the bracket cool",
  trips: { error: { setLength: 7 }, warning: { plateTemperature: 95 } },
  test: ({ given, derived }) => {
    const hot = given.plateTemperature > GAP.hotPlate;
    return below({
      value: derived.plateHeight,
      unit: "mm",
      error: GAP.error,
      warning: hot ? GAP.hot : GAP.warning,
      says: (limit) =>
        `${derived.plateHeight.toFixed(1)} mm of air lie under a plate of ${given.plateTemperature.toFixed(0)} °C, fewer than ${limit} mm`,
      set: "a longer spring or setLength, thicker washers, or a cooler plate",
    });
  },
};

export const meetsPlate: MountCheck = {
  name: "cup-meets-plate",
  path: ["cupDepth"],
  why: "the cup's rim touches the hot plate when the plate is lowered, softens and lifts the corner",
  trips: { error: { setLength: 14.7, cupDepth: 12 } },
  test: ({ derived }) => rimMeets(derived) ?? backMeets(derived),
};

function rimMeets({ rimGap, cupDepth }: Derived): Finding | undefined {
  const deepest = Math.max(2, Math.floor((cupDepth + rimGap - RIM) * 5) / 5);
  return below({
    value: rimGap,
    unit: "mm",
    error: RIM,
    says: (limit) =>
      `at the low end ${rimGap.toFixed(2)} mm lie between the cup's rim and the plate, under ${limit} mm`,
    set: `cupDepth: ${deepest.toFixed(1)} mm or less, or leave it out`,
  });
}

/** With large mount bolts the plate against the bar stands higher than the cup. */
function backMeets({ backGap, thickness }: Derived): Finding | undefined {
  const finding = below({
    value: backGap,
    unit: "mm",
    error: RIM,
    says: (limit) =>
      `at the low end ${backGap.toFixed(2)} mm lie between the hot plate and the bracket's plate against the bar, under ${limit} mm`,
    set: `thickness: ${(Math.ceil((thickness + RIM - backGap) * 5) / 5).toFixed(1)} mm or more, a longer spring, or mount: on-top`,
  });
  return finding === undefined ? undefined : { ...finding, path: ["thickness"] };
}

export const wallTooThin: MountCheck = {
  name: "wall-too-thin",
  path: ["thickness"],
  why: "a thin floor under a nut, or over an insert, breaks out when the bolt is drawn up",
  trips: {
    error: { joint: "captive-nut", thickness: 8 },
    warning: { joint: "captive-nut", thickness: 9.6 },
  },
  test: ({ given, derived, printer }) => {
    const { floorLeft, thickness } = derived;
    const missing = (limit: number) =>
      `thickness: ${(thickness + limit - floorLeft + 0.2).toFixed(1)} mm or leave it out`;
    if (given.joint === "captive-nut") return underNut(floorLeft, printer.line, missing);
    if (given.joint !== "insert") return undefined;
    return below({
      value: floorLeft,
      unit: "mm",
      error: SHOULDER,
      says: (limit) => `${plastic(floorLeft)} over the insert, fewer than ${limit} mm`,
      set: missing(SHOULDER),
    });
  },
};

function underNut(floor: number, line: number, missing: (limit: number) => string): Finding | undefined {
  return below({
    value: floor,
    unit: "mm",
    error: 2 * line,
    warning: 4 * line,
    says: (limit) => `${plastic(floor)} under the captive nut, fewer than ${limit.toFixed(1)} mm`,
    set: missing(4 * line),
  });
}

export const creeps: MountCheck = {
  name: "bracket-creeps-under-load",
  path: ["thickness"],
  why: "a bracket above its sustained stress bends a little more every week",
  trips: { error: { push: 200 } },
  test: ({ given, derived }) => {
    const { key, values } = given.material;
    return above({
      value: derived.rootStress,
      unit: "MPa",
      error: values.inLayer,
      says: (limit) =>
        `weight and hand bend the root with ${derived.rootStress.toFixed(2)} MPa, and ${key} bears ${limit} MPa for years`,
      set: `thickness: ${Math.min(20, Math.ceil(derived.thickness * Math.sqrt(derived.rootStress / values.inLayer)))} mm or more`,
    });
  },
};

export const torqueCrushes: MountCheck = {
  name: "torque-crushes-plastic",
  path: ["bar"],
  why: "plastic under more than its sustained pressure flows away, and the bolts come loose",
  trips: { error: { printer: { torqueM5: 0.8 } }, warning: { printer: { torqueM5: 0.64 } } },
  test: ({ given, derived }) => crushed(given, derived),
};

function crushed(given: Parameters, { torqueUsed, torqueAllowed }: Derived): Finding | undefined {
  const { bolt } = fittings(given).mount;
  return above({
    value: torqueUsed,
    unit: "N·m",
    error: torqueAllowed,
    warning: NEAR_LIMIT * torqueAllowed,
    says: () =>
      `${Number(torqueUsed.toFixed(2))} N·m on the ${bolt} bolts is over what ${given.material.key} bears for years, ${torqueAllowed.toFixed(2)} N·m, or near it`,
    set: `torque${bolt}: ${(Math.floor(90 * torqueAllowed) / 100).toFixed(2)} N·m in the printer's file`,
  });
}

/** A floor that is cut away is none, whatever the sum says. */
const plastic = (thickness: number) =>
  thickness < 0.005 ? "no plastic lies" : `${thickness.toFixed(2)} mm of plastic lie`;

export const colderPlate: MountCheck = {
  name: "plate-colder-than-air",
  path: ["plateTemperature"],
  why: WHY_COLD,
  trips: { warning: { plateTemperature: 12 } },
  test: ({ given: { plateTemperature, ambient } }) =>
    colderThanAir(plateTemperature, ambient, `plateTemperature: ${ambient} °C or more, or ambient: as it is there`),
};
