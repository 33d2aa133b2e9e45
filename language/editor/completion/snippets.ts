/** Ready-made pieces of a plan. Each is offered where its rule of the grammar can begin, and reads without an error. */
import { AstUtils, GrammarAST } from "langium";
import { findFirstFeatures } from "langium/lsp";
import { type CompletionItem, CompletionItemKind, InsertTextFormat } from "vscode-languageserver";
import type { Expectation } from "./expectations.ts";
import { NOTHING, type Offers, type Place, RANK, sortText, wordEdit } from "./place.ts";

export interface Snippet {
  /** A label that is a keyword stands for the keyword in the list. */
  readonly label: string;
  readonly detail: string;
  /** In the protocol's snippet syntax, indented with tabs. */
  readonly body: string;
}

/** By the rule of the grammar that reads them. */
export const SNIPPETS: Readonly<Record<string, readonly Snippet[]>> = {
  Use: [{ label: "use", detail: "Bring in another file", body: `use "./\${1:library/sources}"` }],
  Plan: [
    {
      label: "plan",
      detail: "A plan with a warm-up and a test",
      body: `plan "\${1:Name}" {
	intent "\${2:What it is meant to bring about}"
	for \${3:7-iron}
	caution "Build up slowly. Stop on pain, dizziness or numbness."

	block "Wake up" warm-up {
		8 shots at 50 % effort
	}

	block "\${4:Show it}" test {
		\${5:10} shots
		target \${6:start-direction} within ±\${7:2°}
		success at least \${8:7} of \${5} shots on target
	}
}`,
    },
  ],
  Block: [
    {
      label: "block",
      detail: "A block of shots with a target and a goal",
      body: `block "\${1:Name}" \${2:blocked} {
	\${3:12} shots
	target \${4:start-direction} within ±\${5:2°}
	success at least \${6:8} of \${3} shots on target
}`,
    },
  ],
  Shots: [{ label: "shots", detail: "How many shots", body: `\${1:10} shots` }],
  Success: [
    {
      label: "success",
      detail: "Goals that must all be met",
      body: `success {
	at least \${1:7} of \${2:10} shots on target
}`,
    },
  ],
  CountCriterion: [
    {
      label: "at least … of … shots",
      detail: "So many of the first shots",
      body: `at least \${1:7} of \${2:10} shots \${3:on target}`,
    },
  ],
  ShareCriterion: [
    {
      label: "at least … % of shots",
      detail: "A share of all shots",
      body: `at least \${1:70} % of shots \${2:on target}`,
    },
  ],
  RunCriterion: [
    { label: "… in a row", detail: "So many in a row", body: `\${1:3} in a row \${2:on target}` },
  ],
  Player: [
    {
      label: "player",
      detail: "A player under a code",
      body: `player "\${1:P-01}" {
	\${2:right-handed}
}`,
    },
  ],
  Source: [
    {
      label: "source",
      detail: "How a table is read",
      body: `source "\${1:Name}" {
	column "\${2:Block}" is block
	column "\${3:Club}" is club
	column "\${4:Start direction}" is \${5:start-direction} in \${6:°} positive \${7:right}
}`,
    },
  ],
  Session: [
    {
      label: "session",
      detail: "A practice that was recorded",
      body: `session "\${1:Name}" {
	plan "\${2:Plan}"
	player "\${3:P-01}"
	date \${4:2026-01-31}
	data "\${5:data/table.csv}" from "\${6:Source}"
}`,
    },
  ],
};

/** The snippets at a place, for editors that know them; none in front of a line's rest, which they would not fit. */
export function snippetsAt(place: Place): Offers {
  if (!place.client.snippets || place.token.quotes !== "none" || !isAtEndOfLine(place)) return NOTHING;
  const items: CompletionItem[] = [];
  for (const [index, expectation] of place.expected.entries()) {
    const isKeyword = GrammarAST.isKeyword(expectation);
    for (const { label, detail, body } of snippetsOf(expectation)) {
      if (!place.matches(label)) continue;
      const standsForKeyword = isKeyword && label === expectation.value;
      const rank = standsForKeyword ? RANK.phrases : RANK.snippets;
      items.push({
        label,
        detail,
        kind: CompletionItemKind.Snippet,
        insertTextFormat: InsertTextFormat.Snippet,
        textEdit: wordEdit(place, body),
        sortText: sortText(place.startsAnew.has(expectation) ? RANK.nextStatement : rank, index),
      });
    }
  }
  return { items, isIncomplete: false };
}

/** The snippets of the rule that begins with this word of the grammar. */
function snippetsOf(expectation: Expectation): readonly Snippet[] {
  const rule = AstUtils.getContainerOfType(expectation, GrammarAST.isParserRule);
  const snippets = rule && SNIPPETS[rule.name];
  if (rule === undefined || snippets === undefined) return [];
  const first = findFirstFeatures(rule.definition).map((stack) => stack.at(-1)?.feature);
  return first.includes(expectation) ? snippets : [];
}

function isAtEndOfLine({ document, token }: Place): boolean {
  const text = document.textDocument.getText();
  const end = text.indexOf("\n", token.end);
  return text.slice(token.end, end === -1 ? undefined : end).trim() === "";
}
