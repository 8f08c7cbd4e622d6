import { describe, expect, it } from "vitest";
import type { Stage } from "../../../src/stage/index.ts";
import { amount, BARE, fact, wide } from "./stages.ts";

const G = 9.80665;
/** The plate of the open examples: 18 x 18 x 1/4 in, warmed from 20 °C. */
const SQUARE = { size: [457.2, 457.2], thickness: 6.35 };
const names = (stage: ReturnType<typeof wide>) => stage.diagnostics.map(({ name }) => name);

describe("growth", () => {
  it("457.2 mm of aluminium grow 0.8559 mm at 80 K (openstax, own arithmetic)", () => {
    const stage = wide({ plate: { ...SQUARE, temperature: "100 C" } });
    expect(amount(stage, "plate.growth.x")).toBeCloseTo(0.8559, 4);
    expect(amount(stage, "plate.growth.y")).toBeCloseTo(0.8559, 4);
  });

  it("grows away from the fixed mount: 360 mm at 70 K along x, and to the third by its own line", () => {
    const stage = wide();
    expect(amount(stage, "mount.two.growth")).toBeCloseTo(23.4e-6 * 70 * 360, 9);
    expect(amount(stage, "mount.two.direction")).toBeCloseTo(0, 9);
    expect(amount(stage, "mount.three.growth")).toBeCloseTo(23.4e-6 * 70 * Math.hypot(180, 300), 9);
    expect(amount(stage, "mount.three.direction")).toBeCloseTo((Math.atan2(300, 180) * 180) / Math.PI, 9);
    expect(() => fact(stage, "mount.one.growth")).toThrow();
  });

  it("follows the metal of the plate", () => {
    const glass = wide({ plate: { metal: "glass" } });
    expect(amount(glass, "plate.growth.x")).toBeCloseTo(8.5e-6 * 70 * 420, 9);
  });
});

describe("heater", () => {
  const heater = { power: "300 W", size: [350, 350], volts: 120 };
  const stage = wide({ plate: { ...SQUARE, temperature: "80 C", sheet: 0, heater } });

  it("457.2 x 457.2 x 6.35 by 60 K: 192.7 kJ, 642 s at 300 W without loss (openstax, own arithmetic)", () => {
    expect(amount(stage, "heater.energy") / 1000).toBeCloseTo(192.7, 1);
    expect(amount(stage, "heater.ideal-time")).toBeCloseTo(642, 0);
  });

  it("with 2.717 W/K of loss it takes 927 s, and stays on at 130 °C (incropera, own arithmetic)", () => {
    // The worked case has 0.209 m2 a side; this plate has 0.2090.
    expect(amount(stage, "heater.loss")).toBeCloseTo(2.717, 3);
    expect(amount(stage, "heater.time") / 926.56).toBeCloseTo(1, 2);
    expect(amount(stage, "heater.stuck")).toBeCloseTo(20 + 300 / 2.7174, 1);
  });

  it("draws power over volts, and spreads it over the heater's own area", () => {
    expect(amount(stage, "heater.current")).toBeCloseTo(2.5, 9);
    expect(amount(stage, "heater.density")).toBeCloseTo(300 / 1225, 9);
  });

  it("is told to need more power where it never gets there, by the loss at that warmth", () => {
    const cold = wide({ plate: { heater: { power: "120 W" } } });
    const found = cold.diagnostics.find(({ name }) => name === "plate-cannot-reach-temperature");
    // 13 W/m2K on 420 x 330 mm, 70 K: 126.1 W.
    expect(found?.set).toContain("126.1");
    expect(() => fact(cold, "heater.time")).toThrow();
  });

  it("spares the brackets that stay cool enough when it stays on", () => {
    const mild = wide({ plate: { heater: { power: "200 W", adhesive: "140 C" } } });
    expect(names(mild)).not.toContain("stuck-heater-overheats-plate");
    expect(amount(mild, "mount-one.stuck")).toBeLessThan(71);
  });

  it("leaves the same margin on opposite sides where no place is given", () => {
    const own = wide();
    expect(amount(own, "heater.margin.left")).toBe(60);
    expect(amount(own, "heater.margin.right")).toBe(60);
    expect(amount(own, "heater.margin.front")).toBe(55);
    expect(amount(own, "heater.margin.back")).toBe(55);
    expect(amount(wide({ plate: { heater: { at: [390, 280] } } }), "heater.margin.left")).toBe(70);
  });

  it("is nothing where the plate has none", () => {
    const none = wide({ plate: { heater: undefined } });
    expect(none.sections.map(({ title }) => title)).not.toContain("Heater");
    expect(none.diagnostics.filter(({ level }) => level === "error")).toEqual([]);
  });
});

