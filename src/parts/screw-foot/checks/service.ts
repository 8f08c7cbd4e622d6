import { above, below } from "../../check.ts";
import { hasBackPlate } from "../surroundings.ts";
import type { FootCheck } from "./seat.ts";

const f = (value: number, digits = 1) => value.toFixed(digits);

const tooNear: FootCheck = {
  name: "pulley-or-belt-too-near-bar",
  path: ["axisOffset"],
  why: "the belt polishes the bar, the flange eats the plastic",
  trips: { error: { axisOffset: 14.5 }, warning: { axisOffset: 15.5 } },
  test: ({ derived: { clearance, closest } }) =>
    below({
      value: clearance,
      unit: "mm",
      error: 1,
      warning: 2,
      says: (limit) => `${f(clearance, 2)} mm lie between ${closest}, under ${limit} mm`,
      set: "a larger axisOffset, or leave it out",
    }),
};

const outOfReach: FootCheck = {
  name: "set-screw-out-of-reach",
  path: ["keyAzimuth"],
  why: "a set screw that no key reaches cannot be tightened, and the pulley slips",
  trips: { error: { framePosts: [{ x: 0, y: 60, width: 20 }] } },
  test: ({ given: { keyAzimuth }, derived: { keyMeets, keyLength } }) => {
    const set = "keyAzimuth: a direction with free air";
    if (keyMeets !== undefined)
      return { level: "error", says: `from ${f(keyAzimuth, 0)} deg the key to the set screw meets ${keyMeets}`, set };
    return above({
      value: keyLength,
      unit: "mm",
      error: 80,
      says: () => `the key must reach ${f(keyLength)} mm in`,
      set,
    });
  },
};

const hidden: FootCheck = {
  name: "set-screw-hidden-by-rim",
  path: ["pulley"],
  why: "the key would have to go through the housing",
  trips: { error: { pulley: { row: "40 teeth 2 mm", setScrewFromEnd: 0.5 } } },
  test: ({ derived: { setScrewHeight, rim } }) =>
    below({
      value: setScrewHeight - 2.5,
      unit: "mm",
      error: rim + 1e-6,
      says: () => `the key's path begins at ${f(setScrewHeight - 2.5)} mm, the rim ends at ${f(rim)} mm`,
      set: "hub: up, a thicker ring, or a smaller pocketDepth",
    }),
};

const onSetScrews: FootCheck = {
  name: "thrust-hangs-on-set-screws",
  path: ["thrust"],
  why: "set screws on thread crests creep; when they slip the stage drops",
  trips: { error: { axialLoad: 360, bearing: "6000" }, warning: { axialLoad: 200 }, note: {} },
  test: ({ given, derived: { holdFactor, crashFactor, hold, thrust } }) => {
    if (given.thrust !== "pulley") return undefined;
    const set = "thrust: collar, or file flats for the set screws";
    const says = `${f(hold, 0)} N of set-screw hold carry ${f(thrust, 0)} N, factor ${f(Math.min(holdFactor, 999), 2)}`;
    const finding = below({ value: holdFactor, unit: "", error: 1.5, warning: 3, says: () => says, set });
    if (finding !== undefined) return finding;
    if (crashFactor < 1) {
      return {
        level: "warning",
        says: `in a crash of ${f(given.crashForce, 0)} N the pulley slips on the screw`,
        set,
        found: crashFactor,
        limit: 1,
      };
    }
    return { level: "note", says, set };
  },
};

const onCollar: FootCheck = {
  name: "thrust-hangs-on-collar",
  path: ["collar"],
  why: "a collar that slips along the thread lets the stage down, and its pulley out of the belt's plane",
  trips: {
    error: { thrust: "collar", collar: "8 set screw", axialLoad: 350 },
    warning: { thrust: "collar", collar: "8 set screw", axialLoad: 100, crashForce: 600 },
    note: { thrust: "collar" },
  },
  test: ({ given, derived: { holdFactor, crashFactor, hold, holdCount, thrust } }) => {
    if (given.thrust !== "collar") return undefined;
    const crash = given.crashForce > 0 ? `, and ${f(thrust + given.crashForce, 0)} N when the motor stalls` : "";
    if (holdCount === 0) {
      const says = `the clamp collar carries ${f(thrust, 0)} N${crash}; what it holds on a thread is in no table`;
      return { level: "note", says, set: "nothing: mark the screw at the collar, and look whether it has moved" };
    }
    const set = "collar: a clamp collar, or two of them";
    const says = `the set collar holds ${f(hold, 0)} N and carries ${f(thrust, 0)} N${crash}`;
    return (
      below({ value: holdFactor, unit: "", error: 1.5, warning: 3, says: () => says, set }) ??
      below({ value: crashFactor, unit: "", warning: 1, says: () => says, set })
    );
  },
};

