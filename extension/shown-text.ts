/**
 * Names and texts that people wrote, as labels show them. A name may hold anything: what would draw an icon, reverse the
 * line, or fill the window is shown as the text it is.
 */

/** The longest name that leaves room for what stands beside it. */
const LONGEST = 80;

/** Characters that are not seen but move others: of control, and of direction. */
const UNSEEN = /[\p{Cc}\p{Zl}\p{Zp}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]+/gu;
/** Letters that are written from right to left. */
const RIGHT_TO_LEFT = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/;

/** A name on one line, cut where it is very long, never within a character. Its direction stays its own. */
export function shown(name: string, longest = LONGEST): string {
  const characters = [...name.replace(UNSEEN, " ")];
  const text =
    characters.length <= longest
      ? characters.join("")
      : `${characters
          .slice(0, longest - 1)
          .join("")
          .trimEnd()}…`;
  return RIGHT_TO_LEFT.test(text) ? `\u2068${text}\u2069` : text;
}

/** The same for places in which `$(name)` draws an icon. */
export function shownBesideIcons(name: string, longest = LONGEST): string {
  return withoutIcons(shown(name, longest));
}

/** A text in which nothing draws an icon. */
export function withoutIcons(text: string): string {
  return text.replace(/\$\([A-Za-z0-9-]+(?:~[A-Za-z]+)?\)/g, "\\$&");
}
