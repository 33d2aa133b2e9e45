/** Dates as tables write them. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseDate } from "../../server/import/cells/date.ts";

describe("every day of the calendar, and no other, is a date", () => {
  const day = fc.record({
    year: fc.oneof(fc.integer({ min: 1900, max: 2199 }), fc.constantFrom(1900, 2000, 2100, 2104)),
    month: fc.oneof(fc.integer({ min: 0, max: 13 }), fc.constant(2)),
    day: fc.oneof(fc.integer({ min: 0, max: 32 }), fc.integer({ min: 28, max: 31 })),
  });
  const two = (number: number) => String(number).padStart(2, "0");

  test("however it is written", () => {
    fc.assert(
      fc.property(day, ({ year, month, day }) => {
        // What is no day of the calendar is moved on to one.
        const moved = new Date(Date.UTC(year, month - 1, day)).toISOString().slice(0, 10);
        const asked = `${year}-${two(month)}-${two(day)}`;
        const isDay = moved === asked;
        const read = isDay ? { dayFirst: asked, monthFirst: asked } : undefined;
        expect(parseDate(asked)).toEqual(read);
        expect(parseDate(`${year}/${month}/${day} 10:42`)).toEqual(read);
        expect(parseDate(`${day}.${month}.${year}`)).toEqual(read);
        expect(parseDate(`${two(day)}/${two(month)}/${year}`, "day-month-year")).toEqual(read);
        expect(parseDate(`${two(month)}/${two(day)}/${year}`, "month-day-year")).toEqual(read);
        if (year < 2100) expect(parseDate(`${year}${two(month)}${two(day)}`)).toEqual(read);
      }),
      { examples: ["1900-02-29", "2000-02-29", "2023-02-29", "2024-02-29", "2024-04-31"].map(asDay) },
    );
  });

  function asDay(text: string): [{ year: number; month: number; day: number }] {
    const [year = 0, month = 0, day = 0] = text.split("-").map(Number);
    return [{ year, month, day }];
  }
});

test.each([
  ["10/12/2026", { dayFirst: "2026-12-10", monthFirst: "2026-10-12" }],
  ["10-12-26", { dayFirst: "2026-12-10", monthFirst: "2026-10-12" }],
  ["13/10/2026", { dayFirst: "2026-10-13", monthFirst: undefined }],
  ["10/13/2026", { dayFirst: undefined, monthFirst: "2026-10-13" }],
  ["13/13/2026", undefined],
  ["12 Oct 2026", { dayFirst: "2026-10-12", monthFirst: "2026-10-12" }],
  ["Monday, 12th October 26, 9:30", { dayFirst: "2026-10-12", monthFirst: "2026-10-12" }],
  ["Jan 2, 2026", { dayFirst: "2026-01-02", monthFirst: "2026-01-02" }],
  ["31 Dec. 2026", { dayFirst: "2026-12-31", monthFirst: "2026-12-31" }],
  ["31 Nov 2026", undefined],
  ["12 Okt 2026", undefined],
])("%s", (text, read) => {
  expect(parseDate(text)).toEqual(read);
});
