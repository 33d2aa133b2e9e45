/** Which text diagnostics are about, over the protocol, against the bundled server. */
import { afterEach, describe, expect, test } from "vitest";
import { LspClient } from "../support/lsp-client.ts";

const PLAN = `plan "Gate" {
  for 7-iron
  block "Carry" test {
    4 shots
    target start-direction within ±2°
    success average carry at least 150 yd
  }
}
`;
const SESSION = `use "./plan"
player "P-01" { right-handed }
source "Table" {
  column "Start" is start-direction in ° positive right
  column "Carry" is carry in yd
}
session "First try" { plan "Gate" player "P-01" date 2026-10-12 data "shots.csv" from "Table" }
`;
const DATA = "Start,Carry\n1.0,152\n-3.5,149\n0.5,155\n2.5,151\n";

let client: LspClient;
afterEach(() => client.stop());

async function start(): Promise<void> {
  client = await LspClient.start({
    files: { "plan.drill": PLAN, "session.drill": SESSION, "other.drill": "", "shots.csv": DATA },
  });
}

/** The plan below a line that could be left out, and everything so many lines further down. */
const movedDown = (lines: number) => `${"\n".repeat(lines)}use "./other"\n${PLAN}`;

/** The lines that a list is about. */
function linesOf({ diagnostics }: ReturnType<LspClient["published"]>[number]) {
  const of = (wanted: string) =>
    diagnostics.filter(({ source }) => source === wanted).map(({ range }) => range.start.line);
  return { mistakes: of("drillwright"), verdicts: of("drillwright score") };
}

describe("the version of published diagnostics", () => {
  test("is that of the text as it was opened, and then of the last edit, for mistakes and verdicts alike", async () => {
    await start();
    await client.open("plan.drill", PLAN);
    await client.diagnosticsOf("plan.drill", (all) => all.some(({ code }) => code === "met"));
    expect(client.published("plan.drill").at(-1)?.version).toBe(1);
    await client.change("plan.drill", PLAN.replace("150", "160"));
    await client.diagnosticsOf("plan.drill", (all) => all.some(({ code }) => code === "missed"));
    await client.change("plan.drill", PLAN.replace("150 yd", "150 °"));
    await client.diagnosticsOf("plan.drill", (all) => all.some(({ severity }) => severity === 1));
    expect(client.published("plan.drill").at(-1)?.version).toBe(3);
  });

  test("is told again of a text whose edit changed no diagnostic", async () => {
    await start();
    await client.open("plan.drill", PLAN);
    const before = await client.diagnosticsOf("plan.drill", (all) => all.some(({ code }) => code === "met"));
    await client.change("plan.drill", `${PLAN}\n`);
    await client.until(
      () => client.published("plan.drill").at(-1)?.version === 2,
      () => `version ${client.published("plan.drill").at(-1)?.version}`,
    );
    expect(await client.diagnosticsOf("plan.drill")).toEqual(before);
  });

  test("stays that of the text where the table or the session changes", async () => {
    await start();
    await client.open("plan.drill", PLAN);
    await client.change("plan.drill", `${PLAN}\n`);
    await client.diagnosticsOf("plan.drill", (all) => all.some(({ code }) => code === "met"));
    await client.write("shots.csv", DATA.replaceAll("15", "13"));
    await client.diagnosticsOf("plan.drill", (all) => all.some(({ code }) => code === "missed"));
    expect(client.published("plan.drill").at(-1)?.version).toBe(2);
  });

  test("is left out for files that are not open, and again when a file is closed", async () => {
    await start();
    await client.open("session.drill", SESSION);
    await client.diagnosticsOf("plan.drill", (all) => all.some(({ code }) => code === "met"));
    expect(client.published("plan.drill").every((list) => !("version" in list))).toBe(true);
    await client.close("session.drill");
    await client.until(
      () => client.published("session.drill").at(-1)?.version === undefined,
      () => "diagnostics of a text that is closed",
    );
  });

  test("is never newer than what the list is about, however fast somebody types", async () => {
    await start();
    await client.open("plan.drill", movedDown(1)); // version 1 is moved down by one line, and so on
    const last = 60;
    for (let version = 2; version <= last; version++) {
      await client.change("plan.drill", movedDown(version));
      // From no pause at all to one in which verdicts come.
      await new Promise((resolve) => setTimeout(resolve, (version % 7) * 4));
    }
    const isLast = () => {
      const list = client.published("plan.drill").at(-1);
      return list?.version === last && linesOf(list).verdicts.length > 0;
    };
    await client.until(isLast, () => JSON.stringify(client.published("plan.drill").at(-1)));
    const lists = client.published("plan.drill").filter(({ diagnostics }) => diagnostics.length > 0);
    expect(lists.length).toBeGreaterThan(1);
    for (const list of lists) {
      const down = list.version ?? 0;
      const { mistakes, verdicts } = linesOf(list);
      expect({ down, mistakes }).toEqual({ down, mistakes: [down] });
      if (verdicts.length > 0) {
        expect({ down, verdicts }).toEqual({ down, verdicts: [down + 3, down + 5, down + 6] });
      }
    }
  });
});
