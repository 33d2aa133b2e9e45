/** The goals of a plan, for an editor to list. */
import { afterEach, expect, test } from "vitest";
import { type PlanGoals, planGoals } from "../../shared/protocol/plan-goals.ts";
import { LspClient } from "../support/lsp-client.ts";

const PLAN = `plan "Gate" {
  for 7-iron
  block "Wake up" warm-up { 6 shots at 50 % effort }
  block "Start line" test {
    4 shots
    target start-direction within ±2°
    success {
      at least 3 of 4 shots on target
      average carry at least 150 yd
    }
  }
}
`;

let client: LspClient;
afterEach(() => client.stop());

const goals = (name = "Gate") =>
  client.request<PlanGoals | null>(planGoals.method, { plan: { file: client.uri("plan.drill"), name } });

test("blocks that set goals are listed with them, in the words of the plan", async () => {
  client = await LspClient.start({ files: { "plan.drill": PLAN } });
  const found = await goals();
  expect(found?.problem).toBeNull();
  expect(found?.blocks.map(({ name }) => name)).toEqual(["Start line"]);
  expect(found?.blocks[0]?.goals.map(({ text, location }) => [text, location.range.start.line])).toEqual([
    ["at least 3 of 4 shots on target", 7],
    ["average carry at least 150 yd", 8],
  ]);
});

test("a plan that cannot be read is a problem in words", async () => {
  client = await LspClient.start({ files: { "plan.drill": PLAN.replace("at least 3 of", "at least of") } });
  expect(await goals()).toEqual({
    blocks: [],
    problem: "The goals are known when the mistakes of the file are mended.",
  });
});

test("a plan that is not there has none", async () => {
  client = await LspClient.start({ files: { "plan.drill": PLAN } });
  expect(await goals("Gates")).toBeNull();
});
