// Written from the files of language/checks by tests/generated/checks.test.ts. Do not edit.
import { check as hitsMustNotExceedShots } from "../checks/hits-must-not-exceed-shots.ts";

/** Every check by its id. */
export const CHECKS = {
  "hits-must-not-exceed-shots": hitsMustNotExceedShots,
} as const;
