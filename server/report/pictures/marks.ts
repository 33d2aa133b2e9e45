/** Marks of single shots, told apart by shape and not only by colour. */
import { html, type Markup } from "../html/markup.ts";
import { tenth } from "./scale.ts";

export type ShotMark = "hit" | "miss" | "shot";

/** A dot, a cross, or a ring for a shot that nothing is asked of. */
export function shotMark(kind: ShotMark, x: number, y: number, size = 2.6): Markup {
  if (kind === "miss") {
    const [left, right, top, bottom] = [x - size, x + size, y - size, y + size].map(tenth);
    return html`<path class="miss" d="M${left ?? 0} ${top ?? 0}L${right ?? 0} ${bottom ?? 0}M${left ?? 0} ${bottom ?? 0}L${right ?? 0} ${top ?? 0}"/>`;
  }
  return html`<circle class="${kind}" cx="${tenth(x)}" cy="${tenth(y)}" r="${size}"/>`;
}
