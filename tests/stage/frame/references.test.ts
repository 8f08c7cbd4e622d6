import { describe, expect, test } from "vitest";
import { UNCALIBRATED } from "../../../src/printing/printer.ts";
import { wrongReferences } from "../../../src/stage/frame/references.ts";
import { deriveStage } from "../../../src/stage/index.ts";
import { widePlan } from "../../support/plans.ts";

type Change = Readonly<Record<string, unknown>>;

const wrong = (change: Change) => wrongReferences(widePlan(change)).map(({ path, set }) => [path.join("."), set]);

test("the wide machine names nothing that is not there", () => {
  expect(wrong({})).toEqual([]);
});

describe("names that name nothing", () => {
  test.each<[string, Change, [string, string]]>([
    ["a bar of a screw", { screws: { A: { bar: "frnt" } } }, ["screws.A.bar", "front"]],
    ["a bar of a mount", { plate: { mounts: { one: { bar: "arm-frnt" } } } }, ["plate.mounts.one.bar", "arm-front"]],
    ["a post", { carriages: { left: { post: "post-lft" } } }, ["carriages.left.post", "post-left"]],
    ["an arm", { carriages: { left: { arms: ["arm-bak"] } } }, ["carriages.left.arms.0", "arm-back"]],
    ["a slide", { loops: { low: { slide: { node: "moter" } } } }, ["loops.low.slide.node", "motor"]],
    ["a pulley's loop", { motor: { pulleys: [{ loop: "lwo" }, { loop: "high" }] } }, ["motor.pulleys.0.loop", "low"]],
  ])("%s is told of with the nearest name", (_, change, expected) => {
    expect(wrong(change)).toEqual([expected]);
  });

  test("a node; the screw that it should have been is not told to be on no loop", () => {
    expect(wrong({ loops: { low: { nodes: ["motor", "A", "BB", "press"] } } })).toEqual([["loops.low.nodes.2", "B"]]);
    // Two are on no loop, and one node is strange: it cannot be both.
    expect(wrong({ loops: { low: { nodes: ["motor", "A", "BB"], slide: { node: "motor" } } } })).toEqual([
      ["loops.low.nodes.2", "B"],
      ["screws.B", "B in nodes: of a loop"],
      ["idlers.press", "press in nodes: of a loop"],
    ]);
  });

  test("a name of one letter is near no other", () => {
    expect(wrong({ loops: { low: { nodes: ["motor", "A", "Q", "press"] } } })).toEqual([
      ["loops.low.nodes.2", "one of motor, A, B, C, press"],
    ]);
  });

  test("a word that is no mount is told of once, where all feet have it in common, or with its screw", () => {
    expect(wrong({ foot: { mount: "on side" } })).toEqual([["foot.mount", "on-side"]]);
    expect(wrong({ screws: { A: { at: [150, 15], foot: { mount: "ontop" } } } })).toEqual([
      ["screws.A.foot.mount", "on-top"],
    ]);
    expect(wrong({ foot: { mount: 7 } })).toEqual([
      ["foot.mount", "one of on-side, on-top, in-corner, on-post, under"],
    ]);
  });

  test("a name that is near none gets the list", () => {
    expect(wrong({ carriages: { left: { post: "mast" } } })).toEqual([
      ["carriages.left.post", "one of post-left, post-right"],
    ]);
  });
});

describe("names in the wrong place", () => {
  test.each<[string, Change, string]>([
    ["a foot on a post", { screws: { A: { bar: "post-left" } } }, "screws.A.bar"],
    ["a foot on a bar that moves", { screws: { A: { bar: "arm-front" } } }, "screws.A.bar"],
    ["a mount on a bar that stands still", { plate: { mounts: { one: { bar: "front" } } } }, "plate.mounts.one.bar"],
    ["a carriage on a level bar", { carriages: { left: { post: "left" } } }, "carriages.left.post"],
    ["an arm that stands still", { carriages: { left: { arms: ["front"] } } }, "carriages.left.arms.0"],
    ["a loop without the motor", { loops: { high: { nodes: ["C"] } } }, "loops.high.nodes"],
    ["a node twice", { loops: { high: { nodes: ["motor", "C", "C"] } } }, "loops.high.nodes.2"],
    ["a screw on two loops", { loops: { high: { nodes: ["motor", "C", "A"] } } }, "screws.A"],
    ["a screw on none", { screws: { D: { at: [200, 62], length: 420, bar: "front" } } }, "screws.D"],
    ["an idler on none", { idlers: { i: { at: [300, 200], side: "outside" } } }, "idlers.i"],
    ["an idler called as a screw", { idlers: { a: { at: [300, 200], side: "outside" } } }, "idlers.a"],
    ["a bar without length", { bars: { front: { to: [0, 15, -15] } } }, "bars.front"],
  ])("%s", (_, change, path) => {
    if (path === "loops.high.nodes") {
      // The schema wants two nodes at least.
      expect(wrong({ loops: { high: { nodes: ["C", "A"] } } }).map(([at]) => at)).toContain(path);
      return;
    }
    expect(wrong(change).map(([at]) => at)).toContain(path);
  });

  test("a carriage's bar that leans is neither level nor upright", () => {
    const leaning = { bars: { "post-left": { to: [15, 320, 500] } } };
    expect(wrong(leaning)).toEqual([["carriages.left.post", "one of post-right"]]);
  });
});

