import { above } from "../../check.ts";
import { tooHotIn } from "../../heat.ts";
import { FRICTION } from "../derive/grip.ts";
import type { Parameters } from "../parameters.ts";
import type { FootCheck } from "./seat.ts";

const f = (value: number, digits = 1) => value.toFixed(digits);

const creeps: FootCheck = {
  name: "bracket-creeps-under-load",
  path: ["axialLoad"],
  why: "plastic that is stressed beyond its sustained limit goes on bending for years",
  trips: {
    error: { mount: "under", axialLoad: 300, thrust: "collar", material: "PETG", plate: 6 },
    warning: { mount: "under", axialLoad: 150, thrust: "collar" },
  },
  test: ({ given, derived: { stressUse } }) =>
    above({
      value: stressUse,
      unit: "",
      error: 1,
      warning: 0.7,
      says: (limit) => `the stress is ${f(stressUse, 2)} of what ${given.material.key} bears for years, over ${limit}`,
      set: `${stiffer(given)}, a smaller axisOffset, or a stronger material`,
    }),
};

/** Difference in sink between two feet, mm. */
const SINKS = { error: 0.15, warning: 0.05 };

const sinks: FootCheck = {
  name: "feet-sink-unequally",
  path: ["lightestLoad"],
  why: "feet that sink by different amounts tilt the stage",
  trips: {
    error: { mount: "under", axialLoad: 200, thrust: "collar", lightestLoad: 10 },
    warning: { mount: "under", axialLoad: 100, thrust: "collar", lightestLoad: 10 },
    note: { mount: "under", axialLoad: 100, thrust: "collar" },
  },
  test: ({ given, derived: { sink, sinkDifference } }) => {
    if ((given.lightestLoad ?? given.otherSink) === undefined && sink > SINKS.warning) {
      const says = `this foot sinks ${f(sink, 3)} mm; how much less the least loaded one sinks is not known`;
      return { level: "note", says, set: "lightestLoad: the load on the screw that carries least" };
    }
    return above({
      value: sinkDifference,
      unit: "mm",
      ...SINKS,
      says: (limit) =>
        `this foot sinks ${f(sinkDifference, 3)} mm more than the one that sinks least, over ${limit} mm`,
      set: `${stiffer(given)}, a smaller axisOffset, or loads that are more even: ${evener(given)}`,
    });
  },
};

/** What of the loads would have to come nearer together. */
function evener({ otherSink }: Parameters): string {
  return otherSink === undefined
    ? "a lightestLoad nearer to axialLoad"
    : "a screw that stands nearer to the others' load";
}

/** What makes the part that bends stiffer. */
function stiffer({ mount }: Parameters): string {
  if (mount === "on-top" || mount === "under") return "a thicker plate";
  return mount === "on-post" ? "a thicker floor" : "a taller bar";
}

const CLAMP_USE = { error: 1, warning: 0.7 };

const lifts: FootCheck = {
  name: "foot-lifts-off-bar",
  path: ["beltPull"],
  why: "the bolts' clamp is used up, and the foot works loose",
  trips: { error: { axialLoad: 300, thrust: "collar", beltPull: 600 }, warning: { thrust: "collar", beltPull: 250 } },
  test: ({ given, derived: { gripUse } }) =>
    given.mount === "on-post"
      ? undefined
      : above({
          value: gripUse,
          unit: "",
          ...CLAMP_USE,
          says: (limit) => `the load uses ${f(gripUse, 2)} of the bolts' clamp, over ${limit}`,
          set: "a smaller belt pull, a bar with two rows of slots, or larger bolts",
        }),
};

const slides: FootCheck = {
  name: "foot-slides-on-post",
  path: ["axialLoad"],
  why: "nothing but friction holds the cheeks along the post: the foot creeps down it, and the stage with it",
  trips: {
    error: { mount: "on-post", axialLoad: 150, thrust: "collar" },
    warning: { mount: "on-post", axialLoad: 90, thrust: "collar" },
  },
  test: ({ given, derived: { gripUse, slide, clamp } }) =>
    given.mount === "on-post"
      ? above({
          value: gripUse,
          unit: "",
          ...CLAMP_USE,
          says: (limit) =>
            `${f(slide)} N try to slide the worst bolt, which holds ${f(FRICTION * clamp)} N by friction: ${f(gripUse, 2)}, over ${limit}`,
          set: "a smaller load, belt pull or axisOffset, larger bolts, or a stop screwed to the post below the foot",
        })
      : undefined,
};

