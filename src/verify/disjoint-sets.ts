export interface DisjointSets {
  /** Makes the sets of two members one. */
  readonly join: (a: number, b: number) => void;
  /** Returns the member that stands for the set of this one. */
  readonly find: (member: number) => number;
}

/** Returns the members 0 to `count` - 1, each in a set of its own. */
export function disjointSets(count: number): DisjointSets {
  const parent = new Int32Array(count);
  for (let member = 0; member < count; member++) parent[member] = member;
  const find = (member: number) => {
    let root = member;
    while (parent[root] !== root) {
      // Halving the path keeps later searches short.
      parent[root] = parent[parent[root] as number] as number;
      root = parent[root] as number;
    }
    return root;
  };
  const join = (a: number, b: number) => {
    const one = find(a);
    const other = find(b);
    if (one < other) parent[other] = one;
    else parent[one] = other;
  };
  return { join, find };
}
