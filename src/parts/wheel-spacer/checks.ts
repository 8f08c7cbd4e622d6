import { above, below, type Check } from "../check.ts";
import { type Derived, leastBody, NO_PLASTIC, THINNEST } from "./derive.ts";
import type { Parameters } from "./parameters.ts";

type SpacerCheck = Check<Parameters, Derived>;

const ring = (kind: Parameters["kind"]) => kind !== "bush";

const crushed: SpacerCheck = {
  name: "spacer-crushed-by-torque",
  path: ["torque"],
  why: "plastic under more than its sustained pressure flows away, and the axle comes loose",
  trips: { error: { against: "bearing" } },
  test: ({ given, derived }) => {
    if (derived.area <= NO_PLASTIC) {
      const says = "there is no plastic round the bore for the bolt to press on";
      return { level: "error", says, set: "outside: wider, or a metal one" };
    }
    return above({
      value: derived.pressure,
      unit: "MPa",
      error: given.material.values.washerPressure,
      says: (limit) =>
        `${Number(given.torque.toFixed(2))} N·m press the plastic with ${derived.pressure.toFixed(1)} MPa; ${given.material.key} bears ${limit} MPa`,
      set:
        derived.torqueAllowed >= 0.1
          ? `torque: ${(Math.floor(derived.torqueAllowed * 100) / 100).toFixed(2)} N·m at most, a wider one, or a metal one`
          : "outside: wider, or a metal one",
    });
  },
};

const wallTooThin: SpacerCheck = {
  name: "spacer-wall-too-thin",
  path: ["outside"],
  why: "a thinner ring prints as one line and buckles under the bolt",
  trips: { error: { outside: 7.5, torque: 0.1 } },
  test: ({ given, derived }) =>
    ring(given.kind)
      ? below({
          value: derived.wall,
          unit: "mm",
          error: THINNEST,
          says: (limit) => `the ring wall is ${derived.wall.toFixed(2)} mm, under ${limit} mm`,
          set: `outside: ${(derived.bore + 2 * THINNEST).toFixed(1)} mm or more`,
        })
      : undefined,
};

const unequal: SpacerCheck = {
  name: "spacer-set-unequal",
  path: ["setLengths"],
  why: "spacers of different length tilt the wheels, and the carriage binds",
  trips: { error: { setLengths: [6, 6.2] }, note: {} },
  test: ({ given }) => {
    const key = ring(given.kind) ? "length" : "hexHeight";
    const own = given[key];
    const odd = given.setLengths.find((other) => Math.abs(other - own) > 1e-6);
    if (odd === undefined) {
      return {
        level: "note",
        says: "all spacers of one plate belong in one print job, standing",
        set: "one job for the set",
      };
    }
    const says = `the set holds a spacer of ${odd} mm beside one of ${own} mm`;
    return {
      level: "error",
      says,
      set: `${key}: ${odd} mm for all, or leave it out`,
      found: odd,
      limit: own,
      unit: "mm",
    };
  },
};

const touchesShield: SpacerCheck = {
  name: "spacer-touches-shield",
  path: ["outside"],
  why: "a spacer that reaches past the inner ring rubs on the shield and brakes the wheel",
  trips: { error: { against: "bearing", outside: 9, torque: 0.3 } },
  test: ({ given, derived }) => {
    if (given.against === "shim") return undefined;
    const bush = given.kind === "bush";
    return above({
      value: bush ? derived.hexFlats : derived.outside,
      unit: "mm",
      error: given.innerLand,
      says: (limit) =>
        bush
          ? `the hexagon is ${derived.hexFlats} mm wide, the inner ring only ${limit} mm`
          : `the spacer is ${derived.outside} mm wide, the inner ring only ${limit} mm`,
      set: bush ? "against: shim" : `outside: ${given.innerLand} mm, or against: shim`,
    });
  },
};

const bushTooThin: SpacerCheck = {
  name: "eccentric-bush-wall-too-thin",
  path: ["body"],
  why: "the thin side of the bush splits when the bolt is drawn up",
  trips: { error: { kind: "bush", body: 7.1 } },
  test: ({ given, derived }) =>
    given.kind === "bush"
      ? below({
          value: derived.bushWall,
          unit: "mm",
          error: THINNEST,
          says: (limit) => `the bush is ${derived.bushWall.toFixed(2)} mm thick at its thin side, under ${limit} mm`,
          set: `body: ${leastBody(derived.bore - 0.3, given.offset).toFixed(1)} mm or more, or a metal eccentric`,
        })
      : undefined,
};

export const checks: readonly SpacerCheck[] = [crushed, wallTooThin, unequal, touchesShield, bushTooThin];
