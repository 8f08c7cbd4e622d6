import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { loadedPlan, numberOf } from "../../support/loaded-plan.ts";

// Worked examples with their printed results (own arithmetic by the formulas of the sources named at each), driven
// through plan files as the program reads them. A number counts to the last digit that is printed here.
type Printed = Readonly<Record<string, string>>;
type Example = readonly [what: string, file: string, set: readonly string[], printed: Printed];

const TWO = "two-screws";
const LEFT = "carriages.left.parameters";
const wheels = (given: Readonly<Record<string, number>>) =>
  Object.entries({ offset: 0, ...given }).map(([key, value]) => `${LEFT}.${key}=${value}`);
const screws = (row: string) => ["A", "B"].map((screw) => `screws.${screw}.screw=${row}`);
const pressed = (length: number) => ["screws.A.length=1400", `travel.nut=${length - 150 + 4.5}`];
const bar = (row: string, side: number) => [
  `bars.middle.bar=${row}`,
  `bars.middle.from=[20, ${210 - side / 2}, ${-side / 2}]`,
  `bars.middle.to=[480, ${210 - side / 2}, ${-side / 2}]`,
  "foot.plate=6",
];
const SPRING = "row: 1.2 x 10 x 25, wire: 1, outside: 8, totalCoils: 8";

