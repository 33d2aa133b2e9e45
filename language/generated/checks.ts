// Written from the files of language/checks by tests/generated/checks.test.ts. Do not edit.
import { check as fileMustNotUseItself } from "../checks/file-must-not-use-itself.ts";
import { check as hitsMustNotExceedShots } from "../checks/hits-must-not-exceed-shots.ts";
import { check as nameMustBeDeclaredOnce } from "../checks/name-must-be-declared-once.ts";
import { check as nameMustBeKnown } from "../checks/name-must-be-known.ts";
import { check as nameMustMeanOneThing } from "../checks/name-must-mean-one-thing.ts";
import { check as nameShouldNotHideAnother } from "../checks/name-should-not-hide-another.ts";
import { check as statementMustBeStatedOnce } from "../checks/statement-must-be-stated-once.ts";
import { check as useCouldBeLeftOut } from "../checks/use-could-be-left-out.ts";
import { check as useShouldBeStatedOnce } from "../checks/use-should-be-stated-once.ts";
import { check as usedFileMustExist } from "../checks/used-file-must-exist.ts";

/** Every check by its id. */
export const CHECKS = {
  "file-must-not-use-itself": fileMustNotUseItself,
  "hits-must-not-exceed-shots": hitsMustNotExceedShots,
  "name-must-be-declared-once": nameMustBeDeclaredOnce,
  "name-must-be-known": nameMustBeKnown,
  "name-must-mean-one-thing": nameMustMeanOneThing,
  "name-should-not-hide-another": nameShouldNotHideAnother,
  "statement-must-be-stated-once": statementMustBeStatedOnce,
  "use-could-be-left-out": useCouldBeLeftOut,
  "use-should-be-stated-once": useShouldBeStatedOnce,
  "used-file-must-exist": usedFileMustExist,
} as const;
