/** Texts, and the plan model they mean. */
import { Lowering } from "../../language/lowering/document.ts";
import type { PlanModel } from "../../shared/plan-model.ts";
import { services, withChecked } from "../checks/checked-files.ts";

/** The model of a file in which no check finds an error. */
export function lowered(text: string): Promise<PlanModel> {
  return withChecked(text, {}, ({ found, document }) => {
    const errors = found.filter(({ severity }) => severity === "error");
    if (errors.length > 0) throw new Error(errors.map(({ message }) => message).join("\n"));
    return new Lowering(services, ({ path }) => path).document(document);
  });
}
