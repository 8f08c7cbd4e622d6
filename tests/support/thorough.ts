/** Whether everything is tried, however long it takes. */
export const isThorough = process.env.TRAMWRIGHT_TESTS === "thorough";

/** Returns all things of a long list where everything is tried, and one of every few in an ordinary run. */
export function someOf<Thing>(all: readonly Thing[], few = 4): readonly Thing[] {
  return isThorough ? all : all.filter((_, at) => at % few === 0);
}

/**
 * How often a test tries something at random: as often as named where `TRAMWRIGHT_TESTS=thorough`, as in CI, and an
 * eighth of that, or `quick`, in an ordinary run, which is to be over soon. What is tried is the same each time.
 */
export function runs(thorough: number, quick = Math.ceil(thorough / 8)): number {
  return isThorough ? thorough : quick;
}
