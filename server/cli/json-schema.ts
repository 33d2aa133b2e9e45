/** JSON schemas made from the schemas the program itself holds to. */
import { $ZodType, registry, toJSONSchema } from "zod/v4/core";
import * as planModel from "../../shared/plan-model.ts";
import * as scoreReport from "../../shared/score-report.ts";
import * as sessionData from "../../shared/session-data.ts";
import * as checkReport from "../report/check-report.ts";
import * as planDiff from "../report/diff/plan-diff.ts";
import * as flightEstimates from "../report/flight-estimates.ts";
import * as cohort from "../report/overview/cohort.ts";
import * as trend from "../report/overview/trend.ts";
import * as scoreOutput from "../report/score-output.ts";
import type { SchemaName } from "./commands/schema.ts";

const ROOTS: Readonly<Record<SchemaName, $ZodType>> = {
  "plan-model": planModel.PlanModel,
  "score-report": scoreReport.ScoreReport,
  "check-report": checkReport.CheckReport,
  "score-output": scoreOutput.ScoreOutput,
  "plan-diff": planDiff.PlanDiff,
  trend: trend.Trend,
  cohort: cohort.Cohort,
  "flight-estimates": flightEstimates.FlightEstimates,
};

/** The schema as JSON Schema, draft 2020-12. Parts have the names that the program's own types have. */
export function jsonSchema(name: SchemaName): object {
  const root = ROOTS[name];
  const named = registry<{ id: string }>();
  for (const [part, schema] of parts()) if (schema !== root) named.add(schema, { id: part });
  // As input: members that a later version adds are no mistake.
  return toJSONSchema(root, { metadata: named, io: "input" });
}

function parts(): [name: string, schema: $ZodType][] {
  const modules = [
    planModel,
    sessionData,
    scoreReport,
    checkReport,
    scoreOutput,
    planDiff,
    trend,
    cohort,
    flightEstimates,
  ];
  return modules
    .flatMap((module) => Object.entries<unknown>(module))
    .filter((entry): entry is [string, $ZodType] => entry[1] instanceof $ZodType);
}
