/** The goals of plans in the test explorer. Results are read from the runs that the extension makes. */
import assert from "node:assert/strict";
import {
  CancellationTokenSource,
  type TestController,
  type TestItem,
  type TestMessage,
  type TestRun,
  TestRunRequest,
  workspace,
} from "vscode";
import type { TestingApi } from "../../../extension/testing-api.ts";
import { eventually, test } from "../host/suite-runner.ts";
import { drillwright, fileOf, PLAN, replace, show } from "./support.ts";

interface Outcome {
  readonly item: TestItem;
  readonly state: "passed" | "failed" | "skipped" | "errored";
  readonly messages: readonly TestMessage[];
}

interface SeenRun {
  readonly name: string | undefined;
  readonly isPersisted: boolean;
  readonly outcomes: readonly Outcome[];
  readonly output: string;
}

/** Watches the runs that are made meanwhile. */
function watchRuns(controller: TestController): { runs: SeenRun[]; stop: () => void } {
  const runs: SeenRun[] = [];
  const create = controller.createTestRun;
  controller.createTestRun = (request, name, persist) => {
    const run = create.call(controller, request, name, persist);
    const outcomes: Outcome[] = [];
    let output = "";
    const seen =
      (state: Outcome["state"]) => (item: TestItem, messages?: TestMessage | readonly TestMessage[]) => {
        const list = typeof messages === "object" ? [messages].flat() : [];
        outcomes.push({ item, state, messages: list as TestMessage[] });
      };
    return new Proxy(run, {
      get: (target, key: keyof TestRun) => {
        if (key === "passed" || key === "failed" || key === "skipped" || key === "errored") return seen(key);
        if (key === "appendOutput") return (text: string) => (output += text);
        if (key === "end")
          return () => {
            runs.push({ name, isPersisted: persist ?? true, outcomes, output });
            target.end();
          };
        const value = target[key];
        return typeof value === "function" ? (value as () => void).bind(target) : value;
      },
    });
  };
  return { runs, stop: () => (controller.createTestRun = create) };
}

const children = (of: TestItem | TestController) =>
  [...("items" in of ? of.items : of.children)].map(([, item]) => item);

async function planItem(api: TestingApi): Promise<TestItem> {
  await show(PLAN);
  return eventually("the open plan is listed with its goals", () =>
    children(api.goalTests).find(({ uri, children }) => uri?.path.endsWith(PLAN) && children.size > 0),
  );
}

test("the goals of an open plan stand on their lines", async () => {
  const api = await drillwright();
  const item = await planItem(api);
  assert.deepEqual(
    children(item).map(({ label }) => label),
    ["Gate", "Called clubs", "Prove it"],
  );
  // The list follows what was typed before a moment later.
  const goal = await eventually("the first goal is the one of the plan", () =>
    children(children(item)[0] as TestItem)
      .slice(0, 1)
      .find(({ label }) => label === "at least 12 of 18 shots on target"),
  );
  const document = await workspace.openTextDocument(fileOf(PLAN));
  assert.equal(document.lineAt(goal.range?.start.line ?? 0).text.trim(), goal.label);
});

test("all plans are listed once somebody looks for tests, and their goals when one is opened", async () => {
  const api = await drillwright();
  await api.goalTests.resolveHandler?.(undefined);
  const items = children(api.goalTests);
  assert.ok(items.length >= 5, `${items.length} plans`);
  const closed = items.find(({ uri }) => uri?.path.endsWith("driver-up-on-it.drill"));
  assert.ok(closed);
  assert.equal(closed.children.size, 0);
  await api.goalTests.resolveHandler?.(closed);
  assert.ok(closed.children.size > 0);
});

/** As the editor does it. */
async function run(api: TestingApi, request: TestRunRequest, source = new CancellationTokenSource()) {
  await api.shownGoals.runHandler(request, source.token);
}

