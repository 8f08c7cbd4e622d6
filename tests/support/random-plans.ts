import fc from "fast-check";
import { deepMerge } from "./deep-merge.ts";
import { WIDE } from "./plans.ts";

const far = (middle: number, by: number) =>
  fc.oneof(
    fc.integer({ min: middle - by, max: middle + by }),
    fc.constantFrom(-5000, 0, middle, 5000),
    fc.double({ min: -5000, max: 5000, noNaN: true }),
  );
const spot = (x: number, y: number) => fc.tuple(far(x, 300), far(y, 300));
const maybe = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: {} as Value, freq: 2 });

const MOTOR_PULLEYS = [
  "16 teeth 2 mm",
  "20 teeth 2 mm",
  "40 teeth 2 mm",
  { row: "20 teeth 2 mm", hubLength: 0 },
] as const;
const FOOT_PULLEYS = ["16 teeth 2 mm", "36 teeth 2 mm", "60 teeth 2 mm", "no such pulley", 7] as const;
const BARS = ["20x20 slot 6", "20x40 slot 6", "V 20x20", "30x30 slot 8", "1 in"] as const;

const foot = fc.record(
  {
    mount: fc.constantFrom("on-side", "on-top", "under", "on-post", "in-corner"),
    hub: fc.constantFrom("up", "down", "auto"),
    thrust: fc.constantFrom("pulley", "collar", "hung", "tip"),
    bearing: fc.constantFrom("608", "688", "6000", "625", { row: "608", width: 9 }),
    pulley: fc.constantFrom(...FOOT_PULLEYS),
    style: fc.constantFrom("open", "walled", "bridged"),
    locate: fc.constantFrom("none", "key", 3),
  },
  { requiredKeys: [] },
);
const screw = fc.record(
  {
    at: spot(380, 280),
    length: fc.integer({ min: 50, max: 3000 }),
    bar: fc.constantFrom(...Object.keys(WIDE.bars)),
    foot,
  },
  { requiredKeys: ["at", "length"] },
);
const bar = fc.record(
  {
    bar: fc.constantFrom(...BARS),
    from: fc.tuple(far(15, 40), far(15, 600), far(-15, 40)),
    to: fc.oneof(fc.tuple(far(760, 40), far(15, 600), far(-15, 40)), fc.constant([15, 280, 500])),
    turned: fc.boolean(),
    moves: fc.boolean(),
    facing: fc.integer({ min: -360, max: 360 }),
  },
  { requiredKeys: ["bar", "from", "to"] },
);
const slide = fc.record({
  node: fc.constantFrom("motor", "A", "press", "nobody"),
  direction: fc.integer({ min: -360, max: 360 }),
  from: fc.integer({ min: -30, max: 5 }),
  to: fc.integer({ min: -5, max: 30 }),
});
const loop = fc.record(
  {
    nodes: fc.array(fc.constantFrom("motor", "A", "B", "C", "D", "press", "rub", "nobody"), {
      minLength: 2,
      maxLength: 6,
    }),
    slide,
    inOrder: fc.boolean(),
    tension: fc.integer({ min: 1, max: 500 }),
    width: fc.constantFrom(3, 6, 9, 15),
  },
  { requiredKeys: ["nodes"] },
);
const pulley = fc.record({
  loop: fc.constantFrom("low", "high", "third"),
  pulley: fc.constantFrom(...MOTOR_PULLEYS),
  hub: fc.constantFrom("up", "down"),
  gap: fc.integer({ min: 0, max: 60 }),
  commonFlange: fc.boolean(),
});

/** A screw whose place means something: in front of the front bar or the back one. */
const placed = fc.record(
  {
    at: fc.tuple(
      fc.integer({ min: 60, max: 700 }),
      fc.oneof(fc.integer({ min: 52, max: 75 }), fc.integer({ min: 485, max: 508 })),
    ),
    length: fc.integer({ min: 50, max: 900 }),
    foot: foot.map((own) => ({ ...own, mount: "on-side" })),
  },
  { requiredKeys: ["at", "length"] },
);
const height = fc.integer({ min: -500, max: 3000 });
const idler = fc.record({
  at: spot(380, 280),
  idler: fc.constantFrom("two F625", "two F608", "smooth, bore 5", "20 teeth, bore 5"),
  side: fc.constantFrom("inside", "outside"),
});
const screwsOf = (one: typeof screw | typeof placed) =>
  fc
    .subarray(["A", "B", "C", "D"], { minLength: 2 })
    .chain((names) => fc.record(Object.fromEntries(names.map((name) => [name, one]))));

