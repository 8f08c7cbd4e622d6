import { describe, expect, it } from "vitest";
import type { PlacedPart } from "../../../src/stage/index.ts";
import { wide } from "../cargo/stages.ts";

type Changes = Readonly<Record<string, unknown>>;

function part(name: string, changes: Changes = {}): PlacedPart {
  const found = wide(changes).parts.find((each) => each.name === name);
  if (found === undefined) throw new Error(`no part ${name}`);
  return found;
}

const errors = (changes: Changes) => wide(changes).diagnostics.filter(({ level }) => level === "error");
const places = (changes: Changes) => errors(changes).map(({ name, path }) => `${name} ${path.join(".")}`);

describe("tram mounts", () => {
  it("take type, share, growth, its direction and all types from the plan", () => {
    expect(part("mount-two").parameters).toMatchObject({
      type: "slot",
      share: 6.73,
      growth: 0.59,
      growthAngle: 0,
      plate: 6,
      plateTemperature: 90,
      ambient: 20,
      allTypes: ["fixed", "slot", "free"],
      bar: { key: "30x30 slot 8" },
      reach: 19,
    });
  });

  it("stand against their bar, y away from it, the row of bolts in the middle of its slot", () => {
    const one = part("mount-one");
    // The bar's face is at y = 111, and the bolt at 130.
    expect(one.placement).toEqual({ origin: [200, 130, expect.any(Number)], angle: 0 });
    expect(one.moves).toBe(true);
    // Mount three stands before the back arm, whose face is at 449: its y points to -y.
    const three = part("mount-three");
    expect(Math.abs(three.placement.angle)).toBe(180);
    expect(three.placement.origin.slice(0, 2)).toEqual([380, 430]);
    // Its growth at 59.04 deg of the plan is at 59.04 - 180 of its own frame.
    expect(three.parameters.growthAngle).toBeCloseTo(59.04 - 180, 2);
  });

  it("stand over the end of a bar that points to them", () => {
    const bars = { tongue: { bar: "30x30 slot 8", from: [380, 111, 115], to: [380, 400, 115], moves: true } };
    const mounts = { three: { bar: "tongue", parameters: { mount: "end" } } };
    const three = part("mount-three", { bars, plate: { mounts } });
    expect(three.placement.angle).toBeCloseTo(0, 9);
    expect(three.parameters.reach).toBe(30);
  });

  it("lie on the top of their bar when they are asked to", () => {
    const one = part("mount-one", { mount: { mount: "on-top" } });
    // The bar's top is at 130; the bracket's upper face is its thickness over that.
    expect(one.placement.origin[2]).toBeGreaterThan(130 + 5);
  });

  it("choose the nearest bar of the stage where none is named", () => {
    const mounts = { one: { bar: undefined }, two: { bar: undefined }, three: { bar: undefined } };
    const unnamed = wide({ plate: { mounts } }).parts;
    expect(unnamed.map(({ placement }) => placement)).toEqual(wide().parts.map(({ placement }) => placement));
  });

  it("are numbered round the plate from the fixed one", () => {
    const numbers = ["one", "two", "three"].map((name) => part(`mount-${name}`).parameters.mountNumber);
    expect(numbers).toEqual([1, 2, 3]);
  });

  it("take from the blocks of the plan what does not follow, the closest last", () => {
    const plate = { mounts: { one: { parameters: { material: "PC", headBelow: 1 } } } };
    const changes = { mount: { material: "ABS", fingerRoom: 30 }, plate };
    expect(part("mount-one", changes).parameters).toMatchObject({
      material: { key: "PC" },
      headBelow: 1,
      fingerRoom: 30,
    });
    expect(part("mount-two", changes).parameters).toMatchObject({ material: { key: "ABS" }, fingerRoom: 30 });
    expect(part("mount-one", changes).derived).not.toContain("material");
  });

  it("let a block know better what the plan can only estimate", () => {
    const heavy = { plate: { mounts: { one: { parameters: { share: "12 N" } } } } };
    expect(part("mount-one", heavy).parameters.share).toBe(12);
    expect(part("mount-one", heavy).derived).not.toContain("share");
  });
});

