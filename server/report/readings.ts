/** What was measured on a shot, in words. */
import type { ScoringInput } from "../../shared/plan-model.ts";
import { formatReading } from "../../shared/quantity.ts";
import type { Row, SessionData, Shot } from "../../shared/session-data.ts";

/** The readings of these metrics at a row: `club-path 3.4° out-to-in, carry unknown`. Empty for a row without a shot. */
export type ReadingsAt = (row: Row, metrics: readonly string[]) => string;

/** Readings of one session. The shots are looked through once, when the first row is asked for. */
export function readingsAt(input: ScoringInput, data: SessionData): ReadingsAt {
  let shots: ReadonlyMap<string, Shot> | undefined;
  const hand = input.player.hand ?? "right";
  return (row, metrics) => {
    shots ??= new Map(data.shots.map((shot) => [key(shot.row), shot]));
    const values = shots.get(key(row))?.values;
    if (values === undefined) return "";
    return metrics
      .map((name) => {
        const value = values[name];
        const metric = input.metrics.get(name);
        return value === undefined || metric === undefined
          ? `${name} unknown`
          : `${name} ${formatReading(value, metric, hand)}`;
      })
      .join(", ");
  };
}

function key({ file, line }: Row): string {
  return `${line} ${file}`;
}
