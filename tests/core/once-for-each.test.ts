import { expect, test } from "vitest";
import { onceForEach } from "../../src/core/once-for-each.ts";

test("the work is done once for each thing, whatever comes of it, and again for an equal one that is another", () => {
  let worked = 0;
  const sizes = onceForEach((list: readonly number[]) => {
    worked++;
    return list.length === 0 ? undefined : list.length;
  });
  const [one, none] = [[1, 2, 3], []];
  expect([sizes(one), sizes(one), sizes(none), sizes(none)]).toEqual([3, 3, undefined, undefined]);
  expect(worked).toBe(2);
  expect(sizes([1, 2, 3])).toBe(3);
  expect(worked).toBe(3);
});
