/** The card of a plan, as an editor shows it beside the plan. */
import { afterEach, expect, test } from "vitest";
import { type PlanCard, planCard } from "../../shared/protocol/plan-card.ts";
import { practice } from "../cli/practice.ts";
import { LspClient } from "../support/lsp-client.ts";

let client: LspClient;
afterEach(() => client.stop());

const FILES = Object.fromEntries(Object.entries(practice()).map(([path, text]) => [path, String(text)]));
const PLAN = FILES["plans/irons.drill"] ?? "";
const NAME = /plan "([^"]+)"/.exec(PLAN)?.[1] ?? "";

const card = (name = NAME) =>
  client.request<PlanCard | null>(planCard.method, { plan: { file: client.uri("plans/irons.drill"), name } });

test("a page that stands for itself, though nobody has opened the file", async () => {
  client = await LspClient.start({ files: FILES });
  const found = await card();
  expect(found?.problem).toBeNull();
  expect(found?.page).toMatch(/^<!doctype html>/);
  expect(found?.page).toContain(`<h1><bdi>${NAME}</bdi></h1>`);
  expect(found?.page).not.toContain(client.folder);
});

test("a plan with mistakes has none, and one that is not there is nothing", async () => {
  const files = { ...FILES, "plans/irons.drill": PLAN.replace("3 of 5", "6 of 5") };
  client = await LspClient.start({ files });
  expect(await card()).toEqual({
    page: null,
    problem: "There is a card when the mistakes of the plan are mended.",
  });
  expect(await card("Woods")).toBeNull();
});