describe("holes", () => {
  it("measures from the hole's edge to the heater and from its middle to the plate's edge", () => {
    const stage = wide({ plate: { mounts: { one: { at: [190, 130] } } } });
    // The plate begins at 170, 115; the heater at 230, 170; an M5 hole is 5.5 wide.
    expect(amount(stage, "mount.one.edge")).toBeCloseTo(15, 9);
    expect(amount(stage, "mount.one.heater")).toBeCloseTo(Math.hypot(40, 40) - 2.75, 9);
  });
});

describe("mounts", () => {
  it("two in front carry a quarter each, one behind a half, of a plate that lies even about them", () => {
    const stage = wide();
    const weight = (2.24532 + 0.5) * G;
    expect(amount(stage, "mount.one.share")).toBeCloseTo(weight / 4, 6);
    expect(amount(stage, "mount.three.share")).toBeCloseTo(weight / 2, 6);
  });

  it("passes their springs on from the family: 1.2 x 10 x 25 has 5.166 N/mm (shigley 10, own arithmetic)", () => {
    expect(amount(wide(), "mount.one.rate")).toBeCloseTo(5.166, 3);
  });

  it("holds the plate with the friction of all springs against half its weight", () => {
    const stage = wide();
    const springs = ["one", "two", "three"].reduce((sum, name) => sum + amount(stage, `mount.${name}.forceSet`), 0);
    const push = (2.24532 + 0.5) * G * 0.5;
    expect(amount(stage, "plate.push")).toBeCloseTo(push, 6);
    expect(amount(stage, "plate.hold")).toBeCloseTo((0.2 * springs) / push, 6);
  });

  it("bounds the sag of the plate by a strip between the mounts farthest apart", () => {
    const pressure = ((2.24532 + 0.5) * G) / (420 * 330);
    const length = 360;
    expect(amount(wide(), "plate.sag")).toBeCloseTo((5 * pressure * length ** 4) / (32 * 69000 * 216), 6);
  });
});

