/** Shots are followed while they are added to a table, over the protocol, against the bundled server. */
import {
  appendFileSync,
  mkdirSync,
  mkdtempSync,
  renameSync,
  rmSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { CodeLens, InlayHint } from "vscode-languageserver";
import { projectChanged } from "../../shared/protocol/project-changed.ts";
import { LspClient } from "../support/lsp-client.ts";

const PLAN = `plan "Start line" {
  for 7-iron
  block "Gate" test {
    18 shots
    target start-direction within ±2°
    success at least 12 of 18 shots on target
  }
}
`;
const session = (table: string) => `use "./plan"
player "P-01" { right-handed }
source "Table" {
  column "Start" is start-direction in ° positive right
}
session "Today" { plan "Start line" player "P-01" data "${table}" from "Table" }
`;
const HIT = "1.0\n";
const MISS = "-3.5\n";
/** Twelve shots, nine of them on target. */
const TWELVE = `Start\n${HIT.repeat(9)}${MISS.repeat(3)}`;

let client: LspClient;
/** A folder that no editor watches, and a table in it. */
let elsewhere: string;
let table: string;

beforeEach(() => {
  elsewhere = mkdtempSync(join(tmpdir(), "drillwright-range-"));
  table = join(elsewhere, "today.csv");
});
afterEach(async () => {
  await client.stop();
  rmSync(elsewhere, { recursive: true });
});

async function open(): Promise<void> {
  const files = { "plan.drill": PLAN, "session.drill": session(`../${basename(elsewhere)}/today.csv`) };
  client = await LspClient.start({ files });
  await client.open("plan.drill", PLAN);
}

const goal = 5;
/** Waits until the goal reads so. The editor is told of nothing: the server looks for itself. */
async function goalReads(message: string): Promise<void> {
  await client.diagnosticsOf("plan.drill", (all) =>
    all.some(({ range, message: said }) => range.start.line === goal && String(said).includes(message)),
  );
}

const titles = async () => {
  const textDocument = { uri: client.uri("plan.drill") };
  const lenses = await client.request<CodeLens[]>("textDocument/codeLens", { textDocument });
  const range = { start: { line: 0, character: 0 }, end: { line: 20, character: 0 } };
  const hints = await client.request<InlayHint[]>("textDocument/inlayHint", { textDocument, range });
  return { block: lenses[1]?.command?.title, goal: hints[0]?.label };
};

describe("a table that nobody tells of", () => {
  test("is scored again with every row that is added", async () => {
    writeFileSync(table, "Start\n");
    await open();
    await goalReads("not measured");
    appendFileSync(table, HIT.repeat(9));
    await goalReads("9 of 9 shots on target");
    appendFileSync(table, MISS.repeat(3));
    await goalReads("9 of 12 shots on target");
    expect(await titles()).toEqual({
      block: "undecided · 9 of 18 on target · 1 goal undecided, needs 3 of the next 6",
      goal: "undecided: 9 of 12, needs 3 of the next 6",
    });
    appendFileSync(table, HIT.repeat(3));
    await goalReads("met: 12 of 15 shots on target");
    expect((await titles()).goal).toBe("met: 12 of 15");
    // Views that show scores are told as well.
    expect(client.notifications.filter(({ method }) => method === projectChanged.method)).not.toEqual([]);
  });

  test("counts no half row, and the last one when its line has ended or nothing more comes", async () => {
    writeFileSync(table, TWELVE);
    await open();
    await goalReads("9 of 12");
    // A hit, and the beginning of 19.5, which would be a hit if it were all.
    appendFileSync(table, `${HIT}1`);
    await goalReads("10 of 13");
    appendFileSync(table, "9.5\n1.5");
    await goalReads("10 of 14");
    await goalReads("11 of 15");
  });

  test("is read again where it was cut short, and where another took its place", async () => {
    writeFileSync(table, TWELVE);
    await open();
    await goalReads("9 of 12");
    truncateSync(table, "Start\n".length + 2 * HIT.length);
    await goalReads("2 of 2");
    renameSync(table, `${table}.1`);
    writeFileSync(table, `Start\n${MISS.repeat(4)}`);
    await goalReads("0 of 4");
    appendFileSync(table, HIT);
    await goalReads("1 of 5");
  });

  test("is waited for where it is not there yet, and missed where it is gone", async () => {
    const isMissing = async () =>
      client.until(
        () =>
          JSON.stringify(
            client.notifications.filter(({ method }) => method === "drillwright/scoresChanged").at(-1),
          )?.includes("There is no file"),
        () => "no word of the missing file",
      );
    await open();
    await isMissing();
    writeFileSync(table, TWELVE);
    await goalReads("9 of 12");
    rmSync(table);
    await isMissing();
    mkdirSync(table); // a folder is as good as missing
    rmSync(table, { recursive: true });
    writeFileSync(table, `${TWELVE}${HIT}`);
    await goalReads("10 of 13");
  });

  test("is followed while the plan is typed, too", async () => {
    writeFileSync(table, TWELVE);
    await open();
    await goalReads("9 of 12");
    for (let shot = 1; shot <= 4; shot++) {
      appendFileSync(table, HIT);
      await client.change("plan.drill", PLAN.replace("±2°", `±${2 + shot / 10}°`));
    }
    await goalReads("13 of 16");
  });
});

test("a table that the editor tells of is read again although it looks the same from outside", async () => {
  writeFileSync(table, TWELVE);
  await open();
  await goalReads("9 of 12");
  writeFileSync(table, TWELVE.replace("1.0", "9.0"));
  const changes = [{ uri: client.uri(`../${basename(elsewhere)}/today.csv`), type: 2 }];
  await client.connection.sendNotification("workspace/didChangeWatchedFiles", { changes });
  await goalReads("8 of 12");
});
