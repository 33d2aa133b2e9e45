/** Times of day and dates with a time, as tables write them: enough to tell which came first. */

const CLOCK = String.raw`(?<hours>\d{1,2}):(?<minutes>\d{2})(?::(?<seconds>\d{2})(?:[.,](?<fraction>\d+))?)?(?:\s?(?:(?<half>[ap])\.?m\.?|uhr|h))?`;
const YEAR_FIRST = String.raw`(?<year>\d{4})-(?<month>\d{1,2})-(?<day>\d{1,2})`;
const DAY_FIRST = String.raw`(?<day>\d{1,2})\.(?<month>\d{1,2})\.(?<year>\d{4})`;
const SLASHES = String.raw`(?<one>\d{1,2})\/(?<two>\d{1,2})\/(?<year>\d{4})`;
const OFFSET = String.raw`\s?(?<zone>z|[+-]\d{2}:?\d{2})?`;

const TIME_OF_DAY = new RegExp(`^${CLOCK}$`, "i");
/** One for each order of the date: not every engine lets alternatives share the names of groups. */
const MOMENTS = [YEAR_FIRST, DAY_FIRST, SLASHES].map(
  (date) => new RegExp(`^${date}(?:t|,?\\s+)${CLOCK}${OFFSET}$`, "i"),
);

/** Milliseconds since midnight of `10:42`, `10:42:07.25`, `1:05 PM`, `10:42 Uhr`; undefined where the text is no time of day. */
export function timeOfDay(text: string): number | undefined {
  const found = TIME_OF_DAY.exec(text.trim())?.groups;
  return found === undefined ? undefined : clock(found);
}

/**
 * Seconds after midnight, as the clock on the wall showed them, of a time of day or of a date with a time, zone or none;
 * undefined where the text is neither.
 */
export function clockOf(text: string): number | undefined {
  const found = TIME_OF_DAY.exec(text.trim())?.groups ?? dateAndTime(text);
  const time = found === undefined ? undefined : clock(found);
  return time === undefined ? undefined : time / 1000;
}

/**
 * Milliseconds since 1970 of a date with a time: `2026-10-12T10:42:07Z`, `12.10.2026 10:42`, `10/12/2026 1:05 PM`.
 * A time without a zone counts as universal time, since only the order is asked for. Between slashes the month comes
 * first, unless that number cannot be a month. Undefined where the text is no such date.
 */
export function moment(text: string): number | undefined {
  const found = dateAndTime(text);
  const time = found === undefined ? undefined : clock(found);
  if (found === undefined || time === undefined) return undefined;
  const one = Number(found.one);
  const [month, day] =
    found.one === undefined
      ? [Number(found.month), Number(found.day)]
      : one <= 12
        ? [one, Number(found.two)]
        : [Number(found.two), one];
  if (month < 1 || month > 12 || day < 1 || day > 31) return undefined;
  return Date.UTC(Number(found.year), month - 1, day) + time - offset(found.zone);
}

function dateAndTime(text: string): Groups | undefined {
  for (const pattern of MOMENTS) {
    const found = pattern.exec(text.trim())?.groups;
    if (found !== undefined) return found;
  }
  return undefined;
}

type Groups = Record<string, string | undefined>;

function clock(found: Groups): number | undefined {
  const hours = Number(found.hours);
  const minutes = Number(found.minutes);
  const seconds = Number(found.seconds ?? 0);
  const half = found.half?.toLowerCase();
  if (minutes > 59 || seconds > 60 || hours > (half === undefined ? 23 : 12)) return undefined;
  const hour = half === undefined ? hours : (hours % 12) + (half === "p" ? 12 : 0);
  return ((hour * 60 + minutes) * 60 + seconds) * 1000 + Number(`0.${found.fraction ?? 0}`) * 1000;
}

function offset(zone: string | undefined): number {
  if (zone === undefined || zone.toLowerCase() === "z") return 0;
  const digits = zone.replace(/\D/g, "");
  const minutes = Number(digits.slice(0, 2)) * 60 + Number(digits.slice(2));
  return (zone.startsWith("-") ? -minutes : minutes) * 60_000;
}
