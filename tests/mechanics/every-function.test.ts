import fc from "fast-check";
import { expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";

/** Numbers of every kind, the ordinary ones often enough that a call also succeeds. */
const extremes = [0, -0, 1, -1, 5e-324, 1e-300, 1e300, Number.MAX_VALUE, -Number.MAX_VALUE];
const strange = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
const any = fc.oneof(
  { arbitrary: fc.double({ min: 0, max: 400, noNaN: true }), weight: 6 },
  { arbitrary: fc.integer({ min: -50, max: 400 }), weight: 3 },
  fc.double(),
  fc.constantFrom(...extremes, ...strange),
);
const point = fc.record({ x: any, y: any });
const name = fc.constantFrom("a", "b", "c", "d", "e");
const node = fc.record({ name, x: any, y: any, radius: any, inside: fc.boolean() });
const nodes = fc.array(node, { maxLength: 6 });
const list = fc.array(any, { maxLength: 6 });
const slide = fc.record({ node: name, direction: any, from: any, to: any });

/** Returns whether every number in an outcome is finite; a refusal counts when it says something. */
function holds(outcome: unknown): boolean {
  if (typeof outcome === "number") return Number.isFinite(outcome);
  if (typeof outcome !== "object" || outcome === null) return true;
  if ("refused" in outcome) {
    const named = !("defect" in outcome) || holds(outcome.defect);
    return named && typeof outcome.refused === "string" && /^(?!.*(NaN|Infinity)).{6,}$/.test(outcome.refused);
  }
  return Object.values(outcome).every(holds);
}

const mount = fc.record({ name, x: any, y: any, pitch: any, up: any, down: any });
const probe = fc.record({ x: any, y: any, height: any });
const plane = fc.record({ centre: point, atCentre: any, slopeX: any, slopeY: any, worst: any });
const slotBolt = fc.record({
  plate: any,
  washer: any,
  diameter: any,
  threadStart: any,
  slotDepth: any,
  stock: list,
  layer: fc.option(any, { nil: undefined }),
});
const seats = fc.record({
  plane: any,
  pulley: any,
  groove: any,
  flange: any,
  hub: any,
  collar: any,
  bearing: any,
  stacks: fc.array(list, { maxLength: 3 }),
  lowest: any,
  highest: any,
});
const screw = fc.record({
  name,
  lead: any,
  screwTeeth: any,
  motorTeeth: any,
  hand: fc.constantFrom("right" as const, "left" as const),
  inside: fc.boolean(),
});
const screwPlaces = fc.array(fc.record({ name, x: any, y: any }), { minLength: 2, maxLength: 4 });
const seat = fc.record({ seat: any, bed: any, first: any, layer: any });

test.each<[string, fc.Arbitrary<unknown>]>([
  ["belt loop", nodes.map((each) => m.beltLoop(each))],
  ["idler duties", nodes.map((each) => m.idlerDuties(each))],
  ["slide", fc.tuple(nodes, slide, any).map((given) => m.slideForLength(...given))],
  ["stock loops", fc.tuple(nodes, slide, any, list).map((given) => m.stockLoops(...given))],
  ["slot bolt", slotBolt.map(m.slotBolt)],
  ["seat candidates", seats.map(m.seatCandidates)],
  ["shimmed seat", fc.tuple(seat, list).map((given) => m.shimForSeat(...given))],
  ["screws in step", fc.array(screw, { maxLength: 4 }).map(m.screwsInStep)],
  ["locking", fc.tuple(any, any, any).map((given) => m.screwLocking(...given))],
  ["three screws", fc.tuple(screwPlaces, any, point).map((given) => m.screwLoads(...given))],
  ["four screws", fc.tuple(fc.array(point, { maxLength: 5 }), any, point).map((given) => m.fourScrewBounds(...given))],
  ["centre of mass", fc.array(fc.record({ mass: any, x: any, y: any }), { maxLength: 4 }).map(m.centreOfMass)],
  ["summed pull", fc.array(fc.record({ direction: any, tension: any }), { maxLength: 4 }).map(m.summedPull)],
  ["tram plane", fc.array(probe, { maxLength: 6 }).map(m.tramPlane)],
  ["tram moves", fc.tuple(plane, fc.array(mount, { maxLength: 4 }), name).map((given) => m.tramMoves(...given))],
  [
    "tram twist",
    fc
      .tuple(fc.array(probe, { maxLength: 6 }), fc.array(point, { maxLength: 5 }))
      .map((given) => m.tramTwist(...given)),
  ],
  ["friendly layers", fc.tuple(any, any, any).map((given) => m.friendlyLayers(...given))],
])("%s gives finite numbers or a reason, whatever it is given", (_, outcomes) => {
  fc.assert(
    fc.property(outcomes, (outcome) => {
      expect(holds(outcome), JSON.stringify(outcome)).toBe(true);
    }),
    { numRuns: 400, seed: 13 },
  );
});
