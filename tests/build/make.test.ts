import { describe, expect, test } from "vitest";
import { enteredKeepOuts, fitOf } from "../../src/build/fit.ts";
import { designPart, make } from "../../src/build/make.ts";
import type { Request } from "../../src/build/request.ts";
import { disc, opening, rectangle, without } from "../../src/geometry/profile.ts";
import { cylinder, moved, prism, type Solid } from "../../src/geometry/solid.ts";
import type { Acceptance } from "../../src/parts/acceptance.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import type { Piece } from "../../src/parts/piece.ts";
import { thumbWheel } from "../../src/parts/thumb-wheel/index.ts";
import { wheelSpacer } from "../../src/parts/wheel-spacer/index.ts";
import { kernel } from "../support/kernel.ts";
import { printerWith } from "../support/printer.ts";

function request(parameters: object = {}, accept: readonly Acceptance[] = [], calibrated = true): Request {
  const parsed = wheelSpacer.schema.parse(parameters);
  return { name: "bench", family: wheelSpacer, parameters: parsed, printer: printerWith(), calibrated, accept };
}

const named = (diagnostics: readonly { name: string; level: string }[]) =>
  diagnostics.filter(({ level }) => level !== "note").map(({ name, level }) => `${level} ${name}`);

describe("one part from end to end", () => {
  test("a sound part is built and measured", () => {
    const made = make(request(), kernel);
    expect(named(made.diagnostics)).toEqual([]);
    const [piece] = made.pieces;
    expect(piece?.measures.soundness?.closed).toBe(true);
    // 2.35 mm of wall less half the 0.2 mm that the bore is drawn larger.
    expect(piece?.measures.walls?.[0]?.thickness).toBeCloseTo(2.25, 1);
  });

  test("an error of the arithmetic leaves nothing to build", () => {
    const made = make(request({ against: "bearing" }), kernel);
    expect(named(made.diagnostics)).toEqual(["error spacer-crushed-by-torque"]);
    expect(made.pieces).toEqual([]);
  });

  test("an accepted error becomes a warning that repeats the reason, and the part is built", () => {
    const because = "held by a finger-tight axle, drawn up once";
    const made = make(request({ against: "bearing" }, [{ check: "spacer-crushed-by-torque", because }]), kernel);
    expect(named(made.diagnostics)).toEqual(["warning spacer-crushed-by-torque"]);
    expect(made.diagnostics.find(({ name }) => name === "spacer-crushed-by-torque")?.says).toContain(because);
    expect(made.pieces).toHaveLength(1);
  });

  test("an acceptance that names no check, or one beyond excuse, is an error once", () => {
    const unknown = designPart(request({}, [{ check: "spacer-crushed-by-tork", because: "typo" }]));
    expect(named(unknown.diagnostics)).toEqual(["error preset-does-not-resolve"]);
    expect(unknown.diagnostics[0]?.set ?? unknown.diagnostics.at(-1)?.set).toBeDefined();
    const never = make(request({}, [{ check: "mesh-not-sound", because: "hope" }]), kernel);
    expect(named(never.diagnostics)).toEqual(["error preset-does-not-resolve"]);
  });

  test("a printer nobody calibrated is said", () => {
    expect(named(make(request({}, [], false), kernel).diagnostics)).toEqual(["warning printer-not-calibrated"]);
  });

  test("material shrink widens the written mesh in plan and leaves the layers alone", () => {
    const wide = make({ ...request(), printer: printerWith({ materialShrink: 2 }) }, kernel);
    const plain = make(request(), kernel);
    const [before, after] = [plain, wide].map(({ pieces }) => pieces[0]?.measures.soundness?.box);
    expect(after?.max[2]).toBe(before?.max[2]);
    expect(after?.max[0]).toBeCloseTo((before?.max[0] ?? 0) / 0.98, 3);
  });

  test("the hash follows the parameters and the printer, not the name", () => {
    const hash = (of: Request) => make(of, kernel).hash;
    expect(hash({ ...request(), name: "other" })).toBe(hash(request()));
    expect(hash(request({ length: 8 }))).not.toBe(hash(request()));
    expect(hash({ ...request(), printer: printerWith({ layer: 0.1 }) })).not.toBe(hash(request()));
  });
});

