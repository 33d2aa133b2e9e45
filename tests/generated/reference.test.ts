/** The reference of the language, written from the language: grammar, criteria, library and checks. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { type AstNode, AstUtils, GrammarAST } from "langium";
import { expect, test } from "vitest";
import type { Check } from "../../language/checks/check.ts";
import { severityOf } from "../../language/checks/check.ts";
import { sentence } from "../../language/criteria/criteria.ts";
import { lowerCriterion } from "../../language/criteria/lower.ts";
import { keywordDocumentation } from "../../language/editor/descriptions/keyword.ts";
import { documented } from "../../language/editor/descriptions/markdown.ts";
import { meaningOf } from "../../language/editor/descriptions/vocabulary.ts";
import { CHECKS } from "../../language/generated/checks.ts";
import {
  type Criterion,
  type Document,
  isCategoryRule,
  isClub,
  isCriterion,
  isDimension,
  isEstimated,
  isFormula,
  isMetric,
  isPlausible,
  isShownIn,
  type Metric,
} from "../../language/generated/tree/ast.ts";
import { textOf } from "../../language/lowering/place.ts";
import { directionsOf } from "../../language/types/directions.ts";
import { NO_BINDINGS } from "../../language/types/parameters.ts";
import { services, withChecked } from "../checks/checked-files.ts";
import { unmark } from "../checks/marks.ts";
import { alternativesOf, rules, syntaxOf } from "../support/grammar-syntax.ts";

const language = new URL("../../language/", import.meta.url);
const page = (name: string) => {
  const file = new URL(`reference/${name}.md`, language);
  return existsSync(file) ? readFileSync(file, "utf8").trim() : "";
};

test("the reference is the language's", async () => {
  const sections = [
    "# Reference of the language",
    "<!-- Written from the grammar, the library, the criteria and the checks by tests/generated/reference.test.ts. Do not edit. -->",
    contents(),
    page("writing"),
    "## Declarations",
    ...alternativesOf("Declaration").map(declaration),
    "## Conditions",
    "A condition is asked of one shot, in targets, requirements, windows and goals. Several are joined by `and` and `or`; `and` binds closer.",
    ["NumberTest", "CategoryTest", "WindowTest"].map((name) => `- \`${syntaxOf(name)}\``).join("\n"),
    "A limit or range is one of",
    alternativesOf("Range")
      .map((name) => `- \`${syntaxOf(name)}\``)
      .join("\n"),
    "## Goals",
    "A goal stands in `success`, or behind `when` in a finding.",
    ...(await goals()),
    page("verdicts"),
    page("calibration"),
    "## Vocabulary",
    "The built-in vocabulary is written in the language itself. What a file declares is used in the same way.",
    dimensions(),
    metrics(),
    clubs(),
    page("flight"),
    "## Checks",
    "Every check has an id; _must_ in it is an error, _should_ a warning, _could_ a hint.",
    ...Object.entries(CHECKS).map(([id, check]) => checkSection(id, check as unknown as Check)),
  ];
  const text = `${sections.filter(Boolean).join("\n\n")}\n`;
  await expect(text).toMatchFileSnapshot("../../language/REFERENCE.md");
});

function contents(): string {
  const parts = [
    "How plans are written",
    "Declarations",
    "Conditions",
    "Goals",
    "Verdicts",
    "Vocabulary",
    "Flight",
    "Checks",
  ];
  return parts.map((title) => `- [${title}](#${title.toLowerCase().replaceAll(" ", "-")})`).join("\n");
}

// Declarations and their statements --------------------------------------------------------------------------

function declaration(name: string): string {
  const rule = rules.get(name);
  if (rule === undefined) throw new Error(`The grammar has no rule ${name}.`);
  const statements = statementsOf(rule);
  return [
    `### ${firstWord(rule)}`,
    documentationOf(rule),
    `\`\`\`text\n${syntaxOf(name)}\n\`\`\``,
    statements.length > 0 ? statements.map(statementRow).join("\n") : "",
    ...statements.flatMap(innerStatements),
  ]
    .filter(Boolean)
    .join("\n\n");
}

/** The rules of the statements between the braces of a rule. */
function statementsOf(rule: GrammarAST.ParserRule): string[] {
  return [...AstUtils.streamAllContents(rule)]
    .filter(GrammarAST.isAssignment)
    .filter(({ feature }) => /^(statements|units|steps|variants)$/.test(feature))
    .flatMap(({ terminal }) =>
      GrammarAST.isRuleCall(terminal) ? alternativesOrItself(terminal.rule.$refText) : [],
    );
}

function alternativesOrItself(name: string): string[] {
  const alternatives = alternativesOf(name).filter((other) => rules.has(other));
  return alternatives.length > 1 ? alternatives.flatMap(alternativesOrItself) : [name];
}

function statementRow(name: string): string {
  const rule = rules.get(name);
  const documentation = rule && documentationOf(rule);
  return `- \`${syntaxOf(name).replaceAll("`", "'")}\`${documentation ? ` — ${documentation}` : ""}`;
}

/** The statements of a statement that has braces of its own, such as a block. */
function innerStatements(name: string): string[] {
  const rule = rules.get(name);
  const inner = rule === undefined ? [] : statementsOf(rule);
  if (rule === undefined || inner.length === 0) return [];
  return [`In \`${firstWord(rule)}\`:`, inner.map(statementRow).join("\n")];
}

function firstWord(rule: GrammarAST.ParserRule): string {
  const keyword = AstUtils.streamAllContents(rule).find(GrammarAST.isKeyword);
  return keyword?.value ?? rule.name;
}

