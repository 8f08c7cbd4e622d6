/**
 * Returns where `f` is zero between `low` and `high`, to the last bit; undefined when both ends have the same sign.
 * `f` is continuous there. Source: bisection.
 */
export function bisect(f: (at: number) => number, low: number, high: number): number | undefined {
  const sense = Math.sign(f(low));
  if (sense === 0) return low;
  const end = Math.sign(f(high));
  if (end === 0) return high;
  if (!(sense + end === 0)) return undefined;
  let [left, right] = [low, high];
  for (let middle = low / 2 + high / 2; left < middle && middle < right; middle = left / 2 + right / 2) {
    const side = Math.sign(f(middle));
    if (side === 0) return middle;
    if (side === sense) left = middle;
    else right = middle;
  }
  return left;
}