describe("the bar of a screw", () => {
  test("is found where it is left out: the nearest level one beside which it can stand", () => {
    const open = (at: [number, number]) => ({ screws: { A: { at, bar: undefined } } });
    const barOf = (at: [number, number]) => {
      const stage = deriveStage(widePlan(open(at)), () => UNCALIBRATED);
      return stage.feet.find(({ screw }) => screw === "A")?.bar;
    };
    expect(barOf([150, 62])).toBe("front");
    expect(barOf([62, 200])).toBe("left");
    expect(barOf([700, 300])).toBe("right");
    // Nearer to the left bar, 25 mm, than to the front one, 40 mm.
    expect(barOf([55, 70])).toBe("left");
  });

  test("too far off any bar: told with a place that passes", () => {
    const [complaint] = wrongReferences(widePlan({ screws: { A: { at: [380, 150], bar: "front" } } }));
    expect(complaint).toMatchObject({ path: ["screws", "A", "at"], set: "at: [380, 110]" });
    expect(wrong({ screws: { A: { at: [380, 110] } } })).toEqual([]);
    const [open] = wrongReferences(widePlan({ screws: { A: { at: [380, 250], bar: undefined } } }));
    expect(open?.says).toContain("no bar carries a foot on-side for A");
  });

  test("past the end of its bar", () => {
    const [complaint] = wrongReferences(widePlan({ screws: { A: { at: [-20, 62] } } }));
    expect(complaint?.says).toContain("20.0 mm past the end of front");
    expect(complaint?.set).toBe("at: [0, 62]");
  });

  test("a foot on-post needs an upright bar, and its screw before the middle of it", () => {
    const post = (at: [number, number], bar = "post-left") => ({
      screws: { A: { at, bar, foot: { mount: "on-post" } } },
    });
    expect(wrong(post([50, 280]))).toEqual([]);
    expect(wrong(post([50, 281]))).toEqual([["screws.A.at", "at: [50, 280]"]]);
    expect(wrong(post([150, 62], "front"))).toEqual([["screws.A.bar", "one of post-left, post-right"]]);
  });

  test("a foot in-corner needs a second bar across the first", () => {
    const corner = (at: [number, number]) => ({ screws: { A: { at, foot: { mount: "in-corner" } } } });
    expect(wrong(corner([60, 62]))).toEqual([]);
    expect(wrongReferences(widePlan(corner([300, 62])))[0]?.says).toContain("no second bar makes a corner with front");
  });
});

test("everything is told of in one run, and with it what else is wrong", () => {
  const plan = widePlan({
    bars: { extra: { bar: "30x30 slot 8", from: [0, 20, -15], to: [760, 20, -15] } },
    screws: { A: { bar: "frnt" }, B: { at: [610, 300] } },
    loops: { low: { nodes: ["motor", "A", "Bee", "press"] }, high: { slide: { node: "D" } } },
    carriages: { left: { post: "mast" } },
    plate: { heater: { size: [430, 220] } },
  });
  const told = deriveStage(plan, () => UNCALIBRATED).diagnostics.filter(({ level }) => level === "error");
  expect(told.map(({ path }) => path.join("."))).toEqual([
    "screws.A.bar",
    "screws.B.at",
    "carriages.left.post",
    "loops.low.nodes.2",
    "loops.high.slide.node",
    "bars.front",
    "bars.left",
    "bars.right",
    "plate.heater.size",
  ]);
});
