import { describe, expect, test } from "vitest";
import { UNCALIBRATED } from "../../../src/printing/printer.ts";
import { deriveStage, type Stage } from "../../../src/stage/index.ts";
import { designOf } from "../../../src/stage/parts/design-of.ts";
import { widePlan } from "../../support/plans.ts";
import { amount } from "../cargo/stages.ts";

type Change = Readonly<Record<string, unknown>>;
type Place = readonly [number, number];

const G = 9.80665;
const SCREWS: Readonly<Record<string, Place>> = { A: [150, 62], B: [610, 62], C: [380, 498] };
const derive = (change: Change) => deriveStage(widePlan(change), () => UNCALIBRATED);

/** Forces and moments about both axes (statics), solved by Cramer's rule; the tool takes areas of triangles. */
function shares(weight: number, [x, y]: Place): number[] {
  const rows = Object.values(SCREWS);
  const det = (m: readonly number[][]) => {
    const [[a, b, c], [d, e, f], [g, h, i]] = m as [[number, number, number], [number, number, number], number[]];
    return a * (e * (i ?? 0) - f * (h ?? 0)) - b * (d * (i ?? 0) - f * (g ?? 0)) + c * (d * (h ?? 0) - e * (g ?? 0));
  };
  const matrix = [rows.map(() => 1), rows.map(([px]) => px), rows.map(([, py]) => py)];
  const right = [weight, weight * x, weight * y];
  return rows.map((_, k) => det(matrix.map((row, i) => row.with(k, right[i] ?? 0))) / det(matrix));
}

/** What the screws carry empty, and with the print in the middle and on each corner of the plate, N. */
function casesOf(stage: Stage, print: number): number[][] {
  const empty = amount(stage, "stage.weight");
  const centre: Place = [amount(stage, "stage.centre.x"), amount(stage, "stage.centre.y")];
  const places: Place[] = [380, 170, 590].flatMap(
    (x) =>
      (x === 380
        ? [[x, 280]]
        : [
            [x, 115],
            [x, 445],
          ]) as Place[],
  );
  const with_ = (at: Place): number[] => {
    const weight = empty + print * G;
    const mean = (axis: 0 | 1) => (empty * centre[axis] + print * G * at[axis]) / weight;
    return shares(weight, [mean(0), mean(1)]);
  };
  return [shares(empty, centre), ...places.map(with_)];
}

function numbersOf(stage: Stage, screw: string) {
  const part = stage.parts.find(({ name }) => name === `foot-${screw.toLowerCase()}`);
  if (part === undefined) throw new Error(screw);
  const { dimensions, diagnostics } = designOf(part, () => UNCALIBRATED)[0]?.design ?? {
    dimensions: [],
    diagnostics: [],
  };
  const of = (symbol: string) => dimensions.find((one) => one.symbol === symbol)?.value ?? Number.NaN;
  return { part, of, said: diagnostics.map(({ name }) => name) };
}

/** mm per N: a short cantilever's bending and shear (shigley: Table A-9 and 4-7), PETG of 2000 MPa, three times by creep. */
function give(stage: Stage, screw: string): number {
  const { of } = numbersOf(stage, screw);
  const [lever, wide, high] = [of("l_r"), of("b_r"), of("h_r")];
  const bending = lever ** 3 / (3 * 2000 * ((wide * high ** 3) / 12));
  const shear = (1.2 * lever) / ((2000 / 2.7) * wide * high);
  return 3 * (bending + shear);
}

function differences(stage: Stage, print: number): number[] {
  const gives = Object.keys(SCREWS).map((screw) => give(stage, screw));
  const sinks = casesOf(stage, print).map((loads) => loads.map((load, k) => Math.max(0, load) * (gives[k] ?? 0)));
  return Object.keys(SCREWS).map((_, k) =>
    Math.max(...sinks.map((each) => (each[k] ?? 0) - Math.min(...each.filter((_, other) => other !== k)))),
  );
}

/** Under their bars feet bend most, so there is something to see. */
const UNDER = { foot: { mount: "under" }, motor: { plateTop: -10 } };

describe("feet that sink unequally", () => {
  test("by as much as they differ at one time, empty or with the print anywhere, worked by hand", () => {
    for (const print of [2, 8]) {
      const stage = derive({ ...UNDER, print: `${print} kg` });
      const found = Object.keys(SCREWS).map((screw) => numbersOf(stage, screw).of("d_delta"));
      // The load is stated to 0.1 N and the other's sink to 0.001 mm.
      differences(stage, print).forEach((by, k) => {
        expect(Math.abs((found[k] ?? Number.NaN) - Math.max(0, by))).toBeLessThan(0.001);
      });
      expect(Math.max(...found)).toBeGreaterThan(0.02);
    }
  });

  test("a hand on a corner loads a foot, and is gone before it creeps", () => {
    const stage = derive(UNDER);
    const { part } = numbersOf(stage, "B");
    const loads = casesOf(stage, 2).map((each) => each[1] ?? 0);
    expect(part.parameters.steadyLoad).toBeCloseTo(Math.max(...loads), 0);
    expect(Number(part.parameters.axialLoad)).toBeGreaterThan(Math.max(...loads) + 10);
  });

  test("each by its own stiffness: beside one that cannot bend, all of its own sink counts", () => {
    const stiff = { A: { at: [150, 15], foot: { mount: "on-top" } } };
    const plan = { motor: { plateTop: 14 }, screws: stiff, loops: { low: { stock: [1370, 1400] } } };
    const { of, part } = numbersOf(derive(plan), "B");
    expect(give(derive(plan), "A")).toBe(0);
    expect(part.parameters.otherSink).toBe(0);
    expect(of("d_delta")).toBeCloseTo((of("delta") * Number(part.parameters.steadyLoad)) / of("F_t"), 9);
    expect(of("d_delta")).toBeGreaterThan(0);
  });

  test("and not the heaviest load ever against the lightest ever", () => {
    const stage = derive(UNDER);
    const { of } = numbersOf(stage, "C");
    // 44.9 N while A carries 6.8, the print behind; with a hand there C carries 71.6 and A would lift off.
    const [heavy, light] = [amount(stage, "screw.C.worst"), Math.max(0, amount(stage, "screw.A.least"))];
    expect(of("d_delta")).toBeLessThan(0.6 * give(stage, "C") * (heavy - light));
  });
});