describe("wheel plates", () => {
  it("stand up beside their post, the arms on their outer face", () => {
    const left = part("carriage-left");
    // Post at x = 15; wheels stand 12.5 off the plate, so its wheel side is at 27.5 and its outer face at 35.5.
    expect(left.placement).toEqual({ origin: [27.5, 280, 115], angle: -90, upright: true });
    expect(part("carriage-right").placement).toEqual({ origin: [732.5, 280, 115], angle: 90, upright: true });
    expect(left.parameters).toMatchObject({
      barWidth: 20,
      barDepth: 20,
      module: 20,
      arm: { key: "30x30 slot 8" },
      armsAt: [0],
      travelUp: 220,
      travelDown: 0,
    });
  });

  it("share what the wheels hold, by its levers along and across the plate", () => {
    const { load, overhang, offset } = part("carriage-left").parameters as Record<string, number>;
    // The hand of 50 N on the corner, half of everything on each carriage.
    expect(load).toBeCloseTo((wide().loads?.weight ?? 0) / 2 + 25, 2);
    expect(Math.hypot(overhang ?? 0, offset ?? 0)).toBeCloseTo(2124.82 / (2 * (load ?? 1)), 2);
  });

  it("put two arms where they cross the plate", () => {
    const bars = {
      "side-left": { from: [50.5, 111, 100], to: [50.5, 449, 100] },
      "upper-left": { bar: "30x30 slot 8", from: [50.5, 111, 150], to: [50.5, 449, 150], moves: true },
    };
    const left = part("carriage-left", { bars, carriages: { left: { arms: ["side-left", "upper-left"] } } });
    expect(left.placement.origin[2]).toBe(125);
    expect(left.parameters.armsAt).toEqual([-25, 25]);
  });

  it("meet the bars of the frame that stand in their way", () => {
    const bars = { shelf: { bar: "30x30 slot 8", from: [15, 260, 320], to: [15, 100, 320] } };
    expect(places({ bars }).filter((each) => each.startsWith("wheel-path"))).toEqual([
      "wheel-path-obstructed carriages.left.post",
    ]);
    const clear = { shelf: { bar: "30x30 slot 8", from: [15, 260, 470], to: [15, 100, 470] } };
    expect(places({ bars: clear })).toEqual([]);
  });

  it("keep two that come out alike as two parts with the same parameters, but for what stands round them", () => {
    const [left, right] = [part("carriage-left"), part("carriage-right")];
    const plain = ({ obstacles: _, ...others }: Readonly<Record<string, unknown>>) => others;
    expect(plain(left.parameters)).toEqual(plain(right.parameters));
    expect(left.name).not.toBe(right.name);
  });
});

describe("complaints of a family", () => {
  it.each<[string, Changes, string]>([
    [
      "its own block",
      { plate: { mounts: { one: { parameters: { joint: "glue" } } } } },
      "plate.mounts.one.parameters.joint",
    ],
    ["the common block", { carriage: { rowSpacing: "30 mm" } }, "carriage.rowSpacing"],
    ["a key that is none", { carriages: { left: { parameters: { weels: 4 } } } }, "carriages.left.parameters.weels"],
    ["a part of an item", { carriage: { wheel: { row: "V 23.9", outsid: 24 } } }, "carriage.wheel.outsid"],
  ])("stand at %s", (_, changes, path) => {
    const own = errors(changes).filter((each) => each.path.join(".") === path);
    expect(own.length).toBeGreaterThan(0);
    for (const each of own) expect(each.says).toMatch(/^(mount|carriage)-/);
  });
});

describe("what a family's checks find", () => {
  it("stands where the plan has it: in a block, at what it follows from, or at the part", () => {
    expect(places({ plate: { mounts: { two: { parameters: { halfTravel: 0.4 } } } } })).toEqual([
      "slot-shorter-than-growth plate.mounts.two.parameters.halfTravel",
    ]);
    const types = places({ plate: { mounts: { three: { type: "slot" } } } });
    expect(types).toEqual(Array(3).fill("growth-types-not-one-each plate.mounts"));
    expect(places({ carriages: { left: { parameters: { rowSpacing: 40 } } } })).toEqual([
      "arm-bolts-under-wheel carriages.left.arms",
    ]);
  });
});
