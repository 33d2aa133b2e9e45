/** Figures as the benchmarks print them. Only the ratios of one run travel from machine to machine. */

export function quantile(times: readonly number[], share: number): number {
  const sorted = times.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

export function median(times: readonly number[]): number {
  return quantile(times, 0.5);
}

export function printFigure(name: string, figures: readonly number[], unit = "ms"): void {
  const [middle, high] = [median(figures), quantile(figures, 0.95)].map((figure) => figure.toFixed(1));
  console.log(`${name.padEnd(78)} p50 ${middle?.padStart(8)} ${unit}   p95 ${high?.padStart(8)} ${unit}`);
}

/** A ratio of medians beside the bound it must keep, and whether it does. Printed; nothing fails. */
export function printRatio(
  name: string,
  ours: readonly number[],
  theirs: readonly number[],
  must?: number,
): void {
  const ratio = median(ours) / median(theirs);
  const bound = must === undefined ? "" : `   must ≤ ${must}: ${ratio <= must ? "holds" : "DOES NOT HOLD"}`;
  console.log(`${name.padEnd(78)} ratio ${ratio.toFixed(2).padStart(6)}${bound}`);
}
