import { describe, expect, test } from "vitest";
import { itemOf } from "../../src/core/item.ts";
import { row } from "../../src/core/table.ts";
import { tooHotIn } from "../../src/parts/heat.ts";
import { MATERIALS } from "../../src/printing/materials.ts";

const at = (key: string, temperature: number, stated: readonly string[] = []) =>
  tooHotIn({
    material: { ...itemOf(row(MATERIALS, key)), stated },
    temperature,
    words: `it is ${temperature} °C here`,
    cooler: "a cooler place",
  });

describe("a material in a warm place", () => {
  test("is an error over its limit, a warning inside the margin of 15 °C, which is named", () => {
    expect(at("PETG", 50.5)?.level).toBe("error");
    expect(at("PETG", 36)?.says).toBe("PETG is good to 50 °C, and it is 36 °C here: less than the 15 °C of margin");
    expect(at("PETG", 35)).toBeUndefined();
  });

  // Data sheets of filaments, from memory: blends sold as polycarbonate soften near 100 °C.
  test("PC over 85 °C: many spools are blends", () => {
    expect(at("PC", 85)).toBeUndefined();
    expect(at("PC", 90)?.level).toBe("warning");
    expect(at("PC", 90)?.says).toContain("blends sold as PC are good to 85 °C only");
    expect(at("PC", 105)?.says).toContain("less than the 15 °C of margin; filament blends");
    expect(at("PC", 111)?.level).toBe("error");
  });

  test("a limit that the user states for his spool is believed", () => {
    expect(at("PC", 90, ["serviceLimit"])).toBeUndefined();
    expect(at("PC", 105, ["serviceLimit"])?.says).not.toContain("blend");
  });

  test("only materials that will do are advised", () => {
    expect(at("PLA", 30)?.set).toBe("material: PETG, ABS, ASA, PC, PA-CF, or a cooler place");
    expect(at("PETG", 75)?.set).toBe("material: PA-CF, or a cooler place");
    expect(at("PA-CF", 90)?.set).toBe("a cooler place");
  });
});
