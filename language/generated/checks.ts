// Written from the files of language/checks by tests/generated/checks.test.ts. Do not edit.
import { check as argumentMustBeGiven } from "../checks/argument-must-be-given.ts";
import { check as argumentMustBeGivenOnce } from "../checks/argument-must-be-given-once.ts";
import { check as argumentMustFit } from "../checks/argument-must-fit.ts";
import { check as ballCouldStateItsCarry } from "../checks/ball-could-state-its-carry.ts";
import { check as baselineCouldBeLonger } from "../checks/baseline-could-be-longer.ts";
import { check as baselineMustComeBefore } from "../checks/baseline-must-come-before.ts";
import { check as baselineShouldBeThereToLookAt } from "../checks/baseline-should-be-there-to-look-at.ts";
import { check as blockMustHaveShots } from "../checks/block-must-have-shots.ts";
import { check as blockMustStartOnce } from "../checks/block-must-start-once.ts";
import { check as blockStartsMustBeInOrder } from "../checks/block-starts-must-be-in-order.ts";
import { check as blocksShouldFitTheTime } from "../checks/blocks-should-fit-the-time.ts";
import { check as categoryMustBeAskedByName } from "../checks/category-must-be-asked-by-name.ts";
import { check as categoryMustHaveItsTurn } from "../checks/category-must-have-its-turn.ts";
import { check as changeCouldComeAlone } from "../checks/change-could-come-alone.ts";
import { check as changeShouldBeOfOneClub } from "../checks/change-should-be-of-one-club.ts";
import { check as changeShouldHaveABaseline } from "../checks/change-should-have-a-baseline.ts";
import { check as circumstanceShouldBeLikely } from "../checks/circumstance-should-be-likely.ts";
import { check as conditionsShouldBeStated } from "../checks/conditions-should-be-stated.ts";
import { check as confidenceCouldAllowAMiss } from "../checks/confidence-could-allow-a-miss.ts";
import { check as confidenceMustBeBetween50And100 } from "../checks/confidence-must-be-between-50-and-100.ts";
import { check as confidenceMustBeOnAbility } from "../checks/confidence-must-be-on-ability.ts";
import { check as confidenceMustBeWithinReach } from "../checks/confidence-must-be-within-reach.ts";
import { check as criterionCouldCoverItsBlock } from "../checks/criterion-could-cover-its-block.ts";
import { check as criterionMustNotExceedItsBlock } from "../checks/criterion-must-not-exceed-its-block.ts";
import { check as criterionShouldBeAbleToMiss } from "../checks/criterion-should-be-able-to-miss.ts";
import { check as curriculumMustHaveNoCycle } from "../checks/curriculum-must-have-no-cycle.ts";
import { check as dateMustBeInTheCalendar } from "../checks/date-must-be-in-the-calendar.ts";
import { check as declarationCouldBeLeftOut } from "../checks/declaration-could-be-left-out.ts";
import { check as dimensionMustHaveAUnit } from "../checks/dimension-must-have-a-unit.ts";
import { check as dimensionMustNotBeMadeOfItself } from "../checks/dimension-must-not-be-made-of-itself.ts";
import { check as directionMustBeStated } from "../checks/direction-must-be-stated.ts";
import { check as drillMustFitItsBlock } from "../checks/drill-must-fit-its-block.ts";
import { check as effortMustBeBetween1And110 } from "../checks/effort-must-be-between-1-and-110.ts";
import { check as effortShouldBuildUp } from "../checks/effort-should-build-up.ts";
import { check as effortShouldFitTheShots } from "../checks/effort-should-fit-the-shots.ts";
import { check as estimateMustBeKnown } from "../checks/estimate-must-be-known.ts";
import { check as fileMustNotUseItself } from "../checks/file-must-not-use-itself.ts";
import { check as findingMustBePossible } from "../checks/finding-must-be-possible.ts";
import { check as findingMustLookAtTheBaseline } from "../checks/finding-must-look-at-the-baseline.ts";
import { check as findingMustSayWhen } from "../checks/finding-must-say-when.ts";
import { check as findingShouldFitTheBaseline } from "../checks/finding-should-fit-the-baseline.ts";
import { check as findingShouldSayWhatToDo } from "../checks/finding-should-say-what-to-do.ts";
import { check as formulaMustFitItsMetric } from "../checks/formula-must-fit-its-metric.ts";
import { check as formulaMustNotNeedItself } from "../checks/formula-must-not-need-itself.ts";
import { check as gateMustComeBefore } from "../checks/gate-must-come-before.ts";
import { check as gateMustHaveGoals } from "../checks/gate-must-have-goals.ts";
import { check as goalMustBePossible } from "../checks/goal-must-be-possible.ts";
import { check as goalShouldAgreeWithTheTargets } from "../checks/goal-should-agree-with-the-targets.ts";
import { check as goalShouldBeAbleToMiss } from "../checks/goal-should-be-able-to-miss.ts";
import { check as goalShouldBePossibleForEverybody } from "../checks/goal-should-be-possible-for-everybody.ts";
import { check as goalsMustHoldTogether } from "../checks/goals-must-hold-together.ts";
import { check as groupMustAskForWhatItHas } from "../checks/group-must-ask-for-what-it-has.ts";
import { check as handMustBeStated } from "../checks/hand-must-be-stated.ts";
import { check as headerMustBeReadOnce } from "../checks/header-must-be-read-once.ts";
import { check as hitsMustNotExceedShots } from "../checks/hits-must-not-exceed-shots.ts";
import { check as instrumentCouldCoverTheGoals } from "../checks/instrument-could-cover-the-goals.ts";
import { check as instrumentShouldStateItsCoverage } from "../checks/instrument-should-state-its-coverage.ts";
import { check as leaveOutMustSpareTheTargets } from "../checks/leave-out-must-spare-the-targets.ts";
import { check as limitShouldBeWithinReach } from "../checks/limit-should-be-within-reach.ts";
import { check as limitsShouldReadOneWay } from "../checks/limits-should-read-one-way.ts";
import { check as loadMustLeaveRoom } from "../checks/load-must-leave-room.ts";
import { check as loadShouldStayWithinLimits } from "../checks/load-should-stay-within-limits.ts";
import { check as metricMustHaveOneColumn } from "../checks/metric-must-have-one-column.ts";
import { check as movementMustFitItsMetric } from "../checks/movement-must-fit-its-metric.ts";
import { check as nameMustBeDeclaredOnce } from "../checks/name-must-be-declared-once.ts";
import { check as nameMustBeKnown } from "../checks/name-must-be-known.ts";
import { check as nameMustMeanOneThing } from "../checks/name-must-mean-one-thing.ts";
import { check as nameShouldNotHideAnother } from "../checks/name-should-not-hide-another.ts";
import { check as neededMetricMustBeMapped } from "../checks/needed-metric-must-be-mapped.ts";
import { check as nextCouldCoverEveryResult } from "../checks/next-could-cover-every-result.ts";
import { check as nextCouldStayInTheCurriculum } from "../checks/next-could-stay-in-the-curriculum.ts";
import { check as nextMustAskForGoals } from "../checks/next-must-ask-for-goals.ts";
import { check as nextShouldNotGoInCircles } from "../checks/next-should-not-go-in-circles.ts";
import { check as nextStepMustBeWithinReach } from "../checks/next-step-must-be-within-reach.ts";
import { check as nextStepMustHaveItsTurn } from "../checks/next-step-must-have-its-turn.ts";
import { check as numberMustBeInReach } from "../checks/number-must-be-in-reach.ts";
import { check as numberMustBeWhole } from "../checks/number-must-be-whole.ts";
import { check as numberMustNotBeZero } from "../checks/number-must-not-be-zero.ts";
import { check as parameterCouldBeLeftOut } from "../checks/parameter-could-be-left-out.ts";
import { check as parameterMustBeDeclaredOnce } from "../checks/parameter-must-be-declared-once.ts";
import { check as parameterMustFit } from "../checks/parameter-must-fit.ts";
import { check as partMustBeStatedOnce } from "../checks/part-must-be-stated-once.ts";
import { check as planCouldTestWhatStays } from "../checks/plan-could-test-what-stays.ts";
import { check as planShouldHaveBlocks } from "../checks/plan-should-have-blocks.ts";
import { check as pressureShouldFitTheAltitude } from "../checks/pressure-should-fit-the-altitude.ts";
import { check as rangeShouldHaveTwoEnds } from "../checks/range-should-have-two-ends.ts";
import { check as reviewsShouldBeInOrder } from "../checks/reviews-should-be-in-order.ts";
import { check as sessionMustHaveData } from "../checks/session-must-have-data.ts";
import { check as sessionMustNameItsPlan } from "../checks/session-must-name-its-plan.ts";
import { check as sessionMustNameItsPlayer } from "../checks/session-must-name-its-player.ts";
import { check as shareMustBeWithinReach } from "../checks/share-must-be-within-reach.ts";
import { check as shareMustNotExceed100 } from "../checks/share-must-not-exceed-100.ts";
import { check as shotsCouldDecideMoreOften } from "../checks/shots-could-decide-more-often.ts";
import { check as shotsCouldSuitThePlayer } from "../checks/shots-could-suit-the-player.ts";
import { check as shotsShouldFitTheTime } from "../checks/shots-should-fit-the-time.ts";
import { check as spellingMustBeStatedOnce } from "../checks/spelling-must-be-stated-once.ts";
import { check as statementMustBeStatedOnce } from "../checks/statement-must-be-stated-once.ts";
import { check as statementMustFitItsMetric } from "../checks/statement-must-fit-its-metric.ts";
import { check as statisticMustHaveAUsual } from "../checks/statistic-must-have-a-usual.ts";
import { check as stepMustBeStatedOnce } from "../checks/step-must-be-stated-once.ts";
import { check as stepMustFollowAStep } from "../checks/step-must-follow-a-step.ts";
import { check as sumMustBeOfLikeQuantities } from "../checks/sum-must-be-of-like-quantities.ts";
import { check as targetCouldBeLeftOut } from "../checks/target-could-be-left-out.ts";
import { check as targetMustBeStated } from "../checks/target-must-be-stated.ts";
import { check as targetsMustHoldTogether } from "../checks/targets-must-hold-together.ts";
import { check as targetsShouldFitACentredStrike } from "../checks/targets-should-fit-a-centred-strike.ts";
import { check as targetsShouldHoldForEverybody } from "../checks/targets-should-hold-for-everybody.ts";
import { check as testCouldHaveSuccess } from "../checks/test-could-have-success.ts";
import { check as textShouldHoldNoPersonalData } from "../checks/text-should-hold-no-personal-data.ts";
import { check as toleranceShouldExceedTheInstrument } from "../checks/tolerance-should-exceed-the-instrument.ts";
import { check as unitMustBeStated } from "../checks/unit-must-be-stated.ts";
import { check as unitMustFit } from "../checks/unit-must-fit.ts";
import { check as unitMustHaveAWorth } from "../checks/unit-must-have-a-worth.ts";
import { check as unitMustNotBeWorthItself } from "../checks/unit-must-not-be-worth-itself.ts";
import { check as useCouldBeLeftOut } from "../checks/use-could-be-left-out.ts";
import { check as useShouldBeStatedOnce } from "../checks/use-should-be-stated-once.ts";
import { check as usedFileMustExist } from "../checks/used-file-must-exist.ts";
import { check as usualNumbersShouldFitTogether } from "../checks/usual-numbers-should-fit-together.ts";
import { check as usualShouldBePlausible } from "../checks/usual-should-be-plausible.ts";
import { check as usualShouldBeStated } from "../checks/usual-should-be-stated.ts";
import { check as variantMustBeStatedOnce } from "../checks/variant-must-be-stated-once.ts";
import { check as warmUpShouldComeFirst } from "../checks/warm-up-should-come-first.ts";
import { check as widthMustHaveNoDirection } from "../checks/width-must-have-no-direction.ts";
import { check as windowMustBeMadeOfFew } from "../checks/window-must-be-made-of-few.ts";
import { check as windowMustHaveAVariant } from "../checks/window-must-have-a-variant.ts";
import { check as windowMustLeaveShots } from "../checks/window-must-leave-shots.ts";
import { check as windowMustNotBeMadeOfItself } from "../checks/window-must-not-be-made-of-itself.ts";
import { check as windowShouldFitTheClubs } from "../checks/window-should-fit-the-clubs.ts";
import { check as withinMustHaveAMiddle } from "../checks/within-must-have-a-middle.ts";

