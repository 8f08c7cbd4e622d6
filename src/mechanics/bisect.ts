/** Halvings after which an interval of doubles cannot shrink any more. */
const HALVINGS = 200;

/**
 * Returns where `f` is zero between `low` and `high`, to the last bit; undefined when both ends have the same sign.
 * `f` is continuous there. Source: bisection.
 */
export function bisect(f: (at: number) => number, low: number, high: number): number | undefined {
  const [atLow, atHigh] = [f(low), f(high)];
  if (atLow === 0) return low;
  if (atHigh === 0) return high;
  if (!(Math.sign(atLow) * Math.sign(atHigh) < 0)) return undefined;
  let [left, right] = [low, high];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = left + (right - left) / 2;
    if (middle === left || middle === right) break;
    const value = f(middle);
    if (value === 0) return middle;
    if (Math.sign(value) === Math.sign(atLow)) left = middle;
    else right = middle;
  }
  return left;
}
