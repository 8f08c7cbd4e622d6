import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { make } from "../src/build/make.ts";
import { riser } from "./support/example-family.ts";
import { kernel } from "./support/kernel.ts";
import { printerWith } from "./support/printer.ts";

test("the family in DEVELOPERS.md is the one that is tested", () => {
  const guide = readFileSync("DEVELOPERS.md", "utf8");
  const shown = /```ts\n([\s\S]*?)```/.exec(guide)?.[1];
  expect(shown).toBe(readFileSync("tests/support/example-family.ts", "utf8"));
});

test("the family in DEVELOPERS.md becomes a sound part", () => {
  const parameters = riser.schema.parse({ bolt: "M6", height: "1/2 in" });
  const made = make(
    { name: "riser", family: riser, parameters, printer: printerWith(), calibrated: true, accept: [] },
    kernel,
  );
  expect(made.diagnostics.filter(({ level }) => level !== "note")).toEqual([]);
  expect(made.pieces[0]?.measures.soundness).toMatchObject({ closed: true, pieces: 1, genus: 1 });
  expect(made.pieces[0]?.fit).toMatchObject({ free: 1, touching: 1 });
});