/** Every check by its id. */
export const CHECKS = {
  "argument-must-be-given": argumentMustBeGiven,
  "argument-must-be-given-once": argumentMustBeGivenOnce,
  "argument-must-fit": argumentMustFit,
  "ball-could-state-its-carry": ballCouldStateItsCarry,
  "baseline-could-be-longer": baselineCouldBeLonger,
  "baseline-must-come-before": baselineMustComeBefore,
  "baseline-should-be-there-to-look-at": baselineShouldBeThereToLookAt,
  "block-must-have-shots": blockMustHaveShots,
  "block-must-start-once": blockMustStartOnce,
  "block-starts-must-be-in-order": blockStartsMustBeInOrder,
  "blocks-should-fit-the-time": blocksShouldFitTheTime,
  "category-must-be-asked-by-name": categoryMustBeAskedByName,
  "category-must-have-its-turn": categoryMustHaveItsTurn,
  "change-could-come-alone": changeCouldComeAlone,
  "change-should-be-of-one-club": changeShouldBeOfOneClub,
  "change-should-have-a-baseline": changeShouldHaveABaseline,
  "circumstance-should-be-likely": circumstanceShouldBeLikely,
  "conditions-should-be-stated": conditionsShouldBeStated,
  "confidence-could-allow-a-miss": confidenceCouldAllowAMiss,
  "confidence-must-be-between-50-and-100": confidenceMustBeBetween50And100,
  "confidence-must-be-on-ability": confidenceMustBeOnAbility,
  "confidence-must-be-within-reach": confidenceMustBeWithinReach,
  "criterion-could-cover-its-block": criterionCouldCoverItsBlock,
  "criterion-must-not-exceed-its-block": criterionMustNotExceedItsBlock,
  "criterion-should-be-able-to-miss": criterionShouldBeAbleToMiss,
  "curriculum-must-have-no-cycle": curriculumMustHaveNoCycle,
  "date-must-be-in-the-calendar": dateMustBeInTheCalendar,
  "declaration-could-be-left-out": declarationCouldBeLeftOut,
  "dimension-must-have-a-unit": dimensionMustHaveAUnit,
  "dimension-must-not-be-made-of-itself": dimensionMustNotBeMadeOfItself,
  "direction-must-be-stated": directionMustBeStated,
  "drill-must-fit-its-block": drillMustFitItsBlock,
  "effort-must-be-between-1-and-110": effortMustBeBetween1And110,
  "effort-should-build-up": effortShouldBuildUp,
  "effort-should-fit-the-shots": effortShouldFitTheShots,
  "estimate-must-be-known": estimateMustBeKnown,
  "file-must-not-use-itself": fileMustNotUseItself,
  "finding-must-be-possible": findingMustBePossible,
  "finding-must-look-at-the-baseline": findingMustLookAtTheBaseline,
  "finding-must-say-when": findingMustSayWhen,
  "finding-should-fit-the-baseline": findingShouldFitTheBaseline,
  "finding-should-say-what-to-do": findingShouldSayWhatToDo,
  "formula-must-fit-its-metric": formulaMustFitItsMetric,
  "formula-must-not-need-itself": formulaMustNotNeedItself,
  "gate-must-come-before": gateMustComeBefore,
  "gate-must-have-goals": gateMustHaveGoals,
  "goal-must-be-possible": goalMustBePossible,
  "goal-should-agree-with-the-targets": goalShouldAgreeWithTheTargets,
  "goal-should-be-able-to-miss": goalShouldBeAbleToMiss,
  "goal-should-be-possible-for-everybody": goalShouldBePossibleForEverybody,
  "goals-must-hold-together": goalsMustHoldTogether,
  "group-must-ask-for-what-it-has": groupMustAskForWhatItHas,
  "hand-must-be-stated": handMustBeStated,
  "header-must-be-read-once": headerMustBeReadOnce,
  "hits-must-not-exceed-shots": hitsMustNotExceedShots,
  "instrument-could-cover-the-goals": instrumentCouldCoverTheGoals,
  "instrument-should-state-its-coverage": instrumentShouldStateItsCoverage,
  "leave-out-must-spare-the-targets": leaveOutMustSpareTheTargets,
  "limit-should-be-within-reach": limitShouldBeWithinReach,
  "limits-should-read-one-way": limitsShouldReadOneWay,
  "load-must-leave-room": loadMustLeaveRoom,
  "load-should-stay-within-limits": loadShouldStayWithinLimits,
  "metric-must-have-one-column": metricMustHaveOneColumn,
  "movement-must-fit-its-metric": movementMustFitItsMetric,
  "name-must-be-declared-once": nameMustBeDeclaredOnce,
  "name-must-be-known": nameMustBeKnown,
  "name-must-mean-one-thing": nameMustMeanOneThing,
  "name-should-not-hide-another": nameShouldNotHideAnother,
  "needed-metric-must-be-mapped": neededMetricMustBeMapped,
  "next-could-cover-every-result": nextCouldCoverEveryResult,
  "next-could-stay-in-the-curriculum": nextCouldStayInTheCurriculum,
  "next-must-ask-for-goals": nextMustAskForGoals,
  "next-should-not-go-in-circles": nextShouldNotGoInCircles,
  "next-step-must-be-within-reach": nextStepMustBeWithinReach,
  "next-step-must-have-its-turn": nextStepMustHaveItsTurn,
  "number-must-be-in-reach": numberMustBeInReach,
  "number-must-be-whole": numberMustBeWhole,
  "number-must-not-be-zero": numberMustNotBeZero,
  "parameter-could-be-left-out": parameterCouldBeLeftOut,
  "parameter-must-be-declared-once": parameterMustBeDeclaredOnce,
  "parameter-must-fit": parameterMustFit,
  "part-must-be-stated-once": partMustBeStatedOnce,
  "plan-could-test-what-stays": planCouldTestWhatStays,
  "plan-should-have-blocks": planShouldHaveBlocks,
  "pressure-should-fit-the-altitude": pressureShouldFitTheAltitude,
  "range-should-have-two-ends": rangeShouldHaveTwoEnds,
  "reviews-should-be-in-order": reviewsShouldBeInOrder,
  "session-must-have-data": sessionMustHaveData,
  "session-must-name-its-plan": sessionMustNameItsPlan,
  "session-must-name-its-player": sessionMustNameItsPlayer,
  "share-must-be-within-reach": shareMustBeWithinReach,
  "share-must-not-exceed-100": shareMustNotExceed100,
  "shots-could-decide-more-often": shotsCouldDecideMoreOften,
  "shots-could-suit-the-player": shotsCouldSuitThePlayer,
  "shots-should-fit-the-time": shotsShouldFitTheTime,
  "spelling-must-be-stated-once": spellingMustBeStatedOnce,
  "statement-must-be-stated-once": statementMustBeStatedOnce,
  "statement-must-fit-its-metric": statementMustFitItsMetric,
  "statistic-must-have-a-usual": statisticMustHaveAUsual,
  "step-must-be-stated-once": stepMustBeStatedOnce,
  "step-must-follow-a-step": stepMustFollowAStep,
  "sum-must-be-of-like-quantities": sumMustBeOfLikeQuantities,
  "target-could-be-left-out": targetCouldBeLeftOut,
  "target-must-be-stated": targetMustBeStated,
  "targets-must-hold-together": targetsMustHoldTogether,
  "targets-should-fit-a-centred-strike": targetsShouldFitACentredStrike,
  "targets-should-hold-for-everybody": targetsShouldHoldForEverybody,
  "test-could-have-success": testCouldHaveSuccess,
  "text-should-hold-no-personal-data": textShouldHoldNoPersonalData,
  "tolerance-should-exceed-the-instrument": toleranceShouldExceedTheInstrument,
  "unit-must-be-stated": unitMustBeStated,
  "unit-must-fit": unitMustFit,
  "unit-must-have-a-worth": unitMustHaveAWorth,
  "unit-must-not-be-worth-itself": unitMustNotBeWorthItself,
  "use-could-be-left-out": useCouldBeLeftOut,
  "use-should-be-stated-once": useShouldBeStatedOnce,
  "used-file-must-exist": usedFileMustExist,
  "usual-numbers-should-fit-together": usualNumbersShouldFitTogether,
  "usual-should-be-plausible": usualShouldBePlausible,
  "usual-should-be-stated": usualShouldBeStated,
  "variant-must-be-stated-once": variantMustBeStatedOnce,
  "warm-up-should-come-first": warmUpShouldComeFirst,
  "width-must-have-no-direction": widthMustHaveNoDirection,
  "window-must-be-made-of-few": windowMustBeMadeOfFew,
  "window-must-have-a-variant": windowMustHaveAVariant,
  "window-must-leave-shots": windowMustLeaveShots,
  "window-must-not-be-made-of-itself": windowMustNotBeMadeOfItself,
  "window-should-fit-the-clubs": windowShouldFitTheClubs,
  "within-must-have-a-middle": withinMustHaveAMiddle,
} as const;
