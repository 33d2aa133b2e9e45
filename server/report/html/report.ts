/** One session as markup: for the player first, then for whoever wants to check it. */
import type { ScoreReport } from "../../../shared/score-report.ts";
import { countedShots, goalsById } from "../counted.ts";
import { flightPictures } from "../flight-pictures.ts";
import type { ReportedSession } from "../reported-session.ts";
import { planVersion } from "../sections/session.ts";
import { type Limits, sectionsAfterBlocks } from "../sections.ts";
import { sessionTitle } from "../summary.ts";
import { handInWords } from "../words.ts";
import { blockMarkup } from "./block.ts";
import { inShort } from "./in-short.ts";
import { html, type Markup, said } from "./markup.ts";
import { movedMarkup } from "./moved.ts";
import { badge, details, sectionMarkup } from "./parts.ts";

export function reportMarkup(session: ReportedSession, limits: Limits): Markup {
  const { report, input } = session;
  const hasShots = report.data.some(({ shots }) => shots > 0);
  return html`<article>
<header>
<h1>${said(sessionTitle(report))}${report.verdict === null ? null : html` ${badge(report.verdict)}`}</h1>
<p>${said(report.player.name)}, ${handInWords(report.player.hand)} · plan “${said(report.plan.name)}”${input.plan.clubs.length === 0 ? null : html` · ${input.plan.clubs.join(", ")}`}</p>
</header>
${inShort(session)}
${hasShots ? evidence(session, limits) : html`<p>There are no shots, so nothing is scored.</p>`}
<div class="rest">
${sectionsAfterBlocks(session, limits).map(sectionMarkup)}
<section>
<h2>Versions</h2>
${details([
  { label: "tool", text: report.tool },
  { label: "plan", text: report.plan.name },
  ...planVersion(report),
  ...(report.instrument === null
    ? []
    : [{ label: "accuracy", text: `as stated for "${report.instrument}"` }]),
])}
</section>
</div>
</article>
`;
}

/** How to read the pictures, once for all of them. */
const KEY =
  "In the pictures the shaded band is what was asked for; dots are shots that met it, crosses shots that did not, rings and small strokes shots of which nothing was asked; the large dot is a number made of them, the line through it its interval.";

function evidence(session: ReportedSession, { rows }: Limits): Markup {
  const { report, input } = session;
  const counted = countedShots(session);
  const goals = goalsById(session);
  const pictured = { session, counted };
  const flight = flightPictures(blocksInFlight(report), pictured);
  return html`<section>
<h2>The evidence</h2>
<p class="soft key">${KEY}</p>
<div class="blocks">
${report.blocks.map((block) =>
  blockMarkup(
    block,
    input.plan.blocks.find(({ name }) => name === block.name),
    {
      planFile: report.plan.location.file,
      metrics: input.metrics,
      mostRows: rows,
      goals,
      pictured: { ...pictured, name: block.name },
    },
  ),
)}</div>
</section>
${flight === null ? null : html`<section>\n<h2>What the ball did</h2>\n${flight}</section>\n`}${movedMarkup(session)}`;
}

/** The baseline and the last block with goals: before and after. */
function blocksInFlight({ blocks }: ScoreReport): string[] {
  const baseline = blocks.find(({ kind }) => kind === "baseline");
  const last = blocks.findLast(({ verdict }) => verdict !== null);
  return [...new Set([baseline, last].filter((block) => block !== undefined).map(({ name }) => name))];
}