test("a run scores the session shown: passed, failed with its rows, skipped with the reason", async () => {
  const api = await drillwright();
  const item = await planItem(api);
  const watch = watchRuns(api.goalTests);
  await run(api, new TestRunRequest([item]));
  watch.stop();
  const [seen] = watch.runs;
  assert.match(seen?.name ?? "", /^P-12: start line/);
  const states = new Map(seen?.outcomes.map((outcome) => [outcome.item.label, outcome]));
  assert.equal(states.get("median carry at least 150 yd")?.state, "passed");
  const failed = states.get("at least 12 of 18 shots on target");
  assert.equal(failed?.state, "failed");
  const [message] = failed.messages;
  assert.match(String(message?.message), /^Missed: 9 of 18/);
  assert.match(message?.expectedOutput ?? "", /at least 12/);
  assert.match(message?.actualOutput ?? "", /9 of 18/);
  assert.equal(message?.location?.uri.toString(), fileOf(PLAN).toString());
  const frame = message?.stackTrace?.[0];
  assert.match(frame?.uri?.path ?? "", /\/data\/.*\.csv$/);
  assert.match(frame?.label ?? "", /^line \d+: club-path /);
  // Also what has passed tells what was observed.
  assert.match(seen?.output ?? "", /median carry at least 150 yd\r\n {4}Met: /);
  assert.doesNotMatch(seen?.output ?? "", /[^\r]\n/);
});

test("one goal alone can be run", async () => {
  const api = await drillwright();
  const item = await planItem(api);
  const goal = children(children(item)[0] as TestItem)[1] as TestItem;
  const watch = watchRuns(api.goalTests);
  await run(api, new TestRunRequest([goal]));
  watch.stop();
  assert.deepEqual(
    watch.runs.flatMap(({ outcomes }) => outcomes.map(({ item }) => item.label)),
    [goal.label],
  );
});

test("a run that goes on tells anew when the plan or the data says otherwise", async () => {
  const api = await drillwright();
  const plan = await show(PLAN);
  const item = await planItem(api);
  const block = children(item)[0] as TestItem;
  const watch = watchRuns(api.goalTests);
  const source = new CancellationTokenSource();
  await run(api, new TestRunRequest([block], undefined, undefined, true), source);
  assert.equal(watch.runs.length, 1);
  assert.equal(watch.runs[0]?.isPersisted, false);
  await replace(plan, "club-path within 2°", "club-path within 20°");
  await eventually("it is told that the goal is met", () =>
    watch.runs
      .at(-1)
      ?.outcomes.some(({ item, state }) => item.label.startsWith("4 in a row") && state === "passed"),
  );
  await replace(plan, "club-path within 20°", "club-path within 2°");
  await eventually("it is told that the goal is missed again", () =>
    watch.runs
      .at(-1)
      ?.outcomes.some(({ item, state }) => item.label.startsWith("4 in a row") && state === "failed"),
  );
  source.cancel();
  const before = watch.runs.length;
  await replace(plan, "club-path within 2°", "club-path within 20°");
  await eventually("the plan is scored", () => api.scoresAbout(plan.uri)[0]?.goals.missed !== undefined);
  await new Promise((resolve) => setTimeout(resolve, 1_000));
  assert.equal(watch.runs.length, before);
  await replace(plan, "club-path within 20°", "club-path within 2°");
  watch.stop();
});

test("a plan that nobody practised is skipped, and says why", async () => {
  const api = await drillwright();
  const uri = fileOf("plans/alone.drill");
  const text = `plan "Alone" {\n  for 7-iron\n  block "One" test {\n    10 shots\n    target carry at least 150 yd\n    success at least 5 of 10 shots on target\n  }\n}\n`;
  await workspace.fs.writeFile(uri, new TextEncoder().encode(text));
  await show("plans/alone.drill");
  const item = await eventually("the plan is listed", () =>
    children(api.goalTests).find(({ label, children }) => label === "Alone" && children.size > 0),
  );
  const watch = watchRuns(api.goalTests);
  await run(api, new TestRunRequest([item]));
  watch.stop();
  assert.deepEqual(
    watch.runs[0]?.outcomes.map(({ state }) => state),
    ["skipped"],
  );
  assert.match(watch.runs[0]?.output ?? "", /No session has practised “Alone” yet/);
  await workspace.fs.delete(uri);
});
