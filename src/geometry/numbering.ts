/**
 * Returns a function that numbers triples of 32-bit whole numbers from 0 in order of first appearance: an equal triple
 * gets the number it had before. `capacity` is the most triples that can differ.
 */
export function numbering(capacity: number): (a: number, b: number, c: number) => number {
  let size = 8;
  while (size < capacity * 2) size *= 2;
  const slots = new Int32Array(size).fill(-1);
  const keys = new Uint32Array(capacity * 3);
  let used = 0;
  return (a, b, c) => {
    let slot = scatter(a, b, c) & (size - 1);
    for (;;) {
      const known = slots[slot] as number;
      if (known < 0) break;
      if (keys[known * 3] === a && keys[known * 3 + 1] === b && keys[known * 3 + 2] === c) return known;
      slot = (slot + 1) & (size - 1);
    }
    slots[slot] = used;
    keys[used * 3] = a;
    keys[used * 3 + 1] = b;
    keys[used * 3 + 2] = c;
    return used++;
  };
}

function scatter(a: number, b: number, c: number): number {
  let mixed = Math.imul(a, 0x9e3779b1) ^ Math.imul(b, 0x85ebca6b) ^ Math.imul(c, 0xc2b2ae35);
  mixed ^= mixed >>> 15;
  mixed = Math.imul(mixed, 0x2c1b3c6d);
  return mixed ^ (mixed >>> 13);
}