const EXAMPLES: readonly Example[] = [
  // geometry: belts of 2 mm pitch, pitch line 0.254, tooth 0.75, 1.38 thick.
  [
    "40 and 40 teeth, 300 apart",
    "one-screw",
    [],
    { "loop.round.nominal": "680.0", "loop.round.node.motor.wrap": "180.00", "loop.round.teeth": "340" },
  ],
  [
    "20 and 40 teeth, 200 apart",
    "one-screw",
    ["motor.at=[300, 52]", "motor.pulleys.0.pulley=20 teeth 2 mm", "loops.round.stock=[500]"],
    // No loop of stock fits, so the motor stays where the plan has it.
    {
      "loop.round.nominal": "460.2027",
      "loop.round.span.motor-to-A": "199.8987",
      "loop.round.node.motor.wrap": "176.3518",
      "loop.round.node.motor.mesh": "9.797",
    },
  ],
  [
    "20, 40 and 40 teeth: too few in mesh",
    "three-pulleys",
    [],
    {
      "loop.round.nominal": "955.5333",
      "loop.round.span.motor-to-B": "277.2354",
      "loop.round.span.B-to-C": "400.4997",
      "loop.round.span.C-to-motor": "205.0841",
      "loop.round.node.motor.wrap": "65.5726",
      "loop.round.node.B.wrap": "152.8120",
      "loop.round.node.C.wrap": "141.6153",
      "loop.round.node.motor.mesh": "3.643",
    },
  ],
  [
    "the same with an idler of 18 on the back",
    "with-idler",
    [],
    {
      "loop.round.nominal": "958.8586",
      "loop.round.span.motor-to-press": "65.2088",
      "loop.round.span.press-to-B": "209.0723",
      "loop.round.span.B-to-C": "400.4997",
      "loop.round.span.C-to-motor": "205.0841",
      "loop.round.node.motor.wrap": "81.3843",
      "loop.round.node.press.wrap": "20.8274",
      "loop.round.node.B.wrap": "157.8277",
      "loop.round.node.C.wrap": "141.6153",
      "loop.round.node.motor.mesh": "4.521",
    },
  ],
  // geometry: groove 7, flange 1, hub 7, bearing 7, ring 1.
  ["seat beside the bar, plane 24", TWO, [], { "loop.round.plane": "24.0", "foot-a.seat": "4.5" }],
  ["the same, hub up", TWO, ["foot.hub=up"], { "foot-a.seat": "11.5" }],
  ["plane 32", TWO, ["motor.plateTop=26.5"], { "loop.round.plane": "32.0", "foot-a.seat": "12.5" }],
  ["plane 32, hub up", TWO, ["motor.plateTop=26.5", "foot.hub=up"], { "foot-a.seat": "19.5" }],
  [
    "on top of the bar a tie goes down, without shim",
    TWO,
    ["screws.A.at=[80, 200]", "screws.A.foot.mount=on-top", "screws.A.foot.hub=up"],
    { "foot-a.seat-wanted": "11.50", "foot-a.seat": "11.40", "foot-a.residual": "-0.10", "foot-a.shim": "0.00" },
  ],
  [
    "beside it the bed is moved",
    TWO,
    [],
    { "foot-a.bed": "-19.9", "foot-a.residual": "0.0", "foot-a.pocket": "22.12" },
  ],
  // shigley: 8-1 to 8-5 and 4-12, 4-13; blevins: first mode.
  ["500 mm pressed", TWO, pressed(500), { "screw.A.column": "363.5", "screw.A.whirl-under": "2649" }],
  ["800 mm pressed", TWO, pressed(800), { "screw.A.column": "142.0", "screw.A.whirl-under": "1035" }],
  ["1000 mm pressed", TWO, pressed(1000), { "screw.A.column": "90.88", "screw.A.whirl-under": "662.2" }],
  ["1200 mm pressed", TWO, pressed(1200), { "screw.A.column": "63.11", "screw.A.whirl-under": "459.9" }],
  ["150 mm pressed: Johnson", TWO, ["travel.nut=54.5", "travel.lift=100"], { "screw.A.column": "3983" }],
  // statics: levers.
  [
    "a stage over the middle of three screws",
    "triangle",
    [],
    { "stage.weight": "11.25", "screw.A.share": "3.75", "screw.B.share": "3.75", "screw.C.share": "3.75" },
  ],
  [
    "a stage over one of them",
    "triangle",
    ["screws.A.at=[250, 200]", "screws.A.bar=middle"],
    { "stage.weight": "11.25", "screw.A.share": "11.25", "screw.B.share": "0.00", "screw.C.share": "0.00" },
  ],
  // shigley: 10-1 to 10-9.
  ["a spring of 1 mm wire", TWO, [`mount.spring={ ${SPRING} }`], { "mount.one.rate": "4.950" }],
  ["of softer wire", TWO, [`mount.spring={ ${SPRING}, shearModulus: 79300 }`], { "mount.one.rate": "4.817" }],
  [
    "a spring of 1.2 mm wire set to 16; the bracket under it",
    TWO,
    ["mount.share=16", "mount.setLength=16", "mount.range=3"],
    {
      "mount-one.rate": "5.166",
      "mount-one.solidLength": "9.6",
      "mount-one.bandLow": "14.609",
      "mount-one.bandHigh": "17.355",
      "mount-one.forceSet": "46.50",
      "mount-one.forceLong": "31.00",
      "mount-one.forceShort": "62.00",
      "mount-one.clash": "0.283",
      "mount-one.stress": "956.7",
      "mount-one.bracketTemperature": "45.4",
    },
  ],
  // openstax: thermal expansion, heat capacity.
  [
    "a plate of 457.2, by 80 K",
    TWO,
    ["plate.size=[457.2, 457.2]", "plate.temperature=100"],
    { "plate.growth.x": "0.8559" },
  ],
  [
    "the same plate, warmed by 60 K with 300 W",
    TWO,
    ["plate.size=[457.2, 457.2]", "plate.temperature=80", "plate.heater.power=300"],
    { "mass.plate": "3.584", "heater.energy": "192668", "heater.ideal-time": "642" },
  ],
  // statics: wheels.
  [
    "50 N on a lever of 200, two rows 100 apart",
    TWO,
    wheels({ load: 50, overhang: 200, rowSpacing: 100 }),
    {
      "carriage.left.rowRadial": "100.0",
      "carriage.left.preload limit": "50.0",
      "carriage.left.preload": "62.5",
      "carriage.left.largest": "112.5",
      "carriage.left.smallest": "12.5",
    },
  ],
  [
    "the same on three wheels",
    TWO,
    wheels({ load: 50, overhang: 200, rowSpacing: 100, wheels: 3 }),
    { "carriage.left.preload limit": "200" },
  ],
  [
    "four rows, 6000 N mm",
    TWO,
    wheels({ load: 60, overhang: 100, rowSpacing: 120, wheels: 8 }),
    { "carriage.left.rowRadial": "45.0" },
  ],
  ["leeway of 0.75 deg, bolts 30 apart", TWO, ["carriage.armBoltAt=15"], { "carriage-left.clearance": "0.393" }],
  [
    "a clearance of 0.5",
    TWO,
    ["carriage.armBoltAt=15", "carriage.leeway=0.955"],
    { "carriage-left.clearance": "0.500" },
  ],
  // bearing-makers: a quarter of the static rating.
  ["a 608 with axial load only", TWO, [], { "screw.A.axial-limit": "342.5" }],
  // geometry: the drive.
  [
    "40 and 20 teeth, lead 8",
    TWO,
    screws("Tr8x8(P2)"),
    { "drive.ratio": "2", "drive.per-step": "0.020", "drive.steps-per-mm": "800", "drive.per-tooth": "0.200" },
  ],
  // common practice: bolts into slot nuts.
  ["plate 6 on a 20-series bar", TWO, ["foot.plate=6"], { "foot-a.boltLength": "12", "foot-a.counterbore": "0.0" }],
  ["plate 8", TWO, ["foot.plate=8"], { "foot-a.boltLength": "12", "foot-a.counterbore": "1.8" }],
  ["plate 10", TWO, ["foot.plate=10"], { "foot-a.boltLength": "16", "foot-a.counterbore": "0.0" }],
  [
    "plate 6 on a 30-series bar",
    TWO,
    bar("30x30 slot 8", 30),
    { "foot-a.boltLength": "12", "foot-a.counterbore": "2.3" },
  ],
  [
    "plate 6 on a 40-series bar",
    TWO,
    bar("40x40 slot 8", 40),
    { "foot-a.boltLength": "16", "foot-a.counterbore": "0.0" },
  ],
];

