/** How a file is seen from above: its outline, what folds, and what a search in the workspace finds. */

import { describe, expect, test } from "vitest";
import type { DocumentSymbol, Range } from "vscode-languageserver";
import { openEditor } from "../support/editor.ts";
import { SAMPLE } from "../support/sample.ts";

/** An outline as text, one symbol a line. */
function drawn(symbols: readonly DocumentSymbol[], depth = 0): string {
  return symbols
    .map(({ name, detail, children = [] }) => {
      const line = `${"  ".repeat(depth)}${name}${detail === undefined ? "" : ` (${detail})`}`;
      return [line, ...(children.length > 0 ? [drawn(children, depth + 1)] : [])].join("\n");
    })
    .join("\n");
}

async function outlineOf(path: string, files = SAMPLE): Promise<string> {
  return drawn(await (await openEditor(files)).at(path, 0).symbols());
}

describe("the outline", () => {
  test("of a plan: its blocks and their goals", async () => {
    expect(await outlineOf("plans/gate.drill")).toBe(`Seven-iron: "gate"
  Wake up (warm-up, 12 shots)
  Gate (blocked, 18 shots)
    at least 12 of 18 shots on target
    at most 20 % of shots with start-direction at least 5° left at 80 % confidence
    3 in a row on target
    spread of start-direction at most 2.5°
    average carry between 140 yd and 160 yd at 90 % confidence`);
  });

  test("of vocabulary: units once, not for every spelling", async () => {
    expect(await outlineOf("library/words.drill")).toBe(`miss-share (ratio)
chips
  chip
  half
chipper`);
  });

  test("of players, sources and sessions", async () => {
    expect(await outlineOf("library/range.drill")).toBe(`P-07 (right-handed)
Field
  Block
  Club
  Path
  Carry
  Side
  Remark`);
    expect(await outlineOf("sessions/first.drill")).toBe('First try (Seven-iron: "gate")');
  });

  test("keeps the parts of what has no name yet, and every name within its own range", async () => {
    const editor = await openEditor({
      "a.drill": 'plan {\n  block "B" test {\n    success 3 in a row on target\n  }\n}\nmetric\n',
    });
    const symbols = await editor.symbols();
    expect(drawn(symbols)).toContain("B (test)");
    for (const symbol of flat(symbols)) {
      expect(symbol.name).not.toBe("");
      expect(contains(symbol.range, symbol.selectionRange)).toBe(true);
    }
  });
});

function flat(symbols: readonly DocumentSymbol[]): DocumentSymbol[] {
  return symbols.flatMap((symbol) => [symbol, ...flat(symbol.children ?? [])]);
}

function contains(outer: Range, inner: Range): boolean {
  const key = ({ line, character }: Range["start"]) => line * 10_000 + character;
  return key(outer.start) <= key(inner.start) && key(inner.end) <= key(outer.end);
}

describe("folding", () => {
  test("plans, blocks, goals and comments", async () => {
    const editor = await openEditor({
      "a.drill": `use "./x"
use "./y"

/**
 * About the plan.
 */
plan "P" {
  block "B" test {
    10 shots
    target club-path within ±2°
      and face-angle
      within ±2°
    success {
      3 in a row on target
    }
  }
  // one
  // two
  for 7-iron // three
  // four
}
`,
    });
    const foldings = await editor.foldings();
    const lines = foldings.map(({ startLine, endLine, kind }) => [startLine, endLine, kind ?? ""]);
    expect(lines.sort(([a], [b]) => Number(a) - Number(b))).toEqual([
      [0, 1, "imports"],
      [3, 4, "comment"],
      [6, 19, ""],
      [7, 14, ""],
      [12, 13, ""],
      [16, 17, "comment"],
    ]);
  });

  test("nothing that fits on a line or two", async () => {
    const editor = await openEditor({
      "a.drill": 'use "./x"\nplan "P" { block "B" test { 10 shots } }\nplayer "A" {\n}\n',
    });
    expect(await editor.foldings()).toEqual([]);
  });
});

describe("the search for a name in the workspace", () => {
  const find = async (query: string) => {
    const { services } = await openEditor(SAMPLE);
    const symbols = (await services.shared.lsp.WorkspaceSymbolProvider?.getSymbols({ query })) ?? [];
    return symbols.map(({ name }) => name);
  };

  test("finds plans, players, sources, sessions and vocabulary by the beginnings of words", async () => {
    expect(await find("seven")).toContain('Seven-iron: "gate"');
    expect(await find("gate")).toContain('Seven-iron: "gate"');
    expect(await find("P-07")).toContain("P-07");
    expect(await find("share")).toContain("miss-share");
    expect(await find("club-path")).toContain("club-path");
  });

  test("leaves out the spellings of units", async () => {
    expect(await find("yard")).toEqual([]);
  });
});
