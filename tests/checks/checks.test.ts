import { describe, expect, test } from "vitest";
import { type Check, severityOf } from "../../language/checks/check.ts";
import { CHECKS } from "../../language/generated/checks.ts";
import { check as checkedByAll, edited, type Found, withChecked } from "./checked-files.ts";
import { underlined, unmark } from "./marks.ts";

const CHECK_BY_ID = CHECKS as Readonly<Record<string, Check>>;

describe.each(Object.entries(CHECK_BY_ID))("%s", (id, check) => {
  const { files = {}, reporting, fixed, silent, reason } = check;
  const isHeldAgainst = ({ code }: Found) => code === id || CHECK_BY_ID[code]?.isAboutPractice !== true;
  const checked = async (text: string, others: Check["files"]) =>
    (await checkedByAll(text, others)).filter(isHeldAgainst);
  const { text, ranges } = unmark(reporting);

  test("has a severity in its name, and a reason", () => {
    expect(["error", "warning", "hint"]).toContain(severityOf(id));
    expect(reason).toMatch(/^[A-Z].*[.?]$/s);
    expect(ranges).not.toEqual([]);
  });

  test("reports what is marked in its example, and nothing else is reported", async () => {
    await withChecked(text, files, ({ found }, others) => {
      const marked = ranges.map((range) => ({ range, message: id }));
      expect(
        underlined(
          text,
          found.filter(isHeldAgainst).map(({ range, code }) => ({ range, message: code })),
        ),
      ).toBe(underlined(text, marked));
      for (const { found: elsewhere } of others.values()) expect(elsewhere).toEqual([]);
    });
  });

  test("says what is wrong in a sentence", async () => {
    for (const { message } of await checked(text, files)) expect(message).toMatch(/^\S.*[.?]$/s);
  });

  test("is silent where all is well", async () => {
    expect(shown(silent, await checked(silent, files))).toBe(silent);
  });

  test("puts it right with the first fix of each finding", async () => {
    const found = await checked(text, files);
    const edits = found.flatMap(({ fixes }) => fixes[0]?.edits ?? []);
    expect(edits.length > 0 ? edited(text, edits) : undefined).toBe(fixed);
    if (fixed === undefined) return;
    const unfixed = found.filter(({ fixes }) => fixes.length === 0).map(wording);
    const left = (await checked(fixed, files)).map(wording);
    expect(left.sort()).toEqual(unfixed.sort());
  });

  test("loses a finding by each of its fixes, and gains none", async () => {
    const found = await checked(text, files);
    for (const [index, finding] of found.entries()) {
      const others = found.filter((_, at) => at !== index).map(wording);
      for (const fix of finding.fixes) {
        const after = edited(text, fix.edits);
        const left = (await checked(after, files)).map(wording);
        expect(left.sort(), `${fix.title}:\n${after}`).toEqual([...others].sort());
      }
    }
  });
});

function shown(text: string, found: readonly Found[]): string {
  return underlined(
    text,
    found.map(({ range, code, message }) => ({ range, message: `${code}: ${message}` })),
  );
}

/** What a finding says, wherever the lines it speaks of have moved. */
function wording({ code, message }: Found): string {
  return `${code}: ${message.replace(/line \d+/g, "line …")}`;
}
