/** Returns the number of the next body to build, which nobody else gets: both threads share the counter. */
export const taken = (next: Int32Array): number => Atomics.add(next, 0, 1);
