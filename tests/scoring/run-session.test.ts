import { describe, expect, test } from "vitest";
import type { OtherSession } from "../../server/scoring/earlier/other-sessions.ts";
import { planContent } from "../../server/scoring/plan-content.ts";
import { type DataFiles, runSession } from "../../server/scoring/run-session.ts";
import type { ScoringInput } from "../../shared/plan-model.ts";
import { somewhere } from "../criteria/words.ts";
import { column, metricColumn, source } from "../support/scoring-input.ts";
import { otherSession } from "./other-sessions.ts";
import { input, plan, type Stated } from "./practice.ts";

const bay = source([column("Carry", metricColumn("carry", "yd"))], { name: "Bay" });

function scoring(success: string, stated: Stated = {}): ScoringInput {
  const data = [{ path: "shots.csv", source: "Bay", location: somewhere }];
  const made = input(plan({ name: "Gate", shots: 2, success }), {
    ...stated,
    session: { data, ...stated.session },
  });
  return { ...made, sources: new Map([["Bay", bay]]) };
}

const dataFiles: DataFiles = {
  locate: (path) => path,
  read: async () => Uint8Array.from([..."Carry\n150\n152\n"].map((letter) => letter.charCodeAt(0))),
  sha256: (content) => `sha256 of ${content.length} bytes`,
};

/** A session that notes when its tables are read. */
function watched(name: string, date: string | null, notes: string[], player = "P-07"): OtherSession {
  const { session, read } = otherSession(name, date, 2, { player });
  return {
    ...session,
    read: async () => {
      notes.push(name);
      return read;
    },
  };
}

async function readFor(success: string, stated: Stated = {}): Promise<string[]> {
  const notes: string[] = [];
  const others = [
    watched("Long ago", "2026-08-01", notes),
    watched("Before", "2026-09-20", notes),
    watched("Two weeks ago", "2026-09-28", notes),
    watched("Thirteen days ago", "2026-09-29", notes),
    watched("Tomorrow", "2026-10-13", notes),
    watched("Undated", null, notes),
    watched("Another's", "2026-10-12", notes, "P-12"),
  ];
  await runSession(scoring(success, stated), dataFiles, { version: "1", others });
  return notes;
}

describe("other sessions", () => {
  const plain = "average carry at least 100 yd";

  test("are read where they are of the player and of the two weeks that end with the day", async () => {
    expect(await readFor(plain)).toEqual(["Thirteen days ago"]);
    expect(await readFor(plain, { session: { date: null } })).toEqual([]);
  });

  test("are read where a goal is held against them, in a group as well", async () => {
    const change = 'carry gains 1 yd against session "Long ago"';
    expect(await readFor(change)).toEqual(["Long ago", "Thirteen days ago"]);
    expect(await readFor(`any of { ${plain} / ${change} }`)).toEqual(["Long ago", "Thirteen days ago"]);
    const last = "carry gains 1 yd against the last session";
    expect(await readFor(last, { session: { date: "2026-09-21" } })).toContain("Before");
  });
});

describe("the report", () => {
  test("is the same to the last byte for the same input", async () => {
    const text = async () => {
      const others = [otherSession("Monday", "2026-10-05", 4), otherSession("Tuesday", "2026-10-06", 2)];
      const around = {
        version: "1",
        others: others.map(({ session, read }) => ({ ...session, read: async () => read })),
      };
      const { report } = await runSession(
        scoring("carry gains 1 yd against the last session"),
        dataFiles,
        around,
      );
      return JSON.stringify(report);
    };
    expect(await text()).toBe(await text());
  });

  test("names the plan by what it says, not by where it stands", async () => {
    const planOf = async (success: string, version = "1") => {
      const { report } = await runSession(
        scoring(success),
        { ...dataFiles, sha256: (bytes) => String.fromCharCode(...bytes) },
        { version },
      );
      return report.plan.sha256;
    };
    const content = await planOf("average carry at least 100 yd");
    expect(content).toBe(planContent(scoring("average carry at least 100 yd").plan));
    expect(await planOf("average carry at least 101 yd")).not.toBe(content);
    const { plan } = scoring("average carry at least 100 yd");
    const moved = { ...plan, location: { ...plan.location, file: "elsewhere.drill" } };
    expect(planContent(moved)).toBe(content);
    expect(content).not.toContain("plan.drill");
  });

  test("names the plan's revision where somebody knows it", async () => {
    const revisionOf = async (file: string) => `revision of ${file}`;
    const made = await runSession(scoring("average carry at least 100 yd"), dataFiles, {
      version: "1",
      revisionOf,
    });
    expect(made.report.plan.revision).toBe("revision of plan.drill");
    const without = await runSession(scoring("average carry at least 100 yd"), dataFiles, { version: "1" });
    expect(without.report.plan.revision).toBe(null);
  });
});

test("a plan's content keeps numbers that JSON cannot hold apart", () => {
  const { plan } = scoring("at least 1 of 2 shots with carry at least 100 yd");
  const endless = structuredClone(plan);
  const [criterion] = endless.blocks[0]?.success ?? [];
  if (criterion?.kind === "count") criterion.outOf = Number.POSITIVE_INFINITY;
  expect(planContent(endless)).toContain('"outOf":"Infinity"');
});
