/** Numbers that look random and are the same in every run. */
export interface Dice {
  /** A number from `min` up to `max`. */
  between(min: number, max: number): number;
  /** A whole number from `min` to `max`, both included. */
  whole(min: number, max: number): number;
  pick<T>(from: readonly T[]): T;
  shuffled<T>(from: readonly T[]): T[];
}

/** Returns dice that start from a seed (a 32-bit mixing generator, public domain, from memory). */
export function dice(seed: number): Dice {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const between = (min: number, max: number) => min + (max - min) * next();
  const whole = (min: number, max: number) => Math.floor(between(min, max + 1));
  return {
    between,
    whole,
    pick: (from) => from[whole(0, from.length - 1)] as (typeof from)[number],
    shuffled: (from) => {
      const left = [...from];
      const drawn: (typeof from)[number][] = [];
      while (left.length > 0) drawn.push(...left.splice(whole(0, left.length - 1), 1));
      return drawn;
    },
  };
}