describe("the finished mesh against the hardware", () => {
  const plate = prism(without(rectangle(-20, -20, 20, 20), opening(5.5)), 0, 6);
  const piece = (changes: Partial<Piece>): Piece => ({
    name: "",
    title: "plate",
    solid: plate,
    count: 1,
    keepOuts: [],
    contacts: [],
    measures: [],
    wall: { error: 0.9, warning: 1.8 },
    ...changes,
  });
  const found = (changes: Partial<Piece>, solid: Solid = plate) =>
    kernel.build(
      solid,
      (body) => fitOf(piece(changes), body.mesh(), enteredKeepOuts(piece(changes), body)).diagnostics,
    );

  test("a bolt in its hole and a washer on its face cut nothing", () => {
    const keepOuts = [
      { name: "bolt", body: cylinder(2.5, -10, 20) },
      { name: "washer", body: cylinder(5, 6, 7) },
    ];
    expect(found({ keepOuts })).toEqual([]);
  });

  test("a bolt beside its hole is named, once, at the right level", () => {
    const clear = { name: "washer", body: cylinder(5, 6, 7) };
    const off = { name: "bolt", body: moved(cylinder(2.5, -10, 20), [1, 0, 0]) };
    const [clash, ...rest] = found({ keepOuts: [clear, off] });
    expect(rest).toEqual([]);
    expect(clash).toMatchObject({ name: "part-in-keep-out", level: "error" });
    expect(clash?.says).toContain("bolt");
    const roomy = { name: "bolt", body: cylinder(2.5, -10, 20), roomy: cylinder(3.5, -10, 20) };
    expect(found({ keepOuts: [roomy] })).toMatchObject([{ name: "part-in-keep-out", level: "warning" }]);
    expect(found({ keepOuts: [{ ...off, roomy: off.body }] })).toHaveLength(1);
  });

  test("a face that should touch must be there", () => {
    const area = 1600 - Math.PI * 2.75 ** 2;
    const contact = { name: "mating face", area, point: [0, 0, 0], normal: [0, 0, -1], reach: 50 } as const;
    expect(found({ contacts: [contact] })).toEqual([]);
    const tilted = prism(without(rectangle(-20, -20, 20, 20), disc(9)), 0, 6);
    expect(found({ contacts: [contact] }, tilted)).toMatchObject([{ name: "contact-face-missing", level: "error" }]);
    expect(found({ contacts: [{ ...contact, normal: [0, 0, 1] }] })).toHaveLength(1);
  });
});

describe("hardware is held against the part as it comes out of the printer", () => {
  // Such a printer makes openings larger than drawn, so they are drawn smaller than the hardware.
  const generous = printerWith({ holeShrinkVertical: -0.1, holeShrinkHorizontal: -0.1, outerGrowth: -0.2 });

  test.each(FAMILIES)("the default $name fits from a printer that makes openings too large", (family) => {
    const parameters = family.schema.parse({});
    const made = make({ name: "n", family, parameters, printer: generous, calibrated: true, accept: [] }, kernel);
    expect(named(made.diagnostics).filter((found) => found.startsWith("error"))).toEqual([]);
    expect(made.pieces.every(({ piece, fit }) => fit.free === piece.keepOuts.length)).toBe(true);
  });

  test("the pocket is still drawn smaller for it", () => {
    const parameters = thumbWheel.schema.parse({});
    const volumes = [printerWith(), generous].map((printer) => {
      const request = { name: "n", family: thumbWheel, parameters, printer, calibrated: true, accept: [] };
      return make(request, kernel).pieces[0]?.measures.soundness?.volume ?? Number.NaN;
    });
    expect(volumes[1]).toBeGreaterThan(volumes[0] ?? Number.NaN);
  });
});