/** What the grammar says about the first word of a rule. */
function documentationOf(rule: GrammarAST.ParserRule): string {
  for (const keyword of AstUtils.streamAllContents(rule).filter(GrammarAST.isKeyword)) {
    const text = keywordDocumentation(keyword);
    if (text !== undefined) return text.replace(/\s+/g, " ").trim();
  }
  return "";
}

// Goals -------------------------------------------------------------------------------------------------------

async function goals(): Promise<string[]> {
  const folder = new URL("criteria/", language);
  const kinds = readdirSync(folder).filter((name) => existsSync(new URL(`${name}/phrase.langium`, folder)));
  const sections: string[] = [];
  for (const kind of kinds) {
    sections.push(await goal(kind, readFileSync(new URL(`${kind}/phrase.langium`, folder), "utf8")));
  }
  return sections;
}

async function goal(kind: string, phrase: string): Promise<string> {
  const comment = /\/\*\*([\s\S]*?)\*\/\s*(?=\w*Criterion\b)/.exec(phrase)?.[1];
  if (comment === undefined) throw new Error(`The phrase of ${kind} says nothing about itself.`);
  const about = comment
    .replace(/^\s*\* ?/gm, " ")
    .replace(/\s+/g, " ")
    .trim();
  const examples = [...about.matchAll(/`([^`]+)`/g)]
    .map(([, text]) => text ?? "")
    .filter((text) => !text.includes("…"));
  const rows: string[] = [];
  for (const text of examples) rows.push(`| \`${text}\` | ${await meaning(text)} |`);
  const name = kind.charAt(0).toUpperCase() + kind.slice(1);
  return [
    `### ${name}`,
    about.replace(/:? `[\s\S]*$/, "."),
    `\`\`\`text\n${alternativesOrItself(`${name}Criterion`).map(syntaxOf).join("\n")}\n\`\`\``,
    rows.length > 0 ? ["| written | means |", "| --- | --- |", ...rows].join("\n") : "",
  ]
    .filter(Boolean)
    .join("\n\n");
}

/** What a goal means, as its hover says it. */
function meaning(text: string): Promise<string> {
  const plan = `plan "P" {\n  block "B" {\n    10 shots\n    target carry at least 1 m\n    success ${text}\n  }\n}\n`;
  return withChecked(plan, {}, ({ document, found }) => {
    const errors = found.filter(({ severity }) => severity === "error");
    if (errors.length > 0) throw new Error(`${text}: ${errors[0]?.message}`);
    const criterion = AstUtils.streamAst(document.parseResult.value).find(
      (node: AstNode): node is Criterion => isCriterion(node),
    );
    if (criterion === undefined) throw new Error(`No goal is read from: ${text}`);
    const context = { fileName: () => "", bindings: NO_BINDINGS, counted: 10, baseline: undefined };
    return sentence(lowerCriterion(criterion, "", context));
  });
}

// Vocabulary ----------------------------------------------------------------------------------------------------

function libraryDeclarations(): Document["declarations"] {
  return services.names.Names.library().flatMap(({ parseResult }) => parseResult.value.declarations);
}

const commentOf = (node: AstNode) =>
  documented(services.documentation.DocumentationProvider.getDocumentation(node) ?? "")
    .replace(/\s+/g, " ")
    .trim();

function dimensions(): string {
  const rows = libraryDeclarations()
    .filter(isDimension)
    .map((dimension) => {
      const units = dimension.units.map(({ names }) => names.map(({ name }) => `\`${name}\``).join(" or "));
      return `| ${dimension.name} | ${units.map((unit) => unit || "a plain number").join(", ")} | ${commentOf(dimension)} |`;
    });
  return [
    "### Dimensions and units",
    ["| dimension | units | |", "| --- | --- | --- |", ...rows].join("\n"),
  ].join("\n\n");
}

function metrics(): string {
  const sections = libraryDeclarations()
    .filter(isMetric)
    .map((metric) =>
      [`#### ${metric.name}`, commentOf(metric), metricFacts(metric)].filter(Boolean).join("\n\n"),
    );
  return ["### Metrics", ...sections].join("\n\n");
}

function metricFacts(metric: Metric): string {
  const { statements } = metric;
  const shown = statements.find(isShownIn);
  const plausible = statements.find(isPlausible);
  const formula = statements.find(isFormula);
  const rulesOfNames = statements.filter(isCategoryRule);
  return [
    metric.dimension &&
      `- ${metric.dimension.$refText}${shown?.unit ? `, shown in ${shown.unit.$refText} to ${shown.step}` : ""}`,
    ...directionsOf(metric).map((word) => `- \`${word.name}\`: ${meaningOf(word)}`),
    plausible && `- plausible from ${textOf(plausible.low)} to ${textOf(plausible.high)}`,
    formula && `- follows from \`${textOf(formula.expression)}\` where the table does not hold it`,
    statements.some(isEstimated) && "- an estimate of the flight model",
    ...rulesOfNames.map((rule) => `- \`${textOf(rule)}\``),
  ]
    .filter(Boolean)
    .join("\n");
}

function clubs(): string {
  const rows = libraryDeclarations()
    .filter(isClub)
    .map((club) => `| \`${club.name}\` | ${club.spellings.map((text) => `\`${text}\``).join(", ")} |`);
  return ["### Clubs", ["| club | also read as |", "| --- | --- |", ...rows].join("\n")].join("\n\n");
}

// Checks --------------------------------------------------------------------------------------------------------

function checkSection(id: string, { reason, reporting, fixed }: Check): string {
  return [
    `### ${id}`,
    `_${severityOf(id)}_ · ${reason}`,
    `Reported:\n\n\`\`\`drillwright\n${unmark(reporting).text.trim()}\n\`\`\``,
    fixed === undefined ? "" : `Put right:\n\n\`\`\`drillwright\n${fixed.trim()}\n\`\`\``,
  ]
    .filter(Boolean)
    .join("\n\n");
}
