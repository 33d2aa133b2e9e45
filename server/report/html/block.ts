/** One block with the evidence for each of its goals, and the picture that answers its question. */
import type { Block, Criterion } from "../../../shared/plan-model.ts";
import type { BlockResult, CriterionResult, FindingResult } from "../../../shared/score-report.ts";
import { goalPicture, type PicturedBlock, stripOf } from "../goal-picture.ts";
import { placeIn } from "../places.ts";
import { conditionStanding } from "../sections/block.ts";
import { leads, standing } from "../sections/findings.ts";
import { evidenceDetails, type GoalContext, groupHead } from "../sections/goal.ts";
import { blockSummary } from "../summary.ts";
import { html, type Markup, said } from "./markup.ts";
import { badge, details, place } from "./parts.ts";

export interface BlockContext extends GoalContext {
  readonly goals: ReadonlyMap<string, Criterion>;
  readonly pictured: PicturedBlock;
}

export function blockMarkup(result: BlockResult, block: Block | undefined, context: BlockContext): Markup {
  const conditions = [...result.targets, ...result.requirements];
  const shots = context.pictured.counted.get(result.name) ?? [];
  const strips = (block?.targets ?? []).map(({ condition }) => stripOf(condition, shots, context.pictured));
  return html`<section>
<h3>${said(result.name)} <span class="soft">(${result.kind})</span>${result.verdict === null ? null : html` ${badge(result.verdict)}`}</h3>
<div class="intro">${strips}<p>${blockSummary(result)}</p>
${(block?.changes ?? []).map(({ kind, text }) => html`<p>Tried: ${kind}, ${said(text)}</p>\n`)}${conditions.map(
  (condition) =>
    html`<p>${said(condition.text)}: ${conditionStanding(condition)}${place(placeIn(context.planFile, condition.location))}</p>\n`,
)}</div>
${result.criteria.map((goal) => goalMarkup(goal, context))}${result.findings.map((finding) => findingMarkup(finding, context))}</section>
`;
}

function goalMarkup(goal: CriterionResult, context: BlockContext): Markup {
  const asked = context.goals.get(goal.id);
  return html`<div class="goal">
<h4>${badge(goal.verdict)} ${said(goal.parts.length === 0 ? goal.text : groupHead(goal.text))}${place(placeIn(context.planFile, goal.location))}</h4>
${asked === undefined ? null : goalPicture(asked, goal, context.pictured)}${details(evidenceDetails(goal, context))}
${goal.parts.map((part) => goalMarkup(part, context))}</div>
`;
}

/** A pattern is no goal: nobody meets or misses it. */
function findingMarkup(finding: FindingResult, context: BlockContext): Markup {
  return html`<div class="goal">
<h4>Pattern “${said(finding.name)}”: ${standing(finding)}${place(placeIn(context.planFile, finding.location))}</h4>
${details([
  ...finding.criteria.map(({ text, evidence, verdict }) => ({
    label: verdict === "met" ? "fits" : verdict === "missed" ? "does not fit" : "open",
    text: `${text}: ${evidence.observed}`,
  })),
  ...leads(finding),
])}
</div>
`;
}