/** What is drawn besides screws and loops: sensible or not. */
const rest = {
  bars: maybe(fc.dictionary(fc.constantFrom(...Object.keys(WIDE.bars)), bar, { maxKeys: 2 })),
  foot: maybe(foot),
  travel: maybe(
    fc.record({ lowest: height, lift: fc.integer({ min: 1, max: 3000 }), nut: height }, { requiredKeys: [] }),
  ),
  plateTop: fc.integer({ min: -300, max: 500 }),
  temperatures: maybe(
    fc.record({ temperature: fc.integer({ min: 0, max: 200 }), ambient: fc.integer({ min: 0, max: 45 }) }),
  ),
  print: fc.oneof(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 200 })),
};

/** A machine of two to four screws and one or two loops whose names may name nothing. */
const nonsense = fc.record({
  ...rest,
  screws: screwsOf(screw),
  loops: fc.oneof(fc.record({ low: loop }), fc.record({ low: loop, high: loop })),
  idlers: fc.dictionary(fc.constantFrom("press", "rub"), idler),
  pulleys: fc.array(pulley, { minLength: 1, maxLength: 3 }),
});

/** A machine whose names mean something: every screw and idler in one loop, a pulley for each loop. */
const named = fc
  .record({
    ...rest,
    screws: screwsOf(placed),
    split: fc.integer({ min: 1, max: 4 }),
    idlers: fc.dictionary(fc.constantFrom("press", "rub"), idler),
    pair: fc.tuple(pulley, pulley),
    ways: fc.tuple(loop, loop),
  })
  .map(({ split, pair, ways, ...drawn }) => {
    const screws = Object.keys(drawn.screws);
    const parts = [[...screws.slice(0, split), ...Object.keys(drawn.idlers)], screws.slice(split)];
    const loops = parts.flatMap((own, index) => {
      const name = index === 0 ? "low" : "high";
      const { slide: slid, ...way } = ways[index] ?? {};
      const moved = slid === undefined ? {} : { slide: { ...slid, node: "motor" } };
      return own.length === 0 ? [] : [[name, { ...way, ...moved, nodes: ["motor", ...own] }] as const];
    });
    const pulleys = loops.map(([name], index) => ({ ...pair[index], loop: name }));
    return { ...drawn, loops: Object.fromEntries(loops), pulleys };
  });

/** Plans of two to four screws and one or two loops, sensible or not. */
export const wild = fc
  .oneof(nonsense, { weight: 2, arbitrary: named })
  .map(({ travel, plateTop, pulleys, temperatures, bars, ...drawn }) => ({
    ...WIDE,
    ...drawn,
    bars: { ...WIDE.bars, ...bars },
    travel: { ...WIDE.travel, ...travel },
    motor: { ...WIDE.motor, plateTop, pulleys },
    plate: { ...WIDE.plate, ...temperatures },
  }));

const within = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((tenths) => tenths / 10);

/** The wide machine a little changed: each loop still finds its belt, and most of these can be built. */
export const near = fc
  .record({
    plateTop: within(-4, 30),
    motorX: within(-3, 3),
    length: fc.integer({ min: 380, max: 440 }),
    hubs: fc.tuple(fc.constantFrom("up", "down"), fc.constantFrom("up", "down")),
    gaps: fc.tuple(within(0.5, 4), within(0.5, 4)),
    hub: fc.constantFrom("up", "down", "auto"),
    bearing: fc.constantFrom("608", "688"),
    thrust: fc.constantFrom("collar", "pulley"),
    teeth: fc.constantFrom("36 teeth 2 mm", "40 teeth 2 mm"),
    lowest: fc.integer({ min: 70, max: 110 }),
    temperature: fc.integer({ min: 40, max: 110 }),
    print: within(0, 4),
    along: within(-5, 5),
  })
  .map(({ plateTop, motorX, length, hubs, gaps, lowest, temperature, print, along, teeth, ...foot }) => {
    const [low, high] = WIDE.motor.pulleys;
    const pulleys = [
      { ...low, hub: hubs[0], gap: gaps[0] },
      { ...high, hub: hubs[1], gap: gaps[1] },
    ];
    // Any length of belt can be got, so that the places may be moved.
    const stock = Array.from({ length: 300 }, (_, index) => 200 + 4 * index);
    return deepMerge(WIDE, {
      foot: { hub: foot.hub, bearing: foot.bearing, thrust: foot.thrust, pulley: teeth },
      motor: { plateTop, pulleys, at: [380 + motorX, 400], motor: { shaftLength: 60 } },
      loops: { low: { stock: stock.map((each) => each + 200) }, high: { stock } },
      screws: { A: { length, at: [150 + along, 62] }, C: { at: [380 + motorX, 498] } },
      travel: { lowest, nut: lowest + 25 },
      bars: Object.fromEntries(
        Object.entries(WIDE.bars)
          .filter(([, one]) => "moves" in one)
          .map(([name, { from, to }]) => {
            const height = lowest + 15;
            return [name, { from: [from[0], from[1], height], to: [to[0], to[1], height] }];
          }),
      ),
      plate: { temperature },
      print,
    });
  });
