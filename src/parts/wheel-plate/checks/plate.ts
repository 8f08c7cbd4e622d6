import { above, below } from "../../check.ts";
import { armsAt } from "../derive/arms.ts";
import { fittings } from "../fittings.ts";
import type { PlateCheck } from "./wheels.ts";

const staggerTooSmall: PlateCheck = {
  name: "stagger-too-small",
  path: ["stagger"],
  why: "axles that run through the bar's sides from both faces meet wheels, nuts or the other plate",
  trips: { error: { wheels: 6, barDepth: 40, stagger: 10 } },
  test: ({ given, derived }) => {
    if (derived.faces === 1) return undefined;
    const { tipHeight, faceDistance } = derived;
    if (tipHeight > faceDistance - 1 + 1e-9) {
      return {
        level: "error",
        says: `axles reach ${tipHeight.toFixed(1)} mm over their plate, the other plate stands at ${faceDistance.toFixed(1)} mm`,
        set: `barDepth: ${Math.ceil(given.barDepth + tipHeight + 1 - faceDistance)} mm or more, or sandwich: true with faces: 1`,
        path: ["faces"],
        found: tipHeight,
        limit: faceDistance - 1,
        unit: "mm",
      };
    }
    return below({
      value: derived.apart,
      unit: "mm",
      error: derived.staggerNeed,
      says: (limit) =>
        `axles of the two plates stand ${derived.apart.toFixed(1)} mm apart along the travel, under ${limit.toFixed(1)} mm`,
      set: given.stagger === undefined ? "rowSpacing: more, or fewer wheels" : "leave stagger out",
    });
  },
};

const plateBends: PlateCheck = {
  name: "carriage-plate-bends",
  path: ["plate"],
  why: "a plate that bends between arm and wheels lets the stage nod, and the print shows it",
  trips: { warning: { rowSpacing: 160 }, error: { rowSpacing: 180, plate: 6 } },
  test: ({ derived }) => {
    const thicker = derived.thickness * Math.cbrt(derived.bend / 0.1);
    return above({
      value: derived.bend,
      unit: "mm",
      error: 0.3,
      warning: 0.1,
      says: (limit) => `the plate bends ${derived.bend.toFixed(2)} mm at its outermost row, over ${limit} mm`,
      set:
        thicker <= 15
          ? `plate: ${(Math.ceil(thicker * 5) / 5).toFixed(1)} mm or more`
          : "armsAt: arms nearer to the outermost rows",
    });
  },
};

const holeNearEdge: PlateCheck = {
  name: "axle-hole-near-edge",
  path: ["margin"],
  why: "a thin strip beside an axle's hole splits along the layers when the wheels are pressed on",
  trips: { warning: { margin: 7 }, error: { margin: 5 } },
  test: ({ given, derived }) => {
    const usual = Math.max(3, 0.75 * fittings(given).thread.diameter);
    return below({
      value: derived.holeToEdge,
      unit: "mm",
      error: 2,
      warning: usual,
      says: (limit) =>
        `${derived.holeToEdge.toFixed(2)} mm of plastic lie between an axle hole and the edge, under ${limit} mm`,
      set: `margin: ${(Math.ceil(10 * (given.margin - derived.holeToEdge + usual)) / 10).toFixed(1)} mm or more`,
    });
  },
};

const rubsBar: PlateCheck = {
  name: "carriage-plate-rubs-bar",
  path: ["spacerLength"],
  why: "a plate that bows under the preload touches the bar and scrapes along it",
  trips: { warning: { module: 22 }, error: { module: 24 } },
  test: ({ given, derived }) => {
    const near = !given.sandwich || derived.barGap <= derived.farGap;
    const gap = near ? derived.barGap : derived.farGap;
    return below({
      value: gap,
      unit: "mm",
      error: 1,
      warning: 2,
      says: (limit) =>
        `the ${near ? "plate" : "far plate"} stands ${gap.toFixed(2)} mm from the bar, under ${limit} mm`,
      set: near
        ? "eccentric: a higher one, and spacers alike"
        : `spacers ${Math.ceil(2 - gap)} mm longer, or sandwich: false`,
    });
  },
};

const armUnderWheel: PlateCheck = {
  name: "arm-bolts-under-wheel",
  path: ["armsAt"],
  why: "an arm over an axle's washer does not lie flat, and a bolt under a wheel or bar cannot be drawn up",
  trips: { error: { armsAt: [45] } },
  test: ({ given, derived }) => {
    if (armsAt(given).length === 0) return undefined;
    const { rowToArm, rowToArmNeed, armBoltX, armBoltLeast, armBoltMost, armTop, armTopMost } = derived;
    const rows = below({
      value: rowToArm,
      unit: "mm",
      error: rowToArmNeed,
      says: (limit) => `an arm lies ${rowToArm.toFixed(1)} mm from a row of axles, under ${limit.toFixed(1)} mm`,
      set: "armsAt: midway between two rows, or rows farther apart",
    });
    const between = `from ${armBoltLeast.toFixed(2)} to ${armBoltMost.toFixed(2)} mm`;
    const inside = armBoltX >= armBoltLeast - 1e-9 && armBoltX <= armBoltMost + 1e-9;
    const fits = armBoltLeast <= armBoltMost;
    const across = inside
      ? undefined
      : ({
          level: "error",
          says: `arm bolts stand ${armBoltX} mm from the middle; they must stand ${between}`,
          set: fits
            ? `armBoltAt: ${between}`
            : `margin: ${Math.ceil(given.margin + armBoltLeast - armBoltMost)} mm or more`,
          path: [fits ? "armBoltAt" : "margin"],
          found: armBoltX,
          limit: armBoltX < armBoltLeast ? armBoltLeast : armBoltMost,
          unit: "mm",
        } as const);
    const ends = above({
      value: armTop,
      unit: "mm",
      error: armTopMost,
      says: (limit) => `an arm bolt stands ${armTop.toFixed(1)} mm up or down the plate, over ${limit.toFixed(1)} mm`,
      set: `armsAt: within ${Math.floor(armTopMost)} mm of the middle`,
    });
    return rows ?? across ?? ends;
  },
};

export const plateChecks: readonly PlateCheck[] = [staggerTooSmall, plateBends, holeNearEdge, rubsBar, armUnderWheel];