describe("sag with the print", () => {
  /** What the print puts on mounts one and two when it stands at 170, 115, by the levers of the mounts (statics). */
  const along = (430 - 115) / 300;
  const onOne = (along / 2 + (380 - 170) / 360) * 2 * G;
  const onTwo = along * 2 * G - onOne;
  const EI = 69000 * 28000;

  it("arm between two nuts: F a^2 b^2 / 3 E I L under all that the print presses there (shigley A-9)", () => {
    const stage = wide();
    const own = fact(stage, "mount.one.sag");
    expect(own.from?.inputs).toMatchObject({ length: 460, at: 50, inertia: 28000 });
    // A print on that corner lifts at mount two.
    expect(onTwo).toBeLessThan(0);
    expect(own.value).toBeCloseTo((onOne * 50 ** 2 * 410 ** 2) / (3 * EI * 460), 9);
    expect(amount(stage, "bar.arm-front.change")).toBeCloseTo(own.value, 9);
  });

  it("is no less than what both mounts together make either sink, for a print anywhere (shigley A-9)", () => {
    // Mounts 100 and 300 mm into 460: sag at x under a load at a, x <= a, is F b x (L^2 - b^2 - x^2) / 6 E I L.
    const at = (x: number, a: number): number =>
      x > a ? at(a, x) : ((460 - a) * x * (460 ** 2 - (460 - a) ** 2 - x ** 2)) / (6 * EI * 460);
    const stage = wide({ plate: { mounts: { one: { at: [250, 130] }, two: { at: [450, 130] } } } });
    const told = Math.max(amount(stage, "mount.one.sag"), amount(stage, "mount.two.sag"));
    const [weight, places] = [2 * G, [170, 380, 590].flatMap((x) => [115, 280, 445].map((y) => [x, y] as const))];
    const worst = places.flatMap(([x, y]) => {
      const both = ((430 - y) / 300) * weight;
      const two = ((x - 380) * weight + both * (380 - 250)) / 200;
      const sag = (here: number) => at(here, 100) * (both - two) + at(here, 300) * two;
      return [sag(100), sag(300)];
    });
    expect(told).toBeGreaterThanOrEqual(Math.max(...worst));
    expect(told).toBeLessThan(3 * Math.max(...worst));
  });

  it("a mount straight over a nut does not sink with its bar, and that is said; another on the bar does", () => {
    const stage = wide({ plate: { mounts: { one: { at: [150, 130] } } } });
    const said = stage.sections.find(({ title }) => title === "Sag from empty to full")?.lines ?? [];
    expect(said).toContain("mount one stands straight over what holds arm-front: no sag of its bar");
    expect(said).toContain("mount three stands straight over what holds arm-back: no sag of its bar");
    expect(() => fact(stage, "mount.one.sag")).toThrow();
    // What stands over the nut does not press on the span: the print's most on mount two alone counts.
    const two = fact(stage, "mount.two.sag");
    expect(two.value).toBeCloseTo(((two.from?.inputs.force ?? 0) * 50 ** 2 * 410 ** 2) / (3 * EI * 460), 9);
    expect(amount(stage, "bar.arm-front.change")).toBeCloseTo(two.value, 9);
    expect(amount(stage, "bar.arm-back.change")).toBe(0);
  });

  it("is the same past either end of what holds the bar, and past one nut alone", () => {
    const tips = [{ A: { at: [260, 62] } }, { B: { at: [500, 62] } }].map((screws) => wide({ screws }));
    expect(fact(tips[1] as Stage, "mount.two.tip").value).toBeCloseTo(amount(tips[0] as Stage, "mount.one.tip"), 9);
    const back = fact(wide({ plate: { mounts: { three: { at: [400, 430] } } } }), "mount.three.tip");
    expect(back.from?.inputs).toMatchObject({ at: 20, length: 20 });
    expect(back.value).toBeCloseTo(((back.from?.inputs.force ?? 0) * 20 ** 3) / (3 * EI), 9);
  });

  it("is that of the span between neighbours, where three nuts hold a bar", () => {
    const screws = { M: { at: [300, 62], length: 420, bar: "front" } };
    const one = fact(wide({ screws }), "mount.one.sag");
    expect(one.from?.inputs).toMatchObject({ length: 150, at: 50 });
  });

  it("an oblong bar on its broad side sags by the ratio of its second moments", () => {
    const bar = { bar: "20x40 slot 6" };
    const upright = amount(wide({ bars: { "arm-front": bar } }), "mount.one.sag");
    const flat = amount(wide({ bars: { "arm-front": { ...bar, turned: true } } }), "mount.one.sag");
    expect(flat / upright).toBeCloseTo(4.8 / 1.35, 6);
  });

  it("an overhang beyond two nuts: F a^2 (a + L) / 3 E I (shigley A-9, overhanging beam)", () => {
    const stage = wide({ screws: { A: { at: [260, 62] } } });
    const tip = fact(stage, "mount.one.tip");
    const force = tip.from?.inputs.force ?? 0;
    const print = force / (1 + 350 / 60);
    expect(tip.value).toBeCloseTo((print * 60 ** 2 * (60 + 350)) / (3 * 69000 * 28000), 9);
  });

  it("splits what wheels give from what the bar gives, once the weight leaves the screws' triangle", () => {
    const inside = wide();
    expect(() => fact(inside, "carriage.left.wheel-drop")).toThrow();
    const outside = wide({ print: "4 kg" });
    const drop = amount(outside, "carriage.left.wheel-drop") + amount(outside, "carriage.left.joint-drop");
    const sag = amount(outside, "mount.one.sag");
    expect(amount(outside, "bar.arm-front.change")).toBeCloseTo(drop + sag, 9);
    expect(drop).toBeGreaterThan(0);
  });
});

describe("wheels", () => {
  it("hold nothing while the weight is between the screws, and the lever of a hand outside them", () => {
    const stage = wide();
    // The hand at the corner 590, 445 moves the weight out over the line from B (610, 62) to C (380, 498).
    const empty = amount(stage, "stage.weight");
    const centre = [amount(stage, "stage.centre.x"), amount(stage, "stage.centre.y")] as const;
    const weight = empty + 50;
    const x = (empty * centre[0] + 50 * 590) / weight;
    const y = (empty * centre[1] + 50 * 445) / weight;
    const beyond = Math.abs((380 - 610) * (y - 62) - (498 - 62) * (x - 610)) / Math.hypot(230, 436);
    expect(amount(stage, "wheels.moment")).toBeCloseTo(weight * beyond, 3);
    const light = wide({ screws: { A: { at: [100, 62] }, B: { at: [660, 62] }, C: { at: [380, 900] } } });
    expect(amount(light, "wheels.moment")).toBeLessThan(1e-6);
  });

  it("two screws leave them the moment across their line", () => {
    const stage = wide({
      ...BARE,
      carriages: {},
      screws: { A: { at: [150, 280] }, B: { at: [610, 280] }, C: undefined },
      loops: { high: { nodes: ["motor", "B"] }, low: { nodes: ["motor", "A"] } },
      plate: { at: [380, 320], sheet: 0 },
      masses: {},
      print: 0,
    });
    // The heaviest lever is that of a hand on the back edge: 50 N at 485 - 280 mm, the rest at the plate's middle.
    const weight = amount(stage, "stage.weight");
    const lever = amount(stage, "stage.centre.y") - 280;
    expect(amount(stage, "wheels.moment")).toBeCloseTo(weight * lever + 50 * 205, 3);
    expect(names(stage)).not.toContain("stage-tips-over-its-screws");
  });
});
