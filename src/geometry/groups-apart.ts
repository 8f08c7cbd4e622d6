import type { Box } from "./mesh.ts";

/** Returns things in groups, each as few as go without a search, so that no two boxes in a group meet. */
export function groupsApart<Thing>(things: readonly Thing[], boxOf: (thing: Thing) => Box): Thing[][] {
  const groups: { readonly thing: Thing; readonly box: Box }[][] = [];
  for (const thing of things) {
    const box = boxOf(thing);
    const group = groups.find((one) => one.every((other) => isApart(other.box, box)));
    if (group === undefined) groups.push([{ thing, box }]);
    else group.push({ thing, box });
  }
  return groups.map((group) => group.map(({ thing }) => thing));
}

const isApart = (one: Box, other: Box): boolean =>
  ([0, 1, 2] as const).some((axis) => one.max[axis] < other.min[axis] || other.max[axis] < one.min[axis]);
