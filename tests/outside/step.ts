/** State of a system in time. */
export type State = readonly number[];

/** One step of the classical fourth-order Runge-Kutta method (source: any text on numerical methods). */
export function step(rates: (state: State) => State, state: State, time: number): State {
  const go = (from: State, along: State, by: number) => from.map((value, index) => value + by * (along[index] ?? 0));
  const first = rates(state);
  const second = rates(go(state, first, time / 2));
  const third = rates(go(state, second, time / 2));
  const fourth = rates(go(state, third, time));
  return state.map((value, index) => {
    const slope = (first[index] ?? 0) + 2 * (second[index] ?? 0) + 2 * (third[index] ?? 0) + (fourth[index] ?? 0);
    return value + (time / 6) * slope;
  });
}

/**
 * Returns when and in what state the first number of a system reaches a value, in steps of `time`; the last step is
 * shortened by halving until it ends there.
 */
export function reach(
  rates: (state: State) => State,
  start: State,
  value: number,
  time: number,
): { time: number; state: State } {
  let [state, passed] = [start, 0];
  for (;;) {
    const next = step(rates, state, time);
    if (!(Math.sign((next[0] ?? 0) - value) === Math.sign((state[0] ?? 0) - value))) break;
    if (passed > 1e6 * time) throw new Error("never reached");
    [state, passed] = [next, passed + time];
  }
  let [low, high] = [0, time];
  const side = Math.sign((state[0] ?? 0) - value);
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (Math.sign((step(rates, state, middle)[0] ?? 0) - value) === side) low = middle;
    else high = middle;
  }
  return { time: passed + low, state: step(rates, state, low) };
}
