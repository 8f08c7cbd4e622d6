import { describe, expect, it } from "vitest";
import { deriveStage, planSchema, type Stage } from "../../src/stage/index.ts";
import { backwards } from "../support/backwards.ts";
import { deepMerge } from "../support/deep-merge.ts";
import { WIDE } from "../support/plans.ts";
import { printerWith } from "../support/printer.ts";

type Raw = Readonly<Record<string, unknown>>;
type Spot = [number, number];

const PRINTER = printerWith();
const derive = (raw: unknown): Stage => deriveStage(planSchema.parse(raw), () => PRINTER);
const WHOLE = derive(WIDE);

/** Takes every place, every direction and every box of a plan through a map of the ground. */
interface Motion {
  readonly spot: (at: Spot) => Spot;
  readonly direction: (angle: number) => number;
  readonly swaps: boolean;
}

function moved(value: unknown, motion: Motion, key = ""): unknown {
  if (key === "direction" || key === "facing") return motion.direction(Number(value));
  if (Array.isArray(value)) {
    const [x, y, ...z] = value;
    if (["at", "from", "to"].includes(key)) return [...motion.spot([x, y]), ...z];
    if (key === "size" && motion.swaps) return [y, x];
    return value.map((each) => moved(each, motion));
  }
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, moved(each, motion, name)]));
}

/** Numbers as they are printed, so that the last digits of a sum do not count; a full turn is none. */
const near = (value: number) => Math.round(value * 1e5) / 1e5 + 0;

function rounded(value: unknown): unknown {
  if (typeof value === "number") return near(value);
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, rounded(each)]));
}

/** How a number of the machine is called, and what it is, after the machine was laid differently. */
type Lay = (key: string, value: number) => [string, number];
const asItIs: Lay = (key, value) => [key, value];

/** An angle from 0 up to 360 deg. */
const round = (angle: number) => near((((near(angle) % 360) + 360) % 360) % 360);

function facts({ sections }: Stage, lay: Lay = asItIs): string[] {
  const all = sections.flatMap((section) => section.facts);
  return all
    .map(({ key, value, unit }) => {
      const [name, number] = lay(key, value);
      return `${name} ${name.endsWith(".direction") ? round(number) : near(number)} ${unit}`;
    })
    .sort();
}

/** The sides of the ground after a quarter turn: what was behind is at the left. */
const SIDES: Readonly<Record<string, string>> = { back: "left", left: "front", front: "right", right: "back" };

const turnedFact: Lay = (key, value) => {
  if (key.endsWith(".direction")) return [key, value + 90];
  if (key === "stage.centre.x") return ["stage.centre.y", value];
  if (key === "stage.centre.y") return ["stage.centre.x", -value];
  if (key === "plate.growth.x") return ["plate.growth.y", value];
  if (key === "plate.growth.y") return ["plate.growth.x", value];
  const [, side = ""] = /^heater\.margin\.(\w+)$/.exec(key) ?? [];
  return [side === "" ? key : `heater.margin.${SIDES[side]}`, value];
};

/** In a mirror the belt runs the other way along each span. */
const mirroredFact: Lay = (key, value) => {
  const [, before, from, between, to, after] = /^(loop\.\w+\.span\.)(\w+)(-to-|-)(\w+)(.*)$/.exec(key) ?? [];
  if (before !== undefined) {
    return [`${before}${to}${between}${from}${after}`, after === ".direction" ? -value : value];
  }
  if (key.endsWith(".direction")) return [key, 180 - value];
  if (key === "stage.centre.x") return [key, -value];
  const exchanged: Readonly<Record<string, string>> = { left: "right", right: "left" };
  return [key.replace(/^(heater\.margin\.)(left|right)$/, (_, kept, side) => `${kept}${exchanged[side]}`), value];
};

const found = ({ diagnostics }: Stage) =>
  diagnostics.map(({ name, level, path }) => `${level} ${name} ${path.join(".")}`).sort();
const parts = ({ parts: all }: Stage) =>
  all
    .map(({ name, parameters }) => ({ name, parameters: rounded(parameters) }))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
const essence = (stage: Stage) => ({ facts: facts(stage), found: found(stage), parts: parts(stage) });

