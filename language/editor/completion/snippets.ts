/** Ready-made pieces of a plan. Each is offered where its rule of the grammar can begin, and reads without an error. */
import { AstUtils, GrammarAST } from "langium";
import { findFirstFeatures } from "langium/lsp";
import { type CompletionItem, CompletionItemKind, InsertTextFormat } from "vscode-languageserver";
import { CAUTION_LINES } from "../../../shared/care.ts";
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
${CAUTION_LINES}

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
  // A criterion that begins with a number is offered where a group can begin: any number would do for its first word.
  GroupCriterion: [
    { label: "… in a row", detail: "So many in a row", body: `\${1:3} in a row \${2:on target}` },
    {
      label: "…th percentile of",
      detail: "A limit that so many of a hundred shots keep",
      body: `\${1:90}th percentile of \${2:carry} \${3:at least 140 m}`,
    },
    {
      label: "any",
      detail: "Any one of several goals",
      body: `any of {
	at least \${1:7} of \${2:10} shots on target
	\${3:3} in a row on target
}`,
    },
    {
      label: "… of",
      detail: "So many of several goals",
      body: `\${1:1} of {
	at least \${2:7} of \${3:10} shots on target
	\${4:3} in a row on target
}`,
    },
  ],
  Summary: [
    {
      label: "average",
      detail: "The average of a metric",
      body: `average \${1:carry} \${2:at least 140 m}`,
    },
    {
      label: "spread",
      detail: "The standard deviation of a metric",
      body: `spread of \${1:carry} \${2:at most 6 m}`,
    },
  ],
  Span: [
    {
      label: "middle",
      detail: "How far apart the middle shots are",
      body: `middle \${1:80} % of \${2:carry} spans \${3:at most 12 m}`,
    },
  ],
  EllipseCriterion: [
    {
      label: "area",
      detail: "The area that so many shots land in",
      body: `area of the \${1:80} % ellipse of \${2:offline} and \${3:carry} at most \${4:250 m²}`,
    },
  ],
  Drill: [
    {
      label: "drill",
      detail: "A block to be used again, with a parameter",
      body: `drill "\${1:Name}" (\${2:width}: \${3:angle} = \${4:3°}) blocked {
${CAUTION_LINES}
	\${5:12} shots
	target \${6:start-direction} within ±\${2}
	success at least \${7:8} of \${5} shots on target
}`,
    },
  ],
  Window: [
    {
      label: "window",
      detail: "A condition with a name",
      body: `window "\${1:Name}" is \${2:club-path} within \${3:2°} of \${4:1° in-to-out}`,
    },
  ],
  Finding: [
    {
      label: "finding",
      detail: "A pattern, what it may come from, and what to try",
      body: `finding "\${1:Name}" {
	when average \${2:face-to-path} at least \${3:2° open}
	suspect "\${4:What it may come from}"
	check "\${5:What to look at first}"
}`,
    },
  ],
  Curriculum: [
    {
      label: "curriculum",
      detail: "Plans in the order in which they build on each other",
      body: `curriculum "\${1:Name}" {
	step "\${2:First plan}"
	step "\${3:Second plan}" after "\${2}" {
		review after \${4:7 d}, \${5:28 d}
	}
}`,
    },
  ],
  Instrument: [
    {
      label: "instrument",
      detail: "How far readings may be off",
      body: `instrument "\${1:Name}" {
	coverage \${2:95} %
	reads \${3:club-path} within \${4:0.8°} random and \${5:0.4°} systematic
}`,
    },
  ],
  Next: [
    {
      label: "then",
      detail: "What comes after the plan",
      body: `then {
	advance to "\${1:Next plan}" when every goal is met
	repeat otherwise
}`,
    },
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
        sortText: sortText(rank, index),
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
