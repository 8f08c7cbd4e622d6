/** Guard against a value that is a whole step but for rounding noise: 1e-6 of a step. */
const GUARD = 1e-6;

/** Returns the smallest whole multiple of `step` that is not below `value`. Units: those of the arguments. */
export function up(value: number, step: number): number {
  return tidy(Math.ceil(value / step - GUARD) * step);
}

/** Returns the largest whole multiple of `step` that is not above `value`. Units: those of the arguments. */
export function down(value: number, step: number): number {
  return tidy(Math.floor(value / step + GUARD) * step);
}

/** Returns the value without binary noise below a picometre, so that 0.2 x 33 prints and compares as 6.6. */
export function tidy(value: number): number {
  const rounded = Math.round(value * 1e9) / 1e9;
  return rounded === 0 ? 0 : rounded;
}

/** Returns the sine, cosine and tangent of an angle in degrees; exact at multiples of 90 degrees. */
export function sinDeg(angle: number): number {
  return cosDeg(angle - 90);
}

export function cosDeg(angle: number): number {
  const turned = ((angle % 360) + 360) % 360;
  if (turned === 90 || turned === 270) return 0;
  if (turned === 0) return 1;
  if (turned === 180) return -1;
  return Math.cos((turned * Math.PI) / 180);
}

export function tanDeg(angle: number): number {
  return Math.tan((angle * Math.PI) / 180);
}