describe("the whole wide machine", () => {
  it("is one to compare: sound, with all its facts and parts", () => {
    expect(found(WHOLE).filter((each) => each.startsWith("error"))).toEqual([]);
    expect(facts(WHOLE).length).toBeGreaterThan(50);
    expect(WHOLE.parts).toHaveLength(8);
  });

  it("turned by a quarter is the same", () => {
    const turn: Motion = { spot: ([x, y]) => [0 - y, x], direction: (angle) => angle + 90, swaps: true };
    expect(essence(derive(moved(WIDE, turn)))).toEqual({ ...essence(WHOLE), facts: facts(WHOLE, turnedFact) });
  });

  it("in a mirror has the same facts and faults, and parts that differ in their sides only", () => {
    const mirror: Motion = { spot: ([x, y]) => [0 - x, y], direction: (angle) => 180 - angle, swaps: false };
    const other = derive(moved(WIDE, mirror));
    expect(facts(other)).toEqual(facts(WHOLE, mirroredFact));
    expect(found(other)).toEqual(found(WHOLE));
    const sided = ["growthAngle", "mountNumber", "obstacles", "beltSpans", "framePosts"];
    const sideless = (stage: Stage) =>
      parts(stage).map(({ name, parameters }) => [
        name,
        Object.entries(parameters as Raw).filter(([key]) => !sided.includes(key)),
      ]);
    expect(sideless(other)).toEqual(sideless(WHOLE));
  });

  it("with its lists in another order is the same", () => {
    const nodes = { loops: { low: { nodes: ["press", "B", "motor", "A"] }, high: { nodes: ["C", "motor"] } } };
    expect(essence(derive(deepMerge(backwards(WIDE) as Raw, nodes)))).toEqual(essence(WHOLE));
  });

  it("under other names is the same under those names", () => {
    const names = { A: "west", B: "east", low: "lower", press: "rub", "arm-front": "f9", "side-left": "q" };
    const renamed = (text: string, quote: string) =>
      Object.entries(names).reduce(
        (all, [from, to]) => all.replaceAll(`${quote}${from}${quote}`, `${quote}${to}${quote}`),
        text,
      );
    const other = derive(JSON.parse(renamed(JSON.stringify(WIDE), '"')));
    const values = (stage: Stage) =>
      facts(stage)
        .map((each) => each.replace(/^\S+ /, ""))
        .sort();
    expect(values(other)).toEqual(values(WHOLE));
    const kinds = (stage: Stage) =>
      found(stage)
        .map((each) => each.split(" ").slice(0, 2).join(" "))
        .sort();
    expect(kinds(other)).toEqual(kinds(WHOLE));
    // Labels and the order of obstacles follow the names.
    const plain = (stage: Stage) =>
      stage.parts
        .map(({ parameters: { label: _, obstacles, ...rest } }) =>
          JSON.stringify(rounded([rest, Array.isArray(obstacles) ? obstacles.length : 0])),
        )
        .sort();
    expect(plain(other)).toEqual(plain(WHOLE));
  });

  it("in inches is the same", () => {
    expect(essence(derive(inInches(WIDE)))).toEqual(essence(WHOLE));
  });

  it("with the motor's plate 3 mm higher has its seats 3 mm higher, and mounts and wheel plates to the byte", () => {
    const other = derive(deepMerge(WIDE, { motor: { plateTop: WIDE.motor.plateTop + 3 } }));
    const layer = Math.max(...WHOLE.feet.map(({ residual }) => Math.abs(residual))) + 0.3;
    for (const [index, { screw, seat, plane, residual }] of other.feet.entries()) {
      const before = WHOLE.feet[index];
      expect(screw).toBe(before?.screw);
      expect(plane - residual).toBeCloseTo((before?.plane ?? 0) - (before?.residual ?? 0) + 3, 9);
      expect(Math.abs(seat - (before?.seat ?? 0) - 3)).toBeLessThanOrEqual(layer);
    }
    const kept = (stage: Stage) =>
      JSON.stringify(
        stage.parts.filter(({ family }) => family !== "screw-foot").map(({ name, parameters }) => [name, parameters]),
      );
    expect(kept(other)).toBe(kept(WHOLE));
  });
});

/** Lengths are typed with their unit, as a file in inches is read: `3.5 in`. */
function inInches(value: unknown, key = ""): unknown {
  const lengths = ["length", "lowest", "lift", "nut", "thickness", "plateTop", "from", "to", "at", "size"];
  if (Array.isArray(value)) {
    return value.map((each) =>
      typeof each === "number" ? (lengths.includes(key) ? `${each / 25.4} in` : each) : inInches(each),
    );
  }
  if (typeof value === "number") return lengths.includes(key) ? `${value / 25.4} in` : value;
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, inInches(each, name)]));
}
