/** What follows from the readings of a shot. */
import type { Instrument, ScoringInput } from "../../../shared/plan-model.ts";
import type { Shot } from "../../../shared/session-data.ts";
import type { Hit } from "../cells/hits.ts";
import type { Findings } from "../finding.ts";
import { deriveCategories, namings } from "./categories.ts";
import { disagreements } from "./consistency.ts";
import { derive, formulas } from "./derive.ts";
import { reportDisagreement } from "./report-disagreements.ts";

/** Makes a shot of what a row holds: what follows from its readings is added, what does not fit is reported. */
export function completer(input: ScoringInput, findings: Findings): (hit: Hit, block: string | null) => Shot {
  const derivable = formulas(input.metrics.values());
  const naming = namings(input.metrics.values(), input.player);
  return (hit, block) => {
    const { row, club, time, excluded } = hit;
    for (const disagreement of disagreements(hit.values, marginsOf(hit, input.instrument), derivable)) {
      reportDisagreement(disagreement, row.line, input, findings.about(row.file));
    }
    const values = { ...hit.values };
    const categories = { ...hit.categories };
    const derived = derive(values, derivable);
    derived.push(...deriveCategories(categories, { values, club }, naming));
    return { row, values, categories, derived, club, time, block, excluded };
  };
}

/** Rounding, and twice the standard uncertainty of the instrument, which hardly ever is exceeded. */
function marginsOf({ roundings, club }: Hit, instrument: Instrument | null): Record<string, number> {
  const margins = { ...roundings };
  for (const { metric, random, systematic, clubs } of instrument?.uncertainties ?? []) {
    const margin = margins[metric];
    if (margin === undefined || (clubs.length > 0 && !clubs.includes(club ?? ""))) continue;
    margins[metric] = margin + 2 * Math.sqrt(random * random + systematic * systematic);
  }
  return margins;
}
