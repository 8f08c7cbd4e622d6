import { describe, expect, test } from "vitest";
import { screwFoot } from "../../../src/parts/screw-foot/index.ts";
import { finding, footWith } from "./foot.ts";

const NAME = "setting-not-used";

/** A setting, a foot that does not use it, and one that does. */
const SETTINGS = [
  [{ collar: "8 clamp" }, {}, { thrust: "collar" }],
  [{ cornerAngle: 92 }, {}, { mount: "in-corner" }],
  [{ cornerMeasured: true }, { mount: "in-corner", locate: "none" }, { mount: "in-corner" }],
  [{ axisOffset: 20 }, { mount: "on-top" }, {}],
  [{ axisOffsetB: 20 }, {}, { mount: "in-corner" }],
  [{ offset: 5 }, {}, { mount: "on-top" }],
  [{ lowestZ: 2 }, {}, { mount: "on-post" }],
  [{ locate: "key" }, { mount: "on-post" }, {}],
  [{ locate: "none" }, undefined, { mount: "on-top" }],
  [{ tipRelief: 3 }, {}, { mount: "on-top", beltPlane: 30 }],
  [{ axialLoad: 70 }, { thrust: "hung" }, {}],
  [{ lightestLoad: 40 }, { thrust: "hung" }, {}],
  [{ lightestLoad: 40 }, { otherSink: 0.01 }, {}],
  [{ steadyLoad: 40 }, {}, { lightestLoad: 20 }],
  [{ otherSink: 0.01 }, { thrust: "hung" }, {}],
  [{ crashForce: 10 }, { thrust: "shoulder" }, {}],
  [{ postAzimuths: [270, 90] }, {}, { style: "bridged" }],
  [{ bearingToNut: 300 }, { style: "bridged" }, {}],
  [{ nutFloat: 0.3 }, {}, { bearingToNut: 300 }],
] as const;

describe.each(SETTINGS)("%j", (setting, idle, used) => {
  const [name] = Object.keys(setting);

  test.runIf(idle !== undefined)("is a warning where nothing uses it", () => {
    const found = finding(NAME, { ...idle, ...setting });
    expect(found?.level).toBe("warning");
    expect(found?.path).toEqual([name]);
    expect(found?.says).toContain(`${name} counts only with `);
  });

  test("passes where it counts", () => {
    expect(finding(NAME, { ...used, ...setting })).toBeUndefined();
  });

  test.runIf(idle !== undefined)("changes no piece and no other check where it is without effect", () => {
    const told = (change: Readonly<Record<string, unknown>>) => {
      const { diagnostics, pieces } = footWith(change);
      const rest = diagnostics.filter((one) => ![NAME, "typical-value-not-measured"].includes(one.name));
      return JSON.stringify([rest, pieces()]);
    };
    expect(told({ ...idle, ...setting }) === told({ ...idle })).toBe(true);
  });
});

test("several settings without effect are told at once", () => {
  const found = finding(NAME, { collar: "8 clamp", cornerAngle: 92 });
  expect(found?.says).toMatch(/collar counts only with thrust: collar/);
  expect(found?.says).toMatch(/cornerAngle counts only with mount: in-corner/);
  expect(found?.set).toContain("mount: in-corner, or leave out cornerAngle");
});

test("every other setting changes some foot", () => {
  const listed = new Set(SETTINGS.flatMap(([setting]) => Object.keys(setting)));
  const always = Object.keys(screwFoot.schema.shape).filter((name) => !listed.has(name));
  expect(always.sort()).toEqual(
    [
      ...["mount", "style", "thrust", "bar", "material", "bearing", "screw", "endDiameter", "pulley", "belt"],
      ...["beltWidth", "washers", "hub", "beltPlane", "beltSpans", "keyAzimuth", "framePosts", "wall", "floor"],
      ...["plate", "pocketFit", "pocketDepth", "shoulderBore", "tipLength", "cap", "label", "beltPull"],
      ...["stageLowest", "placeTemperature", "boltLengths"],
    ].sort(),
  );
});
