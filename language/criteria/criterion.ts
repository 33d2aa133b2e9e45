/** What every kind of criterion is given and gives back. A kind is a folder beside this file. */
import type { Against, Criterion, Hand, Metric, Subject } from "../../shared/plan-model.ts";
import type { Evidence, Interval as Limits, Tally, Verdict } from "../../shared/score-report.ts";
import type { Chances } from "./chances.ts";
import type { Counted } from "./required.ts";
import type { Truth } from "./verdict.ts";

/** The shots of a block that count, in the order they were hit, seen by a criterion. */
export interface CountedShots {
  /** How many shots the block asks for; of a block that asks for "at least" so many, that number. */
  readonly asked: number;
  /** How many shots have been hit and count: more than `asked` only where the block asks for "at least" so many. Arrays below have this length. */
  readonly size: number;
  readonly hand: Hand;
  /** For each shot the club it was hit with; null where that is not known. */
  readonly clubs: readonly (string | null)[];
  /** Every name has an answer: a metric that is not declared is shown as a plain number. */
  readonly metric: (name: string) => Metric;
  /** A metric's values, SI and target frame; undefined where unknown. */
  readonly values: (metric: string) => readonly (number | undefined)[];
  /** For each shot whether it meets the subject. What the block requires plays no part in it: see `required.ts`. */
  readonly meeting: (subject: Subject) => readonly Truth[];
  /** The metrics that decide whether a shot meets the subject: the condition's, or the targets'; none without targets. */
  readonly metricsOf: (subject: Subject) => readonly string[];
  /** For each shot whether it meets every requirement of the block. */
  readonly admitted: readonly Truth[];
  /** The metrics of the block's requirements; empty where it requires nothing. */
  readonly requiredMetrics: readonly string[];
  /** For each shot how far its reading of a metric may be off; null where readings are taken as exact. */
  readonly uncertainty: (metric: string) => readonly StandardUncertainty[] | null;
  /** How probable it is that each shot counts; null where every reading that decides it is exact, or far enough from its limits. */
  readonly chances: (counted: Counted) => Chances | null;
  /** How probable it must be that uncertain readings met or missed, from 0.5 to 1. */
  readonly decisionLevel: number;
  /** Swings made so far, and those that the plan still asks for; set-aside shots included. */
  readonly swings: { readonly block: Swings; readonly session: Swings };
  /** What a change is held against, or in a sentence why there is nothing. */
  readonly against: (against: Against, metric: string) => Comparison | string;
}

/** Standard uncertainties of a reading, SI: of its own, and shared by all readings of the session. */
export interface StandardUncertainty {
  readonly random: number;
  readonly systematic: number;
}

/** A number of swings, and how many of them are at 90 % effort or more, those of unknown effort included. */
export interface Effort {
  readonly all: number;
  readonly fullEffort: number;
}

export interface Swings extends Effort {
  /** How many have no effort, neither measured nor stated in the plan: they are taken for full. */
  readonly unknownEffort: number;
  /** Those that the plan asks for and that are not made yet. */
  readonly toCome: Effort;
}

/** Other shots of the player, or numbers known of them. `name` as in `against …`. Values SI, target frame. */
export type Comparison =
  | {
      readonly kind: "shots";
      readonly name: string;
      readonly shots: CountedShots;
      readonly isSameSession: boolean;
    }
  | {
      readonly kind: "usual";
      readonly name: string;
      readonly value: number;
      readonly spread: number | null;
      readonly count: number | null;
    };

/** A verdict and what it rests on. Shots are given as indices into the counted shots. */
export interface Outcome {
  readonly verdict: Verdict;
  /** For people: what was asked for, and what was seen. */
  readonly required: string;
  readonly observed: string;
  /** The observed number alone: `9 of 18`, `longest run 3`, `0.3° out-to-in`; empty when nothing could be observed. */
  readonly brief: string;
  /** The observed number in SI, a share from 0 to 1, or a count; null when nothing could be observed. */
  readonly value: number | null;
  /** How many shots entered the number. */
  readonly shotsUsed: number;
  readonly tally: Tally | null;
  readonly interval: Limits | null;
  /** What would settle it: stated where the verdict is open, null where it is met or missed. */
  readonly settles: string | null;
  /** Of an open count that only shots to come can settle: what they must bring, in few words: `needs 3 of the next 6`. */
  readonly needs?: string;
  /** The shots that decided; of an open verdict those that keep it open. */
  readonly deciding: readonly number[];
  readonly cautions: readonly string[];
  /** Of a change. */
  readonly comparison?: Evidence["comparison"];
  /** Of a group: the outcomes of its criteria, in order. */
  readonly parts?: readonly Outcome[];
}

/** The criteria of one kind. */
export type CriterionOf<Kind extends Criterion["kind"]> = Extract<Criterion, { kind: Kind }>;

/** The meaning of one kind of criterion. */
export interface CriterionKind<Kind extends Criterion["kind"]> {
  /** The criterion in a sentence, for hovers and reports; of a block with or without requirements. */
  readonly sentence: (criterion: CriterionOf<Kind>, isRequiring: boolean) => string;
  /** The metrics it reads from every shot, besides those of the block's targets and requirements. */
  readonly metrics: (criterion: CriterionOf<Kind>) => readonly string[];
  /** The verdict over these shots. Cost: linear in the shots, but for the tails of a distribution. */
  readonly evaluate: (criterion: CriterionOf<Kind>, shots: CountedShots) => Outcome;
}