const loaded = (file: string, set: readonly string[]) =>
  loadedPlan(resolve(`tests/stage/open-examples/${file}.yaml`), set);

describe("open examples, from their files", () => {
  test.each(EXAMPLES)("%s", (_, file, set, printed) => {
    const { machine } = loaded(file, set);
    for (const [name, number] of Object.entries(printed)) {
      const decimals = number.split(".")[1]?.length ?? 0;
      expect((numberOf(machine, name) + 0).toFixed(decimals).replace(/^-(0(?:\.0*)?)$/, "$1"), name).toBe(number);
    }
  });

  test("the whole tables are sound but for what an example is about", () => {
    expect(loaded(TWO, []).errors).toEqual([]);
    const told = (file: string) => loaded(file, []).errors.map(({ diagnostic: { name } }) => name);
    expect(told("three-pulleys")).toContain("too-few-teeth-in-mesh");
    expect(told("with-idler")).not.toContain("too-few-teeth-in-mesh");
    const warned = loaded("with-idler", []).messages.filter(({ diagnostic: { level } }) => level === "warning");
    expect(warned.map(({ diagnostic: { name } }) => name)).toContain("too-few-teeth-in-mesh");
  });

  test("a hub of 7 turned over moves the seat by 7, and 7 mm of belt with it", () => {
    const { candidates = [] } = loaded(TWO, []).machine.stage.feet[0] ?? {};
    const seats = (hub: string) =>
      candidates.filter((one) => one.hub === hub && one.rings.length === 1).map(({ seat }) => seat);
    expect([seats("up"), seats("down")]).toEqual([[11.5], [4.5]]);
  });

  test("50 N on an 8 mm screw at 0.15: torques, critical friction, efficiency (shigley 8-1 to 8-5)", () => {
    // Greased brass ends at 0.15, which raises; dry brass begins there, which lowers.
    const torques = (row: string) => {
      const own = (nut: string) => loaded(TWO, [...screws(row), `screws.A.nut=${nut}`, LOAD]).machine;
      const [greased, dry] = [own("greased brass"), own("dry brass")];
      expect(numberOf(dry, "screw.A.worst")).toBeCloseTo(50, 4);
      return [
        numberOf(greased, "screw.A.raise").toFixed(2),
        numberOf(dry, "screw.A.lower").toFixed(2),
        numberOf(dry, "screw.A.critical").toFixed(4),
        numberOf(dry, "screw.A.efficiency").toFixed(4),
      ];
    };
    expect(torques("Tr8x2")).toEqual(["43.71", "11.10", "0.0878", "0.3641"]);
    expect(torques("Tr8x4(P2)")).toEqual(["60.72", "-4.53", "0.1757", "0.5242"]);
    expect(torques("Tr8x8(P2)")).toEqual(["96.28", "-34.54", "0.3514", "0.6612"]);
  });

  test("30 N across and 50 N along a 608 (iso-76, iso-281)", () => {
    const pull = 15 / numberOf(loaded(TWO, []).machine, "screw.A.belt-pull");
    const set = [LOAD, `loops.round.tension=${30 * pull}`, "foot.bearing={ row: 608, dynamicRating: 3450 }"];
    const { machine } = loaded(TWO, set);
    expect(numberOf(machine, "screw.A.belt-pull")).toBeCloseTo(30, 6);
    expect(numberOf(machine, "screw.A.bearing-safety").toFixed(1)).toBe("31.9");
    expect((numberOf(machine, "screw.A.bearing-life") / 10).toFixed(0)).toBe("2919");
    // shigley: Table 7-4: two M3 cup points of 890 N, 0.3 of it on the crests of a thread, over 50 N.
    expect(numberOf(machine, "screw.A.set-screws").toFixed(2)).toBe("10.68");
  });

  test("layers of whole full steps, and hardware of a wheel between two plates and on one", () => {
    const layers = loaded(TWO, [...screws("Tr8x8(P2)"), "layers=[0.1, 0.12, 0.16, 0.2]"]).machine.stage.sections;
    const lines = layers.find(({ title }) => title === "Drive")?.lines ?? [];
    expect(lines.filter((line) => /^layer /.test(line)).map((line) => /: (\d+) full/.exec(line)?.[1])).toEqual([
      "5",
      "6",
      "8",
      "10",
    ]);
    const between = [`${LEFT}.sandwich=true`, `${LEFT}.left=[fixed, fixed]`, `${LEFT}.right=[fixed, fixed]`];
    const { stage } = loaded(TWO, between).machine;
    const hardware = stage.sections.find(({ title }) => title === "Fasteners")?.lines ?? [];
    // Three washers, two spacers and a wheel on each of four bolts; the arm's own two washers come last.
    const left = hardware.find((line) => line.startsWith("carriage-left")) ?? "";
    expect(left).toMatch(/4 x M5 x \d+ cap screw, 8 x M5 washer .*, 4 x M5 large washer .*, 8 x spacer .*, 4 x wheel/);
    // A stack of 3.7 on one plate: half of the wheels on eccentrics.
    const right = hardware.find((line) => line.startsWith("carriage-right")) ?? "";
    expect(right).toMatch(
      /4 x M5 x 40 cap screw, 6 x M5 washer .*, 2 x M5 large washer .*, 2 x spacer .*, 2 x eccentric .*, 8 x shim ring .*, 4 x wheel .*, 4 x ring 5 bore, 1 thick, 4 x M5 lock nut/,
    );
  });
});

/** A mass that brings the largest load of a screw to 50 N: half of what it adds, over g. */
const LOAD = (() => {
  const missing = 50 - numberOf(loaded(TWO, []).machine, "screw.A.worst");
  return `masses.nuts.mass=${0.3 + (2 * missing) / 9.80665}`;
})();
