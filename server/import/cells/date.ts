/** Dates as tables write them. */
import { remembered } from "../spelling.ts";

/** The date a text means where the day stands before the month, and where the month does; `2026-10-12`. */
export interface DateReading {
  readonly dayFirst: string | undefined;
  readonly monthFirst: string | undefined;
}

const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const MONTH = String.raw`(?<name>jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\.?`;
/** A time of day that may follow. */
const TIME = String.raw`(?:(?:t|,?\s+)\d{1,2}[:.h]\d{2}.*)?$`;

const YEAR_FIRST = new RegExp(
  String.raw`^(?<year>\d{4})(?<mark>[-/.])(?<month>\d{1,2})\k<mark>(?<day>\d{1,2})${TIME}`,
  "i",
);
const DIGITS = new RegExp(String.raw`^(?<year>(?:19|20)\d{2})(?<month>\d{2})(?<day>\d{2})${TIME}`, "i");
const NUMBERS = new RegExp(
  String.raw`^(?<one>\d{1,2})(?<mark>[-/.])(?<two>\d{1,2})\k<mark>(?<year>\d{4}|\d{2})${TIME}`,
  "i",
);
const WEEKDAY = String.raw`(?:(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*\.?,?\s+)?`;
const DAY_MONTH = new RegExp(
  String.raw`^${WEEKDAY}(?<day>\d{1,2})(?:st|nd|rd|th)?[-\s.]*${MONTH}[-\s,]*(?<year>\d{4}|\d{2})${TIME}`,
  "i",
);
const MONTH_DAY = new RegExp(
  String.raw`^${WEEKDAY}${MONTH}[-\s]*(?<day>\d{1,2})(?:st|nd|rd|th)?[-\s,]+(?<year>\d{4}|\d{2})${TIME}`,
  "i",
);

/**
 * Reads a date, which a time of day may follow: `2026-10-12`, `12.10.2026`, `12/10/26`, `12 Oct 2026`, `Oct 12, 2026`.
 * Between points the day stands first unless `order` says otherwise; between slashes and hyphens either may, as far as
 * there is such a date. A year of two digits is one of this century. Undefined where the text is no date.
 */
export function parseDate(text: string, order: DateOrder | null = null): DateReading | undefined {
  return text.length > LONGEST_REMEMBERED ? read(text, order) : READ[order ?? "either"](text);
}

type DateOrder = "day-month-year" | "month-day-year";

/** A day without a time stands on many rows. The engine has a longer text hold on to all that was read with it. */
const LONGEST_REMEMBERED = 12;

const READ = {
  "day-month-year": remembered((text) => read(text, "day-month-year")),
  "month-day-year": remembered((text) => read(text, "month-day-year")),
  either: remembered((text) => read(text, null)),
};

function read(text: string, order: DateOrder | null): DateReading | undefined {
  const trimmed = text.trim();
  const written = (YEAR_FIRST.exec(trimmed) ?? DIGITS.exec(trimmed))?.groups;
  if (written !== undefined) return same(date(written.year, Number(written.month), written.day));
  const named = (DAY_MONTH.exec(trimmed) ?? MONTH_DAY.exec(trimmed))?.groups;
  if (named !== undefined) {
    const month = MONTHS.indexOf((named.name ?? "").toLowerCase()) + 1;
    return same(date(named.year, month, named.day));
  }
  const numbers = NUMBERS.exec(trimmed)?.groups;
  if (numbers === undefined) return undefined;
  const { one, two, year, mark } = numbers;
  const dayFirst = order === "month-day-year" ? undefined : date(year, Number(two), one);
  const monthFirst =
    order === "day-month-year" || (order === null && mark === ".") ? undefined : date(year, Number(one), two);
  if (dayFirst === undefined && monthFirst === undefined) return undefined;
  return order === null && mark !== "." ? { dayFirst, monthFirst } : same(dayFirst ?? monthFirst);
}

function same(date: string | undefined): DateReading | undefined {
  return date === undefined ? undefined : { dayFirst: date, monthFirst: date };
}

function date(year = "", month: number, day = ""): string | undefined {
  const whole = Number(year.length === 2 ? `20${year}` : year);
  if (month < 1 || month > 12 || Number(day) < 1 || Number(day) > daysIn(month, whole)) return undefined;
  return `${whole}-${String(month).padStart(2, "0")}-${day.padStart(2, "0")}`;
}

function daysIn(month: number, year: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}
