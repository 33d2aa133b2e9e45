/** Findings: from the tree to the model. */
import type { AstNode } from "langium";
import type { Finding as FindingModel } from "../../shared/plan-model.ts";
import { lowerCriterion } from "../criteria/lower.ts";
import {
  type Finding,
  isCheckFor,
  isForClubs,
  isSuspect,
  isTryDrill,
  isWhen,
} from "../generated/tree/ast.ts";
import { NO_BINDINGS } from "../types/parameters.ts";
import { lowerDrillUse } from "./drill-use.ts";
import { type FileName, placeOf } from "./place.ts";
import { resolved } from "./unresolved.ts";

export function lowerFinding(
  finding: Finding,
  fileName: FileName,
  documentation: (node: AstNode) => string | undefined,
): FindingModel {
  const { statements } = finding;
  // How many shots a baseline has is not known: a count without `of` is over all of them.
  const context = { fileName, bindings: NO_BINDINGS, counted: null, baseline: undefined };
  return {
    name: finding.name,
    documentation: documentation(finding) ?? null,
    clubs: statements.filter(isForClubs).flatMap(({ clubs }) => clubs.map((club) => resolved(club).name)),
    when: statements
      .filter(isWhen)
      .map(({ criterion }, index) => lowerCriterion(criterion, `${finding.name}/${index + 1}`, context)),
    suspects: statements.filter(isSuspect).map(({ text }) => text),
    checks: statements.filter(isCheckFor).map(({ text }) => text),
    tries: statements.filter(isTryDrill).map(({ use }) => lowerDrillUse(use, fileName)),
    location: placeOf(finding, fileName),
  };
}
