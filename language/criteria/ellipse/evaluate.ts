import type { CriterionKind } from "../criterion.ts";

export const ellipse: CriterionKind<"ellipse"> = {
  sentence: ({ text }) => text,
  metrics: () => [],
  evaluate: () => ({
    verdict: "undecided",
    required: "",
    observed: "",
    brief: "",
    value: null,
    shotsUsed: 0,
    tally: null,
    interval: null,
    settles: "this kind of goal is not judged yet",
    deciding: [],
    cautions: [],
  }),
};
