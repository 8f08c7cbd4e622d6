import { describe, expect, test } from "vitest";
import { ALLOWED, type Allowed, allowanceOf } from "../../../src/build/clash/allowed.ts";
import { type Clash, clashesOf } from "../../../src/build/clash/clashes.ts";
import { GAP_RULES, narrowGaps } from "../../../src/build/clash/gaps.ts";
import { boundsOf } from "../../../src/geometry/bounds.ts";
import type { Vec3 } from "../../../src/geometry/mesh.ts";
import { rectangle } from "../../../src/geometry/profile.ts";
import { carve, cylinder, moved, prism, type Solid, turned } from "../../../src/geometry/solid.ts";
import type { Body, BodyKind, RoomName } from "../../../src/stage/bodies/index.ts";
import { kernel } from "../../support/kernel.ts";

/** A body for tests; what it does not say is that of a printed part which stands still and belongs to nothing. */
function body(name: string, solid: Solid, more: Partial<Body> = {}): Body {
  const stands = { kind: "part", moves: false, belongsTo: [], path: [name], rooms: {} } as const;
  return { ...stands, name, solid, box: boundsOf(solid), ...more };
}

const block = (at: Vec3, x = 10, y = 10, z = 10) => moved(prism(rectangle(0, 0, x, y), 0, z), at);
const found = (bodies: readonly Body[], lift = 100, table?: readonly Allowed[]): Clash[] =>
  kernel.assemble((hall) => clashesOf(bodies, lift, hall, table));

describe("clashes of two bodies", () => {
  test("are told with volume, place and depth: two boxes", () => {
    const [clash, ...others] = found([body("one", block([0, 0, 0])), body("other", block([7, 4, -8]))]);
    expect(others).toEqual([]);
    expect(clash?.volume).toBeCloseTo(3 * 6 * 2, 6);
    expect(clash?.depth).toBeCloseTo(2, 6);
    expect(clash?.size).toEqual([3, 6, 2]);
    expect(clash?.centre).toEqual([8.5, 7, 1]);
  });

  test("two screws side by side, 0.5 mm too near", () => {
    const screw = (x: number) => moved(cylinder(4, 0, 300), [x, 0, 0]);
    const [clash] = found([body("one", screw(0)), body("other", screw(7.5))]);
    // Circular segments, plane geometry; the polygons lie up to 0.05 mm inside each circle.
    const lens = (apart: number) => 2 * 16 * Math.acos(apart / 8) - (apart / 2) * Math.sqrt(64 - apart ** 2);
    expect(clash?.depth).toBeGreaterThan(0.4);
    expect(clash?.depth).toBeLessThanOrEqual(0.5);
    expect(clash?.volume).toBeGreaterThan(300 * lens(7.6));
    expect(clash?.volume).toBeLessThanOrEqual(300 * lens(7.5));
  });

  test("less than 0.01 mm3 is none, nor is touching", () => {
    const other = (deep: number) => [body("one", block([0, 0, 0])), body("other", block([10 - deep, 9, 9]))];
    expect(found(other(0))).toEqual([]);
    // 1 x 1 mm, once 0.009 and once 0.011 mm deep.
    expect(found(other(0.009))).toEqual([]);
    expect(found(other(0.011))).toHaveLength(1);
  });

  test("what rises is met where it is at the bottom, in the middle and at the top, and told at its worst", () => {
    const stage = body("stage", block([0, 0, 0]), { moves: true });
    const at = (z: number) => found([stage, body("arm", block([5, 5, z]))]).map(({ height, depth }) => [height, depth]);
    expect(at(4)).toEqual([["bottom", 5]]);
    expect(at(54)).toEqual([["middle", 5]]);
    expect(at(97)).toEqual([["top", 5]]);
    expect(at(30)).toEqual([]);
    const mast = body("mast", block([5, 5, 5], 10, 10, 200));
    expect(found([stage, mast]).map(({ height, volume }) => [height, Math.round(volume)])).toEqual([["middle", 250]]);
  });

  test("what rises along a straight post is compared with it once, along any other at every height", () => {
    const counted = (post: Solid) => {
      let asked = 0;
      const bodies = [body("post", post), body("wheel", block([0, 0, 10]), { moves: true })];
      const clashes = kernel.assemble((hall) => {
        const overlap: typeof hall.overlap = (...pair) => {
          asked++;
          return hall.overlap(...pair);
        };
        return clashesOf(bodies, 100, { ...hall, overlap });
      });
      return [asked, ...clashes.map(({ height, volume }) => [height, Math.round(volume)])];
    };
    const post = (z0: number, z1: number) => block([8, 0, z0], 10, 10, z1 - z0);
    expect(counted(post(0, 200))).toEqual([1, ["bottom", 200]]);
    // It ends below the wheel's highest place, or begins above its lowest.
    expect(counted(post(0, 119))).toEqual([2, ["bottom", 200]]);
    expect(counted(post(11, 200))).toEqual([3, ["middle", 200]]);
    // Notched where the wheel starts from, and lying on its side.
    expect(counted(carve(post(0, 200), [block([0, 0, 10], 20, 10, 5)]))).toEqual([3, ["middle", 200]]);
    expect(counted(turned(post(0, 200), "x", 90)).at(0)).toBe(0);
    expect(counted(moved(turned(post(0, 20), "x", 90), [0, 15, 5]))).toEqual([1, ["bottom", 100]]);
  });

  test("the place is told as it is at that height", () => {
    const [clash] = found([body("stage", block([0, 0, 0]), { moves: true }), body("arm", block([0, 0, 108]))]);
    expect(clash?.centre).toEqual([5, 5, 109]);
  });

  test("what rises together is tried once and meets at the bottom", () => {
    const [clash] = found([
      body("plate", block([0, 0, 0]), { moves: true }),
      body("arm", block([5, 5, 5]), { moves: true }),
    ]);
    expect(clash?.height).toBe("bottom");
  });

  test("bars of one frame are left to the look at the frame, a bar that rises into one is not", () => {
    const bar = (name: string, moves: boolean) => body(name, block([0, 0, 0]), { kind: "bar", moves });
    expect(found([bar("one", false), bar("other", false)])).toEqual([]);
    expect(found([bar("one", false), bar("other", true)])).toHaveLength(1);
  });
});

