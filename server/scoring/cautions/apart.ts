/** Shots that stand apart from the others of their block. They are counted like all others; somebody should look at them. */
import { listed } from "../../../language/criteria/wording.ts";
import { reading } from "../../../shared/condition.ts";
import type { Criterion } from "../../../shared/plan-model.ts";
import { formatReading } from "../../../shared/quantity.ts";
import type { Row, Shot } from "../../../shared/session-data.ts";
import { flagged } from "../../../shared/statistics/outliers.ts";
import type { Frame } from "../counted-shots.ts";
import type { BlockShots } from "../set-aside.ts";

/** More are counted, not named. */
const MOST_NAMED = 3;

/**
 * Looks at the metrics that goals of the block sum up: where shots are only counted, one far away counts like any other.
 * Shots with different clubs are not held against each other.
 */
export function apartCautions({ block, counted }: BlockShots, { vocabulary, player }: Frame): string[] {
  const metrics = new Set(block.success.flatMap(metricsSummedUp));
  const byClub = [...Map.groupBy(counted, ({ club }) => club).values()];
  return [...metrics].flatMap((name) => {
    const metric = vocabulary.get(name);
    const apart = byClub.flatMap((shots) => standingApart(name, shots));
    if (metric === undefined || apart.length === 0) return [];
    const named = apart
      .slice(0, MOST_NAMED)
      .map(({ row, value }) => `${placeOf(row)} (${formatReading(value, metric, player.hand)})`);
    const more = apart.length - named.length;
    const all = more === 0 ? named : [...named, `${more} more`];
    const rest =
      apart.length === 1
        ? "stands apart from the other shots: look at this shot. It is counted like the others."
        : "stand apart from the other shots: look at these shots. They are counted like the others.";
    return [`Block "${block.name}": by ${name}, ${listed(all)} ${rest}`];
  });
}

function standingApart(metric: string, shots: readonly Shot[]): { row: Row; value: number }[] {
  const known = shots.filter(({ values }) => reading(values, metric) !== undefined);
  const values = known.map((shot) => shot.values[metric] as number);
  return flagged(values).map((index) => ({
    row: (known[index] as Shot).row,
    value: values[index] as number,
  }));
}

/** The metrics whose average, spread or the like a criterion judges. */
export function metricsSummedUp(criterion: Criterion): readonly string[] {
  switch (criterion.kind) {
    case "statistic":
    case "change":
      return [criterion.metric];
    case "ellipse":
      return criterion.metrics;
    case "group":
      return criterion.criteria.flatMap(metricsSummedUp);
    default:
      return [];
  }
}

function placeOf({ file, line }: Row): string {
  return `line ${line} of ${file}`;
}
