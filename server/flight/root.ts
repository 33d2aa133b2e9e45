/** Where a function is zero. */

/**
 * A place between `low` and `high` at which `f` is within `tolerance` of zero, or the place where its sign changes to within
 * rounding. `atLow` and `atHigh`, its values there, must have different signs. Regula falsi, in the Illinois way.
 */
export function rootBetween(
  f: (x: number) => number,
  low: number,
  high: number,
  atLow: number,
  atHigh: number,
  tolerance: number,
): number {
  let [a, fa, b, fb] = [low, atLow, high, atHigh];
  for (let tries = 0; tries < 60; tries++) {
    const x = b - (fb * (b - a)) / (fb - fa);
    const fx = f(x);
    if (Math.abs(fx) <= tolerance || x === b) return x;
    if (fx * fb < 0) [a, fa] = [b, fb];
    else fa /= 2;
    [b, fb] = [x, fx];
  }
  return b;
}
