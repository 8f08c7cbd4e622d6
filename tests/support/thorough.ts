/**
 * How often a test tries something at random: as often as named where `TRAMWRIGHT_TESTS=thorough`, as in CI, and a
 * quarter of that, or `quick`, in an ordinary run, which is to be over soon. What is tried is the same each time.
 */
export function runs(thorough: number, quick = Math.ceil(thorough / 4)): number {
  return process.env.TRAMWRIGHT_TESTS === "thorough" ? thorough : quick;
}
