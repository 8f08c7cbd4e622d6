import { describe, expect, test } from "vitest";
import { type Assembled, assemblyKey, type TestedAssembly, testedAssembly } from "../../src/build/assembly.ts";
import { meetingsOf } from "../../src/build/clash/meetings.ts";
import { forbidden, stageParts } from "../../src/build/stage-parts.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { bodiesOf } from "../../src/stage/bodies/index.ts";
import { deriveStage, type Plan } from "../../src/stage/index.ts";
import { kernel } from "../support/kernel.ts";
import { widePlan } from "../support/plans.ts";
import { printerWith } from "../support/printer.ts";

const printing = { printer: printerWith(), calibrated: true };
/** A push that the checks of a tram mount forbid. */
const MARGINAL = { push: 200 };
/** A bar 20 wide under the belts, whose side lies at y = 75: foot A reaches from 28.8 to 78.06, about x = 150. */
const STRAY = { bars: { stray: { bar: "20x20 slot 6", from: [100, 85, -15], to: [200, 85, -15] } } };

function machineOf(changes: Readonly<Record<string, unknown>> = {}) {
  const stage = deriveStage(widePlan(changes), () => printing.printer);
  return { stage, parts: stageParts(stage, () => printing, "1"), printer: () => printing.printer };
}

const tested = (machine: Assembled, earlier?: TestedAssembly) =>
  testedAssembly(machine, earlier, "1", async (bodies) => meetingsOf(bodies, kernel));

const stopped = ({ stage, parts }: Assembled, found: TestedAssembly["found"] = []) =>
  parts.filter(({ owner }) => forbidden(stage, found)(owner)).map(({ request }) => request.name);

describe("a plan whose bracket clashes", () => {
  const machine = machineOf(STRAY);

  test("is told with both bodies, place and depth, at the first of the two in the plan; only the bracket stops", async () => {
    expect(machine.stage.diagnostics.filter(({ level }) => level === "error")).toEqual([]);
    const [fault, ...others] = (await tested(machine))?.found ?? [];
    expect(others).toEqual([]);
    // The middle of the 3.06 mm is at 76.53. In height both are there from -25 to -5.
    expect(fault).toMatchObject({ name: "bodies-clash", level: "error", path: ["bars", "stray"], stops: ["foot-a"] });
    expect(fault?.says).toMatch(
      /^bar stray and foot-a stand in one another at the bottom of the travel: 3\.0\d mm deep at x 150\.0, y 76\.5, z -15\.0, a box of \d\d\.\d\d x 3\.0\d x 20\.00 mm/,
    );
    // Round bodies are polygons inside their circles here, by up to 0.05 mm.
    expect(Math.abs((fault?.found?.value ?? 0) - 3.035)).toBeLessThan(0.03);
    expect(fault?.set).toBe("bars.stray or screws.A: 3.1 mm or more farther apart along y");
    expect(stopped(machine, fault === undefined ? [] : [fault])).toEqual(["foot-a"]);
  });

  test("and that is moved as the message says, has no clash", async () => {
    const moved = { ...STRAY.bars.stray, from: [100, 88.1, -15], to: [200, 88.1, -15] };
    expect((await tested(machineOf({ bars: { stray: moved } })))?.found).toEqual([]);
  });

  test("may be accepted for the machine, and the reason is told", async () => {
    const because = "the bar is cut away there";
    const wise = machineOf({ ...STRAY, accept: [{ part: "stage", check: "bodies-clash", because }] });
    const found = (await tested(wise))?.found ?? [];
    expect(found).toEqual([expect.objectContaining({ name: "bodies-clash", level: "warning", stops: [] })]);
    expect(found[0]?.says).toMatch(/ \(accepted: the bar is cut away there\)$/);
    expect(stopped(wise, found)).toEqual([]);
  });
});

describe("what was found before", () => {
  const machine = machineOf();

  test("is believed of the same machine, and of no other", async () => {
    const first = await tested(machine);
    expect(first?.found).toEqual([]);
    const never = () => Promise.reject(new Error("it is not compared again"));
    expect(await testedAssembly(machineOf(), first, "1", never)).toBe(first);
    const keys = [
      assemblyKey(machine, "2"),
      assemblyKey(machineOf(STRAY), "1"),
      assemblyKey(machineOf({ travel: { lift: 210 } }), "1"),
      assemblyKey(machineOf({ foot: { material: "ASA" } }), "1"),
      first?.key,
    ];
    expect(new Set(keys).size).toBe(keys.length);
  });

  test("is nothing where things were left out of the machine, or no part could be derived", async () => {
    const partly = machineOf({ screws: { A: { bar: "nowhere" } } });
    expect(partly.stage.partly).toBe(true);
    expect(partly.parts.map(({ owner }) => owner.name)).not.toContain("foot-a");
    expect(partly.parts.length).toBeGreaterThan(0);
    expect(await tested(partly)).toBeUndefined();
    const whole = machineOf();
    expect(whole.stage.partly).toBe(false);
    expect(await tested({ ...whole, parts: [] })).toBeUndefined();
  });
});

test("a part that is made against an accepted error stands in the assembled machine too", () => {
  const { stage } = machineOf();
  const names = (accept: Plan["accept"]) => {
    const bad = stage.parts.map((part) =>
      part.name === "mount-one" ? { ...part, parameters: { ...part.parameters, ...MARGINAL } } : part,
    );
    const changed = { ...stage, plan: { ...stage.plan, accept }, parts: bad };
    return bodiesOf(changed, () => printing.printer).map(({ name }) => name);
  };
  const wrong = errorsOf(MARGINAL);
  expect(wrong.length).toBeGreaterThan(0);
  expect(names([])).not.toContain("mount-one");
  expect(names(wrong.map((check) => ({ part: "mount-one", check, because: "as it is" })))).toContain("mount-one");

  function errorsOf(change: object): string[] {
    const part = stage.parts.find(({ name }) => name === "mount-one");
    const design = FAMILIES.find(({ name }) => name === part?.family)?.design(
      { ...part?.parameters, ...change },
      printing.printer,
    );
    return (design?.diagnostics ?? []).filter(({ level }) => level === "error").map(({ name }) => name);
  }
});
