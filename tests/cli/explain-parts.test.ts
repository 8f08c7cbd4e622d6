import { expect, test } from "vitest";
import { run } from "./program.ts";

const PLAN = "presets/stages/copy-stand.yaml";
const here = process.cwd();

test("a part of a machine is explained by the name that its files have, with its numbers by theirs", () => {
  const { out, code } = run(["explain", "foot-l", "--preset", PLAN], here);
  expect(code).toBe(0);
  expect(out).toContain("foot-l: the screw-foot of screws.L in the plan");
  expect(out).toContain("foot-l.plane-over-datum");
  const carriage = run(["explain", "carriage-left", "--preset", PLAN], here).out;
  expect(carriage).toContain("carriage.left.largest");
});

test("every number that the page of a part names has a page itself", () => {
  const { out } = run(["explain", "foot-r", "--preset", PLAN, "--json"], here);
  const names = [...new Set(out.match(/foot-r\.[\w-]+/g) ?? [])];
  expect(names.length).toBeGreaterThan(3);
  for (const name of names) {
    const { out: page, code } = run(["explain", name, "--preset", PLAN], here);
    expect([name, code]).toEqual([name, 0]);
    expect(page).toContain(`${name}: `);
  }
});

test("a number that machine and part both tell of has both pages, and older names lead there", () => {
  const page = run(["explain", "foot-l.seat", "--preset", PLAN], here).out;
  expect(page).toContain("foot-l.seat: seat of L over the top of screw-left");
  expect(page).toContain("screw-foot.seat: seat of the bearing");
  const older = (name: string) => run(["explain", name, "--preset", PLAN], here).out;
  expect(older("foot.L.seat")).toBe(page);
  expect(older("foot.L.plane")).toContain("foot-l.plane-over-datum: belt at L over the datum");
  expect(older("foot.L.pull")).toContain("foot-l.pull: pull of the belt on L");
});

test("numbers of other parts that the machine tells of by the part's name have their pages", () => {
  const { out, code } = run(["explain", "mount-one.stuck", "--preset", "docs/worked-machine.yaml"], here);
  expect(code).toBe(0);
  expect(out).toContain("mount-one.stuck: ");
});
