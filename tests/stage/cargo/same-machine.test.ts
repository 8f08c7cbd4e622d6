import { describe, expect, it } from "vitest";
import { planSchema, type Stage } from "../../../src/stage/index.ts";
import type { LoadCases } from "../../../src/stage/machine.ts";
import { backwards } from "../../support/backwards.ts";
import { deepMerge } from "../../support/deep-merge.ts";
import { WIDE } from "../../support/plans.ts";
import { workedOut } from "./stages.ts";

type Turn = (x: number, y: number) => [number, number];
type Raw = Readonly<Record<string, unknown>>;

const derive = (plan: Raw): Stage => workedOut(planSchema.parse(plan));
const WHOLE = derive(WIDE);

/** Moves every place of a plan, and turns its boxes where the turn swaps the axes. */
function moved(value: unknown, turn: Turn, swaps: boolean, key = ""): unknown {
  if (Array.isArray(value)) {
    const [x, y, ...z] = value;
    if (["at", "from", "to"].includes(key)) return [...turn(x, y), ...z];
    return key === "size" && swaps ? [y, x] : value;
  }
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, moved(each, turn, swaps, name)]));
}

/** What does not depend on where the machine stands: loads, parts without their places, and what is wrong by name. */
function essence({ loads, parts, diagnostics }: Stage) {
  const near = (value: number | undefined) => expect.closeTo(value ?? Number.NaN, 6);
  return {
    weight: near(loads?.weight),
    crash: near(loads?.crash),
    worst: Object.fromEntries(Object.entries(loads?.worst ?? {}).map(([name, load]) => [name, near(load)])),
    least: eachScrew(loads, near),
    parts: parts.map(({ name, parameters }) => ({ name, parameters })).sort((a, b) => (a.name < b.name ? -1 : 1)),
    found: diagnostics.map(({ name, level, path }) => `${level} ${name} ${path.join(".")}`).sort(),
  };
}

/** The least that each screw carries in any case, N. */
const eachScrew = (loads: LoadCases | undefined, as: (least: number) => unknown) =>
  Object.fromEntries(
    Object.keys(loads?.worst ?? {}).map((name) => [
      name,
      as(Math.min(...(loads?.cases ?? []).map(({ least }) => least[name] ?? 0))),
    ]),
  );

const plainLoads = ({ loads }: Stage) => ({
  weight: loads?.weight,
  crash: loads?.crash,
  worst: loads?.worst,
  least: eachScrew(loads, (least) => least),
});
const plain = (stage: Stage) => ({ ...essence(stage), ...plainLoads(stage) });

describe("the same machine", () => {
  it.each<[string, Turn, boolean]>([
    ["moved", (x, y) => [x + 250, y - 125], false],
    ["turned by a quarter", (x, y) => [0 - y, x], true],
    ["turned by a half", (x, y) => [0 - x, 0 - y], false],
    ["turned by three quarters", (x, y) => [y, 0 - x], true],
  ])("%s carries the same, needs the same parts and has the same faults", (_, turn, swaps) => {
    const other = derive(moved(WIDE, turn, swaps) as Raw);
    expect(plain(other)).toEqual(essence(WHOLE));
  });

  it("in a mirror it carries the same; mounts swap numbers, and growth goes the other way", () => {
    const other = derive(moved(WIDE, (x, y) => [0 - x, y], false) as Raw);
    const { parts, ...mirrored } = plain(other);
    const { parts: own, ...before } = essence(WHOLE);
    expect(mirrored).toEqual(before);
    for (const [index, { name, parameters }] of parts.entries()) {
      const { growthAngle, mountNumber: _, obstacles: __, ...same } = parameters;
      const { growthAngle: before, mountNumber: ___, obstacles: ____, ...kept } = own[index]?.parameters ?? {};
      expect({ name, same }).toEqual({ name: own[index]?.name, same: kept });
      if (typeof before === "number" && name !== "mount-one") {
        const sum = (((before + Number(growthAngle) - 180) % 360) + 360) % 360;
        expect(Math.min(sum, 360 - sum)).toBeLessThan(0.02);
      }
    }
  });

  it("with its lists in another order is the same to the last digit that is printed", () => {
    const other = derive(backwards(WIDE) as Raw);
    expect(plain(other)).toEqual(essence(WHOLE));
    for (const part of WHOLE.parts) {
      expect(other.parts.find(({ name }) => name === part.name)?.placement).toEqual(part.placement);
    }
  });

  it("in inches is the same", () => {
    const inches = (value: unknown, key = ""): unknown => {
      if (Array.isArray(value)) return value.map((each) => (typeof each === "number" ? `${each / 25.4} in` : each));
      if (typeof value === "number" && ["length", "lowest", "lift", "nut", "thickness", "plateTop"].includes(key)) {
        return `${value / 25.4} in`;
      }
      if (typeof value !== "object" || value === null) return value;
      return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, inches(each, name)]));
    };
    expect(plain(derive(inches(WIDE) as Raw))).toEqual(essence(WHOLE));
  });

  it("under other names is the same under those names", () => {
    const text = JSON.stringify(WIDE)
      .replaceAll('"arm-front"', '"F9"')
      .replaceAll('"post-left"', '"Z"')
      .replaceAll('"side-left"', '"Q"')
      .replaceAll('"A"', '"screw-1"');
    const other = plain(derive(JSON.parse(text)));
    const own = essence(WHOLE);
    const { A, ...rest } = own.worst;
    expect(other.worst).toEqual({ ...rest, "screw-1": A });
    const strip = (parts: typeof own.parts) => parts.map(({ parameters: { obstacles: _, ...others } }) => others);
    expect(strip(other.parts)).toEqual(strip(own.parts));
  });

  it("with its motor moved by 3 mm keeps all mounts and carriages as they are", () => {
    const other = derive(deepMerge(WIDE, { motor: { at: [383, 400] } }));
    const kept = ({ parts }: Stage) => parts.filter(({ family }) => family !== "screw-foot");
    expect(JSON.stringify(kept(other))).toBe(JSON.stringify(kept(WHOLE)));
  });
});