const noBolt: FootCheck = {
  name: "no-stock-bolt-length",
  path: ["plate"],
  why: "a bolt that bottoms in the slot leaves the foot loose, a short one strips",
  trips: { error: { boltLengths: [50] } },
  test: ({ given, derived: { boltLength, bought } }) =>
    boltLength > 0
      ? undefined
      : {
          level: "error",
          says: `no ${bought.bolt.thread} bolt you can get fits a ${f(given.plate ?? 6)} mm plate on ${given.bar.key}`,
          set: "plate: 6 mm (8 mm on 30 series), or more boltLengths",
        },
};

const crushes: FootCheck = {
  name: "torque-crushes-plastic",
  path: ["material"],
  why: "plastic flows away from under the washer, and the bolt comes loose",
  trips: { error: { printer: { torqueM5: 0.9 } }, warning: { printer: { torqueM5: 0.65 } } },
  test: ({ derived: { torque, torqueAllowed, bought } }) =>
    above({
      value: torque,
      unit: "N·m",
      error: torqueAllowed,
      warning: 0.95 * torqueAllowed,
      says: () =>
        `${f(torque, 2)} N·m on an ${bought.bolt.thread} washer; the plastic bears ${f(torqueAllowed, 2)} N·m`,
      set: `a torque of ${f(0.95 * torqueAllowed, 2)} N·m`,
    }),
};

const tooHot: FootCheck = {
  name: "material-too-hot-in-place",
  path: ["placeTemperature"],
  why: "near its softening point the foot creeps away from under the screw",
  trips: { error: { placeTemperature: 60 }, warning: { placeTemperature: 40 } },
  test: ({ given: { material, placeTemperature } }) =>
    tooHotIn({
      material,
      temperature: placeTemperature,
      words: `it is ${f(placeTemperature, 0)} °C at the foot`,
      cooler: "a cooler place",
    }),
};

const tooLarge: FootCheck = {
  name: "foot-larger-than-bed",
  path: ["mount"],
  why: "the part does not fit on the printer",
  trips: { error: { printer: { bedX: 60, bedY: 60 } } },
  test: ({ derived: { sizeX, sizeY, sizeZ }, printer: { bedX, bedY, bedZ } }) => {
    const [small, large] = [Math.min(sizeX, sizeY), Math.max(sizeX, sizeY)];
    if (small <= Math.min(bedX, bedY) && large <= Math.max(bedX, bedY) && sizeZ <= bedZ) return undefined;
    return {
      level: "error",
      says: `the foot takes ${f(sizeX)} x ${f(sizeY)} x ${f(sizeZ)} mm, the bed ${f(bedX)} x ${f(bedY)} x ${f(bedZ)} mm`,
      set: "a larger printer, or style: open",
    };
  },
};

const disagrees: FootCheck = {
  name: "hardware-data-disagrees",
  path: ["pulley"],
  why: "sizes that contradict each other are a slip of measuring, and the seat follows them",
  trips: { error: { pulley: { row: "40 teeth 2 mm", height: 17 } } },
  test: ({ given, derived: { bought, pitchRadius } }) => {
    const { height, hubLength, hubDiameter, bore, flangeThickness, toothWidth, flangeDiameter } = bought.pulley;
    const sum = hubLength + 2 * flangeThickness + toothWidth;
    const set = "measure the pulley again";
    if (Math.abs(height - sum) > 0.3) {
      return {
        level: "error",
        says: `the pulley is ${f(height)} mm high, its parts add up to ${f(sum)} mm`,
        set,
        found: height,
        limit: sum,
        unit: "mm",
      };
    }
    if (toothWidth <= given.beltWidth)
      return {
        level: "error",
        says: `a ${f(given.beltWidth)} mm belt does not run between flanges ${f(toothWidth)} mm apart`,
        set,
      };
    if (hubLength > 0 && hubDiameter < bore + 2)
      return { level: "error", says: `a bore of ${f(bore)} mm leaves no wall in a hub of ${f(hubDiameter)} mm`, set };
    if (flangeDiameter <= 2 * pitchRadius)
      return { level: "error", says: `the flange of ${f(flangeDiameter)} mm is narrower than the pitch diameter`, set };
    return undefined;
  },
};

export const loadChecks: readonly FootCheck[] = [
  creeps,
  sinks,
  lifts,
  slides,
  noBolt,
  crushes,
  tooHot,
  tooLarge,
  disagrees,
];
