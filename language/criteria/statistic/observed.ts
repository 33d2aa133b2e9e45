/** What was seen of a number that sums up shots. */
import type { CountedShots } from "../criterion.ts";
import { plannedShots } from "../hits.ts";
import { shortOf } from "../open-shots.ts";
import { hasRequirements } from "../required.ts";
import { joined, listed, shots as shotsInWords, unlessZero } from "../wording.ts";
import type { UsableShots } from "./usable-shots.ts";

/**
 * `average 1.2° in-to-out over 12 shots; 4 shots short of 16`. `number` is what could be made of the usable shots, null
 * where they are too few.
 */
export function observed(
  number: string | null,
  metrics: readonly string[],
  { indices, unknown, doubtful, refused }: UsableShots,
  shots: CountedShots,
): string {
  const planned = plannedShots(shots);
  const short = unlessZero(planned - shots.size, (count) => shortOf(count, planned));
  const used = indices.length;
  if (shots.size === 0) return "no shots hit";
  if (used > 0 && number !== null) {
    return joined(
      `${number} over ${shotsInWords(used)}${hasRequirements(shots) ? " as required" : ""}`,
      short,
    );
  }
  if (used > 0) {
    return joined(`${used === 1 ? "one reading" : `${used} readings`} of ${listed(metrics)} only`, short);
  }
  if (unknown.length === 0) {
    const none = refused === 1 ? "the one shot did not meet" : `none of ${refused} shots met`;
    return joined(`${none} what the block requires`, short);
  }
  const usable = doubtful > 0 ? "usable " : "";
  return joined(`no ${usable}reading of ${listed(metrics)} in ${shotsInWords(unknown.length)}`, short);
}
