/** What a criterion asks for, in a sentence. */
import { AstUtils } from "langium";
import { sentence } from "../../criteria/criteria.ts";
import { lowerCriterion } from "../../criteria/lower.ts";
import {
  type Block,
  type Criterion,
  isBlock,
  isOnTarget,
  isPlan,
  isRequirement,
  isTarget,
} from "../../generated/tree/ast.ts";
import { baselineBefore } from "../../types/kinds.ts";
import { NO_BINDINGS } from "../../types/parameters.ts";
import { mostShots } from "../../types/shots.ts";
import { code, inWords, paragraphs, written } from "./markdown.ts";

/** Undefined while the criterion is still being typed. */
export function describeCriterion(criterion: Criterion): string | undefined {
  const block = AstUtils.getContainerOfType(criterion, isBlock);
  const requirements =
    block?.statements.filter(isRequirement).map(({ condition }) => code(written(condition))) ?? [];
  let meaning: string;
  try {
    const lowered = lowerCriterion(criterion, "", {
      fileName: (uri) => uri.toString(),
      bindings: NO_BINDINGS,
      counted: mostShots(criterion) ?? null,
      baseline: { kind: "block", block: baselineOf(block)?.name ?? "the baseline" },
    });
    meaning = sentence(lowered, requirements.length > 0);
  } catch {
    // Lowering is for whole texts: any part of the tree can be missing in one that is being typed.
    return undefined;
  }
  const targets = block?.statements.filter(isTarget).map(({ condition }) => code(written(condition))) ?? [];
  const isOnTargets = "subject" in criterion && isOnTarget(criterion.subject) && targets.length > 0;
  return paragraphs(
    meaning,
    isOnTargets ? `On target: ${inWords(targets)}.` : undefined,
    requirements.length > 0 ? `As required: ${inWords(requirements)}.` : undefined,
  );
}

/** What `the baseline` means in a block; none of a drill, which may be used behind any. */
function baselineOf(block: Block | undefined): Block | undefined {
  const plan = block && AstUtils.getContainerOfType(block, isPlan);
  return block && plan && baselineBefore(block, plan.statements.filter(isBlock));
}
