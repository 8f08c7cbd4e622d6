import { describe, expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";
import { sound } from "./printed.ts";

const node = (name: string, x: number, y: number, radius: number, inside = true): m.LoopNode => {
  return { name, x, y, radius, inside };
};
const turned = (nodes: readonly m.LoopNode[], degrees: number) =>
  nodes.map((each) => {
    const [cosine, sine] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    return { ...each, x: each.x * cosine - each.y * sine, y: each.x * sine + each.y * cosine };
  });
const shifted = (nodes: readonly m.LoopNode[], by: number) =>
  nodes.map((each) => ({ ...each, x: each.x + by, y: each.y + by }));

/** Own arithmetic and plane geometry: the verdict must not hang on where a layout stands, nor on rounding there. */
describe("a loop wherever it stands", () => {
  test("a hundred kilometres off, where places have a hundredth of a millimetre only", () => {
    const nodes = [node("a", 0, 0, 12), node("b", 300, 40, 20), node("c", 110, 260, 31)];
    const { length } = sound(m.beltLoop(nodes));
    for (let angle = 0; angle < 360; angle += 7) {
      const far = sound(m.beltLoop(shifted(turned(nodes, angle), 1e11)));
      expect(Math.abs(far.length - length)).toBeLessThan(0.01);
    }
  });

  test("an idler that presses one span down to the other touches it, and may; a hair more is through it", () => {
    // The lower span lies at -20 mm, and the idler of 10 mm stands at -10.
    const pressed = (by: number) => [node("a", 0, 0, 20), node("b", 300, 0, 20), node("i", 150, -10 - by, 10, false)];
    for (let angle = 0; angle < 360; angle += 5) {
      expect(m.beltLoop(turned(pressed(0), angle))).not.toHaveProperty("refused");
      expect(m.beltLoop(shifted(turned(pressed(0), angle), 1e6))).not.toHaveProperty("refused");
      expect(m.beltLoop(turned(pressed(1e-5), angle))).toHaveProperty(
        "refused",
        "the span from a to b runs through i: 10 mm from its middle, under 10 mm",
      );
    }
  });

  test("a pulley may stand clear of a span on every side, and not in it", () => {
    // The idler presses the upper span of a wide loop; the lower span is straight at -20 mm, from 0 to 400 mm.
    const at = (x: number, y: number) => [node("a", 0, 0, 20), node("b", 400, 0, 20), node("i", x, y, 30, false)];
    for (const angle of [0, 90, 180, 270]) {
      for (const x of [100, 200, 300]) {
        expect(m.beltLoop(turned(at(x, 10.001), angle))).not.toHaveProperty("refused");
        expect(m.beltLoop(turned(at(x, 9.999), angle))).toHaveProperty("defect.name", "span-through-node");
      }
    }
  });
});
