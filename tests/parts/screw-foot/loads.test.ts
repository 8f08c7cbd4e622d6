import { describe, expect, test } from "vitest";
import { finding, numberOf } from "./foot.ts";

const SINK = "feet-sink-unequally";

describe("a foot on a post", () => {
  // By hand (statics): the bolts of each cheek stand 23 mm apart. 150 N on a lever of 17 + 15 mm, 30 N of belt over the
  // bolts' middle; the thrust itself, 37.5 N on each bolt, at right angles. 0.2 x 833.3 N of friction hold.
  test("slides by the sum of moment, belt and thrust, not by the moment alone", () => {
    const foot = { mount: "on-post", bar: "30x30 slot 8", beltPlane: "2 in", thrust: "collar", axialLoad: 150 };
    const arm = Math.abs(numberOf("z_pl", foot) - numberOf("z_h", foot));
    const couple = (150 * 32 + 30 * arm) / 46;
    const by = Math.hypot(couple + 7.5, 37.5) / (0.2 * (1 / (0.2 * 0.006)));
    expect(numberOf("u_g", foot)).toBeCloseTo(by, 9);
    expect(numberOf("F_sl", { ...foot, beltPull: 0 })).toBeCloseTo(Math.hypot((150 * 32) / 46, 37.5), 9);
  });

  test("is said to slide, and never to lift off", () => {
    const foot = { mount: "on-post", axialLoad: 200, thrust: "collar" };
    expect(finding("foot-slides-on-post", foot)?.says).toMatch(
      /^[\d.]+ N try to slide the worst bolt, .* 120\.0 N by friction/,
    );
    expect(finding("foot-lifts-off-bar", { ...foot, beltPull: 600 })).toBeUndefined();
    expect(finding("foot-slides-on-post", { beltPull: 600 })).toBeUndefined();
  });
});

describe("feet that sink unequally", () => {
  const POST = { mount: "on-post", bar: "30x30 slot 8", beltPlane: "2 in", thrust: "collar" };
  const UNDER = { mount: "under", axialLoad: 100, thrust: "collar" };

  test("a least load that was not given is not taken for none", () => {
    for (const axialLoad of ["10 kgf", 330]) {
      const found = finding(SINK, { ...POST, axialLoad });
      expect(["note", undefined]).toContain(found?.level);
    }
    const found = finding(SINK, UNDER);
    expect(found?.level).toBe("note");
    expect(found?.set).toContain("lightestLoad");
  });

  test("a least load that was given counts, be it nothing", () => {
    expect(finding(SINK, { ...UNDER, lightestLoad: 0 })?.level).toBe("warning");
    expect(finding(SINK, { ...UNDER, lightestLoad: 0 })?.set).toContain("lightestLoad");
    expect(finding(SINK, { ...UNDER, lightestLoad: 90 })).toBeUndefined();
  });

  // By hand: sink grows as the load does (statics), so 60 of 100 N sink by 0.6 of it.
  test("at one time: its own load then, and the other foot's, or what that one sinks", () => {
    const all = numberOf("delta", UNDER);
    expect(numberOf("d_delta", { ...UNDER, steadyLoad: 60, lightestLoad: 20 })).toBeCloseTo(0.4 * all, 9);
    expect(numberOf("d_delta", { ...UNDER, steadyLoad: 60, otherSink: 0.05 })).toBeCloseTo(0.6 * all - 0.05, 9);
    expect(numberOf("d_delta", { ...UNDER, steadyLoad: 20, lightestLoad: 60 })).toBe(0);
    expect(numberOf("d_delta", { ...UNDER, thrust: "hung", lightestLoad: 20 })).toBe(0);
    expect(finding(SINK, { ...UNDER, otherSink: 0 })?.level).toBe("warning");
    expect(finding(SINK, { ...UNDER, otherSink: all })).toBeUndefined();
  });

  test.each([
    ["under", "a thicker plate", { plate: 13 }],
    ["on-top", "a thicker plate", { plate: 13 }],
    ["on-post", "a thicker floor", { floor: 9 }],
    ["on-side", "a taller bar", { bar: "20x40 slot 6" }],
    ["in-corner", "a taller bar", { bar: "20x40 slot 6" }],
  ])("the cure %s makes what bends stiffer: %s", (mount, words, change) => {
    const heavy = {
      mount,
      thrust: "collar",
      axialLoad: 2000,
      lightestLoad: 0,
      ...(mount === "on-top" ? { offset: 30 } : {}),
    };
    expect(finding(SINK, heavy)?.set).toContain(words);
    expect(numberOf("delta", { ...heavy, ...change })).toBeLessThan(numberOf("delta", heavy));
  });
});
