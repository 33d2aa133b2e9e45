/** Reports for programs, and for places that show Markdown. */
import { describe, expect, test } from "vitest";
import { reportsJunit } from "../../server/report/formats/junit.ts";
import { reportsMarkdown } from "../../server/report/formats/markdown.ts";
import { reportsSarif } from "../../server/report/formats/sarif.ts";
import type { NotScored } from "../../server/report/score-output.ts";
import { plan, score, table } from "../scoring/practice.ts";
import { secondVisit } from "./lesson.ts";
import { assertWellFormed } from "./well-formed.ts";

const BROKEN: NotScored = {
  session: "Tuesday <1>",
  location: {
    file: "sessions/a b:c.drill",
    range: { start: { line: 3, character: 0 }, end: { line: 3, character: 7 } },
  },
  reason: "data-unreadable",
  message: 'The table "x" & its \u0007 copy cannot be read.',
};

describe("Markdown", () => {
  test("a whole report", async () => {
    const text = reportsMarkdown([await secondVisit()]);
    await expect(text).toMatchFileSnapshot("expected/second-visit.md");
  });

  test("texts of others mean nothing to it", async () => {
    const visit = await secondVisit();
    const session = { ...visit.report.session, name: "*a* [b](c) <i>d</i> `e` #1\n# f" };
    const [title] = reportsMarkdown([{ ...visit, report: { ...visit.report, session } }]).split("\n");
    expect(title).toBe("# \\*a\\* \\[b\\](c) \\<i\\>d\\</i\\> \\`e\\` \\#1 \\# f, 2026-10-12: ? undecided");
  });
});

/** A report on a session whose table is not there. */
async function withoutTable() {
  const { report } = await secondVisit();
  const message = 'There is no file "data/lost 1.csv".';
  const unread = { code: "file-missing", severity: "error", line: null, column: null, text: null } as const;
  return { ...report, findings: [{ ...unread, file: "data/lost 1.csv", message }] };
}

describe("JUnit XML", () => {
  test("a whole report", async () => {
    const text = reportsJunit([(await secondVisit()).report], []);
    assertWellFormed(text);
    await expect(text).toMatchFileSnapshot("expected/second-visit.junit.xml");
  });

  test("a missed goal is a failure that tells what was expected and what was seen", () => {
    const report = score(
      plan({ shots: 2, target: "carry at least 150 yd", success: "at least 2 of 2 shots on target" }),
      table("carry\n140\n155"),
    );
    const text = reportsJunit([report], []);
    expect(text).toContain('tests="1" failures="1" errors="0" skipped="0"');
    expect(text).toContain(
      '<failure type="missed" message="expected at least 2 of 2 shots on target, observed 1 of 2 shots on target">',
    );
    expect(text).toContain("rows: shots.csv:2");
  });

  test("an open goal is skipped, with what would settle it; the numbers of the suite add up", async () => {
    const text = reportsJunit([(await secondVisit()).report], []);
    expect(text).toContain('<skipped message="undecided: about 68 more shots');
    const [, tests, failures, skipped] =
      /tests="(\d+)" failures="(\d+)" errors="0" skipped="(\d+)"/.exec(text) ?? [];
    expect(text.match(/<testcase /g)).toHaveLength(Number(tests));
    expect(text.match(/<failure /g) ?? []).toHaveLength(Number(failures));
    expect(text.match(/<skipped /g)).toHaveLength(Number(skipped));
  });

  test("a table that could not be read is an error beside the goals", async () => {
    const text = reportsJunit([await withoutTable()], []);
    assertWellFormed(text);
    expect(text).toContain('tests="9" failures="0" errors="1"');
    expect(text).toContain(
      '<testcase classname="data/lost 1.csv" name="is read">\n<error type="file-missing" message="There is no file &quot;data/lost 1.csv&quot;.">data/lost 1.csv</error>',
    );
  });

  test("a session that is not scored is an error; what XML cannot hold is replaced", () => {
    const text = reportsJunit([], [BROKEN]);
    assertWellFormed(text);
    expect(text).toContain(
      'message="The table &quot;x&quot; &amp; its \uFFFD copy cannot be read.">sessions/a b:c.drill:4<',
    );
  });
});

describe("SARIF", () => {
  const log = (text: string) => JSON.parse(text);

  test("a whole report", async () => {
    const text = reportsSarif([(await secondVisit()).report], [], "test");
    await expect(text).toMatchFileSnapshot("expected/second-visit.sarif");
  });

  test("every result names a rule of the tool and a place, and only failures have a level", async () => {
    const { version, runs } = log(reportsSarif([(await secondVisit()).report], [], "test"));
    expect([version, runs.length]).toEqual(["2.1.0", 1]);
    const [{ tool, results }] = runs;
    expect(results).toHaveLength(8);
    for (const { ruleId, ruleIndex, kind, level, message, locations } of results) {
      expect(tool.driver.rules[ruleIndex].id).toBe(ruleId);
      expect(level === "none").toBe(kind !== "fail");
      expect(message.text).not.toBe("");
      const { artifactLocation, region } = locations[0].physicalLocation;
      expect(artifactLocation.uri).toBe("plans/start-line.drill");
      expect(region.startLine).toBeGreaterThan(38);
      expect(region.startColumn).toBeGreaterThan(0);
    }
  });

  test("rows that decided are related locations", async () => {
    const [{ results }] = log(reportsSarif([(await secondVisit()).report], [], "test")).runs;
    expect(results[0].relatedLocations[0].physicalLocation).toEqual({
      artifactLocation: { uri: "data/p-07-second.csv" },
      region: { startLine: 23 },
    });
  });

  test("a session that is not scored is an error of the run, and its file a valid reference", () => {
    const [{ invocations }] = log(reportsSarif([], [BROKEN], "test")).runs;
    expect(invocations[0].executionSuccessful).toBe(false);
    const [{ level, locations }] = invocations[0].toolExecutionNotifications;
    expect(level).toBe("error");
    expect(locations[0].physicalLocation.artifactLocation.uri).toBe("sessions/a%20b%3Ac.drill");
  });

  test("so is a table that could not be read", async () => {
    const [{ invocations }] = log(reportsSarif([await withoutTable()], [], "test")).runs;
    expect(invocations[0]).toEqual({
      executionSuccessful: false,
      toolExecutionNotifications: [
        {
          level: "error",
          message: { text: 'There is no file "data/lost 1.csv".' },
          locations: [{ physicalLocation: { artifactLocation: { uri: "data/lost%201.csv" } } }],
        },
      ],
    });
  });
});
