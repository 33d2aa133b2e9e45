/**
 * How likely a run of hits is. A streak is weak evidence: three in a row somewhere in ten shots happens to a player who
 * hits half of all shots with probability 0.51. So nothing is said here about ability.
 */

/**
 * P(there are `length` hits in a row somewhere), when each shot hits with a probability of its own, independently.
 *
 * Walks from shot to shot with the probabilities of the run that is under way, 0 … length − 1 hits long, and of a run that
 * is complete. O(shots·length). A chance outside 0 … 1, or none, gives NaN; a run of no hits is always there.
 */
export function runProbability(chances: readonly number[], length: number): number {
  if (!chances.every((chance) => chance >= 0 && chance <= 1)) return Number.NaN;
  if (length <= 0) return 1;
  if (length > chances.length) return 0;
  const underWay = new Float64Array(length);
  underWay[0] = 1;
  let complete = 0;
  for (const chance of chances) {
    let broken = 0;
    for (const probability of underWay) broken += probability;
    complete += (underWay[length - 1] ?? 0) * chance;
    for (let hits = length - 1; hits > 0; hits--) underWay[hits] = (underWay[hits - 1] ?? 0) * chance;
    underWay[0] = broken * (1 - chance);
  }
  return Math.min(1, complete);
}