/** Two bodies for an entry of the table: the first has the room, which is the lower half of it. */
function pairFor({ kinds: [kind, other], room }: Allowed, owners: [string, string], low = true): Body[] {
  const rooms: Partial<Record<RoomName, Solid>> = room === undefined ? {} : { [room]: block([-5, -5, -5], 20, 20, 10) };
  return [
    body("one", block([0, 0, 0]), { kind, belongsTo: [owners[0]], rooms }),
    body("other", block([2, 2, low ? 1 : 6], 4, 4, 3), { kind: other, belongsTo: [owners[1]] }),
  ];
}

describe("the table of what may share space", () => {
  test("has a reason for each entry and each pair of kinds once", () => {
    const pairs = ALLOWED.map(({ kinds }) => [...kinds].sort().join("+"));
    expect(new Set(pairs).size).toBe(pairs.length);
    for (const { why } of ALLOWED) expect(why.length).toBeGreaterThan(20);
  });

  test.each(ALLOWED)("$kinds: free where $why, and a clash without the entry", (entry) => {
    const without = ALLOWED.filter((one) => one !== entry);
    const own = pairFor(entry, ["screw A", "screw A"]);
    expect(found(own)).toEqual([]);
    expect(found([...own].reverse())).toEqual([]);
    expect(found(own, 100, without)).toHaveLength(1);
    const strange = found(pairFor(entry, ["screw A", "screw B"]));
    expect(strange).toHaveLength(entry.which === "own" ? 1 : 0);
    const beyond = found(pairFor(entry, ["screw A", "screw A"], false));
    expect(beyond).toHaveLength(entry.room === undefined ? 0 : 1);
  });

  test("every other pair of kinds clashes", () => {
    const kinds: BodyKind[] = ["bar", "screw", "bearing", "pulley", "motor", "belt", "idler", "plate", "wheel", "part"];
    const listed = (a: BodyKind, b: BodyKind) =>
      ALLOWED.some(({ kinds: [c, d] }) => (a === c && b === d) || (a === d && b === c));
    for (const a of kinds) {
      for (const b of kinds) {
        const pair = [
          body("one", block([0, 0, 0]), { kind: a, moves: true, belongsTo: ["screw A"] }),
          body("other", block([5, 5, 5]), { kind: b, belongsTo: ["screw A"] }),
        ];
        const allowed = allowanceOf(pair[0] as Body, pair[1] as Body)?.entry;
        expect(allowed !== undefined, `${a} and ${b}`).toBe(listed(a, b));
        if (allowed === undefined) expect(found(pair, 3)).toHaveLength(1);
      }
    }
  });
});

