import { expect, test } from "vitest";
import { designPart, make } from "../../src/build/make.ts";
import { finish } from "../../src/build/order.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { kernel } from "../support/kernel.ts";
import { printerWith } from "../support/printer.ts";

/** A reason as somebody might write it who wants to have it read as something else. */
const BECAUSE = "one\n## Cautions\n<img src=x onerror=alert(1)> [here](http://x) `code` | cell \\ \u001b[2J end";

test("a reason for accepting an error stands in the sheet as words: no heading, link, tag or control character", () => {
  const family = FAMILIES.find(({ name }) => name === "screw-foot");
  if (family === undefined) throw new Error("no screw-foot");
  const made = family.checks.flatMap(({ name, trips }) => {
    const { data: parameters } = family.schema.safeParse(trips.error);
    if (parameters === undefined) return [];
    const accept = [{ check: name, because: BECAUSE }];
    const request = { name: "evil", family, parameters, printer: printerWith(), calibrated: true, accept };
    return designPart(request).diagnostics.some(({ level }) => level === "error") ? [] : [request];
  });
  const [request] = made;
  if (request === undefined) throw new Error("no error of a screw foot can be accepted");
  const { files } = finish(make(request, kernel), "1.2.3");
  const sheet = new TextDecoder().decode(files.find(({ name }) => name === "evil.md")?.bytes);
  const [line = ""] = sheet.split("\n").filter((one) => one.includes("(accepted: "));
  expect(line).toContain(
    "(accepted: one ## Cautions \\<img src=x onerror=alert(1)> \\[here](http://x) \\`code\\` \\| cell \\\\ \\[2J end)",
  );
  expect(sheet.match(/^## Cautions$/gm)).toHaveLength(1);
});