const tipGrinds: FootCheck = {
  name: "screw-tip-grinds-bar",
  path: ["tipLength"],
  why: "the screw's tip would turn on the bar",
  trips: { error: { mount: "on-top", tipLength: 11 } },
  test: ({ derived: { tipGap } }) =>
    below({
      value: tipGap,
      unit: "mm",
      error: 1,
      says: (limit) => `the screw's tip ends ${f(tipGap, 2)} mm over what lies below, under ${limit} mm`,
      set: "a shorter tipLength, a higher beltPlane, or mount: on-side",
    }),
};

const tips: FootCheck = {
  name: "screw-tips-at-pulley",
  path: ["bearingToNut"],
  why: "one bearing and a pulling belt tip the screw, and the belt climbs",
  trips: { warning: { bearingToNut: 30, nutFloat: 0.5 } },
  test: ({ derived: { tilt } }) =>
    above({
      value: tilt,
      unit: "deg",
      warning: 0.25,
      says: (limit) => `the screw tips by ${f(tilt, 2)} deg at the pulley, over ${limit} deg`,
      set: "style: bridged, or a steady above",
    }),
};

const overloaded: FootCheck = {
  name: "foot-bearing-overloaded",
  path: ["bearing"],
  why: "the balls dent the races, and the screw turns in steps",
  trips: { error: { axialLoad: 400, thrust: "collar" }, warning: { axialLoad: 300, thrust: "collar" } },
  test: ({ given, derived: { bearingSafety, bearingThrust, axialLimit } }) => {
    const set = "a larger bearing, or a thrust bearing beside it";
    const axial = above({
      value: bearingThrust,
      unit: "N",
      error: axialLimit,
      warning: 0.8 * axialLimit,
      says: (limit) => `${f(bearingThrust, 0)} N along the ${given.bearing.key}, over ${f(limit, 0)} N`,
      set,
    });
    const safety = Math.min(bearingSafety, 1e6);
    return (
      axial ??
      below({
        value: safety,
        unit: "",
        error: 1,
        warning: 2,
        says: (limit) => `the static safety is ${f(safety, 2)}, under ${limit}`,
        set,
      })
    );
  },
};

const trapped: FootCheck = {
  name: "loop-trapped-by-foot",
  path: ["style"],
  why: "a closed loop goes round the screw only while its end is free",
  trips: { note: {} },
  test: () => ({
    level: "note",
    says: "thread the loop over the screw before the foot and the head are both bolted down",
    set: "nothing; it is the order of assembly",
  }),
};

const noPlate: FootCheck = {
  name: "wall-without-back-plate",
  path: ["style"],
  why: "a wall needs the plate behind the housing to rise from",
  trips: { error: { mount: "on-top", style: "walled" } },
  test: ({ given: { mount, style } }) =>
    style === "walled" && !hasBackPlate(mount)
      ? { level: "error", says: `a foot ${mount} has no back plate to carry a wall`, set: "style: open or bridged" }
      : undefined,
};

/** Air between the cap and what turns over it, mm. */
const CAP_GAP = 0.8;

const capHits: FootCheck = {
  name: "cap-hits-rotating-face",
  path: ["cap"],
  why: "the cap would rub on what turns over it, heat up and wear through",
  trips: { error: { cap: true, hub: "up" } },
  test: ({ given: { cap, thrust }, derived }) => {
    const { capGap, capBore, capMeets, hubPasses, hubPoints, bought } = derived;
    if (!cap) return undefined;
    const turned = capGap + bought.pulley.hubLength >= CAP_GAP && hubPasses && hubPoints === "up";
    const ways = [
      `washers: ${f(CAP_GAP - capGap)} mm more, at most ${f(capBore - 2)} mm wide`,
      ...(thrust === "collar" ? ["another thrust than the collar"] : turned ? ["hub: down"] : []),
      "no cap",
    ];
    return below({
      value: capGap,
      unit: "mm",
      error: CAP_GAP,
      says: (limit) =>
        capGap < 0
          ? `the cap reaches ${f(-capGap, 2)} mm into ${capMeets}; ${limit} mm of air are needed`
          : `${f(capGap, 2)} mm lie between the cap and ${capMeets}, under ${limit} mm`,
      set: ways.join(", or "),
    });
  },
};

const capCovers: FootCheck = {
  name: "cap-covers-inner-ring",
  path: ["cap"],
  why: "a cap on the inner ring brakes it",
  trips: { error: { cap: true, hub: "down", washers: [{ row: "M8", outside: 18 }] } },
  test: ({ given: { cap }, derived: { capBore, lowestOutside, bought } }) => {
    if (!cap) return undefined;
    const needed = Math.max(bought.bearing.innerLand + 1, lowestOutside + 2);
    const says = () => `the cap's bore is ${f(capBore)} mm; the ring and the washer need ${f(needed)} mm`;
    return below({ value: capBore, unit: "mm", error: needed, says, set: "a narrower washer" });
  },
};

export const serviceChecks: readonly FootCheck[] = [
  tooNear,
  outOfReach,
  hidden,
  onSetScrews,
  onCollar,
  tipGrinds,
  tips,
  overloaded,
  trapped,
  noPlate,
  capHits,
  capCovers,
];
