import { describe, expect, it } from "vitest";
import type { Diagnostic, Level } from "../../../src/core/diagnostic.ts";
import { CARGO_DEFECTS } from "../../../src/stage/cargo/cargo-defects.ts";
import { wide } from "./stages.ts";

type Changes = Readonly<Record<string, unknown>>;

function found(changes: Changes = {}): readonly Diagnostic[] {
  return wide(changes).diagnostics;
}

/** A front arm of light bar whose mounts stand well away from the nuts. */
const SLIM = {
  print: "3 kg",
  bars: { "arm-front": { bar: "20x20 slot 6" } },
  plate: { mounts: { one: { at: [260, 130] }, two: { at: [500, 130] } } },
};

/** The smallest change of the wide machine that brings the defect about, and where in the plan it is told. */
const TRIPS: readonly (readonly [keyof typeof CARGO_DEFECTS, Level, string, Changes])[] = [
  ["stage-corner-lifts-off", "error", "screws.A.at", { carriages: { left: undefined, right: undefined } }],
  ["stage-corner-lifts-off", "warning", "screws.A.at", {}],
  ["screw-loads-uneven", "warning", "screws", {}],
  ["screws-nearly-in-line", "error", "screws.C.at", { screws: { C: { at: [380, 75] } } }],
  ["screws-nearly-in-line", "warning", "screws.C.at", { screws: { C: { at: [380, 180] } } }],
  [
    "stage-tips-over-its-screws",
    "error",
    "carriages",
    {
      screws: { C: undefined },
      loops: { high: { nodes: ["motor", "B"] }, low: { nodes: ["motor", "A"] } },
      carriages: { left: undefined, right: undefined },
    },
  ],
  ["four-screws-share-by-twist", "warning", "screws", { screws: { D: { at: [150, 498], length: 420 } } }],
  ["screws-not-in-step", "error", "screws.B.screw", { screws: { B: { screw: "Tr8x8(P2)" } } }],
  ["screws-not-in-step", "error", "screws.C.hand", { screws: { C: { hand: "left" } } }],
  ["drive-not-resolved", "error", "motor.stepAngle", { motor: { stepAngle: 1.7 } }],
  ["drive-not-resolved", "error", "motor.microsteps", { motor: { microsteps: 12 } }],
  ["layer-heights-off-full-steps", "warning", "layers.1", { layers: [0.2, 0.123] }],
  ["motor-torque-short", "error", "motor.torque", { motor: { torque: "0.02 N m" } }],
  ["motor-torque-short", "warning", "motor.torque", { motor: { torque: "0.06 N m" } }],
  ["motor-torque-beyond-motor", "warning", "motor.torque", { motor: { torque: "0.7 N m" } }],
  ["motor-turns-too-fast", "error", "motor.speed", { motor: { speed: 25 } }],
  ["motor-turns-too-fast", "warning", "motor.speed", { motor: { speed: 12 } }],
  ["screw-buckles-at-stall", "warning", "screws.A.screw", {}],
  ["stage-lowest-disagrees", "warning", "travel.lowest", { travel: { lowest: 110 } }],
  ["stage-lowest-disagrees", "note", "travel.lowest", { travel: { lowest: 90 } }],
  ["stage-runs-down-unpowered", "warning", "screws.A.screw", {}],
  ["screw-near-buckling", "error", "screws.C.screw", { screws: { C: { length: 1500 } }, travel: { lift: 1250 } }],
  ["screw-near-buckling", "warning", "screws.C.screw", { screws: { C: { length: 1000 } }, travel: { lift: 600 } }],
  ["screw-near-whirl", "error", "motor.speed", { screws: { A: { length: 2000, top: "free" } }, motor: { speed: 20 } }],
  ["screw-near-whirl", "warning", "motor.speed", { screws: { A: { length: 2000, top: "free" } }, motor: { speed: 2 } }],
  ["screw-held-rigid-at-both-ends", "error", "screws.B.top", { screws: { B: { top: "held" } } }],
  ["screw-thrust-carried-nowhere", "error", "screws.A.top", { foot: { thrust: "hung" } }],
  ["nut-out-of-reach-of-stage", "warning", "travel.nut", { travel: { nut: 190 } }],
  ["nut-runs-off-screw", "error", "screws.A.length", { screws: { A: { length: 340 } } }],
  ["sensor-under-heater", "error", "plate.sensor.at", { plate: { sensor: { at: [380, 280] } } }],
  ["sensor-hole-too-deep", "error", "plate.sensor.depth", { plate: { sensor: { at: [300, 420], depth: 5 } } }],
  ["plate-on-too-few-mounts", "error", "plate.mounts", { plate: { mounts: { three: undefined } } }],
  ["plate-tips-off-its-mounts", "error", "plate.mounts.one.at", { plate: { at: [700, 280] } }],
  ["plate-sinks-on-springs", "warning", "plate.mounts.one.at", {}],
  ["plate-shifts-on-springs", "warning", "plate.mounts", { plate: { sheet: "8 kg" } }],
  ["mount-too-near-bar", "error", "plate.mounts.one.at", { plate: { mounts: { one: { at: [200, 120] } } } }],
  ["mount-too-near-bar", "warning", "plate.mounts.one.at", { plate: { mounts: { one: { at: [200, 128.8] } } } }],
  ["hole-under-heater", "error", "plate.mounts.one.at", { plate: { heater: { size: [400, 310] } } }],
  [
    "hole-under-heater",
    "warning",
    "plate.mounts.one.at",
    { plate: { heater: { size: [300, 288] }, mounts: { one: { at: [240, 130] } } } },
  ],
  ["hole-near-plate-edge", "error", "plate.mounts.one.at", { plate: { size: [420, 310] } }],
  ["hole-near-plate-edge", "warning", "plate.mounts.one.at", { plate: { size: [420, 320] } }],
  ["heater-overhangs-plate", "error", "plate.heater.size", { plate: { heater: { size: [430, 220] } } }],
  ["heater-off-centre", "warning", "plate.heater.at", { plate: { heater: { at: [384, 280] } } }],
  ["heater-density-out-of-range", "error", "plate.heater.power", { plate: { heater: { power: "1400 W" } } }],
  ["heater-density-out-of-range", "warning", "plate.heater.power", { plate: { heater: { power: "800 W" } } }],
  ["plate-cannot-reach-temperature", "error", "plate.heater.power", { plate: { heater: { power: "120 W" } } }],
  ["plate-cannot-reach-temperature", "warning", "plate.heater.power", { plate: { heater: { power: "205 W" } } }],
  ["plate-colder-than-air", "warning", "plate.temperature", { plate: { temperature: 12 } }],
  ["stuck-heater-overheats-plate", "warning", "plate.heater.power", {}],
  ["stage-tip-sags-with-print", "error", "bars.arm-front.bar", { print: "10 kg" }],
  ["stage-tip-sags-with-print", "warning", "bars.arm-front.bar", SLIM],
  [
    "arm-off-carriage",
    "error",
    "carriages.left.arms.0",
    { bars: { "side-left": { from: [55, 111, 115], to: [55, 449, 115] } } },
  ],
  ["carriage-runs-off-post", "error", "carriages.left.post", { bars: { "post-left": { to: [15, 280, 380] } } }],
  [
    "part-contradicts-plan",
    "error",
    "plate.mounts.two.parameters.type",
    { plate: { mounts: { two: { parameters: { type: "free" } } } } },
  ],
];

