/** A check that throws is a fault of ours, and takes no other finding with it. */
import { expect, test } from "vitest";
import type { Check } from "../../language/checks/check.ts";
import { FAULT_CODE } from "../../language/checks/check.ts";
import { DrillwrightDocumentValidator } from "../../language/checks/document-validator.ts";
import { CHECKS } from "../../language/generated/checks.ts";
import { services, withChecked } from "./checked-files.ts";

const TEXT = `plan "Gate" {
  block "One" {
    10 shots
    success at least 12 of 10 shots with carry at least 150 yd
  }
  block "Two" test {
    10 shots
    success at least 12 of 10 shots with carry at least 150 yd
  }
}
`;

function failing(error: unknown): Check<"Block"> {
  return {
    on: ["Block"],
    reason: "It fails.",
    reporting: "",
    silent: "",
    run() {
      throw error;
    },
  };
}

async function found(id: string, error: unknown) {
  const checks = { ...(CHECKS as Readonly<Record<string, Check>>), [id]: failing(error) as Check };
  const diagnostics = await withChecked(TEXT, {}, ({ document }) =>
    new DrillwrightDocumentValidator(services, checks).validateDocument(document),
  );
  return diagnostics.map(({ code, severity, range: { start } }) => [code, severity, start.line + 1]);
}

test("everything else is found, and the fault is told once", async () => {
  expect(await found("it-must-fail", new TypeError("no plan"))).toEqual([
    ["hits-must-not-exceed-shots", 1, 4],
    [FAULT_CODE, 1, 6],
    ["hits-must-not-exceed-shots", 1, 8],
  ]);
});

test("it weighs as much as what could have been found", async () => {
  expect(await found("it-could-fail", "no error at all")).toContainEqual([FAULT_CODE, 4, 6]);
});
