import type { Location, Position } from "../plan-model.ts";

/**
 * The one argument of the editor's command `drillwright.showRows`, which a code lens may carry: opens the rows of the
 * data that decided a verdict, beside the line that set the goal.
 */
export interface ShowRows {
  /** URI of the plan's document, and the place from which the rows are looked at. */
  readonly file: string;
  readonly position: Position;
  readonly rows: readonly Location[];
}
