import { expect, test } from "vitest";
import { recently } from "../../src/core/recently.ts";

test("what was asked for a while ago is handed out again; the oldest answer goes first", () => {
  const worked: string[] = [];
  const recent = recently<{ readonly of: string }>(2);
  const ask = (key: string) =>
    recent(key, () => {
      worked.push(key);
      return { of: key };
    });
  const first = ask("a");
  expect(ask("a")).toBe(first);
  ask("b");
  // Asked for again, so b is now the oldest.
  ask("a");
  ask("c");
  expect(ask("a")).toBe(first);
  ask("b");
  expect(worked).toEqual(["a", "b", "c", "b"]);
});
