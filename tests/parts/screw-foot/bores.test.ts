import { describe, expect, test } from "vitest";
import { COMMANDS } from "../../../src/cli/help.ts";
import { readValue } from "../../../src/presets/read.ts";
import { errorsOf, finding, footWith } from "./foot.ts";

const BEARING = "screw-does-not-fit-bearing";
const OTHERS = "bore-does-not-fit-screw";

describe("bores of what sits on the screw", () => {
  test("a thick screw, a wider and a narrower bore are two errors that name both sizes and rows", () => {
    const foot = { bearing: "6001", screw: "Tr14x3", pulley: { row: "20 teeth 2 mm" } };
    expect(finding(BEARING, foot)?.says).toBe("the Tr14x3, 14 mm, does not go into the 12 mm bore of the bearing 6001");
    expect(finding(OTHERS, foot)?.says).toBe(
      "the Tr14x3, 14 mm, does not go into the 5 mm bore of the pulley 20 teeth 2 mm",
    );
  });

  test("a thin screw is loose in a wide bearing", () => {
    expect(finding(BEARING, { bearing: "6000" })?.says).toContain("the Tr8x2, 8 mm, is loose in the 10 mm bore");
  });

  test("a collar and a ring of another bore are errors", () => {
    expect(finding(OTHERS, { thrust: "collar", collar: "6 clamp" })?.path).toEqual(["collar"]);
    expect(finding(OTHERS, { washers: ["M6"] })?.path).toEqual(["washers"]);
    expect(finding(OTHERS, { washers: ["M8"] })).toBeUndefined();
  });

  // ISO 2903, class 7e: the crest of a Tr16x4 may be 15.7 mm; a bore read as 7.98 mm is what calipers do.
  test.each([
    [{ bearing: { row: "608", bore: 7.98, measured: true } }],
    [{ screw: { row: "Tr8x2", diameter: 7.82, measured: true } }],
    [
      {
        bearing: "6002",
        screw: { row: "Tr16x4", diameter: 15.7 },
        endDiameter: 15,
        pulley: { row: "60 teeth 2 mm", bore: 15, hubDiameter: 25 },
      },
    ],
  ])("tolerances of thread and calipers pass: %j", (foot) => {
    expect(errorsOf(foot)).toEqual([]);
  });

  test("an end that is turned down fits where it is declared", () => {
    const foot = { bearing: "608", screw: "Tr10x2" };
    expect(finding(BEARING, foot)?.set).toContain("endDiameter: 8 mm");
    expect(errorsOf({ ...foot, endDiameter: 8 })).toEqual([]);
  });

  test("on a shoulder the pulley sits on the whole screw, the bearing on the end", () => {
    const foot = { bearing: "608", screw: "Tr10x2", endDiameter: 8, thrust: "shoulder" };
    expect(errorsOf(foot)).toEqual([OTHERS]);
    expect(errorsOf({ ...foot, pulley: { row: "40 teeth 2 mm", bore: 10 } })).toEqual([]);
    expect(errorsOf({ ...foot, pulley: { row: "40 teeth 2 mm", bore: 10 }, style: "bridged" })).toEqual([BEARING]);
    expect(errorsOf({ thrust: "shoulder" })).toEqual(["turned-end-thicker-than-screw"]);
  });

  test("a turned end and the screw above it are two bodies to keep clear of", () => {
    const names = (foot: object) =>
      footWith({ screw: "Tr10x2", ...foot })
        .pieces()[0]
        ?.keepOuts.map(({ name }) => name);
    expect(names({ endDiameter: 8 })).toContain("turned end of the lead screw");
    expect(names({})).not.toContain("turned end of the lead screw");
  });

  test("a bore that leaves no wall of the hub is a slip", () => {
    expect(errorsOf({ pulley: { row: "40 teeth 2 mm", bore: 15 } })).toContain("hardware-data-disagrees");
  });
});

test("the examples of make are right", () => {
  const sets = COMMANDS.make?.examples.flatMap((line) => {
    const found = [...line.matchAll(/--set (\w+)=(?:'([^']*)'|(\S+))/g)];
    return found.length > 0 ? [Object.fromEntries(found.map(([, key, a, b]) => [key, readValue(a ?? b ?? "")]))] : [];
  });
  expect(sets?.length).toBeGreaterThan(0);
  for (const set of sets ?? []) {
    // As on the command line, a row's key may read as a number.
    expect(footWith(set).diagnostics.filter(({ level }) => level !== "note")).toEqual([]);
  }
});
