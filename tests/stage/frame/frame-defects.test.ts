import { describe, expect, test } from "vitest";
import { frameDefects } from "../../../src/stage/frame/frame-defects.ts";
import { widePlan } from "../../support/plans.ts";

type Change = Readonly<Record<string, unknown>>;

const found = (change: Change) =>
  frameDefects(widePlan(change))
    .filter(({ name }) => name !== "bar-joins-no-other")
    .map(({ name, path, set }) => [name, path.join("."), set]);

test("bars that meet face to face are no defect", () => {
  expect(found({})).toEqual([]);
});

describe("bars in one another", () => {
  test("are told of with the cut that frees them, and the cut is enough", () => {
    // The left bar typed from the outside of the front one: 30 x 30 x 30 in common.
    const defects = frameDefects(widePlan({ bars: { left: { from: [15, 0, -15] } } }));
    expect(defects.map(({ name, found: has }) => [name, has?.value.toFixed(3)])).toEqual([
      ["frame-bars-overlap", "27000.000"],
    ]);
    expect(defects[0]?.set).toBe("front: from: [30, 15, -15]");
    expect(found({ bars: { left: { from: [15, 0, -15] }, front: { from: [30, 15, -15] } } })).toEqual([]);
  });

  test("a tenth of a millimetre is told of, binary noise is not", () => {
    expect(found({ bars: { left: { from: [15, 29.9, -15] } } })).toEqual([
      ["frame-bars-overlap", "bars.left", "left: from: [15, 30, -15]"],
    ]);
    expect(found({ bars: { left: { from: [15, 30 - 1e-6, -15] } } })).toEqual([]);
  });

  test("a bar of the stage counts where it stands at the bottom of the travel", () => {
    const defects = found({ bars: { "arm-front": { from: [80, 130, -10], to: [680, 130, -10] } } });
    expect(defects).toEqual([]);
    const crossing = found({ bars: { "arm-front": { from: [0, 130, -10], to: [680, 130, -10] } } });
    expect(crossing).toEqual([["frame-bars-overlap", "bars.arm-front", "arm-front: from: [30, 130, -10]"]]);
  });
});

describe("screws in bars", () => {
  test("are told of with a place beside the bar that passes", () => {
    const defects = found({ screws: { A: { at: [150, 22] } } });
    expect(defects).toEqual([["screw-axis-inside-bar", "screws.A.at", "at: of A, [150, 50]"]]);
    expect(found({ screws: { A: { at: [150, 50] } } })).toEqual([]);
  });

  test("in the bar of its own foot a screw is told of however short it is and however deep other bars lie", () => {
    const deep = { low: { bar: "30x30 slot 8", from: [0, 15, -500], to: [760, 15, -500] } };
    const names = found({ bars: deep, screws: { A: { at: [150, 22], length: 60 } } }).map(([, path]) => path);
    expect(new Set(names)).toEqual(new Set(["screws.A.at"]));
  });

  test("a bar of the stage over the screw is in its way, one beside it is not", () => {
    expect(found({ screws: { A: { at: [150, 100], bar: undefined } } }).map(([, path]) => path)).toEqual([
      "screws.A.at",
    ]);
    expect(found({ screws: { A: { at: [150, 80.9], bar: undefined } } })).toEqual([]);
  });

  test("a bar above the screw's upper end, and the bar that a foot stands on, are not in its way", () => {
    const high = (z: number) => ({ bars: { roof: { bar: "30x30 slot 8", from: [0, 62, z], to: [760, 62, z] } } });
    expect(found(high(450))).toEqual([]);
    expect(found(high(300)).map(([, path]) => path)).toEqual(["screws.A.at", "screws.B.at"]);
    expect(found({ screws: { A: { at: [150, 15], foot: { mount: "on-top" } } } })).toEqual([]);
  });
});
