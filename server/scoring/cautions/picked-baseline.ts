/** A baseline that was unusually bad: a part of what is gained after it comes by itself. */
import { reading } from "../../../shared/condition.ts";
import { signed } from "../../../shared/interval.ts";
import type { ChangeCriterion, Criterion, Hand, ScoringInput, Usual } from "../../../shared/plan-model.ts";
import { formatReading } from "../../../shared/quantity.ts";
import { isUnusuallyBad } from "../../../shared/statistics/regression-to-the-mean.ts";
import { sampleOf } from "../../../shared/statistics/summary.ts";
import { clubsOf } from "../clubs.ts";
import type { BlockShots } from "../set-aside.ts";

/** Where a goal asks for a gain against a baseline that lies worse than the player's usual by more than its own error. */
export function pickedBaselineCautions(
  { plan, player, metrics }: ScoringInput,
  blocks: readonly BlockShots[],
): string[] {
  const hand = player.hand ?? "right";
  const changes = plan.blocks.flatMap(({ success }) => success).flatMap(changesIn);
  return [
    ...new Set(
      changes.flatMap((change) => {
        const metric = metrics.get(change.metric);
        const better = betterSide(change, hand);
        const baseline = blocks.find(
          ({ block }) => change.against.kind === "block" && block.name === change.against.block,
        );
        if (metric === undefined || better === undefined || baseline === undefined) return [];
        const usual = usualOf(change.metric, baseline, player.usual);
        const sample = sampleOf(
          baseline.counted
            .map(({ values }) => reading(values, change.metric))
            .filter((value) => value !== undefined),
        );
        if (usual === undefined || sample === undefined || !isUnusuallyBad(sample, usual.value, better)) {
          return [];
        }
        const inWords = (value: number) => formatReading(value, metric, hand);
        return [
          `Baseline "${baseline.block.name}": its average ${change.metric} of ${inWords(sample.mean)} is worse than the usual ${inWords(usual.value)}. After an unusually bad baseline some gain comes without any change.`,
        ];
      }),
    ),
  ];
}

function changesIn(criterion: Criterion): ChangeCriterion[] {
  if (criterion.kind === "group") return criterion.criteria.flatMap(changesIn);
  const isOfAverage = criterion.kind === "change" && criterion.statistic.kind === "average";
  return isOfAverage ? [criterion] : [];
}

/** On which side the number is better: where the goal wants it to go. Undefined where it is to stay. */
function betterSide({ movement }: ChangeCriterion, hand: Hand): 1 | -1 | undefined {
  if (movement.kind === "stays" || movement.bound === "most") return undefined;
  if (movement.kind === "rises") return 1;
  if (movement.kind === "falls") return -1;
  return signed({ ...movement.amount, value: 1 }, hand) > 0 ? 1 : -1;
}

function usualOf(metric: string, { block, counted }: BlockShots, usual: readonly Usual[]): Usual | undefined {
  const [club, another] = clubsOf(block, counted);
  const ofMetric = usual.filter((line) => line.metric === metric);
  const ofClub = another === undefined ? ofMetric.find((line) => line.club === club) : undefined;
  return ofClub ?? ofMetric.find((line) => line.club === null);
}
