/** What windows, drills, findings, curricula and instruments hold, in a few lines, for hovers. */

import { textLiteral } from "../../../shared/text-literal.ts";
import {
  type Curriculum,
  type Drill,
  type Finding,
  type Instrument,
  isCheckFor,
  isCue,
  isCurriculumStep,
  isIntent,
  isRequirement,
  isSuspect,
  isTarget,
  isTryDrill,
  isUncertainty,
  isWhen,
  type Parameter,
  type Window,
} from "../../generated/tree/ast.ts";
import { code, declared, list, paragraphs, plain, written } from "./markdown.ts";

export function describeWindow(window: Window, documentation: string | undefined): string {
  return paragraphs(
    declared(`window ${textLiteral(window.name)}`),
    documentation,
    list(window.variants.map((variant) => code(written(variant)))),
  );
}

export function describeDrill(drill: Drill, documentation: string | undefined): string {
  const { statements } = drill;
  const parameters = drill.parameters.length === 0 ? "" : ` (${drill.parameters.map(written).join(", ")})`;
  const kind = drill.kind === undefined ? "" : ` ${drill.kind}`;
  return paragraphs(
    declared(`drill ${textLiteral(drill.name)}${parameters}${kind}`),
    documentation,
    list([
      ...statements.filter(isCue).map(({ text }) => `cue: ${plain(text)}`),
      ...statements.filter(isTarget).map((line) => code(written(line))),
      ...statements.filter(isRequirement).map((line) => code(written(line))),
    ]),
  );
}

export function describeParameter(parameter: Parameter, documentation: string | undefined): string {
  return paragraphs(declared(`parameter ${written(parameter)}`), documentation);
}

export function describeFinding(finding: Finding, documentation: string | undefined): string {
  const { statements } = finding;
  return paragraphs(
    declared(`finding ${textLiteral(finding.name)}`),
    documentation,
    list([
      ...statements.filter(isWhen).map((line) => code(written(line))),
      ...statements.filter(isSuspect).map(({ text }) => `may come from: ${plain(text)}`),
      ...statements.filter(isCheckFor).map(({ text }) => `look at: ${plain(text)}`),
      ...statements.filter(isTryDrill).map((line) => code(written(line))),
    ]),
  );
}

export function describeCurriculum(curriculum: Curriculum, documentation: string | undefined): string {
  const { statements } = curriculum;
  return paragraphs(
    declared(`curriculum ${textLiteral(curriculum.name)}`),
    documentation,
    ...statements.filter(isIntent).map(({ text }) => plain(text)),
    list(statements.filter(isCurriculumStep).map(({ plan }) => code(plan?.$refText ?? "?"))),
  );
}

export function describeInstrument(instrument: Instrument, documentation: string | undefined): string {
  return paragraphs(
    declared(`instrument ${textLiteral(instrument.name)}`),
    documentation,
    list(instrument.statements.filter(isUncertainty).map((line) => code(written(line)))),
  );
}
