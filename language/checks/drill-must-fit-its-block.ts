import { AstUtils } from "langium";
import { once } from "../../shared/once.ts";
import { plural } from "../../shared/plural.ts";
import {
  type Argument,
  type Count,
  type CountCriterion,
  type Drill,
  type DrillUse,
  isCountCriterion,
  isLoadCriterion,
  isRunCriterion,
  isSuccess,
  type LoadCriterion,
  type RunCriterion,
} from "../generated/tree/ast.ts";
import { type Bindings, bindingsIn, NO_BINDINGS, numberOf } from "../types/parameters.ts";
import { type AskedShots, shotsOf } from "../types/shots.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, replace } from "./edits.ts";
import { asksForFullEffort, isEffortKnown, isRead, swingsOf } from "./practice.ts";
import { code, quoted, shots } from "./wording.ts";

/** Goals of a drill that its block, or what the block says of its parameters, leaves too few shots for. */
export const check = defineCheck({
  on: ["Block"],
  reason: "A drill can be right by itself, and ask for twelve hits where a block has it done ten times.",
  run(block, context) {
    const { report } = context;
    const { use } = block;
    const drill = use?.drill?.ref;
    if (use === undefined || drill === undefined) return;
    const here = shotsOf(block);
    if (here === undefined) return;
    if (!isRead(drill, context) || block.statements.some(isSuccess)) return;
    const bindings = bindingsIn(use);
    for (const criterion of goalsOf(drill)) {
      const excess = excessOf(criterion, here, bindings);
      if (excess === undefined || excessOf(criterion, shotsOf(drill), NO_BINDINGS) !== undefined) continue;
      const argument = argumentFor(excess.count, use);
      const goal = code((criterion.$cstNode?.text ?? "").replace(/\s+/g, " "));
      report({
        message: `${quoted(drill.name)} asks for ${goal}, which here is ${excess.what}. Change ${argument === undefined ? `${excess.by}, or give the block a success of its own` : "one of the two"}.`,
        node: argument?.value ?? use,
        ...(argument === undefined ? { property: "drill" } : {}),
        fixes:
          argument?.value === undefined
            ? []
            : [
                {
                  title: `Make it ${excess.most}`,
                  edits: [replace(rangeOf(argument.value), String(excess.most))],
                },
              ],
      });
      return;
    }
  },
  reporting: `
drill "Line" (hits: ratio = 8, run: ratio = 3) {
  10 shots
  target start-direction within ±3°
  success {
    at least hits of 10 shots on target
    run in a row on target
  }
}

drill "Speed" (allowed: ratio = 12, effort-asked: ratio = 95) {
  10 shots at effort-asked % effort
  success {
    at most allowed swings
    at least 8 full-effort swings
  }
}

plan "Gate" {
  block "Start" from "Line" with hits = «12»
  block "Again" from "Line" with run = «11»
  block "Short" from «"Line"» {
    8 shots
  }
  block "Fast" from "Speed" with allowed = «9»
  block "Slow" from «"Speed"» with effort-asked = 80
}`,
  fixed: `
drill "Line" (hits: ratio = 8, run: ratio = 3) {
  10 shots
  target start-direction within ±3°
  success {
    at least hits of 10 shots on target
    run in a row on target
  }
}

drill "Speed" (allowed: ratio = 12, effort-asked: ratio = 95) {
  10 shots at effort-asked % effort
  success {
    at most allowed swings
    at least 8 full-effort swings
  }
}

plan "Gate" {
  block "Start" from "Line" with hits = 10
  block "Again" from "Line" with run = 10
  block "Short" from "Line" {
    8 shots
  }
  block "Fast" from "Speed" with allowed = 10
  block "Slow" from "Speed" with effort-asked = 80
}`,
  silent: `
drill "Line" (hits: ratio = 8) {
  10 shots
  target start-direction within ±3°
  success at least hits shots on target
}

plan "Gate" {
  block "Start" from "Line" with hits = 10
  block "Long" from "Line" with hits = 12 {
    16 shots
  }
  block "Other" from "Line" {
    4 shots
    success 3 in a row on target
  }
}`,
});

type Counting = CountCriterion | RunCriterion | LoadCriterion;

/** The goals of a drill that count shots or swings. Looked for once for each reading of the drill. */
const goalsOf = once((drill: Drill): readonly Counting[] =>
  drill.statements
    .filter(isSuccess)
    .flatMap((success) => AstUtils.streamAst(success).toArray())
    .filter((node) => isCountCriterion(node) || isRunCriterion(node) || isLoadCriterion(node)),
);

/** What a goal asks for that there are not shots enough for, and the most that there are; of swings allowed the fewest. */
interface Excess {
  readonly what: string;
  /** What the block could state otherwise. */
  readonly by: string;
  readonly most: number;
  /** The number that asks for it; undefined where no number would do. */
  readonly count: Count | undefined;
}

const SHOTS = "the number of shots";

function excessOf(
  criterion: Counting,
  block: AskedShots | undefined,
  bindings: Bindings,
): Excess | undefined {
  if (block === undefined) return undefined;
  const { asked, open } = block;
  if (isRunCriterion(criterion)) {
    const length = numberOf(criterion.length, bindings);
    if (length === undefined || length <= asked || open) return undefined;
    return { by: SHOTS, what: `a run of ${length} in ${shots(asked)}`, most: asked, count: criterion.length };
  }
  if (isLoadCriterion(criterion)) return excessOfSwings(criterion, block, bindings);
  const outOf = numberOf(criterion.outOf, bindings);
  const hits = numberOf(criterion.count, bindings);
  if (outOf !== undefined && criterion.outOf !== undefined && outOf > asked && !open) {
    return { by: SHOTS, what: `about ${outOf} of ${shots(asked)}`, most: asked, count: criterion.outOf };
  }
  const most = outOf ?? (open ? Number.POSITIVE_INFINITY : asked);
  if (hits === undefined || hits <= most) return undefined;
  return { by: SHOTS, what: `${hits} hits of ${shots(most)}`, most, count: criterion.count };
}

/** More swings than are allowed, or fewer than are wanted, when every shot is hit that is asked for. */
function excessOfSwings(
  { bound, count, fullEffort, session }: LoadCriterion,
  { block, open }: AskedShots,
  bindings: Bindings,
): Excess | undefined {
  const wanted = numberOf(count, bindings);
  const isKnown = !session && (!fullEffort || isEffortKnown(block));
  if (wanted === undefined || !isKnown) return undefined;
  const swings = swingsOf(block, fullEffort ? asksForFullEffort : undefined);
  if (bound === "most" ? swings <= wanted : open || swings >= wanted) return undefined;
  const what = plural(swings, fullEffort ? "full-effort swing" : "swing");
  const by = fullEffort ? `${SHOTS} or their effort` : SHOTS;
  return { what, by, most: swings, count: swings === 0 ? undefined : count };
}

/** The argument that a count is given by the block. */
function argumentFor(count: Count | undefined, { arguments: given }: DrillUse): Argument | undefined {
  const wanted = count?.parameter?.ref;
  return wanted === undefined ? undefined : given.find((argument) => argument.parameter?.ref === wanted);
}
