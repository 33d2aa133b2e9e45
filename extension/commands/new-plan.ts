import { insertNew } from "../new-files/insert-new.ts";
import { PLAN } from "../new-files/templates.ts";

export function newPlan(): Promise<void> {
  return insertNew(PLAN);
}
