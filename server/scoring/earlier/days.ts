/** Days as sessions state them, `2026-10-12`, without a calendar library and without a time zone. */

/** How many days the second day is after the first; undefined where one is not stated. */
export function daysBetween(first: string | null, second: string | null): number | undefined {
  const [from, to] = [dayNumber(first), dayNumber(second)];
  return from === undefined || to === undefined ? undefined : to - from;
}

/** Every session asks for the days of all others. */
const known = new Map<string, number | undefined>();

/** Days since 1970-01-01 (proleptic Gregorian calendar). */
function dayNumber(date: string | null): number | undefined {
  if (date === null) return undefined;
  if (!known.has(date)) {
    const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
    known.set(
      date,
      parts === null
        ? undefined
        : Math.round(Date.UTC(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3])) / 86_400_000),
    );
  }
  return known.get(date);
}
