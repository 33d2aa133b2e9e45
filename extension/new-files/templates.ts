/** What new files begin with, in the editor's snippet syntax. Each reads without a mistake as soon as it is inserted. */
import { CAUTION_LINES } from "../../shared/care.ts";
import { textLiteral } from "../../shared/text-literal.ts";

const CARE = placeholder(CAUTION_LINES);

/** A plan in the order of a lesson: warm up, see where the player is, change one thing, prove it. */
export const PLAN = `plan "\${1:Name}" {
	intent "\${2:What it is meant to bring about}"
	for \${3:7-iron}
${CARE}

	block "Wake up" warm-up {
		8 shots at 50 % effort
	}

	block "Where we are" baseline {
		10 shots
	}

	block "\${4:Practise}" blocked {
		change \${5|motion,set-up,grip,equipment,feel|} "\${6:The one thing that changes}"
		15 shots
		target \${7:start-direction} within ±\${8:2°}
		success at least \${9:10} of 15 shots on target
	}

	block "Prove it" test {
		12 shots
		target \${7} within ±\${8}
		success at least \${10:60} % of shots on target
	}
}
$0`;

/** A block to be used again, with one width to choose. */
export const DRILL = `/** \${1:What it trains, and how to set it up.} */
drill "\${2:Name}" (width: angle = \${3:3°}) \${4|blocked,serial,random,test|} {
${CARE}
	cue "\${5:A few words to think of}"
	15 shots
	target \${6:start-direction} within ±width
	success at least 10 of 15 shots on target
}
$0`;

/** What a session refers to, by name, and the paths of the files to use. Undefined where somebody is to fill it in. */
export interface SessionFacts {
  readonly uses: readonly string[];
  readonly name: string;
  readonly plan: string | undefined;
  readonly player: string | undefined;
  readonly source: string | undefined;
  /** As `2026-10-12`. */
  readonly date: string;
}

/** One practice of a player against a plan. */
export function sessionTemplate({ uses, name, plan, player, source, date }: SessionFacts): string {
  const given = (value: string | undefined, place: number, hint: string) =>
    value === undefined ? `"\${${place}:${hint}}"` : text(value);
  return [
    ...uses.map((path) => `use ${text(path)}`),
    ...(uses.length > 0 ? [""] : []),
    `session "\${1:${placeholder(name)}}" {`,
    `	plan ${given(plan, 2, "Plan")}`,
    `	player ${given(player, 3, "P-01")}`,
    `	date \${4:${date}}`,
    `	data "\${5:data/table.csv}" from ${given(source, 6, "Source")}`,
    "}",
    "$0",
  ].join("\n");
}

/**
 * Plans in the order in which they build on each other: each opens when every goal of the one before it is met.
 * @param steps the plans by name, at least one.
 */
export function curriculumTemplate({
  uses,
  steps,
}: {
  readonly uses: readonly string[];
  readonly steps: readonly string[];
}): string {
  const lines = steps.map((plan, index) => {
    const before = steps[index - 1];
    return `	step ${text(plan)}${before === undefined ? "" : ` after ${text(before)}`} {
		review after 7 d, 28 d
	}`;
  });
  return [
    ...uses.map((path) => `use ${text(path)}`),
    ...(uses.length > 0 ? [""] : []),
    `curriculum "\${1:Name}" {`,
    `	intent "\${2:What its plans build up to}"`,
    ...lines.flatMap((line) => ["", line]),
    "}",
    "$0",
  ].join("\n");
}

/** A text of the language, with nothing in it that a snippet would take for a place. */
function text(value: string): string {
  return placeholder(textLiteral(value));
}

function placeholder(value: string): string {
  return value.replace(/[$}\\]/g, "\\$&");
}
