/** What a degree is worth, told over targets of a plan that was scored. */
import { afterEach, expect, test } from "vitest";
import type { Hover, MarkupContent } from "vscode-languageserver";
import { LspClient } from "../support/lsp-client.ts";

const PLAN = `plan "Gate" {
  block "Start line" test {
    2 shots
    target face-angle within ±2°
    target start-direction within ±2°
    target carry at least 100 yd
  }
}
`;
const session = (hand: string) => `use "./plan"
player "P-01" { ${hand} }
source "Table" {
  column "Face" is face-angle in ° positive open
  column "Path" is club-path in ° positive in-to-out
  column "Attack" is attack-angle in ° positive up
  column "Ball" is ball-speed in m/s
  column "Launch" is launch-angle in ° positive up
  column "Start" is start-direction in ° positive right
  column "Spin" is spin-rate in rpm
  column "Axis" is spin-axis in ° positive right
  column "Carry" is carry in yd
}
session "First try" { plan "Gate" player "P-01" date 2026-10-12 data "shots.csv" from "Table" }
`;
const DATA = `Face,Path,Attack,Ball,Launch,Start,Spin,Axis,Carry
0.5,0.5,-4,53,16,0.2,6000,0.5,160
-0.5,-0.5,-4,53,16,-0.2,6000,-0.5,161
`;

let client: LspClient;
afterEach(() => client.stop());

async function hovers(hand: string): Promise<string[]> {
  client = await LspClient.start({
    files: { "plan.drill": PLAN, "session.drill": session(hand), "shots.csv": DATA },
  });
  await client.open("plan.drill", PLAN);
  await client.diagnosticsOf("plan.drill", (all) => all.some(({ source }) => source === "drillwright score"));
  const textDocument = { uri: client.uri("plan.drill") };
  const texts: string[] = [];
  for (const line of [3, 4, 5]) {
    const position = { line, character: 13 };
    const hover = await client.request<Hover | null>("textDocument/hover", { textDocument, position });
    texts.push((hover?.contents as MarkupContent | undefined)?.value ?? "");
  }
  return texts;
}

test("as an estimate, at the launch of the shots that were hit, in the words of the hand", async () => {
  const [face, start, carry] = await hovers("right-handed");
  expect(face).toMatch(
    /At the average launch of 2 shots in reference air, everything else the same: 1\.0° open more face-angle is about \d+ yd (less|more) carry, \d+ yd right of offline, \d+ yd fade of curve\. An estimate of a flight model, not a measurement\./,
  );
  expect(face).toContain("see a licensed clinician");
  expect(start).toMatch(/1\.0° right more start-direction is about .* yd right of offline/);
  expect(carry).not.toContain("At the average launch");
});

test("for a left-hander the same step goes the other way", async () => {
  const [face] = await hovers("left-handed");
  expect(face).toMatch(/1\.0° closed more face-angle is about .* yd right of offline, \d+ yd draw of curve/);
});
