import { insertNew } from "../new-files/insert-new.ts";
import { DRILL } from "../new-files/templates.ts";

export function newDrill(): Promise<void> {
  return insertNew(DRILL);
}
