import { defineCheck } from "./check.ts";
import { cstOf, replace } from "./edits.ts";

/** A date that no calendar has. */
export const check = defineCheck({
  on: ["SessionDate"],
  reason: "Sessions are put in order by their dates.",
  run(statement, { report }) {
    const cst = cstOf(statement, "date");
    const [year, month, day] = statement.date.split("-").map(Number);
    if (year === undefined || month === undefined || day === undefined || cst === undefined) return;
    const isMonth = month >= 1 && month <= 12;
    const days = isMonth ? daysIn(year, month) : 31;
    if (isMonth && day >= 1 && day <= days) return;
    const message = isMonth
      ? `The calendar has no ${statement.date}: that month has ${days} days. Correct the day.`
      : `The calendar has no ${statement.date}: a date is year-month-day, and a year has 12 months. Correct the month.`;
    const swapped = !isMonth && day >= 1 && day <= 12 && month <= 31 ? [day, month] : undefined;
    const last = isMonth && day > days ? [month, days] : undefined;
    const [rightMonth, rightDay] = swapped ?? last ?? [];
    const better =
      rightMonth && rightDay
        ? [statement.date.slice(0, 4), two(rightMonth), two(rightDay)].join("-")
        : undefined;
    report({
      message,
      node: statement,
      cst,
      fixes: better === undefined ? [] : [{ title: `Write ${better}`, edits: [replace(cst.range, better)] }],
    });
  },
  reporting: `
plan "Gate" {
  block "Start" {
    10 shots
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
}

session "First" {
  plan "Gate"
  player "P-1"
  date «2026-02-30»
  data "first.csv" from "Bay"
}

session "Second" {
  plan "Gate"
  player "P-1"
  date «2026-25-12»
  data "second.csv" from "Bay"
}`,
  fixed: `
plan "Gate" {
  block "Start" {
    10 shots
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
}

session "First" {
  plan "Gate"
  player "P-1"
  date 2026-02-28
  data "first.csv" from "Bay"
}

session "Second" {
  plan "Gate"
  player "P-1"
  date 2026-12-25
  data "second.csv" from "Bay"
}`,
  silent: `
plan "Gate" {
  block "Start" {
    10 shots
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
}

session "Leap day" {
  plan "Gate"
  player "P-1"
  date 2028-02-29
  data "first.csv" from "Bay"
}`,
});

function daysIn(year: number, month: number): number {
  const date = new Date(0);
  date.setUTCFullYear(year, month, 0); // the day before the first of the next month
  return date.getUTCDate();
}

function two(number: number): string {
  return String(number).padStart(2, "0");
}
