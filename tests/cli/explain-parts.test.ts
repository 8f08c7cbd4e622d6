import { expect, test } from "vitest";
import { run } from "./program.ts";

const PLAN = "presets/stages/copy-stand.yaml";
const here = process.cwd();

test("a part of a machine is explained by the name that its files have, with its numbers by theirs", () => {
  const { out, code } = run(["explain", "foot-l", "--preset", PLAN], here);
  expect(code).toBe(0);
  expect(out).toContain("foot-l: the screw-foot of screws.L in the plan");
  expect(out).toContain("foot.L.plane");
  const carriage = run(["explain", "carriage-left", "--preset", PLAN], here).out;
  expect(carriage).toContain("carriage.left.largest");
});

test("every number that the page of a part names has a page itself", () => {
  const { out } = run(["explain", "foot-r", "--preset", PLAN, "--json"], here);
  const names = [...new Set(out.match(/foot[.-][Rr]\.[\w-]+/g) ?? [])];
  expect(names.length).toBeGreaterThan(3);
  for (const name of names) expect([name, run(["explain", name, "--preset", PLAN], here).code]).toEqual([name, 0]);
});
