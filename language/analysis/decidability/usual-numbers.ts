/** Changes against what is usual of a player that cannot be measured, or cannot be: by what is stated of the player. */
import type { Block, ChangeCriterion, Player, Usual } from "../../../shared/plan-model.ts";
import { claimOfMovement, measureOf } from "../../criteria/change/movement.ts";
import { titleOf } from "../../criteria/statistic/names.ts";
import { everyGoal } from "../possibility/goals.ts";
import { isEmpty, meet } from "../reasoning/range.ts";
import type { BlockInPlan, Remark } from "../subject.ts";
import { code, placeInWords, rangeInWords } from "../words.ts";

export interface WithoutUsual {
  readonly goal: ChangeCriterion;
  readonly remark: Remark;
}

/** At most one remark on each goal. */
export function goalsWithoutUsual(player: Player, subject: BlockInPlan): WithoutUsual[] {
  return everyGoal(subject.block.success).flatMap((goal) => {
    if (goal.kind !== "change" || goal.against.kind !== "usual") return [];
    const remark = remarkOn(goal, player, subject);
    return remark === undefined ? [] : [{ goal, remark }];
  });
}

function remarkOn(goal: ChangeCriterion, player: Player, subject: BlockInPlan): Remark | undefined {
  const usual = usualOf(goal.metric, subject.block, player);
  if (usual === "unknown") return undefined;
  if (usual === undefined) return remark(goal, notStated(goal, player, subject.block));
  const isSpread = goal.statistic.kind === "spread";
  if (isSpread && usual.spread === null) {
    const line = placeInWords(usual.location, subject.block.location);
    const what = `the usual spread of ${goal.metric} of ${player.name} is not stated, so this cannot be measured`;
    return remark(goal, `${what}. Write ${code("spread …")} behind the number in ${line}.`, usual);
  }
  return isTooFar(goal, usual, player, subject)
    ? remark(goal, tooFar(goal, usual, player, subject), usual)
    : undefined;
}

function remark(goal: ChangeCriterion, message: string, usual?: Usual): Remark {
  const related =
    usual === undefined ? [] : [{ message: `the usual ${usual.metric}`, location: usual.location }];
  return { message, location: goal.location, related };
}

/** The line that a session looks at; unknown where it hangs on the clubs in the table. */
function usualOf(metric: string, { shots }: Block, player: Player): Usual | undefined | "unknown" {
  const lines = player.usual.filter((line) => line.metric === metric);
  const clubs = new Set(shots.map(({ club }) => club));
  const [club = null, another] = clubs;
  if (club === null && lines.some((line) => line.club !== null)) return "unknown";
  const ofClub = another === undefined ? lines.find((line) => line.club === club) : undefined;
  return ofClub ?? lines.find((line) => line.club === null);
}

function notStated(
  { metric, statistic }: ChangeCriterion,
  { name, usual }: Player,
  { shots }: Block,
): string {
  const [club = null, another] = new Set(shots.map((line) => line.club));
  const isStated = usual.some((line) => line.metric === metric);
  const withClub = club === null || another !== undefined ? "" : ` with ${club}`;
  const line = `usual ${metric} …${statistic.kind === "spread" ? " spread …" : ""}${withClub}`;
  const where = isStated && withClub === "" ? " over all clubs" : isStated ? withClub : "";
  return `the usual ${metric} of ${name}${where} is not stated, so this cannot be measured. Write ${code(line)} there.`;
}

/** Whether what would have to be is no spread, or no plausible number; of a player whose hand is not stated, for either. */
function isTooFar(
  { metric: name, movement, statistic }: ChangeCriterion,
  usual: Usual,
  { hand }: Player,
  subject: BlockInPlan,
): boolean {
  const metric = subject.vocabulary.metrics.get(name);
  if (metric === undefined || measureOf(movement, metric) === "share") return false;
  const hands = hand === null ? (["right", "left"] as const) : [hand];
  return hands.every((hand) => {
    const { interval, slack } = claimOfMovement(movement, "difference", hand);
    const isSpread = statistic.kind === "spread";
    const before = isSpread ? (usual.spread ?? 0) : usual.value;
    const { low, high } = isSpread
      ? { low: 0, high: Number.POSITIVE_INFINITY }
      : subject.vocabulary.plausible(name, hand);
    return isEmpty(meet(interval, { low: low - before - slack, high: high - before + slack }));
  });
}

function tooFar(
  goal: ChangeCriterion,
  usual: Usual,
  player: Player,
  { block, vocabulary }: BlockInPlan,
): string {
  const { metric: name, movement, statistic } = goal;
  const line = placeInWords(usual.location, block.location);
  const metric = vocabulary.metrics.get(name);
  const isSpread = statistic.kind === "spread";
  const value = isSpread ? usual.spread : usual.value;
  const manner = { hand: player.hand ?? ("right" as const), unit: movement.amount.unit, isPlain: true };
  const shown =
    metric === undefined || value === null
      ? ""
      : ` is ${rangeInWords({ low: value, high: value }, isSpread ? { ...metric, directions: [] } : metric, manner)}`;
  return `the usual ${titleOf(statistic, name)} of ${player.name}${shown} (${line}), which cannot change by so much. Ask for less.`;
}
