import type { Declared, RequestMessage } from "./message.ts";

/** A plan as a card to print and take to the range, as it stands in the editor. Null where there is no such plan. */
export const planCard: RequestMessage<PlanCardParams, PlanCard | null> = { method: "drillwright/planCard" };

export interface PlanCardParams {
  readonly plan: Declared;
}

export interface PlanCard {
  /** An HTML page that needs nothing but itself; null where there is a problem. */
  readonly page: string | null;
  /** Why there is no card, in a sentence; null where there is one. */
  readonly problem: string | null;
}
