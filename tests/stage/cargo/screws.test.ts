import { describe, expect, it } from "vitest";
import { amount, fact, wide } from "./stages.ts";

const all = (screw: Readonly<Record<string, unknown>>) => ({ screws: { A: screw, B: screw, C: screw } });
const named = (stage: ReturnType<typeof wide>, name: string) => stage.diagnostics.filter((each) => each.name === name);

describe("torque and locking", () => {
  it.each([
    ["Tr8x2", 43.71, 0.08785],
    ["Tr8x4(P2)", 60.72, 0.1757],
    ["Tr8x8(P2)", 96.28, 0.3514],
  ])("%s: %f N mm to raise 50 N at 0.15, critical friction %f (own arithmetic)", (screw, raise, critical) => {
    const stage = wide(all({ screw }));
    const own = fact(stage, "screw.A.raise");
    expect(own.from?.inputs.friction).toBe(0.15);
    expect(own.value / amount(stage, "screw.A.worst")).toBeCloseTo(raise / 50, 3);
    expect(amount(stage, "screw.A.critical")).toBeCloseTo(critical, 4);
  });

  it("lets the load of an 8 mm lead run down by 34.54 N mm for 50 N at 0.15, the least of dry brass", () => {
    const stage = wide(all({ screw: "Tr8x8(P2)", nut: "dry brass" }));
    expect(amount(stage, "screw.A.lower") / amount(stage, "screw.A.worst")).toBeCloseTo(-34.54 / 50, 3);
  });

  it.each([
    ["Tr8x2", "dry brass", undefined],
    ["Tr8x2", "greased brass", "may run down"],
    ["Tr8x8(P2)", "dry brass", "runs down"],
    ["Tr8x1.5", "greased brass", undefined],
  ])("%s in %s: %s", (screw, nut, verdict) => {
    const stage = wide(all({ screw, nut }));
    const found = named(stage, "stage-runs-down-unpowered");
    expect(found.length).toBe(verdict === undefined ? 0 : 3);
    if (verdict !== undefined) expect(found[0]?.says).toContain(verdict);
    const said = stage.sections.find(({ title }) => title === "Screw A")?.lines?.[0] ?? "";
    expect(said).toContain(verdict ?? "A locks");
  });

  it("names the lead that would lock: 0.10/1.3 x pi x 7 / cos 15 = 1.75 mm", () => {
    expect(named(wide(), "stage-runs-down-unpowered")[0]?.set).toContain("at most 1.75 mm");
  });

  it("tells a screw that jams at its place in the plan", () => {
    const steep = { screw: { row: "Tr8x8(P2)", lead: 40, pitchDiameter: 7 } };
    const found = wide(all(steep)).diagnostics.filter(({ name }) => name === "lead-angle-too-steep");
    expect(found.map(({ path }) => path)).toEqual(["A", "B", "C"].map((name) => ["screws", name, "screw"]));
  });
});

describe("column and whirl", () => {
  it.each([
    [500, 363.5, 2649],
    [800, 142, 1035],
    [1000, 90.88, 662.2],
    [1200, 63.11, 459.9],
  ])(
    "8 mm screw, %i mm from nut to foot: buckles at %f N, whirls at %f rpm (own arithmetic)",
    (length, column, whirl) => {
      const stage = wide({ ...all({ length: length + 20 }), travel: { nut: 100, lift: length - 100 } });
      expect(amount(stage, "screw.A.column")).toBeCloseTo(column, 0);
      expect(amount(stage, "screw.A.whirl-under") / whirl).toBeCloseTo(1, 3);
    },
  );

  it("holds a hung screw to no column, and counts its free end as free", () => {
    const hung = wide({ foot: { thrust: "hung" }, ...all({ top: "held" }) });
    expect(() => fact(hung, "screw.A.column")).toThrow();
    expect(named(hung, "screw-held-rigid-at-both-ends")).toEqual([]);
    expect(named(hung, "screw-thrust-carried-nowhere")).toEqual([]);
    const steadied = amount(wide(), "screw.A.whirl-over");
    const free = amount(wide(all({ top: "free" })), "screw.A.whirl-over");
    expect(free / steadied).toBeCloseTo((1.8751 / Math.PI) ** 2, 6);
  });

  it("asks for the play of 0.57 mm that 420 mm of steel in aluminium need at 20 K", () => {
    // (23.4 - 12)e-6 x 420 x 20 = 0.0958 mm, and half a millimetre.
    expect(amount(wide(), "screw.A.float")).toBeCloseTo(0.5958, 4);
  });
});

describe("bearing and set screws", () => {
  it("608 purely along its axis: 0.25 x 1370 = 342.5 N", () => {
    expect(amount(wide(), "screw.A.axial-limit")).toBeCloseTo(342.5, 9);
  });

  it("takes the belt to pull with twice its tension where the loop is not known", () => {
    const stage = wide({ loops: { low: { tension: "11 N" } } });
    const wrap = fact(stage, "screw.A.belt-pull").from?.inputs.wrap ?? 0;
    expect(amount(stage, "screw.A.belt-pull")).toBeCloseTo(22 * Math.sin((wrap * Math.PI) / 360), 9);
  });

  it("two M3 points on thread crests hold 534 N, and slip when the motor stalls", () => {
    const stage = wide({ foot: { thrust: "pulley" } });
    const load = amount(stage, "screw.A.worst");
    // shigley, table 7-4: 890 N each, 0.3 of it on crests.
    expect(amount(stage, "screw.A.set-screws")).toBeCloseTo((2 * 890 * 0.3) / load, 6);
    expect(amount(stage, "screw.A.set-screws-crash")).toBeCloseTo(
      (2 * 890 * 0.3) / (load + (stage.loads?.crash ?? 0)),
      6,
    );
    expect(() => fact(wide(), "screw.A.set-screws")).toThrow();
  });
});
