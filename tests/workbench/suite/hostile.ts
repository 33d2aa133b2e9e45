/** Names that would be markup, draw icons, turn the line around or fill the window: they are text, wherever they are shown. */
import assert from "node:assert/strict";
import { type CodeLens, commands, type Hover, MarkdownString, Position, type TestItem } from "vscode";
import type { DrawnItem } from "../../../extension/testing-api.ts";
import { eventually, test } from "../host/suite-runner.ts";
import { drillwright, show } from "./support.ts";

const PLAN = "plan.drill";
/** What the editor would draw: an icon that nobody has put a backslash before. */
const ICON = /(?<!\\)\$\([A-Za-z0-9-]+(~[A-Za-z]+)?\)/;
const TURNED = /[\u202a-\u202e]/;
const MARKUP = "<img src=x onerror=alert(1)>";

/** Labels in places where `$(name)` draws an icon, without the icons of our own at their beginning. */
function assertPlain(label: string): void {
  assert.doesNotMatch(label.replace(/^\$\([a-z-]+\) /, ""), ICON, label);
  assert.doesNotMatch(label, TURNED, label);
}

test("in the status bar", async () => {
  const api = await drillwright();
  await show(PLAN);
  const text = await eventually("the session is named", () => api.status()?.text);
  assertPlain(text);
  assert.ok(text.length < 80, text);
  assert.match(text, /<img src=x/);
});

test("in the lines over blocks", async () => {
  const api = await drillwright();
  const plan = await show(PLAN);
  await eventually("the plan is scored", () =>
    api.scoresAbout(plan.uri).some(({ verdict }) => verdict !== null),
  );
  const lenses = await commands.executeCommand<CodeLens[]>("vscode.executeCodeLensProvider", plan.uri, 100);
  assert.ok(lenses.length > 2);
  for (const { command } of lenses) assertPlain(command?.title ?? "");
});

test("in the view of players", async () => {
  const api = await drillwright();
  const all: DrawnItem[] = [];
  for (const player of await api.players.children()) {
    all.push(player);
    for (const session of await api.players.children(player)) {
      all.push(session, ...(await api.players.children(session)));
    }
  }
  assert.ok(all.length > 8, `${all.length} items`);
  for (const { label, spoken } of all) {
    // Trees draw no icons from labels; directions and lengths are theirs all the same.
    assert.doesNotMatch(label, TURNED);
    assert.ok([...label].length <= 82, label);
    assert.doesNotMatch(spoken, TURNED);
  }
  assert.ok(all.some(({ label }) => label.startsWith(MARKUP)));
  const turned = all.find(({ label }) => label.includes("شوط"));
  assert.match(turned?.label ?? "", /^\u2068.*\u2069$/, "writing from right to left stays among its own");
});

test("in the test explorer", async () => {
  const api = await drillwright();
  await show(PLAN);
  await api.goalTests.resolveHandler?.(undefined);
  const items: TestItem[] = [];
  for (const [, plan] of api.goalTests.items) {
    items.push(plan, ...[...plan.children].map(([, block]) => block));
  }
  assert.ok(items.length >= 3);
  for (const { label } of items) assertPlain(label);
});

test("over a plan's own comment: nothing is fetched, and no command is run", async () => {
  await drillwright();
  const plan = await show(PLAN);
  const at = plan.positionAt(plan.getText().indexOf("plan ") + 8);
  const hovers = await commands.executeCommand<Hover[]>(
    "vscode.executeHoverProvider",
    plan.uri,
    new Position(at.line, at.character),
  );
  const texts = hovers.flatMap(({ contents }) => contents);
  assert.ok(texts.length > 0);
  for (const text of texts) {
    assert.ok(text instanceof MarkdownString);
    assert.notEqual(text.isTrusted, true);
    assert.notEqual(text.supportHtml, true);
    assert.doesNotMatch(text.value, /(?<!\\)!\[/);
  }
});
