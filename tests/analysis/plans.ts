/** Plans beside look-alikes in which all is well. Marks `«…»` stand around what is to be reported. */
import { describe, expect, test } from "vitest";
import type { Check } from "../../language/checks/check.ts";
import { CHECKS } from "../../language/generated/checks.ts";
import { check, type Found } from "../checks/checked-files.ts";
import { underlined, unmark } from "../checks/marks.ts";

interface Case {
  /** Lines of one block, or whole declarations where the first line begins one. */
  readonly wrong: string;
  /** The check that reports every marked place. */
  readonly code: string;
  /** What each message must say, besides. */
  readonly says: readonly (string | RegExp)[];
  /** The same with other numbers or words: nothing is reported. */
  readonly right: string;
  readonly files?: Readonly<Record<string, string>>;
}

/** A plan of one block around lines; declarations are left as they are. */
export function planAround(text: string): string {
  if (/^(plan|use|drill|window|metric|player|instrument|source|session|curriculum) /m.test(text.trimStart()))
    return text;
  return `plan "Gate" {\n  for 7-iron\n  block "Start" {\n${indented(text)}\n  }\n}\n`;
}

function indented(text: string): string {
  return text
    .trim()
    .split("\n")
    .map((line) => `    ${line.trim()}`)
    .join("\n");
}

/** What is said but for how a practice is built: these plans are no whole practices. */
async function foundIn(text: string, files: Readonly<Record<string, string>>): Promise<readonly Found[]> {
  const checks = CHECKS as Readonly<Record<string, Check>>;
  return (await check(text, files)).filter(({ code }) => checks[code]?.isAboutPractice !== true);
}

/** Each case by its name, both ways. */
export function expectCases(cases: Readonly<Record<string, Case>>): void {
  describe.each(Object.entries(cases))("%s", (_, plans) => {
    test("is reported at its line, in these words", () => expectReported(plans));
    test("is not seen where there is none", () => expectSilence(plans));
  });
}

/** Exactly what is marked is reported, by this check, in these words. */
async function expectReported({ wrong, code, says, files = {} }: Case): Promise<void> {
  const { text, ranges } = unmark(planAround(wrong));
  const found = await foundIn(text, files);
  const marked = ranges.map((range) => ({ range, message: code }));
  expect(shown(text, found)).toBe(underlined(text, marked));
  for (const { message } of found) {
    expect(message).toMatch(/^[A-Z"`].*[.?]$/s);
    for (const part of says) expect(message).toMatch(part);
  }
}

async function expectSilence({ right, files = {} }: Case): Promise<void> {
  const text = planAround(right);
  const found = await foundIn(text, files);
  expect(shown(text, found, true)).toBe(text);
}

function shown(text: string, found: readonly Found[], withMessages = false): string {
  return underlined(
    text,
    found.map(({ range, code, message }) => ({
      range,
      message: withMessages ? `${code}: ${message}` : code,
    })),
  );
}
