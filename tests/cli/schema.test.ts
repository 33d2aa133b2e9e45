/** `drillwright schema`: what other commands print keeps to the schemas that are printed. */
import { describe, expect, test } from "vitest";
import * as z from "zod";
import { CheckReport } from "../../server/report/check-report.ts";
import { PlanDiff } from "../../server/report/diff/plan-diff.ts";
import { FlightEstimates } from "../../server/report/flight-estimates.ts";
import { Cohort } from "../../server/report/overview/cohort.ts";
import { Trend } from "../../server/report/overview/trend.ts";
import { ScoreOutput } from "../../server/report/score-output.ts";
import { PlanModel } from "../../shared/plan-model.ts";
import { ScoreReport } from "../../shared/score-report.ts";
import { drillwright } from "./command-line.ts";
import { PLAN, POOR, practice, session } from "./practice.ts";

const LAUNCH = [
  ...["--ball-speed", "50 m/s", "--launch-angle", "16°", "--spin-rate", "6500 rpm"],
  ...["--club-path", "2° right", "--face-angle", "1° right", "--dynamic-loft", "24°", "--format", "json"],
];

const FILES = {
  "data/launches.csv": "ball-speed in m/s,launch-angle in °,spin-rate in rpm\n70,12,2700\n12,40,9000\n,9,9\n",
  ...practice(POOR),
  "plans/other.drill": PLAN.replace("150 yd", "155 yd"),
  "plans/wrong.drill": PLAN.replace("3 of 5", "6 of 5"),
  "sessions/tuesday.drill": session("Tuesday", "../data/monday.csv").replace("irons", "wrong"),
  "sessions/wednesday.drill": session("Wednesday", "../data/nothing.csv"),
};

const printed = async (...words: string[]) => JSON.parse((await drillwright(FILES, words)).stdout);

/** The reports a `score` prints are documents of their own. */
const firstReport = async () => (await printed("score", "--format", "json")).reports[0];

const DOCUMENTS = [
  { name: "plan-model", schema: PlanModel, document: () => printed("compile", "sessions/monday.drill") },
  { name: "check-report", schema: CheckReport, document: () => printed("check", "--format", "json") },
  { name: "score-output", schema: ScoreOutput, document: () => printed("score", "--format", "json") },
  {
    name: "plan-diff",
    schema: PlanDiff,
    document: () => printed("diff", "plans/irons.drill", "plans/other.drill", "--format", "json"),
  },
  { name: "trend", schema: Trend, document: () => printed("trend", "--format", "json") },
  { name: "cohort", schema: Cohort, document: () => printed("cohort", "--format", "json") },
  { name: "score-report", schema: ScoreReport, document: firstReport },
  {
    name: "flight-estimates",
    schema: FlightEstimates,
    part: "Estimate",
    // A carry that does not fit the launch, a wedge that is extrapolated, and all that a single launch is told.
    document: () => printed("flight", ...LAUNCH, "--carry", "400 yd", "--attack-angle", "3° down"),
  },
  {
    name: "flight-estimates",
    schema: FlightEstimates,
    part: "Estimate",
    document: () => printed("flight", "data/launches.csv", "--format", "json"),
  },
];

test("without a name the names are listed", async () => {
  const { code, stdout } = await drillwright({}, ["schema"]);
  expect(code).toBe(0);
  expect(new Set(stdout.match(/^\S+/gm))).toEqual(new Set(DOCUMENTS.map(({ name }) => name)));
});

describe.each(DOCUMENTS)("$name", ({ name, schema, document, part = "Range" }) => {
  test("the document keeps to the printed schema", async () => {
    const reader = z.fromJSONSchema(await printed("schema", name));
    const value = await document();
    expect(reader.safeParse(value)).toMatchObject({ success: true });
    // A schema that lets anything through would say so too.
    expect(reader.safeParse({ ...value, version: 2 }).success).toBe(false);
    expect(reader.safeParse({ ...value, tool: 1, metrics: 1 }).success).toBe(false);
  });

  test("the document has no member that the schema does not know", async () => {
    const value = await document();
    expect(schema.parse(value)).toEqual(value);
  });

  test("the schema names its parts and allows members of later versions", async () => {
    const printedSchema = await printed("schema", name);
    expect(printedSchema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
    expect(Object.keys(printedSchema.$defs)).toContain(part);
    expect(JSON.stringify(printedSchema)).not.toContain("__schema");
    expect(z.fromJSONSchema(printedSchema).safeParse({ ...(await document()), later: true }).success).toBe(
      true,
    );
  });
});