/** Two bodies that break a rule when they are this far apart, mm. */
const NAMED: Readonly<Record<string, (gap: number) => Body[]>> = {
  "belts-too-close": (gap) => [
    body("low", block([0, 0, 0]), { kind: "belt", belongsTo: ["loop low"] }),
    body("high", block([0, 0, 10 + gap]), { kind: "belt", belongsTo: ["loop high"] }),
  ],
  "belt-too-near-foreign-flange": (gap) => [
    body("pulley", block([10 + gap, 0, 0]), { kind: "pulley", belongsTo: ["screw A", "loop high"] }),
    body("belt", block([0, 0, 0]), { kind: "belt", belongsTo: ["loop low"] }),
  ],
  "pulley-bodies-collide": (gap) => [
    body("pulley", block([0, 0, 0]), { kind: "pulley", belongsTo: ["screw A", "loop low"] }),
    body("idler", block([0, 10 + gap, 0]), { kind: "idler", belongsTo: ["idler i", "loop low"] }),
  ],
  "belt-too-near-bracket": (gap) => [
    body("belt", block([0, 0, 10 + gap]), { kind: "belt", belongsTo: ["loop low"] }),
    body("foot", block([0, 0, 0]), { belongsTo: ["screw A"] }),
  ],
  "stage-meets-foot": (gap) => [
    body("pulley", block([0, 0, 0]), { kind: "pulley", belongsTo: ["screw A"] }),
    body("arm", block([0, 0, 10 + gap]), { kind: "bar", moves: true }),
  ],
};

describe("gaps with a name", () => {
  const gaps = (bodies: readonly Body[]) => kernel.assemble((hall) => narrowGaps(bodies, hall));

  test.each(GAP_RULES)("$name: $error mm, better $warning mm", ({ name, error, warning }) => {
    const at = (gap: number) => {
      const bodies = NAMED[name]?.(gap) ?? [];
      const [one, other] = [gaps(bodies), gaps([...bodies].reverse())];
      expect(one.map(({ level, gap: air }) => [level, air])).toEqual(other.map(({ level, gap: air }) => [level, air]));
      return one.map(({ name, level, gap: air, limit }) => [name, level, air.toFixed(3), limit]);
    };
    expect(at(error - 0.1)).toEqual([[name, "error", (error - 0.1).toFixed(3), error]]);
    expect(at(error)).toEqual(warning === undefined ? [] : [[name, "warning", error.toFixed(3), warning]]);
    expect(at(warning ?? error)).toEqual([]);
    expect(at(0)).toEqual([[name, "error", "0.000", error]]);
  });

  test("a belt may be near the pulleys of its own loop, and pulleys of one axis near each other", () => {
    const pulley = (name: string, z: number, loop: string) =>
      body(name, block([0, 0, z]), { kind: "pulley", belongsTo: ["motor", loop] });
    const belt = body("belt", block([0, 10.2, 0], 10, 10, 4), { kind: "belt", belongsTo: ["loop low"] });
    expect(gaps([pulley("low", 0, "loop low"), pulley("high", 10.5, "loop high"), belt])).toEqual([]);
  });

  test("what stands in one another already is not told again", () => {
    const bodies = NAMED["belts-too-close"]?.(-1) ?? [];
    expect(kernel.assemble((hall) => narrowGaps(bodies, hall, () => true))).toEqual([]);
  });
});
