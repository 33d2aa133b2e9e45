/** Text from files, made safe to show. */

/** Control characters, and those that turn the direction of writing around. Tabs and line ends are treated apart. */
const UNPRINTABLE = /[\p{Cc}\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/gu;

/**
 * One line without what could move a terminal's cursor, colour it, or make a text look like another: line ends and
 * tabs become a space, and other such characters the replacement character.
 */
export function printable(text: string): string {
  return text.replace(/[\t\r\n]+/g, " ").replace(UNPRINTABLE, "\uFFFD");
}
