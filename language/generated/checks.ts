// Written from the files of language/checks by tests/generated/checks.test.ts. Do not edit.
import { check as directionMustBeStated } from "../checks/direction-must-be-stated.ts";
import { check as fileMustNotUseItself } from "../checks/file-must-not-use-itself.ts";
import { check as formulaMustFitItsMetric } from "../checks/formula-must-fit-its-metric.ts";
import { check as hitsMustNotExceedShots } from "../checks/hits-must-not-exceed-shots.ts";
import { check as limitsShouldReadOneWay } from "../checks/limits-should-read-one-way.ts";
import { check as nameMustBeDeclaredOnce } from "../checks/name-must-be-declared-once.ts";
import { check as nameMustBeKnown } from "../checks/name-must-be-known.ts";
import { check as nameMustMeanOneThing } from "../checks/name-must-mean-one-thing.ts";
import { check as nameShouldNotHideAnother } from "../checks/name-should-not-hide-another.ts";
import { check as rangeShouldHaveTwoEnds } from "../checks/range-should-have-two-ends.ts";
import { check as statementMustBeStatedOnce } from "../checks/statement-must-be-stated-once.ts";
import { check as sumMustBeOfLikeQuantities } from "../checks/sum-must-be-of-like-quantities.ts";
import { check as unitMustBeStated } from "../checks/unit-must-be-stated.ts";
import { check as unitMustFit } from "../checks/unit-must-fit.ts";
import { check as useCouldBeLeftOut } from "../checks/use-could-be-left-out.ts";
import { check as useShouldBeStatedOnce } from "../checks/use-should-be-stated-once.ts";
import { check as usedFileMustExist } from "../checks/used-file-must-exist.ts";
import { check as widthMustHaveNoDirection } from "../checks/width-must-have-no-direction.ts";
import { check as withinMustHaveAMiddle } from "../checks/within-must-have-a-middle.ts";

/** Every check by its id. */
export const CHECKS = {
  "direction-must-be-stated": directionMustBeStated,
  "file-must-not-use-itself": fileMustNotUseItself,
  "formula-must-fit-its-metric": formulaMustFitItsMetric,
  "hits-must-not-exceed-shots": hitsMustNotExceedShots,
  "limits-should-read-one-way": limitsShouldReadOneWay,
  "name-must-be-declared-once": nameMustBeDeclaredOnce,
  "name-must-be-known": nameMustBeKnown,
  "name-must-mean-one-thing": nameMustMeanOneThing,
  "name-should-not-hide-another": nameShouldNotHideAnother,
  "range-should-have-two-ends": rangeShouldHaveTwoEnds,
  "statement-must-be-stated-once": statementMustBeStatedOnce,
  "sum-must-be-of-like-quantities": sumMustBeOfLikeQuantities,
  "unit-must-be-stated": unitMustBeStated,
  "unit-must-fit": unitMustFit,
  "use-could-be-left-out": useCouldBeLeftOut,
  "use-should-be-stated-once": useShouldBeStatedOnce,
  "used-file-must-exist": usedFileMustExist,
  "width-must-have-no-direction": widthMustHaveNoDirection,
  "within-must-have-a-middle": withinMustHaveAMiddle,
} as const;
