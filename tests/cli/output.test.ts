import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { folderWith, run } from "./program.ts";

const GOOD = "format: 1\npart: wheel-spacer\nname: bench\nparameters:\n  length: 1/4 in\n";

const PLATE =
  "format: 1\npart: wheel-plate\nname: cart\nparameters: { load: 5, eccentricKind: printed, spacerKind: printed }\n";

describe("file names", () => {
  test("two companions of one family have names of their own", () => {
    const folder = folderWith({ "cart.yaml": PLATE });
    const { code, out } = run(["make", "cart.yaml"], folder);
    expect(code).toBe(0);
    expect(readdirSync(join(folder, "out")).sort()).toEqual(
      ["cart", "cart-bush", "cart-spacer"].flatMap((name) => [`${name}.md`, `${name}.stl`]).sort(),
    );
    for (const name of ["cart", "cart-bush", "cart-spacer"]) expect(out).toContain(` x out/${name}.stl: `);
  });

  test.each(["make", "check"])(
    "%s refuses two presets of one name, each at its place, and makes the rest",
    (command) => {
      const other = GOOD.replace("1/4 in", "8").replace("format: 1\n", "# a comment\nformat: 1\n");
      const third = GOOD.replace("bench", "third");
      const folder = folderWith({ "a.yaml": GOOD, "b.yaml": other, "c.yaml": third });
      const { code, out, err } = run([command, "a.yaml", "b.yaml", "c.yaml"], folder);
      const said = command === "make" ? err : out;
      expect(code).toBe(1);
      expect(said).toContain("a.yaml:3:7: error: b.yaml writes bench.stl as well");
      expect(said).toContain("b.yaml:4:7: error: a.yaml writes bench.stl as well");
      expect(said).toContain("  defect  file-name-taken-twice");
      if (command === "make") expect(readdirSync(join(folder, "out")).sort()).toEqual(["third.md", "third.stl"]);
      else expect(existsSync(join(folder, "out"))).toBe(false);
    },
  );

  test("a part may not have the name of another's companion", () => {
    const folder = folderWith({ "cart.yaml": PLATE, "b.yaml": GOOD.replace("bench", "cart-bush") });
    const { code, err } = run(["make", "cart.yaml", "b.yaml"], folder);
    expect(code).toBe(1);
    expect(err).toContain("cart.yaml:3:7: error: b.yaml writes cart-bush.stl as well");
    expect(existsSync(join(folder, "out"))).toBe(false);
  });

  test("a preset that is named twice is made once", () => {
    const folder = folderWith({ "a.yaml": GOOD });
    const { code, err } = run(["make", "a.yaml", "./a.yaml"], folder);
    expect(code).toBe(0);
    expect(err).toContain("1 part");
  });
});
