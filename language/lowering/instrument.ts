/** Instruments: from the tree to the model. */
import type { Instrument as InstrumentModel } from "../../shared/plan-model.ts";
import { normalQuantile } from "../../shared/statistics/distributions.ts";
import {
  type Coverage,
  type Instrument,
  isCoverage,
  isUncertainty,
  type Uncertainty,
} from "../generated/tree/ast.ts";
import { NO_BINDINGS } from "../types/parameters.ts";
import { lowerQuantity } from "./amounts.ts";
import { type FileName, placeOf } from "./place.ts";
import { resolved } from "./unresolved.ts";

export function lowerInstrument(instrument: Instrument, fileName: FileName): InstrumentModel {
  const { statements } = instrument;
  const divisor = divisorOf(statements.find(isCoverage));
  return {
    name: instrument.name,
    uncertainties: statements.filter(isUncertainty).map((line) => ({
      metric: resolved(line.metric).name,
      random: part(line, "random", divisor),
      systematic: part(line, "systematic", divisor),
      clubs: line.clubs.map((club) => resolved(club).name),
      location: placeOf(line, fileName),
    })),
    location: placeOf(instrument, fileName),
  };
}

function part({ parts }: Uncertainty, kind: "random" | "systematic", divisor: number): number {
  const stated = parts.find((candidate) => candidate.kind === kind);
  return stated === undefined ? 0 : lowerQuantity(stated.quantity, NO_BINDINGS).value / divisor;
}

/**
 * How many standard uncertainties the stated figures are (JCGM 100, 4.3): a normal law for a share of readings covered, a
 * uniform one for limits. Figures without a coverage are standard uncertainties.
 */
function divisorOf(coverage: Coverage | undefined): number {
  if (coverage === undefined) return 1;
  if (coverage.limits) return Math.sqrt(3);
  if (coverage.factor !== undefined) return coverage.factor;
  return normalQuantile((1 + (coverage.share ?? 0) / 100) / 2);
}
