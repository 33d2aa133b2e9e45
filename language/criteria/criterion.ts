/** What every kind of criterion is given and gives back. A kind is a folder beside this file. */
import type { Criterion, Hand, Metric, Subject } from "../../shared/plan-model.ts";
import type { Interval as Limits, Tally, Verdict } from "../../shared/score-report.ts";
import type { Truth } from "./verdict.ts";

/** The shots of a block that count, in the order they were hit, seen by a criterion. */
export interface CountedShots {
  /** How many shots the block asks for. */
  readonly asked: number;
  /** How many of them have been hit and count. Arrays below have this length. */
  readonly size: number;
  readonly hand: Hand;
  readonly metric: (name: string) => Metric;
  /** A metric's values, SI and target frame; undefined where unknown. */
  readonly values: (metric: string) => readonly (number | undefined)[];
  /** For each shot whether it meets the subject *and* every requirement of the block. */
  readonly hits: (subject: Subject) => readonly Truth[];
  /** For each shot whether it meets every requirement of the block. */
  readonly admitted: readonly Truth[];
}

/** A verdict and what it rests on. Shots are given as indices into the counted shots. */
export interface Outcome {
  readonly verdict: Verdict;
  readonly required: string;
  readonly observed: string;
  readonly value: number | null;
  readonly shotsUsed: number;
  readonly tally: Tally | null;
  readonly interval: Limits | null;
  readonly settles: string | null;
  /** The shots that decided. */
  readonly deciding: readonly number[];
  readonly cautions: readonly string[];
}

/** The meaning of one kind of criterion. */
export interface CriterionKind<Kind extends Criterion["kind"]> {
  /** The criterion in a sentence, for hovers and reports. */
  readonly sentence: (criterion: Extract<Criterion, { kind: Kind }>) => string;
  /** The verdict over these shots. Cost: linear in the shots, but for the tails of a distribution. */
  readonly evaluate: (criterion: Extract<Criterion, { kind: Kind }>, shots: CountedShots) => Outcome;
}
