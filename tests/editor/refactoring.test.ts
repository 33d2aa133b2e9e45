import { describe, expect, test } from "vitest";
import { check, edited } from "../checks/checked-files.ts";
import { openEditor } from "../support/editor.ts";

/** The text after the refactoring of that title at the cursor; undefined where it is not offered. */
async function refactored(marked: string, title: string): Promise<string | undefined> {
  const editor = await openEditor({ "a.drill": marked });
  const { document, position } = editor;
  const uri = document.uri.toString();
  const actions =
    (await editor.services.lsp.CodeActionProvider?.getCodeActions(document, {
      textDocument: { uri },
      range: { start: position, end: position },
      context: { diagnostics: [], only: ["refactor"] },
    })) ?? [];
  const action = actions.find((candidate) => candidate.title === title);
  const edits = action !== undefined && "edit" in action ? action.edit?.changes?.[uri] : undefined;
  if (edits === undefined) return undefined;
  const text = edited(document.textDocument.getText(), edits);
  expect((await check(text)).filter(({ severity }) => severity === "error")).toEqual([]);
  return text;
}

const PLAN = `/** About the plan. */
plan "A" {
  block "Where we are" baseline {
    10 shots
  }

  block "Gate" test {
    18 shots
    cue "Brush the grass" // a hand past the ball
    target start-direction within ±2° and club-path within 3° of 1° in-to-out
    success {
      at least 12 of 18 shots on target
      3 in a row on target
    }
  }
}
`;

describe("extract a block into a drill", () => {
  test("its tolerances become parameters", async () => {
    expect(await refactored(PLAN.replace('"Gate"', '"Ga<|>te"'), 'Extract drill "Gate"')).toBe(
      `drill "Gate" (start-direction-tolerance: angle = 2°, club-path-tolerance: angle = 3°) test {
  18 shots
  cue "Brush the grass" // a hand past the ball
  target start-direction within ±start-direction-tolerance and club-path within club-path-tolerance of 1° in-to-out
  success {
    at least 12 of 18 shots on target
    3 in a row on target
  }
}

${PLAN.replace(/ {2}block "Gate" test[\s\S]*\n {2}}\n/, '  block "Gate" from "Gate"\n')}`,
    );
  });

  test("goals against blocks of the plan stay with the block", async () => {
    const text = PLAN.replace("3 in a row on target", 'carry loses no more than 4 yd against "Where we are"');
    const extracted = await refactored(text.replace('"Gate"', '"Ga<|>te"'), 'Extract drill "Gate"');
    expect(extracted).toContain('block "Gate" from "Gate" {\n    success {\n      at least 12');
  });

  test("a block from a drill is one already", async () => {
    const text = 'drill "D" {\n  5 shots\n}\n\nplan "A" {\n  block "B<|>" from "D"\n}\n';
    expect(await refactored(text, 'Extract drill "B"')).toBeUndefined();
  });
});

test("a drill is written out with what its parameters stand for", async () => {
  const text = `drill "D" (width: angle = 3°, hits: ratio = 4) test {
  5 shots
  cue "Turn"
  target start-direction within ±width
  success at least hits of 5 shots on target
}

plan "A" {
  block "B<|>" from "D" with width = 2° {
    cue "Own" // mine
  }
}
`;
  expect(await refactored(text, 'Write drill "D" out')).toBe(
    text.replace("<|>", "").replace(
      / {2}block[\s\S]*$/,
      `  block "B" test {
    5 shots
    cue "Turn"
    target start-direction within ±2°
    success at least 4 of 5 shots on target
    cue "Own" // mine
  }
}
`,
    ),
  );
});

describe("convert units", () => {
  test.each([
    ["carry at least 150<|> yd", "Convert to 137.2 m", "carry at least 137.2 m"],
    ["club-path within ±<|>2°", "Convert to 0.03491 rad", "club-path within ±0.03491 rad"],
    [
      "offline between 0 yd and <|>12 yd left",
      "Convert to 10.97 m left",
      "offline between 0 yd and 10.97 m left",
    ],
  ])("%s", async (target, title, expected) => {
    const text = (condition: string) =>
      `plan "A" {\n  block "B" {\n    5 shots\n    target ${condition}\n  }\n}\n`;
    expect(await refactored(text(target), title)).toBe(text(expected));
  });

  test("degrees of warmth have a zero of their own", async () => {
    const session = (air: string) => `session "S" {\n  temperature ${air}\n}\n`;
    const editor = await openEditor({ "a.drill": session("20<|> °C") });
    const actions = await editor.services.lsp.CodeActionProvider?.getCodeActions(editor.document, {
      textDocument: { uri: editor.document.uri.toString() },
      range: { start: editor.position, end: editor.position },
      context: { diagnostics: [], only: ["refactor.rewrite"] },
    });
    expect(actions?.map(({ title }) => title)).toEqual(["Convert to 293.1 K", "Convert to 68 °F"]);
  });
});

describe("turn a literal into a parameter", () => {
  const drill = (header: string, statement: string) =>
    `drill "D"${header} {\n  5 shots\n  target ${statement}\n}\n\nplan "A" {\n  block "B" from "D"\n}\n`;

  test("the first one of a drill", async () => {
    expect(await refactored(drill("", "start-direction within ±2<|>°"), "Make 2° a parameter")).toBe(
      drill(" (tolerance: angle = 2°)", "start-direction within ±tolerance"),
    );
  });

  test("a further one, with its direction left where it was", async () => {
    expect(
      await refactored(
        drill(" (tolerance: angle = 2°)", "club-path within tolerance of 1<|>° in-to-out"),
        "Make 1° a parameter",
      ),
    ).toBe(
      drill(" (tolerance: angle = 2°, centre: angle = 1°)", "club-path within tolerance of centre in-to-out"),
    );
  });

  test("a number of shots", async () => {
    const text = (header: string, shots: string) =>
      `drill "D"${header} {\n  ${shots} shots\n}\n\nplan "A" {\n  block "B" from "D"\n}\n`;
    expect(await refactored(text("", "1<|>0"), "Make 10 a parameter")).toBe(
      text(" (number-of-shots: ratio = 10)", "number-of-shots"),
    );
  });

  test("is not offered outside drills", async () => {
    expect(await refactored(PLAN.replace("±2°", "±2<|>°"), "Make 2° a parameter")).toBeUndefined();
  });
});

test("a long block is split, and each half asks for its share of hits", async () => {
  const text = `plan "A" {
  block "B<|>" blocked {
    change motion "Turn"
    19 shots
    target start-direction within ±2°
    success at least 12 of 19 shots on target
  }
}
`;
  expect(await refactored(text, "Split into blocks of 10 and 9 shots")).toBe(`plan "A" {
  block "B" blocked {
    change motion "Turn"
    10 shots
    target start-direction within ±2°
    success at least 7 of 10 shots on target
  }

  block "B, second half" blocked {
    9 shots
    target start-direction within ±2°
    success at least 6 of 9 shots on target
  }
}
`);
});
