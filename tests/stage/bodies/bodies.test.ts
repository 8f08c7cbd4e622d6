import { describe, expect, test } from "vitest";
import { type Body, bodiesOf } from "../../../src/stage/bodies/index.ts";
import type { Stage } from "../../../src/stage/index.ts";
import { handStage, printerOf } from "../../support/hand-stage.ts";
import { kernel, meshVolume } from "../../support/kernel.ts";

const stage = handStage();
const bodies = bodiesOf(stage, printerOf);

function named(name: string, among: readonly Body[] = bodies): Body {
  const body = among.find((one) => one.name === name);
  if (body === undefined) throw new Error(`no body ${name}`);
  return body;
}

const meshOf = (body: Body, fine = 0.001) =>
  kernel.build(body.solid, (built) => ({ mesh: built.mesh(), box: built.box() }), fine);
const heights = (body: Body) => {
  const { min, max } = meshOf(body).box;
  return [min[2], max[2]];
};

describe("the bodies of a machine put together by hand", () => {
  test("are each named once, closed, and inside their boxes", () => {
    expect(new Set(bodies.map(({ name }) => name)).size).toBe(bodies.length);
    for (const body of bodies) {
      const { mesh, box } = meshOf(body, 0.02);
      expect(meshVolume(mesh)).toBeGreaterThan(1);
      for (const axis of [0, 1, 2] as const) {
        expect(body.box.min[axis]).toBeLessThanOrEqual(box.min[axis] + 1e-4);
        expect(body.box.max[axis]).toBeGreaterThanOrEqual(box.max[axis] - 1e-4);
      }
    }
  });

  test("are all there", () => {
    const counts: Record<string, number> = {};
    for (const { kind } of bodies) counts[kind] = (counts[kind] ?? 0) + 1;
    expect(counts).toEqual({
      bar: 8,
      screw: 3,
      bearing: 3,
      ring: 3,
      collar: 3,
      pulley: 5,
      motor: 1,
      "motor-screw": 4,
      belt: 2,
      plate: 1,
      heater: 1,
      wheel: 8,
      axle: 8,
      eccentric: 4,
      nut: 3,
      "tram-bolt": 3,
      spring: 3,
      washer: 9,
      "thumb-wheel": 3,
      // Washer and head: two bolts for each foot and mount, four axles of each carriage; arms are bolted on elsewhere.
      fastener: 2 * (2 * 3 + 2 * 3 + 4 * 2),
      part: 8,
    });
  });

  test("stack up on a screw without a gap: seat -7, bearing 7, ring 1, collar 9, pulley 17", () => {
    expect(heights(named("bearing of screw A"))).toEqual([expect.closeTo(-7, 4), expect.closeTo(0, 4)]);
    expect(heights(named("rings of screw A"))).toEqual([expect.closeTo(0, 4), expect.closeTo(1, 4)]);
    expect(heights(named("collar of screw A"))).toEqual([expect.closeTo(1, 4), expect.closeTo(10, 4)]);
    expect(heights(named("pulley of screw A"))).toEqual([expect.closeTo(10, 4), expect.closeTo(27, 4)]);
    expect(heights(named("belt low"))).toEqual([expect.closeTo(19.5, 4), expect.closeTo(25.5, 4)]);
    // The tip lies 5 below the bearing; the screw is 420 long.
    expect(heights(named("screw A"))).toEqual([expect.closeTo(-12, 4), expect.closeTo(408, 4)]);
  });

  test("a pulley is stepped: hub 16 at its own end, below, flanges 27, teeth z p / pi less twice the pitch line", () => {
    const { mesh } = meshOf(named("pulley of screw A"));
    const radiusAt = (z: number) => {
      let most = 0;
      for (let at = 0; at < mesh.positions.length; at += 3) {
        const [x = 0, y = 0, height = 0] = mesh.positions.subarray(at, at + 3);
        if (Math.abs(height - z) < 1e-3) most = Math.max(most, Math.hypot(x - 150, y - 62));
      }
      return most;
    };
    expect(radiusAt(10)).toBeCloseTo(8, 2);
    expect(radiusAt(27)).toBeCloseTo(13.5, 2);
    const teeth = kernel.build(named("pulley of screw A").solid, (body) => body.sectionArea(22.5), 0.001);
    expect(Math.sqrt(teeth / Math.PI)).toBeCloseTo(36 / Math.PI - 0.254, 2);
  });

  test("a belt has the volume of its length, thickness and width, a little less where it turns", () => {
    for (const { loop, belt, nodes } of stage.loops) {
      const volume = meshVolume(meshOf(named(`belt ${loop}`)).mesh);
      // The pitch line is not in the middle of the thickness: round a pulley the middle runs 0.314 mm farther in.
      const middle = belt.length - 2 * Math.PI * (1.004 - 0.376) * 0.5;
      expect(nodes.every(({ inside }) => inside)).toBe(true);
      expect(Math.abs(volume / (middle * 1.38 * 6) - 1)).toBeLessThan(2e-3);
    }
  });

  test("a belt whose pulleys stand at different heights has each on its own", () => {
    const tilted = bodiesOf(handStage({ feet: { A: { beltPlane: 22.8 } } }), printerOf);
    expect(heights(named("belt low", tilted))).toEqual([expect.closeTo(19.5, 4), expect.closeTo(25.8, 4)]);
    const away = kernel.build(
      named("belt low", tilted).solid,
      (body) => ({ low: body.sectionArea(19.6), high: body.sectionArea(25.7), middle: body.sectionArea(22) }),
      0.001,
    );
    expect(away.low).toBeLessThan(away.middle);
    expect(away.high).toBeLessThan(away.low);
  });

  test("a level bar is as long as its middle line, on its narrow side unless it is turned", () => {
    const oblong = (turned: boolean) => {
      const bars = { beam: { bar: "20x40 slot 6", from: [0, 900, 0], to: [300, 900, 0], turned } };
      return meshOf(named("bar beam", bodiesOf(handStage({ plan: { bars } }), printerOf))).box;
    };
    expect(oblong(false)).toEqual({ min: [0, 890, -20], max: [300, 910, 20] });
    expect(oblong(true)).toEqual({ min: [0, 880, -10], max: [300, 920, 10] });
  });

  test("the slots of a bar are rooms in its faces, one for each module", () => {
    const bars = { beam: { bar: "20x40 slot 6", from: [0, 900, 0], to: [100, 900, 0] } };
    const beam = named("bar beam", bodiesOf(handStage({ plan: { bars } }), printerOf));
    const { slots } = beam.rooms;
    if (slots === undefined) throw new Error("no slots");
    // Two on each side and one above and below: 6.2 wide and 6.1 deep, 100 long; on the broad sides they do not meet.
    const shared = kernel.assemble((hall) => hall.overlap({ solid: beam.solid, lift: 0 }, { solid: slots, lift: 0 }));
    expect(shared?.volume).toBeCloseTo(6 * 6.2 * 6.1 * 100, 0);
  });

  test("plate and heater lie on the mounts, and everything of the stage rises", () => {
    const [under, over] = heights(named("plate"));
    expect((over ?? 0) - (under ?? 0)).toBeCloseTo(6, 4);
    expect(heights(named("heater"))[1]).toBeCloseTo(under ?? 0, 4);
    const moving = bodies.filter(({ moves }) => moves).map(({ name }) => name);
    expect(moving.filter((name) => /^(screw|foot|belt|motor|pulley|bearing)/.test(name))).toEqual([]);
    expect(moving).toEqual(expect.arrayContaining(["bar arm-front", "plate", "heater", "mount-one", "carriage-left"]));
  });

  test("the hardware of a mount lies layer on layer: wheel, washer, bracket, washer, spring, washer, plate", () => {
    const [low = 0, top = 0] = heights(named("mount-one"));
    const wheel = heights(named("thumb wheel of mount-one"));
    const [under, over, slides] = [1, 2, 3].map((each) => heights(named(`washer ${each} of mount-one`)));
    const spring = heights(named("spring of mount-one"));
    const plate = heights(named("plate"));
    const bolt = heights(named("tram bolt of mount-one"));
    expect(wheel[1]).toBeCloseTo(slides?.[0] ?? 0, 6);
    expect(slides?.[1]).toBeLessThan(top);
    expect(slides?.[1]).toBeGreaterThanOrEqual(low - 1e-6);
    expect(under?.[1]).toBeCloseTo(spring[0] ?? 0, 6);
    expect(spring[1]).toBeCloseTo(over?.[0] ?? 0, 6);
    expect(over?.[1]).toBeCloseTo(plate[0] ?? 0, 6);
    // These mounts are made for the plate that the family takes for usual.
    expect((bolt[1] ?? 0) - (plate[0] ?? 0)).toBeCloseTo(6.35, 4);
    expect(bolt[0]).toBeLessThan((slides?.[0] ?? 0) + 1e-6);
    // Wire and coil of the M5 spring of the table: 10 over all.
    const { min, max } = meshOf(named("spring of mount-one")).box;
    expect(max[0] - min[0]).toBeCloseTo(10, 1);
  });

  test("a nut stands on its screw with its middle where the plan has it, and rises", () => {
    const nut = named("nut of screw A");
    // The flanged nut of the table for 8 mm screws: 15 long, flange 22.
    expect(heights(nut)).toEqual([expect.closeTo(125 - 7.5, 4), expect.closeTo(125 + 7.5, 4)]);
    expect(meshOf(nut).box.max[0] - meshOf(nut).box.min[0]).toBeCloseTo(22, 1);
    expect(nut.moves).toBe(true);
  });

  test("heads and washers of the bolts lie on the outer side of what they hold, not where the key passes", () => {
    const foot = bodies.filter(({ name }) => name.endsWith(" of foot-a")).map(({ name }) => name);
    expect(foot).toHaveLength(4);
    expect(foot.filter((name) => name.includes("key"))).toEqual([]);
    const axle = bodies.find(({ name }) => /^M5 head at .* of carriage-left$/.test(name));
    const plate = meshOf(named("carriage-left")).box;
    if (axle === undefined) throw new Error("no head");
    const head = meshOf(axle).box;
    // The post stands at y 280, wheels between it and the plate.
    expect(Math.abs(head.min[1] - 280)).toBeGreaterThan(Math.abs(plate.min[1] - 280));
  });

  test("the far plate of a sandwich lies beyond the wheels, on the other side of the post", () => {
    const sandwiched = handStage();
    const parts = sandwiched.parts.map((part) =>
      part.name === "carriage-left" ? { ...part, parameters: { ...part.parameters, sandwich: true } } : part,
    );
    const all = bodiesOf({ ...sandwiched, parts }, printerOf);
    const [near, far] = [meshOf(named("carriage-left", all)).box, meshOf(named("carriage-left far", all)).box];
    const wheel = meshOf(named("wheel 1 of carriage-left", all)).box;
    // Plate, wheels and far plate follow on one another away from the near one.
    expect(near.min[1]).toBeGreaterThan(wheel.max[1]);
    expect(far.max[1]).toBeLessThan(wheel.min[1]);
    // Same size, turned over: left and right, top and bottom are where they were.
    for (const axis of [0, 2] as const) expect(far.max[axis]).toBeCloseTo(near.max[axis], 3);
    const shared = kernel.assemble((hall) =>
      hall.overlap(
        { solid: named("carriage-left far", all).solid, lift: 0 },
        { solid: named("wheel 1 of carriage-left", all).solid, lift: 0 },
      ),
    );
    expect(shared).toBeUndefined();
  });

  test("wheels stand on both sides of their post, their rims in its faces", () => {
    const { min, max } = meshOf(named("wheel 1 of carriage-left")).box;
    // Post 30 wide at x 15; wheels V 23.9, their axes 9.85 off its faces.
    expect((min[0] + max[0]) / 2).toBeCloseTo(15 - 15 - 9.85, 1);
    expect(max[0]).toBeCloseTo(2.1, 1);
    expect((min[1] + max[1]) / 2).toBeCloseTo(280, 1);
  });

  test("the motor hangs under its plate where the chosen loop puts it, its shaft through the pulleys", () => {
    const moved: Stage = {
      ...stage,
      loops: stage.loops.map((loop) => ({
        ...loop,
        nodes: loop.nodes.map((node) => (node.name === "motor" ? { ...node, y: node.y + 5 } : node)),
      })),
    };
    const { min, max } = meshOf(named("motor", bodiesOf(moved, printerOf))).box;
    expect([(min[0] + max[0]) / 2, (min[1] + max[1]) / 2]).toEqual([expect.closeTo(380, 4), expect.closeTo(405, 4)]);
    // Plate 10 high and 6 thick; a shaft of 42 from the face.
    expect(max[2]).toBeCloseTo(46, 4);
    const pulley = meshOf(named("motor pulley of loop low", bodiesOf(moved, printerOf))).box;
    expect((pulley.min[1] + pulley.max[1]) / 2).toBeCloseTo(405, 2);
  });

  test("a part with an error is left out, and so is what stands on a screw without a foot", () => {
    const broken = bodiesOf(handStage({ feet: { A: { floor: 4, beltPlane: -60 } } }), printerOf);
    expect(broken.map(({ name }) => name)).not.toContain("foot-a");
    const bare = bodiesOf({ ...stage, feet: [], parts: [], loops: [], pulleys: [] }, printerOf);
    expect(bare.map(({ kind }) => kind)).toEqual([...Array(8).fill("bar"), "motor", ...Array(4).fill("motor-screw")]);
  });
});