describe("defects of drive and structure", () => {
  it.each(TRIPS)("%s, %s, at %s", (name, level, path, changes) => {
    const own = found(changes).filter((each) => each.name === name && each.level === level);
    expect(own.map((each) => each.path.join("."))).toContain(path);
    for (const each of own) {
      expect(each.says.length).toBeGreaterThan(10);
      expect(each.set.length).toBeGreaterThan(5);
    }
  });

  it("has a plan for each defect", () => {
    expect(new Set(TRIPS.map(([name]) => name))).toEqual(new Set(Object.keys(CARGO_DEFECTS)));
  });

  it("finds no error in the wide machine, and only the warnings that are known of it", () => {
    const own = new Set(
      found()
        .filter(({ name, level }) => name in CARGO_DEFECTS && level !== "note")
        .map(({ name }) => name),
    );
    const known = TRIPS.filter(([, , , changes]) => Object.keys(changes).length === 0).map(([name]) => name);
    expect(own).toEqual(new Set(known));
    expect(found().filter(({ level }) => level === "error")).toEqual([]);
  });
});

describe("what is said to set", () => {
  it.each<[string, Changes, Changes]>([
    [
      "mount-too-near-bar",
      { plate: { mounts: { one: { at: [200, 120] } } } },
      { plate: { mounts: { one: { at: [200, 129] } } } },
    ],
    ["motor-torque-short", { motor: { torque: "0.02 N m" } }, { motor: { torque: "0.08 N m" } }],
    ["nut-runs-off-screw", { screws: { A: { length: 340 } } }, { screws: { A: { length: 355 } } }],
    [
      "stage-runs-down-unpowered",
      {},
      { screws: { A: { screw: "Tr8x1.5" }, B: { screw: "Tr8x1.5" }, C: { screw: "Tr8x1.5" } } },
    ],
  ])("%s passes once it is set", (name, wrong, right) => {
    expect(found(wrong).some((each) => each.name === name)).toBe(true);
    expect(found(right).filter((each) => each.name === name)).toEqual([]);
  });

  it("names the place where the mount's bolt must stand", () => {
    const near = found({ plate: { mounts: { one: { at: [200, 120] } } } }).find(
      ({ name }) => name === "mount-too-near-bar",
    );
    expect(near?.set).toBe("at: [200, 129]");
  });
});
