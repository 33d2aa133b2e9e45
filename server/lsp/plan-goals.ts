/** The goals of a plan, for editors that list them. */
import { isPlan } from "../../language/generated/tree/ast.ts";
import type { Lowering } from "../../language/lowering/document.ts";
import { IncompleteError } from "../../language/lowering/unresolved.ts";
import type { PlanGoals } from "../../shared/protocol/plan-goals.ts";
import type { File } from "./declared.ts";

export function planGoalsOf(file: File, name: string, lowering: Lowering): PlanGoals | null {
  if (!file.parseResult.value.declarations.some((each) => isPlan(each) && each.name === name)) return null;
  try {
    const plan = lowering.document(file).plans.find((each) => each.name === name);
    const blocks = (plan?.blocks ?? [])
      .filter(({ success }) => success.length > 0)
      .map(({ name, location, success }) => ({
        name,
        location,
        goals: success.map(({ id, text, location }) => ({ id, text, location })),
      }));
    return { blocks, problem: null };
  } catch (error) {
    if (!(error instanceof IncompleteError)) throw error;
    return { blocks: [], problem: "The goals are known when the mistakes of the file are mended." };
  }
}
