/** A picture with its words: what it shows for those who cannot see it, and what to look for. */
import { html, type Markup } from "../html/markup.ts";

export interface Drawing {
  readonly width: number;
  readonly height: number;
  /** What the picture tells, in a sentence or two: it stands in for the picture. */
  readonly alternative: string;
  readonly body: readonly Markup[];
  readonly caption: string;
}

/** Pictures less wide than this stand beside each other. */
const WIDE = 300;

export function figure({ width, height, alternative, body, caption }: Drawing): Markup {
  return html`<figure${width < WIDE ? html` class="square"` : null}><svg role="img" aria-label="${alternative}" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}">${body}</svg><figcaption>${caption}</figcaption></figure>`;
}
